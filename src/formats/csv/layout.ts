import { LogError } from "../../errors.js";
import type { GivenSetup } from "../../recording/setup.js";
import { findDecimalMark } from "./decimal-mark.js";
import { type Header, readHeader } from "./header.js";
import { type DecimalMark, plainNumber } from "./number-text.js";
import type { ColumnText } from "./recognise-columns.js";
import { cellText, classify, type HeadRecord, headRecords, width } from "./records.js";
import {
  type ClassifiedHead,
  type Found,
  findNumericStamps,
  findTextStamps,
  type HeaderOf,
  labelIn,
  labelInPreamble,
  type StampColumns,
} from "./stamp-columns.js";

/** How a log is written, found out from its first part. Column indexes are 0-based. */
export interface Layout<Stamps = StampColumns> {
  readonly delimiter: number;
  /** Undefined: no number with a mark stands in the head, so none is expected. */
  readonly decimal: DecimalMark | undefined;
  /** Cells of a row; the last ones may be missing down to `leastColumns` if they have neither name nor content. */
  readonly columns: number;
  readonly leastColumns: number;
  readonly texts: readonly ColumnText[];
  readonly stamps: Stamps;
  /** Columns that hold times but are not used. */
  readonly otherTimes: readonly number[];
  readonly label: "start" | "end" | undefined;
  /** Zone named in the header of the stamps: "UTC" or "+01:00". */
  readonly zone: string | undefined;
  /** Offset of the first row in the head, and its line. */
  readonly dataOffset: number;
  readonly dataLine: number;
  readonly header: Header;
  /** What the last cell of the rows has in common, to know one that was cut off. */
  readonly lastCell: LastCell;
}

export interface LastCell {
  /** Fewest characters before the decimal mark. */
  readonly leastWhole: number;
  /** Characters behind it, where all cells have the same number. */
  readonly places: number | undefined;
}

const DELIMITERS = [";", "\t", "|", ","].map((d) => d.charCodeAt(0));
/** A byte that stands in no text: each line is one cell. */
const NO_DELIMITER = 0;
const COMMA = 44;
const CELL_LIMIT = 40_000;
const SAMPLES = 200;
/** Had zeros at the end of a number been left out, one of so many rows would most likely show it. */
const ENOUGH_ROWS = 20;

/**
 * Finds delimiter, decimal mark, header, stamps and the first row, by evidence.
 * @param bytes the first part of the text; `complete`: it is all of it.
 * @throws LogError if there is no table with stamps, or if the decimal mark cannot be told.
 */
export function findLayout(file: string, bytes: Uint8Array, complete: boolean, setup: GivenSetup): Layout {
  const candidates = DELIMITERS.map((delimiter) => candidate(bytes, delimiter, complete, findStamps));
  const best = bestOf(candidates);
  if (best === undefined) throw noTable(file, candidates);
  const stamped = stampIndexes(best.found.stamps);
  return layoutOf(file, best, stamped, stamped, setup.decimalMark);
}

function findStamps(head: ClassifiedHead, header: HeaderOf): Found<StampColumns> | undefined {
  return findTextStamps(head, header) ?? findNumericStamps(head, header);
}

/** Looks for the times of a table; `header` gives the texts above a column. Undefined if it is no table. */
export type TimeFinder<Stamps> = (head: ClassifiedHead, header: HeaderOf) => Found<Stamps> | undefined;

/**
 * The table that most rows and cells speak for, whatever delimits its cells; undefined if there is none.
 * @param bytes the first part of the text; `complete`: it is all of it.
 */
export function findTable<Stamps>(
  bytes: Uint8Array,
  complete: boolean,
  find: TimeFinder<Stamps>,
): FoundTable<Stamps> | undefined {
  return bestOf([...DELIMITERS, NO_DELIMITER].map((delimiter) => candidate(bytes, delimiter, complete, find)));
}

/**
 * How a table is written.
 * @param timeColumns those that its times stand in.
 * @param unmarked those whose numbers say nothing about the decimal mark.
 * @throws UnclearDecimalMark if the decimal mark can be told neither from the numbers nor from `decimalMark`.
 */
