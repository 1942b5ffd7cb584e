import { type Ratio, ratio } from "../../decimal.js";
import type { Progress } from "../../recording/log-file.js";
import type { Text } from "../../sentence.js";
import { DATE, DATE_AND_TIME, NUMBER, type RowForm, SKIP, TIME } from "../csv/row-form.js";
import { RowLoop } from "../csv/row-loop.js";
import { RowReader } from "../csv/row-reader.js";
import { numberColumn, RowStore } from "../csv/row-store.js";
import { openText, readHead } from "../csv/text-source.js";
import { MICROS } from "./find-times.js";
import type { SampleTable } from "./sample-table.js";

/** A column to read: stored value = written number × scale. `position` is 1-based. */
export interface ReadColumn {
  readonly position: number;
  readonly scale: Ratio;
}

/** Rows of a portion of the file; empty the store when they have been used. */
export interface Portion {
  readonly store: RowStore;
  /** What was noticed so far. */
  remarks(): Text[];
}

const CAPACITY = 4096;

/**
 * Reads a file from the beginning, portion by portion.
 * @param withTimes numeric times in microseconds (or sample numbers) become the first column of the store, stamps its
 * dates, times and offsets; else times are skipped.
 */
export async function* readPortions(
  table: SampleTable,
  columns: readonly ReadColumn[],
  withTimes: boolean,
  progress?: Progress,
): AsyncGenerator<Portion> {
  const { file, layout } = table;
  const source = await openText(file, progress);
  try {
    const head = await readHead(source);
    const form = rowForm(table, columns, withTimes);
    const store = new RowStore(form.numbers.length, CAPACITY);
    const reader = new RowReader(form, store, layout.dataLine);
    const rows = new RowLoop(reader, store, form, layout, table.headers);
    const portion = { store, remarks: () => rows.remarks(file.name) };
    for await (const _ of rows.portions(source, head)) yield portion;
  } finally {
    await source.blocks.return(undefined);
  }
}

function rowForm({ file, layout }: SampleTable, columns: readonly ReadColumn[], withTimes: boolean): RowForm {
  const { stamps: times } = layout;
  const kinds = new Uint8Array(layout.columns).fill(SKIP);
  const places = new Int32Array(layout.columns).fill(-1);
  const numbers: ReadColumn[] = [...columns];
  if (withTimes && times.kind === "stamps") {
    if (times.stamps.kind === "text") kinds[times.stamps.dateTime] = DATE_AND_TIME;
    else {
      kinds[times.stamps.date] = DATE;
      kinds[times.stamps.time] = TIME;
    }
  } else if (withTimes && times.kind !== "none" && times.kind !== "stamps") {
    const scale = times.kind === "count" ? 1 : MICROS[times.unit];
    numbers.unshift({ position: times.column + 1, scale: ratio(scale) });
  }
  for (const [place, { position }] of numbers.entries()) {
    kinds[position - 1] = NUMBER;
    places[position - 1] = place;
  }
  return {
    file: file.name,
    delimiter: layout.delimiter,
    decimal: layout.decimal,
    leastColumns: layout.leastColumns,
    names: layout.header.names,
    kinds,
    places,
    numbers: numbers.map(({ scale }) => numberColumn(scale)),
    numericStamp: undefined,
  };
}
