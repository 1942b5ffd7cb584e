import { type Phase, QUANTITIES, type Quantity } from "../recording/quantity.js";
import { DAY, type Duration, HOUR, MINUTE, SECOND } from "../recording/time.js";
import type { Assessment, Row, Verdict, Week } from "../rules/assessment.js";
import type { Text } from "../sentence.js";
import { instantOf, type LocalClock, localClock, localTime } from "./local-time.js";
import { allowedPercent, decimalsOf, exact, formatAgainstLimits, foundPercent, percentOfShare } from "./numbers.js";

/**
 * English words and sentences about the result. With the other files named wording-* these are all the
 * sentences of the outputs: another language is another set of files with the same exports.
 */

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  conforms: "conforms",
  "does-not-conform": "does not conform",
  undecided: "undecided",
  "not-assessed": "not assessed",
  "for-information": "for information",
};

export function verdictWord(verdict: Verdict): string {
  return VERDICT_WORDS[verdict];
}

/** "253.0 V", "6 %", "1": a value already formatted, with its unit. */
export function withUnit(text: string, unit: string): string {
  return unit === "1" ? text : `${text} ${unit}`;
}

export function limitNumber(value: number, unit: string): string {
  return exact(value, unit === "V" && value < 1000 ? 1 : 0);
}

/** "207.0 to 253.0 V", "at most 6 %". */
export function limitText({ limit, unit }: Pick<Row, "limit" | "unit">): string {
  const { min, max } = limit;
  if (min !== undefined && max !== undefined)
    return withUnit(`${limitNumber(min, unit)} to ${limitNumber(max, unit)}`, unit);
  if (max !== undefined) return `at most ${withUnit(limitNumber(max, unit), unit)}`;
  if (min !== undefined) return `at least ${withUnit(limitNumber(min, unit), unit)}`;
  return "none";
}

/** "L2", "L2, order 5", "L2, 175 Hz", "supply" for a value that the supply has as a whole. */
export function placeText({ phase, order, hertz }: Place): string {
  const where = phase === "system" ? "supply" : phase;
  const of = order === undefined ? "" : `, order ${order}`;
  return `${where}${of}${hertz === undefined ? "" : `, ${exact(hertz, 0)} Hz`}`;
}

interface Place {
  readonly phase: Phase;
  readonly order?: number | undefined;
  readonly hertz?: number | undefined;
}

/** "50 (5 %)": how many values may lie outside. */
export function allowedText(row: Row): string {
  return `${row.allowed} (${exact(allowedPercent(row.share), 0)} %)`;
}

/** "73 of 1008 (7.2 %)": how many values lay outside. */
export function foundText(row: Row): string {
  return row.n === 0 ? "no values" : `${row.outside} of ${row.n} (${foundPercent(row)} %)`;
}

/** The worst value with enough digits to lie on its side of the limit. */
export function worstText(row: Row): string {
  if (row.worst === null) return "–";
  return withUnit(formatAgainstLimits(row.worst.value, row.limit, decimalsOf(row.unit)), row.unit);
}

export function worstTimeText(row: Row, clock: LocalClock): Text {
  return row.worst === null ? "" : localTime(clock, instantOf(row.worst.at));
}

/** "95 % of the week". */
export function shareText({ share, period }: Pick<Row, "share" | "period">): string {
  return `${exact(percentOfShare(share), 0)} % of the ${period}`;
}

/** Whether missing intervals could change the verdict; a dash where there is none to change. */
export function robustText({ robust, verdict }: Pick<Row, "robust" | "verdict">): string {
  if (verdict !== "conforms" && verdict !== "does-not-conform") return "–";
  return robust ? "yes" : "no";
}

export const UNCONFIRMED_MARK = "unconfirmed";
export const UNCONFIRMED_NOTE =
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.";

const INTERVAL_WORDS: Readonly<Record<number, string>> = {
  3: "three-second",
  10: "ten-second",
  60: "one-minute",
  600: "ten-minute",
  7200: "two-hour",
};

