/**
 * The latest samples of several channels, each in one contiguous array so that inner loops need no wrap-around. Sample
 * n of the signal stands at index n − `base`.
 */
export class SampleHistory {
  readonly channels: Float64Array[];
  base = 0;
  /** One past the last sample held. */
  end = 0;
  private capacity = 0;

  /** @param keep how many samples before the end are sure to be held */
  constructor(
    channels: number,
    readonly keep: number,
  ) {
    this.channels = Array.from({ length: channels }, () => new Float64Array(0));
  }

  /** Forgets everything; the next sample is `first`. */
  restart(first: number): void {
    this.base = first;
    this.end = first;
  }

  /** First sample that is sure to be held. */
  get first(): number {
    return Math.max(this.base, this.end - this.keep);
  }

  /** Appends samples `from` … `to` − 1 of each array. */
  append(samples: readonly Float64Array[], from: number, to: number): void {
    const added = to - from;
    if (this.end + added - this.base > this.capacity) this.makeRoom(added);
    for (let c = 0; c < this.channels.length; c++) {
      (this.channels[c] as Float64Array).set((samples[c] as Float64Array).subarray(from, to), this.end - this.base);
    }
    this.end += added;
  }

  private makeRoom(added: number): void {
    const kept = this.end - this.first;
    const shift = this.first - this.base;
    // Twice what is kept: each sample is moved about once.
    if (kept + added > this.capacity) this.capacity = Math.max(2 * this.keep, 2 * (kept + added));
    for (let c = 0; c < this.channels.length; c++) {
      const old = this.channels[c] as Float64Array;
      if (old.length === this.capacity) {
        old.copyWithin(0, shift, shift + kept);
      } else {
        const grown = new Float64Array(this.capacity);
        grown.set(old.subarray(shift, shift + kept));
        this.channels[c] = grown;
      }
    }
    this.base += shift;
  }
}
