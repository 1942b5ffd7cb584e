import type { SeriesKey, Unit } from "./quantity.js";
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
  readonly events: readonly VoltageEvent[];
  /** What could not be derived and why, in plain words, for "not assessed". */
  readonly unavailable: readonly Unavailable[];
  /** What was derived and how, in plain words ("u2 from three phase-to-phase voltages"). */
  readonly remarks: readonly string[];
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

/** A dip, swell, interruption or rapid voltage change. */
export interface VoltageEvent {
  readonly kind: "dip" | "swell" | "interruption" | "rapid-voltage-change";
  readonly origin: "logged" | "computed";
  readonly phases: readonly SeriesKey["phase"][];
  readonly start: Instant;
  readonly durationS: number;
  /** Residual voltage of a dip, highest voltage of a swell, ΔUmax of a rapid change. */
  readonly extreme: number;
  readonly unit: Unit;
}

export interface Unavailable {
  readonly quantity: SeriesKey["quantity"];
  readonly phase?: SeriesKey["phase"];
  readonly order?: number;
  readonly reason: string;
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
