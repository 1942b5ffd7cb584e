import type { IntervalSeries } from "../../src/recording/measurements.js";
import type { Phase, Quantity } from "../../src/recording/quantity.js";
import { QUANTITIES } from "../../src/recording/quantity.js";
import type { LoggedSeries, TimeAxis } from "../../src/recording/recording.js";
import { type Duration, type Instant, MINUTE } from "../../src/recording/time.js";

/** Monday 2026-03-02 00:00 UTC: far from any clock change. */
export const START: Instant = Date.UTC(2026, 2, 2) * 1000;

export function axis(n: number, interval: Duration = 10 * MINUTE, start: Instant = START): TimeAxis {
  return {
    interval,
    starts: Float64Array.from({ length: n }, (_, i) => start + i * interval),
    flagged: new Uint8Array(n),
  };
}

export function logged(
  quantity: Quantity,
  phase: Phase,
  values: readonly number[],
  options: { interval?: Duration; start?: Instant; order?: number; unit?: LoggedSeries["unit"]; axis?: TimeAxis } = {},
): LoggedSeries {
  return {
    quantity,
    phase,
    ...(options.order !== undefined && { order: options.order }),
    unit: options.unit ?? QUANTITIES[quantity].unit,
    axis: options.axis ?? axis(values.length, options.interval, options.start),
    values: Float64Array.from(values),
  };
}

export function intervals(
  quantity: Quantity,
  phase: Phase,
  values: readonly number[],
  options: { interval?: Duration; start?: Instant; order?: number; flagged?: readonly number[] } = {},
): IntervalSeries {
  const { starts, interval } = axis(values.length, options.interval, options.start);
  return {
    quantity,
    phase,
    ...(options.order !== undefined && { order: options.order }),
    unit: QUANTITIES[quantity].unit,
    interval,
    origin: "logged",
    starts,
    values: Float64Array.from(values),
    flagged: Uint8Array.from(options.flagged ?? values.map(() => 0)),
    coverage: Float64Array.from(values, (v) => (Number.isNaN(v) ? 0 : 1)),
  };
}
