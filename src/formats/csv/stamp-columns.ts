import { plainNumber } from "./number-text.js";
import { type CellClass, cellText, type HeadRecord, width } from "./records.js";
import { StampReader } from "./stamp-reader.js";

/** Where the stamps of a log stand and what kind they are. Column indexes are 0-based. */
export type StampColumns =
  | TextStamps
  | { readonly kind: "number"; readonly column: number; readonly scale: NumericStamp };

export type TextStamps =
  | { readonly kind: "text"; readonly dateTime: number }
  | { readonly kind: "date and time"; readonly date: number; readonly time: number };

export type NumericStamp = "epoch-s" | "epoch-ms" | "serial-days";

/** The records of a head with what each cell looks like. */
export interface ClassifiedHead {
  readonly bytes: Uint8Array;
  readonly records: readonly HeadRecord[];
  readonly classes: readonly (readonly CellClass[])[];
}

/** Text above a column: that of up to three records above the first of `rows`. */
export type HeaderOf = (column: number, rows: readonly number[]) => string;

export interface Found<Stamps> {
  readonly stamps: Stamps;
  /** Columns that hold times as well but are not used (the end beside the start of an interval). */
  readonly others: readonly number[];
  /** Indexes of the records that have a stamp there. */
  readonly rows: readonly number[];
}

/** Values in the years 2000 to 2099. Serial days count from 1899-12-30, as spreadsheets do. */
const RANGES = [
  ["epoch-s", 946_684_800, 4_102_444_800],
  ["epoch-ms", 946_684_800_000, 4_102_444_800_000],
  ["serial-days", 36_526, 73_051],
] as const satisfies readonly (readonly [NumericStamp, number, number])[];

const TIME_WORD =
  /time|date|datum|stamp|stempel|zeit|epoch|unix|horo|fecha|\b(utc|tag|day|heure|jour|ora|data|hora)\b/i;
const START_WORD =
  /\b(start\w*|begin\w*|von|from|since|d[ée]but|inizio|da|dal|inicio|desde|anfang\w*)\b|(beginn|start|anfang)\b/i;
const END_WORD =
  /\b(end|ends|ended|ending|ende|end(zeit|time)\w*|bis|until|to|stop\w*|fin|jusqu\w*|fine|fino|hasta)\b|ende\b/i;
const LABEL_PHRASE =
  /(end|start|begin|beginning) of (the )?(\w+ )?(interval|period)|interval (end|start)|intervall-?(ende|beginn|anfang)|(ende|beginn|anfang) des \w*intervalls|(fin|d[ée]but) de l.intervalle|(fine|inizio) dell.intervallo|(fin|inicio) del intervalo/i;

/** Whether the words of a header say that a stamp marks the start or the end of its interval. */
export function labelIn(header: string): "start" | "end" | undefined {
  const [start, end] = [START_WORD.test(header), END_WORD.test(header)];
  return start === end ? undefined : start ? "start" : "end";
}

/** The same for a line above the header, which must speak of the interval itself: "Start: 08:00" says nothing of it. */
export function labelInPreamble(line: string): "start" | "end" | undefined {
  const phrase = LABEL_PHRASE.exec(line)?.[0];
  return phrase === undefined ? undefined : labelIn(phrase);
}

