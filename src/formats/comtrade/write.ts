import { type Duration, HOUR, type Instant, MINUTE, SECOND } from "../../recording/time.js";
import type { DataKind, Edition } from "./configuration.js";
import { ROW_HEAD } from "./data-layout.js";
import { rowEncoder, STATUS_BITS, type WrittenNumbers } from "./write-rows.js";

export interface WrittenChannel {
  readonly name: string;
  readonly quantity: "voltage" | "current";
  /** Text of the phase field: "A", "L1", "AB" … */
  readonly phase: string;
  /** Largest magnitude in V or A at the primary side that can be written; it fixes the step between two numbers. */
  readonly fullScale: number;
  /** Default V or A. */
  readonly unit?: "V" | "kV" | "mV" | "A" | "kA" | "mA";
  readonly skewS?: number;
  /** Ratio of the transformer and the side on which the numbers stand. Default: 1 to 1, primary. */
  readonly primary?: number;
  readonly secondary?: number;
  readonly side?: "primary" | "secondary";
}

export interface WrittenRecord {
  readonly station: string;
  readonly device: string;
  readonly edition: Edition;
  /** BINARY32 and FLOAT32 exist from 2013 on. */
  readonly kind: DataKind;
  readonly channels: readonly WrittenChannel[];
  readonly samplesPerSecond: number;
  /** Samples from the first to the last, lost ones included. */
  readonly length: number;
  readonly start: Instant;
  readonly trigger?: Instant;
  readonly nominalFrequency: 50 | 60;
  /** Local time of the recorder minus UTC; the stamps are local time. Stated in the file from 2013 on only. Default 0. */
  readonly utcOffset?: Duration;
  /** Names of status channels, which are written as 0 throughout. */
  readonly statusChannels?: readonly string[];
}

const UNIT_SCALE = { V: 1, kV: 1000, mV: 0.001, A: 1, kA: 1000, mA: 0.001 } as const;
const LARGEST_NUMBER = { ASCII: 99_998, BINARY: 0x7fff, BINARY32: 0x7fffffff } as const;
const LARGEST_STAMP = 0xfffffffe;

/**
 * A COMTRADE record (IEEE C37.111-1991, -1999, -2013) as a pair of files: value = a × number, with a = full scale over the
 * largest number (99998 in text, 2¹⁵ − 1, 2³¹ − 1), so a value is off by at most half a step; FLOAT32 writes single
 * precision with a = 1. NaN is written as the missing-data code of the edition.
 * @param samples one array per channel, `length` long, in V or A at the primary side
 * @throws RangeError for a value beyond full scale and for what the edition cannot hold
 */
export function writeComtrade(
  record: WrittenRecord,
  samples: readonly Float64Array[],
): { cfg: Uint8Array; dat: Uint8Array } {
  return { cfg: configurationBytes(record), dat: comtradeRows(record)(0, samples) };
}

/** The same as one file of the edition 2013 (.cff). */
export function writeSingleFile(record: WrittenRecord, samples: readonly Float64Array[]): Uint8Array {
  const rows = comtradeRows(record)(0, samples);
  const head = singleFileHead(record, rows.length);
  const bytes = new Uint8Array(head.length + rows.length);
  bytes.set(head);
  bytes.set(rows, head.length);
  return bytes;
}

/** The .cfg file. */
export function configurationBytes(record: WrittenRecord): Uint8Array {
  return new TextEncoder().encode(configurationText(record));
}

/** What stands before the rows of a .cff file. @param dataBytes of all rows; `rowBytes` × rows in binary */
export function singleFileHead(record: WrittenRecord, dataBytes: number): Uint8Array {
  if (record.edition !== 2013) throw new RangeError("the single file (.cff) exists from the edition of 2013 on");
  const data = record.kind === "ASCII" ? "DAT ASCII" : `DAT ${record.kind}: ${dataBytes}`;
  const sections = ["INF", "HDR", data].map((type) => `--- file type: ${type} ---\r\n`);
  return new TextEncoder().encode(`--- file type: CFG ---\r\n${configurationText(record)}${sections.join("")}`);
}

/** Bytes of one row of binary data. */
export function rowBytes({ kind, channels, statusChannels = [] }: WrittenRecord): number {
  const words = Math.ceil(statusChannels.length / STATUS_BITS);
  return ROW_HEAD + (kind === "BINARY" ? 2 : 4) * channels.length + 2 * words;
}

/**
 * Makes the rows of the data piece by piece, for records that are not held in memory: call it with the place of the
 * first sample of each piece and one array per channel. A gap between pieces shows in the sample numbers.
 */
