import { say, type Text } from "../sentence.js";

/** Instants and lengths of time, in integer microseconds. */

/** Integer microseconds since 1970-01-01T00:00Z; exact in a double until the year 2255. */
export type Instant = number;

/** A length of time in integer microseconds. */
export type Duration = number;

export const SECOND: Duration = 1_000_000;
export const MINUTE: Duration = 60 * SECOND;
export const HOUR: Duration = 60 * MINUTE;
export const DAY: Duration = 24 * HOUR;
/** Seven times 24 hours, whatever the local clock does: 1008 intervals of ten minutes. */
export const WEEK: Duration = 7 * DAY;
/** 365 days, the year that EN 50160's frequency rule is counted over here (3 153 600 intervals of 10 s). */
export const YEAR: Duration = 365 * DAY;

/** ISO 8601 in UTC with `Z`; a fraction only where there is one. */
export function isoUtc(t: Instant): string {
  const ms = Math.floor(t / 1000);
  const micros = t - ms * 1000;
  const iso = new Date(ms).toISOString();
  if (micros !== 0) return `${iso.slice(0, -1)}${String(micros).padStart(3, "0")}Z`;
  return iso.endsWith(".000Z") ? `${iso.slice(0, -5)}Z` : iso;
}

const CYCLE_INTERVALS = new Map<Duration, string>([
  [SECOND / 100, "half-cycle"],
  [SECOND / 5, "10/12-cycle"],
]);

/** The name of an interval in results: "10min", "2h", "10s"; intervals counted in cycles are named by their cycles. */
export function intervalName(d: Duration): string {
  return CYCLE_INTERVALS.get(d) ?? String(durationText(d)).replace(" ", "");
}

/** "10 min", "2 h", "3 s": a duration in the unit that divides it. */
export function durationText(d: Duration): Text {
  const whole = (unit: Duration) => d >= unit && d % unit === 0;
  if (d === WEEK) return say`1 week`;
  if (whole(WEEK)) return say`${d / WEEK} weeks`;
  if (whole(DAY)) return say`${d / DAY} d`;
  if (whole(HOUR)) return say`${d / HOUR} h`;
  if (whole(MINUTE)) return say`${d / MINUTE} min`;
  return say`${d / SECOND} s`;
}
