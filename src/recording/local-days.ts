import { DAY, type Instant } from "./time.js";
import type { TimeZone } from "./time-zone.js";

/** A day of the local calendar: 24 h, or 23 h and 25 h where the clock is changed. */
export interface LocalDay {
  /** "2026-03-29" */
  readonly date: string;
  readonly start: Instant;
  readonly end: Instant;
}

/** The days of a zone's calendar that [from, to) touches, in order of time. */
export function localDays(zone: TimeZone, from: Instant, to: Instant): LocalDay[] {
  const days: LocalDay[] = [];
  const midnight = Math.floor(zone.toLocal(from) / DAY) * DAY;
  for (let local = midnight; ; local += DAY) {
    const start = startOf(zone, local);
    if (start >= to) return days;
    days.push({ date: new Date(local / 1000).toISOString().slice(0, 10), start, end: startOf(zone, local + DAY) });
  }
}

/** The instant at which a local midnight begins; where the clock skips midnight, the instant of that change. */
function startOf(zone: TimeZone, midnight: number): Instant {
  const at = zone.earlierInstant(midnight);
  if (!Number.isNaN(at)) return at;
  return zone.changes.find((c) => c.at + c.before <= midnight && midnight < c.at + c.after)?.at ?? Number.NaN;
}
