import { allowedOutside } from "../decimal.js";
import { type IntervalSeries, isValid } from "../recording/measurements.js";
import type { Instant } from "../recording/time.js";
import type { Reason, Verdict } from "./assessment.js";
import type { Test } from "./tests.js";

/** Share of a period's intervals that must be valid for a verdict that missing data could change. Common practice, no source. */
export const NEEDED_COVERAGE = 0.95;

/**
 * Running counts over a test's series: entry i holds the counts of intervals 0…i−1, so that any window is counted by
 * two look-ups. `flagged` counts all flagged intervals, the others only valid ones. "Outside" is beyond an inclusive limit, on either side.
 */
export interface RunningCounts {
  readonly starts: Float64Array;
  readonly valid: Uint32Array;
  readonly outside: Uint32Array;
  readonly flagged: Uint32Array;
  readonly flaggedValid: Uint32Array;
  readonly flaggedOutside: Uint32Array;
}

export function runningCounts({ series, limit }: Pick<Test, "series" | "limit">): RunningCounts {
  const n = series.starts.length;
  const columns = {
    valid: new Uint32Array(n + 1),
    outside: new Uint32Array(n + 1),
    flagged: new Uint32Array(n + 1),
    flaggedValid: new Uint32Array(n + 1),
    flaggedOutside: new Uint32Array(n + 1),
  };
  for (let i = 0; i < n; i++) {
    const valid = isValid(series, i) ? 1 : 0;
    const outside = valid === 1 && isOutside(series.values[i] as number, limit) ? 1 : 0;
    const flag = series.flagged[i] as number;
    columns.valid[i + 1] = (columns.valid[i] as number) + valid;
    columns.outside[i + 1] = (columns.outside[i] as number) + outside;
    columns.flagged[i + 1] = (columns.flagged[i] as number) + flag;
    columns.flaggedValid[i + 1] = (columns.flaggedValid[i] as number) + (valid & flag);
    columns.flaggedOutside[i + 1] = (columns.flaggedOutside[i] as number) + (outside & flag);
  }
  return { starts: series.starts, ...columns };
}

export function isOutside(value: number, { min, max }: Test["limit"]): boolean {
  return (min !== undefined && value < min) || (max !== undefined && value > max);
}

/** Index of the first start at or after `t`. */
export function firstAtOrAfter(starts: Float64Array, t: Instant): number {
  let low = 0;
  let high = starts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((starts[middle] as number) < t) low = middle + 1;
    else high = middle;
  }
  return low;
}

export interface WindowCounts {
  /** Intervals that lie wholly in the window, on the series' own grid. */
  readonly expected: number;
  /** Index range of the series, `from` inclusive, `to` exclusive. */
  readonly from: number;
  readonly to: number;
  /** Flagged intervals, with a valid value or without. */
  readonly flagged: number;
  readonly all: { readonly n: number; readonly outside: number };
  readonly unflagged: { readonly n: number; readonly outside: number };
}

/** Counts of the intervals that lie wholly in [start, end). */
export function countWindow(counts: RunningCounts, series: IntervalSeries, start: Instant, end: Instant): WindowCounts {
  const { interval } = series;
  const from = firstAtOrAfter(counts.starts, start);
  const to = firstAtOrAfter(counts.starts, end - interval + 1);
  const take = (column: Uint32Array) => (column[to] as number) - (column[from] as number);
  const all = { n: take(counts.valid), outside: take(counts.outside) };
  const phase = (series.starts[0] as number) % interval;
  const firstStart = Math.ceil((start - phase) / interval) * interval + phase;
  return {
    expected: Math.max(0, Math.floor((end - firstStart) / interval)),
    from,
    to,
    all,
    flagged: take(counts.flagged),
    unflagged: { n: all.n - take(counts.flaggedValid), outside: all.outside - take(counts.flaggedOutside) },
  };
}

export interface Decision {
  readonly verdict: Verdict;
  readonly robust: boolean;
}

/**
 * The verdict of a count. More intervals than fit into the period (a clock set back, overlapping files) never allow more
 * of them outside than those that fit. With k outside, m missing and K the number that may lie outside when all intervals are
 * there: k > K fails and k + m ≤ K passes whatever the missing intervals held (`robust`). In between the valid
 * intervals alone decide, floor((1 − share)·n) may lie outside, if they cover 95 % of the period; else undecided, as
 * where no interval may count at all.
 */
export function decide(share: number, expected: number, n: number, outside: number): Decision {
  if (expected === 0) return { verdict: "undecided", robust: false };
  const missing = Math.max(0, expected - n);
  const allowedOfAll = allowedOutside(share, expected);
  if (outside > allowedOfAll) return { verdict: "does-not-conform", robust: true };
  if (outside + missing <= allowedOfAll) return { verdict: "conforms", robust: true };
  if (n >= NEEDED_COVERAGE * expected) {
    return { verdict: outside <= allowedOutside(share, n) ? "conforms" : "does-not-conform", robust: false };
  }
  return { verdict: "undecided", robust: false };
}

/** Why `decide` left a count undecided. */
export function tooLittleData(share: number, expected: number, n: number, outside: number): Reason {
  if (expected === 0) {
    const sentence =
      "All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.";
    return { id: "all-flagged", sentence, values: {} };
  }
  const missing = expected - n;
  const allowed = allowedOutside(share, expected);
  return {
    id: "too-little-data",
    sentence: `${n} of ${expected} intervals are valid; ${outside} lie outside and ${allowed} may, so the ${missing} missing ones could turn the verdict either way.`,
    values: { n, expected, outside, allowed, missing },
  };
}
