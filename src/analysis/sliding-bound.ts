import { type IntervalSeries, isValid } from "../recording/measurements.js";
import type { SlidingBound, WindowValue } from "../recording/supply-detail.js";
import { slidingLimit } from "./sliding-mean.js";

/**
 * How high the 10-min r.m.s. voltage over any other ten minutes can have been, where only fixed ten-minute values u with
 * the lowest and highest value inside each (r.m.s. over some shorter time) are known.
 *
 * A window that takes the share a of one interval and 1 − a of the next has the mean square p(a) + q(a). The first part
 * is at most a·max², and at most u² − (1 − a)·min², since the rest of its interval is not below min; the second likewise.
 * Both bounds are concave and piecewise linear in a, so that the largest sum lies at an end or at one of the two breaks.
 * An interval without a lowest value has 0 in its place. Undefined where no two intervals in a row have a highest value.
 */
export function slidingBound(series: IntervalSeries, declared: number): SlidingBound | undefined {
  const limit = slidingLimit(declared);
  const { starts, values, interval } = series;
  let [pairs, possible] = [0, 0];
  let highest: WindowValue = { value: Number.NEGATIVE_INFINITY, at: 0 };
  for (let i = 1; i < starts.length; i++) {
    const at = starts[i] as number;
    if (at - (starts[i - 1] as number) !== interval) continue;
    const [before, after] = [squaresOf(series, i - 1), squaresOf(series, i)];
    if (before === undefined || after === undefined) continue;
    const value = Math.sqrt(largestMeanSquare(before, after));
    pairs++;
    if (value > highest.value) highest = { value, at };
    if (value > limit && (values[i - 1] as number) <= limit && (values[i] as number) <= limit) possible++;
  }
  return pairs === 0 ? undefined : { phase: series.phase, limit, pairs, highest, possible };
}

/** Squares of the lowest, mean and highest value of an interval. */
interface Squares {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

function squaresOf(series: IntervalSeries, i: number): Squares | undefined {
  const [low = Number.NaN, value, high = Number.NaN] = [series.min?.[i], series.values[i] as number, series.max?.[i]];
  if (!isValid(series, i) || Number.isNaN(high)) return undefined;
  // Extremes that contradict the mean (a check reports them) must not make the bound too low.
  return {
    min: Number.isNaN(low) ? 0 : Math.min(low, value) ** 2,
    mean: value ** 2,
    max: Math.max(high, value) ** 2,
  };
}

function largestMeanSquare(before: Squares, after: Squares): number {
  const part = ({ min, mean, max }: Squares, share: number) => Math.min(share * max, mean - (1 - share) * min);
  const sum = (share: number) => part(before, share) + part(after, 1 - share);
  return Math.max(...[0, 1, breakOf(before), 1 - breakOf(after)].map(sum));
}

/** The share of an interval at which its two bounds meet. */
function breakOf({ min, mean, max }: Squares): number {
  return max === min ? 1 : (mean - min) / (max - min);
}
