import { DAY, HOUR, type Instant, MINUTE } from "../recording/time.js";

/**
 * The log's local time, for readers. A zone is an IANA name, "UTC" or a fixed offset such as "+01:00".
 * Names of days and months are English and do not depend on the machine's locale.
 */

const DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
const FIXED_OFFSET = /^([+-])(\d{2}):?(\d{2})$/;

export interface LocalClock {
  readonly zone: string;
  /** Microseconds to add to an instant to read its local time as if it were UTC. */
  offset(at: Instant): number;
}

/** The clock of a zone. Offsets are looked up once per quarter of an hour, as no zone changes in between. */
export function localClock(zone: string): LocalClock {
  const fixed = FIXED_OFFSET.exec(zone);
  if (fixed !== null) {
    const size = Number(fixed[2]) * HOUR + Number(fixed[3]) * MINUTE;
    const offset = fixed[1] === "-" ? -size : size;
    return { zone, offset: () => offset };
  }
  if (zone === "UTC") return { zone, offset: () => 0 };
  const format = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  });
  const lookUp = (at: Instant): number => {
    const ms = Math.floor(at / 1_000_000) * 1000;
    const part: Record<string, number> = {};
    for (const { type, value } of format.formatToParts(ms)) part[type] = Number(value);
    const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
    return (Date.UTC(year, month - 1, day, hour, minute, second) - ms) * 1000;
  };
  const known = new Map<number, number>();
  // A day whose two ends agree has one offset: zones do not change twice within a day.
  const offsetOf = (step: number, length: number): number => {
    const key = step * length;
    let offset = known.get(key);
    if (offset === undefined) {
      offset = lookUp(key);
      known.set(key, offset);
    }
    return offset;
  };
  return {
    zone,
    offset: (at) => {
      const day = Math.floor(at / DAY);
      const start = offsetOf(day, DAY);
      if (start === offsetOf(day + 1, DAY)) return start;
      return offsetOf(Math.floor(at / (15 * MINUTE)), 15 * MINUTE);
    },
  };
}

export interface LocalParts {
  readonly weekday: string;
  readonly day: number;
  readonly month: string;
  readonly year: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

export function localParts(clock: LocalClock, at: Instant): LocalParts {
  const date = new Date(Math.floor((at + clock.offset(at)) / 1000));
  return {
    weekday: DAYS[date.getUTCDay()] as string,
    day: date.getUTCDate(),
    month: MONTHS[date.getUTCMonth()] as string,
    year: date.getUTCFullYear(),
    hour: date.getUTCHours(),
    minute: date.getUTCMinutes(),
    second: date.getUTCSeconds(),
  };
}

const two = (n: number) => String(n).padStart(2, "0");

/** "Thu 6 Mar 2025 12:10"; seconds only where they are not zero. */
export function localTime(clock: LocalClock, at: Instant): string {
  const p = localParts(clock, at);
  const seconds = p.second === 0 ? "" : `:${two(p.second)}`;
  return `${p.weekday} ${p.day} ${p.month} ${p.year} ${two(p.hour)}:${two(p.minute)}${seconds}`;
}

/** "Thu 6 Mar 12:10": where the year is clear from the page. */
export function shortLocalTime(clock: LocalClock, at: Instant): string {
  const p = localParts(clock, at);
  return `${p.weekday} ${p.day} ${p.month} ${two(p.hour)}:${two(p.minute)}`;
}

/** "UTC+01:00": the offset in force at an instant. */
export function offsetText(clock: LocalClock, at: Instant): string {
  const offset = clock.offset(at);
  const minutes = Math.abs(offset) / MINUTE;
  const sign = offset < 0 ? "−" : "+";
  return `UTC${sign}${two(Math.floor(minutes / 60))}:${two(Math.round(minutes % 60))}`;
}

/** The instant of an ISO 8601 text with Z, as it stands in the result. */
export function instantOf(iso: string): Instant {
  const fraction = /\.(\d+)Z$/.exec(iso)?.[1] ?? "";
  const seconds = Date.parse(`${iso.slice(0, 19)}Z`) * 1000;
  return seconds + Number(fraction.padEnd(6, "0").slice(0, 6));
}
