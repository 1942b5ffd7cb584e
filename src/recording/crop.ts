import { UsageError } from "../errors.js";
import type { LoggedSeries, Recording, TimeAxis } from "./recording.js";
import { type Instant, isoUtc } from "./time.js";

/**
 * The part of a recording whose intervals lie wholly in [from, to). The ledger stays that of the whole log, with a
 * remark that says what was left out.
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
  if (kept.length === 0) {
    throw new UsageError(
      `Nothing of the log lies in the span asked for; it runs from ${isoUtc(recording.start)} to ${isoUtc(recording.end)}.`,
    );
  }
  const start = Math.min(...kept.map((s) => s.axis.starts[0] as number));
  const end = Math.max(...kept.map((s) => (s.axis.starts[s.axis.starts.length - 1] as number) + s.axis.interval));
  const remark = `Only the span from ${isoUtc(start)} to ${isoUtc(end)} was asked for; the log runs from ${isoUtc(recording.start)} to ${isoUtc(recording.end)}.`;
  return {
    ...recording,
    start,
    end,
    series: kept,
    ledger: { ...recording.ledger, remarks: [...recording.ledger.remarks, remark] },
  };
}

/** How many leading entries of a rising array meet the condition. */
function count(starts: Float64Array, condition: (start: Instant) => boolean): number {
  const index = starts.findIndex((s) => !condition(s));
  return index < 0 ? starts.length : index;
}
