/** No number has more significant digits than a double can tell apart. */
const MOST = 15;

/**
 * Tells how finely times are written: by decimal places, as "0.0001", or by significant digits, as "1.00024e-1" or "10.0001".
 * The place of the last digit is the coarser of the two.
 */
export class WrittenDigits {
  #significant = 1;

  /** Looks at values before they are asked about: one that ends in zeros does not show all its digits. */
  learn(values: Float64Array): void {
    for (const value of values) {
      const size = Math.abs(value);
      if (!(size > 0)) continue;
      const magnitude = magnitudeOf(size);
      while (this.#significant < MOST && !hasDigits(size, this.#significant - magnitude)) this.#significant++;
    }
  }

  /**
   * The place of the last digit of a value.
   * @param finest the finest place of any value so far
   */
  placeIn(value: number, finest: number): number {
    const size = Math.abs(value);
    return size > 0 ? Math.max(finest, 10 ** (magnitudeOf(size) - this.#significant)) : finest;
  }
}

function magnitudeOf(size: number): number {
  return Math.floor(Math.log10(size)) + 1;
}

function hasDigits(size: number, places: number): boolean {
  const shifted = places >= 0 ? size * 10 ** places : size / 10 ** -places;
  return Math.abs(shifted - Math.round(shifted)) <= 1e-15 * shifted + 1e-9;
}
