import type { LoggedQuantity, SeriesKey } from "../../src/recording/quantity.js";
import type { Duration, Instant } from "../../src/recording/time.js";

/**
 * A logger's table before it is written in any dialect. Values are whole numbers of the last written digit
 * (23145 with `decimals` 2 is 231.45), so every dialect can print exactly the same decimal number.
 */
export interface LogTable {
  readonly interval: Duration;
  /** Starts of the intervals, one per row, in the order in which the rows are written. */
  readonly starts: readonly Instant[];
  readonly columns: readonly LogColumn[];
  /** 1 where the logger marked the interval (IEC 61000-4-30, flagging); absent: the log has no such column. */
  readonly flagged?: Uint8Array;
  /** Columns that are none of ours, written as they stand after all others. */
  readonly extra?: readonly ExtraColumn[];
}

/** One value per row in the unit of its quantity, times 10^decimals; NaN: missing. */
export interface LogColumn extends SeriesKey {
  readonly quantity: LoggedQuantity;
  readonly statistic: "mean" | "min" | "max";
  readonly decimals: number;
  readonly digits: Float64Array;
}

export interface ExtraColumn {
  readonly header: string;
  readonly cells: readonly string[];
}

/** A column from values in the quantity's unit, rounded to `decimals` digits as a logger rounds. */
export function column(
  key: SeriesKey & { readonly quantity: LoggedQuantity; readonly statistic?: LogColumn["statistic"] },
  decimals: number,
  values: ArrayLike<number>,
): LogColumn {
  const scale = 10 ** decimals;
  const digits = Float64Array.from(values, (v) => Math.round(v * scale));
  return { ...key, statistic: key.statistic ?? "mean", decimals, digits };
}

/** The rows given by their index, in that order; an index may be left out or occur twice. */
export function rows(table: LogTable, indexes: readonly number[]): LogTable {
  return {
    interval: table.interval,
    starts: indexes.map((i) => table.starts[i] as Instant),
    columns: table.columns.map((c) => ({ ...c, digits: Float64Array.from(indexes, (i) => c.digits[i] as number) })),
    ...(table.flagged && { flagged: Uint8Array.from(indexes, (i) => table.flagged?.[i] as number) }),
    ...(table.extra && {
      extra: table.extra.map((c) => ({ ...c, cells: indexes.map((i) => c.cells[i] as string) })),
    }),
  };
}

/** The starts of `count` intervals one after the other. */
export function ticks(start: Instant, interval: Duration, count: number): Instant[] {
  return Array.from({ length: count }, (_, i) => start + i * interval);
}
