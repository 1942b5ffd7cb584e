/** What an event begins beyond and what it ends at, per channel. */
export class Thresholds {
  private readonly enter: Float64Array;
  private readonly leave: Float64Array;

  /**
   * @param reference what percentages are of
   * @param direction 1: beyond is above the threshold, back is at the lower bound or below; −1: the other way round
   * @param percent threshold in % of the reference
   * @param hysteresis how much further back the event ends, in % of the reference
   */
  constructor(
    readonly reference: readonly number[],
    readonly direction: 1 | -1,
    percent: number,
    hysteresis: number,
  ) {
    const leave = percent - direction * hysteresis;
    // Percent times volt first: 90 · 230 / 100 is 207 exactly.
    this.enter = Float64Array.from(reference, (r) => (percent * r) / 100);
    this.leave = Float64Array.from(reference, (r) => (leave * r) / 100);
  }

  /** False for NaN. */
  isBeyond(channel: number, value: number): boolean {
    return (value - (this.enter[channel] as number)) * this.direction > 0;
  }

  /** False for NaN. */
  isBack(channel: number, value: number): boolean {
    return (value - (this.leave[channel] as number)) * this.direction <= 0;
  }
}

/** IEC 61000-4-30, sliding reference: weights of the old value and of the new basic window (0.2 s, 1 min). From memory. */
const OLD = 0.9967;
const NEW = 0.0033;

/** Moves a sliding reference by the r.m.s. voltage of one unflagged basic window; without a value it stays. */
export function slide(reference: number, rms: number): number {
  return Number.isNaN(rms) ? reference : OLD * reference + NEW * rms;
}
