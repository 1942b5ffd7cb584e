import type { IntervalSeries, Measurements } from "../recording/measurements.js";
import { isValid } from "../recording/measurements.js";
import { intervalName, SECOND } from "../recording/time.js";
import type { Assessment } from "./assessment.js";

/** Plain statistics of every measured series over the whole recording, valid intervals only, nearest-rank percentiles. */
export function summarise(measurements: Measurements): Assessment["summary"] {
  return measurements.series.flatMap((series) => {
    const values = validValues(series).sort();
    const n = values.length;
    if (n === 0) return [];
    const rank = (percent: number) => values[Math.ceil((percent * n) / 100) - 1] as number;
    return [
      {
        quantity: series.quantity,
        phase: series.phase,
        ...(series.order !== undefined && { order: series.order }),
        ...(series.hertz !== undefined && { hertz: series.hertz }),
        unit: series.unit,
        interval: intervalName(series.interval),
        intervalS: series.interval / SECOND,
        n,
        min: values[0] as number,
        mean: values.reduce((sum, v) => sum + v, 0) / n,
        max: values[n - 1] as number,
        p05: rank(5),
        p95: rank(95),
        p99: rank(99),
      },
    ];
  });
}

function validValues(series: IntervalSeries): Float64Array {
  return series.values.filter((_, i) => isValid(series, i));
}
