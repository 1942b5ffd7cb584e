import { openLogs } from "../../../src/formats/index.js";
import type { Recording } from "../../../src/recording/recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import type { WaveformSource } from "../../../src/recording/waveform.js";
import { logFile } from "../csv/log.js";

export interface Table {
  readonly rate: number;
  readonly rows: number;
  /** Cell of the time of sample i; none where undefined. */
  readonly time?: (i: number) => string;
  readonly header?: string;
  /** Samples that are left out. */
  readonly lost?: (i: number) => boolean;
  readonly from?: number;
}

/** Hundredths of a volt of the two voltages and thousandths of an ampere of the current at sample i: whole numbers. */
export function digitsAt(i: number, rate: number): [number, number, number] {
  const at = (amplitude: number, degrees: number) =>
    Math.round(amplitude * Math.sin((2 * Math.PI * 50 * i) / rate - (degrees * Math.PI) / 180)) + 0;
  return [at(32500, 0), at(32400, 120), at(14142, 30)];
}

export const HEADER = "u L1 [V],u L2 [V],i L1 [A]";

/** Samples as a plain CSV: the time first, where there is one, then two voltages and a current. */
export function tableText({ rate, rows, time, header, lost = () => false, from = 0 }: Table): string {
  const lines = [header ?? (time === undefined ? HEADER : `Time [s],${HEADER}`)];
  for (let i = from; i < from + rows; i++) {
    if (lost(i)) continue;
    const [a, b, c] = digitsAt(i, rate);
    const values = [decimal(a, 2), decimal(b, 2), decimal(c, 3)];
    lines.push([...(time === undefined ? [] : [time(i)]), ...values].join(","));
  }
  return `${lines.join("\n")}\n`;
}

/** digits / 10^places as text. */
export function decimal(digits: number, places: number): string {
  const text = String(Math.abs(digits)).padStart(places + 1, "0");
  return `${digits < 0 ? "-" : ""}${text.slice(0, -places)}.${text.slice(-places)}`;
}

export function open(text: string | Uint8Array, setup: GivenSetup = {}, name = "log.csv"): Promise<Recording> {
  return openLogs([logFile(text, name)], setup);
}

export function onlySource({ waveforms, kind }: Recording): WaveformSource {
  if (kind !== "waveforms" || waveforms.length !== 1) throw new Error(`${kind}, ${waveforms.length} sources`);
  return waveforms[0] as WaveformSource;
}

/** All samples of a source: NaN in gaps. Fails where blocks step back or hold arrays of unequal length. */
export async function samplesOf(source: WaveformSource): Promise<Float64Array[]> {
  const all = source.channels.map(() => new Float64Array(source.length).fill(Number.NaN));
  let next = 0;
  for await (const { first, samples } of source.blocks()) {
    if (first < next) throw new Error(`a block begins at ${first}, before ${next}`);
    if (samples.length !== all.length || samples.some((s) => s.length !== samples[0]?.length))
      throw new Error("lengths");
    for (const [c, values] of samples.entries()) all[c]?.set(values, first);
    next = first + (samples[0]?.length ?? 0);
  }
  if (next !== source.length) throw new Error(`${next} samples where ${source.length} are promised`);
  return all;
}

/** What the samples of `tableText` must be: the doubles nearest to the written decimals. */
export function expected(rate: number, length: number, lost: (i: number) => boolean = () => false): Float64Array[] {
  return [0, 1, 2].map((c) =>
    Float64Array.from({ length }, (_, i) =>
      lost(i) ? Number.NaN : Number(decimal(digitsAt(i, rate)[c] as number, c === 2 ? 3 : 2)) + 0,
    ),
  );
}

/** The sentence in which opening or reading ends. */
export async function failure(text: string | Uint8Array, setup: GivenSetup = {}): Promise<string> {
  try {
    await samplesOf(onlySource(await open(text, setup)));
    return "no error";
  } catch (error) {
    return `${(error as Error).name}: ${(error as Error).message}`;
  }
}
