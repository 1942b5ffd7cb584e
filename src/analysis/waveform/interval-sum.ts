import type { Instant } from "../../recording/time.js";

/** Running sums of one interval, over many columns at once. */
export class IntervalSum {
  start: Instant = 0;
  windows = 0;
  flagged = false;
  readonly counts: Float64Array;
  readonly coverage: Float64Array;
  readonly min: Float64Array;
  readonly max: Float64Array;
  private readonly sums: Float64Array;

  constructor(private readonly rules: readonly ("rms" | "mean")[]) {
    const n = rules.length;
    this.counts = new Float64Array(n);
    this.coverage = new Float64Array(n);
    this.min = new Float64Array(n);
    this.max = new Float64Array(n);
    this.sums = new Float64Array(n);
  }

  begin(start: Instant): void {
    this.start = start;
    this.windows = 0;
    this.flagged = false;
    this.counts.fill(0);
    this.coverage.fill(0);
    this.min.fill(Number.POSITIVE_INFINITY);
    this.max.fill(Number.NEGATIVE_INFINITY);
    this.sums.fill(0);
  }

  /** @param share what the window covers of the interval */
  add(values: Float64Array, share: number, flagged: boolean): void {
    this.windows++;
    this.flagged ||= flagged;
    const { rules, counts, coverage, min, max, sums } = this;
    for (let i = 0; i < values.length; i++) {
      const v = values[i] as number;
      if (Number.isNaN(v)) continue;
      sums[i] = (sums[i] as number) + (rules[i] === "rms" ? v * v : v);
      counts[i] = (counts[i] as number) + 1;
      coverage[i] = (coverage[i] as number) + share;
      if (v < (min[i] as number)) min[i] = v;
      if (v > (max[i] as number)) max[i] = v;
    }
  }

  /** NaN where no window had a value. */
  value(i: number): number {
    const mean = (this.sums[i] as number) / (this.counts[i] as number);
    return this.rules[i] === "rms" ? Math.sqrt(mean) : mean;
  }
}
