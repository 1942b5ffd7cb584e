/** Classes per doubling: one class is 0.135 % wide. */
const PER_OCTAVE = 512;
const LOWEST_OCTAVE = -20;
const HIGHEST_OCTAVE = 30;
const CLASSES = (HIGHEST_OCTAVE - LOWEST_OCTAVE) * PER_OCTAVE;
const LOWEST = 2 ** LOWEST_OCTAVE;

/**
 * Counts of non-negative values in logarithmic classes from 2⁻²⁰ to 2³⁰, in constant memory. Smaller values are counted
 * in the lowest class, larger ones in the highest.
 */
export class LevelHistogram {
  private readonly counts = new Uint32Array(CLASSES);
  private n = 0;

  get count(): number {
    return this.n;
  }

  add(value: number): void {
    const at = value > LOWEST ? Math.floor((Math.log2(value) - LOWEST_OCTAVE) * PER_OCTAVE) : 0;
    const index = at < CLASSES ? at : CLASSES - 1;
    this.counts[index] = (this.counts[index] as number) + 1;
    this.n++;
  }

  /**
   * The level that is exceeded by `share` (0…1) of the values, interpolated inside its class as if the values there were
   * spread evenly on the logarithmic scale; right to the width of a class, 0.135 %. NaN where there are no values.
   */
  exceededBy(share: number): number {
    let above = share * this.n;
    for (let index = CLASSES - 1; index >= 0; index--) {
      const count = this.counts[index] as number;
      if (count > 0 && above <= count) return LOWEST * 2 ** ((index + 1 - above / count) / PER_OCTAVE);
      above -= count;
    }
    return Number.NaN;
  }

  clear(): void {
    this.counts.fill(0);
    this.n = 0;
  }
}
