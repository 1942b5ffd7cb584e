/** Classes per doubling, evenly spaced in it: a class is 0.05 to 0.1 % wide. The first ten bits of a double's fraction. */
const PER_OCTAVE = 1024;
const LOWEST_OCTAVE = -20;
const HIGHEST_OCTAVE = 24;
const CLASSES = (HIGHEST_OCTAVE - LOWEST_OCTAVE) * PER_OCTAVE;
/** Exponent and first ten bits of the fraction of the lowest value, as IEEE 754 writes them. */
const FIRST_CLASS = (1023 + LOWEST_OCTAVE) * PER_OCTAVE;

/**
 * Counts of non-negative values in classes from 2⁻²⁰ to 2²⁴, in constant memory. Smaller values are counted in the lowest
 * class, larger ones in the highest. The class is read from the number's leading bits, ten times faster than a logarithm.
 */
export class LevelHistogram {
  private readonly counts = new Uint32Array(CLASSES);
  private readonly bits = new DataView(new ArrayBuffer(8));
  private n = 0;

  get count(): number {
    return this.n;
  }

  add(value: number): void {
    this.bits.setFloat64(0, value);
    const at = (this.bits.getUint32(0) >>> 10) - FIRST_CLASS;
    const index = at < 0 ? 0 : at < CLASSES ? at : CLASSES - 1;
    this.counts[index] = (this.counts[index] as number) + 1;
    this.n++;
  }

  /**
   * The level that is exceeded by `share` (0…1) of the values, interpolated inside its class as if the values there were
   * evenly spread; right to the width of a class. NaN where there are no values.
   */
  exceededBy(share: number): number {
    let above = share * this.n;
    for (let index = CLASSES - 1; index >= 0; index--) {
      const count = this.counts[index] as number;
      if (count > 0 && above <= count) return levelAt(index + 1 - above / count);
      above -= count;
    }
    return Number.NaN;
  }

  clear(): void {
    this.counts.fill(0);
    this.n = 0;
  }
}

/** Lower bound of the class with this index; between two bounds for a fractional one. */
function levelAt(index: number): number {
  const octave = Math.floor(index / PER_OCTAVE);
  return 2 ** (LOWEST_OCTAVE + octave) * (1 + index / PER_OCTAVE - octave);
}
