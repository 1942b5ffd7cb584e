import { LogError } from "../../errors.js";
import type { Edition } from "./configuration.js";
import { type BinaryLayout, ROW_HEAD } from "./data-layout.js";
import type { DataSection } from "./file-set.js";
import type { Run } from "./row-index.js";
import type { ReadChannel, RowBlock } from "./rows.js";

const IS_LITTLE_ENDIAN = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;
const MISSING_16 = -0x8000;
const MISSING_32 = -0x80000000;
/** The most negative number of single precision, FF7FFFFF. */
const MISSING_FLOAT = -3.4028234663852886e38;
/** Edition 1991 marks missing values by FFFF, which is also −1: it counts as missing only this far from both neighbours. */
const FAR_1991 = 100;

/**
 * Binary rows, see `readRows`. Missing are 8000 (BINARY), 80000000 (BINARY32), FF7FFFFF and whatever is not finite
 * (FLOAT32). Edition 1991: FFFF where its neighbours in time are far from −1 and on one side of it; a channel whose range
 * runs from 0 to above 32767 holds unsigned numbers, of which FFFF is missing.
 */
export async function* readBinaryRows(
  data: DataSection,
  { kind, rowSize }: BinaryLayout,
  edition: Edition,
  run: Run,
  channels: readonly ReadChannel[],
  blockBytes: number,
): AsyncGenerator<RowBlock> {
  const perBlock = Math.max(1, Math.min(run.rows, Math.floor(blockBytes / rowSize)));
  const arrays = channels.map(() => new Float64Array(perBlock));
  const neighbours = kind === "BINARY" && edition === 1991 ? 1 : 0;
  for (let row = 0; row < run.rows; row += perBlock) {
    const rows = Math.min(perBlock, run.rows - row);
    const before = row > 0 ? neighbours : 0;
    const after = row + rows < run.rows ? neighbours : 0;
    const offset = run.offset + (row - before) * rowSize;
    const length = (before + rows + after) * rowSize;
    const bytes = await data.file.read(offset, length);
    if (bytes.length < length) {
      throw new LogError(data.file.name, `byte ${offset + bytes.length}`, "the file became shorter while it was read");
    }
    const samples = rows === perBlock ? arrays : arrays.map((array) => array.subarray(0, rows));
    if (kind === "BINARY") decode16(bytes, rowSize, before, channels, samples, edition);
    else decode32(bytes, rowSize, kind, channels, samples);
    yield { row, samples };
  }
}

function decode16(
  bytes: Uint8Array,
  rowSize: number,
  before: number,
  channels: readonly ReadChannel[],
  samples: readonly Float64Array[],
  edition: Edition,
): void {
  const numbers = int16View(bytes);
  const stride = rowSize >> 1;
  for (const [k, { position, a, b, min, max }] of channels.entries()) {
    const out = samples[k] as Float64Array;
    const first = before * stride + (ROW_HEAD >> 1) + position - 1;
    if (edition === 1991 && min >= 0 && max > 0x7fff) {
      for (let i = 0, at = first; i < out.length; i++, at += stride) {
        const number = (numbers[at] as number) & 0xffff;
        out[i] = number === 0xffff ? Number.NaN : a * number + b;
      }
      continue;
    }
    for (let i = 0, at = first; i < out.length; i++, at += stride) {
      const number = numbers[at] as number;
      out[i] = number === MISSING_16 ? Number.NaN : a * number + b;
    }
    if (edition === 1991) markMissing1991(numbers, first, stride, out);
  }
}

function markMissing1991(numbers: Int16Array, first: number, stride: number, out: Float64Array): void {
  for (let i = 0, at = first; i < out.length; i++, at += stride) {
    if (numbers[at] !== -1) continue;
    const [last, next] = [numbers[at - stride], numbers[at + stride]];
    if (last === undefined || next === undefined || at < stride) continue;
    const near = Math.min(Math.abs(last + 1), Math.abs(next + 1));
    if (last > -1 === next > -1 && near > FAR_1991 + Math.abs(next - last)) out[i] = Number.NaN;
  }
}

function decode32(
  bytes: Uint8Array,
  rowSize: number,
  kind: "BINARY32" | "FLOAT32",
  channels: readonly ReadChannel[],
  samples: readonly Float64Array[],
): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  for (const [k, { position, a, b }] of channels.entries()) {
    const out = samples[k] as Float64Array;
    const first = ROW_HEAD + 4 * (position - 1);
    if (kind === "BINARY32") {
      for (let i = 0, at = first; i < out.length; i++, at += rowSize) {
        const number = view.getInt32(at, true);
        out[i] = number === MISSING_32 ? Number.NaN : a * number + b;
      }
      continue;
    }
    for (let i = 0, at = first; i < out.length; i++, at += rowSize) {
      const number = view.getFloat32(at, true);
      out[i] = Number.isFinite(number) && number !== MISSING_FLOAT ? a * number + b : Number.NaN;
    }
  }
}

/** The bytes as numbers of 16 bits, without a copy where the machine allows. */
function int16View(bytes: Uint8Array): Int16Array {
  if (IS_LITTLE_ENDIAN) {
    const aligned = bytes.byteOffset % 2 === 0 ? bytes : bytes.slice();
    return new Int16Array(aligned.buffer, aligned.byteOffset, aligned.length >> 1);
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  return Int16Array.from({ length: bytes.length >> 1 }, (_, i) => view.getInt16(2 * i, true));
}
