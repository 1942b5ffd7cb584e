import type { Phase } from "../../src/recording/quantity.js";
import type { Instant } from "../../src/recording/time.js";
import type { WaveformBlock, WaveformChannel, WaveformSource } from "../../src/recording/waveform.js";
import { START } from "./series.js";

/** The value of a channel at a time in seconds after the start of the recording. */
export type Signal = (t: number) => number;

export interface SourceOptions {
  readonly samplesPerSecond: number;
  readonly seconds: number;
  readonly start?: Instant;
  /** Samples per block: a number, or lengths that are used by turns. */
  readonly blocks?: number | readonly number[];
  /** Stretches of samples that are missing, [first, one past the last], in order. */
  readonly gaps?: readonly (readonly [number, number])[];
}

export const voltage = (phase: Phase, skewS = 0): WaveformChannel => ({
  name: `u ${phase}`,
  quantity: "voltage",
  phase,
  skewS,
});

export const current = (phase: Phase, skewS = 0): WaveformChannel => ({
  name: `i ${phase}`,
  quantity: "current",
  phase,
  skewS,
});

/** A recording of closed-form signals, sampled when a block is asked for; a channel's skew moves its sampling. */
export function sampled(
  channels: readonly (readonly [WaveformChannel, Signal])[],
  options: SourceOptions,
): WaveformSource {
  const { samplesPerSecond, seconds, start = START, blocks = 4096, gaps = [] } = options;
  const length = Math.round(seconds * samplesPerSecond);
  const lengths = typeof blocks === "number" ? [blocks] : blocks;
  async function* read(): AsyncGenerator<WaveformBlock> {
    let first = 0;
    for (let n = 0; first < length; n++) {
      const gap = gaps.find(([from, to]) => first < to && from <= first);
      if (gap) {
        first = gap[1];
        continue;
      }
      const wall = gaps.find(([from]) => from > first)?.[0] ?? length;
      const size = Math.min(lengths[n % lengths.length] as number, wall - first, length - first);
      const samples = channels.map(([{ skewS }, signal]) =>
        Float64Array.from({ length: size }, (_, i) => signal((first + i) / samplesPerSecond + skewS)),
      );
      yield { first, samples };
      first += size;
    }
  }
  return { channels: channels.map(([c]) => c), samplesPerSecond, start, length, blocks: read };
}

/** A component: r.m.s. value, frequency in Hz, phase in degrees (a sine at 0). */
export type Component = readonly [rms: number, hertz: number, degrees?: number];

/** The sum of sines. */
export function sines(...components: readonly Component[]): Signal {
  const parts = components.map(([rms, hertz, degrees = 0]) => ({
    amplitude: rms * Math.SQRT2,
    omega: 2 * Math.PI * hertz,
    phase: (degrees * Math.PI) / 180,
  }));
  return (t) => {
    let sum = 0;
    for (const { amplitude, omega, phase } of parts) sum += amplitude * Math.sin(omega * t + phase);
    return sum;
  };
}

/** A signal times a factor between two times in s. */
export function scaled(signal: Signal, from: number, to: number, factor: number): Signal {
  return (t) => (t >= from && t < to ? factor * signal(t) : signal(t));
}
