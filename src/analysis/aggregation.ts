import type { IntervalSeries } from "../recording/measurements.js";
import { QUANTITIES } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import type { Duration } from "../recording/time.js";

/** A logged series, or one derived interval by interval from logged ones. */
export interface SourceSeries extends LoggedSeries {
  readonly origin: "logged" | "computed";
}

/** Running root of the mean square, exact when all values are equal: the sums are of distances from the first value. */
class RmsSum {
  private first = 0;
  private n = 0;
  private linear = 0;
  private square = 0;

  add(value: number): void {
    if (this.n === 0) this.first = value;
    const d = value - this.first;
    this.linear += d;
    this.square += d * d;
    this.n++;
  }

  result(): number {
    return Math.sqrt(this.first * this.first + (2 * this.first * this.linear + this.square) / this.n);
  }
}

/** Running arithmetic mean, exact when all values are equal. */
class MeanSum {
  private first = 0;
  private n = 0;
  private linear = 0;

  add(value: number): void {
    if (this.n === 0) this.first = value;
    this.linear += value - this.first;
    this.n++;
  }

  result(): number {
    return this.first + this.linear / this.n;
  }
}

/** Running cubic mean (Σx³/n)^⅓, exact when all values are equal. */
class CubicMeanSum {
  private first = 0;
  private n = 0;
  private cubes = 0;

  add(value: number): void {
    if (this.n === 0) this.first = value;
    this.cubes += value ** 3 - this.first ** 3;
    this.n++;
  }

  result(): number {
    return this.cubes === 0 ? this.first : Math.cbrt(this.first ** 3 + this.cubes / this.n);
  }
}

const SUMS = { rms: RmsSum, mean: MeanSum, "cubic-mean": CubicMeanSum };

/** A series at its own interval: nothing is combined. Coverage is 1 where there is a value and 0 where there is none. */
export function asIntervalSeries(source: SourceSeries): IntervalSeries {
  const { quantity, phase, order, unit, axis, values, min, max, origin, resolution } = source;
  return {
    quantity,
    phase,
    ...(order !== undefined && { order }),
    unit,
    interval: axis.interval,
    origin,
    starts: axis.starts,
    values,
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    flagged: axis.flagged,
    coverage: Float64Array.from(values, (v) => (Number.isNaN(v) ? 0 : 1)),
    ...(resolution !== undefined && { resolution }),
  };
}

/**
 * Combines shorter intervals into longer ones on the boundaries of the UTC clock (IEC 61000-4-30, aggregation):
 * root of the mean square for r.m.s. quantities, arithmetic mean for frequency and power, cubic mean where asked
 * (Plt from Pst). A shorter interval belongs to the longer one it starts in.
 *
 * Missing values are left out and lower the coverage (valid shorter intervals over all that fit); intervals without
 * any value are absent. An interval is flagged when any part is. `min` and `max` are the logger's extremes where it
 * logged them, otherwise the extremes of the shorter intervals.
 * @param target a whole multiple of the source's interval
 * @throws RangeError if it is not
 */
export function aggregate(
  source: SourceSeries,
  target: Duration,
  rule: keyof typeof SUMS = aggregationRule(source),
): IntervalSeries {
  const { axis, values } = source;
  const parts = target / axis.interval;
  if (!Number.isInteger(parts)) throw new RangeError(`${axis.interval} µs does not divide ${target} µs`);
  const low = source.min ?? values;
  const high = source.max ?? values;

  const capacity = countBins(axis.starts, target);
  const starts = new Float64Array(capacity);
  const result = new Float64Array(capacity);
  const min = new Float64Array(capacity);
  const max = new Float64Array(capacity);
  const flagged = new Uint8Array(capacity);
  const coverage = new Float64Array(capacity);

  let bins = 0;
  for (let i = 0; i < values.length; ) {
    const start = Math.floor((axis.starts[i] as number) / target) * target;
    const sum = new SUMS[rule]();
    let present = 0;
    let anyFlag = 0;
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    for (; i < values.length && (axis.starts[i] as number) < start + target; i++) {
      anyFlag |= axis.flagged[i] as number;
      const value = values[i] as number;
      if (Number.isNaN(value)) continue;
      sum.add(value);
      present++;
      // A missing minimum or maximum is NaN and leaves the comparison false.
      if ((low[i] as number) < lowest) lowest = low[i] as number;
      if ((high[i] as number) > highest) highest = high[i] as number;
    }
    if (present === 0) continue;
    starts[bins] = start;
    result[bins] = sum.result();
    min[bins] = Number.isFinite(lowest) ? lowest : Number.NaN;
    max[bins] = Number.isFinite(highest) ? highest : Number.NaN;
    flagged[bins] = anyFlag;
    coverage[bins] = Math.min(1, present / parts);
    bins++;
  }

  return {
    quantity: source.quantity,
    phase: source.phase,
    ...(source.order !== undefined && { order: source.order }),
    unit: source.unit,
    interval: target,
    origin: "computed",
    starts: starts.subarray(0, bins),
    values: result.subarray(0, bins),
    min: min.subarray(0, bins),
    max: max.subarray(0, bins),
    flagged: flagged.subarray(0, bins),
    coverage: coverage.subarray(0, bins),
    ...(source.resolution !== undefined && { resolution: source.resolution }),
  };
}

function aggregationRule(source: SourceSeries): "rms" | "mean" {
  const rule = QUANTITIES[source.quantity].aggregation;
  if (rule === "none") throw new RangeError(`${source.quantity} cannot be combined from shorter intervals`);
  return rule;
}

function countBins(starts: Float64Array, target: Duration): number {
  let bins = 0;
  let last = Number.NaN;
  for (const start of starts) {
    const bin = Math.floor(start / target);
    if (bin !== last) bins++;
    last = bin;
  }
  return bins;
}
