import { z } from "zod";
import {
  decisionSchema,
  exclusionStatedSchema,
  instrumentStatedSchema,
  reportStatedSchema,
  samplingSchema,
  uncertaintySchema,
  zoneSchema,
} from "./assessment-evidence.js";
import { comparisonSchema } from "./comparison.js";
import { commentsSchema, complaintsSchema } from "./complaints.js";
import { daysSchema } from "./days.js";
import { count, phase, place, quantity, reason, ruleSetIdentity, text, time, verdictSchema } from "./result-parts.js";
import { shiftSchema } from "./shift.js";
import { slidingSchema } from "./sliding.js";

/**
 * results.json, schema version 1: the one result document, and the type of it. Times are ISO 8601 UTC with Z, numbers
 * carry full precision. Nothing in it depends on the clock, the machine or the path.
 */

export const RESULT_SCHEMA_VERSION = 1;

const counts = z.strictObject({ n: count, outside: count });

/** One requirement on one phase (and order) in one week. */
export const rowSchema = z.strictObject({
  id: z.string(),
  clause: z.string(),
  ...place,
  /** In `unit`: percentages of the declared voltage are already volts. */
  limit: z.strictObject({ min: z.number().optional(), max: z.number().optional() }),
  /** Length of an interval in seconds. */
  intervalS: z.number(),
  /** Share that must lie within, 0…1. */
  share: z.number(),
  period: z.enum(["day", "week", "year"]),
  binding: z.boolean(),
  confirmed: z.boolean(),
  /** Whether the values were logged or computed here. */
  origin: z.enum(["logged", "computed"]),
  /** Valid intervals that decide. */
  n: count,
  outside: count,
  /** How many of `n` may lie outside: floor((1 − share) · n); of the whole period's intervals where that is undecided. */
  allowed: count,
  /** Intervals of the week without valid data. */
  missing: count,
  /** Intervals that overlap an excluded span: neither present nor missing. */
  excluded: count,
  worst: z.strictObject({ value: z.number(), at: time }).nullable(),
  /** Information only, nearest-rank order statistic: the value not exceeded (high), or not undercut (low), by `share`. */
  percentile: z.strictObject({ low: z.number().optional(), high: z.number().optional() }),
  verdict: verdictSchema,
  reason: reason.optional(),
  /** No filling of the missing intervals could change the verdict. */
  robust: z.boolean(),
  /** The same without the exclusions; absent where none touches the row. */
  verdictWithoutExclusions: verdictSchema.optional(),
  /** Expanded uncertainty (k = 2) at the limit, the larger one where there are two; in `unit`. Absent where none is known. */
  uncertainty: z.number().optional(),
  /** How many of `n` lie within the uncertainty of a limit, on either side. */
  near: count.optional(),
  /** Of a decided row with an uncertainty. */
  zone: zoneSchema.optional(),
  /** false: the verdict would be another if every value were moved by the uncertainty towards or across a limit. */
  clear: z.boolean().optional(),
  /** Absent where nothing was counted. */
  sampling: samplingSchema.optional(),
  /**
   * Flagged intervals with and without, exclusions applied. Those that decide, with and without excluded ones, and with
   * every limit moved inwards (narrowed) or outwards (widened) by the uncertainty; absent where they cannot differ.
   */
  counts: z.strictObject({
    withFlagged: counts,
    withoutFlagged: counts,
    withExcluded: counts.optional(),
    withoutExcluded: counts.optional(),
    narrowed: counts.optional(),
    widened: counts.optional(),
  }),
});

export const weekSchema = z.strictObject({
  start: time,
  end: time,
  /**
   * worst-sliding: a 7-day window that shows more than any consecutive week does; holds only the rows it is worst for.
   * year: 365 days; only where the recording is that long or already breaks a yearly rule, with the yearly rows only.
   */
  kind: z.enum(["consecutive", "worst-sliding", "year"]),
  /** false: the recording ends before the period does. */
  complete: z.boolean(),
  /** Lowest share of valid intervals among the week's binding requirements, 0…1. */
  coverage: z.number(),
  verdict: verdictSchema,
  /** Absent where no exclusion touches it. */
  verdictWithoutExclusions: verdictSchema.optional(),
  requirements: z.array(rowSchema),
});

const stated = z.strictObject({
  value: z.union([text, z.number()]),
  origin: z.enum(["given", "inferred", "assumed"]),
  reason: text.optional(),
});

const cutOff = z.enum(["recording", "gap"]);

/** See EventMeasure in recording/measurements.ts. */
const eventMeasure = {
  start: time,
  durationS: z.number(),
  extreme: z.number(),
  reference: z.number().optional(),
  percent: z.number().optional(),
  steadyChange: z.number().optional(),
  peak: z.number().optional(),
};

