import { ROW_HEAD } from "./data-layout.js";
import type { WrittenRecord } from "./write.js";

export const STATUS_BITS = 16;

/** How the values of a channel become numbers: number = value × `perUnit` / `factor`, at most `largest`. */
export interface WrittenNumbers {
  readonly name: string;
  readonly unit: string;
  /** Written units per volt or ampere at the primary side. */
  readonly perUnit: number;
  readonly factor: number;
  readonly largest: number;
}

/** Missing-data codes of text by edition: 999999, 99999, an empty field. */
const MISSING_TEXT = { 1991: "999999", 1999: "99999", 2013: "" } as const;
const MISSING_16 = 0x8000;
const MISSING_16_1991 = 0xffff;
const MISSING_32 = -0x80000000;
const MISSING_FLOAT = -3.4028234663852886e38;

/** @param stampsPerSample time stamps count this much from one sample to the next */
export function rowEncoder(
  record: WrittenRecord,
  channels: readonly WrittenNumbers[],
  stampsPerSample: number,
): (first: number, samples: readonly Float64Array[]) => Uint8Array {
  const statusCount = record.statusChannels?.length ?? 0;
  const numberOf = (k: number, i: number, first: number, samples: readonly Float64Array[]) => {
    const { perUnit, factor, largest, name } = channels[k] as WrittenNumbers;
    const exact = ((samples[k]?.[i] ?? Number.NaN) * perUnit) / factor;
    const number = record.kind === "FLOAT32" ? exact : Math.round(exact);
    if (Math.abs(number) > largest) {
      throw new RangeError(`sample ${first + i} of "${name}", ${samples[k]?.[i]}, lies beyond full scale`);
    }
    return number;
  };
  const stampOf = (sample: number) => Math.round(sample * stampsPerSample);
  if (record.kind === "ASCII") {
    const status = ",0".repeat(statusCount);
    return (first, samples) => {
      const rows = Array.from({ length: samples[0]?.length ?? 0 }, (_, i) => {
        const values = channels.map((_, k) => {
          const number = numberOf(k, i, first, samples);
          return `,${Number.isNaN(number) ? MISSING_TEXT[record.edition] : number}`;
        });
        return `${first + i + 1},${stampOf(first + i)}${values.join("")}${status}\r\n`;
      });
      return new TextEncoder().encode(rows.join(""));
    };
  }
  const width = record.kind === "BINARY" ? 2 : 4;
  const rowSize = ROW_HEAD + width * channels.length + 2 * Math.ceil(statusCount / STATUS_BITS);
  return (first, samples) => {
    const rows = samples[0]?.length ?? 0;
    const view = new DataView(new ArrayBuffer(rows * rowSize));
    for (let i = 0, at = 0; i < rows; i++, at += rowSize) {
      view.setUint32(at, first + i + 1, true);
      view.setUint32(at + 4, stampOf(first + i), true);
      for (let k = 0, to = at + ROW_HEAD; k < channels.length; k++, to += width) {
        const number = numberOf(k, i, first, samples);
        const missing = Number.isNaN(number);
        if (record.kind === "BINARY") {
          view.setInt16(to, missing ? (record.edition === 1991 ? MISSING_16_1991 : MISSING_16) : number, true);
        } else if (record.kind === "BINARY32") view.setInt32(to, missing ? MISSING_32 : number, true);
        else view.setFloat32(to, missing ? MISSING_FLOAT : number, true);
      }
    }
    return new Uint8Array(view.buffer);
  };
}
