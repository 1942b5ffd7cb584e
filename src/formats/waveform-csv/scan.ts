import { LogError, UsageError } from "../../errors.js";
import type { Progress } from "../../recording/log-file.js";
import type { Text } from "../../sentence.js";
import type { RowStore } from "../csv/row-store.js";
import type { SignChanges } from "../waveform/sign-changes.js";
import { MICROS } from "./find-times.js";
import { type Bounds, periodBounds } from "./period-bounds.js";
import { rateWithin } from "./round-number.js";
import { type Run, SampleAxis } from "./sample-axis.js";
import { type ReadColumn, readPortions } from "./sample-rows.js";
import type { SampleTable } from "./sample-table.js";
import type { StampClock } from "./stamp-clock.js";
import { WrittenDigits } from "./written-digits.js";

/** The sample axis of one file. */
export interface ScannedTable {
  readonly table: SampleTable;
  readonly runs: readonly Run[];
  /** Time of the first row in microseconds: an instant, or counted from where the file counts from. */
  readonly first: number;
  /** Samples from the first to the last row, those lost in gaps included. */
  readonly length: number;
  readonly rows: number;
  /** Of the period in microseconds. */
  readonly bounds: Bounds;
  /** Microseconds that the written digits of the times leave open. */
  readonly coarsest: number;
  readonly remarks: readonly Text[];
}

/** Rows by which the period is estimated before the first is placed. */
const ENOUGH_ROWS = 1000;

/**
 * Reads a whole file once: every row must be readable and evenly spaced in time.
 * @param signs what to show the samples of each of `columns`; undefined for those that need not be looked at
 * @param clock for stamps
 * @throws LogError with the line of what cannot be read or does not fit; UsageError where the setup's rate does not fit
 */
export async function scanTable(
  table: SampleTable,
  columns: readonly ReadColumn[],
  signs: readonly (SignChanges | undefined)[],
  clock: StampClock | undefined,
  samplesPerSecond: number | undefined,
  progress: Progress | undefined,
): Promise<ScannedTable> {
  const scan = new Scan(table, signs, clock, samplesPerSecond);
  let last: { store: RowStore; remarks(): Text[] } | undefined;
  for await (const portion of readPortions(table, columns, true, progress)) {
    last = portion;
    if (!scan.begun && portion.store.rows < ENOUGH_ROWS) continue;
    scan.take(portion.store);
  }
  if (last !== undefined) scan.take(last.store);
  return { ...scan.finish(), remarks: last?.remarks() ?? [] };
}

class Scan {
  #axis: SampleAxis | undefined;
  #period = Number.NaN;
  #rows = 0;
  readonly #digits = new WrittenDigits();
  #times = new Float64Array(0);
  #places = new Float64Array(0);

  constructor(
    private readonly table: SampleTable,
    private readonly signs: readonly (SignChanges | undefined)[],
    private readonly clock: StampClock | undefined,
    private readonly samplesPerSecond: number | undefined,
  ) {}

  get begun(): boolean {
    return this.#axis !== undefined;
  }

  /** Places the rows of the store and empties it. */
  take(store: RowStore): void {
    if (store.rows === 0) return;
    if (store.rows > this.#times.length) {
      this.#times = new Float64Array(store.capacity);
      this.#places = new Float64Array(store.capacity);
    }
    this.#readTimes(store);
    this.#axis ??= this.#begin(store.rows);
    const untimed = this.table.layout.stamps.kind === "none";
    for (let i = 0; i < store.rows; i++) {
      if (untimed) this.#axis.addNext();
      else this.#axis.add(this.#times[i] as number, this.#places[i] as number, store.lines[i] as number);
    }
    const perSecond = 1e6 / this.#period;
    const withTimes = store.values.length - this.signs.length;
    for (const [c, own] of this.signs.entries()) {
      own?.add((store.values[withTimes + c] as Float64Array).subarray(0, store.rows), perSecond);
    }
    this.#rows += store.rows;
    store.clear();
  }

  #begin(rows: number): SampleAxis {
    const { file, layout } = this.table;
    const stated = this.samplesPerSecond === undefined ? undefined : 1e6 / this.samplesPerSecond;
    const kind = layout.stamps.kind;
    if (kind === "none" || kind === "count") {
      if (stated === undefined) {
        const what =
          kind === "none" ? "it has no column of times" : "its first column counts the samples and tells no time";
        throw new LogError(file.name, undefined, `${what}: state samplesPerSecond in the setup`);
      }
      this.#period = stated;
      return new SampleAxis(file.name, { shortest: stated, longest: stated });
    }
    const found = periodBounds(this.#times.subarray(0, rows), this.#places.subarray(0, rows));
    if (stated !== undefined) {
      if (found !== undefined && !(stated >= found.shortest && stated <= found.longest)) {
        const rate = Number(rateWithin(found.shortest, found.longest).toPrecision(6));
        throw new UsageError(
          `the setup states samplesPerSecond: ${this.samplesPerSecond}, but by its times ${file.name} has ${rate} samples per second; correct it or take it out`,
        );
      }
      this.#period = stated;
      return new SampleAxis(file.name, { shortest: stated, longest: stated });
    }
    if (found === undefined) {
      const what = rows < 2 ? "it holds one row only" : "its times do not rise";
      throw new LogError(
        file.name,
        `line ${layout.dataLine}`,
        `${what}, so they tell no sampling rate: state samplesPerSecond in the setup`,
      );
    }
    this.#period = (found.shortest + found.longest) / 2;
    return new SampleAxis(file.name, found);
  }

  #readTimes(store: RowStore): void {
    const { layout, stamps } = this.table;
    const { rows, dates, times, offsets, lines } = store;
    const kind = layout.stamps.kind;
    if (kind === "stamps") {
      for (let i = 0; i < rows; i++) {
        this.#times[i] = (this.clock as StampClock).instant(
          dates[i] as number,
          times[i] as number,
          offsets[i] as number,
          lines[i] as number,
        );
      }
      this.#places.fill(stamps?.place ?? 0, 0, rows);
    } else if (kind === "count") {
      const period = 1e6 / (this.samplesPerSecond ?? Number.NaN);
      const numbers = store.values[0] as Float64Array;
      for (let i = 0; i < rows; i++) this.#times[i] = (numbers[i] as number) * period;
    } else if (kind === "numbers") {
      const values = store.values[0] as Float64Array;
      const finest = 10 ** (store.finest[0] as number) * MICROS[layout.stamps.unit];
      this.#digits.learn(values.subarray(0, rows));
      for (let i = 0; i < rows; i++) {
        this.#times[i] = values[i] as number;
        this.#places[i] = this.#digits.placeIn(values[i] as number, finest);
      }
    }
  }

  finish(): Omit<ScannedTable, "remarks"> {
    const { table } = this;
    const axis = this.#axis;
    if (axis === undefined) {
      throw new LogError(table.file.name, `line ${table.layout.dataLine}`, "no complete row of values follows");
    }
    const { runs, first, length, bounds, coarsest } = axis;
    return { table, runs, first, length, rows: this.#rows, bounds, coarsest };
  }
}