/** Finds the columns of text stamps; undefined if there are none. `header` gives the header text of a column. */
export function findTextStamps(head: ClassifiedHead, header: HeaderOf): Found<TextStamps> | undefined {
  const counts = { "date and time": countByColumn(head, "date and time"), time: countByColumn(head, "time") };
  const dates = countByColumn(head, "date");
  const choose = (columns: readonly number[], rows: readonly number[]) =>
    columns.find((c) => labelIn(header(c, rows)) === "start") ?? (columns[0] as number);

  const both = frequent(counts["date and time"]);
  const [dateColumns, timeColumns] = [frequent(dates), frequent(counts.time)];
  const rowsWith = (column: number, classes: readonly CellClass[]) =>
    head.records.flatMap((_, r) => (classes.includes(head.classes[r]?.[column] ?? "text") ? [r] : []));

  const dayAlone = both.find((column) => timeColumns.length > 0 && isDayAlone(head, column));
  if (dayAlone !== undefined) {
    const rows = rowsWith(dayAlone, ["date and time", "date"]);
    const time = choose(timeColumns, rows);
    const others = [...both, ...dateColumns, ...timeColumns].filter((c) => c !== dayAlone && c !== time);
    return { stamps: { kind: "date and time", date: dayAlone, time }, others, rows };
  }
  if (both.length > 0 && Math.max(...counts["date and time"].values()) >= most(dates, counts.time)) {
    const rows = rowsWith(both[0] as number, ["date and time", "date"]);
    const dateTime = choose(both, rows);
    const others = [...both, ...dateColumns, ...timeColumns].filter((c) => c !== dateTime);
    return { stamps: { kind: "text", dateTime }, others, rows };
  }
  if (dateColumns.length > 0 && timeColumns.length > 0) {
    const rows = rowsWith(dateColumns[0] as number, ["date", "date and time"]);
    const [date, time] = [choose(dateColumns, rows), choose(timeColumns, rows)];
    const others = [...dateColumns, ...timeColumns, ...both].filter((c) => c !== date && c !== time);
    return { stamps: { kind: "date and time", date, time }, others, rows };
  }
  return undefined;
}

/** A column of dates that all carry the time of midnight, and not each another day: the time stands elsewhere. */
function isDayAlone({ bytes, records, classes }: ClassifiedHead, column: number): boolean {
  const reader = new StampReader();
  const days = new Set<number>();
  let rows = 0;
  for (const [r, record] of records.entries()) {
    if (classes[r]?.[column] !== "date and time") continue;
    reader.readDateTime(bytes, record.cells[2 * column] as number, record.cells[2 * column + 1] as number);
    if (reader.timeOfDay !== 0) return false;
    days.add(reader.packedDate);
    rows++;
  }
  return days.size < rows;
}

/** Finds a column of seconds, milliseconds or spreadsheet days; it must be the first or be called a time. */
export function findNumericStamps(head: ClassifiedHead, header: HeaderOf): Found<StampColumns> | undefined {
  const numeric = head.records.flatMap((record, r) => {
    const classes = head.classes[r] as readonly CellClass[];
    const numbers = classes.filter((c) => c === "number").length;
    return numbers >= 2 && numbers >= width(record) / 2 ? [r] : [];
  });
  const columns = Math.max(0, ...numeric.map((r) => width(head.records[r] as HeadRecord)));
  for (let column = 0; column < columns; column++) {
    if (column > 0 && !TIME_WORD.test(header(column, numeric))) continue;
    const values = numeric.map((r) => numberAt(head, r, column));
    for (const [scale, least, limit] of RANGES) {
      const rows = numeric.filter((_, i) => (values[i] as number) >= least && (values[i] as number) < limit);
      if (rows.length === 0 || rows.length < 0.9 * numeric.length) continue;
      if (scale === "serial-days" && !TIME_WORD.test(header(column, rows))) continue;
      return { stamps: { kind: "number", column, scale }, others: [], rows };
    }
  }
  return undefined;
}

function numberAt(head: ClassifiedHead, record: number, column: number): number {
  const text = cellText(head.bytes, head.records[record] as HeadRecord, column);
  return Number(plainNumber(text, ".") ?? plainNumber(text, ",") ?? Number.NaN);
}

function countByColumn(head: ClassifiedHead, wanted: CellClass): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const classes of head.classes) {
    for (let c = 0; c < classes.length; c++) if (classes[c] === wanted) counts.set(c, (counts.get(c) ?? 0) + 1);
  }
  return counts;
}

function frequent(counts: ReadonlyMap<number, number>): number[] {
  const most = Math.max(0, ...counts.values());
  return [...counts.keys()].filter((c) => (counts.get(c) as number) >= most / 2).sort((a, b) => a - b);
}

/** How many rows a date column and a time column could stamp together. */
function most(dates: ReadonlyMap<number, number>, times: ReadonlyMap<number, number>): number {
  return Math.min(Math.max(0, ...dates.values()), Math.max(0, ...times.values()));
}