export function layoutOf<Stamps>(
  file: string,
  { head, found, delimiter }: FoundTable<Stamps>,
  timeColumns: readonly number[],
  unmarked: readonly number[],
  decimalMark: DecimalMark | undefined,
): Layout<Stamps> {
  const { records, bytes } = head;
  const columnsOfRows = mostFrequent(found.rows.map((r) => width(records[r] as HeadRecord)));
  const first = firstRow(head, found.rows, columnsOfRows, timeColumns[0]);
  const header = readHeader(head, first, columnsOfRows, timeColumns);
  const columns = Math.max(header.names.length, ...timeColumns.map((c) => c + 1));
  const rows = found.rows.filter((r) => r >= first);
  const dataRecord = records[first] as HeadRecord;
  const titles = header.names.map((name, c) => `${name} ${header.units[c] ?? ""}`);
  const numbers = numbersIn(head, rows, unmarked);
  const decimal = decimalMark ?? findDecimalMark(file, numbers, titles, delimiter === COMMA);
  const timeHeader = timeColumns.map((c) => header.names[c] ?? "").join(" ");
  const filled = (c: number) => (header.names[c] ?? "") !== "" || rows.some((r) => filledAt(records[r], c));
  let leastColumns = columns;
  while (leastColumns > 1 && !filled(leastColumns - 1)) leastColumns--;

  return {
    delimiter,
    decimal,
    columns,
    leastColumns,
    texts: Array.from({ length: columns }, (_, c) => columnText(head, header, rows, c, decimal)),
    stamps: found.stamps,
    otherTimes: found.others,
    label: labelIn(timeHeader) ?? header.preamble.map(labelInPreamble).find((label) => label !== undefined),
    zone: zoneIn(`${timeHeader} ${timeColumns.map((c) => header.units[c] ?? "").join(" ")}`),
    dataOffset: dataRecord.from,
    dataLine: dataRecord.line,
    header,
    lastCell: lastCell(
      rows.slice(0, -1).map((r) => cellText(bytes, records[r] as HeadRecord, leastColumns - 1)),
      decimal,
    ),
  };
}

export function stampIndexes(stamps: StampColumns): number[] {
  if (stamps.kind === "text") return [stamps.dateTime];
  return stamps.kind === "number" ? [stamps.column] : [stamps.date, stamps.time];
}

export interface FoundTable<Stamps> {
  readonly delimiter: number;
  readonly head: ClassifiedHead;
  readonly found: Found<Stamps>;
}

interface Candidate<Stamps> {
  readonly delimiter: number;
  readonly head: ClassifiedHead;
  readonly found: Found<Stamps> | undefined;
  /** Rows with a stamp, each counted by the share of its cells that are stamps, numbers or missing. */
  readonly score: number;
}

function bestOf<Stamps>(candidates: readonly Candidate<Stamps>[]): FoundTable<Stamps> | undefined {
  const { delimiter, head, found } = candidates.reduce((a, b) => (b.score > a.score ? b : a));
  return found === undefined ? undefined : { delimiter, head, found };
}

function candidate<Stamps>(
  bytes: Uint8Array,
  delimiter: number,
  complete: boolean,
  find: TimeFinder<Stamps>,
): Candidate<Stamps> {
  const records = headRecords(bytes, delimiter, complete, CELL_LIMIT);
  const divided = (record: HeadRecord) => width(record) > 1 || delimiter === NO_DELIMITER;
  const classes = records.map((record) =>
    Array.from({ length: width(record) }, (_, c) => (divided(record) ? classify(bytes, record, c) : "text")),
  );
  const head = { bytes, records, classes };
  const found = find(head, (column, rows) => {
    const above = records.slice(0, rows[0]).slice(-3);
    return above.map((record) => (width(record) > column ? cellText(bytes, record, column) : "")).join(" ");
  });
  let score = 0;
  for (const r of found?.rows ?? []) {
    const own = classes[r] as readonly string[];
    score += own.filter((c) => c !== "text").length / own.length;
  }
  return { delimiter, head, found: score > 0 ? found : undefined, score };
}

/**
 * The first row of data: the first with a stamp and the usual width, or rows right above it that are full of numbers
 * and whose stamp is damaged (reading them will say so).
 */
function firstRow(
  { records, classes, bytes }: ClassifiedHead,
  rows: readonly number[],
  columns: number,
  stamp: number | undefined,
): number {
  const usual = (r: number) => Math.abs(width(records[r] as HeadRecord) - columns) <= 1;
  let first = rows.find(usual) ?? (rows[0] as number);
  for (; first > 0 && stamp !== undefined; first--) {
    const above = classes[first - 1] as readonly string[];
    const numbers = above.filter((c, i) => c === "number" && i !== stamp).length;
    const digits = cellText(bytes, records[first - 1] as HeadRecord, stamp).replace(/\D/g, "").length;
    if (above.length !== columns || numbers < columns / 2 || digits < 4) break;
  }
  return first;
}

