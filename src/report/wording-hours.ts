import { HOUR } from "../recording/time.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { outsideOf, type Subject, worstPhase } from "./charts/subject.js";
import { paragraph, phaseName } from "./wording.js";
import { hoursOf, limitsNote } from "./wording-charts.js";

/** Words of the map of days and hours. */

/** "hour of the day (Europe/Vienna)". */
export function hourAxis({ clock }: Subject): Sentence {
  return say`hour of the day (${clock.id})`;
}

function cellHours({ interval }: Subject): number {
  return Math.max(1, interval / HOUR);
}

export function mapTitle(subject: Subject): Sentence {
  const { isLonger } = subject;
  const worst = worstPhase(subject);
  const name = worst.phase === "system" ? say`the supply` : worst.phase;
  if (outsideOf(worst) === 0) return insideTitle(subject, name);
  const hours = hoursOf(subject, worst);
  const when = hours === undefined ? say`spread over the day` : say`mostly between ${hours[0]} and ${hours[1]}`;
  return isLonger
    ? say`Intervals of the whole recording outside the limit on ${name}: ${when}`
    : say`Intervals outside the limit on ${name}: ${when}`;
}

function insideTitle(subject: Subject, name: Text): Sentence {
  const hours = cellHours(subject);
  const cell = hours === 1 ? say`each hour` : say`each ${hours} hours`;
  if (subject.quantity === "frequency")
    return subject.isLonger
      ? say`Largest deviation of ${cell} of the whole recording: none outside the limit`
      : say`Largest deviation of ${cell}: none outside the limit`;
  return subject.isLonger
    ? say`Highest value of ${cell} of the whole recording on ${name}: none outside the limit`
    : say`Highest value of ${cell} on ${name}: none outside the limit`;
}

export function mapNote(subject: Subject, whatIsPrinted: Text, byWeekday: boolean): Sentence {
  const { clock, start, end } = subject;
  const where = phaseName(worstPhase(subject).phase);
  const isChanged = clock.changes.some(({ at }) => at >= start && at < end);
  return paragraph(
    say`Each cell is ${cellText(cellHours(subject), byWeekday)} on ${where} (${clock.id}); the number is ${whatIsPrinted}.`,
    isChanged ? say`Empty cells: no valid data, or no such hour (clock change).` : say`Empty cells: no valid data.`,
    limitsNote(subject),
  );
}

function cellText(hours: number, byWeekday: boolean): Sentence {
  if (hours === 1) return byWeekday ? say`one hour of one day of the week` : say`one hour of one day`;
  return byWeekday ? say`${hours} hours of one day of the week` : say`${hours} hours of one day`;
}

export function printedInMap({ quantity, unit }: Subject, exceedances: boolean): Sentence {
  if (exceedances) return say`how many intervals lay outside the limit; darker is more`;
  if (quantity === "frequency") return say`the largest deviation from the nominal frequency in mHz; darker is more`;
  return unit === "1" ? say`the highest value; darker is higher` : say`the highest value in ${unit}; darker is higher`;
}

/** What the pointer shows of a cell. */
export const CELL_WORDS = { day: say`day`, hour: say`hour`, value: say`value` } as const;
