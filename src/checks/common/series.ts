import type { Phase, Quantity } from "../../recording/quantity.js";
import type { LoggedSeries, Recording, TimeAxis } from "../../recording/recording.js";

/** The first logged series of a quantity on a phase (and order). */
export function loggedSeries(
  { series }: Recording,
  quantity: Quantity,
  phase: Phase,
  order?: number,
): LoggedSeries | undefined {
  return series.find((s) => s.quantity === quantity && s.phase === phase && s.order === order);
}

/**
 * The values of a series on the rows of another table: the very array where both are one table, else a copy with NaN
 * where the other table has no row that starts at the same instant. Undefined where the intervals differ in length.
 */
export function alignedValues(series: LoggedSeries, axis: TimeAxis): Float64Array | undefined {
  if (series.axis === axis) return series.values;
  if (series.axis.interval !== axis.interval) return undefined;
  const aligned = new Float64Array(axis.starts.length).fill(Number.NaN);
  const { starts } = series.axis;
  let row = 0;
  for (let i = 0; i < aligned.length; i++) {
    const start = axis.starts[i] as number;
    while (row < starts.length && (starts[row] as number) < start) row++;
    if (starts[row] === start) aligned[i] = series.values[row] as number;
  }
  return aligned;
}

/**
 * The smallest positive difference between neighbouring values, a stand-in for the last written digit of a column
 * whose resolution is not known; 0 where the values never change.
 */
export function smallestStep(values: Float64Array): number {
  let step = Number.POSITIVE_INFINITY;
  for (let i = 1; i < values.length; i++) {
    const d = Math.abs((values[i] as number) - (values[i - 1] as number));
    if (d > 0 && d < step) step = d;
  }
  return step === Number.POSITIVE_INFINITY ? 0 : step;
}

/** The last written digit of a series, in its unit: as the reader found it, else the smallest step that occurs. */
export function resolutionOf(series: LoggedSeries): number {
  return series.resolution ?? smallestStep(series.values);
}
