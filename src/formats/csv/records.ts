import { isMissing, looksNumeric } from "./number-text.js";
import { StampReader } from "./stamp-reader.js";
import { decodeText } from "./text-source.js";

export const QUOTE = 34;
export const LF = 10;
export const CR = 13;

/** One row of the head of a log: where its cells stand in the bytes, quotes left out. */
export interface HeadRecord {
  /** 1-based line on which it begins. */
  readonly line: number;
  readonly from: number;
  readonly to: number;
  /** from₀, to₀, from₁, to₁ … */
  readonly cells: readonly number[];
}

/**
 * Finds the cells of the record that begins at `from`; puts their bounds into `cells`.
 * @returns where the next record begins; -1 if the record does not end before `end`.
 * `final`: the text ends at `end`, which then ends the record.
 */
export function splitRecord(
  bytes: Uint8Array,
  from: number,
  end: number,
  delimiter: number,
  final: boolean,
  cells: number[],
): number {
  let at = from;
  for (;;) {
    let [start, stop] = [at, -1];
    if (at < end && bytes[at] === QUOTE) {
      start = ++at;
      while (at < end && (bytes[at] !== QUOTE || bytes[at + 1] === QUOTE)) at += bytes[at] === QUOTE ? 2 : 1;
      if (at >= end) return -1;
      stop = at++;
    }
    while (at < end && bytes[at] !== delimiter && bytes[at] !== LF && bytes[at] !== CR) at++;
    cells.push(start, stop < 0 ? at : stop);
    if (at < end && bytes[at] === delimiter) {
      at++;
      continue;
    }
    if (at >= end) return final ? end : -1;
    if (bytes[at] === LF) return at + 1;
    if (at + 1 >= end) return final ? end : -1;
    return bytes[at + 1] === LF ? at + 2 : at + 1;
  }
}

/** The records of the head that are not empty, as many as `cellLimit` cells allow. */
export function headRecords(bytes: Uint8Array, delimiter: number, complete: boolean, cellLimit: number): HeadRecord[] {
  const records: HeadRecord[] = [];
  let line = 1;
  let total = 0;
  for (let from = 0; from < bytes.length && total < cellLimit; ) {
    const cells: number[] = [];
    const next = splitRecord(bytes, from, bytes.length, delimiter, complete, cells);
    if (next < 0) break;
    total += cells.length / 2;
    if (cells.some((bound, i) => i % 2 === 1 && bound > (cells[i - 1] as number))) {
      records.push({ line, from, to: next, cells });
    }
    line += lineEnds(bytes, from, next);
    from = next;
  }
  return records;
}

/** How many lines end in the range; CR LF counts once. */
export function lineEnds(bytes: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let i = from; i < to; i++) {
    if (bytes[i] === LF || (bytes[i] === CR && bytes[i + 1] !== LF)) count++;
  }
  return count;
}

export function width(record: HeadRecord): number {
  return record.cells.length / 2;
}

export function cellText(bytes: Uint8Array, record: HeadRecord, index: number): string {
  const [from, to] = [record.cells[2 * index], record.cells[2 * index + 1]];
  if (from === undefined || to === undefined) return "";
  return decodeText(bytes.subarray(from, to)).replaceAll('""', '"').trim();
}

export type CellClass = "missing" | "number" | "date and time" | "date" | "time" | "text";

const stamps = new StampReader();

/** What the cell looks like, before anything is known about its column. */
export function classify(bytes: Uint8Array, record: HeadRecord, index: number): CellClass {
  const [from, to] = [record.cells[2 * index] as number, record.cells[2 * index + 1] as number];
  if (from === to) return "missing";
  if (to - from <= 48) {
    if (stamps.readDateTime(bytes, from, to)) {
      if (stamps.hasTime) return "date and time";
      if (to - from !== 8 || stamps.form !== 0 || isPlausible(stamps.packedDate)) return "date";
    }
    if (bytes.subarray(from, to).includes(58) && stamps.readTime(bytes, from, to)) return "time";
  }
  const text = cellText(bytes, record, index);
  if (isMissing(text)) return "missing";
  return looksNumeric(text) ? "number" : "text";
}

/** Eight digits are a date only if they can be one. */
function isPlausible(yyyymmdd: number): boolean {
  const [year, month, day] = [Math.floor(yyyymmdd / 10000), Math.floor(yyyymmdd / 100) % 100, yyyymmdd % 100];
  return year >= 1970 && year < 2200 && month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

/** A cell's text for a message: in quotes, short and without control characters. */
export function shown(text: string): string {
  const clean = text.trim().replace(/\p{C}/gu, "·");
  return `"${clean.length > 40 ? `${clean.slice(0, 40)}…` : clean}"`;
}
