import type { Assessment } from "../rules/assessment.js";
import { Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { instantOf, type LocalClock, localTime } from "./local-time.js";
import { minus } from "./numbers.js";
import { joined, paragraph, withUnit } from "./wording.js";

/** What a tap step would change. */

export type Shift = NonNullable<Assessment["shift"]>;
export type ShiftPeriod = Shift["periods"][number];
export type Range = ShiftPeriod["phases"][number]["ranges"][number];

export const SHIFT_WORDS = {
  heading: say`If the voltage were higher or lower`,
  note: say`An estimate, no part of the verdict: every value is moved by the same number of volts. In truth a tap changes the voltage in proportion and all phases about alike, loads and feed-in react to it, a regulator elsewhere may act against it, and which taps there are only the operator of the transformer knows.`,
  assumedSteps: say`The steps are the usual ones of distribution transformers; common practice, no source (setup: voltageSteps names others).`,
  all: say`all phases`,
  none: say`none`,
  any: say`any`,
  unknown: say`too little is valid`,
  axis: say`shift in V`,
} as const;

export const SHIFT_COLUMNS = {
  phase: say`Phase`,
  requirement: say`Requirement`,
  allowed: say`May lie outside`,
} as const;
export const RANGE_COLUMNS = {
  phase: say`Phase`,
  ranges: say`Shifts that keep every limit of the supply voltage`,
} as const;

const DECIMALS = 2;

/** The period that stands for the recording: the only week, or all of it. */
export function mainPeriod({ periods }: Shift): ShiftPeriod | undefined {
  return periods.find(({ kind }) => kind === "recording") ?? periods[0];
}

/** "50 of 1008". */
export function allowedOf(allowed: number, n: number): Sentence {
  return say`${allowed} of ${n}`;
}

/** "−2.5 %", "+5 %", "0 %". */
export function stepText(percent: number): Text {
  return withUnit(signed(String(percent)), "%");
}

/** "−5 % (−11.5 V)"; "as recorded" for no step. */
export function stepHeading({ percent, volts }: Shift["steps"][number]): Text {
  return percent === 0 ? say`as recorded` : say`${stepText(percent)} (${withUnit(signed(String(volts)), "V")})`;
}

function signed(digits: string): Numeral {
  return new Numeral(digits.startsWith("-") || Number(digits) === 0 ? minus(digits) : `+${digits}`);
}

/** Rounded into the range, so that the number as printed still lies in it. */
function inward(value: number, side: "from" | "to"): Numeral {
  const unit = 10 ** -DECIMALS;
  const rounded = Number(value.toFixed(DECIMALS));
  const isBeyond = side === "from" ? rounded < value : rounded > value;
  const moved = isBeyond ? rounded + (side === "from" ? unit : -unit) : rounded;
  return signed(moved.toFixed(DECIMALS));
}

function endText(value: number, percent: number, side: "from" | "to"): Text {
  return say`${withUnit(inward(value, side), "V")} (${withUnit(inward(percent, side), "%")})`;
}

/** "−21.57 V (−9.37 %) to −2.90 V (−1.27 %)". */
export function rangeText({ from, to, fromPercent, toPercent }: Range): Text {
  const low = from === undefined || fromPercent === undefined ? undefined : endText(from, fromPercent, "from");
  const high = to === undefined || toPercent === undefined ? undefined : endText(to, toPercent, "to");
  if (low !== undefined && high !== undefined) return say`${low} to ${high}`;
  if (high !== undefined) return say`up to ${high}`;
  return low === undefined ? SHIFT_WORDS.any : say`from ${low} up`;
}

/** The ranges one after the other; "none" without any. */
export function rangesText(ranges: readonly Range[] | undefined): Text {
  if (ranges === undefined) return SHIFT_WORDS.unknown;
  return ranges.length === 0 ? SHIFT_WORDS.none : strung(ranges.map(rangeText), "; ");
}

function holds(ranges: readonly Range[], volts: number): boolean {
  return ranges.some(({ from, to }) => (from === undefined || volts >= from) && (to === undefined || volts <= to));
}

/** "A shift of all phases by … would have kept the limits of the supply voltage in the week from …; of the steps −2.5 % and −5 % do." */
export function shiftText(shift: Shift, period: ShiftPeriod, clock: LocalClock): Sentence {
  const [from, to] = [localTime(clock, instantOf(period.start)), localTime(clock, instantOf(period.end))];
  const { all } = period;
  const span = say`${from} to ${to}`;
  const isShort = period.kind === "recording" && shift.periods.length === 1;
  return paragraph(
    allText(all, span),
    all !== undefined && all.length > 0 && stepsText(shift, all),
    all !== undefined && all.length === 0 && period.phases.length > 1 && oneByOneText(period),
    isShort && say`The recording is shorter than a week: this is a hint, not an answer for a week.`,
    period.kind === "recording" && !isShort && say`It holds for each complete week by itself.`,
  );
}

function allText(all: ShiftPeriod["all"], span: Text): Sentence {
  if (all === undefined)
    return say`Too little of the voltage from ${span} is valid to say which shift would keep its limits.`;
  if (all.length === 0)
    return say`No shift of all phases together would have kept the limits of the supply voltage from ${span}.`;
  const ranges = strung(all.map(rangeText), "; ");
  return holds(all, 0)
    ? say`From ${span} the supply voltage kept its limits as recorded; it would have kept them with all phases shifted by ${ranges}.`
    : say`The limits of the supply voltage from ${span} would have been kept with all phases shifted by ${ranges}.`;
}

function stepsText({ steps }: Shift, all: readonly Range[]): Sentence {
  const fitting = steps.filter(({ percent, volts }) => percent !== 0 && holds(all, volts));
  if (fitting.length === 0) return say`None of the steps looked at would have done.`;
  const names = joined(fitting.map(({ percent }) => stepText(percent)));
  return fitting.length === 1
    ? say`Of the steps looked at ${names} would have done.`
    : say`Of the steps looked at ${names} would each have done.`;
}

function oneByOneText({ phases }: ShiftPeriod): Sentence {
  const texts = phases.map(({ phase, ranges }) => say`${phase}: ${rangesText(ranges)}`);
  return say`Each phase by itself: ${strung(texts, "; ")}.`;
}

export function shiftChartTitle(period: ShiftPeriod): Text {
  const { all } = period;
  if (all === undefined || all.length === 0)
    return say`No shift of all phases together keeps the limits of the supply voltage`;
  return say`All phases keep the limits of the supply voltage when shifted by ${strung(all.map(rangeText), "; ")}`;
}

export const SHIFT_CHART_NOTE = say`Bars: shifts with which every limit of the supply voltage would have been kept, cut off at the edges of the picture. Dashed: the voltage as recorded and the steps looked at. An estimate.`;
