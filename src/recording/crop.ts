import { UsageError } from "../errors.js";
import { say, type Text } from "../sentence.js";
import type { Ledger, LoggedSeries, Recording, TimeAxis } from "./recording.js";
import { spanOf } from "./snippets.js";
import { type Instant, isoUtc } from "./time.js";
import { instantOfSample, sampleOfInstant, type WaveformBlock, type WaveformSource } from "./waveform.js";

/**
 * The part of a recording whose intervals lie wholly in [from, to). The ledger
 * says what was left out.
 * @throws UsageError if nothing remains
 */
export function crop(recording: Recording, from: Instant | undefined, to: Instant | undefined): Recording {
  if (from === undefined && to === undefined) return recording;
  const first = from ?? Number.NEGATIVE_INFINITY;
  const last = to ?? Number.POSITIVE_INFINITY;
  const axes = new Map<TimeAxis, { axis: TimeAxis; begin: number; end: number }>();
  const cut = (axis: TimeAxis) => {
    const known = axes.get(axis);
    if (known) return known;
    const begin = count(axis.starts, (s) => s < first);
    const end = count(axis.starts, (s) => s + axis.interval <= last);
    const made = {
      axis: { ...axis, starts: axis.starts.subarray(begin, end), flagged: axis.flagged.subarray(begin, end) },
      begin,
      end,
    };
    axes.set(axis, made);
    return made;
  };
  const series = recording.series.map((s): LoggedSeries => {
    const { axis, begin, end } = cut(s.axis);
    return {
      ...s,
      axis,
      values: s.values.subarray(begin, end),
      ...(s.min !== undefined && { min: s.min.subarray(begin, end) }),
      ...(s.max !== undefined && { max: s.max.subarray(begin, end) }),
    };
  });
  const kept = series.filter((s) => s.values.length > 0);
  const waveforms = recording.waveforms.flatMap((w) => cropWaveform(w, first, last));
  if (kept.length === 0 && waveforms.length === 0) {
    throw new UsageError(
      `Nothing of the log lies in the span asked for; it runs from ${isoUtc(recording.start)} to ${isoUtc(recording.end)}.`,
    );
  }
  const { start, end } = spanOf(kept, waveforms);
  const remark = say`Only the span from ${isoUtc(start)} to ${isoUtc(end)} was asked for; the log runs from ${isoUtc(recording.start)} to ${isoUtc(recording.end)}.`;
  return {
    ...recording,
    start,
    end,
    series: kept,
    waveforms,
    ...(recording.events !== undefined && {
      events: recording.events.filter((e) => e.start >= first && e.start < last),
    }),
    cropped: { start: recording.start, end: recording.end },
    ledger: cropLedger(recording.ledger, start, end, remark),
  };
}

/** What happened outside the span is left out; counts of rows stay those of the whole log. */
function cropLedger(ledger: Ledger, start: Instant, end: Instant, remark: Text): Ledger {
  const within = ({ at }: { readonly at: Instant }) => at >= start && at < end;
  return {
    ...ledger,
    conflicts: ledger.conflicts.filter((at) => within({ at })),
    clockSteps: ledger.clockSteps.filter(within),
    clockChanges: ledger.clockChanges.filter(within),
    remarks: [...ledger.remarks, remark],
  };
}

/** The samples taken in [from, to) as a source of their own; none where the two do not meet. */
function cropWaveform(source: WaveformSource, from: Instant, to: Instant): WaveformSource[] {
  const begin = Math.max(0, Math.ceil(sampleOfInstant(source, from)));
  const end = Math.min(source.length, Math.ceil(sampleOfInstant(source, to)));
  if (begin >= end) return [];
  async function* blocks(): AsyncIterable<WaveformBlock> {
    for await (const { first, samples } of source.blocks()) {
      const length = samples[0]?.length ?? 0;
      if (first >= end) return;
      const [skip, stop] = [Math.max(0, begin - first), Math.min(length, end - first)];
      if (skip < stop) yield { first: first + skip - begin, samples: samples.map((s) => s.subarray(skip, stop)) };
    }
  }
  const stretches = source.stretches?.flatMap(({ first, length }) => {
    const [from, to] = [Math.max(begin, first), Math.min(end, first + length)];
    return from < to ? [{ first: from - begin, length: to - from }] : [];
  });
  if (stretches?.length === 0) return [];
  const cut = { ...source, start: instantOfSample(source, begin), length: end - begin, blocks };
  return [stretches === undefined ? cut : { ...cut, stretches }];
}

/** How many leading entries of a rising array meet the condition. */
function count(starts: Float64Array, condition: (start: Instant) => boolean): number {
  const index = starts.findIndex((s) => !condition(s));
  return index < 0 ? starts.length : index;
}