function lastCell(texts: readonly string[], decimal: DecimalMark | undefined): LastCell {
  const parts = texts.map((text) => cellParts(text, decimal));
  const places = new Set(parts.map((part) => part.places));
  return {
    leastWhole: Math.min(...parts.map((part) => part.whole)),
    places: places.size === 1 && parts.length >= ENOUGH_ROWS ? parts[0]?.places : undefined,
  };
}

/** Whether a last cell can have lost characters at its end. */
export function isShorter(text: string, { leastWhole, places }: LastCell, decimal: DecimalMark | undefined): boolean {
  const part = cellParts(text, decimal);
  return part.whole < leastWhole || (places !== undefined && part.places < places);
}

function cellParts(text: string, decimal: DecimalMark | undefined): { whole: number; places: number } {
  const mark = decimal === undefined ? -1 : text.indexOf(decimal);
  return mark < 0 ? { whole: text.length, places: 0 } : { whole: mark, places: text.length - mark - 1 };
}

function* numbersIn(
  head: ClassifiedHead,
  rows: readonly number[],
  unmarked: readonly number[],
): Generator<readonly [string, number]> {
  for (const r of rows) {
    const classes = head.classes[r] as readonly string[];
    for (let c = 0; c < classes.length; c++) {
      if (classes[c] !== "number" || unmarked.includes(c)) continue;
      yield [cellText(head.bytes, head.records[r] as HeadRecord, c), c];
    }
  }
}

function columnText(
  head: ClassifiedHead,
  header: Header,
  rows: readonly number[],
  column: number,
  decimal: DecimalMark | undefined,
): ColumnText {
  const samples: string[] = [];
  for (const r of rows) {
    if (samples.length === SAMPLES) break;
    if ((head.classes[r]?.[column] ?? "missing") === "missing") continue;
    const text = cellText(head.bytes, head.records[r] as HeadRecord, column);
    samples.push(plainNumber(text, decimal ?? ".") ?? text);
  }
  const unit = header.units[column];
  return {
    position: column + 1,
    header: header.names[column] ?? "",
    ...(unit === undefined ? {} : { unit }),
    samples,
  };
}

function filledAt(record: HeadRecord | undefined, column: number): boolean {
  return record !== undefined && (record.cells[2 * column + 1] ?? 0) > (record.cells[2 * column] ?? 0);
}

/** "UTC", or the offset in "UTC+1", "GMT +01:00". */
function zoneIn(header: string): string | undefined {
  const match = /\b(?:UTC|GMT)(?:\s?([+-])(\d{1,2})(?::?(\d\d))?)?(?![\w+-])/i.exec(header);
  if (match === null) return undefined;
  if (match[1] === undefined || match[2] === undefined) return "UTC";
  return `${match[1]}${match[2].padStart(2, "0")}:${match[3] ?? "00"}`;
}

function mostFrequent(numbers: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const n of numbers) counts.set(n, (counts.get(n) ?? 0) + 1);
  return [...counts].reduce((a, b) => (b[1] > a[1] ? b : a))[0];
}

function noTable(file: string, candidates: readonly Candidate<unknown>[]): LogError {
  const widest = candidates.reduce((a, b) => (cells(b) > cells(a) ? b : a)).head;
  const last = widest.records.at(-1);
  if (last === undefined) return new LogError(file, undefined, "holds no text: is it the right file?");
  const numbers = widest.classes.flat().filter((c) => c === "number").length;
  if (numbers === 0 && width(last) > 1) {
    return new LogError(
      file,
      `line ${last.line}`,
      "the header is not followed by any row of values: export it with its rows",
    );
  }
  return new LogError(
    file,
    `line ${last.line}`,
    "no column holds dates and times in a form that can be read (2026-03-01 00:10, 01.03.2026 00:10, 03/01/2026 12:10 AM, Unix seconds …)",
  );
}

function cells(candidate: Candidate<unknown>): number {
  return candidate.head.classes.reduce((sum, own) => sum + (own.length > 1 ? own.length : 0), 0);
}
