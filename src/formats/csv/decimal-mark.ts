import { LogError } from "../../errors.js";
import type { DecimalMark } from "./number-text.js";

/** A log whose numbers read either way; the other files of its recording may still decide. */
export class UnclearDecimalMark extends LogError {
  constructor(file: string, cell: string) {
    const what = "can be a decimal number or one with thousands separators";
    super(file, undefined, `"${cell}" ${what}: state in the setup decimalMark: "." or decimalMark: ","`);
  }
}

/** Frequencies and percentages have no thousands; mHz and kHz are other units. */
const NO_THOUSANDS = /(^|[^a-z])Hz\b|%/i;
const EITHER_WAY = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * Which of point and comma is the decimal mark, by what most numbers show: a mark with another number of digits behind
 * it than three, or behind a leading zero, or behind groups, can only be the decimal one; one that comes twice in a
 * number cannot. "49.981" reads either way, except in hertz or per cent.
 * @param numbers the texts of all numbers of the head, by column.
 * @param titles header and unit of each column.
 * @param commaDelimited cells are parted by commas, as is done where the decimal mark is a point.
 * @returns undefined if no number has a mark.
 * @throws UnclearDecimalMark if every mark reads either way.
 */
export function findDecimalMark(
  file: string,
  numbers: Iterable<readonly [text: string, column: number]>,
  titles: readonly string[],
  commaDelimited: boolean,
): DecimalMark | undefined {
  let [point, comma] = [0, 0];
  let unclear: string | undefined;
  for (const [text, column] of numbers) {
    const [points, commas] = [text.split(".").length - 1, text.split(",").length - 1];
    if (points + commas === 0 || (points > 1 && commas > 1)) continue;
    if (points === 1 && commas === 1) {
      if (text.indexOf(".") > text.indexOf(",")) point++;
      else comma++;
    } else if (points + commas === 1 && EITHER_WAY.test(text) && !NO_THOUSANDS.test(titles[column] ?? "")) {
      unclear ??= text;
    } else if (points === 1 || commas > 1) point++;
    else comma++;
  }
  if (point + comma > 0) return point >= comma ? "." : ",";
  if (unclear === undefined) return undefined;
  if (commaDelimited) return ".";
  throw new UnclearDecimalMark(file, unclear);
}
