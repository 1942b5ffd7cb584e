import { CHARACTERISTIC } from "../../../src/formats/pqdif/characteristics.js";
import { guidBytes } from "../../../src/formats/pqdif/guid.js";
import { QUANTITY_TYPE, SIGNATURE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { pqdifPieces, type WritingForm } from "../../../src/formats/pqdif/write.js";
import { bodyBytes } from "../../../src/formats/pqdif/write-body.js";
import type {
  WrittenChannel,
  WrittenChannelDefinition,
  WrittenDataSource,
  WrittenRecord,
  WrittenSeries,
} from "../../../src/formats/pqdif/write-description.js";
import {
  containerElements,
  dataSourceElements,
  observationElements,
} from "../../../src/formats/pqdif/write-elements.js";
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

/** A file of records with these bodies as they stand; `links` replaces the link of a record. */
export function chainOf(
  records: readonly (readonly [type: string, body: Uint8Array])[],
  links: Readonly<Record<number, number>> = {},
): Uint8Array {
  const pieces: Uint8Array[] = [];
  let at = 0;
  for (const [i, [type, body]] of records.entries()) {
    const header = Buffer.alloc(64);
    header.set(guidBytes(SIGNATURE));
    header.set(guidBytes(type), 16);
    header.writeInt32LE(64, 32);
    header.writeInt32LE(body.length, 36);
    header.writeInt32LE(links[i] ?? (i === records.length - 1 ? 0 : at + 64 + body.length), 40);
    pieces.push(header, body);
    at += 64 + body.length;
  }
  return Uint8Array.from(Buffer.concat(pieces));
}

/** Plain bodies of a file with one value log channel, to be altered. */
export function plainBodies({ embed = true } = {}) {
  const source = sourceOf(valueLog("U", 1)).dataSource;
  const observation = {
    name: "Values",
    start: START,
    channels: [{ definition: 0, series: [real8(0, 600), real8(230, 231)] }],
  };
  return {
    container: bodyBytes(containerElements({ fileName: "log.pqd", creation: START }, false), embed),
    compressedContainer: bodyBytes(containerElements({ fileName: "log.pqd", creation: START }, true), embed),
    source: bodyBytes(dataSourceElements(source), embed),
    observation: bodyBytes(observationElements(observation), embed),
  };
}

/** The place of the `n`-th entry with a tag. */
export function entryPlace(bytes: Uint8Array, tag: string, n = 0): number {
  let place = -1;
  for (let i = 0; i <= n; i++) place = Buffer.from(bytes).indexOf(guidBytes(tag), place + 1);
  if (place < 0) throw new RangeError(`there is no element ${tag}`);
  return place;
}

/** A copy in which the bytes that a function changes are changed. */
export function changed(bytes: Uint8Array, change: (copy: Buffer) => void): Uint8Array {
  const copy = Buffer.from(bytes);
  change(copy);
  return Uint8Array.from(copy);
}

/** Warnings of a file, and the values of its first observation's second series. */
export async function readAs(bytes: Uint8Array) {
  const file = await openPqdif(fileOf(bytes));
  const [first] = file.observations;
  const values = first?.channels.length === 0 ? [] : await (await first?.open())?.values(0, 1);
  return {
    observations: file.observations.length,
    warnings: file.warnings.map(({ what }) => String(what)),
    byte: file.warnings[0]?.byte,
    values: [...(values ?? [])],
  };
}
