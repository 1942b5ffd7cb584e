import { QUANTITIES } from "../recording/quantity.js";
import { HOUR, type Instant, SECOND } from "../recording/time.js";
import type { Row } from "../rules/assessment.js";
import { capital, Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import type { ProfileData } from "./charts/profile-data.js";
import {
  busiestHours,
  outsideByHour,
  outsideOf,
  type Subject,
  type SubjectPhase,
  worstPhase,
} from "./charts/subject.js";
import { exactLocalTime, offsetText, shortLocalTime } from "./local-time.js";
import { allowedPercent, decimalsOf, exact, formatAgainstLimits } from "./numbers.js";
import {
  allowedShare,
  beyondText,
  lengthOf,
  limitText,
  limitValue,
  paragraph,
  phaseName,
  quantityName,
  shareText,
  withUnit,
} from "./wording.js";
import { intervalText } from "./wording-interval.js";

/** Titles, axis titles and notes of the charts of one quantity. */

export function subjectHeading({ quantity, order, hertz }: Subject): Text {
  const name = quantityName(quantity, order);
  return capital(hertz === undefined ? name : say`${name} at ${withUnit(exact(hertz, 0), "Hz")}`);
}

export function axisTitle({ quantity, order, unit }: Subject): Text {
  const { symbol } = QUANTITIES[quantity];
  return inUnit(order === undefined ? symbol : say`${symbol}, order ${order}`, unit);
}

/** "U in V": a symbol on an axis with its unit. */
export function inUnit(symbol: Text, unit: string): Text {
  return unit === "1" ? symbol : say`${symbol} in ${unit}`;
}

export function timeAxisTitle(subject: Subject): Sentence {
  return say`time, ${offsetText(subject.clock, subject.start)}`;
}

/** "above 253.0 V", "outside 207.0 V to 253.0 V". */
function beyond(phase: SubjectPhase, row: Row): Text {
  return beyondText(row, phase.below.length === 0, phase.above.length === 0);
}

/** "11 h", "15 h" where most values outside lie between two hours. */
export function hoursOf(subject: Subject, phase: SubjectPhase): readonly [Text, Text] | undefined {
  const hours = busiestHours(outsideByHour(subject, phase));
  return hours === undefined ? undefined : [withUnit(String(hours[0]), "h"), withUnit(String(hours[1]), "h")];
}

/** The finding of a profile: where it was outside, how often and when; or how far it stayed inside. */
export function profileTitle(subject: Subject): Text {
  const [row] = subject.limits;
  const heading = subjectHeading(subject);
  if (row === undefined) return say`${heading}: ${rangeText(subject)}`;
  const worst = worstPhase(subject);
  if (outsideOf(worst) > 0) return outsideTitle(subject, worst, row);
  const [limit, range] = [limitText(row), rangeText(subject)];
  return subject.isLonger
    ? say`${heading}: every value of the whole recording lay within the limit (${limit}); found ${range}`
    : say`${heading}: every value lay within the limit (${limit}); found ${range}`;
}

function outsideTitle(subject: Subject, worst: SubjectPhase, row: Row): Text {
  const name = quantityName(subject.quantity, subject.order);
  const [where, outside, all] = [beyond(worst, row), outsideOf(worst), worst.counted.length];
  const phase = phaseName(worst.phase);
  const who = subject.quantity === "voltage" ? phase : say`${phase} (${name})`;
  const found =
    worst.phase === "system"
      ? subject.isLonger
        ? say`The ${name} was ${where} in ${outside} of ${all} intervals of the whole recording`
        : say`The ${name} was ${where} in ${outside} of ${all} intervals`
      : subject.isLonger
        ? say`${who} was ${where} in ${outside} of ${all} intervals of the whole recording`
        : say`${who} was ${where} in ${outside} of ${all} intervals`;
  const hours = hoursOf(subject, worst);
  const timed = hours === undefined ? found : say`${found}, mostly between ${hours[0]} and ${hours[1]}`;
  const others = subject.phases.filter((other) => other !== worst && outsideOf(other) > 0);
  if (others.length === 0) return capital(timed);
  const counts = others.map((other) => say`${phaseName(other.phase)} in ${outsideOf(other)}`);
  return capital(say`${timed}; ${strung(counts, ", ")}`);
}

function rangeText(subject: Subject): Text {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const { series, counted } of subject.phases)
    for (const i of counted) {
      low = Math.min(low, series.values[i] as number);
      high = Math.max(high, series.values[i] as number);
    }
  const [from, to] = [printed(low, subject), printed(high, subject)];
  return from.digits === to.digits ? valueText(high, subject) : say`${from} to ${valueText(high, subject)}`;
}

function printed(value: number, { limits, unit }: Subject): Numeral {
  return new Numeral(formatAgainstLimits(value, limits[0]?.limit ?? {}, decimalsOf(unit)));
}

function valueText(value: number, subject: Subject): Text {
  return withUnit(printed(value, subject), subject.unit);
}

/** "Limits: 207.0 to 253.0 V for 95 % of the week (4.2.2.2)." */
export function limitsNote(subject: Subject): Sentence {
  if (subject.orientation.length > 0) return orientationNote(subject);
  const texts = subject.limits.map((row) =>
    row.confirmed
      ? say`${limitText(row)} for ${shareText(row)} (${row.clause})`
      : say`${limitText(row)} for ${shareText(row)} (${row.clause}, unconfirmed)`,
  );
  return texts.length === 0 ? say`No limit judged.` : say`Limits: ${strung(texts, "; ")}.`;
}

