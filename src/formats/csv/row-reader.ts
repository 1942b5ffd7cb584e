import { LogError } from "../../errors.js";
import { isMissing, plainNumber, readFlag, scaledNumber } from "./number-text.js";
import { CR, LF, lineEnds, QUOTE, shown } from "./records.js";
import { FLAG, NUMBER, type RowForm, SKIP } from "./row-form.js";
import { FAST_DIGITS, type NumberColumn, type RowStore } from "./row-store.js";
import { StampCells } from "./stamp-cells.js";
import { decodeText } from "./text-source.js";

const MEND_CELL = "; correct the cell or empty it";
const [BLANK, PLUS, MINUS, ZERO] = [32, 43, 45, 48];

/**
 * Reads rows from bytes into a RowStore. Plain numbers are read digit by digit without making strings; anything else
 * (groups, exponents, missing marks, very long numbers) goes through its text. Every stored value is the double nearest
 * to the written decimal times the column's scale: an integer mantissa times an integer, divided once by an exact
 * double, is correctly rounded.
 */
export class RowReader {
  readonly stamps: StampCells;
  /** Line on which the next row begins. */
  line: number;

  readonly #form: RowForm;
  readonly #store: RowStore;
  readonly #endsCell = new Uint8Array(256);
  #from = 0;
  #to = 0;
  #spansLines = false;

  constructor(form: RowForm, store: RowStore, line: number) {
    this.#form = form;
    this.#store = store;
    this.line = line;
    this.stamps = new StampCells(form, store);
    for (const byte of [form.delimiter, LF, CR]) this.#endsCell[byte] = 1;
  }

