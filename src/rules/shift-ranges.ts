/**
 * By how much all values may be shifted so that a counted requirement is kept: exact, by order statistics. Values and limits
 * are taken in whole nanovolts, so that no binary rounding decides a case on the limit.
 */

const PER_VOLT = 1e9;

/** A closed range of shifts in V; an end that is absent is unbounded. Ranges in a list rise and do not touch. */
export interface ShiftRange {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** Inclusive limits in V, and how many values may lie outside, too high and too low together. */
export interface ShiftLimit {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly allowed: number;
}

/** The sorted values in nanovolts. */
export function nanovolts(sorted: Float64Array): Float64Array {
  return sorted.map((v) => Math.round(v * PER_VOLT));
}

/**
 * All shifts s for which at most `allowed` of the n values x + s lie outside [min, max].
 *
 * With x(1) ≤ … ≤ x(n) and m = n − allowed, a shift fits exactly when some m values in a row lie inside:
 * min ≤ x(k) + s and x(k + m − 1) + s ≤ max for a k of 1 … allowed + 1. So the answer is the union over k of
 * [min − x(k), max − x(k + m − 1)], where that is not empty. It can fall into several pieces.
 * @param sorted values in nanovolts, ascending
 */
export function fittingShifts(sorted: Float64Array, { min, max, allowed }: ShiftLimit): ShiftRange[] {
  const needed = sorted.length - allowed;
  if (needed <= 0) return [{}];
  const low = min === undefined ? Number.NEGATIVE_INFINITY : Math.round(min * PER_VOLT);
  const high = max === undefined ? Number.POSITIVE_INFINITY : Math.round(max * PER_VOLT);
  const pieces: Piece[] = [];
  // From the last k to the first the ranges rise.
  for (let k = allowed; k >= 0; k--) {
    const from = low - (sorted[k] as number);
    const to = high - (sorted[k + needed - 1] as number);
    if (from > to) continue;
    const last = pieces[pieces.length - 1];
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else pieces.push([from, to]);
  }
  return pieces.map(rangeOf);
}

/** How many values lie outside [min, max] after the shift (V). */
export function outsideAfter(sorted: Float64Array, { min, max }: Omit<ShiftLimit, "allowed">, shift: number): number {
  const moved = Math.round(shift * PER_VOLT);
  const below = min === undefined ? 0 : countBelow(sorted, Math.round(min * PER_VOLT) - moved);
  const above = max === undefined ? 0 : sorted.length - countBelow(sorted, Math.round(max * PER_VOLT) - moved + 1);
  return below + above;
}

/** The shifts that lie in both lists. */
export function inBoth(a: readonly ShiftRange[], b: readonly ShiftRange[]): ShiftRange[] {
  const found: ShiftRange[] = [];
  for (const one of a) {
    for (const other of b) {
      const from = Math.max(one.from ?? Number.NEGATIVE_INFINITY, other.from ?? Number.NEGATIVE_INFINITY);
      const to = Math.min(one.to ?? Number.POSITIVE_INFINITY, other.to ?? Number.POSITIVE_INFINITY);
      if (from <= to) found.push(bounded(from, to));
    }
  }
  return found;
}

type Piece = [from: number, to: number];

function rangeOf([from, to]: Piece): ShiftRange {
  return bounded(from / PER_VOLT, to / PER_VOLT);
}

function bounded(from: number, to: number): ShiftRange {
  // A sum with 0 turns −0 into 0.
  return { ...(Number.isFinite(from) && { from: from + 0 }), ...(Number.isFinite(to) && { to: to + 0 }) };
}

/** How many of the sorted values lie below a bound. */
function countBelow(sorted: Float64Array, bound: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < bound) low = middle + 1;
    else high = middle;
  }
  return low;
}
