import { LogError } from "../../errors.js";
import type { LogFile } from "../../recording/log-file.js";

const [TAB, LF, BLANK, PLUS, COMMA, MINUS, POINT, ZERO, NINE] = [9, 10, 32, 43, 44, 45, 46, 48, 57];
const LONGEST_ROW = 16 * 1024 * 1024;
/** Powers of ten that are exact in a double: a number of at most 15 digits divided by one is rounded once. */
const EXACT_POWERS = Array.from({ length: 23 }, (_, k) => 10 ** k);
const MOST_DIGITS = 15;

/** Returned where a field holds something that is no number. */
export const NO_NUMBER = Number.POSITIVE_INFINITY;

/**
 * Reads the text from one byte to another as blocks that end at the end of a line; the last one ends with the text.
 * @throws LogError with the byte of a row that is too long.
 */
export async function* wholeLines(
  file: LogFile,
  from: number,
  end: number,
  blockBytes: number,
): AsyncGenerator<{ bytes: Uint8Array; offset: number }> {
  for (let offset = from, want = blockBytes; offset < end; ) {
    const bytes = await file.read(offset, Math.min(want, end - offset));
    if (bytes.length < Math.min(want, end - offset)) {
      throw new LogError(file.name, `byte ${offset + bytes.length}`, "the file became shorter while it was read");
    }
    const whole = offset + bytes.length >= end ? bytes.length : bytes.lastIndexOf(LF) + 1;
    if (whole === 0) {
      if (want >= LONGEST_ROW) throw new LogError(file.name, `byte ${offset}`, "the row beginning here has no end");
      want = Math.min(4 * want, LONGEST_ROW);
      continue;
    }
    yield { bytes: bytes.subarray(0, whole), offset };
    offset += whole;
    want = blockBytes;
  }
}

/** Position behind the line that begins at `from`: behind its line feed, or the end of the block. */
export function lineEnd(bytes: Uint8Array, from: number): number {
  const at = bytes.indexOf(LF, from);
  return at < 0 ? bytes.length : at + 1;
}

/** Position behind the last character of a line that is no blank and no control character. */
export function trimmedEnd(bytes: Uint8Array, from: number, to: number): number {
  let end = to;
  while (end > from && (bytes[end - 1] as number) <= BLANK) end--;
  return end;
}

/** Position of the next comma, or `to`. */
export function fieldEnd(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  while (at < to && bytes[at] !== COMMA) at++;
  return at;
}

export function countFields(bytes: Uint8Array, from: number, to: number): number {
  let fields = 1;
  for (let at = from; at < to; at++) if (bytes[at] === COMMA) fields++;
  return fields;
}

/** Whether a line is a separator of a single file ("--- file type: …"). */
export function isSeparator(bytes: Uint8Array, from: number, to: number): boolean {
  return to - from >= 3 && bytes[from] === MINUS && bytes[from + 1] === MINUS && bytes[from + 2] === MINUS;
}

/** The number in a field: NaN where the field is empty or says that it is none ("nan", "inf"), NO_NUMBER for anything else. */
export function readNumber(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  while (at < to && ((bytes[at] as number) === BLANK || (bytes[at] as number) === TAB)) at++;
  const end = trimmedEnd(bytes, at, to);
  if (at === end) return Number.NaN;
  const begin = at;
  const sign = bytes[at] as number;
  if (sign === MINUS || sign === PLUS) at++;
  let value = 0;
  let digits = 0;
  let decimals = 0;
  let behindPoint = false;
  for (; at < end; at++) {
    const byte = bytes[at] as number;
    if (byte >= ZERO && byte <= NINE) {
      value = value * 10 + (byte - ZERO);
      digits++;
      if (behindPoint) decimals++;
    } else if (byte === POINT && !behindPoint) behindPoint = true;
    else break;
  }
  if (at < end || digits === 0 || digits > MOST_DIGITS) return readRareNumber(bytes, begin, end);
  if (decimals > 0) value /= EXACT_POWERS[decimals] as number;
  return sign === MINUS ? -value : value;
}

function readRareNumber(bytes: Uint8Array, from: number, to: number): number {
  const text = String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 64)));
  if (/^[+-]?(nan|inf|infinity)$/i.test(text)) return Number.NaN;
  if (to - from > 64 || !/^[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?$/.test(text)) return NO_NUMBER;
  const value = Number(text.replace(/[dD]/, "e"));
  return Number.isFinite(value) ? value : NO_NUMBER;
}
