import { allowedOutside } from "../decimal.js";
import { overlappedIntervals, overlaps, type Span } from "../recording/excluded-span.js";
import { type IntervalSeries, isValid } from "../recording/measurements.js";
import type { Instant } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Reason, Verdict } from "./assessment.js";
import type { Test } from "./tests.js";

/** Share of a period's intervals that must be valid for a verdict that missing data could change. Common practice, no source. */
export const NEEDED_COVERAGE = 0.95;

/**
 * Running counts over a test's series: entry i holds the counts of intervals 0…i−1, so that any window is counted by
 * two look-ups. `flagged` counts all flagged intervals, the others only valid ones. "Outside" is beyond an inclusive limit, on either side.
 * Intervals that overlap an excluded span are in none of them.
 */
export interface RunningCounts {
  readonly starts: Float64Array;
  readonly excluded: readonly Span[];
  readonly valid: Uint32Array;
  readonly outside: Uint32Array;
  readonly flagged: Uint32Array;
  readonly flaggedValid: Uint32Array;
  readonly flaggedOutside: Uint32Array;
  /** Only where the uncertainty of the values is known. */
  readonly guard?: RunningGuard;
}

/** Of the intervals that decide: outside the limits moved inwards and outwards by the uncertainty; within it of a limit. */
interface RunningGuard {
  readonly narrowed: Uint32Array;
  readonly widened: Uint32Array;
  readonly near: Uint32Array;
}

/**
 * @param excluded spans that do not count, disjoint and in time order
 * @param uncertainty expanded uncertainty of a value, in its unit
 */
export function runningCounts(
  { series, limit, requirement }: Pick<Test, "series" | "limit" | "requirement">,
  excluded: readonly Span[] = [],
  uncertainty?: (value: number) => number,
): RunningCounts {
  const n = series.starts.length;
  const column = () => new Uint32Array(n + 1);
  const columns = {
    valid: column(),
    outside: column(),
    flagged: column(),
    flaggedValid: column(),
    flaggedOutside: column(),
  };
  const size = Math.max(Math.abs(limit.min ?? 0), Math.abs(limit.max ?? 0));
  const guard = uncertainty && { narrowed: column(), widened: column(), near: column() };
  const add = (to: Uint32Array, i: number, one: number) => {
    to[i + 1] = (to[i] as number) + one;
  };
  for (let i = 0; i < n; i++) {
    const start = series.starts[i] as number;
    const counted = excluded.length === 0 || !overlaps(excluded, start, start + series.interval) ? 1 : 0;
    const value = series.values[i] as number;
    const valid = counted & (isValid(series, i) ? 1 : 0);
    const outside = valid === 1 && isOutside(value, limit) ? 1 : 0;
    const flag = counted & (series.flagged[i] as number);
    add(columns.valid, i, valid);
    add(columns.outside, i, outside);
    add(columns.flagged, i, flag);
    add(columns.flaggedValid, i, valid & flag);
    add(columns.flaggedOutside, i, outside & flag);
    if (guard === undefined || uncertainty === undefined) continue;
    const decides = valid === 1 && (flag === 0 || requirement.flagged !== "exclude");
    const margin = decides ? uncertainty(value) : 0;
    const slack = SLACK * size;
    const past = decides ? beyond(value, limit) : Number.NEGATIVE_INFINITY;
    add(guard.narrowed, i, past > slack - margin ? 1 : 0);
    add(guard.widened, i, past > slack + margin ? 1 : 0);
    add(guard.near, i, decides && nearest(value, limit) <= margin + slack ? 1 : 0);
  }
  return { starts: series.starts, excluded, ...columns, ...(guard !== undefined && { guard }) };
}

export function isOutside(value: number, { min, max }: Test["limit"]): boolean {
  return (min !== undefined && value < min) || (max !== undefined && value > max);
}

/** A value counts as on a moved limit that it reaches to nine digits: roots of sums of squares are not exact decimals. */
const SLACK = 1e-9;

/** How far a value lies beyond the limit it is nearest to or furthest past; negative inside. */
export function beyond(
  value: number,
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: Test["limit"],
): number {
  return Math.max(min - value, value - max);
}

/** Distance to the nearer limit, on either side of it. */
function nearest(
  value: number,
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: Test["limit"],
): number {
  return Math.min(Math.abs(value - min), Math.abs(value - max));
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
  /** Intervals that lie wholly in the window, on the series' own grid, without the excluded ones. */
  readonly expected: number;
  readonly excluded: number;
  /** Index range of the series, `from` inclusive, `to` exclusive. */
  readonly from: number;
  readonly to: number;
  /** Flagged intervals, with a valid value or without. */
  readonly flagged: number;
  readonly all: { readonly n: number; readonly outside: number };
  readonly unflagged: { readonly n: number; readonly outside: number };
  /** See RunningGuard. */
  readonly guard?: { readonly narrowed: number; readonly widened: number; readonly near: number };
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
  const slots = Math.max(0, Math.floor((end - firstStart) / interval));
  const excluded = overlappedIntervals(counts.excluded, firstStart, interval, slots);
  const { guard } = counts;
  return {
    expected: slots - excluded,
    excluded,
    from,
    to,
    all,
    flagged: take(counts.flagged),
    unflagged: { n: all.n - take(counts.flaggedValid), outside: all.outside - take(counts.flaggedOutside) },
    ...(guard !== undefined && {
      guard: { narrowed: take(guard.narrowed), widened: take(guard.widened), near: take(guard.near) },
    }),
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
    const sentence = say`All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.`;
    return { id: "all-flagged", sentence, values: {} };
  }
  const missing = expected - n;
  const allowed = allowedOutside(share, expected);
  return {
    id: "too-little-data",
    sentence: say`${n} of ${expected} intervals are valid; ${outside} lie outside and ${allowed} may, so the ${missing} missing ones could turn the verdict either way.`,
    values: { n, expected, outside, allowed, missing },
  };
}
