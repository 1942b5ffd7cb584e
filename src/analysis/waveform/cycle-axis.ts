/** Cycle starts that are remembered: far more than a window and the delay of the tracking take. */
const REMEMBERED = 256;

/**
 * Cycles as an axis of their own beside the samples: whole numbers are the starts of cycles, and inside a cycle the axis
 * is straight. Only the latest cycles are known.
 */
export class CycleAxis {
  private readonly starts = new Float64Array(REMEMBERED);
  /** Number of the last known start; the first one is 0. */
  last = -1;

  restart(): void {
    this.last = -1;
  }

  add(start: number): void {
    this.last++;
    this.starts[this.last % REMEMBERED] = start;
  }

  /** Position on the sample axis of a place on the cycle axis, from 0 to `last`. */
  position(cycle: number): number {
    const whole = Math.min(Math.floor(cycle), this.last);
    const from = this.start(whole);
    return cycle === whole ? from : from + (cycle - whole) * (this.start(whole + 1) - from);
  }

  /** Place on the cycle axis of a sample position, which must lie between the first and the last known start. */
  cycleAt(position: number): number {
    let whole = this.last - 1;
    while (whole > 0 && this.start(whole) > position) whole--;
    const from = this.start(whole);
    return whole + (position - from) / (this.start(whole + 1) - from);
  }

  private start(cycle: number): number {
    return this.starts[cycle % REMEMBERED] as number;
  }
}
