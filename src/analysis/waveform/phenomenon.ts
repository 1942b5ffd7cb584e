import type { IntervalSeries, Unavailable, VoltageEvent } from "../../recording/measurements.js";
import type { SlidingVoltage, SpanVoltage } from "../../recording/supply-detail.js";
import type { Instant } from "../../recording/time.js";
import type { WaveformBlock, WaveformChannel } from "../../recording/waveform.js";
import type { Text } from "../../sentence.js";
import type { SampleHistory } from "../../signal/sample-history.js";
import type { Band } from "./band.js";
import type { FlaggedSpans } from "./flagged-spans.js";

/**
 * The contract between the measurement chain and what it measures. A phenomenon is a state machine over what the chain
 * hands it; what it keeps must not grow with the log, its results excepted.
 *
 * Positions are on the sample axis of the recording and fractional: 0 is the first sample, gaps are counted in. Arrays
 * that the chain hands over are used again and hold good during the call only.
 */
export interface Phenomenon {
  readonly id: string;
  /** Standard and clause it is measured by. */
  readonly clause: string;
  start(setup: ChainSetup): PhenomenonState;
}

/**
 * Any of the calls may be left out. Samples come as the source delivers them; cycles, half cycles and windows follow
 * about 0.1 s of signal later, each kind in order of time. Every half cycle that starts before the end of a window
 * comes before that window, so that the flags of a window are complete when it comes.
 */
export interface PhenomenonState {
  samples?(block: WaveformBlock): void;
  cycle?(cycle: Cycle): void;
  halfCycle?(half: HalfCycle): void;
  window?(window: BasicWindow): void;
  /**
   * The signal is broken off (samples missing in all channels) and goes on at the sample `next`; all cycles, half
   * cycles and windows before the gap have been handed over.
   */
  gap?(next: number): void;
  finish(): PhenomenonResult;
}

export interface PhenomenonResult {
  readonly series?: readonly IntervalSeries[];
  readonly events?: readonly VoltageEvent[];
  readonly sliding?: readonly SlidingVoltage[];
  readonly spans?: readonly SpanVoltage[];
  readonly unavailable?: readonly Unavailable[];
  readonly remarks?: readonly Text[];
}

/** How long the values are that a series holds; "window" is the 10/12-cycle and "3s" the 150/180-cycle interval. */
export type Level = "window" | "3s" | "10min" | "2h";

/** What is known before the first sample. */
export interface ChainSetup {
  readonly channels: readonly WaveformChannel[];
  readonly samplesPerSecond: number;
  /** Instant of sample 0. */
  readonly start: Instant;
  /** Samples from the first to the last, gaps included. */
  readonly length: number;
  readonly nominalFrequency: 50 | 60;
  /** Udin in V of the voltages that are judged; see `declaredVoltageOf` for one channel. */
  readonly declaredVoltage: number;
  readonly connection: "star" | "delta" | "single";
  readonly options: ChainOptions;
  /** Event detectors mark here what dips, swells and interruptions cover; everyone reads. */
  readonly flags: FlaggedSpans;
  /** The last samples of all channels, at least `HISTORY_S` before the half cycle that is being handed over. */
  readonly history: SampleHistory;
  readonly band: Band;
}

/** Length of signal before the current half cycle that `ChainSetup.history` is sure to hold, in s. */
export const HISTORY_S = 1;

export interface ChainOptions {
  /**
   * Levels that every aggregated series is kept at. Where not given: "10min" and "2h", and for a recording without a whole
   * ten minutes of the clock "window", "3s" and "10min"; "3s" as well for less than an hour.
   */
  readonly levels?: readonly Level[];
  /** IEC 61000-4-7: harmonic subgroups (the rule) or groups. */
  readonly harmonics?: "subgroups" | "groups";
  /** IEC 61000-4-7: first-order low pass of 1.5 s on each harmonic. */
  readonly smoothed?: boolean;
  /** Carrier frequencies of mains signalling, in Hz. */
  readonly signallingFrequencies?: readonly number[];
  /** Reference lamp of the flickermeter by its rated voltage; 230 V where not given. */
  readonly lamp?: 230 | 120;
}

/** One cycle of the fundamental of the reference voltage, from one upward zero crossing to the next. */
export interface Cycle {
  readonly from: number;
  readonly to: number;
  /** False where the reference voltage was gone and the last period is continued, and where the phase is found again. */
  readonly tracked: boolean;
}

/**
 * What begins at a zero crossing of the fundamental, upward or downward, and is refreshed each half cycle. Each array
 * has one value per channel, in V or A, NaN where a sample is missing.
 */
export interface HalfCycle {
  /** Position of the zero crossing. */
  readonly from: number;
  /** Length of one whole cycle in samples: `oneCycle` covers from … from + period, the others half of that. */
  readonly period: number;
  /** Urms(1/2), Irms(1/2): r.m.s. over one cycle (IEC 61000-4-30). */
  readonly oneCycle: Float64Array;
  /** R.m.s. over this half cycle. */
  readonly halfCycle: Float64Array;
  /** Largest absolute sample of this half cycle. */
  readonly peak: Float64Array;
}

/** A basic interval: 10 cycles at 50 Hz, 12 at 60 Hz (IEC 61000-4-30), without gap or overlap except at ten-minute ticks. */
export interface BasicWindow {
  readonly from: number;
  readonly to: number;
  readonly start: Instant;
  readonly end: Instant;
  /** 10 or 12. */
  readonly cycles: number;
  /** A dip, swell or interruption falls into it. */
  readonly flagged: boolean;
  readonly channels: readonly WindowChannel[];
}

/** One channel over a basic window. NaN throughout where a sample is missing. */
export interface WindowChannel {
  /** R.m.s. over the window, of the samples as recorded. */
  readonly rms: number;
  /** Largest absolute sample. */
  readonly peak: number;
  /**
   * Spectral lines as r.m.s. phasors, real and imaginary part by turns: line k is at k / window length (about 5 Hz), the
   * fundamental is line `cycles`. Lines beyond the recorder's band are NaN.
   */
  readonly spectrum: Float64Array;
  /** Squares of the r.m.s. values of the lines. */
  readonly squares: Float64Array;
}

/** Udin for a channel: the declared voltage, times or over √3 where the channel is measured between other conductors. */
export function declaredVoltageOf(
  setup: Pick<ChainSetup, "declaredVoltage" | "connection">,
  { phase }: Pick<WaveformChannel, "phase">,
): number {
  const phaseToPhase = phase === "L12" || phase === "L23" || phase === "L31";
  if (phaseToPhase === (setup.connection === "delta")) return setup.declaredVoltage;
  return phaseToPhase ? setup.declaredVoltage * Math.sqrt(3) : setup.declaredVoltage / Math.sqrt(3);
}

/** Index of the channel with a quantity on a phase; −1: there is none. */
export function channelOf(
  { channels }: Pick<ChainSetup, "channels">,
  quantity: WaveformChannel["quantity"],
  phase: WaveformChannel["phase"],
): number {
  return channels.findIndex((c) => c.quantity === quantity && c.phase === phase);
}
