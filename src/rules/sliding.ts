import { z } from "zod";
import { type IntervalSeries, isValid, type Measurements } from "../recording/measurements.js";
import type { Phase } from "../recording/quantity.js";
import type { Passing, SlidingVoltage, WindowValue } from "../recording/supply-detail.js";
import { isoUtc, MINUTE, SECOND } from "../recording/time.js";
import { count, phase, time } from "./result-parts.js";

/** A value of a window of ten minutes and the end of that window. */
const windowValue = z.strictObject({ value: z.number(), at: time });

/**
 * The 10-min r.m.s. voltage over any ten minutes, beside the fixed intervals that are judged. Generators in low-voltage
 * networks trip where it passes 110 % of the declared voltage (EN 50549-1, from memory); no part of the verdict.
 */
export const slidingSchema = z.strictObject({
  /** Phases whose voltage is known at intervals shorter than ten minutes. */
  phases: z.array(
    z.strictObject({
      phase,
      /** 110 % of the declared voltage, in V. */
      limit: z.number(),
      /** How far a window moves: the interval of the data. */
      intervalS: z.number(),
      /** Windows that data cover to 99 %. */
      n: count,
      lowest: windowValue,
      highest: windowValue,
      passed: z.array(
        z.strictObject({
          /** End of the first window above the limit. */
          start: time,
          durationS: z.number(),
          peak: z.number(),
          /** false: it lasted `durationS` or longer. */
          complete: z.boolean(),
          /** Whether one of the fixed intervals within it is above the limit, too. */
          inFixed: z.boolean(),
        }),
      ),
      /** How many of `passed` no fixed interval shows. */
      unseen: count,
    }),
  ),
  /** Phases with ten-minute values only, but with the extremes inside them: how high the sliding mean was at most. */
  bounds: z.array(
    z.strictObject({
      phase,
      limit: z.number(),
      /** Pairs of intervals in a row that the bound was taken over. */
      pairs: count,
      /** At the instant where the two intervals meet. */
      highest: windowValue,
      /** Pairs in which the sliding mean can have passed the limit although neither interval did. */
      possible: count,
    }),
  ),
  /** Judged phases of which neither is known. */
  untold: z.array(phase),
});

export type Sliding = z.infer<typeof slidingSchema>;

/** Undefined where no voltage was judged. */
export function slidingOf({ supply, series }: Measurements, judged: readonly Phase[]): Sliding | undefined {
  if (supply === undefined || judged.length === 0) return undefined;
  const known = supply.sliding.filter((s) => judged.includes(s.phase));
  const bounds = supply.bounds.filter((b) => judged.includes(b.phase));
  const isTold = (name: Phase) => [...known, ...bounds].some((s) => s.phase === name);
  return {
    phases: known.map((sliding) => ofPhase(sliding, fixedOf(series, sliding.phase))),
    bounds: bounds.map(({ highest, ...bound }) => ({ ...bound, highest: dated(highest) })),
    untold: judged.filter((name) => !isTold(name)),
  };
}

function fixedOf(series: readonly IntervalSeries[], name: Phase): IntervalSeries | undefined {
  return series.find((s) => s.quantity === "voltage" && s.phase === name && s.interval === 10 * MINUTE);
}

function ofPhase(sliding: SlidingVoltage, fixed: IntervalSeries | undefined): Sliding["phases"][number] {
  const { interval, n, lowest, highest, limit } = sliding;
  const passed = sliding.passed.map(({ start, ...passing }) => ({
    start: isoUtc(start),
    ...passing,
    inFixed: fixed !== undefined && isInFixed({ start, ...passing }, sliding, fixed),
  }));
  return {
    phase: sliding.phase,
    limit,
    intervalS: interval / SECOND,
    n,
    lowest: dated(lowest),
    highest: dated(highest),
    passed,
    unseen: passed.filter(({ inFixed }) => !inFixed).length,
  };
}

/** A fixed interval is one of the windows: its end lies between the first and the last of those above the limit. */
function isInFixed({ start, durationS }: Passing, { interval, limit }: SlidingVoltage, fixed: IntervalSeries): boolean {
  // Windows of waveforms end within half a 10/12-cycle interval of the tick.
  const first = start - interval / 2;
  const last = start + durationS * SECOND - interval / 2;
  return fixed.starts.some((begin, i) => {
    const end = begin + fixed.interval;
    return end >= first && end <= last && isValid(fixed, i) && (fixed.values[i] as number) > limit;
  });
}

function dated({ value, at }: WindowValue): z.infer<typeof windowValue> {
  return { value, at: isoUtc(at) };
}