export const assessmentSchema = z.strictObject({
  schema: z.literal(RESULT_SCHEMA_VERSION),
  tool: z.strictObject({ name: z.string(), version: z.string() }),
  sources: z.array(z.strictObject({ name: z.string(), bytes: count, sha256: z.string(), format: z.string() })),
  setup: z.record(z.string(), stated),
  report: reportStatedSchema,
  instrument: instrumentStatedSchema,
  recording: z.strictObject({
    kind: z.string(),
    start: time,
    end: time,
    zone: z.string(),
    /** The span of the whole log, where only part of it was assessed. */
    cropped: z.strictObject({ start: time, end: time }).optional(),
    /** Counted on the ten-minute intervals of the supply voltage, or of the longest series where no voltage was logged. */
    intervals: z.strictObject({
      expected: count,
      present: count,
      missing: count,
      duplicate: count,
      flagged: count,
      excluded: count,
    }),
    findings: z.array(
      z.strictObject({
        id: z.string(),
        severity: z.enum(["none", "note", "blocks"]),
        sentence: text,
        evidence: z.record(z.string(), z.union([z.number(), z.string(), z.array(z.string())])),
        quantities: z.array(quantity),
        phases: z.array(phase),
        danger: z.enum(["open-neutral", "high-voltage"]).optional(),
      }),
    ),
    columns: z.array(
      z.strictObject({
        file: z.string(),
        position: z.int(),
        header: z.string(),
        takenFor: text.optional(),
        reason: text,
      }),
    ),
    remarks: z.array(text),
  }),
  ruleSet: z.strictObject({
    ...ruleSetIdentity,
    /** Every requirement as judged, with its source; `confirmed: false` where no public document confirms the value. */
    requirements: z.array(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        clause: z.string(),
        quantity,
        binding: z.boolean(),
        source: z.string(),
        confirmed: z.boolean(),
        note: text.optional(),
        /** The cells that events are counted in: rows in % of the reference, columns in s (see rules/). */
        table: z
          .strictObject({
            kind: z.literal("event-table"),
            event: z.enum(["dip", "swell"]),
            rows: z.array(z.strictObject({ id: z.string(), from: z.number().nullable(), to: z.number().nullable() })),
            columns: z.array(z.strictObject({ id: z.string(), from: z.number(), to: z.number() })),
          })
          .optional(),
        /** Limits by harmonic order that are not confirmed although the requirement is, or the reverse. */
        orders: z
          .array(
            z.strictObject({
              order: z.int(),
              max: z.number(),
              confirmed: z.boolean(),
              source: z.string(),
              note: text.optional(),
            }),
          )
          .optional(),
      }),
    ),
  }),
  decision: decisionSchema,
  uncertainties: z.array(uncertaintySchema),
  /** In the order in which they were stated. */
  exclusions: z.array(exclusionStatedSchema),
  /** With the exclusions applied. */
  verdict: verdictSchema,
  /** Absent where no exclusion was stated. */
  verdictWithoutExclusions: verdictSchema.optional(),
  notAssessed: z.array(z.strictObject({ requirement: z.string(), reason })),
  weeks: z.array(weekSchema),
  events: z.array(
    z.strictObject({
      kind: z.enum(["dip", "swell", "interruption", "rapid-voltage-change", "transient", "inrush-current"]),
      phases: z.array(phase),
      ...eventMeasure,
      unit: z.string(),
      /** The recorder's own figures; absent where the event was found in samples here. */
      origin: z.literal("logged").optional(),
      /** Each of `phases` by itself; `crossings`: how often it crossed the threshold. */
      perPhase: z.array(z.strictObject({ phase, ...eventMeasure, crossings: count })).optional(),
      /** A dip during which all phases were interrupted. */
      interrupted: z.literal(true).optional(),
      /** false: the samples begin or end during the event, which lasted `durationS` or longer. */
      complete: z.boolean().optional(),
      cutOff: z.strictObject({ start: cutOff.optional(), end: cutOff.optional() }).optional(),
      /** It overlaps an excluded span. */
      excluded: z.literal(true).optional(),
      /** short: up to 3 min; long: more. Absent where an interruption was cut off before. */
      interruption: z.enum(["short", "long"]).optional(),
      row: z.string().optional(),
      column: z.string().optional(),
    }),
  ),
  /** In order of time. */
  complaints: complaintsSchema,
  comments: commentsSchema,
  days: daysSchema,
  /** Absent where no voltage was judged, and where the recording of it is unsound. */
  shift: shiftSchema.optional(),
  /** Absent where no voltage was judged. */
  sliding: slidingSchema.optional(),
  /** What other limit sets say, in the order in which they were named. */
  comparison: comparisonSchema,
  summary: z.array(
    z.strictObject({
      ...place,
      /** "10min", "2h", "10s", "3s"; "10/12-cycle" and "half-cycle" where the recording is short. */
      interval: z.string(),
      intervalS: z.number(),
      n: count,
      min: z.number(),
      mean: z.number(),
      max: z.number(),
      p05: z.number(),
      p95: z.number(),
      p99: z.number(),
    }),
  ),
});

export type Verdict = z.infer<typeof verdictSchema>;
export type Row = z.infer<typeof rowSchema>;
export type Week = z.infer<typeof weekSchema>;
export type Reason = z.infer<typeof reason>;
export type Assessment = z.infer<typeof assessmentSchema>;
