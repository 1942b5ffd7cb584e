import { DAY, HOUR, MINUTE, SECOND } from "../../recording/time.js";
import { monthNamed } from "./month-name.js";
import { decodeText } from "./text-source.js";

/** `StampReader.offset` where the stamp names none. */
export const NO_OFFSET = 32767;

const [TAB, BLANK, COMMA, MINUS, POINT, SLASH, COLON, T, UNDERSCORE] = [9, 32, 44, 45, 46, 47, 58, 84, 95];

/** `StampReader.form` of dates that name their month. */
export const NAMED_MONTH = 1;

/**
 * Reads stamps from bytes, without making strings (but for names of months). The date's three numbers are kept as written, because
 * which of them is the day may only be known after the last row.
 *
 * Dates: y-m-d, d.m.y, d/m/y, m/d/y with `-`, `/` or `.` between the numbers, two- or four-digit years, or yyyymmdd;
 * and a day, the name of a month, a year ("01-Mar-2026", "1. März 2026").
 * Times of day: h:mm[:ss[.fraction]], hh.mm.ss, am/pm, 24:00. Offsets: Z, UTC, ±hh[:mm].
 */
export class StampReader {
  /** The three numbers of the date as one: year × 10000 + the other two in written order (see `form`). */
  packedDate = 0;
  /** How the date was written: separator byte × 4 + place of the year (0 first, 1 known by the month's name, 2 last, 3 unclear). */
  form = 0;
  /** Microseconds since local midnight; `DAY` for 24:00. */
  timeOfDay = 0;
  /** Minutes that local time is ahead of UTC, or NO_OFFSET. */
  offset = NO_OFFSET;
  twelveHour = false;
  /** False where a date stands without a time of day. */
  hasTime = false;

  #at = 0;
  #digits = 0;

