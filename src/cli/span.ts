import type { Span } from "../assess.js";
import { UsageError } from "../errors.js";
import type { Recording } from "../recording/recording.js";
import { statedInstant } from "../recording/stated-time.js";

/**
 * What `--from` and `--to` mean for a recording: a stamp with an offset is that instant, one without is local time of
 * the log's zone.
 * @throws UsageError for a stamp that is no ISO 8601 date, or that the clock skipped or showed twice
 */
export function spanOf(recording: Recording, from: string | undefined, to: string | undefined): Span {
  const { zone } = recording.ledger.timeBase;
  const span = {
    from: from === undefined ? undefined : statedInstant("--from", from, zone),
    to: to === undefined ? undefined : statedInstant("--to", to, zone),
  };
  if (span.from !== undefined && span.to !== undefined && span.from >= span.to) {
    throw new UsageError(`--from ${from} does not lie before --to ${to}.`);
  }
  return span;
}
