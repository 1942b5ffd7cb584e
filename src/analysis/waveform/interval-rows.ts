import type { IntervalSeries } from "../../recording/measurements.js";
import type { SeriesKey, Unit } from "../../recording/quantity.js";
import type { Duration, Instant } from "../../recording/time.js";
import type { IntervalSum } from "./interval-sum.js";
import type { BasicWindow } from "./phenomenon.js";

/** Shares of time that add up to a whole interval may miss 1 by rounding. */
const ROUNDING = 1e-6;

/** Finished intervals of many columns, row by row in time order. */
export class IntervalRows {
  private readonly starts: Instant[] = [];
  private readonly flagged: number[] = [];
  private readonly rows: Row[] = [];

  constructor(private readonly columns: number) {}

  /** A single window as an interval of its own. */
  addSingle(window: BasicWindow, values: Float64Array): void {
    this.starts.push(window.start);
    this.flagged.push(window.flagged ? 1 : 0);
    this.rows.push({ values: values.slice() });
  }

  addSum(sum: IntervalSum): void {
    this.starts.push(sum.start);
    this.flagged.push(sum.flagged ? 1 : 0);
    this.rows.push({
      values: Float64Array.from({ length: this.columns }, (_, i) => sum.value(i)),
      coverage: sum.coverage.slice(),
      min: sum.min.slice(),
      max: sum.max.slice(),
    });
  }

  /** One series per column; intervals without any value in it are absent from it. */
  series(keys: readonly (SeriesKey & { readonly unit: Unit })[], interval: Duration): IntervalSeries[] {
    return keys.map(({ quantity, phase, order, hertz, unit }, column) => {
      const rows = [...this.rows.keys()].filter((r) => !Number.isNaN(this.rows[r]?.values[column]));
      const take = (of: (row: Row) => Float64Array | undefined, missing: number) =>
        Float64Array.from(rows, (r) => of(this.rows[r] as Row)?.[column] ?? missing);
      const summed = this.rows[0]?.min !== undefined;
      return {
        quantity,
        phase,
        ...(order !== undefined && { order }),
        ...(hertz !== undefined && { hertz }),
        unit,
        interval,
        origin: "computed",
        starts: Float64Array.from(rows, (r) => this.starts[r] as number),
        values: take((row) => row.values, Number.NaN),
        ...(summed && { min: take((row) => row.min, Number.NaN), max: take((row) => row.max, Number.NaN) }),
        flagged: Uint8Array.from(rows, (r) => this.flagged[r] as number),
        coverage: take((row) => row.coverage, 1).map((c) => (c > 1 - ROUNDING ? 1 : c)),
      };
    });
  }
}

interface Row {
  readonly values: Float64Array;
  /** Absent for single windows, which are covered or not there. */
  readonly coverage?: Float64Array;
  readonly min?: Float64Array;
  readonly max?: Float64Array;
}
