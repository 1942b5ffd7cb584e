import { QUANTITIES } from "../recording/quantity.js";
import { type Duration, durationText, HOUR, type Instant, intervalName, SECOND } from "../recording/time.js";
import type { Row } from "../rules/assessment.js";
import type { ProfileData } from "./charts/profile-data.js";
import { phaseName } from "./charts/style.js";
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
import { limitNumber, limitText, quantityName, shareText, withUnit } from "./wording.js";

/** English titles, axis titles and notes of the charts. */

export function subjectHeading({ quantity, order, hertz }: Subject): string {
  const name = `${quantityName(quantity, order)}${hertz === undefined ? "" : ` at ${exact(hertz, 0)} Hz`}`;
  return name.charAt(0).toUpperCase() + name.slice(1);
}

export function axisTitle({ quantity, order, unit }: Subject): string {
  const { symbol } = QUANTITIES[quantity];
  const of = order === undefined ? "" : `, order ${order}`;
  return `${symbol}${of}${unit === "1" ? "" : ` in ${unit}`}`;
}

export function timeAxisTitle(subject: Subject): string {
  return `time, ${offsetText(subject.clock, subject.start)}`;
}

/** "above 253.0 V", "outside 207.0 V to 253.0 V". */
function beyond(phase: SubjectPhase, row: Row): string {
  const { min, max } = row.limit;
  if (phase.below.length === 0 && max !== undefined) return `above ${withUnit(limitNumber(max, row.unit), row.unit)}`;
  if (phase.above.length === 0 && min !== undefined) return `below ${withUnit(limitNumber(min, row.unit), row.unit)}`;
  return `outside ${limitText(row)}`;
}

function hoursText(subject: Subject, phase: SubjectPhase): string {
  const hours = busiestHours(outsideByHour(subject, phase));
  return hours === undefined ? "" : `, mostly between ${hours[0]} h and ${hours[1]} h`;
}

/** " of the whole recording" where a count could be taken for that of the week in the tables. */
function ofWhole({ isLonger }: Subject): string {
  return isLonger ? " of the whole recording" : "";
}

/** The finding of a profile: where it was outside, how often and when; or how far it stayed inside. */
export function profileTitle(subject: Subject): string {
  const [row] = subject.limits;
  const name = quantityName(subject.quantity, subject.order);
  if (row === undefined) return `${subjectHeading(subject)}: ${rangeText(subject)}`;
  const worst = worstPhase(subject);
  if (outsideOf(worst) === 0)
    return `${subjectHeading(subject)}: every value${ofWhole(subject)} lay within the limit (${limitText(row)}); found ${rangeText(subject)}`;
  const who =
    worst.phase === "system"
      ? `The ${name}`
      : `${phaseName(worst.phase)}${subject.quantity === "voltage" ? "" : ` (${name})`}`;
  const others = subject.phases.filter((phase) => phase !== worst && outsideOf(phase) > 0);
  const also =
    others.length === 0 ? "" : `; ${others.map((p) => `${phaseName(p.phase)} in ${outsideOf(p)}`).join(", ")}`;
  return `${who} was ${beyond(worst, row)} in ${outsideOf(worst)} of ${worst.counted.length} intervals${ofWhole(subject)}${hoursText(subject, worst)}${also}`;
}

/** "10 min"; of intervals counted in cycles both: "10/12 cycles (0.2 s)". */
export function intervalText(interval: Duration): string {
  const name = intervalName(interval);
  return name.endsWith("cycle") ? `${name} (${durationText(interval)})` : durationText(interval);
}

function rangeText(subject: Subject): string {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const { series, counted } of subject.phases)
    for (const i of counted) {
      low = Math.min(low, series.values[i] as number);
      high = Math.max(high, series.values[i] as number);
    }
  const [from, to] = [printed(low, subject), printed(high, subject)];
  return from === to ? valueText(high, subject) : `${from} to ${valueText(high, subject)}`;
}

function printed(value: number, { limits, unit }: Subject): string {
  return formatAgainstLimits(value, limits[0]?.limit ?? {}, decimalsOf(unit));
}

function valueText(value: number, subject: Subject): string {
  return withUnit(printed(value, subject), subject.unit);
}

/** "limit 207.0 to 253.0 V for 95 % of the week (4.2.2.2)". */
function limitsNote(subject: Subject): string {
  if (subject.orientation.length > 0) return orientationNote(subject);
  const texts = subject.limits.map(
    (row) => `${limitText(row)} for ${shareText(row)} (${row.clause}${row.confirmed ? "" : ", unconfirmed"})`,
  );
  return texts.length === 0 ? "No limit judged." : `Limits: ${texts.join("; ")}.`;
}

