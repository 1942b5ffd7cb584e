import { ratio, times, toNumber } from "../decimal.js";
import { VALID_COVERAGE } from "../recording/measurements.js";
import type { Phase } from "../recording/quantity.js";
import type { Passing, SlidingVoltage, WindowValue } from "../recording/supply-detail.js";
import { type Duration, type Instant, MINUTE, SECOND } from "../recording/time.js";
import { WindowSums } from "../signal/window-sums.js";

const LENGTH = 10 * MINUTE;
/** Rounding of the sums; far below what any recorder resolves. */
const ROUNDING = 1e-12;

/** A time above the limit that still goes on. */
interface Running {
  start: Instant;
  end: Instant;
  peak: number;
  whole: boolean;
}

/**
 * The sliding 10-min r.m.s. voltage: root of the mean square over the last ten minutes before the end of every
 * interval, by the intervals' lengths. A window is valid where 99 % of it is covered; others are left out. Memory holds one window.
 */
export class SlidingMean {
  private readonly limit: number;
  private readonly window = new WindowSums(LENGTH);
  private n = 0;
  private lowest: WindowValue = { value: Number.POSITIVE_INFINITY, at: 0 };
  private highest: WindowValue = { value: Number.NEGATIVE_INFINITY, at: 0 };
  private running: Running | undefined;
  private wasBelow = false;
  private readonly passed: Passing[] = [];

  /** @param declared in V, of this phase */
  constructor(
    private readonly phase: Phase,
    private readonly interval: Duration,
    private readonly declared: number,
  ) {
    this.limit = slidingLimit(declared);
  }

  /** The next interval in order of time; one without a value (NaN) is left out. */
  add(start: Instant, end: Instant, value: number): void {
    if (Number.isNaN(value)) return;
    const { length, linear, square } = this.window.add(start, end, value - this.declared);
    if (length < VALID_COVERAGE * LENGTH) {
      this.endRun(undefined);
      this.wasBelow = false;
      return;
    }
    const meanSquare = this.declared ** 2 + (2 * this.declared * linear + square) / length;
    this.take(Math.sqrt(meanSquare), end);
  }

  /** Undefined where no window was valid. */
  finish(): SlidingVoltage | undefined {
    this.endRun(undefined);
    if (this.n === 0) return undefined;
    const { phase, interval, n, lowest, highest, limit, passed } = this;
    return { phase, interval, n, lowest, highest, limit, passed };
  }

  private take(value: number, at: Instant): void {
    this.n++;
    if (value < this.lowest.value) this.lowest = { value, at };
    if (value > this.highest.value) this.highest = { value, at };
    if (value > this.limit * (1 + ROUNDING)) {
      this.running ??= { start: at, end: at, peak: value, whole: this.wasBelow };
      this.running.end = at;
      this.running.peak = Math.max(this.running.peak, value);
      this.wasBelow = false;
    } else {
      this.endRun(at);
      this.wasBelow = true;
    }
  }

  /** @param below end of the first window that is not above the limit; undefined where it is not known */
  private endRun(below: Instant | undefined): void {
    if (this.running === undefined) return;
    const { start, end, peak, whole } = this.running;
    const until = below ?? end + this.interval;
    this.passed.push({ start, durationS: (until - start) / SECOND, peak, complete: whole && below !== undefined });
    this.running = undefined;
  }
}

/**
 * 110 % of the declared voltage in V: generators in low-voltage networks trip where the sliding 10-min mean passes it
 * (EN 50549-1, from memory).
 */
export function slidingLimit(declared: number): number {
  return toNumber(times(ratio(declared), ratio("1.1")));
}