export function comtradeRows(record: WrittenRecord): (first: number, samples: readonly Float64Array[]) => Uint8Array {
  if (record.edition !== 2013 && (record.kind === "BINARY32" || record.kind === "FLOAT32")) {
    throw new RangeError(`${record.kind} exists from the edition of 2013 on`);
  }
  const stampsPerSample = SECOND / record.samplesPerSecond / timeFactor(record);
  return rowEncoder(
    record,
    record.channels.map((channel) => numbersOf(record, channel)),
    stampsPerSample,
  );
}

/** Step between two numbers of a channel, in V or A at the primary side; 0 for FLOAT32. */
export function quantisationStep(record: WrittenRecord, channel: WrittenChannel): number {
  const { factor, perUnit } = numbersOf(record, channel);
  return record.kind === "FLOAT32" ? 0 : factor / perUnit;
}

function numbersOf({ kind }: WrittenRecord, channel: WrittenChannel): WrittenNumbers {
  const { name, fullScale, primary = 1, secondary = 1, side = "primary" } = channel;
  const unit = channel.unit ?? (channel.quantity === "voltage" ? "V" : "A");
  const perUnit = (side === "secondary" ? secondary / primary : 1) / UNIT_SCALE[unit];
  const largest = kind === "FLOAT32" ? fullScale * perUnit : LARGEST_NUMBER[kind];
  return { name, unit, perUnit, largest, factor: kind === "FLOAT32" ? 1 : (fullScale * perUnit) / largest };
}

/** A power of ten, so that the stamp of the last sample fits into 32 bits. */
function timeFactor({ length, samplesPerSecond }: WrittenRecord): number {
  let factor = 1;
  while (((length / samplesPerSecond) * SECOND) / factor > LARGEST_STAMP) factor *= 10;
  return factor;
}

function configurationText(record: WrittenRecord): string {
  const { edition, station, device, channels, statusChannels = [], start, utcOffset = 0 } = record;
  const analog = channels.map((channel, i) => {
    const { unit, factor, largest } = numbersOf(record, channel);
    const { primary = 1, secondary = 1, side = "primary", skewS = 0 } = channel;
    const [min, max] = record.kind === "FLOAT32" ? [-3.4028235e38, 3.4028235e38] : [-largest, largest];
    const fields = [
      i + 1,
      channel.name,
      channel.phase,
      "",
      unit,
      factor,
      0,
      Number((skewS * 1e6).toPrecision(12)),
      min,
      max,
    ];
    return edition === 1991 ? fields : [...fields, primary, secondary, side === "primary" ? "P" : "S"];
  });
  const status = statusChannels.map((name, i) => (edition === 1991 ? [i + 1, name, 0] : [i + 1, name, "", "", 0]));
  const stamp = (at: Instant) => [stampText(at + utcOffset, edition)];
  const lines: (string | number)[][] = [
    edition === 1991 ? [station, device] : [station, device, edition],
    [channels.length + status.length, `${channels.length}A`, `${status.length}D`],
    ...analog,
    ...status,
    [record.nominalFrequency],
    [1],
    [record.samplesPerSecond, record.length],
    stamp(start),
    stamp(record.trigger ?? start),
    [record.kind],
    ...(edition === 1991 ? [] : [[timeFactor(record)]]),
    ...(edition === 2013
      ? [
          [offsetText(utcOffset), offsetText(utcOffset)],
          [0, 0],
        ]
      : []),
  ];
  for (const text of [station, device, ...statusChannels, ...channels.flatMap((c) => [c.name, c.phase])]) {
    if (/[,\r\n]/.test(text)) throw new RangeError(`"${text}" has a comma or a line end, which COMTRADE cannot hold`);
  }
  return lines.map((fields) => `${fields.join(",")}\r\n`).join("");
}

function stampText(local: number, edition: Edition): string {
  const date = new Date(Math.floor(local / 1000));
  const two = (n: number) => String(n).padStart(2, "0");
  const [day, month, year] = [two(date.getUTCDate()), two(date.getUTCMonth() + 1), date.getUTCFullYear()];
  const micros = String(((local % SECOND) + SECOND) % SECOND).padStart(6, "0");
  const clock = `${date.toISOString().slice(11, 19)}.${micros}`;
  return edition === 1991 ? `${month}/${day}/${two(year % 100)},${clock}` : `${day}/${month}/${year},${clock}`;
}

function offsetText(offset: Duration): string {
  const size = Math.abs(offset);
  const minutes = Math.floor((size % HOUR) / MINUTE);
  const sign = offset < 0 ? "-" : offset > 0 ? "+" : "";
  return `${sign}${Math.floor(size / HOUR)}${minutes === 0 ? "" : `h${String(minutes).padStart(2, "0")}`}`;
}
