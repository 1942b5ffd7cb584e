import { ratio, times, toNumber } from "../decimal.js";
import { VALID_COVERAGE } from "../recording/measurements.js";
import type { Phase } from "../recording/quantity.js";
import type { Passing, SlidingVoltage, WindowValue } from "../recording/supply-detail.js";
import { type Duration, type Instant, MINUTE, SECOND } from "../recording/time.js";

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
 * interval, by the intervals' lengths. A window is valid where 99 % of it is covered; others are left out. Sums are of
 * distances from the declared voltage and are made anew once per window length, so that rounding does not grow.
 * Memory holds one window.
 */
export class SlidingMean {
  private readonly limit: number;
  private starts: Float64Array = new Float64Array(1024);
  private lengths: Float64Array = new Float64Array(1024);
  private distances: Float64Array = new Float64Array(1024);
  private head = 0;
  private tail = 0;
  private length = 0;
  private linear = 0;
  private square = 0;
  private sinceRenewed = 0;
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
    this.push(start, end - start, value - this.declared);
    while ((this.starts[this.head] as number) < end - LENGTH) this.drop();
    if (this.length < VALID_COVERAGE * LENGTH) {
      this.endRun(undefined);
      this.wasBelow = false;
      return;
    }
    const mean = this.linear / this.length;
    const value10 = Math.sqrt(this.declared ** 2 + 2 * this.declared * mean + this.square / this.length);
    this.take(value10, end);
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

  private push(start: Instant, length: Duration, distance: number): void {
    if (this.tail === this.starts.length) this.makeRoom();
    this.starts[this.tail] = start;
    this.lengths[this.tail] = length;
    this.distances[this.tail] = distance;
    this.tail++;
    this.sinceRenewed++;
    if (this.sinceRenewed > this.tail - this.head) this.renew();
    else this.count(length, distance);
  }

  private drop(): void {
    this.count(-(this.lengths[this.head] as number), this.distances[this.head] as number);
    this.head++;
  }

  private count(length: Duration, distance: number): void {
    this.length += length;
    this.linear += length * distance;
    this.square += length * distance * distance;
  }

  private renew(): void {
    [this.length, this.linear, this.square, this.sinceRenewed] = [0, 0, 0, 0];
    for (let i = this.head; i < this.tail; i++) this.count(this.lengths[i] as number, this.distances[i] as number);
  }

  /** Moves the window to the front; into arrays twice as long where it fills more than half of them. */
  private makeRoom(): void {
    const held = this.tail - this.head;
    const size = held > this.starts.length / 2 ? 2 * this.starts.length : this.starts.length;
    const moved = (from: Float64Array) => {
      const to = new Float64Array(size);
      to.set(from.subarray(this.head, this.tail));
      return to;
    };
    [this.starts, this.lengths, this.distances] = [moved(this.starts), moved(this.lengths), moved(this.distances)];
    [this.head, this.tail] = [0, held];
  }
}

/**
 * 110 % of the declared voltage in V: generators in low-voltage networks trip where the sliding 10-min mean passes it
 * (EN 50549-1, from memory).
 */
export function slidingLimit(declared: number): number {
  return toNumber(times(ratio(declared), ratio("1.1")));
}
