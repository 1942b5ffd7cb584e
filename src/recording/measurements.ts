import type { Text } from "../sentence.js";
import type { SeriesKey, Unit } from "./quantity.js";
import type { SupplyDetail } from "./supply-detail.js";
import type { Duration, Instant } from "./time.js";

/**
 * The one meeting point of waveforms and logged series: per quantity, phase (and harmonic order) an interval series
 * at the interval the standards judge, plus events. What comes after does not know where a series came from,
 * except through `origin`.
 */
export interface Measurements {
  /** Start of the first interval and end of the last one. */
  readonly start: Instant;
  readonly end: Instant;
  readonly series: readonly IntervalSeries[];
  /** Dips, swells, interruptions and rapid voltage changes; in time order. */
  readonly events: readonly VoltageEvent[];
  /** Whether the recording could show events: an empty list says that there were none only where it could. */
  readonly eventsSought: boolean;
  /** The recording holds what a recorder was triggered by: events, but nothing says that there were no others. */
  readonly eventsTriggered?: true;
  /** The judged voltages by the shortest intervals at hand. */
  readonly supply?: SupplyDetail;
  /** What could not be derived and why, in plain words, for "not assessed". */
  readonly unavailable: readonly Unavailable[];
  /** What was derived and how, in plain words ("u2 from three phase-to-phase voltages"). */
  readonly remarks: readonly Text[];
}

/**
 * One value per interval, in time order. All arrays have equal length. `values[i]` is NaN only where `coverage[i]` is 0.
 * An interval with no data at all may also simply be absent.
 */
export interface IntervalSeries extends SeriesKey {
  readonly unit: Unit;
  readonly interval: Duration;
  /** `logged`: the logger's own value; `computed`: by this program from shorter intervals, other series or waveforms. */
  readonly origin: "logged" | "computed";
  readonly starts: Float64Array;
  readonly values: Float64Array;
  /** Extremes inside the interval, where known: the logger's, or of the shorter intervals it was made from. */
  readonly min?: Float64Array;
  readonly max?: Float64Array;
  readonly flagged: Uint8Array;
  /** Share of the interval that valid data cover, 0…1. */
  readonly coverage: Float64Array;
  readonly resolution?: number;
}

export type EventKind = "dip" | "swell" | "interruption" | "rapid-voltage-change" | "transient" | "inrush-current";

/** What is measured of an event as a whole, and again of each of its phases. */
export interface EventMeasure {
  readonly start: Instant;
  readonly durationS: number;
  /**
   * Residual voltage of a dip or interruption, highest voltage of a swell, ΔUmax of a rapid voltage change, largest
   * deviation of a transient, highest half-cycle r.m.s. value of an inrush current.
   */
  readonly extreme: number;
  /** What `percent` is of: declared voltage or sliding reference, crest of the declared voltage, inrush threshold. */
  readonly reference?: number;
  /** `extreme` in % of `reference`. */
  readonly percent?: number;
  /** ΔUss of a rapid voltage change. */
  readonly steadyChange?: number;
  /** Largest absolute sample during a swell or inrush current. */
  readonly peak?: number;
}

/** An event of the supply, over all its phases together. */
export interface VoltageEvent extends EventMeasure {
  readonly kind: EventKind;
  readonly origin: "logged" | "computed";
  readonly phases: readonly SeriesKey["phase"][];
  readonly unit: Unit;
  readonly perPhase?: readonly PhaseOfEvent[];
  /** A dip during which all phases were interrupted; the interruption is an event of its own. */
  readonly interrupted?: true;
  /** False: the samples begin or end during the event, so that its true duration is not known; at least `durationS`. */
  readonly complete?: boolean;
  /** What cut off an event that is not complete: the recording's own start or end, or missing samples. */
  readonly cutOff?: { readonly start?: CutOff; readonly end?: CutOff };
  readonly trace?: EventTrace;
  /** Samples around the start and around the end, in order of time and without overlap. */
  readonly waveform?: readonly WaveformPiece[];
}

export type CutOff = "recording" | "gap";

/** One phase of an event, by the thresholds of a single channel: from its first crossing to its last. */
export interface PhaseOfEvent extends EventMeasure {
  readonly phase: SeriesKey["phase"];
  /** How often it crossed the threshold; the duration holds the times in between, too. */
  readonly crossings: number;
}

/**
 * R.m.s. values of each half cycle from 0.1 s before an event to 0.2 s after it. Of a long event the first and the last
 * second are whole; in between one value stands for several half cycles, the one farthest out.
 */
export interface EventTrace {
  /** Seconds from the start of the event to the middle of what each value was taken over. */
  readonly times: Float64Array;
  readonly channels: readonly { readonly phase: SeriesKey["phase"]; readonly values: Float32Array }[];
}

/** Samples of all channels as recorded, in V or A; a channel's skew is not taken out. */
export interface WaveformPiece {
  readonly start: Instant;
  readonly samplesPerSecond: number;
  readonly channels: readonly {
    readonly quantity: "voltage" | "current";
    readonly phase: SeriesKey["phase"];
    readonly samples: Float32Array;
  }[];
}

export interface Unavailable {
  readonly quantity: SeriesKey["quantity"];
  readonly phase?: SeriesKey["phase"];
  readonly order?: number;
  readonly reason: Text;
}

/**
 * Share of an interval that data must cover for its value to count as valid. Below it the interval is missing.
 * Common practice, no source: EN 50160 and IEC 61000-4-30 leave partial intervals to the user; 1 % lets a 1-s log
 * with a slightly slow clock pass and refuses a ten-minute value made from nine one-minute values.
 */
export const VALID_COVERAGE = 0.99;

export function isValid(series: IntervalSeries, i: number): boolean {
  return (series.coverage[i] ?? 0) >= VALID_COVERAGE;
}
