/** Order statistics without interpolation: every result is a value that occurred. */

/** Sorted copy of the values that are not NaN. */
export function sortedFinite(values: Iterable<number>): Float64Array {
  return Float64Array.from(values)
    .filter((v) => !Number.isNaN(v))
    .sort();
}

/**
 * The value at rank r (1-based) of a sorted array, r clamped to 1…n.
 * @throws RangeError on an empty array.
 */
export function atRank(sorted: Float64Array, rank: number): number {
  const value = sorted[Math.min(sorted.length, Math.max(1, rank)) - 1];
  if (value === undefined) throw new RangeError("no values");
  return value;
}

/** Nearest-rank quantile: the smallest value that at least `share` (0…1) of all values do not exceed. */
export function nearestRank(sorted: Float64Array, share: number): number {
  return atRank(sorted, Math.ceil(share * sorted.length - 1e-9));
}
