import type { IntervalSeries, Measurements, Unavailable } from "../recording/measurements.js";
import { keyText, QUANTITIES, type Quantity } from "../recording/quantity.js";
import type { Recording } from "../recording/recording.js";
import type { MeasurementSettings } from "../recording/setup.js";
import { areSnippets, sampledTime } from "../recording/snippets.js";
import type { AskedSpan } from "../recording/supply-detail.js";
import { DAY, type Duration, durationText, HOUR, MINUTE, SECOND } from "../recording/time.js";
import { distinct, say, strung, type Text } from "../sentence.js";
import { aggregate, asIntervalSeries, type SourceSeries } from "./aggregation.js";
import { derive } from "./derive.js";
import { pltFromPst, pltOfBlocks } from "./flicker.js";
import { joinSeries } from "./join-series.js";
import { soundEvents } from "./logged-events.js";
import { supplyDetailOf } from "./supply-detail.js";
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
 * Recording → Measurements: what was logged and what was sampled, each at the intervals the standards judge. Where both
 * hold a value the logged one is judged; samples that are snippets beside logged series show events only.
 * @param spans about which is asked what the supply voltage did
 * @throws UsageError for waveforms that the chain cannot measure
 */
export async function measure(
  recording: Recording,
  point: MeasuringPoint,
  wanted: readonly Wanted[] = [],
  settings: MeasurementSettings = {},
  spans: readonly AskedSpan[] = [],
): Promise<Measurements> {
  const logged = measureLogged(recording, wanted);
  const snippets = areSnippets(recording);
  const eventsOnly = snippets && recording.series.length > 0;
  const sampled = await measureWaveforms(recording.waveforms, point, settings, spans, eventsOnly);
  const events = [...sampled.events, ...soundEvents(recording.events ?? [], sampled.events, point, settings)];
  const remarks = [...logged.remarks, ...sampled.remarks, ...(eventsOnly ? [snippetsRemark(recording)] : [])];
  const series = merged(logged.series, sampled.series);
  return {
    start: recording.start,
    end: recording.end,
    series,
    supply: supplyDetailOf(recording.series, series, sampled, point, spans),
    events: events.sort((a, b) => a.start - b.start),
    eventsSought: recording.waveforms.length > 0 && !snippets,
    ...((snippets || recording.events !== undefined) && { eventsTriggered: true }),
    unavailable: [...logged.unavailable, ...sampled.unavailable],
    remarks: distinct(remarks),
  };
}

function snippetsRemark({ waveforms, start, end }: Recording): Text {
  const seconds = Number((sampledTime(waveforms) / SECOND).toPrecision(3));
  const days = Number(((end - start) / DAY).toPrecision(3));
  return say`The waveforms of the log last ${seconds} s of ${days} d; events are taken from them, interval values only from what was logged.`;
}

/** Logged series, and the sampled ones of what was not logged at that interval. */
function merged(logged: readonly IntervalSeries[], sampled: readonly IntervalSeries[]): readonly IntervalSeries[] {
  const place = (s: IntervalSeries) => `${keyText(s)} ${s.interval}`;
  const known = new Set(logged.map(place));
  return [...logged, ...sampled.filter((s) => !known.has(place(s)))];
}

type Measured = Pick<Measurements, "series" | "unavailable" | "remarks">;

/**
 * Every logged or derived series at the standard's interval, and at any other interval in `wanted`. A series logged at
 * just that interval is taken as it is; shorter ones are aggregated and fill the intervals that the first lacks, so that
 * no part of a recording is left out; a longer one stays at its own interval, and `unavailable` says that the standard's
 * cannot be had from it. Logged values go before derived ones, except that Plt comes from ten-minute Pst first.
 */
export function measureLogged(recording: Recording, wanted: readonly Wanted[] = []): Measured {
  const derived = derive(recording.series);
  const unavailable: Unavailable[] = [...derived.unavailable];
  const remarks: Text[] = [...derived.remarks];
  const series = new Map<string, IntervalSeries>();
  const keep = (s: IntervalSeries) => {
    const key = `${keyText(s)} ${s.interval}`;
    const before = series.get(key);
    series.set(key, before === undefined ? s : joinSeries(before, s));
  };

  for (const source of derived.series.filter((s) => s.quantity === "pst" && s.axis.interval === 10 * MINUTE)) {
    keep(pltFromPst(source));
    remarks.push(say`Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.`);
  }
  for (const sources of groupByKey(derived.series)) {
    const { quantity, phase, order } = sources[0] as SourceSeries;
    for (const target of targets(quantity, wanted)) {
      const fitting = sources.filter((s) => target % s.axis.interval === 0 && canCombine(s, target));
      for (const source of fitting.sort(byPrecedence)) {
        keep(atInterval(source, target));
        if (source.axis.interval !== target) remarks.push(howCombined(source, target));
      }
      if (fitting.length > 0) continue;
      for (const source of sources) keep(asIntervalSeries(source));
      const intervals = distinct(sources.map((s) => durationText(s.axis.interval)));
      unavailable.push({
        quantity,
        phase,
        ...(order !== undefined && { order }),
        reason: say`It was logged every ${strung(intervals, " / ")}; the standard counts values of ${durationText(target)}, which cannot be made from that.`,
      });
    }
  }
  return { series: [...series.values()], unavailable, remarks: distinct(remarks) };
}

function canCombine({ quantity, axis }: SourceSeries, target: Duration): boolean {
  return axis.interval === target || quantity === "plt" || QUANTITIES[quantity].aggregation !== "none";
}

/** The longest interval that fits goes first: the one that needs the least combining. Logged before derived. */
function byPrecedence(a: SourceSeries, b: SourceSeries): number {
  return b.axis.interval - a.axis.interval || (a.origin === b.origin ? 0 : a.origin === "logged" ? -1 : 1);
}

function atInterval(source: SourceSeries, target: Duration): IntervalSeries {
  if (source.axis.interval === target) return asIntervalSeries(source);
  return source.quantity === "plt" ? pltOfBlocks(source) : aggregate(source, target);
}

function howCombined({ quantity, axis }: SourceSeries, target: Duration): Text {
  const interval = durationText(axis.interval);
  if (quantity === "plt") {
    return say`Plt was logged every ${interval}; each two-hour block without ten-minute Pst takes the value of its last row.`;
  }
  const { symbol, aggregation } = QUANTITIES[quantity];
  const how = aggregation === "rms" ? say`root of the mean square` : say`arithmetic mean`;
  return say`${symbol}: values of ${interval} combined to ${durationText(target)} on the clock (${how}).`;
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
