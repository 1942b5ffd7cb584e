import { UsageError } from "../errors.js";
import type { Recording } from "./recording.js";
import type { GivenExclusion } from "./setup-evidence.js";
import { statedInstant } from "./stated-time.js";
import { type Duration, type Instant, isoUtc } from "./time.js";

/** [from, to) */
export interface Span {
  readonly from: Instant;
  readonly to: Instant;
}

/** A span in which the standard is said not to apply, cut to the recording. */
export interface ExcludedSpan extends Span {
  readonly given: GivenExclusion;
  /** As stated. */
  readonly stated: Span;
}

/**
 * The exclusions as spans of UTC, in the order in which they were stated. What of them lies outside the recording is cut
 * off: no interval there was ever expected, and none that is missing there may be made good. An exclusion
 * in a part of the log that was not asked for (--from, --to) stays, as an empty span.
 * @throws UsageError for one that ends before it begins, or that lies wholly outside the log
 */
export function excludedSpans(
  given: readonly GivenExclusion[],
  { start, end, cropped, ledger }: Pick<Recording, "start" | "end" | "cropped" | "ledger">,
): ExcludedSpan[] {
  const log = cropped ?? { start, end };
  return given.map((exclusion, i) => {
    const entry = `exclusions, item ${i + 1},`;
    const from = statedInstant(`${entry} from:`, exclusion.from, ledger.timeBase.zone);
    const to = statedInstant(`${entry} to:`, exclusion.to, ledger.timeBase.zone);
    if (from >= to)
      throw new UsageError(`${entry} ends (${exclusion.to}) before it begins (${exclusion.from}); correct its times.`);
    if (to <= log.start || from >= log.end) {
      throw new UsageError(
        `${entry} from ${isoUtc(from)} to ${isoUtc(to)}, lies outside the log, which runs from ${isoUtc(log.start)} to ${isoUtc(log.end)}; correct its times, or their offset from UTC, or leave it out.`,
      );
    }
    const first = Math.min(Math.max(from, start), end);
    return { from: first, to: Math.max(first, Math.min(to, end)), given: exclusion, stated: { from, to } };
  });
}

/** The spans in time order, those that overlap or touch as one; empty ones dropped. */
export function unionOf(spans: readonly Span[]): Span[] {
  const sorted = spans.filter(({ from, to }) => from < to).sort((a, b) => a.from - b.from);
  const merged: Span[] = [];
  for (const span of sorted) {
    const last = merged[merged.length - 1];
    if (last === undefined || span.from > last.to) merged.push({ from: span.from, to: span.to });
    else merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
  }
  return merged;
}

export function overlaps(spans: readonly Span[], start: Instant, end: Instant): boolean {
  return spans.some(({ from, to }) => from < end && to > start);
}

/** How many of `count` intervals, one after the other from `first` on, overlap any of the spans; see `unionOf`. */
export function overlappedIntervals(union: readonly Span[], first: Instant, interval: Duration, count: number): number {
  let found = 0;
  /** The first interval not yet looked at: two spans may lie in one interval. */
  let next = 0;
  for (const { from, to } of union) {
    const begin = Math.max(next, Math.floor((from - first) / interval));
    const end = Math.min(count, Math.ceil((to - first) / interval));
    if (end <= begin) continue;
    found += end - begin;
    next = end;
  }
  return found;
}
