import { LogError } from "../../errors.js";
import { say, type Text } from "../../sentence.js";
import { isShorter, type Layout } from "./layout.js";
import { CR, cellText, type HeadRecord, LF, lineEnds, splitRecord, width } from "./records.js";
import { type RowForm, SKIP } from "./row-form.js";
import type { RowReader } from "./row-reader.js";
import type { RowStore } from "./row-store.js";
import type { Head, TextSource } from "./text-source.js";

const LONGEST_ROW = 4 * 1024 * 1024;

/** Takes row after row out of the blocks, and deals with rows that are no data. */
export class RowLoop {
  readonly #reader: RowReader;
  readonly #store: RowStore;
  readonly #form: RowForm;
  readonly #layout: Layout<unknown>;
  readonly #headers: ReadonlySet<string>;
  #repeatedHeaders = 0;
  #cutOff: string | undefined;

  constructor(
    reader: RowReader,
    store: RowStore,
    form: RowForm,
    layout: Layout<unknown>,
    headers: ReadonlySet<string>,
  ) {
    this.#reader = reader;
    this.#store = store;
    this.#form = form;
    this.#layout = layout;
    this.#headers = headers;
  }

  /** Reads all rows into the store. */
  async run(source: TextSource, head: Head): Promise<void> {
    const portions = this.portions(source, head);
    for (let next = await portions.next(); next.done !== true; ) next = await portions.next();
  }

  /** Reads block after block of the text; behind each the store may be emptied. */
  async *portions({ blocks }: TextSource, head: Head): AsyncGenerator<void> {
    let { bytes, length: end, complete: final } = head;
    let at = this.#layout.dataOffset;
    for (;;) {
      at = this.#rows(bytes, at, end, final);
      yield;
      if (final) return;
      const rest = end - at;
      if (rest > LONGEST_ROW) {
        throw new LogError(
          this.#form.file,
          `line ${this.#reader.line}`,
          "the row does not end within 4 MB: is a quote opened and never closed?",
        );
      }
      const { value, done } = await blocks.next();
      final = done === true;
      const block = done === true ? new Uint8Array(0) : value;
      const room = rest + block.length + 1;
      const larger = room > bytes.length ? new Uint8Array(room) : bytes;
      if (larger === bytes) bytes.copyWithin(0, at, end);
      else larger.set(bytes.subarray(at, end));
      larger.set(block, rest);
      [bytes, at, end] = [larger, 0, rest + block.length];
    }
  }

  /** Reads all rows that are complete; returns where the first one that is not begins. */
  #rows(bytes: Uint8Array, at: number, end: number, final: boolean): number {
    bytes[end] = LF;
    const unended = final ? unendedFrom(bytes, end) : end;
    while (at < end) {
      const byte = bytes[at];
      if (byte === LF || byte === CR) {
        if (byte === CR && at + 1 >= end && !final) return at;
        at += byte === CR && bytes[at + 1] === LF && at + 1 < end ? 2 : 1;
        this.#reader.line++;
        continue;
      }
      const next = at >= unended ? this.#lastRow(bytes, at, end) : this.#row(bytes, at, end, final);
      if (next < 0) return at;
      at = next;
    }
    return at;
  }

  /** A last line that no line feed ends: the log may have broken off in it. */
  #lastRow(bytes: Uint8Array, at: number, end: number): number {
    if (!this.#isCutOff(bytes, at, end)) {
      try {
        return this.#row(bytes, at, end, true);
      } catch (error) {
        if (this.#store.isUnused) throw error;
      }
    }
    this.#cutOff = `line ${this.#reader.line}`;
    return end;
  }

  #row(bytes: Uint8Array, at: number, end: number, final: boolean): number {
    try {
      return this.#reader.readRow(bytes, at, end, final);
    } catch (error) {
      const cells: number[] = [];
      const next = splitRecord(bytes, at, end, this.#form.delimiter, final, cells);
      if (next < 0) {
        if (final) throw error;
        return -1;
      }
      const record: HeadRecord = { line: this.#reader.line, from: at, to: next, cells };
      const texts = textsOf(bytes, record);
      const isHeader = this.#headers.has(texts.join("\n"));
      if (!isHeader && texts.some((text) => text !== "")) throw error;
      if (isHeader) this.#repeatedHeaders++;
      this.#reader.line += Math.max(1, lineEnds(bytes, at, next));
      return next;
    }
  }

  /** The last line, not ended by a line feed, is cut off if cells are missing or its last cell lacks characters. */
  #isCutOff(bytes: Uint8Array, at: number, end: number): boolean {
    const { leastColumns, delimiter, kinds, decimal } = this.#form;
    const cells: number[] = [];
    const ended = splitRecord(bytes, at, end, delimiter, true, cells) >= 0;
    if (!ended || cells.length < 2 * leastColumns) return true;
    if (kinds[leastColumns - 1] === SKIP || cells.length > 2 * leastColumns) return false;
    const record = { line: this.#reader.line, from: at, to: end, cells };
    return isShorter(cellText(bytes, record, leastColumns - 1), this.#layout.lastCell, decimal);
  }

  remarks(file: string): Text[] {
    const { midnights } = this.#reader.stamps;
    const remarks: Text[] = [];
    if (this.#cutOff !== undefined)
      remarks.push(say`${file}, ${this.#cutOff}: the last line is cut off and was left out`);
    if (this.#repeatedHeaders > 0)
      remarks.push(say`${file}: the header is repeated ${times(this.#repeatedHeaders)} among the rows`);
    if (midnights > 0)
      remarks.push(say`${file}: a stamp without a time of day was read as midnight (${times(midnights)})`);
    return remarks;
  }
}

function times(n: number): Text {
  return n === 1 ? say`once` : say`${n} times`;
}

/** Where the last line begins, if no line feed ends it; else `end`. */
function unendedFrom(bytes: Uint8Array, end: number): number {
  return end === 0 ? 0 : 1 + Math.max(bytes.lastIndexOf(LF, end - 1), bytes.lastIndexOf(CR, end - 1));
}

/** The texts of the header's rows, to know them when a log repeats them. */
export function headerTexts(head: Uint8Array, { header }: Layout<unknown>): ReadonlySet<string> {
  return new Set(header.records.map((record) => textsOf(head, record).join("\n")));
}

function textsOf(bytes: Uint8Array, record: HeadRecord): string[] {
  return Array.from({ length: width(record) }, (_, c) => cellText(bytes, record, c));
}
