import { type Instant, MINUTE, SECOND } from "../recording/time.js";
import { TimeZone } from "../recording/time-zone.js";
import type { Assessment } from "../rules/assessment.js";
import { Numeral, Sentence, say, strung, type Text } from "../sentence.js";
import { oncePer } from "./once.js";

/** The log's local time, for readers. It does not depend on the machine's locale. */

/** Monday first. */
export const DAYS = [say`Mon`, say`Tue`, say`Wed`, say`Thu`, say`Fri`, say`Sat`, say`Sun`] as const;
/** Day and month; the day may be anything that stands for its number. */
export const DATES: readonly ((day: Text | number) => Sentence)[] = [
  (day) => say`${day} Jan`,
  (day) => say`${day} Feb`,
  (day) => say`${day} Mar`,
  (day) => say`${day} Apr`,
  (day) => say`${day} May`,
  (day) => say`${day} Jun`,
  (day) => say`${day} Jul`,
  (day) => say`${day} Aug`,
  (day) => say`${day} Sep`,
  (day) => say`${day} Oct`,
  (day) => say`${day} Nov`,
  (day) => say`${day} Dec`,
];

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
  /** "Thu". */
  readonly weekday: Sentence;
  /** "6 Mar". */
  readonly date: Sentence;
  readonly year: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

export function localParts(clock: LocalClock, at: Instant): LocalParts {
  const { weekday, month, day, ...time } = clock.clockAt(at);
  return { ...time, weekday: DAYS[weekday - 1] as Sentence, date: (DATES[month - 1] as (typeof DATES)[number])(day) };
}

/**
 * The parts of a time, last first. No other text has these templates, so a language may set marks between weekday, date,
 * year and time of day.
 */
const TIME = "{4} {3} {2} {1}";
const SHORT_TIME = "{3} {2} {1}";
const DATE = "{2} {1}";

const two = (n: number) => String(n).padStart(2, "0");

/** "Thu 6 Mar 2025 12:10"; seconds only where they are not zero. */
export function localTime(clock: LocalClock, at: Instant): Sentence {
  const { weekday, date, year, hour, minute, second } = localParts(clock, at);
  const seconds = second === 0 ? "" : `:${two(second)}`;
  return new Sentence(TIME, [`${two(hour)}:${two(minute)}${seconds}`, String(year), date, weekday]);
}

/** "Thu 6 Mar 2025 12:10:03.250": to the millisecond, for what does not begin on a minute of the clock. */
export function exactLocalTime(clock: LocalClock, at: Instant): Sentence {
  const rounded = Math.round(at / 1000) * 1000;
  const { weekday, date, year, hour, minute, second } = localParts(clock, rounded);
  const ms = (((rounded % SECOND) + SECOND) % SECOND) / 1000;
  const time = `${two(hour)}:${two(minute)}:${two(second)}.${String(ms).padStart(3, "0")}`;
  return new Sentence(TIME, [new Numeral(time), String(year), date, weekday]);
}

/** "Thu 6 Mar 12:10": where the year is clear from the page. */
export function shortLocalTime(clock: LocalClock, at: Instant): Sentence {
  const { weekday, date, hour, minute } = localParts(clock, at);
  return new Sentence(SHORT_TIME, [`${two(hour)}:${two(minute)}`, date, weekday]);
}

/** "Thu 6 Mar". */
export function dateText({ weekday, date }: LocalParts): Sentence {
  return new Sentence(DATE, [date, weekday]);
}

/** "UTC+01:00": the offset in force at an instant. */
export function offsetText(clock: LocalClock, at: Instant): string {
  const offset = clock.offsetAt(at);
  const minutes = Math.abs(offset) / MINUTE;
  const sign = offset < 0 ? "−" : "+";
  return `UTC${sign}${two(Math.floor(minutes / 60))}:${two(Math.round(minutes % 60))}`;
}

const INSTANT = /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g;

/** A sentence of the result with its instants in local time; the zone's name follows the last of them. */
export function withLocalTimes(clock: LocalClock, text: Text): Text {
  let left = instantsIn(text);
  const told = (iso: string): Sentence => {
    const at = instantOf(iso);
    const time = at % SECOND === 0 ? localTime(clock, at) : exactLocalTime(clock, at);
    return --left === 0 ? strung([time, ` (${clock.id})`]) : time;
  };
  const tell = (part: Text): Text => {
    if (part instanceof Sentence) return new Sentence(part.template, part.values.map(tell), part.capitalised);
    if (part instanceof Numeral || instantsIn(part) === 0) return part;
    const between = part.split(INSTANT);
    return strung(
      [...part.matchAll(INSTANT)].flatMap(([iso], i) => [between[i] ?? "", told(iso)]).concat(between.at(-1) ?? ""),
    );
  };
  return tell(text);
}

function instantsIn(text: Text): number {
  return String(text).match(INSTANT)?.length ?? 0;
}

/** The result as readers get it: instants inside sentences in local time. Everything else stays as it is. */
export const inLocalTime = oncePer((assessment: Assessment): Assessment => {
  const { recording, weeks, notAssessed } = assessment;
  const clock = localClock(recording);
  const told = <T extends { readonly sentence: Text }>(item: T): T => ({
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
    comparison: assessment.comparison.map((other) => ({
      ...other,
      rows: other.rows.map((row) => (row.why.length === 0 ? row : { ...row, why: row.why.map(told) })),
    })),
    weeks: weeks.map((week) => ({
      ...week,
      requirements: week.requirements.map((row) =>
        row.reason === undefined ? row : { ...row, reason: told(row.reason) },
      ),
    })),
  };
});

/** The instant of an ISO 8601 text with Z, as it stands in the result. */
export function instantOf(iso: string): Instant {
  const fraction = /\.(\d+)Z$/.exec(iso)?.[1] ?? "";
  const seconds = Date.parse(`${iso.slice(0, 19)}Z`) * 1000;
  return seconds + Number(fraction.padEnd(6, "0").slice(0, 6));
}
