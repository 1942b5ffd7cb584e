import { DAY, type Duration, HOUR, MINUTE, SECOND } from "../../recording/time.js";

export type DateOrder = "dmy" | "mdy" | "ymd";

/** A date and time of the configuration, as written: on the clock that the recorder was set to. */
export interface Stamp {
  /** Microseconds since 1970-01-01 00:00 on that clock, rounded. */
  readonly local: number;
  /** 0 … 9 digits behind the decimal point of the seconds. */
  readonly decimals: number;
  readonly order: DateOrder;
  /** Day and month are both below 13, so that the numbers themselves do not tell the order. */
  readonly ambiguous: boolean;
}

const STAMP =
  /^(\d{1,4})([-/.])(\d{1,2})\2(\d{1,4})\s*[, ]\s*(\d{1,2})\s*:\s*(\d{1,2})\s*(?::\s*(\d{1,2})(?:\.(\d{0,9})\d*)?)?\s*$/;

const LONGEST_STAMP = 100;

/**
 * Reads "dd/mm/yyyy,hh:mm:ss.ssssss" or the month-first form of 1991. One-digit days, two-digit years (1980 … 2079)
 * and 0 to 9 decimals are accepted.
 * @param expected the order that holds where the numbers do not tell; `given`: the user states it, so it always holds.
 * @returns undefined if the text is no date and time in a possible order.
 */
export function readStamp(text: string, expected: DateOrder, given = false): Stamp | undefined {
  const match = text.length > LONGEST_STAMP ? null : STAMP.exec(text.trim());
  if (!match) return undefined;
  const [, one = "", , two = "", three = "", hour, minute, second = "0", fraction = ""] = match;
  const [first, middle] = [Number(one), Number(two)];
  const told: DateOrder | undefined =
    one.length > 2 ? "ymd" : first > 12 && middle <= 12 ? "dmy" : middle > 12 ? "mdy" : undefined;
  const order = given ? expected : (told ?? (expected === "ymd" ? "dmy" : expected));
  const [year, month, day] =
    order === "ymd" ? [one, middle, Number(three)] : order === "dmy" ? [three, middle, first] : [three, first, middle];
  const date = dateOf(year, month, day);
  const clock = Number(hour) * HOUR + Number(minute) * MINUTE + Number(second) * SECOND;
  if (date === undefined || Number(minute) > 59 || Number(second) > 60 || clock > DAY + SECOND) return undefined;
  const micros = Math.round(Number(`0.${fraction === "" ? "0" : fraction}`) * SECOND);
  return {
    local: date + clock + micros,
    decimals: fraction.length,
    order,
    ambiguous: told === undefined && first !== middle,
  };
}

function dateOf(yearText: string, month: number, day: number): number | undefined {
  const written = Number(yearText);
  const year = yearText.length > 2 ? written : written < 80 ? 2000 + written : 1900 + written;
  const time = Date.UTC(year, month - 1, day);
  const date = new Date(time);
  const exists = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists && year >= 1900 && year < 2200 ? time * 1000 : undefined;
}

/**
 * An offset from UTC in the form of the 2013 edition: "-4", "+10h30", "-7h15", "0". Undefined for "x" (not
 * applicable) and for anything else.
 */
export function readTimeCode(text: string): Duration | undefined {
  const match = /^([+-]?)(\d{1,2})(?:[hH:](\d{2})?)?$/.exec(text.trim());
  if (!match) return undefined;
  const [hours, minutes] = [Number(match[2]), Number(match[3] ?? 0)];
  if (hours > 18 || minutes > 59) return undefined;
  const size = hours * HOUR + minutes * MINUTE;
  return match[1] === "-" && size > 0 ? -size : size;
}
