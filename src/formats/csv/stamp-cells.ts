import { LogError } from "../../errors.js";
import { plainNumber, scaledNumber } from "./number-text.js";
import { DATE, DATE_AND_TIME, type RowForm, TIME } from "./row-form.js";
import type { RowStore } from "./row-store.js";
import { NO_OFFSET, StampReader } from "./stamp-reader.js";
import { decodeText } from "./text-source.js";

const MICROS = { "epoch-s": 1_000_000n, "epoch-ms": 1000n, "serial-days": 86_400_000_000n };
/** Spreadsheets count days from here (their day 60, 1900-02-29, never was). */
const SERIAL_ZERO = Date.UTC(1899, 11, 30) * 1000;
const [EARLIEST, LATEST] = [0, Date.UTC(2200, 0, 1) * 1000];

/** Reads the stamp cells of rows into a RowStore, and sees to it that all stamps of a file are written alike. */
export class StampCells {
  /** Rows whose stamp is a date without a time of day, read as midnight. */
  midnights = 0;
  /** How dates are written, see StampReader. */
  form = 0;

  readonly #reader = new StampReader();
  readonly #row: RowForm;
  readonly #store: RowStore;
  /** Rows carry dates, not only numbers. */
  readonly #dated: boolean;
  #date = 0;
  #offset = NO_OFFSET;
  #dateForm = 0;
  #hasTime = false;
  #twelveHour = false;
  /** As in the first row with a time of day. */
  #clock: { readonly hasOffset: boolean; readonly twelveHour: boolean } | undefined;

  constructor(row: RowForm, store: RowStore) {
    this.#row = row;
    this.#store = store;
    this.#dated = row.kinds.includes(DATE_AND_TIME) || row.kinds.includes(DATE);
  }

  /** False if the cell holds no stamp of its kind. */
  read(kind: number, bytes: Uint8Array, from: number, to: number): boolean {
    const reader = this.#reader;
    if (kind === DATE_AND_TIME || kind === DATE) {
      if (!reader.readDateTime(bytes, from, to)) return false;
      this.#date = reader.packedDate;
      this.#dateForm = reader.form;
      if (kind === DATE) return reader.timeOfDay === 0;
      this.#noteTime();
      return true;
    }
    if (kind === TIME) {
      if (!reader.readTime(bytes, from, to)) return false;
      this.#noteTime();
      return true;
    }
    return this.#numeric(decodeText(bytes.subarray(from, to)));
  }

  /** What `read` looks for, for messages. */
  expected(kind: number): string {
    if (kind === DATE_AND_TIME) return "a date and time";
    if (kind === DATE) return "a date";
    if (kind === TIME) return "a time of day";
    return this.#row.numericStamp === "serial-days"
      ? "a day number of the years 1970 to 2199"
      : "a Unix time of the years 1970 to 2199";
  }

  /** Called when a row is complete. @throws LogError if its stamp is written otherwise than the ones before. */
  check(line: number): void {
    if (!this.#dated) return;
    const { dates, offsets, rows, isUnused } = this.#store;
    if (isUnused) this.form = this.#dateForm;
    let alike = this.#dateForm === this.form;
    if (!this.#hasTime) this.midnights++;
    else {
      const [hasOffset, twelveHour] = [this.#offset !== NO_OFFSET, this.#twelveHour];
      this.#clock ??= { hasOffset, twelveHour };
      alike &&= this.#clock.hasOffset === hasOffset && this.#clock.twelveHour === twelveHour;
    }
    if (!alike) {
      const what = "the stamp is written in another form than in the rows above: write all stamps alike";
      throw new LogError(this.#row.file, `line ${line}`, what);
    }
    dates[rows] = this.#date;
    offsets[rows] = this.#offset;
  }

  /** Stamps name their offset from UTC. */
  get hasOffset(): boolean {
    return this.#clock?.hasOffset === true;
  }

  get twelveHour(): boolean {
    return this.#clock?.twelveHour === true;
  }

  #noteTime(): void {
    this.#store.times[this.#store.rows] = this.#reader.timeOfDay;
    this.#offset = this.#reader.offset;
    this.#hasTime = this.#reader.hasTime;
    this.#twelveHour = this.#reader.twelveHour;
  }

  #numeric(text: string): boolean {
    const { numericStamp } = this.#row;
    const plain = plainNumber(text, text.includes(",") ? "," : ".");
    if (plain === undefined || numericStamp === undefined) return false;
    const { value, exponent } = scaledNumber(plain, { num: MICROS[numericStamp], den: 1n });
    let instant = Math.round(value);
    if (numericStamp === "serial-days") {
      // Day fractions are cut somewhere; what they mean is a whole second, or with eight places and more a millisecond.
      const step = exponent > -8 ? 1_000_000 : 1000;
      instant = SERIAL_ZERO + Math.round(value / step) * step;
    }
    if (!(instant >= EARLIEST && instant < LATEST)) return false;
    this.#store.times[this.#store.rows] = instant;
    return true;
  }
}
