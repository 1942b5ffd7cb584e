/** Sums over the stretches of a window: their length, length × value and length × value². */
export interface Sums {
  length: number;
  linear: number;
  square: number;
}

/** Numbers kept of each stretch: its start, its own sums, and those of itself and all after it in the older part. */
const FIELDS = 7;

/**
 * Sums over a window that slides along stretches of any length, by additions only: nothing is ever taken off again, so
 * that rounding does not grow and a huge value leaves no trace once it has left. The window has an older part, for each
 * stretch of which the sum up to that part's end is known, and a newer part with one sum; when the older part is used up,
 * the newer one becomes it. Memory holds one window.
 */
export class WindowSums {
  private items = new Float64Array(1024 * FIELDS);
  private head = 0;
  private middle = 0;
  private tail = 0;
  private newer: Sums = { length: 0, linear: 0, square: 0 };
  private readonly sums: Sums = { length: 0, linear: 0, square: 0 };

  /** @param span length of the window */
  constructor(private readonly span: number) {}

  /** Adds the next stretch, lets go of what begins more than `span` before its end, and gives the sums of what is left, always in the same object. */
  add(start: number, end: number, value: number): Sums {
    this.push(start, end - start, value);
    while ((this.items[this.head * FIELDS] as number) < end - this.span) this.drop();
    const { newer, head, sums } = this;
    const hasOlder = head < this.middle;
    sums.length = newer.length + (hasOlder ? this.field(head, 4) : 0);
    sums.linear = newer.linear + (hasOlder ? this.field(head, 5) : 0);
    sums.square = newer.square + (hasOlder ? this.field(head, 6) : 0);
    return sums;
  }

  private field(i: number, k: number): number {
    return this.items[i * FIELDS + k] as number;
  }

  private push(start: number, length: number, value: number): void {
    if ((this.tail + 1) * FIELDS > this.items.length) this.makeRoom();
    const [linear, square] = [length * value, length * value * value];
    const at = this.tail++ * FIELDS;
    this.items[at] = start;
    this.items[at + 1] = length;
    this.items[at + 2] = linear;
    this.items[at + 3] = square;
    this.newer.length += length;
    this.newer.linear += linear;
    this.newer.square += square;
  }

  private drop(): void {
    if (this.head === this.middle) this.becomeOlder();
    this.head++;
  }

  private becomeOlder(): void {
    const sums = [0, 0, 0];
    for (let i = this.tail - 1; i >= this.head; i--) {
      for (let k = 0; k < 3; k++) {
        sums[k] = (sums[k] as number) + this.field(i, k + 1);
        this.items[i * FIELDS + k + 4] = sums[k] as number;
      }
    }
    this.middle = this.tail;
    this.newer = { length: 0, linear: 0, square: 0 };
  }

  /** Moves the window to the front; into an array twice as long where it fills more than half of it. */
  private makeRoom(): void {
    const held = this.items.subarray(this.head * FIELDS, this.tail * FIELDS);
    const items = new Float64Array(2 * held.length > this.items.length ? 2 * this.items.length : this.items.length);
    items.set(held);
    this.items = items;
    this.middle -= this.head;
    this.tail -= this.head;
    this.head = 0;
  }
}
