import { type Instant, MINUTE, SECOND } from "../recording/time.js";
import { TimeZone } from "../recording/time-zone.js";
import type { Assessment } from "../rules/assessment.js";

/** The log's local time, for readers. Names of days and months are English and do not depend on the machine's locale. */

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

export type LocalClock = TimeZone;

/** The clock of a recording's zone, over the whole log where only part of it was assessed. */
export function localClock({
  zone,
  start,
  end,
  cropped = { start, end },
}: Pick<Assessment["recording"], "zone" | "start" | "end" | "cropped">): LocalClock {
  return TimeZone.open(zone, instantOf(cropped.start), instantOf(cropped.end));
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
  const local = clock.clockAt(at);
  return { ...local, weekday: DAYS[local.weekday - 1] as string, month: MONTHS[local.month - 1] as string };
}

const two = (n: number) => String(n).padStart(2, "0");

/** "Thu 6 Mar 2025 12:10"; seconds only where they are not zero. */
export function localTime(clock: LocalClock, at: Instant): string {
  const p = localParts(clock, at);
  const seconds = p.second === 0 ? "" : `:${two(p.second)}`;
  return `${p.weekday} ${p.day} ${p.month} ${p.year} ${two(p.hour)}:${two(p.minute)}${seconds}`;
}

/** "Thu 6 Mar 2025 12:10:03.250": to the millisecond, for what does not begin on a minute of the clock. */
export function exactLocalTime(clock: LocalClock, at: Instant): string {
  const rounded = Math.round(at / 1000) * 1000;
  const p = localParts(clock, rounded);
  const ms = (((rounded % SECOND) + SECOND) % SECOND) / 1000;
  const time = `${two(p.hour)}:${two(p.minute)}:${two(p.second)}.${String(ms).padStart(3, "0")}`;
  return `${p.weekday} ${p.day} ${p.month} ${p.year} ${time}`;
}

/** "Thu 6 Mar 12:10": where the year is clear from the page. */
export function shortLocalTime(clock: LocalClock, at: Instant): string {
  const p = localParts(clock, at);
  return `${p.weekday} ${p.day} ${p.month} ${two(p.hour)}:${two(p.minute)}`;
}

/** "UTC+01:00": the offset in force at an instant. */
export function offsetText(clock: LocalClock, at: Instant): string {
  const offset = clock.offsetAt(at);
  const minutes = Math.abs(offset) / MINUTE;
  const sign = offset < 0 ? "−" : "+";
  return `UTC${sign}${two(Math.floor(minutes / 60))}:${two(Math.round(minutes % 60))}`;
}

const INSTANT = /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z/g;

/** A sentence of the result with its instants in local time; the zone's name follows the last of them. */
export function withLocalTimes(clock: LocalClock, sentence: string): string {
  const last = [...sentence.matchAll(INSTANT)].at(-1)?.index;
  return sentence.replace(INSTANT, (iso, _fraction, place: number) => {
    const at = instantOf(iso);
    const time = at % SECOND === 0 ? localTime(clock, at) : exactLocalTime(clock, at);
    return place === last ? `${time} (${clock.id})` : time;
  });
}

/** The result as readers get it: instants inside sentences in local time. Everything else stays as it is. */
export function inLocalTime(assessment: Assessment): Assessment {
  const { recording, weeks, notAssessed } = assessment;
  const clock = localClock(recording);
  const told = <T extends { readonly sentence: string }>(item: T): T => ({
    ...item,
    sentence: withLocalTimes(clock, item.sentence),
  });
  return {
    ...assessment,
    recording: {
      ...recording,
      findings: recording.findings.map(told),
      remarks: recording.remarks.map((remark) => withLocalTimes(clock, remark)),
    },
    notAssessed: notAssessed.map((item) => ({ ...item, reason: told(item.reason) })),
    weeks: weeks.map((week) => ({
      ...week,
      requirements: week.requirements.map((row) =>
        row.reason === undefined ? row : { ...row, reason: told(row.reason) },
      ),
    })),
  };
}

/** The instant of an ISO 8601 text with Z, as it stands in the result. */
export function instantOf(iso: string): Instant {
  const fraction = /\.(\d+)Z$/.exec(iso)?.[1] ?? "";
  const seconds = Date.parse(`${iso.slice(0, 19)}Z`) * 1000;
  return seconds + Number(fraction.padEnd(6, "0").slice(0, 6));
}
