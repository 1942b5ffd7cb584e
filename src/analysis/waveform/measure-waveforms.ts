import type { IntervalSeries, Measurements } from "../../recording/measurements.js";
import { keyText } from "../../recording/quantity.js";
import type { MeasurementSettings } from "../../recording/setup.js";
import type { WaveformSource } from "../../recording/waveform.js";
import type { MeasuringPoint } from "./chain.js";

/**
 * Measures each source of a recording by the chain and puts series of one quantity, phase and interval together in time
 * order. Where two sources share an interval (the rate changed within it), the value with the higher coverage stays.
 */
export async function measureWaveforms(
  sources: readonly WaveformSource[],
  point: MeasuringPoint,
  settings: MeasurementSettings,
): Promise<Pick<Measurements, "series" | "events" | "unavailable" | "remarks">> {
  if (sources.length === 0) return { series: [], events: [], unavailable: [], remarks: [] };
  // The chain and its transforms are loaded only where there are samples to measure.
  const [{ measureWaveform }, { phenomena }] = await Promise.all([import("./chain.js"), import("./index.js")]);
  const { harmonics, smoothedHarmonics: smoothed, signallingFrequencies, lamp } = settings;
  const options = {
    ...(harmonics !== undefined && { harmonics }),
    ...(smoothed !== undefined && { smoothed }),
    ...(signallingFrequencies !== undefined && { signallingFrequencies }),
    ...(lamp !== undefined && { lamp }),
  };
  const results = [];
  for (const source of sources) results.push(await measureWaveform(source, point, options, phenomena(settings)));
  const series = new Map<string, IntervalSeries>();
  for (const part of results.flatMap((r) => r.series)) {
    const key = `${keyText(part)} ${part.interval}`;
    const before = series.get(key);
    series.set(key, before === undefined ? part : join(before, part));
  }
  return {
    series: [...series.values()],
    events: results.flatMap((r) => r.events).sort((a, b) => a.start - b.start),
    unavailable: results.flatMap((r) => r.unavailable),
    remarks: [...new Set(results.flatMap((r) => r.remarks))],
  };
}

/** Two series of one key and interval as one. `min` and `max` are kept only where both have them. */
function join(a: IntervalSeries, b: IntervalSeries): IntervalSeries {
  const places = [...a.starts.keys()]
    .map((i) => ({ from: a, i }))
    .concat([...b.starts.keys()].map((i) => ({ from: b, i })));
  const start = (p: (typeof places)[number]) => p.from.starts[p.i] as number;
  const coverage = (p: (typeof places)[number]) => p.from.coverage[p.i] as number;
  places.sort((p, q) => start(p) - start(q) || coverage(q) - coverage(p));
  const kept = places.filter((p, k) => k === 0 || start(p) !== start(places[k - 1] as (typeof places)[number]));
  const take = (column: (s: IntervalSeries) => ArrayLike<number>) =>
    Float64Array.from(kept, (p) => column(p.from)[p.i] as number);
  const { min: _min, max: _max, ...rest } = a;
  return {
    ...rest,
    starts: take((s) => s.starts),
    values: take((s) => s.values),
    ...(a.min !== undefined && b.min !== undefined && { min: take((s) => s.min ?? s.values) }),
    ...(a.max !== undefined && b.max !== undefined && { max: take((s) => s.max ?? s.values) }),
    flagged: Uint8Array.from(take((s) => s.flagged)),
    coverage: take((s) => s.coverage),
  };
}
