import type { IntervalSeries } from "../recording/measurements.js";
import { type Phase, supplyPhases } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import type { AskedSpan, SlidingBound, SlidingVoltage, SpanVoltage, SupplyDetail } from "../recording/supply-detail.js";
import { MINUTE } from "../recording/time.js";
import { slidingBound } from "./sliding-bound.js";
import { SlidingMean } from "./sliding-mean.js";
import { SpanMeter } from "./span-meter.js";
import type { MeasuringPoint } from "./waveform/chain.js";

const FIXED = 10 * MINUTE;

/**
 * The judged voltages by the shortest intervals at hand. Of a phase that was both sampled and logged, samples go first
 * for the sliding mean; for a span the shorter intervals do.
 */
export function supplyDetailOf(
  logged: readonly LoggedSeries[],
  series: readonly IntervalSeries[],
  sampled: Pick<SupplyDetail, "sliding" | "spans">,
  point: MeasuringPoint,
  asked: readonly AskedSpan[],
): SupplyDetail {
  const isSampled = (phase: Phase) => sampled.sliding.some((s) => s.phase === phase);
  const sliding = [...sampled.sliding, ...slidingOfLogged(logged, point).filter(({ phase }) => !isSampled(phase))];
  const spans = new Map<string, SpanVoltage>();
  for (const span of [...sampled.spans, ...spansOfLogged(logged, point, asked)]) {
    const key = `${span.phase} ${span.asked.from} ${span.asked.to}`;
    const known = spans.get(key);
    if (known === undefined || span.interval < known.interval) spans.set(key, span);
  }
  return { sliding, bounds: boundsOf(series, point, sliding), spans: [...spans.values()] };
}

/** The sliding 10-min voltage of each judged phase that was logged at shorter intervals, by the shortest that allow it. */
function slidingOfLogged(series: readonly LoggedSeries[], point: MeasuringPoint): SlidingVoltage[] {
  return ofPhases(series, point).flatMap(([, voltages]) => {
    for (const { axis, values, phase } of voltages) {
      if (axis.interval >= FIXED) break;
      const mean = new SlidingMean(phase, axis.interval, point.declaredVoltage);
      for (let i = 0; i < values.length; i++) {
        const start = axis.starts[i] as number;
        mean.add(start, start + axis.interval, values[i] as number);
      }
      const result = mean.finish();
      if (result !== undefined) return [result];
    }
    return [];
  });
}

/** What of the asked spans was logged, each phase by the shortest intervals that touch the span. */
function spansOfLogged(
  series: readonly LoggedSeries[],
  point: MeasuringPoint,
  spans: readonly AskedSpan[],
): SpanVoltage[] {
  return ofPhases(series, point).flatMap(([phase, voltages]) =>
    spans.flatMap((span) => {
      for (const { axis, values, min, max } of voltages) {
        const meter = new SpanMeter(phase, axis.interval, span);
        for (let i = 0; i < values.length; i++) {
          const start = axis.starts[i] as number;
          meter.add(start, start + axis.interval, values[i] as number, min?.[i], max?.[i]);
        }
        const result = meter.finish();
        if (result !== undefined) return [result];
      }
      return [];
    }),
  );
}

/** The bound of each judged phase that has no sliding mean. */
function boundsOf(
  series: readonly IntervalSeries[],
  point: MeasuringPoint,
  sliding: readonly SlidingVoltage[],
): SlidingBound[] {
  return supplyPhases(point.connection).flatMap((phase) => {
    const fixed = series.find((s) => s.quantity === "voltage" && s.phase === phase && s.interval === FIXED);
    if (fixed === undefined || sliding.some((s) => s.phase === phase)) return [];
    return slidingBound(fixed, point.declaredVoltage) ?? [];
  });
}

/** The logged voltages of each judged phase, shortest intervals first. */
function ofPhases(series: readonly LoggedSeries[], { connection }: MeasuringPoint): [Phase, LoggedSeries[]][] {
  return supplyPhases(connection).map((phase) => [
    phase,
    series
      .filter((s) => s.quantity === "voltage" && s.phase === phase)
      .sort((a, b) => a.axis.interval - b.axis.interval),
  ]);
}
