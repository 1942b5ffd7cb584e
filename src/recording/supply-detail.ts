import type { Phase } from "./quantity.js";
import type { Duration, Instant } from "./time.js";

/** What is kept of the supply voltage beyond the interval series, because it needs the shortest intervals at hand. */

/** See `Measurements.supply`. */
export interface SupplyDetail {
  readonly sliding: readonly SlidingVoltage[];
  /** Of the phases without a sliding mean. */
  readonly bounds: readonly SlidingBound[];
  readonly spans: readonly SpanVoltage[];
}

/** A span of time about which is asked what the voltage did. */
export interface AskedSpan {
  readonly from: Instant;
  readonly to: Instant;
}

/** The voltage of one phase over a span, from the valid intervals of one length that overlap it. In V. */
export interface SpanVoltage {
  readonly phase: Phase;
  readonly asked: AskedSpan;
  readonly interval: Duration;
  readonly n: number;
  /** From the start of the first of these intervals to the end of the last one. */
  readonly start: Instant;
  readonly end: Instant;
  readonly lowest: number;
  readonly highest: number;
  /** Root of the mean square, by the length of the intervals. */
  readonly mean: number;
  /** The logger's own extremes inside these intervals, where it wrote them. */
  readonly inner?: { readonly lowest: number; readonly highest: number };
}

/** A value and the end of the window that it is taken over. */
export interface WindowValue {
  readonly value: number;
  readonly at: Instant;
}

/** The r.m.s. voltage of one phase over windows of 10 min that move on by one interval of the data. */
export interface SlidingVoltage {
  readonly phase: Phase;
  /** How far a window moves: the interval of the data; of waveforms the 10/12-cycle interval. */
  readonly interval: Duration;
  /** Windows that are valid: 99 % of them covered by data. */
  readonly n: number;
  readonly lowest: WindowValue;
  readonly highest: WindowValue;
  /** In V: 110 % of the declared voltage. */
  readonly limit: number;
  /** The times at which it was above the limit, in order. */
  readonly passed: readonly Passing[];
}

export interface Passing {
  /** End of the first window above the limit. */
  readonly start: Instant;
  /** To the end of the first window that is not above it any more. */
  readonly durationS: number;
  readonly peak: number;
  /** false: the data begin or end, or are missing, while it is above the limit; it lasted at least `durationS`. */
  readonly complete: boolean;
}

/** How high a sliding mean can have been at most, of ten-minute values with the lowest and highest value inside each. */
export interface SlidingBound {
  readonly phase: Phase;
  /** In V: 110 % of the declared voltage. */
  readonly limit: number;
  /** Pairs of ten-minute intervals in a row that it could be given for. */
  readonly pairs: number;
  /** The highest bound, at the instant where its two intervals meet. */
  readonly highest: WindowValue;
  /** Pairs within which the sliding mean can have been above the limit although neither interval is. */
  readonly possible: number;
}
