import { LogError } from "../../errors.js";
import type { Progress } from "../../recording/log-file.js";
import { say } from "../../sentence.js";
import {
  countFields,
  fieldEnd,
  isSeparator,
  lineEnd,
  NO_NUMBER,
  readNumber,
  trimmedEnd,
  wholeLines,
} from "./ascii-rows.js";
import { type BinaryLayout, ROW_HEAD } from "./data-layout.js";
import type { FileRemark } from "./file-remark.js";
import type { DataSection } from "./file-set.js";
import { type RowIndex, RowTracker } from "./row-index.js";
import { type StampSteps, StampTracker } from "./timestamps.js";

/** What one pass over the data shows: where rows stand, which are lost, how the time stamps rise. */
export interface DataFacts {
  readonly index: RowIndex;
  readonly steps: StampSteps | undefined;
  readonly remarks: readonly FileRemark[];
}

const HEAD_ROWS = 4096;

/**
 * Indexes binary rows. Where first and last sample number show that no row is lost, only the time stamps of the first
 * rows are looked at, unless `allStamps` asks for all.
 */
export async function scanBinary(
  data: DataSection,
  { rowSize, rows }: BinaryLayout,
  allStamps: boolean,
  blockBytes: number,
  progress: Progress | undefined,
): Promise<DataFacts> {
  const pass = async (useNumbers: boolean, count: number) => {
    const [tracker, stamps] = [new RowTracker(useNumbers, []), new StampTracker()];
    const perBlock = Math.max(1, Math.floor(blockBytes / rowSize));
    for (let row = 0; row < count; row += perBlock) {
      const offset = data.offset + row * rowSize;
      const bytes = await data.file.read(offset, Math.min(perBlock, count - row) * rowSize);
      const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
      for (let at = 0; at + ROW_HEAD <= bytes.length; at += rowSize) {
        const position = tracker.add(view.getUint32(at, true), offset + at, offset + at + rowSize, 0);
        stamps.add(view.getUint32(at + 4, true), position);
      }
      if (count === rows) progress?.(`indexing ${data.file.name}`, Math.min(1, (row + perBlock) / rows));
    }
    return { index: tracker.finish(), steps: stamps.finish() };
  };
  const numberAt = async (row: number) => {
    const bytes = await data.file.read(data.offset + row * rowSize, 4);
    return bytes.length < 4 ? Number.NaN : new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  };
  const whole = (await numberAt(rows - 1)) - (await numberAt(0)) === rows - 1;
  if (whole && !allStamps) {
    const { steps } = await pass(false, Math.min(rows, HEAD_ROWS));
    const end = data.offset + rows * rowSize;
    const run = { position: 0, rows, offset: data.offset, end, line: 0 };
    return { index: { runs: [run], length: rows, lost: 0, numbersUsed: true }, steps, remarks: [] };
  }
  const counted = await pass(true, rows);
  const { index, steps } = counted.index === undefined ? await pass(false, rows) : counted;
  if (index === undefined) throw new LogError(data.file.name, `byte ${data.offset}`, "it holds no rows");
  return { index, steps, remarks: lossRemarks(data, index) };
}

/**
 * Indexes text rows. Blank lines are passed over; a row with fewer than 2 + `analog` columns, or without a number in
 * its first two, leaves its place empty, as does a last row without line end that lacks columns (2 + `all`).
 * @param breaks places on the sample axis at which a new run must begin
 * @throws LogError if there is no row, or if more than 65 536 rows cannot be read
 */
export async function scanAscii(
  data: DataSection,
  columns: { readonly analog: number; readonly all: number },
  breaks: readonly number[],
  blockBytes: number,
  progress: Progress | undefined,
): Promise<DataFacts> {
  const pass = async (useNumbers: boolean) => {
    const [tracker, stamps] = [new RowTracker(useNumbers, breaks), new StampTracker()];
    const end = data.offset + data.size;
    let [line, bad, firstBad] = [0, 0, 0];
    scan: for await (const { bytes, offset } of wholeLines(data.file, data.offset, end, blockBytes)) {
      for (let from = 0, next = 0; from < bytes.length; from = next) {
        next = lineEnd(bytes, from);
        line++;
        const to = trimmedEnd(bytes, from, next);
        if (to === from) continue;
        if (isSeparator(bytes, from, to)) break scan;
        const isCut = next === bytes.length && bytes[next - 1] !== 10 && offset + next === end;
        const needed = 2 + (isCut ? columns.all : columns.analog);
        const numberEnd = fieldEnd(bytes, from, to);
        const number = readNumber(bytes, from, numberEnd);
        const stamp = readNumber(bytes, numberEnd + 1, fieldEnd(bytes, numberEnd + 1, to));
        if (countFields(bytes, from, to) < needed || number === NO_NUMBER || stamp === NO_NUMBER) {
          bad++;
          firstBad ||= line;
          tracker.skip();
        } else stamps.add(stamp, tracker.add(number, offset + from, offset + next, line));
      }
      progress?.(`indexing ${data.file.name}`, (offset + bytes.length - data.offset) / data.size);
    }
    return { index: tracker.finish(), steps: stamps.finish(), bad, firstBad };
  };
  const counted = await pass(true);
  const { index, steps, bad, firstBad } = counted.index === undefined ? await pass(false) : counted;
  const { name } = data.file;
  if (index === undefined || index.length === 0) {
    throw new LogError(
      name,
      `line ${Math.max(1, firstBad)}`,
      `no rows with ${2 + columns.analog} columns of numbers, as the configuration promises, can be found`,
    );
  }
  const remarks = lossRemarks(data, index);
  if (bad > 0) {
    const text =
      bad === 1
        ? say`line ${firstBad} is cut off or garbled and left out.`
        : say`${bad} lines, the first of them line ${firstBad}, are cut off or garbled and left out.`;
    remarks.push({ file: name, text });
  }
  return { index, steps, remarks };
}

function lossRemarks({ file: { name: file } }: DataSection, { lost, numbersUsed }: RowIndex): FileRemark[] {
  if (!numbersUsed)
    return [{ file, text: say`the sample numbers do not count the rows; each row is taken to follow the one before.` }];
  return lost === 0 ? [] : [{ file, text: say`${lost} samples are missing between the rows, by the sample numbers.` }];
}