function orientationNote({ orientation, interval }: Subject): string {
  const texts = orientation.map(
    (row) =>
      `${limitText(row)} for ${shareText(row)} (${row.clause}), set for ${durationText(Math.round(row.intervalS * SECOND))} values`,
  );
  return `Dashed, for orientation: ${texts.join("; ")}. Values of ${durationText(interval)} are not judged by it.`;
}

export function countText(subject: Subject): string {
  const counts = subject.phases.map(({ phase, counted }) => `${phaseName(phase)} ${counted.length}`).join(", ");
  return `${intervalText(subject.interval)} values, number of valid ones: ${counts}.`;
}

export function profileNote(subject: Subject, data: ProfileData, range: readonly [number, number]): string {
  const { step, hasExtremes, extremes } = data;
  const isCut = extremes[0] < range[0] || extremes[1] > range[1];
  const { clock, start, end } = subject;
  const timeOf = (at: Instant) => (end - start < HOUR ? exactLocalTime(clock, at) : shortLocalTime(clock, at));
  const parts = [
    `${timeOf(start)} to ${timeOf(end)} (${clock.id}).`,
    countText(subject),
    step > 1 ? `Each point of the line is the mean of ${step} intervals, the pale band their extremes.` : "",
    step === 1 && hasExtremes ? "Pale band: lowest and highest value inside each interval." : "",
    isCut
      ? `The band reaches from ${valueText(extremes[0], subject)} to ${valueText(extremes[1], subject)}; the picture cuts it off.`
      : "",
    subject.limits.length === 0 ? "" : "Triangles: intervals outside the limit.",
    limitsNote(subject),
    clock.offsetAt(start) === clock.offsetAt(end)
      ? ""
      : `The clock was changed in this time; the axis keeps ${offsetText(clock, start)} throughout.`,
  ];
  return parts.filter((part) => part !== "").join(" ");
}

export function lineLabel(value: number, row: Row, { interval }: Subject): string {
  const judged = Math.round(row.intervalS * SECOND);
  return `${shortLineLabel(value, row)}${judged === interval ? `, ${row.clause}` : ` for ${durationText(judged)} values`}`;
}

export function shortLineLabel(value: number, row: Row): string {
  return withUnit(limitNumber(value, row.unit), row.unit);
}

export const SHARE_AXIS = "share of intervals at or below the value, in %";

export function shareTitle(subject: Subject): string {
  const [row] = subject.limits;
  const worst = worstPhase(subject);
  const name = phaseName(worst.phase);
  if (row === undefined) return "How often which value occurred";
  const found = worst.counted.length === 0 ? 0 : (100 * outsideOf(worst)) / worst.counted.length;
  const allowed = allowedPercent(row.share);
  if (found === 0) return `No interval${ofWhole(subject)} lay outside the limit (${limitText(row)})`;
  const share = formatAgainstLimits(found, { max: allowed }, 1);
  const relation = found > allowed ? "more than" : "not more than";
  const all = subject.isLonger ? `of a ${row.period} ${exact(allowed, 0)} % may` : undefined;
  const may = allowed === 0 ? "none may" : (all ?? `${relation} the ${exact(allowed, 0)} % allowed`);
  return `On ${name}, ${share} % of the intervals${ofWhole(subject)} lay ${beyond(worst, row)}; ${may}`;
}

export function shareNote(subject: Subject): string {
  const [row] = subject.limits;
  const how =
    row === undefined
      ? ""
      : "The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.";
  const whole = subject.isLonger && row !== undefined ? `Judged is each ${row.period} by itself.` : "";
  return [countText(subject), how, whole, limitsNote(subject)].filter((part) => part !== "").join(" ");
}

/** Beside the bar of one side; where there are two, both share what may lie outside, and one label says so. */
export function barLabel(side: "min" | "max", row: Row): string {
  const { min, max } = row.limit;
  const share = exact(allowedPercent(row.share), 0);
  if (min !== undefined && max !== undefined) {
    if (side === "min") return "";
    return `${share === "0" ? "none outside" : `together at most\n${share} % outside`}\n${limitText(row)}`;
  }
  const limit = withUnit(limitNumber((side === "max" ? max : min) as number, row.unit), row.unit);
  return `${share === "0" ? "none" : `at most ${share} %`}\n${side === "max" ? "above" : "below"} ${limit}`;
}

