import { LogError } from "../../errors.js";
import { fieldEnd, lineEnd, NO_NUMBER, readNumber, trimmedEnd, wholeLines } from "./ascii-rows.js";
import type { DataSection } from "./file-set.js";
import type { Run } from "./row-index.js";
import type { ReadChannel, RowBlock } from "./rows.js";
import { quoted } from "./text.js";

/** Numbers that mark a missing value in text: 99999 (edition 1999) and 999999 (1991), unless the range reaches them. */
const CODES = [99_999, 999_999] as const;

/** Rows of text, see `readRows`. A value of 99999 or 999999 is missing unless the stated range of the channel holds it. */
export async function* readAsciiRows(
  data: DataSection,
  analogCount: number,
  run: Run,
  channels: readonly ReadChannel[],
  blockBytes: number,
): AsyncGenerator<RowBlock> {
  const wanted = new Int32Array(analogCount).fill(-1);
  for (const [k, channel] of channels.entries()) wanted[channel.position - 1] = k;
  const columns = channels.reduce((last, { position }) => Math.max(last, position), 0);
  const [missing, missing1991] = CODES.map((code) => channels.map(({ max }) => (max >= code ? Number.NaN : code))) as [
    number[],
    number[],
  ];
  const capacity = Math.min(run.rows, Math.max(1, Math.ceil(blockBytes / (2 * (2 + analogCount)))));
  const arrays = channels.map(() => new Float64Array(capacity));
  let [row, filled, line] = [0, 0, run.line];

  const readRow = (bytes: Uint8Array, from: number, to: number) => {
    let at = fieldEnd(bytes, fieldEnd(bytes, from, to) + 1, to) + 1;
    for (let column = 0; column < columns; column++) {
      const end = fieldEnd(bytes, at, to);
      const k = wanted[column] as number;
      if (k >= 0) {
        const number = readNumber(bytes, at, end);
        if (number === NO_NUMBER) {
          const text = quoted(String.fromCharCode(...bytes.subarray(at, Math.min(end, at + 60))));
          throw new LogError(data.file.name, `line ${line}`, `${text} in column ${column + 3} is no number`);
        }
        const { a, b } = channels[k] as ReadChannel;
        (arrays[k] as Float64Array)[filled] =
          number === missing[k] || number === missing1991[k] ? Number.NaN : a * number + b;
      }
      at = end + 1;
    }
  };

  for await (const { bytes } of wholeLines(data.file, run.offset, run.end, blockBytes)) {
    for (let from = 0, next = 0; from < bytes.length && row + filled < run.rows; from = next, line++) {
      next = lineEnd(bytes, from);
      const to = trimmedEnd(bytes, from, next);
      if (to === from) continue;
      readRow(bytes, from, to);
      filled++;
      if (filled === capacity) {
        yield { row, samples: arrays };
        row += filled;
        filled = 0;
      }
    }
    if (filled > 0) {
      yield { row, samples: arrays.map((array) => array.subarray(0, filled)) };
      row += filled;
      filled = 0;
    }
  }
  if (row < run.rows) throw new LogError(data.file.name, `line ${line}`, "the file became shorter while it was read");
}
