import type { Span } from "../assess.js";
import { UsageError } from "../errors.js";
import type { Recording } from "../recording/recording.js";
import type { Instant } from "../recording/time.js";
import { TimeZone } from "../recording/time-zone.js";

const STAMP = /^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}:\d{2}(?::\d{2})?))?(Z|[+-]\d{2}:?\d{2})?$/;

/**
 * What `--from` and `--to` mean for a recording: a stamp with an offset is that instant, one without is local time of
 * the log's zone.
 * @throws UsageError for a stamp that is no ISO 8601 date, or falls into an hour that the clock skipped
 */
export function spanOf(recording: Recording, from: string | undefined, to: string | undefined): Span {
  const zone = TimeZone.open(recording.ledger.timeBase.zone, recording.start, recording.end);
  const read = (option: string, text: string | undefined) =>
    text === undefined ? undefined : instant(option, text, zone);
  const span = { from: read("--from", from), to: read("--to", to) };
  if (span.from !== undefined && span.to !== undefined && span.from >= span.to) {
    throw new UsageError(`--from ${from} does not lie before --to ${to}.`);
  }
  return span;
}

function instant(option: string, text: string, zone: TimeZone): Instant {
  const match = STAMP.exec(text);
  const [, date, time = "00:00", offset] = match ?? [];
  const asUtc = Date.parse(`${date}T${time}${offset ?? "Z"}`) * 1000;
  if (!match || Number.isNaN(asUtc)) {
    throw new UsageError(
      `${option} ${text} is not a date; write it as 2026-03-02, 2026-03-02T06:30 or 2026-03-02T06:30+01:00.`,
    );
  }
  if (offset !== undefined) return asUtc;
  const result = zone.earlierInstant(asUtc);
  if (Number.isNaN(result))
    throw new UsageError(`${option} ${text} falls into the hour that the clock of ${zone.id} skipped; add an offset.`);
  return result;
}