  /**
   * Reads the row that begins at `at`. `bytes[end]` must be a line feed that does not belong to the text.
   * @param final the text ends at `end`.
   * @returns where the next row begins; -1 if the row is not complete before `end`.
   * @throws LogError if the row cannot be read; the store is then as before.
   */
  readRow(bytes: Uint8Array, at: number, end: number, final: boolean): number {
    const { kinds, delimiter } = this.#form;
    const store = this.#store;
    if (store.rows === store.capacity) this.#grow();
    this.#spansLines = false;
    const start = at;
    let column = 0;
    let next: number;
    for (; ; column++, at++) {
      const kind = column < kinds.length ? kinds[column] : -1;
      if (kind === NUMBER) at = this.#number(bytes, at, end, column);
      else if (kind === SKIP) at = this.#skip(bytes, at, end);
      else at = this.#otherCell(bytes, at, end, column, kind as number);
      if (at < 0) return this.#openQuote(final);
      if (at < end && bytes[at] === delimiter) continue;
      next = at + 1;
      if (at >= end) {
        if (!final) return -1;
        next = end;
      } else if (bytes[at] === CR) {
        if (next >= end && !final) return -1;
        if (next < end && bytes[next] === LF) next++;
      }
      break;
    }
    if (column + 1 < this.#form.leastColumns) throw this.#width(column + 1);
    this.stamps.check(this.line);
    store.lines[store.rows] = this.line;
    store.rows++;
    this.line += this.#spansLines ? lineEnds(bytes, start, next) : 1;
    return next;
  }

  #grow(): void {
    try {
      this.#store.grow();
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new LogError(this.#form.file, `line ${this.line}`, "the log is too long for the memory: split it");
    }
  }

  /** A number from digits; leaves anything unusual to `#writtenNumber`. Returns where the cell ends. */
  #number(bytes: Uint8Array, at: number, end: number, column: number): number {
    const form = this.#form;
    const place = form.places[column] as number;
    const values = this.#store.values[place] as Float64Array;
    const endsCell = this.#endsCell;
    let i = at;
    let byte = bytes[i] as number;
    while (byte === BLANK) byte = bytes[++i] as number;
    const quoted = byte === QUOTE;
    if (quoted) byte = bytes[++i] as number;
    const negative = byte === MINUS;
    if (negative || byte === PLUS) byte = bytes[++i] as number;
    const signed = i;
    let mantissa = 0;
    let digit = byte - ZERO;
    while (digit >= 0 && digit <= 9) {
      mantissa = mantissa * 10 + digit;
      byte = bytes[++i] as number;
      digit = byte - ZERO;
    }
    let digits = i - signed;
    let places = 0;
    const decimal = form.decimal === "." ? 46 : form.decimal === "," ? 44 : -1;
    if (byte === decimal && (quoted || decimal !== form.delimiter)) {
      const point = ++i;
      byte = bytes[i] as number;
      digit = byte - ZERO;
      while (digit >= 0 && digit <= 9) {
        mantissa = mantissa * 10 + digit;
        byte = bytes[++i] as number;
        digit = byte - ZERO;
      }
      places = i - point;
      digits += places;
    }
    if (quoted) byte = byte === QUOTE ? (bytes[++i] as number) : 0;
    while (byte === BLANK) byte = bytes[++i] as number;
    if (endsCell[byte] === 1) {
      if (i === at) {
        values[this.#store.rows] = Number.NaN;
        return i;
      }
      const { numerator, largest, divisors } = form.numbers[place] as NumberColumn;
      const divisor = divisors[places] as number;
      if (digits > 0 && digits <= FAST_DIGITS && mantissa <= largest && divisor > 0) {
        const value = (mantissa * numerator) / divisor;
        values[this.#store.rows] = negative ? 0 - value : value;
        if (-places < (this.#store.finest[place] as number)) this.#store.finest[place] = -places;
        return i;
      }
    }
    return this.#writtenNumber(bytes, at, end, column, place);
  }

  #writtenNumber(bytes: Uint8Array, at: number, end: number, column: number, place: number): number {
    const next = this.#bounds(bytes, at, end);
    if (next < 0) return next;
    const text = decodeText(bytes.subarray(this.#from, this.#to));
    const { decimal, numbers } = this.#form;
    const plain = plainNumber(text, decimal);
    if (plain !== undefined) {
      const number = scaledNumber(plain, (numbers[place] as NumberColumn).scale);
      if (Number.isFinite(number.value)) {
        this.#store.note(place, number);
        return next;
      }
    }
    if (!isMissing(text)) throw this.#notANumber(column, text);
    (this.#store.values[place] as Float64Array)[this.#store.rows] = Number.NaN;
    return next;
  }

  #skip(bytes: Uint8Array, at: number, end: number): number {
    if (bytes[at] === QUOTE) return this.#bounds(bytes, at, end);
    const endsCell = this.#endsCell;
    while (endsCell[bytes[at] as number] === 0) at++;
    return at;
  }

  #otherCell(bytes: Uint8Array, at: number, end: number, column: number, kind: number): number {
    const next = this.#bounds(bytes, at, end);
    if (next < 0) return next;
    if (kind < 0) {
      if (this.#to > this.#from) throw this.#width(column + 1);
    } else if (kind === FLAG) {
      const text = decodeText(bytes.subarray(this.#from, this.#to));
      const flag = readFlag(text);
      if (flag === undefined)
        throw this.#fault(column, `${shown(text)} says neither flagged nor not flagged (1 or 0)`, MEND_CELL);
      if (flag === 1) this.#store.flagged[this.#store.rows] = 1;
    } else if (!this.stamps.read(kind, bytes, this.#from, this.#to)) {
      const text = decodeText(bytes.subarray(this.#from, this.#to));
      throw this.#fault(column, `${shown(text)} is not ${this.stamps.expected(kind)}`, this.#mendStamp(text));
    }
    return next;
  }

  /** Puts the bounds of a cell, without its quotes, into #from and #to. Returns where it ends; -1: a quote stays open. */
  #bounds(bytes: Uint8Array, at: number, end: number): number {
    let quotedEnd = -1;
    this.#from = at;
    if (bytes[at] === QUOTE && at < end) {
      this.#from = ++at;
      while (at < end && (bytes[at] !== QUOTE || bytes[at + 1] === QUOTE)) {
        if (bytes[at] === LF || bytes[at] === CR) this.#spansLines = true;
        at += bytes[at] === QUOTE ? 2 : 1;
      }
      if (at >= end) return -1;
      quotedEnd = at++;
    }
    while (this.#endsCell[bytes[at] as number] === 0) at++;
    this.#to = quotedEnd < 0 ? at : quotedEnd;
    return at;
  }

  #openQuote(final: boolean): number {
    if (final) throw new LogError(this.#form.file, `line ${this.line}`, "a quoted cell is never closed");
    return -1;
  }

  #notANumber(column: number, text: string): LogError {
    const unstated = this.#form.decimal === undefined && /\d[.,]\d/.test(text);
    const hint = unstated
      ? 'has a mark that the rows above it lack: state in the setup decimalMark: "." or decimalMark: ","'
      : `is neither a number ${this.#form.decimal === "," ? "with a decimal comma " : ""}nor a mark for a missing value`;
    return this.#fault(column, `${shown(text)} ${hint}`, unstated ? "" : MEND_CELL);
  }

  #width(cells: number): LogError {
    const { kinds, leastColumns, file, delimiter, decimal } = this.#form;
    const hint =
      cells > kinds.length && delimiter === 44 && decimal !== "."
        ? ": are its decimal commas not in quotes?"
        : "; correct the row or delete it";
    const more = cells > kinds.length ? "or more cells" : "cells";
    return new LogError(
      file,
      `line ${this.line}`,
      `the row has ${cells} ${more} where ${leastColumns} are expected${hint}`,
    );
  }

  /** Words where a time should be: a line of statistics or remarks, as some exports put them below the data. */
  #mendStamp(text: string): string {
    if (this.#store.isUnused || /\d/.test(text)) return "; correct the cell or delete the row";
    return "; correct the row, or delete it and all below it if the data end above";
  }

  #fault(column: number, what: string, mend: string): LogError {
    const name = this.#form.names[column] ?? "";
    const where = name === "" ? "" : ` in "${shown(name).slice(1, -1)}"`;
    return new LogError(this.#form.file, `line ${this.line}, column ${column + 1}`, `${what}${where}${mend}`);
  }
}
