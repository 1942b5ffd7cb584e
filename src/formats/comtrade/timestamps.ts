/** 2³² − 1 stands for a time stamp that is missing. */
export const MISSING_STAMP = 0xffffffff;
const COUNTER = 2 ** 32;
const SHORT_COUNTER = 2 ** 16;
const KEPT_STEPS = 4096;

export interface StampSteps {
  /** Sum of the steps, in units of the stamps, and the samples it spans. */
  readonly elapsed: number;
  readonly samples: number;
  /** Per sample. */
  readonly smallest: number;
  readonly largest: number;
  /** Of the first 4096 steps. */
  readonly median: number;
  /** The stamps run through 16 bits instead of 32. */
  readonly shortCounter: boolean;
}

/** Follows the time stamps of the rows; where a stamp falls, the counter of 32 (or 16) bits has run over. */
export class StampTracker {
  readonly #long = new Steps(COUNTER);
  readonly #short = new Steps(SHORT_COUNTER);
  #last = Number.NaN;
  #lastPosition = 0;
  #largestStamp = 0;
  #falls = 0;
  #present = 0;

  /** @param position place of the row on the sample axis @param stamp NaN where it is missing */
  add(stamp: number, position: number): void {
    if (Number.isNaN(stamp) || stamp === MISSING_STAMP) return;
    this.#present++;
    if (stamp > this.#largestStamp) this.#largestStamp = stamp;
    if (!Number.isNaN(this.#last)) {
      const samples = position - this.#lastPosition;
      const step = stamp - this.#last;
      if (step < 0) this.#falls++;
      this.#long.add(step, samples);
      this.#short.add(step, samples);
    }
    this.#last = stamp;
    this.#lastPosition = position;
  }

  /** Undefined where fewer than two rows have a stamp, or all stamps are the same. */
  finish(): StampSteps | undefined {
    if (this.#present < 2 || (this.#falls === 0 && this.#long.elapsed === 0)) return undefined;
    const shortCounter = this.#falls > 0 && this.#largestStamp < SHORT_COUNTER;
    const { elapsed, samples, smallest, largest, first } = shortCounter ? this.#short : this.#long;
    return { elapsed, samples, smallest, largest, median: first.sort()[first.length >> 1] ?? 0, shortCounter };
  }
}

class Steps {
  elapsed = 0;
  samples = 0;
  smallest = Number.POSITIVE_INFINITY;
  largest = 0;
  readonly #kept = new Float64Array(KEPT_STEPS);
  #count = 0;

  constructor(private readonly counter: number) {}

  get first(): Float64Array {
    return this.#kept.slice(0, Math.min(this.#count, KEPT_STEPS));
  }

  add(step: number, samples: number): void {
    const forward = step < 0 ? step + this.counter : step;
    this.elapsed += forward;
    this.samples += samples;
    const each = forward / samples;
    if (each < this.smallest) this.smallest = each;
    if (each > this.largest) this.largest = each;
    if (this.#count < KEPT_STEPS) this.#kept[this.#count] = each;
    this.#count++;
  }
}
