import { MINUTE } from "../recording/time.js";
import type { Assessment, Row } from "../rules/assessment.js";
import { Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { dateText, instantOf, type LocalClock, localParts } from "./local-time.js";
import { exact, formatAgainstLimits, percentOfShare } from "./numbers.js";
import { limitText, withUnit } from "./wording.js";

/** How typical the week was: the judged voltage day by day. */

type Day = Assessment["days"][number];
export type DayRow = Day["rows"][number];

export const DAY_WORDS = {
  heading: say`Day by day`,
  day: say`Day`,
} as const;

/** "Tue 24 Mar". */
export function dayName({ start }: Day, clock: LocalClock): Text {
  // A minute into the day, so that a change of the clock at midnight does not name the day before.
  return dateText(localParts(clock, instantOf(start) + MINUTE));
}

/** "Sun 29 Mar (23 h)", "Mon 23 Mar (in part)". */
export function dayText(day: Day, clock: LocalClock): Text {
  const name = dayName(day, clock);
  const marks = [
    ...(day.hours === 24 ? [] : [withUnit(exact(day.hours, 0), "h")]),
    ...(day.complete ? [] : [say`in part`]),
  ];
  return marks.length === 0 ? name : say`${name} (${strung(marks, ", ")})`;
}

/** "13 of 144", "232.2 to 254.3 V", "95 %: 253.5 V". */
export function dayCell(row: DayRow | undefined, judged: Row): readonly Text[] {
  if (row === undefined) return ["–"];
  const printed = (value: number) => new Numeral(formatAgainstLimits(value, judged.limit, 1));
  return [
    say`${row.outside} of ${row.n} outside`,
    withUnit(say`${printed(row.lowest)} to ${printed(row.highest)}`, "V"),
  ];
}

/** The value at the share on the side that lies nearer to its limit. */
function valueAtShare({ value }: DayRow, { limit }: Row): number | undefined {
  const { low, high } = value;
  if (low === undefined || high === undefined) return high ?? low;
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = limit;
  return max - high <= low - min ? high : low;
}

/** "On L2 values lay outside on 8 of 8 days, from 1 (Wed 25 Mar) to 13 (Thu 26 Mar) a day; …" for one phase. */
export function spreadText(days: readonly Day[], judged: Row, clock: LocalClock): Sentence | undefined {
  const rows = days.flatMap((day) =>
    day.rows
      .filter(({ requirement, phase }) => requirement === judged.id && phase === judged.phase)
      .map((row) => ({ day, row })),
  );
  // Days that the recording covers in part hold too few values to compare.
  const whole = rows.filter(({ day }) => day.complete);
  if (whole.length < 2) return undefined;
  const byOutside = [...whole].sort((a, b) => a.row.outside - b.row.outside);
  const [least, most] = [byOutside[0], byOutside[byOutside.length - 1]] as [(typeof whole)[0], (typeof whole)[0]];
  const affected = whole.filter(({ row }) => row.outside > 0).length;
  const counts =
    affected === 0
      ? say`on no whole day did a value lie outside ${limitText(judged)}`
      : say`values lay outside ${limitText(judged)} on ${affected} of ${whole.length} whole days, from ${least.row.outside} (${dayName(least.day, clock)}) to ${most.row.outside} (${dayName(most.day, clock)})`;
  return say`${judged.phase}: ${counts}; ${rangeText(whole, judged, clock)}.`;
}

function rangeText(
  whole: readonly { readonly day: Day; readonly row: DayRow }[],
  judged: Row,
  clock: LocalClock,
): Sentence {
  const values = whole.map(({ day, row }) => ({ day, value: valueAtShare(row, judged) ?? Number.NaN }));
  const byValue = [...values].sort((a, b) => a.value - b.value);
  const [lowest, highest] = [byValue[0], byValue[byValue.length - 1]] as [(typeof values)[0], (typeof values)[0]];
  const printed = (value: number) => withUnit(formatAgainstLimits(value, judged.limit, 1), "V");
  const share = withUnit(exact(percentOfShare(judged.share), 0), "%");
  const isHigh =
    whole[0]?.row.value.high !== undefined && valueAtShare(whole[0].row, judged) === whole[0].row.value.high;
  const [from, to] = [printed(lowest.value), printed(highest.value)];
  const [first, last] = [dayName(lowest.day, clock), dayName(highest.day, clock)];
  return isHigh
    ? say`the value that ${share} of a day's values do not exceed ran from ${from} (${first}) to ${to} (${last})`
    : say`the value that ${share} of a day's values do not fall below ran from ${from} (${first}) to ${to} (${last})`;
}

/** What days are, with those that the clock made shorter or longer. */
export function daysNote(days: readonly Day[], judged: Row, clock: LocalClock): Sentence {
  const changed = days.filter(({ hours }) => hours !== 24).map((day) => dayText(day, clock));
  const what = say`Days of the local calendar (${clock.id}); an interval belongs to the day it begins in. Counted against ${limitText(judged)}; not judged by the day.`;
  return changed.length === 0 ? what : say`${what} Clock change: ${strung(changed, ", ")}.`;
}
