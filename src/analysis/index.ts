import type { IntervalSeries, Measurements, Unavailable } from "../recording/measurements.js";
import { keyText, QUANTITIES, type Quantity } from "../recording/quantity.js";
import type { Recording } from "../recording/recording.js";
import type { MeasurementSettings } from "../recording/setup.js";
import { type Duration, durationText, HOUR, MINUTE, SECOND } from "../recording/time.js";
import { aggregate, asIntervalSeries, type SourceSeries } from "./aggregation.js";
import { derive } from "./derive.js";
import { pltFromPst, pltOfBlocks } from "./flicker.js";
import type { MeasuringPoint } from "./waveform/chain.js";
import { measureWaveforms } from "./waveform/measure-waveforms.js";

/** A quantity at an interval that the rules ask for. */
export interface Wanted {
  readonly quantity: Quantity;
  readonly interval: Duration;
}

/** The interval at which each quantity is measured when nothing else is asked for (EN 50160, IEC 61000-4-30). */
export function standardInterval(quantity: Quantity): Duration {
  if (quantity === "frequency") return 10 * SECOND;
  if (quantity === "mains-signalling") return 3 * SECOND;
  return quantity === "plt" ? 2 * HOUR : 10 * MINUTE;
}

/**
 * Recording → Measurements: what was logged and what was sampled, each at the intervals the standards judge.
 * @throws UsageError for waveforms that the chain cannot measure
 */
export async function measure(
  recording: Recording,
  point: MeasuringPoint,
  wanted: readonly Wanted[] = [],
  settings: MeasurementSettings = {},
): Promise<Measurements> {
  const logged = measureLogged(recording, wanted);
  const sampled = await measureWaveforms(recording.waveforms, point, settings);
  const remarks = [...new Set([...logged.remarks, ...sampled.remarks])];
  return {
    start: recording.start,
    end: recording.end,
    series: [...logged.series, ...sampled.series],
    events: sampled.events,
    eventsSought: recording.waveforms.length > 0,
    unavailable: [...logged.unavailable, ...sampled.unavailable],
    remarks,
  };
}

type Measured = Pick<Measurements, "series" | "unavailable" | "remarks">;

/**
 * Every logged or derived series at the standard's interval, and at any other interval in `wanted`. A series logged at just that interval is taken as it is; a shorter one is aggregated; a longer one stays
 * at its own interval, and `unavailable` says that the standard's cannot be had from it.
 * Where one quantity was logged at several intervals, the one at the wanted interval counts, then the shortest.
 * Plt comes from ten-minute Pst wherever that was logged, else from the logged Plt.
 */
export function measureLogged(recording: Recording, wanted: readonly Wanted[] = []): Measured {
  const derived = derive(recording.series);
  const unavailable: Unavailable[] = [...derived.unavailable];
  const remarks = new Set(derived.remarks);
  const series = new Map<string, IntervalSeries>();
  const keep = (s: IntervalSeries) => series.set(`${keyText(s)} ${s.interval}`, s);

  const pst = derived.series.filter((s) => s.quantity === "pst" && s.axis.interval === 10 * MINUTE);
  for (const source of pst) {
    keep(pltFromPst(source));
    remarks.add("Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.");
  }
  for (const sources of groupByKey(derived.series)) {
    const { quantity, phase, order } = sources[0] as SourceSeries;
    if (quantity === "plt" && pst.some((s) => s.phase === phase)) continue;
    for (const target of targets(quantity, wanted)) {
      const source = best(sources, target);
      const interval = source.axis.interval;
      const { aggregation, symbol } = QUANTITIES[quantity];
      if (interval === target) {
        keep(asIntervalSeries(source));
      } else if (quantity === "plt" && target % interval === 0) {
        keep(pltOfBlocks(source));
        remarks.add(
          `Plt was logged every ${durationText(interval)}; each two-hour block takes the value of its last row.`,
        );
      } else if (aggregation !== "none" && target % interval === 0) {
        keep(aggregate(source, target));
        const how = aggregation === "rms" ? "root of the mean square" : "arithmetic mean";
        remarks.add(
          `${symbol}: values of ${durationText(interval)} combined to ${durationText(target)} on the clock (${how}).`,
        );
      } else {
        keep(asIntervalSeries(source));
        unavailable.push({
          quantity,
          phase,
          ...(order !== undefined && { order }),
          reason: `It was logged every ${durationText(interval)}; the standard counts values of ${durationText(target)}, which cannot be made from that.`,
        });
      }
    }
  }
  return { series: [...series.values()], unavailable, remarks: [...remarks] };
}

function targets(quantity: Quantity, wanted: readonly Wanted[]): Set<Duration> {
  return new Set([standardInterval(quantity), ...wanted.filter((w) => w.quantity === quantity).map((w) => w.interval)]);
}

function groupByKey(series: readonly SourceSeries[]): Iterable<SourceSeries[]> {
  const groups = new Map<string, SourceSeries[]>();
  for (const s of series) {
    const group = groups.get(keyText(s));
    if (group) group.push(s);
    else groups.set(keyText(s), [s]);
  }
  return groups.values();
}

function best(sources: readonly SourceSeries[], target: Duration): SourceSeries {
  const fitting = sources.filter((s) => target % s.axis.interval === 0);
  const pool = fitting.length > 0 ? fitting : sources;
  return (
    pool.find((s) => s.axis.interval === target) ?? pool.reduce((a, b) => (b.axis.interval < a.axis.interval ? b : a))
  );
}
