import { expect } from "vitest";
import { openComtrade } from "../../../src/formats/comtrade/index.js";
import type { WrittenChannel, WrittenRecord } from "../../../src/formats/comtrade/write.js";
import { writeComtrade } from "../../../src/formats/comtrade/write.js";
import type { LogFile } from "../../../src/recording/log-file.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import type { WaveformSource } from "../../../src/recording/waveform.js";

export const START = Date.UTC(2026, 2, 3, 10, 20, 30) * 1000 + 123_456;

export function memoryFile(name: string, content: Uint8Array | string): LogFile {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return { name, size: bytes.length, read: async (offset, length) => bytes.subarray(offset, offset + length) };
}

export const VOLTAGES: readonly WrittenChannel[] = ["A", "B", "C"].map((phase) => ({
  name: `V${phase}`,
  quantity: "voltage",
  phase,
  fullScale: 500,
}));

export function record(changes: Partial<WrittenRecord> = {}): WrittenRecord {
  return {
    station: "Mill Lane",
    device: "Recorder 1",
    edition: 1999,
    kind: "BINARY",
    channels: VOLTAGES,
    samplesPerSecond: 3200,
    length: 640,
    start: START,
    nominalFrequency: 50,
    ...changes,
  };
}

/** Three-phase sines of 230 V, one array per channel; channel k lags by k thirds of a period. */
export function sines({ channels, length, samplesPerSecond }: WrittenRecord, frequency = 50): Float64Array[] {
  return channels.map((_, k) =>
    Float64Array.from(
      { length },
      (_, i) => 230 * Math.SQRT2 * Math.sin(2 * Math.PI * ((frequency * i) / samplesPerSecond - k / 3)),
    ),
  );
}

export interface Texts {
  readonly cfg?: (text: string) => string;
  readonly dat?: (bytes: Uint8Array) => Uint8Array;
  readonly setup?: GivenSetup;
  readonly blockBytes?: number;
  readonly samples?: readonly Float64Array[];
}

/** Writes a record, changes its files, and opens them. */
export async function reopen(changes: Partial<WrittenRecord>, { cfg, dat, setup, blockBytes, samples }: Texts = {}) {
  const written = record(changes);
  const pair = writeComtrade(written, samples ?? sines(written));
  const text = new TextDecoder().decode(pair.cfg);
  const files = [
    memoryFile("mill.cfg", cfg === undefined ? text : cfg(text)),
    memoryFile("mill.dat", dat === undefined ? pair.dat : dat(pair.dat)),
  ];
  return openComtrade(files, setup ?? {}, undefined, blockBytes);
}

/** All samples of a source, NaN in gaps. */
export async function samplesOf(source: WaveformSource | undefined): Promise<Float64Array[]> {
  if (source === undefined) throw new Error("there is no source");
  const all = source.channels.map(() => new Float64Array(source.length).fill(Number.NaN));
  for await (const { first, samples } of source.blocks()) {
    for (const [k, values] of samples.entries()) all[k]?.set(values, first);
  }
  return all;
}

/** Largest difference of two arrays; infinite where one is NaN and the other is not, or where they differ in length. */
export function largestDifference(a: Float64Array | undefined, b: Float64Array | undefined): number {
  if (a === undefined || b === undefined || a.length !== b.length) return Number.POSITIVE_INFINITY;
  return a.reduce((worst, value, i) => {
    const other = b[i] as number;
    if (Number.isNaN(value) && Number.isNaN(other)) return worst;
    const difference = Math.abs(value - other);
    return Number.isNaN(difference) ? Number.POSITIVE_INFINITY : Math.max(worst, difference);
  }, 0);
}

/** Replaces a whole line of a configuration, counted from 1. */
export function withLine(
  number: number,
  line: string | ((old: string) => string | undefined),
): (text: string) => string {
  return (text) =>
    text
      .split("\r\n")
      .flatMap((old, i) => (i !== number - 1 ? [old] : typeof line === "string" ? [line] : (line(old) ?? [])))
      .join("\r\n");
}

/** Of the numbers that `record` writes as BINARY. */
export const STEP = 500 / 32_767;
/** Where `record` writes what. */
export const LINES = {
  heading: 1,
  counts: 2,
  voltage1: 3,
  frequency: 6,
  rateCount: 7,
  rate: 8,
  first: 9,
  trigger: 10,
  kind: 11,
  factor: 12,
};

/** Opens a record whose files deviate, and expects what the sound one gives; without `remark` there must be none. */
export async function readAs(changes: Parameters<typeof reopen>[0], texts: Texts, remark?: RegExp) {
  const opened = await reopen(changes, texts);
  expect(opened.sources).toHaveLength(1);
  const [source] = opened.sources;
  expect(source).toMatchObject({ start: START, samplesPerSecond: 3200, length: 640 });
  expect(source?.channels.map(({ phase }) => phase)).toEqual(["L1", "L2", "L3"]);
  const read = await samplesOf(source);
  const truth = sines(record(changes));
  for (const [k, values] of read.entries()) expect(largestDifference(values, truth[k])).toBeLessThan(STEP);
  if (remark === undefined) expect(opened.remarks.map(String)).toEqual([]);
  else expect(opened.remarks.join("\n")).toMatch(remark);
  return opened;
}

export const field = (index: number, text: string) => (line: string) =>
  line
    .split(",")
    .map((old, i) => (i === index ? text : old))
    .join(",");
export const eachVoltage = (change: (line: string) => string) => (text: string) =>
  [0, 1, 2].reduce((t, k) => withLine(LINES.voltage1 + k, change)(t), text);
/** Changes every row of text; undefined takes it out. */
export const rows = (change: (row: string, i: number) => string | undefined) => (dat: Uint8Array) =>
  new TextEncoder().encode(
    new TextDecoder()
      .decode(dat)
      .split("\r\n")
      .flatMap((row, i) => (row === "" ? [] : [change(row, i) ?? []].flat()))
      .map((r) => `${r}\r\n`)
      .join(""),
  );
/** Changes sample number (at 0) or time stamp (at 4) of every binary row. */
export const rowHeads =
  (at: 0 | 4, value: (i: number) => number, rowSize = 14) =>
  (dat: Uint8Array) => {
    const changed = dat.slice();
    const view = new DataView(changed.buffer);
    for (let i = 0; i * rowSize < dat.length; i++) view.setUint32(i * rowSize + at, value(i), true);
    return changed;
  };
