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
  const { zone } = recording.ledger.timeBase;
  const span = {
    from: from === undefined ? undefined : instant("--from", from, zone),
    to: to === undefined ? undefined : instant("--to", to, zone),
  };
  if (span.from !== undefined && span.to !== undefined && span.from >= span.to) {
    throw new UsageError(`--from ${from} does not lie before --to ${to}.`);
  }
  return span;
}

function instant(option: string, text: string, zoneId: string): Instant {
  const match = STAMP.exec(text);
  const [, date, time = "00:00", offset] = match ?? [];
  const asUtc = Date.parse(`${date}T${time}${offset ?? "Z"}`) * 1000;
  // Date.parse turns 30 February into 2 March.
  const exists = !Number.isNaN(asUtc) && new Date(`${date}T00:00Z`).toISOString().startsWith(String(date));
  if (!match || !exists) {
    throw new UsageError(
      `${option} ${text} is not a date; write it as 2026-03-02, 2026-03-02T06:30 or 2026-03-02T06:30+01:00.`,
    );
  }
  if (offset !== undefined) return asUtc;
  const zone = TimeZone.open(zoneId, asUtc, asUtc);
  const result = zone.earlierInstant(asUtc);
  if (Number.isNaN(result)) {
    throw new UsageError(`${option} ${text} falls into the hour that the clock of ${zone.id} skipped; add an offset.`);
  }
  return result;
}
