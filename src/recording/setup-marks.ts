import { z } from "zod";
import { UsageError } from "../errors.js";
import { say, strung, type Text } from "../sentence.js";
import { statedInstant, statedTimeSchema } from "./stated-time.js";
import type { Instant } from "./time.js";

/**
 * The parts of the measurement setup that belong to the complaint and its remedy: when it was noticed, what the user
 * notes on the recording, the steps of the transformer's taps, and a photovoltaic plant behind the measuring point.
 */

const words = z.string().regex(/\S/, "this text is empty; write it or leave the entry out");

/** When something was noticed: a moment, or with `to` a span of time. */
export const complaintSchema = z.strictObject({
  at: statedTimeSchema,
  to: statedTimeSchema.optional(),
  /** What was noticed, in the words of whoever complained. */
  what: words,
});

/** A note at a point of the charts; on one phase's chart only where it names one. */
export const commentSchema = z.strictObject({
  at: statedTimeSchema,
  to: statedTimeSchema.optional(),
  phase: z.enum(["L1", "L2", "L3", "L12", "L23", "L31"]).optional(),
  text: words,
});

/** Steps of a transformer's taps as changes of the voltage, in % of the declared voltage. */
export const voltageStepsSchema = z
  .array(
    z
      .number()
      .min(-20)
      .max(20)
      .refine((step) => step !== 0, "a step of 0 changes nothing; leave it out"),
  )
  .min(1)
  .refine((steps) => new Set(steps).size === steps.length, "a step is listed twice; keep one of them");

/** Common taps of distribution transformers; common practice, no source. */
export const USUAL_VOLTAGE_STEPS: readonly number[] = [-5, -2.5, 2.5, 5];

/** What the data sheet of a photovoltaic plant says. */
export const photovoltaicSchema = z.strictObject({
  /** Rated power of the modules at standard test conditions, in W. */
  ratedPower: z.number().positive(),
  /** Temperature coefficient of the power in %/K; below zero for all common modules. */
  temperatureCoefficient: z.number().min(-2).max(1).optional(),
  /** Nominal operating cell temperature in °C. */
  noct: z.number().min(20).max(90).optional(),
});

/** "rated power 8400 W, temperature coefficient -0.38 %/K, nominal operating cell temperature 45 °C". */
export function photovoltaicText({
  ratedPower,
  temperatureCoefficient,
  noct,
}: z.infer<typeof photovoltaicSchema>): Text {
  const parts = [
    say`rated power ${ratedPower} W`,
    ...(temperatureCoefficient === undefined ? [] : [say`temperature coefficient ${temperatureCoefficient} %/K`]),
    ...(noct === undefined ? [] : [say`nominal operating cell temperature ${noct} °C`]),
  ];
  return strung(parts, ", ");
}

/** A point or span of time with words to it. */
export interface Mark {
  readonly at: Instant;
  /** End of a span; absent for a moment. */
  readonly to?: Instant;
}

export interface Complaint extends Mark {
  readonly what: string;
}

export interface Comment extends Mark {
  readonly phase?: NonNullable<z.infer<typeof commentSchema>["phase"]>;
  readonly text: string;
}

export interface Marks {
  readonly complaints: readonly Complaint[];
  readonly comments: readonly Comment[];
}

/**
 * Complaints and comments of a setup with their instants, in order of time. Times without an offset are local times of the
 * log's zone.
 * @throws UsageError for a time that the zone's clock skipped or showed twice, and for a span that ends before it begins
 */
export function marksOf(
  given: {
    readonly complaints?: readonly z.infer<typeof complaintSchema>[] | undefined;
    readonly comments?: readonly z.infer<typeof commentSchema>[] | undefined;
  },
  zone: string,
): Marks {
  const complaints = (given.complaints ?? []).map(
    (entry, i): Complaint => ({ ...timesOf("complaints", i, entry, zone), what: entry.what }),
  );
  const comments = (given.comments ?? []).map(
    (entry, i): Comment => ({
      ...timesOf("comments", i, entry, zone),
      ...(entry.phase !== undefined && { phase: entry.phase }),
      text: entry.text,
    }),
  );
  return { complaints: complaints.sort(byTime), comments: comments.sort(byTime) };
}

function byTime(a: Mark, b: Mark): number {
  return a.at - b.at;
}

function timesOf(list: string, i: number, entry: { at: string; to?: string | undefined }, zone: string): Mark {
  const name = `setup, ${list}, item ${i + 1}`;
  const at = statedInstant(`${name}, at`, entry.at, zone);
  if (entry.to === undefined) return { at };
  const to = statedInstant(`${name}, to`, entry.to, zone);
  if (to <= at) throw new UsageError(`${name}: to ${entry.to} does not lie after at ${entry.at}.`);
  return { at, to };
}
