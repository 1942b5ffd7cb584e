import type { DecimalMark } from "./number-text.js";
import type { NumberColumn } from "./row-store.js";
import type { NumericStamp } from "./stamp-columns.js";

/** What a column of a row is read as. */
export const SKIP = 0;
export const NUMBER = 1;
export const FLAG = 2;
export const DATE_AND_TIME = 3;
export const DATE = 4;
export const TIME = 5;
export const NUMERIC_STAMP = 6;

/** What the rows of a file look like. Column indexes are 0-based. */
export interface RowForm {
  readonly file: string;
  readonly delimiter: number;
  readonly decimal: DecimalMark | undefined;
  readonly leastColumns: number;
  readonly names: readonly string[];
  /** By column: one of the kinds above. */
  readonly kinds: Uint8Array;
  /** By column, for kind NUMBER: its place among the stored columns. */
  readonly places: Int32Array;
  readonly numbers: readonly NumberColumn[];
  readonly numericStamp: NumericStamp | undefined;
}
