import type { WaveformBlock } from "../../recording/waveform.js";
import type { Configuration } from "./configuration.js";
import type { Layout } from "./data-layout.js";
import type { DataSection } from "./file-set.js";
import { readAsciiRows } from "./read-ascii.js";
import { readBinaryRows } from "./read-binary.js";
import type { Run } from "./row-index.js";

/** A channel to read: stored value = `a` × number + `b`, in V or A. */
export interface ReadChannel {
  /** 1-based place among the analog channels. */
  readonly position: number;
  readonly a: number;
  readonly b: number;
  /** Range of the numbers by the configuration; NaN where not stated. */
  readonly min: number;
  readonly max: number;
}

/** Where and how the rows of one record are stored. */
export interface RowStore {
  readonly configuration: Configuration;
  readonly data: DataSection;
  readonly layout: Layout;
}

/** Samples of consecutive rows, from row `row` of the run on; the arrays are used again for the next block. */
export interface RowBlock {
  readonly row: number;
  readonly samples: readonly Float64Array[];
}

/** The samples of several runs in blocks; `first` counts from where positions count. */
export async function* readRuns(
  store: RowStore,
  runs: readonly Run[],
  channels: readonly ReadChannel[],
  blockBytes: number,
): AsyncGenerator<WaveformBlock> {
  for (const run of runs) {
    for await (const { row, samples } of readRows(store, run, channels, blockBytes)) {
      yield { first: run.position + row, samples };
    }
  }
}

/**
 * Reads a run of rows in blocks of about `blockBytes`; NaN where the file marks a value as missing.
 * @throws LogError with line or byte of what cannot be read
 */
export function readRows(
  { configuration, data, layout }: RowStore,
  run: Run,
  channels: readonly ReadChannel[],
  blockBytes: number,
): AsyncGenerator<RowBlock> {
  return layout.kind === "ASCII"
    ? readAsciiRows(data, configuration.analog.length, run, channels, blockBytes)
    : readBinaryRows(data, layout, configuration.edition, run, channels, blockBytes);
}
