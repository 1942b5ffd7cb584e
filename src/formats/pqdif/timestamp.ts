import { DAY, type Instant, SECOND } from "../../recording/time.js";

export const TIMESTAMP_BYTES = 12;

/**
 * The stored day of 1970-01-01, so day 0 is 1899-12-30. The headers' text speaks of 1900-01-01, their constant and the files
 * seen give 1899-12-30.
 */
const DAY_OF_1970 = 25_569;

/**
 * A stored time (uint32 day, REAL8 seconds in it) as an instant, rounded to the microsecond. Seconds may be 86 400 or more:
 * some writers store the day before. Whether it is local time or UTC the file does not say. NaN where the seconds are no
 * number or the time lies beyond what an instant can hold.
 */
export function instantOf(view: DataView, at: number): Instant {
  const day = view.getUint32(at, true) - DAY_OF_1970;
  const instant = day * DAY + Math.round(view.getFloat64(at + 4, true) * SECOND);
  return Number.isSafeInteger(instant) && Math.abs(instant) < LATEST ? instant : Number.NaN;
}

/** What ISO 8601 text can say of an instant (ECMA-262: 10⁸ days around 1970), as far as it is exact. */
const LATEST = Math.min(Number.MAX_SAFE_INTEGER, 8.64e18);

/** Writes an instant from 1899-12-30 on in that form. */
export function writeInstant(view: DataView, at: number, instant: Instant): void {
  const day = Math.floor(instant / DAY);
  view.setUint32(at, day + DAY_OF_1970, true);
  view.setFloat64(at + 4, (instant - day * DAY) / SECOND, true);
}

/** An instant from text as "2026-11-25 14:00:00.5", without a zone, as the stored times are; else undefined. */
export function isoInstant(text: string): Instant | undefined {
  if (!/^\d{4}-\d\d-\d\d[ T]\d\d:\d\d:\d\d(\.\d+)?$/.test(text)) return undefined;
  const [seconds, fraction = ""] = text.split(".");
  const ms = Date.parse(`${seconds?.replace(" ", "T")}Z`);
  return Number.isNaN(ms) ? undefined : ms * 1000 + Math.round(Number(`0.${fraction}0`) * SECOND);
}
