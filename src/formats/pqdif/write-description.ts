import type { Instant } from "../../recording/time.js";
import type { PqdifChannelDefinition, PqdifCharacteristics, PqdifDataSource, PqdifSettings } from "./model.js";

/** What a PQDIF file is to hold, record by record, in the terms in which it is read. */
export type WrittenRecord =
  | { readonly dataSource: WrittenDataSource }
  | { readonly settings: WrittenSettings }
  | { readonly observation: WrittenObservation };

export interface WrittenContainer {
  /** Name of the file without folder. */
  readonly fileName: string;
  readonly creation: Instant;
  readonly notes?: string;
}

export type WrittenChannelDefinition = PqdifChannelDefinition;

export interface WrittenDataSource extends Omit<PqdifDataSource, "byte"> {
  /** Identifier of the data source type; default: measured. */
  readonly type?: string;
  readonly effective: Instant;
}

export type WrittenSettings = Omit<PqdifSettings, "byte">;

export interface WrittenObservation {
  readonly name: string;
  /** Zero of the time axis. */
  readonly start: Instant;
  /** Default: the start. */
  readonly created?: Instant;
  readonly triggered?: Instant;
  /** Default 0, none. */
  readonly triggerMethod?: number;
  readonly triggerChannels?: readonly number[];
  readonly disturbance?: string;
  readonly characteristics?: PqdifCharacteristics;
  readonly channels: readonly WrittenChannel[];
}

/** A channel of an observation; several may have the same definition, as those of harmonic orders have. */
export interface WrittenChannel {
  /** Index of the definition in the data source. */
  readonly definition: number;
  /** Harmonic order. */
  readonly group?: number;
  readonly frequency?: number;
  readonly characteristics?: PqdifCharacteristics;
  /** One for each series of the definition. */
  readonly series: readonly WrittenSeries[];
}

/** Physical types of values. */
export type ValueType =
  | "BOOLEAN1"
  | "BOOLEAN2"
  | "BOOLEAN4"
  | "INTEGER1"
  | "INTEGER2"
  | "INTEGER4"
  | "UNS_INTEGER1"
  | "UNS_INTEGER2"
  | "UNS_INTEGER4"
  | "REAL4"
  | "REAL8"
  | "TIMESTAMPPQDIF";

/** Stored as the definition's storage method says, which is not changed here. */
export type WrittenSeries = {
  readonly base?: number;
  /** A reader multiplies by it and adds the offset where the definition says that values are scaled. */
  readonly scale?: number;
  readonly offset?: number;
} & (
  | {
      readonly type: ValueType;
      /** As they are to be read: what is stored is (value − offset) / scale. Timestamps are instants. */
      readonly values: ArrayLike<number>;
    }
  | {
      readonly type: ValueType;
      /** Storage by increments: count and rate of each segment. */
      readonly steps: readonly (readonly [count: number, rate: number])[];
    }
  | {
      /** The values of another series of the observation. */
      readonly share: { readonly channel: number; readonly series: number };
    }
);
