import { type IntervalSeries, VALID_COVERAGE } from "../../recording/measurements.js";
import type { SeriesKey, Unit } from "../../recording/quantity.js";
import { type Duration, HOUR, type Instant, MINUTE, SECOND } from "../../recording/time.js";
import { aggregate } from "../aggregation.js";
import { IntervalRows } from "./interval-rows.js";
import { IntervalSum } from "./interval-sum.js";
import type { BasicWindow, Level } from "./phenomenon.js";

/** IEC 61000-4-30: fifteen basic windows make the 150/180-cycle interval. */
const WINDOWS_PER_3S = 15;

const LENGTHS: Readonly<Record<Level, Duration>> = {
  window: SECOND / 5,
  "3s": 3 * SECOND,
  "10min": 10 * MINUTE,
  "2h": 2 * HOUR,
};

const STANDARD_LEVELS: readonly Level[] = ["10min", "2h"];

/** One value per basic window that is to be aggregated. */
export interface BankColumn extends SeriesKey {
  readonly unit: Unit;
  /** Root of the mean square, or arithmetic mean. */
  readonly rule: "rms" | "mean";
}

/**
 * Aggregates values of basic windows by IEC 61000-4-30: fifteen windows to the 150/180-cycle interval, all windows that
 * begin in ten minutes of the UTC clock to the ten-minute interval (the one that overlaps its end included), twelve of
 * these to two hours. At a ten-minute tick a new 150/180-cycle interval begins while the running one goes on to its
 * fifteenth window (overlap 2); a gap ends it early.
 *
 * A NaN is left out and lowers the coverage: at ten minutes the share of the time that windows with a value cover, at
 * 150/180 cycles their share of the fifteen. An interval is flagged if a window is. `min` and `max` are those of the
 * windows. Ten-minute values that are not valid do not count in two hours.
 */
export class IntervalBank {
  private readonly levels: ReadonlySet<Level>;
  private readonly rows: Readonly<Record<"window" | "3s" | "10min", IntervalRows>>;
  private readonly tenMinutes: IntervalSum;
  private tenMinuteStart: Instant | undefined;
  /** The running 150/180-cycle intervals: one, or two after a tick. */
  private readonly running: IntervalSum[] = [];
  private readonly spare: IntervalSum[] = [];

  constructor(
    private readonly columns: readonly BankColumn[],
    levels: readonly Level[] = STANDARD_LEVELS,
  ) {
    const n = columns.length;
    this.levels = new Set(levels);
    this.rows = { window: new IntervalRows(n), "3s": new IntervalRows(n), "10min": new IntervalRows(n) };
    this.tenMinutes = new IntervalSum(columns.map((c) => c.rule));
  }

  /** @param values one per column, NaN where there is none */
  add(window: BasicWindow, values: Float64Array): void {
    if (this.levels.has("window")) this.rows.window.addSingle(window, values);
    if (this.levels.has("3s")) this.addTo3s(window, values);
    if (this.levels.has("10min") || this.levels.has("2h")) this.addTo10min(window, values);
  }

  /** The windows that follow do not join those before. */
  gap(): void {
    for (const sum of this.running.splice(0)) this.close3s(sum);
  }

  /** Series without a single value are left out. */
  finish(): IntervalSeries[] {
    this.gap();
    this.close10min();
    const series: IntervalSeries[] = [];
    for (const level of ["window", "3s", "10min"] as const) {
      if (this.levels.has(level)) series.push(...this.rows[level].series(this.columns, LENGTHS[level]));
    }
    if (this.levels.has("2h")) {
      for (const [i, s] of this.rows["10min"].series(this.columns, LENGTHS["10min"]).entries()) {
        series.push(twoHours(s, (this.columns[i] as BankColumn).rule));
      }
    }
    return series.filter((s) => s.values.length > 0);
  }

  private addTo3s(window: BasicWindow, values: Float64Array): void {
    if (this.running.length === 0 || window.start % LENGTHS["10min"] === 0) {
      const sum = this.spare.pop() ?? new IntervalSum(this.columns.map((c) => c.rule));
      sum.begin(window.start);
      this.running.push(sum);
    }
    for (const sum of this.running) sum.add(values, 1 / WINDOWS_PER_3S, window.flagged);
    if ((this.running[0] as IntervalSum).windows === WINDOWS_PER_3S) this.close3s(this.running.shift() as IntervalSum);
  }

  private close3s(sum: IntervalSum): void {
    this.rows["3s"].addSum(sum);
    this.spare.push(sum);
  }

  private addTo10min(window: BasicWindow, values: Float64Array): void {
    const length = LENGTHS["10min"];
    const start = Math.floor(window.start / length) * length;
    if (start !== this.tenMinuteStart) {
      this.close10min();
      this.tenMinuteStart = start;
      this.tenMinutes.begin(start);
    }
    const covered = Math.min(window.end, start + length) - window.start;
    this.tenMinutes.add(values, covered / length, window.flagged);
  }

  private close10min(): void {
    if (this.tenMinuteStart !== undefined) this.rows["10min"].addSum(this.tenMinutes);
    this.tenMinuteStart = undefined;
  }
}

function twoHours(series: IntervalSeries, rule: "rms" | "mean"): IntervalSeries {
  const { starts, flagged, interval, coverage, ...rest } = series;
  const values = series.values.map((v, i) => ((coverage[i] as number) >= VALID_COVERAGE ? v : Number.NaN));
  return aggregate({ ...rest, values, axis: { interval, starts, flagged } }, LENGTHS["2h"], rule);
}
