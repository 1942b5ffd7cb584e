import { SampleHistory } from "../../signal/sample-history.js";

/** Slots per nominal cycle: harmonics that fold onto the fundamental are above order 30. */
const SLOTS_PER_CYCLE = 32;

/** Thins voltages out for the tracking of cycles: means of `width` samples in a row. */
export class SlotSums {
  readonly width: number;
  readonly history: SampleHistory;
  /** The sample the next slot starts at. */
  private next = 0;
  private origin = 0;
  private readonly fresh: Float64Array[];

  /** @param keptCycles nominal cycles that the history keeps */
  constructor(
    private readonly channels: readonly number[],
    samplesPerCycle: number,
    keptCycles: number,
  ) {
    this.width = Math.max(1, Math.floor(samplesPerCycle / SLOTS_PER_CYCLE));
    this.history = new SampleHistory(channels.length, Math.ceil((keptCycles * samplesPerCycle) / this.width));
    this.fresh = channels.map(() => new Float64Array(64));
  }

  restart(first: number): void {
    this.origin = first;
    this.next = first;
    this.history.restart(0);
  }

  /** Takes in what has been appended to the history of samples. */
  update(samples: SampleHistory): void {
    const { width } = this;
    while (this.next + width <= samples.end) {
      const slots = Math.min(64, Math.floor((samples.end - this.next) / width));
      for (let c = 0; c < this.channels.length; c++) {
        const input = samples.channels[this.channels[c] as number] as Float64Array;
        const out = this.fresh[c] as Float64Array;
        let i = this.next - samples.base;
        for (let slot = 0; slot < slots; slot++) {
          let sum = 0;
          for (const end = i + width; i < end; i++) sum += input[i] as number;
          out[slot] = sum / width;
        }
      }
      this.history.append(this.fresh, 0, slots);
      this.next += slots * width;
    }
  }

  /** Samples before this position are in slots. */
  get end(): number {
    return this.next;
  }

  /** Index of a sample position in the arrays of `history`, fractional. */
  indexOf(position: number): number {
    return (position - this.origin - (this.width - 1) / 2) / this.width - this.history.base;
  }
}
