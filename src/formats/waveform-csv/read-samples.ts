import type { WaveformBlock } from "../../recording/waveform.js";
import type { RowStore } from "../csv/row-store.js";
import { type ReadColumn, readPortions } from "./sample-rows.js";
import type { ScannedTable } from "./scan.js";

/** Reads the samples of some columns from the beginning; `first` counts from the first row. */
export async function* readSamples(
  { table, runs, rows }: ScannedTable,
  columns: readonly ReadColumn[],
): AsyncGenerator<WaveformBlock> {
  let [run, done, taken] = [0, 0, 0];
  for await (const { store } of readPortions(table, columns, false)) {
    // A broken-off row at the end that only its time shows is not among the rows that were counted.
    const usable = Math.min(store.rows, rows - taken);
    for (let from = 0; from < usable; ) {
      const { position, rows: length } = runs[run] as (typeof runs)[number];
      const to = Math.min(usable, from + length - done);
      yield { first: position + done, samples: slices(store, from, to) };
      done += to - from;
      if (done === length) [run, done] = [run + 1, 0];
      from = to;
    }
    taken += usable;
    store.clear();
  }
}

function slices({ values }: RowStore, from: number, to: number): Float64Array[] {
  return values.map((column) => column.subarray(from, to));
}
