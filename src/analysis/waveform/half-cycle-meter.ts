import type { WaveformChannel } from "../../recording/waveform.js";
import type { SampleHistory } from "../../signal/sample-history.js";
import { peak, squareIntegral } from "../../signal/square-integral.js";
import type { HalfCycle } from "./phenomenon.js";

/** Measures what is refreshed each half cycle; see `HalfCycle`. */
export class HalfCycleMeter {
  private readonly skews: readonly number[];
  private readonly half: { -readonly [K in keyof HalfCycle]: HalfCycle[K] };

  constructor(
    channels: readonly WaveformChannel[],
    samplesPerSecond: number,
    private readonly history: SampleHistory,
  ) {
    const values = () => new Float64Array(channels.length);
    this.skews = channels.map((c) => c.skewS * samplesPerSecond);
    this.half = { from: 0, period: 0, oneCycle: values(), halfCycle: values(), peak: values() };
  }

  /** Whether the samples for a zero crossing have come. */
  isReady(from: number, period: number): boolean {
    return from - Math.min(...this.skews) + period + 3 <= this.history.end;
  }

  measure(from: number, period: number): HalfCycle {
    const { half, history } = this;
    half.from = from;
    half.period = period;
    for (let c = 0; c < this.skews.length; c++) {
      const samples = history.channels[c] as Float64Array;
      const start = from - history.base - (this.skews[c] as number);
      const middle = start + period / 2;
      const first = squareIntegral(samples, start, middle);
      const second = squareIntegral(samples, middle, start + period);
      half.halfCycle[c] = rootOf(first / (period / 2));
      half.oneCycle[c] = rootOf((first + second) / period);
      half.peak[c] = peak(samples, start, middle);
    }
    return half;
  }
}

/** The integral of squares of a nearly dead signal may come out a trifle below zero. */
function rootOf(meanSquare: number): number {
  return Math.sqrt(Math.max(0, meanSquare));
}
