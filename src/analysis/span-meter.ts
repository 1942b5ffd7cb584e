import type { Phase } from "../recording/quantity.js";
import type { AskedSpan, SpanVoltage } from "../recording/supply-detail.js";
import type { Duration, Instant } from "../recording/time.js";

/** Lowest, highest and mean voltage of the intervals that overlap a span; keeps sums only. */
export class SpanMeter {
  private n = 0;
  private start: Instant = 0;
  private end: Instant = 0;
  private lowest = Number.POSITIVE_INFINITY;
  private highest = Number.NEGATIVE_INFINITY;
  private innerLowest = Number.POSITIVE_INFINITY;
  private innerHighest = Number.NEGATIVE_INFINITY;
  private length = 0;
  private square = 0;

  constructor(
    private readonly phase: Phase,
    private readonly interval: Duration,
    private readonly asked: AskedSpan,
  ) {}

  /** The next interval in order of time; one that does not overlap the span, or has no value (NaN), is left out. */
  add(start: Instant, end: Instant, value: number, low = Number.NaN, high = Number.NaN): void {
    if (end <= this.asked.from || start >= this.asked.to || Number.isNaN(value)) return;
    if (this.n === 0) this.start = start;
    this.end = end;
    this.n++;
    this.lowest = Math.min(this.lowest, value);
    this.highest = Math.max(this.highest, value);
    // A missing extreme is NaN and leaves the comparison false.
    if (low < this.innerLowest) this.innerLowest = low;
    if (high > this.innerHighest) this.innerHighest = high;
    this.length += end - start;
    this.square += (end - start) * value * value;
  }

  /** Undefined where no interval had a value. */
  finish(): SpanVoltage | undefined {
    if (this.n === 0) return undefined;
    const { phase, asked, interval, n, start, end, lowest, highest, innerLowest, innerHighest } = this;
    const hasInner = Number.isFinite(innerLowest) && Number.isFinite(innerHighest);
    return {
      phase,
      asked,
      interval,
      n,
      start,
      end,
      lowest,
      highest,
      mean: lowest === highest ? lowest : Math.sqrt(this.square / this.length),
      ...(hasInner && { inner: { lowest: innerLowest, highest: innerHighest } }),
    };
  }
}
