/** The number with the fewest significant digits in [low, high], nearest to the middle where there are several. 0 < low ≤ high. */
export function roundestIn(low: number, high: number): { readonly value: number; readonly digits: number } {
  const middle = (low + high) / 2;
  for (let digits = 1; digits <= 15; digits++) {
    const value = Number(middle.toPrecision(digits));
    if (value >= low && value <= high) return { value, digits };
  }
  return { value: middle, digits: 17 };
}

/**
 * Samples per second, where the period lies between two bounds in microseconds: a round rate or one of a round period,
 * whichever is rounder, as clocks of recorders are set.
 */
export function rateWithin(shortest: number, longest: number): number {
  const rate = roundestIn(1e6 / longest, 1e6 / shortest);
  const period = roundestIn(shortest, longest);
  return period.digits < rate.digits ? 1e6 / period.value : rate.value;
}
