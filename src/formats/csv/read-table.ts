import { LogError, UsageError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import type { ColumnReading } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import { findLayout, type Layout, stampIndexes } from "./layout.js";
import { type ColumnText, type RecognisedColumn, recogniseColumns } from "./recognise-columns.js";
import { LF, shown } from "./records.js";
import { DATE, DATE_AND_TIME, FLAG, NUMBER, NUMERIC_STAMP, type RowForm, SKIP, TIME } from "./row-form.js";
import { headerTexts, RowLoop } from "./row-loop.js";
import { RowReader } from "./row-reader.js";
import { numberColumn, RowStore } from "./row-store.js";
import { openText, readHead, type TextSource } from "./text-source.js";

/** One file as read: values in SI units, stamps still as written. */
export interface Table {
  readonly file: string;
  readonly layout: Layout;
  readonly store: RowStore;
  /** The recognised columns, in the order of `store.values`. */
  readonly columns: readonly RecognisedColumn[];
  readonly readings: readonly ColumnReading[];
  readonly dateForm: number;
  readonly hasOffset: boolean;
  readonly twelveHour: boolean;
  readonly remarks: readonly Text[];
}

const MOST_ROWS_AT_FIRST = 1_000_000;

/** Of files that are read together, by position what the first of them calls a column that the setup names so. */
export type PositionsNamed = Map<number, ColumnText & { readonly file: string }>;

/**
 * Reads a file in one pass, block by block; only the columns that are used are kept.
 * @param named undefined if it is the only file.
 * @throws LogError with the line for whatever cannot be read. @throws UsageError from the setup's columns.
 */
export async function readTable(
  file: LogFile,
  setup: GivenSetup,
  named: PositionsNamed | undefined,
  progress?: Progress,
): Promise<Table> {
  const source = await openText(file, progress);
  try {
    return await readFrom(source, file, setup, named);
  } finally {
    await source.blocks.return(undefined);
  }
}

async function readFrom(
  source: TextSource,
  file: LogFile,
  setup: GivenSetup,
  named: PositionsNamed | undefined,
): Promise<Table> {
  const start = await readHead(source);
  const head = start.bytes.subarray(0, start.length);
  const layout = findLayout(file.name, head, start.complete, setup);
  const given = layout.texts.filter(({ position }) => !isTime(layout, position));
  if (named !== undefined) refuseUnlikePositions(file.name, given, setup, named);
  const recognised = recogniseColumns(file.name, given, named === undefined ? setup : setupFor(given, setup));
  if (recognised.every(({ meaning }) => meaning === undefined)) {
    const names = given.map(({ header }) => shown(header)).slice(0, 5);
    const what = `none of its columns was understood (${names.join(", ")}${given.length > 5 ? " …" : ""}): say in the setup, under columns:, what they hold`;
    throw new LogError(file.name, undefined, what);
  }
  const { form, columns } = rowForm(file.name, layout, recognised);
  const bytesPerRow = Math.max(2 * layout.columns, rowLength(head, layout));
  const capacity = Math.ceil(Math.min(MOST_ROWS_AT_FIRST, (1.05 * source.estimatedSize) / bytesPerRow + 16));
  const store = new RowStore(columns.length, capacity);
  const reader = new RowReader(form, store, layout.dataLine);
  const rows = new RowLoop(reader, store, form, layout, headerTexts(head, layout));
  await rows.run(source, start);
  if (store.rows === 0) throw new LogError(file.name, `line ${layout.dataLine}`, "no complete row of values follows");

  return {
    file: file.name,
    layout,
    store,
    columns,
    readings: columnReadings(file.name, layout, recognised),
    dateForm: reader.stamps.form,
    hasOffset: reader.stamps.hasOffset,
    twelveHour: reader.stamps.twelveHour,
    remarks: rows.remarks(file.name),
  };
}

/** A position may name another column in each file, unless they call it alike. */
function refuseUnlikePositions(
  file: string,
  columns: readonly ColumnText[],
  setup: GivenSetup,
  named: PositionsNamed,
): void {
  for (const { column } of setup.columns ?? []) {
    if (typeof column !== "number") continue;
    const own = columns.find(({ position }) => position === column);
    const first = named.get(column);
    if (own !== undefined && first === undefined) named.set(column, { ...own, file });
    if (own === undefined || (first !== undefined && first.header.trim() !== own.header.trim())) {
      const here = own === undefined ? `no column of values in ${file}` : `${shown(own.header)} in ${file}`;
      const there = first === undefined ? "" : ` and ${shown(first.header)} in ${first.file}`;
      throw new UsageError(
        `the setup names column ${column} under columns:, which is ${here}${there}; where several files are read, give the header text instead`,
      );
    }
  }
}

/** Of several files, each has only some of the columns that the setup names. */
function setupFor(columns: readonly ColumnText[], setup: GivenSetup): GivenSetup {
  const headers = new Set(columns.map(({ header }) => header.trim()));
  const entries = setup.columns?.filter(({ column }) => typeof column === "number" || headers.has(column.trim()));
  return entries === undefined ? setup : { ...setup, columns: entries };
}

/** What each column of a row is read as, and the recognised columns in the order in which they are stored. */
function rowForm(file: string, layout: Layout, recognised: readonly RecognisedColumn[]) {
  const { stamps } = layout;
  const kinds = new Uint8Array(layout.columns).fill(SKIP);
  const places = new Int32Array(layout.columns).fill(-1);
  const columns = recognised.filter((c) => c.meaning !== undefined);
  for (const column of recognised) if (column.flag === true) kinds[column.position - 1] = FLAG;
  columns.forEach(({ position }, place) => {
    kinds[position - 1] = NUMBER;
    places[position - 1] = place;
  });
  if (stamps.kind === "text") kinds[stamps.dateTime] = DATE_AND_TIME;
  else if (stamps.kind === "number") kinds[stamps.column] = NUMERIC_STAMP;
  else {
    kinds[stamps.date] = DATE;
    kinds[stamps.time] = TIME;
  }
  const form: RowForm = {
    file,
    delimiter: layout.delimiter,
    decimal: layout.decimal,
    leastColumns: layout.leastColumns,
    names: layout.header.names,
    kinds,
    places,
    numbers: columns.map((c) => numberColumn(c.scale ?? { num: 1n, den: 1n })),
    numericStamp: stamps.kind === "number" ? stamps.scale : undefined,
  };
  return { form, columns };
}

function isTime(layout: Layout, position: number): boolean {
  return [...stampIndexes(layout.stamps), ...layout.otherTimes].includes(position - 1);
}

function columnReadings(file: string, layout: Layout, recognised: readonly RecognisedColumn[]): ColumnReading[] {
  const stamps = stampIndexes(layout.stamps);
  return layout.texts.map(({ position, header }) => {
    const place = { file, position, header };
    if (stamps.includes(position - 1)) return { ...place, use: "time", reason: say`the time of each row` };
    if (layout.otherTimes.includes(position - 1))
      return { ...place, reason: say`not used: a time beside the one that is used` };
    const column = recognised.find((r) => r.position === position);
    return {
      ...place,
      ...(column?.meaning === undefined ? {} : { meaning: column.meaning }),
      ...(column?.flag === true && { use: "flag" as const }),
      reason: column?.reason ?? say`not recognised`,
    };
  });
}

function rowLength(head: Uint8Array, { dataOffset }: Layout): number {
  const end = head.lastIndexOf(LF);
  let rows = 0;
  for (let at = head.indexOf(LF, dataOffset); at >= 0; at = head.indexOf(LF, at + 1)) rows++;
  return rows === 0 ? 1 : (end + 1 - dataOffset) / rows;
}
