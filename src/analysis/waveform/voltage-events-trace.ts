/** Rows kept between the beginning and the end of a long trace, at most. */
const MIDDLE_ROWS = 256;

/**
 * Rows of numbers, of which the first and last ones are kept as they are and those between are thinned out evenly, more
 * and more as the trace grows. One row stands for several: its first number is that of the first of them, each other
 * number is the lowest (or highest) of them all, so that no extreme is lost.
 */
export class LongTrace {
  private readonly head: Float64Array[] = [];
  private middle: Float64Array[] = [];
  private readonly tail: Float64Array[] = [];
  /** Rows that one row of the middle stands for. */
  private stride = 1;
  private running: Float64Array | undefined;
  private inRunning = 0;

  /**
   * @param keep rows kept as they are at either end
   * @param direction −1: the lowest of several rows stands for them; 1: the highest
   */
  constructor(
    private readonly keep: number,
    private readonly direction: 1 | -1,
  ) {}

  add(row: Float64Array): void {
    if (this.head.length < this.keep) {
      this.head.push(row);
      return;
    }
    this.tail.push(row);
    if (this.tail.length > this.keep) this.thin(this.tail.shift() as Float64Array);
  }

  rows(): Float64Array[] {
    const running = this.running === undefined ? [] : [this.running];
    return [...this.head, ...this.middle, ...running, ...this.tail];
  }

  private thin(row: Float64Array): void {
    this.running = this.running === undefined ? row : this.combined(this.running, row);
    if (++this.inRunning < this.stride) return;
    this.middle.push(this.running);
    this.running = undefined;
    this.inRunning = 0;
    if (this.middle.length < MIDDLE_ROWS) return;
    this.middle = this.middle.flatMap((r, i) => (i % 2 === 0 ? [this.combined(r, this.middle[i + 1] ?? r)] : []));
    this.stride *= 2;
  }

  private combined(first: Float64Array, second: Float64Array): Float64Array {
    return first.map((a, i) => {
      const b = second[i] as number;
      return i > 0 && (b - a) * this.direction > 0 ? b : a;
    });
  }
}
