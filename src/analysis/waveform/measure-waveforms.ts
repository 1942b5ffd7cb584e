import type { IntervalSeries, Measurements } from "../../recording/measurements.js";
import { keyText } from "../../recording/quantity.js";
import type { MeasurementSettings } from "../../recording/setup.js";
import type { AskedSpan, SlidingVoltage, SpanVoltage } from "../../recording/supply-detail.js";
import type { WaveformSource } from "../../recording/waveform.js";
import { distinct } from "../../sentence.js";
import { joinSeries } from "../join-series.js";
import { joinSliding, joinSpans } from "../join-supply-detail.js";
import type { MeasuringPoint } from "./chain.js";

export interface MeasuredWaveforms extends Pick<Measurements, "series" | "events" | "unavailable" | "remarks"> {
  readonly sliding: readonly SlidingVoltage[];
  readonly spans: readonly SpanVoltage[];
}

/** The phenomena that list events. */
const EVENTS: ReadonlySet<string> = new Set(["voltage-events", "rapid-voltage-change", "transients", "inrush-current"]);

/**
 * Measures each source of a recording by the chain and puts series of one quantity, phase and interval together in time
 * order; see joinSeries for an interval that two sources share.
 * @param spans about which is asked what the voltage did
 * @param eventsOnly of snippets beside logged series, whose interval values would stand for hardly any of the interval
 */
export async function measureWaveforms(
  sources: readonly WaveformSource[],
  point: MeasuringPoint,
  settings: MeasurementSettings,
  spans: readonly AskedSpan[] = [],
  eventsOnly = false,
): Promise<MeasuredWaveforms> {
  if (sources.length === 0) return { series: [], events: [], unavailable: [], remarks: [], sliding: [], spans: [] };
  // The chain and its transforms are loaded only where there are samples to measure.
  const [{ measureWaveform }, { phenomena }] = await Promise.all([import("./chain.js"), import("./index.js")]);
  const { harmonics, smoothedHarmonics: smoothed, signallingFrequencies, lamp } = settings;
  const options = {
    ...(harmonics !== undefined && { harmonics }),
    ...(smoothed !== undefined && { smoothed }),
    ...(signallingFrequencies !== undefined && { signallingFrequencies }),
    ...(lamp !== undefined && { lamp }),
  };
  const measured = phenomena(settings, spans).filter((p) => !eventsOnly || EVENTS.has(p.id));
  const results = [];
  for (const source of sources) results.push(await measureWaveform(source, point, options, measured));
  const series = new Map<string, IntervalSeries>();
  for (const part of eventsOnly ? [] : results.flatMap((r) => r.series)) {
    const key = `${keyText(part)} ${part.interval}`;
    const before = series.get(key);
    series.set(key, before === undefined ? part : joinSeries(before, part));
  }
  return {
    series: [...series.values()],
    events: results.flatMap((r) => r.events).sort((a, b) => a.start - b.start),
    unavailable: eventsOnly ? [] : results.flatMap((r) => r.unavailable),
    sliding: joinSliding(results.flatMap((r) => r.sliding)),
    spans: joinSpans(results.flatMap((r) => r.spans)),
    remarks: eventsOnly ? [] : distinct(results.flatMap((r) => r.remarks)),
  };
}
