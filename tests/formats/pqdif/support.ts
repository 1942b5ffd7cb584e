import { CHARACTERISTIC } from "../../../src/formats/pqdif/characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { pqdifPieces, type WritingForm } from "../../../src/formats/pqdif/write.js";
import type {
  WrittenChannel,
  WrittenChannelDefinition,
  WrittenDataSource,
  WrittenRecord,
  WrittenSeries,
} from "../../../src/formats/pqdif/write-description.js";
import type { LogFile } from "../../../src/recording/log-file.js";

/** A file in memory that counts what is read of it. */
export function fileOf(bytes: Uint8Array, name = "log.pqd"): LogFile & { bytesRead: number } {
  return {
    name,
    size: bytes.length,
    bytesRead: 0,
    async read(offset, length) {
      const part = bytes.slice(offset, offset + length);
      this.bytesRead += part.length;
      return part;
    },
  };
}

export const START = Date.UTC(2026, 10, 16) * 1000;

export async function bytesOf(records: readonly WrittenRecord[], form: WritingForm = {}): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  const container = { fileName: "log.pqd", creation: START, notes: "A note" };
  for await (const piece of pqdifPieces(container, records, form)) pieces.push(piece.slice());
  return Uint8Array.from(Buffer.concat(pieces));
}

export async function reopened(records: readonly WrittenRecord[], form: WritingForm = {}) {
  return openPqdif(fileOf(await bytesOf(records, form)));
}

export const VALUES = 1;
export const SCALED = 2;
export const INCREMENT = 4;

/** A value log of a voltage: time in seconds, and values. */
export function valueLog(
  name: string,
  phase: number,
  timeStorage = VALUES,
  storage = VALUES,
): WrittenChannelDefinition {
  return {
    name,
    phase,
    quantityType: QUANTITY_TYPE.VALUELOG,
    quantityMeasured: 1,
    series: [
      { valueType: VALUE_TYPE.TIME, units: 2, characteristic: CHARACTERISTIC.NONE, storage: timeStorage },
      { valueType: VALUE_TYPE.AVG, units: 6, characteristic: CHARACTERISTIC.RMS, storage },
    ],
  };
}

export function sourceOf(...channels: readonly WrittenChannelDefinition[]): { dataSource: WrittenDataSource } {
  return { dataSource: { name: "Feeder box", effective: START, channels } };
}

export function observationOf(...channels: readonly WrittenChannel[]): WrittenRecord {
  return { observation: { name: "Values", start: START, triggerMethod: 2, channels } };
}

export function real8(...values: readonly number[]): WrittenSeries {
  return { type: "REAL8", values };
}
