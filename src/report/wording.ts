import { type Phase, QUANTITIES, type Quantity } from "../recording/quantity.js";
import { DAY, type Duration, durationText, HOUR, MINUTE, SECOND } from "../recording/time.js";
import type { Assessment, Row, Verdict, Week } from "../rules/assessment.js";
import { Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { instantOf, type LocalClock, localClock, localTime } from "./local-time.js";
import { allowedPercent, decimalsOf, exact, formatAgainstLimits, foundPercent, percentOfShare } from "./numbers.js";
import { limitSides } from "./rows.js";

/** Words and sentences about the result. With the other files named wording-* these are all the sentences of the outputs. */

const VERDICT_WORDS: Readonly<Record<Verdict, Sentence>> = {
  conforms: say`conforms`,
  "does-not-conform": say`does not conform`,
  undecided: say`undecided`,
  "not-assessed": say`not assessed`,
  "for-information": say`for information`,
};

export function verdictWord(verdict: Verdict): Sentence {
  return VERDICT_WORDS[verdict];
}

/** "253.0 V", "6 %", "1", "207.0 to 253.0 V": formatted numbers with their unit. */
export function withUnit(number: Text, unit: string): Text {
  const printed = typeof number === "string" ? new Numeral(number) : number;
  return unit === "1" ? printed : strung([printed, unit], " ");
}

export function limitNumber(value: number, unit: string): Numeral {
  return new Numeral(exact(value, unit === "V" && value < 1000 ? 1 : 0));
}

/** "253.0 V". */
export function limitValue(value: number, unit: string): Text {
  return withUnit(limitNumber(value, unit), unit);
}

/** "207.0 to 253.0 V", "at most 6 %". */
export function limitText({ limit, unit }: Pick<Row, "limit" | "unit">): Text {
  const { min, max } = limit;
  if (min !== undefined && max !== undefined)
    return withUnit(say`${limitNumber(min, unit)} to ${limitNumber(max, unit)}`, unit);
  if (max !== undefined) return say`at most ${limitValue(max, unit)}`;
  if (min !== undefined) return say`at least ${limitValue(min, unit)}`;
  return say`no limit`;
}

export function phaseName(phase: Phase): Text {
  return phase === "system" ? SUPPLY : phase;
}

const SUPPLY = say`supply`;

/** "L2", "L2, order 5", "L2, 175 Hz", "supply" for a value that the supply has as a whole. */
export function placeText({ phase, order, hertz }: Place): Text {
  const where = order === undefined ? phaseName(phase) : say`${phaseName(phase)}, order ${order}`;
  return hertz === undefined ? where : strung([where, withUnit(exact(hertz, 0), "Hz")], ", ");
}

interface Place {
  readonly phase: Phase;
  readonly order?: number | undefined;
  readonly hertz?: number | undefined;
}

/** "50 (5 %)": how many values may lie outside. */
export function allowedText(row: Row): Text {
  return say`${row.allowed} (${allowedShare(row)})`;
}

/** "5 %": the share that may lie outside. */
export function allowedShare({ share }: Pick<Row, "share">): Text {
  return withUnit(exact(allowedPercent(share), 0), "%");
}

/** "73 of 1008". */
export function countOf({ outside, n }: { readonly outside: number; readonly n: number }): Sentence {
  return say`${outside} of ${n}`;
}

/** "73 of 1008 (7.2 %)": how many values lay outside. */
export function foundText(row: Row): Text {
  return row.n === 0 ? say`no values` : say`${countOf(row)} (${withUnit(foundPercent(row), "%")})`;
}

/** The worst value with enough digits to lie on its side of the limit. */
export function worstText(row: Row): Text {
  if (row.worst === null) return "–";
  return withUnit(formatAgainstLimits(row.worst.value, row.limit, decimalsOf(row.unit)), row.unit);
}

export function worstTimeText(row: Row, clock: LocalClock): Text {
  return row.worst === null ? "" : localTime(clock, instantOf(row.worst.at));
}

/** "248.1 to 251.0 V": the values at the required share. */
export function percentileText({ percentile, limit, unit }: Row): Text {
  const ends = [percentile.low, percentile.high].filter((value) => value !== undefined);
  const [first, second] = ends.map((value) => new Numeral(formatAgainstLimits(value, limit, decimalsOf(unit))));
  if (first === undefined) return "–";
  return withUnit(second === undefined ? first : say`${first} to ${second}`, unit);
}

/** "95 % of the week". */
export function shareText({ share, period }: Pick<Row, "share" | "period">): Sentence {
  const percent = withUnit(exact(percentOfShare(share), 0), "%");
  if (period === "day") return say`${percent} of the day`;
  return period === "week" ? say`${percent} of the week` : say`${percent} of the year`;
}

/** Whether missing intervals could change the verdict; a dash where there is none to change. */
export function robustText({ robust, verdict }: Pick<Row, "robust" | "verdict">): Text {
  if (verdict !== "conforms" && verdict !== "does-not-conform") return "–";
  return robust ? say`yes` : say`no`;
}

export const UNCONFIRMED_MARK = say`unconfirmed`;
export const UNCONFIRMED_NOTE = say`“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.`;

const VALUES: Readonly<Record<number, Sentence>> = {
  3: say`three-second values`,
  10: say`ten-second values`,
  60: say`one-minute values`,
  600: say`ten-minute values`,
  7200: say`two-hour values`,
};

const ORDER_NAMES: Partial<Readonly<Record<Quantity, (order: number) => Sentence>>> = {
  "harmonic-voltage": (order) => say`harmonic voltage of order ${order}`,
  "harmonic-current": (order) => say`harmonic current of order ${order}`,
  "interharmonic-voltage": (order) => say`interharmonic voltage of order ${order}`,
  "interharmonic-current": (order) => say`interharmonic current of order ${order}`,
};

export function quantityName(quantity: Quantity, order?: number): Sentence {
  const { name } = QUANTITIES[quantity];
  return order === undefined ? name : (ORDER_NAMES[quantity]?.(order) ?? say`${name} (order ${order})`);
}

/** What is usually judged, with its article; other quantities stand in brackets. */
const OF_QUANTITY: Partial<Readonly<Record<Quantity, Sentence>>> = {
  frequency: say`of the power frequency`,
  "thd-voltage": say`of the total harmonic distortion of the voltage`,
  "mains-signalling": say`of the mains signalling voltage`,
  pst: say`of the short-term flicker severity`,
  plt: say`of the long-term flicker severity`,
  "negative-sequence-unbalance": say`of the voltage unbalance`,
};

/** "ten-minute values", "two-hour values of the long-term flicker severity": the supply voltage is the subject of its sentences. */
export function valuesText({ quantity, order, intervalS }: Pick<Row, "quantity" | "order" | "intervalS">): Sentence {
  const values = VALUES[intervalS] ?? say`values of ${withUnit(String(intervalS), "s")}`;
  if (quantity === "voltage") return values;
  if (quantity === "harmonic-voltage" && order !== undefined)
    return say`${values} of the harmonic voltage of order ${order}`;
  const of = OF_QUANTITY[quantity];
  return of === undefined ? say`${values} (${quantityName(quantity, order)})` : strung([values, of], " ");
}

/** "above 253.0 V", "outside 207.0 to 253.0 V": by the sides of the limit on which values lie. */
export function beyondText({ limit, unit }: Pick<Row, "limit" | "unit">, noneBelow: boolean, noneAbove: boolean): Text {
  const { min, max } = limit;
  if (max !== undefined && (min === undefined || noneBelow)) return say`above ${limitValue(max, unit)}`;
  if (min !== undefined && (max === undefined || noneAbove)) return say`below ${limitValue(min, unit)}`;
  return say`outside ${limitText({ limit, unit })}`;
}

/** "above 253.0 V" where the extremes of the recording show that none lay below; else both limits. */
export function outsideText(row: Row, summary: Assessment["summary"]): Text {
  const { min, max } = row.limit;
  const { above, below } = limitSides(row, summary);
  return beyondText(row, min !== undefined && !below, max !== undefined && !above);
}

/** "on phase L2, 73 of 1008 ten-minute values lay above 253.0 V; 50 may." */
export function rowSentence(row: Row, summary: Assessment["summary"]): Sentence {
  const { phase, outside, n, allowed } = row;
  const [values, beyond] = [valuesText(row), outsideText(row, summary)];
  if (phase === "system")
    return allowed === 0
      ? say`${outside} of ${n} ${values} lay ${beyond}; none may.`
      : say`${outside} of ${n} ${values} lay ${beyond}; ${allowed} may.`;
  return allowed === 0
    ? say`on phase ${phase}, ${outside} of ${n} ${values} lay ${beyond}; none may.`
    : say`on phase ${phase}, ${outside} of ${n} ${values} lay ${beyond}; ${allowed} may.`;
}

/** Start and end of a week as read on the clock; a rest ends where the recording does. */
function spanOf({ recording }: Assessment, week: Week, withZone: boolean): readonly [Text, Text] {
  const clock = localClock(recording);
  const end = localTime(clock, instantOf(week.complete ? week.end : weekEnd(recording, week)));
  return [localTime(clock, instantOf(week.start)), withZone ? strung([end, ` (${recording.zone})`]) : end];
}

/** "the week from Mon 3 Mar 2025 00:00 to Mon 10 Mar 2025 00:00". */
export function weekText(assessment: Assessment, week: Week): Sentence {
  const [from, to] = spanOf(assessment, week, false);
  if (week.kind === "worst-sliding") return say`the seven days from ${from} to ${to}`;
  if (week.kind === "year")
    return week.complete
      ? say`the 365 days from ${from} to ${to}`
      : say`the time from ${from} to ${to}, less than 365 days`;
  return week.complete ? say`the week from ${from} to ${to}` : say`the time from ${from} to ${to}, less than a week`;
}

/** "in the week from Mon 3 Mar 2025 00:00 to Mon 10 Mar 2025 00:00 (Europe/Vienna)". */
export function inWeekText(assessment: Assessment, week: Week, withZone = false): Sentence {
  const [from, to] = spanOf(assessment, week, withZone);
  if (week.kind === "worst-sliding") return say`in the seven days from ${from} to ${to}`;
  if (week.kind === "year")
    return week.complete
      ? say`in the 365 days from ${from} to ${to}`
      : say`in the time from ${from} to ${to}, less than 365 days`;
  return week.complete
    ? say`in the week from ${from} to ${to}`
    : say`in the time from ${from} to ${to}, less than a week`;
}

/** The end of a week, or of the recording where it ends within the week. */
export function weekEnd(recording: Assessment["recording"], week: Week): string {
  return instantOf(week.end) > instantOf(recording.end) ? recording.end : week.end;
}

export function recordedLength({ recording }: Assessment): Duration {
  return instantOf(recording.end) - instantOf(recording.start);
}

/** "12.4 s", "25 min 10 s", "2 d 3 h": a length of time in its two largest units. */
export function lengthText(length: Duration): Text {
  if (length < MINUTE) return withUnit(String(Number((length / SECOND).toFixed(length < SECOND ? 3 : 1))), "s");
  const units = [
    [DAY, "d", HOUR, "h"],
    [HOUR, "h", MINUTE, "min"],
    [MINUTE, "min", SECOND, "s"],
  ] as const;
  const [first, firstName, second, secondName] = units.find(([unit]) => length >= unit) ?? units[2];
  const rest = Math.floor((length % first) / second);
  const whole = withUnit(String(Math.floor(length / first)), firstName);
  return rest === 0 ? whole : strung([whole, withUnit(String(rest), secondName)], " ");
}

/** "10 min", "0.2 s": the length of an interval. */
export function lengthOf(interval: Duration): Text {
  return durationText(interval);
}

/** "L1", "L1 and L3", "L1, L2 and L3". */
export function joined(texts: readonly Text[]): Text {
  const last = texts[texts.length - 1] ?? "";
  return texts.length < 2 ? last : say`${strung(texts.slice(0, -1), ", ")} and ${last}`;
}

/** Sentences one after the other; undefined and false are left out. */
export function paragraph(...sentences: readonly (Text | undefined | false)[]): Sentence {
  return strung(
    sentences.filter((text) => text !== undefined && text !== false),
    " ",
  );
}