function orientationNote({ orientation, interval }: Subject): Sentence {
  const texts = orientation.map((row) => {
    const length = lengthOf(Math.round(row.intervalS * SECOND));
    return say`${limitText(row)} for ${shareText(row)} (${row.clause}), set for values of ${length}`;
  });
  return say`Dashed, for orientation: ${strung(texts, "; ")}. Values of ${lengthOf(interval)} are not judged by it.`;
}

export function countText(subject: Subject): Sentence {
  const counts = subject.phases.map(({ phase, counted }) =>
    strung([phaseName(phase), new Numeral(String(counted.length))], " "),
  );
  return say`Values of ${intervalText(subject.interval)}, number of valid ones: ${strung(counts, ", ")}.`;
}

export function profileNote(subject: Subject, data: ProfileData, range: readonly [number, number]): Sentence {
  const { step, hasExtremes, extremes } = data;
  const isCut = extremes[0] < range[0] || extremes[1] > range[1];
  const { clock, start, end } = subject;
  const timeOf = (at: Instant) => (end - start < HOUR ? exactLocalTime(clock, at) : shortLocalTime(clock, at));
  const offset = offsetText(clock, start);
  return paragraph(
    say`${timeOf(start)} to ${timeOf(end)} (${clock.id}).`,
    countText(subject),
    step > 1 && say`Each point of the line is the mean of ${step} intervals, the pale band their extremes.`,
    step === 1 && hasExtremes && say`Pale band: lowest and highest value inside each interval.`,
    isCut &&
      say`The band reaches from ${valueText(extremes[0], subject)} to ${valueText(extremes[1], subject)}; the picture cuts it off.`,
    subject.limits.length > 0 && say`Triangles: intervals outside the limit.`,
    subject.excluded.length > 0 && say`Grey fields: excluded spans; what lies in them is drawn but not counted.`,
    limitsNote(subject),
    subject.marks.length > 0 && marksNote(subject),
    clock.offsetAt(start) !== clock.offsetAt(end) &&
      say`The clock was changed in this time; the axis keeps ${offset} throughout.`,
  );
}

/** "Dotted: C1 Tue 24 Mar 12:30, inverter switched off; N1 Wed 25 Mar 08:00 (L2), neighbour's plant connected." */
function marksNote({ marks, clock }: Subject): Sentence {
  const texts = marks.map(({ name, at, phase, words }) => {
    const place = phase === undefined ? shortLocalTime(clock, at) : strung([shortLocalTime(clock, at), ` (${phase})`]);
    return say`${name}: ${place}, ${words}`;
  });
  return say`Dotted: complaints (C) and comments (N). ${strung(texts, "; ")}.`;
}

export function lineLabel(value: number, row: Row, { interval }: Subject): Text {
  const judged = Math.round(row.intervalS * SECOND);
  const limit = limitValue(value, row.unit);
  return judged === interval ? strung([limit, row.clause], ", ") : say`${limit} for values of ${lengthOf(judged)}`;
}

export const SHARE_AXIS = say`share of intervals at or below the value, in %`;

export function shareTitle(subject: Subject): Text {
  const [row] = subject.limits;
  const worst = worstPhase(subject);
  if (row === undefined) return say`How often which value occurred`;
  const found = worst.counted.length === 0 ? 0 : (100 * outsideOf(worst)) / worst.counted.length;
  if (found === 0)
    return subject.isLonger
      ? say`No interval of the whole recording lay outside the limit (${limitText(row)})`
      : say`No interval lay outside the limit (${limitText(row)})`;
  const allowed = allowedPercent(row.share);
  const share = withUnit(formatAgainstLimits(found, { max: allowed }, 1), "%");
  const [phase, where] = [phaseName(worst.phase), beyond(worst, row)];
  const lay = subject.isLonger
    ? say`On ${phase}, ${share} of the intervals of the whole recording lay ${where}`
    : say`On ${phase}, ${share} of the intervals lay ${where}`;
  return say`${lay}; ${mayText(subject, row, found > allowed)}`;
}

/** How that compares with what is allowed; of a recording longer than the period judged it only says what is. */
function mayText({ isLonger }: Subject, row: Row, isMore: boolean): Sentence {
  const share = allowedShare(row);
  if (allowedPercent(row.share) === 0) return say`none may`;
  if (isLonger) return SHARE_OF[row.period](share);
  return isMore ? say`more than the ${share} allowed` : say`not more than the ${share} allowed`;
}

const SHARE_OF = {
  day: (share: Text) => say`of a day ${share} may`,
  week: (share: Text) => say`of a week ${share} may`,
  year: (share: Text) => say`of a year ${share} may`,
} as const;

const BY_ITSELF = {
  day: say`Judged is each day by itself.`,
  week: say`Judged is each week by itself.`,
  year: say`Judged is each year by itself.`,
} as const;

export function shareNote(subject: Subject): Sentence {
  const [row] = subject.limits;
  return paragraph(
    countText(subject),
    row !== undefined &&
      say`The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.`,
    row !== undefined && subject.isLonger && BY_ITSELF[row.period],
    limitsNote(subject),
  );
}

/** Beside the bar of one side; where there are two, both share what may lie outside, and one label says so. */
export function barLabel(side: "min" | "max", row: Row): Text {
  const { min, max } = row.limit;
  const share = allowedShare(row);
  const isNone = allowedPercent(row.share) === 0;
  if (min !== undefined && max !== undefined) {
    if (side === "min") return "";
    const outside = isNone ? say`none outside` : say`together at most\n${share} outside`;
    return strung([outside, limitText(row)], "\n");
  }
  const limit = limitValue((side === "max" ? max : min) as number, row.unit);
  if (side === "max") return isNone ? say`none\nabove ${limit}` : say`at most ${share}\nabove ${limit}`;
  return isNone ? say`none\nbelow ${limit}` : say`at most ${share}\nbelow ${limit}`;
}