/** "hour of the day (Europe/Vienna)". */
export function hourAxis({ clock }: Subject): string {
  return `hour of the day (${clock.id})`;
}

function cellHours({ interval }: Subject): number {
  return Math.max(1, interval / HOUR);
}

export function mapTitle(subject: Subject): string {
  const worst = worstPhase(subject);
  const name = worst.phase === "system" ? "the supply" : phaseName(worst.phase);
  const cell = cellHours(subject) === 1 ? "hour" : `${cellHours(subject)} hours`;
  if (outsideOf(worst) === 0)
    return subject.quantity === "frequency"
      ? `Largest deviation of each ${cell}${ofWhole(subject)}: none outside the limit`
      : `Highest value of each ${cell}${ofWhole(subject)} on ${name}: none outside the limit`;
  const hours = busiestHours(outsideByHour(subject, worst));
  const when = hours === undefined ? "spread over the day" : `mostly between ${hours[0]} h and ${hours[1]} h`;
  return `Intervals${ofWhole(subject)} outside the limit on ${name}: ${when}`;
}

export function mapNote(subject: Subject, whatIsPrinted: string, byWeekday: boolean): string {
  const { clock, start, end } = subject;
  const hours = cellHours(subject);
  const cell = `${hours === 1 ? "one hour" : `${hours} hours`} of one day${byWeekday ? " of the week" : ""}`;
  const isChanged = clock.changes.some(({ at }) => at >= start && at < end);
  const empty = isChanged ? "no valid data, or no such hour (clock change)" : "no valid data";
  return `Each cell is ${cell} on ${phaseName(worstPhase(subject).phase)} (${clock.id}); the number is ${whatIsPrinted}. Empty cells: ${empty}. ${limitsNote(subject)}`;
}

export function printedInMap(subject: Subject, exceedances: boolean): string {
  if (exceedances) return "how many intervals lay outside the limit; darker is more";
  if (subject.quantity === "frequency")
    return "the largest deviation from the nominal frequency in mHz; darker is more";
  return `the highest value${subject.unit === "1" ? "" : ` in ${subject.unit}`}; darker is higher`;
}

export const HARMONIC_WORDS = {
  id: "harmonics-by-order",
  heading: "Harmonic voltages by order",
  order: "harmonic order",
  value: "value not exceeded in the share of intervals required, in % of the fundamental",
};

export function harmonicsTitle(rows: readonly Row[]): string {
  const failed = rows.filter(({ verdict }) => verdict === "does-not-conform");
  if (failed.length > 0) {
    const orders = [...new Set(failed.map(({ order }) => order as number))].sort((a, b) => a - b);
    const phases = [...new Set(failed.map(({ phase }) => phase as string))].sort();
    return `Harmonic ${orders.length === 1 ? "order" : "orders"} ${orders.join(", ")} above the limit on ${phases.join(", ")}`;
  }
  const nearest = nearestToLimit(rows);
  if (nearest === undefined) return "Harmonic voltages by order";
  const percent = (100 * (nearest.percentile.high as number)) / (nearest.limit.max as number);
  const share = formatAgainstLimits(percent, { max: 100 }, 0);
  return `No harmonic order was judged above its limit; the nearest, order ${nearest.order} on ${nearest.phase}, reached ${share} % of its limit`;
}

function nearestToLimit(rows: readonly Row[]): Row | undefined {
  const ratio = (row: Row) => (row.percentile.high ?? 0) / (row.limit.max ?? Number.POSITIVE_INFINITY);
  return [...rows].sort((a, b) => ratio(b) - ratio(a))[0];
}

export function harmonicsNote(rows: readonly Row[], when: string): string {
  const [row] = rows;
  if (row === undefined) return "";
  const counts = [...new Set(rows.map(({ n }) => n))].sort((a, b) => a - b);
  const n = counts.length === 1 ? `${counts[0]}` : `${counts[0]} to ${counts[counts.length - 1]}`;
  const unconfirmed = [...new Set(rows.filter(({ confirmed }) => !confirmed).map(({ order }) => order))];
  return [
    `${n} values per order and phase, ${durationText(row.intervalS * 1_000_000)} each, in ${when}.`,
    `Shown is the value that ${shareText(row)} do not exceed; the verdict comes from counting. Short bars: the limit of each order (${row.clause}).`,
    unconfirmed.length > 0
      ? `Limits unconfirmed for ${unconfirmed.length === 1 ? "order" : "orders"} ${unconfirmed.join(", ")}.`
      : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}