/** "ten-minute". */
export function intervalWord(seconds: number): string {
  return INTERVAL_WORDS[seconds] ?? `${seconds}-second`;
}

export function quantityName(quantity: Quantity, order?: number): string {
  return `${QUANTITIES[quantity].name}${order === undefined ? "" : ` of order ${order}`}`;
}

/** The supply voltage, harmonic 5 …: "of the supply voltage" is left out where the sentence has it as its subject. */
export function valuesText(row: Row): string {
  const values = `${intervalWord(row.intervalS)} values`;
  return row.quantity === "voltage" ? values : `${values} of the ${quantityName(row.quantity, row.order)}`;
}

/** "above 253.0 V" where the extremes of the recording show that none lay below; else both limits. */
export function outsideText(row: Row, summary: Assessment["summary"]): string {
  const { min, max } = row.limit;
  const all = summary.find(
    (s) =>
      s.quantity === row.quantity &&
      s.phase === row.phase &&
      s.order === row.order &&
      s.hertz === row.hertz &&
      s.intervalS === row.intervalS,
  );
  const noneBelow = min === undefined || (all !== undefined && all.min >= min);
  const noneAbove = max === undefined || (all !== undefined && all.max <= max);
  if (max !== undefined && noneBelow) return `above ${withUnit(limitNumber(max, row.unit), row.unit)}`;
  if (min !== undefined && noneAbove) return `below ${withUnit(limitNumber(min, row.unit), row.unit)}`;
  return `outside ${limitText(row)}`;
}

/** "on phase L2, 73 of 1008 ten-minute values lay above 253.0 V; 50 may." */
export function rowSentence(row: Row, summary: Assessment["summary"]): string {
  const where = row.phase === "system" ? "" : `on phase ${row.phase}, `;
  const may = row.allowed === 0 ? "none may" : `${row.allowed} may`;
  return `${where}${row.outside} of ${row.n} ${valuesText(row)} lay ${outsideText(row, summary)}; ${may}.`;
}

/**
 * "the week from Mon 3 Mar 2025 00:00 to Mon 10 Mar 2025 00:00"; a rest ends where the recording does.
 * @param zone words on the zone, put after the times
 */
export function weekText({ recording }: Assessment, week: Week, zone = ""): string {
  const clock = localClock(recording);
  const time = (iso: string) => localTime(clock, instantOf(iso));
  const span = `from ${time(week.start)} to ${time(week.complete ? week.end : weekEnd(recording, week))}${zone}`;
  if (week.kind === "worst-sliding") return `the seven days ${span}`;
  const length = week.kind === "year" ? "365 days" : "week";
  if (week.complete) return `the ${length} ${span}`;
  return `the time ${span}, less than ${length === "week" ? "a week" : length}`;
}

/** The end of a week, or of the recording where it ends within the week. */
export function weekEnd(recording: Assessment["recording"], week: Week): string {
  return instantOf(week.end) > instantOf(recording.end) ? recording.end : week.end;
}

export function recordedLength({ recording }: Assessment): Duration {
  return instantOf(recording.end) - instantOf(recording.start);
}

/** "12.4 s", "25 min 10 s", "2 d 3 h": a length of time in its two largest units. */
export function lengthText(length: Duration): string {
  if (length < MINUTE) return `${Number((length / SECOND).toFixed(length < SECOND ? 3 : 1))} s`;
  const units = [
    [DAY, "d", HOUR, "h"],
    [HOUR, "h", MINUTE, "min"],
    [MINUTE, "min", SECOND, "s"],
  ] as const;
  const [first, firstName, second, secondName] = units.find(([unit]) => length >= unit) ?? units[2];
  const rest = Math.floor((length % first) / second);
  return `${Math.floor(length / first)} ${firstName}${rest === 0 ? "" : ` ${rest} ${secondName}`}`;
}

/** "L1", "L1 and L3", "L1, L2 and L3". */
export function joined(texts: readonly string[]): string {
  const last = texts[texts.length - 1] ?? "";
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(", ")} and ${last}`;
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
