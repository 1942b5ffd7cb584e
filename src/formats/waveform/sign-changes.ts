import { say, type Text } from "../../sentence.js";

/** A supply voltage or current of 20 Hz or more changes its sign this often per second. */
const FEWEST_CHANGES = 40;
/** Seconds over which changes are counted. */
const WINDOW = 0.25;

/**
 * Tells an alternating voltage or current by its changes of sign over windows of time, through gaps and from file to
 * file.
 */
export class SignChanges {
  alternates = false;
  #min = Number.POSITIVE_INFINITY;
  #max = Number.NEGATIVE_INFINITY;
  #sign = 0;
  #changes = 0;
  #seconds = 0;
  #most = 0;
  #windows = 0;

  add(values: Float64Array, samplesPerSecond: number): void {
    const period = 1 / samplesPerSecond;
    for (let i = 0; i < values.length && !this.alternates; i++) {
      const value = values[i] as number;
      if (value < this.#min) this.#min = value;
      if (value > this.#max) this.#max = value;
      const sign = Math.sign(value);
      if (sign * this.#sign < 0) this.#changes++;
      if (sign === 1 || sign === -1) this.#sign = sign;
      this.#seconds += period;
      if (this.#seconds >= WINDOW) this.end();
    }
  }

  /** Closes the window. A short one at the end counts only where there is no other. */
  end(): void {
    if (this.#seconds >= WINDOW / 5 || this.#windows === 0) {
      const rate = this.#changes / this.#seconds;
      this.#most = Math.max(this.#most, rate);
      this.alternates ||= this.#changes >= 2 && rate >= FEWEST_CHANGES;
    }
    this.#windows++;
    this.#changes = 0;
    this.#seconds = 0;
  }

  /** Why it is none; undefined if it alternates. */
  reason(): Text | undefined {
    if (this.alternates) return undefined;
    if (this.#max < this.#min) return say`it holds no values`;
    if (this.#min === 0 && this.#max === 0) return say`it is zero throughout`;
    if (this.#min === this.#max) return say`it holds the same value throughout`;
    if (this.#min >= 0 || this.#max <= 0)
      return say`its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)`;
    return say`it changes sign ${Math.round(this.#most)} times a second at most, too slowly for a supply voltage or current`;
  }
}
