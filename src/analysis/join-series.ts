import { type IntervalSeries, isValid } from "../recording/measurements.js";

/**
 * Two series of one key and interval as one, in time order. Where both have an interval, that of `first` stays if it is
 * valid, else the one with the higher coverage. `min` and `max` are kept only where both series have them.
 */
export function joinSeries(first: IntervalSeries, second: IntervalSeries): IntervalSeries {
  const places = [first, second].flatMap((from) => [...from.starts.keys()].map((i) => ({ from, i })));
  type Place = (typeof places)[number];
  const start = (p: Place) => p.from.starts[p.i] as number;
  const rank = (p: Place) => (p.from === first && isValid(first, p.i) ? 2 : (p.from.coverage[p.i] as number));
  places.sort((p, q) => start(p) - start(q) || rank(q) - rank(p));
  const kept = places.filter((p, k) => k === 0 || start(p) !== start(places[k - 1] as Place));
  const take = (column: (s: IntervalSeries) => ArrayLike<number>) =>
    Float64Array.from(kept, (p) => column(p.from)[p.i] as number);
  const { min: firstMin, max: firstMax, ...rest } = first;
  const { min: secondMin, max: secondMax } = second;
  return {
    ...rest,
    origin: kept.every((p) => p.from.origin === "logged") ? "logged" : "computed",
    starts: take((s) => s.starts),
    values: take((s) => s.values),
    ...(firstMin !== undefined &&
      secondMin !== undefined && { min: take((s) => (s === first ? firstMin : secondMin)) }),
    ...(firstMax !== undefined &&
      secondMax !== undefined && { max: take((s) => (s === first ? firstMax : secondMax)) }),
    flagged: Uint8Array.from(take((s) => s.flagged)),
    coverage: take((s) => s.coverage),
  };
}
