import { z } from "zod";
import { UsageError } from "../errors.js";
import type { Instant } from "./time.js";
import { TimeZone } from "./time-zone.js";

/** Times that people write: ISO 8601, with an offset from UTC or in the local time of the log. */

const STAMP = /^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}:\d{2}(?::\d{2})?))?(Z|[+-]\d{2}:?\d{2})?$/;

/** A time of day on a date. Without an offset it is local time of the log's zone: see `statedInstant`. */
export const statedTimeSchema = z
  .string()
  .refine(
    (text) => text.length > "2026-03-02".length && utcReading(text) !== undefined,
    "a time is a date with a time of day, written as 2026-03-02T06:30 (local time of the log), 2026-03-02T06:30+01:00 or 2026-03-02T05:30Z",
  );

/** The stamp read as if it were in UTC, or with its own offset; undefined where it is no ISO 8601 date. */
function utcReading(text: string): { readonly at: Instant; readonly hasOffset: boolean } | undefined {
  const [whole, date, time = "00:00", offset] = STAMP.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const at = Date.parse(`${date}T${time}${offset ?? "Z"}`) * 1000;
  // Date.parse turns 30 February into 2 March.
  const exists = !Number.isNaN(at) && new Date(`${date}T00:00Z`).toISOString().startsWith(String(date));
  return exists ? { at, hasOffset: offset !== undefined } : undefined;
}

/**
 * The instant of a stamp; one without an offset is local time of the zone, a date alone is its midnight.
 * @param entry what carries it, for the message ("--from", "exclusions, item 2, to")
 * @throws UsageError for a stamp that is no ISO 8601 date, or that the clock skipped or showed twice
 */
export function statedInstant(entry: string, text: string, zoneId: string): Instant {
  const read = utcReading(text);
  if (read === undefined) {
    throw new UsageError(
      `${entry} ${text} is not a date; write it as 2026-03-02, 2026-03-02T06:30 or 2026-03-02T06:30+01:00.`,
    );
  }
  if (read.hasOffset) return read.at;
  const zone = TimeZone.open(zoneId, read.at, read.at);
  const result = zone.earlierInstant(read.at);
  if (Number.isNaN(result)) {
    throw new UsageError(`${entry} ${text} falls into the hour that the clock of ${zone.id} skipped; add an offset.`);
  }
  if (zone.laterInstant(read.at) !== result) {
    throw new UsageError(
      `${entry} ${text} falls into the hour that the clock of ${zone.id} showed twice; add an offset.`,
    );
  }
  return result;
}
