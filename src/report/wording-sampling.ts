import type { Assessment, Row } from "../rules/assessment.js";
import type { Sampling } from "../rules/assessment-evidence.js";
import { Numeral, say, type Text } from "../sentence.js";
import { decimalsOf, fixed, formatAgainstLimits } from "./numbers.js";
import { byRequirement, fullWeek } from "./rows.js";
import { placeText, withUnit } from "./wording.js";

/** Words on what the week would say about a longer time. */

export const SAMPLING_HEADING = say`What the week says about a longer time`;
export const SAMPLING_SUMMARY = say`Intervals of 95 % confidence, for information`;
export const SAMPLING_NOTE = say`Of the values at the required share and of the share outside, as if the values were independent of one another. Successive intervals are not, so the truth spreads wider. The standard's verdict is about the measured week itself and rests on none of this; whether missing intervals could turn that verdict is said by “robust”. The worst phase of each requirement; results.json holds all.`;

export const SAMPLING_COLUMNS = {
  requirement: say`Requirement`,
  place: say`Where`,
  low: say`Low value`,
  high: say`High value`,
  share: say`Share outside`,
} as const;

/** A line for the row that stands for each requirement of the deciding week, in the order of the columns. */
export function samplingRows(assessment: Assessment): Text[][] {
  const week = fullWeek(assessment);
  if (week === undefined) return [];
  return byRequirement(assessment, week).flatMap(({ title, worst }) => {
    const { sampling } = worst;
    if (sampling === undefined) return [];
    const ends = [sampling.low, sampling.high].map((end) => valueInterval(end, worst));
    return [[title, placeText(worst), ...ends, shareInterval(sampling)]];
  });
}

/** "251.9 to 252.8 V"; an end that lies beyond all values is left open. */
function valueInterval(interval: Sampling["high"], { limit, unit }: Pick<Row, "limit" | "unit">): Text {
  if (interval === undefined) return "–";
  const number = (value: number) => new Numeral(formatAgainstLimits(value, limit, decimalsOf(unit)));
  const { from, to } = interval;
  if (from !== undefined && to !== undefined) return withUnit(say`${number(from)} to ${number(to)}`, unit);
  if (from !== undefined) return say`from ${withUnit(number(from), unit)}, open above`;
  return to === undefined ? say`open` : say`up to ${withUnit(number(to), unit)}, open below`;
}

/** "3.70 to 6.49 %" */
function shareInterval({ shareOutside: { from, to } }: Sampling): Text {
  const percent = (share: number) => new Numeral(fixed(100 * share, 2));
  return say`${percent(from)} to ${percent(to)} %`;
}
