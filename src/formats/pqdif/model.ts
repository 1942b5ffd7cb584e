import type { Instant } from "../../recording/time.js";
import type { Text } from "../../sentence.js";

/**
 * What a PQDIF file (IEEE 1159.3) says, before anything is taken for a quantity of this program: the logical layer, with
 * identifiers in lower-case canonical text and times as stored. Values stay in the file until they are read.
 */
export interface PqdifFile {
  readonly file: string;
  readonly container: PqdifContainer;
  /** In file order. */
  readonly observations: readonly PqdifObservation[];
  /** What was skipped or read with doubt, with the byte where it stands. */
  readonly warnings: readonly PqdifWarning[];
}

/** Faults of one kind are told once. */
export interface PqdifWarning {
  /** Of the file; in a compressed record its first byte. */
  readonly byte: number;
  readonly what: Text;
  /** How often the fault was found; `byte` and `what` tell the first. */
  readonly times: number;
}

export interface PqdifContainer {
  /** Writer major, minor, compatible major, minor. */
  readonly version: readonly number[];
  readonly compression: "none" | "record";
  readonly creation?: Instant;
  readonly notes?: string;
}

/** Who measured, and the definitions of its channels. */
export interface PqdifDataSource {
  readonly byte: number;
  readonly name: string;
  readonly serialNumber?: string;
  readonly timeZone?: string;
  /** Seconds to add to the stored times to come from UTC to local standard and local time (definition version 1.7). */
  readonly utcToStandardS?: number;
  readonly standardToLocalS?: number;
  readonly channels: readonly PqdifChannelDefinition[];
}

export interface PqdifChannelDefinition {
  readonly name: string;
  /** Phase number: 1 AN, 2 BN, 3 CN, 4 NG, 5 AB … */
  readonly phase: number;
  /** Identifier of the quantity type: waveform, value log, phasor … */
  readonly quantityType: string;
  /** Quantity measured: 1 voltage, 2 current, 3 power …; undefined in files older than 1.5. */
  readonly quantityMeasured?: number;
  readonly group?: string;
  readonly series: readonly PqdifSeriesDefinition[];
}

export interface PqdifSeriesDefinition {
  /** Identifier of the value type: time, value, minimum … */
  readonly valueType: string;
  readonly units: number;
  /** Identifier of the characteristic; undefined where the file has none. */
  readonly characteristic?: string;
  /** Bits: 1 values, 2 scaled, 4 increment. */
  readonly storage: number;
  /** A hint only: files hold junk here. */
  readonly nominal?: number;
  readonly percentile?: number;
  readonly probabilityIntervalS?: number;
  readonly resolution?: number;
}

/** The settings in force for an observation. */
export interface PqdifSettings {
  readonly byte: number;
  readonly effective?: Instant;
  readonly nominalFrequency?: number;
  readonly connection?: number;
  readonly useTransducer: boolean;
  readonly useCalibration: boolean;
  readonly channels: readonly {
    /** Index into the channel definitions. */
    readonly definition: number;
    readonly systemSideRatio?: number;
    readonly monitorSideRatio?: number;
    readonly calibrationOffset?: number;
    readonly calibrationRatio?: number;
    readonly timeSkewS?: number;
    readonly triggerLow?: number;
    readonly triggerHigh?: number;
  }[];
}

/** One observation: its channels and what they hold, without values. */
export interface PqdifObservation {
  readonly byte: number;
  readonly name: string;
  readonly source: PqdifDataSource;
  readonly settings?: PqdifSettings;
  /** Zero of the time axis, as stored. */
  readonly start: Instant;
  readonly triggered?: Instant;
  /** 0 none, 1 channel, 2 periodic, 3 external, 4 periodic statistics. */
  readonly triggerMethod?: number;
  /** Indices into `channels`. */
  readonly triggerChannels: readonly number[];
  /** Identifier of the disturbance category. */
  readonly disturbance?: string;
  readonly characteristics: PqdifCharacteristics;
  readonly channels: readonly PqdifChannel[];
  /**
   * Reads values of this observation, decoded: storage method, shared series, scale and offset applied; transducer and
   * calibration not. Absolute times are instants (µs), other values in the series' units. An inflated body is kept only
   * as long as the returned reader.
   */
  open(): Promise<PqdifValues>;
}

export interface PqdifCharacteristics {
  readonly magnitude?: number;
  readonly durationS?: number;
  readonly frequency?: number;
}

/** A channel of an observation. */
export interface PqdifChannel {
  readonly byte: number;
  readonly definition: PqdifChannelDefinition;
  /** Index of the definition in the data source. */
  readonly definitionIndex: number;
  /** Harmonic order, or order below an interharmonic group. */
  readonly group?: number;
  readonly frequency?: number;
  readonly characteristics: PqdifCharacteristics;
  /** The i-th belongs to the i-th series definition; `count` values, 0 where the vector is empty, missing or unreadable. */
  readonly series: readonly { readonly byte: number; readonly count: number; readonly base?: number }[];
}

export interface PqdifValues {
  /**
   * Values `from` to before `to` of a series, by default all; `channel` and `series` are indices into the observation. Empty
   * where the series' `count` is 0.
   * @throws LogError where they cannot be read
   */
  values(channel: number, series: number, from?: number, to?: number): Promise<Float64Array>;
}
