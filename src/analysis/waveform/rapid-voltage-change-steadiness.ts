/**
 * Whether all of the last values lie within a band around their arithmetic mean (IEC 61000-4-30 Ed 3, rapid voltage
 * change). Each value costs the same whatever the number of values.
 */
export class Steadiness {
  private readonly values: Float64Array;
  private readonly lowest: Extremes;
  private readonly highest: Extremes;
  private added = 0;
  private sum = 0;

  /** @param count how many values: 100 at 50 Hz, 120 at 60 Hz */
  constructor(private readonly count: number) {
    this.values = new Float64Array(count);
    this.lowest = new Extremes(count, -1);
    this.highest = new Extremes(count, 1);
  }

  add(value: number): void {
    const slot = this.added % this.count;
    this.sum += value - (this.isFull ? (this.values[slot] as number) : 0);
    this.values[slot] = value;
    this.added++;
    // Once a round, so that rounding cannot add up.
    if (slot === this.count - 1) this.sum = this.values.reduce((a, b) => a + b);
    this.lowest.add(value);
    this.highest.add(value);
  }

  restart(): void {
    this.added = 0;
    this.sum = 0;
    this.lowest.restart();
    this.highest.restart();
  }

  get isFull(): boolean {
    return this.added >= this.count;
  }

  /** Arithmetic mean of the last values; NaN until there are enough. */
  get mean(): number {
    return this.isFull ? this.sum / this.count : Number.NaN;
  }

  /** Largest distance of one of the values from their mean; NaN until there are enough. */
  get spread(): number {
    const { mean } = this;
    return Math.max(this.highest.value - mean, mean - this.lowest.value);
  }
}

/** The extreme of the last values: a queue of those that no later value outdoes. */
class Extremes {
  private readonly values: Float64Array;
  private readonly numbers: Float64Array;
  private head = 0;
  private tail = 0;
  private added = 0;

  constructor(
    private readonly count: number,
    private readonly direction: 1 | -1,
  ) {
    this.values = new Float64Array(count + 1);
    this.numbers = new Float64Array(count + 1);
  }

  restart(): void {
    this.head = 0;
    this.tail = 0;
    this.added = 0;
  }

  add(value: number): void {
    const size = this.count + 1;
    while (this.tail > this.head && ((this.values[(this.tail - 1) % size] as number) - value) * this.direction <= 0) {
      this.tail--;
    }
    this.values[this.tail % size] = value;
    this.numbers[this.tail % size] = this.added;
    this.tail++;
    this.added++;
    if ((this.numbers[this.head % size] as number) < this.added - this.count) this.head++;
  }

  get value(): number {
    return this.values[this.head % (this.count + 1)] as number;
  }
}
