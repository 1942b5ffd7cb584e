import type { Text } from "../sentence.js";
import type { LoggedEvent } from "./logged-event.js";
import type { SeriesKey, Unit } from "./quantity.js";
import type { Duration, Instant } from "./time.js";
import type { WaveformSource } from "./waveform.js";

/**
 * What the logger wrote: SI units, phases named L1 L2 L3 N (L12 L23 L31 phase to phase), time in UTC, in time
 * order. Nothing is repaired silently: what was left out, merged or put on a tick stands in the ledger.
 */
export interface Recording {
  readonly kind: "logged-series" | "waveforms";
  readonly sources: readonly SourceFile[];
  /** Start of the first interval or sample and end of the last one; see spanOf for samples beside logged series. */
  readonly start: Instant;
  readonly end: Instant;
  /** The span of the whole log, where only part of it was asked for. */
  readonly cropped?: { readonly start: Instant; readonly end: Instant };
  readonly series: readonly LoggedSeries[];
  /** Sampled channels, read as a stream of blocks when they are measured. */
  readonly waveforms: readonly WaveformSource[];
  /** What the recorder itself listed as events, in time order. */
  readonly events?: readonly LoggedEvent[];
  readonly ledger: Ledger;
}

export interface SourceFile {
  /** File name without folder: results must not depend on the path. */
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
  readonly format: string;
}

/**
 * The instants of a logged table, shared by all its series. `starts` is strictly increasing.
 * `flagged[i]` is 1 where the logger marked the interval (IEC 61000-4-30: a dip, swell or interruption fell into it).
 */
export interface TimeAxis {
  readonly interval: Duration;
  readonly starts: Float64Array;
  readonly flagged: Uint8Array;
}

/** One logged quantity. `values`, `min`, `max` are as long as `axis.starts`; NaN where the log has no value. */
export interface LoggedSeries extends SeriesKey {
  readonly axis: TimeAxis;
  readonly unit: Unit;
  readonly values: Float64Array;
  readonly min?: Float64Array;
  readonly max?: Float64Array;
  /** Smallest step of the last written digit, in `unit` (0.1 for "231.4" V); undefined where it could not be told. */
  readonly resolution?: number;
}

/** How the log was understood, and what of it was not used. Every entry appears in `inspect` and in the report. */
export interface Ledger {
  readonly columns: readonly ColumnReading[];
  /** The parts that the log consists of, where it says so. */
  readonly observations?: readonly ObservationReading[];
  readonly timeBase: TimeBase;
  /** Steps of reading that a reader of the report must know (joined files, stamps put on the tick, skipped lines …). */
  readonly remarks: readonly Text[];
  /** Rows that repeat an interval already logged, with the same values. */
  readonly duplicates: number;
  /** Intervals for which rows disagree; their disagreeing values are left out, counted as missing. */
  readonly conflicts: readonly Instant[];
  /** Rows that stood after a later one in their file. */
  readonly outOfOrder: number;
  /** Rows whose stamp fell into the repeated hour of a clock change and could not be placed. They are left out. */
  readonly unplaced: number;
  /** Negative values of quantities that have none; left out, counted as missing. */
  readonly negatives?: readonly (SeriesKey & { readonly count: number; readonly lowest: number })[];
  /** Steps of the clock: the distance to the previous row is neither one interval nor a whole number of them. */
  readonly clockSteps: readonly { readonly at: Instant; readonly by: Duration }[];
  /** Changes between winter and summer time that fall into the recording, by the zone's rules. */
  readonly clockChanges: readonly { readonly at: Instant; readonly by: Duration; readonly seenInLog: boolean }[];
}

export interface ColumnReading {
  readonly file: string;
  /** 1-based position in the file. */
  readonly position: number;
  /** Header text, cells of two-row headers joined with a space. */
  readonly header: string;
  /** What the column was taken for; undefined: not used, `reason` says why. */
  readonly meaning?: ColumnMeaning | ChannelMeaning;
  /** A column that holds no series but is used: the stamps, the flags of the intervals, or a list of events. */
  readonly use?: "time" | "flag" | "events";
  /** It holds samples, in a log that holds logged series as well. */
  readonly sampled?: true;
  readonly reason: Text;
}

/** A part of a log with a start of its own: a table of intervals, or what was recorded around a trigger. */
export interface ObservationReading {
  readonly file: string;
  readonly name: string;
  readonly start: Instant;
  readonly triggered?: Instant;
  /** What made the recorder write it, in the words of the standard. */
  readonly trigger: Text;
  readonly category?: Text;
  readonly channels: number;
  /** Rows or samples of its longest channel. */
  readonly rows: number;
  /** What of it is used, or why nothing is. */
  readonly use: Text;
}

export interface ColumnMeaning extends SeriesKey {
  readonly statistic: "mean" | "min" | "max";
  /** The unit as written or stated, e.g. "kV", "% of declared". */
  readonly writtenUnit: string;
}

/** What a sampled channel of a waveform log was taken for. */
export interface ChannelMeaning extends SeriesKey {
  readonly statistic: "samples";
  readonly writtenUnit: string;
}

export interface TimeBase {
  /** IANA zone or fixed offset for local times: the given one; else that of the stamps ("UTC" where they carry offsets). */
  readonly zone: string;
  readonly zoneOrigin: "given" | "stamps" | "assumed";
  /** How the zone was told, where it was not by the stamps' own offsets. */
  readonly zoneReason?: Text;
  readonly intervalLabel: "start" | "end";
  readonly labelOrigin: "given" | "inferred" | "assumed";
  /** How the label was inferred, where it was not by the header of the time column. */
  readonly labelReason?: Text;
  /** Plain words: "d.m.y hh:mm, by the point between the numbers". */
  readonly stampForm: Text;
}
