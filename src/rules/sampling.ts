import type { Sampling } from "./assessment-evidence.js";
import { exactInterval, quantileRanks } from "./binomial.js";
import type { Test } from "./tests.js";

/** Of every interval given here; usual, no source. */
export const CONFIDENCE = 0.95;

/**
 * What the counted values say about a longer time under the same conditions: the order-statistics interval of the value
 * at the required share, free of any distribution, and the exact binomial interval of the share outside. Both take the
 * intervals for independent of one another, which ten-minute values are not, so the truth spreads wider. No verdict
 * rests on them: the standard's verdict is about the measured week itself.
 * @param sorted the values that decide, rising, at least one
 */
export function samplingOf(
  sorted: Float64Array,
  outside: number,
  share: number,
  { min, max }: Test["limit"],
): Sampling {
  const n = sorted.length;
  const sampling = { confidence: CONFIDENCE, shareOutside: intervalOfShare(outside, n) };
  if (share === 1) return sampling;
  const { ranks, coverage } = ranksOf(n, share);
  const [from, to] = ranks;
  const between = (a: number, b: number) => ({
    ...(a >= 1 && { from: sorted[a - 1] as number }),
    ...(b <= n && { to: sorted[b - 1] as number }),
    ranks: [a, b] as [number, number],
    coverage,
  });
  return {
    ...sampling,
    ...(min !== undefined && { low: between(n + 1 - to, n + 1 - from) }),
    ...(max !== undefined && { high: between(from, to) }),
  };
}

/** Most rows of a recording hold the same few counts. */
const intervalOfShare = remembered((outside, n) => exactInterval(outside, n, CONFIDENCE));
const ranksOf = remembered((n, share) => quantileRanks(n, share, CONFIDENCE));

function remembered<T>(compute: (a: number, b: number) => T): (a: number, b: number) => T {
  const known = new Map<string, T>();
  return (a, b) => {
    const key = `${a} ${b}`;
    const found = known.get(key) ?? compute(a, b);
    known.set(key, found);
    return found;
  };
}
