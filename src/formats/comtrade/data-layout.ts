import { LogError } from "../../errors.js";
import { say, type Text } from "../../sentence.js";
import type { Configuration, DataKind } from "./configuration.js";
import type { FileRemark } from "./file-remark.js";
import type { DataSection } from "./file-set.js";

/** How the rows of the data are stored. */
export type Layout = { readonly kind: "ASCII" } | BinaryLayout;

export interface BinaryLayout {
  readonly kind: Exclude<DataKind, "ASCII">;
  /** Bytes from one row to the next. */
  readonly rowSize: number;
  readonly rows: number;
}

/** Sample number and time stamp, four bytes each, stand before the values of a binary row. */
export const ROW_HEAD = 8;
const CHANNELS_PER_STATUS_WORD = 16;
const CHECKED_ROWS = 12;
/** Status words that are tried where the rows do not fit the number of status channels. */
const MOST_STATUS_WORDS = 64;

/** Bytes of one value. */
export function widthOf(kind: BinaryLayout["kind"]): 2 | 4 {
  return kind === "BINARY" ? 2 : 4;
}

/**
 * Finds the layout of the data: the stated one where its rows count up, else the one that the sample numbers show
 * (text instead of binary numbers, another number of status channels, the other width), with a remark. What is left
 * behind the last whole row is dropped with a remark.
 * @throws LogError if no layout fits, or if one fits that leaves the kind of numbers open.
 */
export async function findLayout(
  configuration: Configuration,
  data: DataSection,
): Promise<{ layout: Layout; remarks: FileRemark[] }> {
  const { kind } = configuration;
  const { name } = data.file;
  if (data.size === 0) throw new LogError(name, `byte ${data.offset}`, "it holds no rows");
  if (await isText(data)) {
    const remarks =
      kind === "ASCII" ? [] : [{ file: name, text: say`the data are text although the configuration says ${kind}.` }];
    return { layout: { kind: "ASCII" }, remarks };
  }
  const words = Math.ceil(configuration.statusCount / CHANNELS_PER_STATUS_WORD);
  const stated = kind === "ASCII" ? "BINARY" : kind;
  const rowSize = (width: number, statusWords: number) =>
    ROW_HEAD + width * configuration.analog.length + 2 * statusWords;
  const own = rowSize(widthOf(stated), words);
  const remarks: FileRemark[] = [];
  const remark = (text: Text) => remarks.push({ file: name, text });
  if (kind === "ASCII") remark(say`the data are binary although the configuration says ASCII.`);
  const counts = await countsUp(data, own);
  const other = counts ? undefined : await otherLayout(data, stated, words, rowSize);
  let found: { kind: BinaryLayout["kind"]; rowSize: number } = { kind: stated, rowSize: own };
  if (other !== undefined) {
    found = { kind: kindOf(other, stated, data, remarks), rowSize: rowSize(other.width, other.words) };
    if (other.words !== words) {
      remark(say`the rows hold ${other.words} words of status channels, not ${words} as the configuration says.`);
    }
  } else if (data.size < own || (!counts && (kind === "ASCII" || data.size % own !== 0))) {
    throw new LogError(
      name,
      `byte ${data.offset}`,
      `the rows cannot be found: by the configuration each has ${own} bytes, but the sample numbers do not count up at that distance`,
    );
  }
  const tail = data.size % found.rowSize;
  if (tail > 0) remark(say`${tail} bytes behind the last whole row are left out; the file is cut off.`);
  return { layout: { ...found, rows: Math.floor(data.size / found.rowSize) }, remarks };
}

/** The kind of numbers in a layout that the sample numbers showed. */
function kindOf(
  other: OtherLayout,
  stated: BinaryLayout["kind"],
  data: DataSection,
  remarks: FileRemark[],
): BinaryLayout["kind"] {
  if (other.width === widthOf(stated)) return stated;
  if (other.width === 4) {
    throw new LogError(
      data.file.name,
      `byte ${data.offset}`,
      "the rows hold four bytes per value, but the configuration says otherwise; write BINARY32 or FLOAT32 there, whichever it is",
    );
  }
  remarks.push({
    file: data.file.name,
    text: say`the rows hold two bytes per value, so they are read as BINARY, not ${stated}.`,
  });
  return "BINARY";
}

interface OtherLayout {
  readonly width: 2 | 4;
  readonly words: number;
}

/**
 * The only layout with one fact changed at which the sample numbers count up; undefined if there is none or several.
 * Wider values are found before more status channels: in doubt the user is asked.
 */
async function otherLayout(
  data: DataSection,
  stated: BinaryLayout["kind"],
  words: number,
  rowSize: (width: number, words: number) => number,
): Promise<OtherLayout | undefined> {
  const width = widthOf(stated);
  const candidates: OtherLayout[] = [{ width: width === 2 ? 4 : 2, words }];
  for (let other = 0; other <= MOST_STATUS_WORDS; other++)
    if (other !== words) candidates.push({ width, words: other });
  const fitting: OtherLayout[] = [];
  for (const candidate of candidates) {
    const size = rowSize(candidate.width, candidate.words);
    if (data.size >= 3 * size && (await countsUp(data, size))) fitting.push(candidate);
  }
  const [first] = fitting;
  return fitting.length === 1 || (width === 2 && first?.width === 4) ? first : undefined;
}

/** Whether the sample numbers at this distance rise, mostly by one. */
async function countsUp(data: DataSection, rowSize: number): Promise<boolean> {
  const rows = Math.min(CHECKED_ROWS, Math.floor(data.size / rowSize));
  if (rows === 0) return false;
  let [last, ones] = [Number.NaN, 0];
  for (let row = 0; row < rows; row++) {
    const bytes = await data.file.read(data.offset + row * rowSize, 4);
    const number = bytes.length < 4 ? Number.NaN : new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
    if (row > 0 && !(number > last)) return false;
    if (number === last + 1) ones++;
    last = number;
  }
  return rows === 1 ? last <= 1 : ones >= (rows - 1) / 2;
}

/** Text has no zero bytes and holds a comma among digits; the first row of binary data begins with a small number. */
async function isText(data: DataSection): Promise<boolean> {
  const head = await data.file.read(data.offset, Math.min(256, data.size));
  const isPrinted = (byte: number) => (byte >= 0x20 && byte <= 0x7e) || [0x09, 0x0a, 0x0d, 0x1a].includes(byte);
  return head.every(isPrinted) && /\d\s*,/.test(String.fromCharCode(...head));
}
