import type { Phase } from "./quantity.js";
import { type Instant, SECOND } from "./time.js";

/**
 * Samples per second that waveforms need to be measured: IEC 61000-4-30 measures by tens of cycles and up to order 50;
 * below this rate hardly a harmonic is left.
 */
export const LOWEST_RATE = 2000;

/** A sampled channel that measurement can use: a phase voltage or a current, in V or A at the primary side. */
export interface WaveformChannel {
  /** As the file names it. */
  readonly name: string;
  readonly quantity: "voltage" | "current";
  readonly phase: Phase;
  /** How much later than the row's time this channel was sampled, in seconds (COMTRADE skew); 0 where not stated. */
  readonly skewS: number;
}

/**
 * Channels sampled together at one constant rate. Sample i was taken at `start` + i / `samplesPerSecond`. Read as a
 * stream of blocks, never wholly in memory; every call of `blocks` reads from the beginning.
 */
export interface WaveformSource {
  readonly channels: readonly WaveformChannel[];
  readonly samplesPerSecond: number;
  readonly start: Instant;
  /** Samples from the first to the last, those lost in gaps included. */
  readonly length: number;
  /** Where the samples lie between gaps, where it is known before they are read; without it, all are there. */
  readonly stretches?: readonly { readonly first: number; readonly length: number }[];
  blocks(): AsyncIterable<WaveformBlock>;
}

/**
 * Consecutive samples, one array per channel, all of equal length; NaN where the file marks a sample as missing. A gap
 * shows as a `first` beyond the end of the block before. The arrays may be used again for the next block.
 */
export interface WaveformBlock {
  readonly first: number;
  readonly samples: readonly Float64Array[];
}

/** Instant of a sample, rounded to the microsecond. */
export function instantOfSample(source: Pick<WaveformSource, "start" | "samplesPerSecond">, sample: number): Instant {
  return source.start + Math.round((sample / source.samplesPerSecond) * SECOND);
}

/** Position of an instant on the sample axis; fractional, may lie outside the recording. */
export function sampleOfInstant(source: Pick<WaveformSource, "start" | "samplesPerSecond">, t: Instant): number {
  return ((t - source.start) / SECOND) * source.samplesPerSecond;
}
