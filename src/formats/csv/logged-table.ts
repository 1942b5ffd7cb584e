import type { Ratio } from "../../decimal.js";
import { keyText, type Unit } from "../../recording/quantity.js";
import type { ColumnMeaning } from "../../recording/recording.js";

/** What putting tables of logged values on common time axes needs of each, whatever format it was read from. */
export interface LoggedTable {
  readonly file: string;
  /** In the order of `store.values`. */
  readonly columns: readonly LoggedColumn[];
  readonly store: {
    readonly rows: number;
    /** Instants; NaN for a row that could not be placed. */
    readonly times: Float64Array;
    readonly flagged: Uint8Array;
    readonly values: Float64Array[];
    /** Smallest step of the last written digit of a column; undefined where it is not known. */
    resolution(column: number, scale: Ratio): number | undefined;
  };
}

export interface LoggedColumn {
  /** 1-based. */
  readonly position: number;
  readonly meaning?: ColumnMeaning;
  /** Given with `meaning`. */
  readonly unit?: Unit;
  readonly scale?: Ratio;
}

/** Equal for tables that hold the same columns. */
export function columnsKey({ columns }: Pick<LoggedTable, "columns">): string {
  return columns
    .flatMap(({ meaning }) => (meaning === undefined ? [] : [`${keyText(meaning)} ${meaning.statistic}`]))
    .sort()
    .join("\n");
}