  /** A whole cell holding date and time of day (or a date alone: midnight). */
  readDateTime(bytes: Uint8Array, from: number, to: number): boolean {
    this.#at = from;
    if (!this.#date(bytes, to)) return false;
    const afterDate = this.#at;
    this.#blanks(bytes, to);
    if (this.#at === to) {
      this.#clearTime();
      return true;
    }
    const mark = bytes[this.#at] as number;
    if (mark === COMMA || mark === UNDERSCORE || (mark & 0xdf) === T) this.#at++;
    else if (this.#at === afterDate) return false;
    return this.#time(bytes, to);
  }

  readDate(bytes: Uint8Array, from: number, to: number): boolean {
    this.#at = from;
    if (!this.#date(bytes, to)) return false;
    this.#blanks(bytes, to);
    this.#clearTime();
    return this.#at === to;
  }

  readTime(bytes: Uint8Array, from: number, to: number): boolean {
    this.#at = from;
    return this.#time(bytes, to);
  }

  #clearTime(): void {
    this.timeOfDay = 0;
    this.offset = NO_OFFSET;
    this.twelveHour = false;
    this.hasTime = false;
  }

  /** Blanks, tabs, and the no-break spaces (in UTF-8) that some programs put before "PM". */
  #blanks(bytes: Uint8Array, to: number): void {
    while (this.#at < to) {
      const byte = bytes[this.#at];
      if (byte === BLANK || byte === TAB) this.#at++;
      else if (byte === 0xc2 && bytes[this.#at + 1] === 0xa0) this.#at += 2;
      else if (byte === 0xe2 && bytes[this.#at + 1] === 0x80 && bytes[this.#at + 2] === 0xaf) this.#at += 3;
      else break;
    }
  }

  /** Reads digits; their number is in `#digits`. */
  #number(bytes: Uint8Array, to: number): number {
    const start = this.#at;
    let value = 0;
    while (this.#at < to && this.#at - start < 9) {
      const digit = (bytes[this.#at] as number) - 48;
      if (digit < 0 || digit > 9) break;
      value = value * 10 + digit;
      this.#at++;
    }
    this.#digits = this.#at - start;
    return value;
  }

  #date(bytes: Uint8Array, to: number): boolean {
    this.#blanks(bytes, to);
    const first = this.#number(bytes, to);
    const firstDigits = this.#digits;
    if (firstDigits === 8) {
      this.packedDate = first;
      this.form = 0;
      return true;
    }
    if (firstDigits <= 2 && this.#monthAndYear(first, bytes, to)) return true;
    const mark = this.#at < to ? (bytes[this.#at] as number) : 0;
    if (mark !== MINUS && mark !== SLASH && mark !== POINT) return false;
    if (firstDigits !== 4 && (firstDigits < 1 || firstDigits > 2)) return false;
    this.#at++;
    if (mark === POINT) this.#blanks(bytes, to);
    const second = this.#number(bytes, to);
    if (this.#digits < 1 || this.#digits > 2 || this.#at >= to || bytes[this.#at] !== mark) return false;
    this.#at++;
    if (mark === POINT) this.#blanks(bytes, to);
    const third = this.#number(bytes, to);
    if (firstDigits === 4) {
      if (this.#digits < 1 || this.#digits > 2) return false;
      this.packedDate = first * 10000 + second * 100 + third;
      this.form = mark * 4;
    } else if (this.#digits === 4) {
      this.packedDate = third * 10000 + first * 100 + second;
      this.form = mark * 4 + 2;
    } else {
      if (this.#digits !== 2) return false;
      this.packedDate = first * 10000 + second * 100 + third;
      this.form = mark * 4 + 3;
    }
    return true;
  }

  /** Behind a day: the name of a month and a year. Where it returns false, nothing was taken. */
  #monthAndYear(day: number, bytes: Uint8Array, to: number): boolean {
    const begin = this.#at;
    const from = behind(bytes, begin, to, isSeparator);
    const end = behind(bytes, from, to, isLetter);
    const month = end === from ? undefined : monthNamed(decodeText(bytes.subarray(from, end)));
    if (month === undefined) return false;
    this.#at = behind(bytes, end, to, isSeparator);
    let year = this.#number(bytes, to);
    if (this.#digits === 2) year += year < 80 ? 2000 : 1900;
    else if (this.#digits !== 4) {
      this.#at = begin;
      return false;
    }
    this.packedDate = year * 10000 + month * 100 + day;
    this.form = NAMED_MONTH;
    return true;
  }

  #time(bytes: Uint8Array, to: number): boolean {
    this.#clearTime();
    this.#blanks(bytes, to);
    let hour = this.#number(bytes, to);
    let [minute, second, fraction] = [0, 0, 0];
    if (this.#digits === 4 || this.#digits === 6) {
      if (this.#digits === 6) {
        second = hour % 100;
        hour = Math.floor(hour / 100);
      }
      minute = hour % 100;
      hour = Math.floor(hour / 100);
    } else {
      if (this.#digits < 1 || this.#digits > 2) return false;
      const mark = this.#at < to ? (bytes[this.#at] as number) : 0;
      if (mark !== COLON && mark !== POINT) return false;
      this.#at++;
      minute = this.#number(bytes, to);
      if (this.#digits !== 2) return false;
      if (this.#at < to && bytes[this.#at] === mark) {
        this.#at++;
        second = this.#number(bytes, to);
        if (this.#digits !== 2) return false;
        fraction = this.#fraction(bytes, to);
      }
    }
    if (minute > 59 || second > 59) return false;
    this.#blanks(bytes, to);
    const half = this.#halfOfDay(bytes, to);
    if (half !== 0) {
      if (hour < 1 || hour > 12) return false;
      hour = (hour % 12) + (half === 2 ? 12 : 0);
      this.twelveHour = true;
    }
    this.timeOfDay = hour * HOUR + minute * MINUTE + second * SECOND + fraction;
    if (this.timeOfDay > DAY || (hour === 24 && this.timeOfDay !== DAY)) return false;
    this.hasTime = true;
    this.#blanks(bytes, to);
    if (this.#at < to && !this.#readOffset(bytes, to)) return false;
    this.#blanks(bytes, to);
    return this.#at === to;
  }

  /** Microseconds behind the point (comma, or colon before three digits), rounded. */
  #fraction(bytes: Uint8Array, to: number): number {
    const mark = this.#at < to ? bytes[this.#at] : 0;
    if (mark !== POINT && mark !== COMMA && mark !== COLON) return 0;
    this.#at++;
    const value = this.#number(bytes, to);
    return Math.round(value * 10 ** (6 - this.#digits));
  }

  /** 0 none, 1 am, 2 pm; "a.m." and "p. m." as well. */
  #halfOfDay(bytes: Uint8Array, to: number): 0 | 1 | 2 {
    const letter = this.#at < to ? (bytes[this.#at] as number) & 0xdf : 0;
    if (letter !== 65 && letter !== 80) return 0;
    let at = this.#at + 1;
    if (bytes[at] === POINT) at++;
    if (bytes[at] === BLANK) at++;
    if (at >= to || ((bytes[at] as number) & 0xdf) !== 77) return 0;
    at++;
    if (at < to && bytes[at] === POINT) at++;
    this.#at = at;
    return letter === 65 ? 1 : 2;
  }

  #readOffset(bytes: Uint8Array, to: number): boolean {
    const letters = String.fromCharCode(...bytes.subarray(this.#at, Math.min(to, this.#at + 3))).toUpperCase();
    if (letters === "UTC" || letters === "GMT") {
      this.#at += 3;
      if (this.#at === to) {
        this.offset = 0;
        return true;
      }
    } else if (letters === "Z") {
      this.#at++;
      this.offset = 0;
      return true;
    }
    const sign = bytes[this.#at] === MINUS ? -1 : bytes[this.#at] === 43 ? 1 : 0;
    if (sign === 0) return false;
    this.#at++;
    let hours = this.#number(bytes, to);
    let minutes = 0;
    if (this.#digits === 4) {
      minutes = hours % 100;
      hours = Math.floor(hours / 100);
    } else {
      if (this.#digits < 1 || this.#digits > 2) return false;
      if (this.#at < to && bytes[this.#at] === COLON) {
        this.#at++;
        minutes = this.#number(bytes, to);
        if (this.#digits !== 2) return false;
      }
    }
    if (hours > 18 || minutes > 59) return false;
    this.offset = sign * (hours * 60 + minutes);
    return true;
  }
}

function behind(bytes: Uint8Array, from: number, to: number, isOne: (byte: number) => boolean): number {
  let at = from;
  while (at < to && isOne(bytes[at] as number)) at++;
  return at;
}

function isSeparator(byte: number): boolean {
  return byte === BLANK || byte === MINUS || byte === POINT || byte === SLASH;
}

/** Of any alphabet: also the bytes of letters that are not ASCII. */
function isLetter(byte: number): boolean {
  return byte >= 0x80 || ((byte | 0x20) >= 97 && (byte | 0x20) <= 122);
}
