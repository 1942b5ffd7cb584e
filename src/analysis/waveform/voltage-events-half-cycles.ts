import type { HalfCycle } from "./phenomenon.js";

/** Half cycles after a change that its place is found with. */
export const FORESIGHT = 2;

/** Share of three half cycles that counts as changed where it cannot be told: the middle. */
const UNKNOWN = 1.5;

/**
 * The latest half cycles of a group of channels, numbered from 0 without a break, and the places of changes among them.
 * A value that is not held, or was lost in a gap, is NaN.
 */
export class RecentHalfCycles {
  /** Number of the half cycle that comes next. */
  next = 0;
  /** Number of the first one since the signal was last broken off. */
  private first = 0;
  private readonly starts: Float64Array;
  private readonly periods: Float64Array;
  private readonly values: readonly Float64Array[];
  private readonly halves: readonly Float64Array[];
  private readonly peaks: readonly Float64Array[];

  /**
   * @param indices the channels among those of the chain
   * @param measure what events are looked for in: Urms(1/2) over one cycle, or the r.m.s. value over half a cycle
   */
  constructor(
    private readonly indices: readonly number[],
    private readonly measure: "oneCycle" | "halfCycle",
    private readonly size: number,
  ) {
    const array = () => new Float64Array(size);
    this.starts = array();
    this.periods = array();
    this.values = indices.map(array);
    this.halves = indices.map(array);
    this.peaks = indices.map(array);
  }

  /** Takes in a half cycle and returns its number. */
  add(half: HalfCycle): number {
    const slot = this.next % this.size;
    this.starts[slot] = half.from;
    this.periods[slot] = half.period;
    for (let c = 0; c < this.indices.length; c++) {
      const channel = this.indices[c] as number;
      (this.values[c] as Float64Array)[slot] = half[this.measure][channel] as number;
      (this.halves[c] as Float64Array)[slot] = half.halfCycle[channel] as number;
      (this.peaks[c] as Float64Array)[slot] = half.peak[channel] as number;
    }
    return this.next++;
  }

  /** What follows does not join what was before. */
  breakOff(): void {
    this.first = this.next;
  }

  /** First half cycle that can be looked at, not before `number`. */
  earliestFrom(number: number): number {
    return Math.max(number, this.first, this.next - this.size);
  }

  value(channel: number, number: number): number {
    return this.take(this.values[channel] as Float64Array, number);
  }

  peak(channel: number, number: number): number {
    return this.take(this.peaks[channel] as Float64Array, number);
  }

  /** Position of the zero crossing that a half cycle begins at. */
  start(number: number): number {
    return this.take(this.starts, number);
  }

  /** Position of the end of what `value` was taken over. */
  end(number: number): number {
    return this.start(number) + this.take(this.periods, number) * this.span;
  }

  /** Position of the middle of what `value` was taken over. */
  middle(number: number): number {
    return this.start(number) + (this.take(this.periods, number) * this.span) / 2;
  }

  /**
   * Position of the change that made half cycle `number` the first one beyond a threshold. The cycle that a value is
   * taken over may have begun long before the change. Of a step from one level to another the mean squares of the
   * half cycles around it tell the place: exactly for a step at a zero crossing, within 0.08 of a cycle elsewhere. A
   * gradual change is put where the value passed the threshold, within about a quarter of a cycle. Needs `FORESIGHT` more.
   */
  startOfChange(channel: number, number: number): number {
    if (this.measure === "halfCycle") return this.start(number);
    return this.start(number) + (2 - this.changed(channel, number, 1)) * (this.take(this.periods, number) / 2);
  }

  /** The same for the change that made half cycle `number` the first one that is back. */
  endOfChange(channel: number, number: number): number {
    if (this.measure === "halfCycle") return this.start(number);
    return this.start(number) + (this.changed(channel, number, -1) - 1) * (this.take(this.periods, number) / 2);
  }

  /**
   * How many of the half cycles number − 1 … number + 1 are at the inner level: the one farthest from the level outside,
   * two half cycles further out, among those further in (`inwards` 1: later, −1: earlier).
   */
  private changed(channel: number, number: number, inwards: 1 | -1): number {
    const halves = this.halves[channel] as Float64Array;
    const outside = this.take(halves, number - 2 * inwards) ** 2;
    let inside = outside;
    for (let i = 0; i <= 2; i++) {
      const square = this.take(halves, number + inwards * i) ** 2;
      if (Math.abs(square - outside) > Math.abs(inside - outside)) inside = square;
    }
    let sum = 0;
    for (let i = number - 1; i <= number + 1; i++) {
      const share = (this.take(halves, i) ** 2 - outside) / (inside - outside);
      sum += Math.min(1, Math.max(0, share));
    }
    return Number.isNaN(sum) ? UNKNOWN : sum;
  }

  private get span(): number {
    return this.measure === "oneCycle" ? 1 : 0.5;
  }

  private take(values: Float64Array, number: number): number {
    if (number < this.first || number >= this.next || number < this.next - this.size) return Number.NaN;
    return values[number % this.size] as number;
  }
}
