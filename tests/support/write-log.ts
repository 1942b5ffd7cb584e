import { gzipSync } from "node:zlib";
import { QUANTITIES } from "../../src/recording/quantity.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import type { Dialect, VoltageUnit } from "./dialect.js";
import { flagHeader, headerOf, stampHeaders } from "./header-words.js";
import type { LogColumn, LogTable } from "./log-table.js";
import { stampWriter } from "./stamps.js";

/** The table as a logger of this dialect writes it. */
export function writeLog(table: LogTable, dialect: Dialect): Uint8Array {
  const bytes = encode(logText(table, dialect), dialect.encoding);
  return dialect.gzip ? gzip(bytes) : bytes;
}

/** The text of the file, before encoding and packing. */
export function logText(table: LogTable, dialect: Dialect): string {
  const stamp = stampWriter(dialect.stamp, dialect.zone, dialect.decimal);
  const labelOffset = dialect.label === "end" ? table.interval : 0;
  const number = table.columns.map((column) => numberWriter(column, dialect));
  let missing = 0;
  const lines = table.starts.map((start, row) => [
    ...stamp.cells(start + labelOffset).map((cell) => quoted(cell, !stamp.numeric, dialect)),
    ...number.map(
      (write, c) =>
        write(table.columns[c]?.digits[row] as number) ??
        quoted(dialect.missing[missing++ % dialect.missing.length] as string, true, dialect),
    ),
    ...(table.flagged ? [quoted(String(table.flagged[row]), false, dialect)] : []),
    ...(table.extra ?? []).map((column) => quoted(column.cells[row] as string, true, dialect)),
  ]);
  const header = headerLines(table, dialect).map((cells) => cells.map((cell) => quoted(cell, true, dialect)));
  const all = [...dialect.preamble, ...[...header, ...lines].map((cells) => cells.join(dialect.delimiter))];
  return all.map((line) => line + dialect.lineEnd).join("");
}

/** What someone who reads a log of this dialect has to be told, because the log cannot say it. */
export function setupOf(dialect: Dialect): GivenSetup {
  const local = !["iso-offset", "iso-utc", "epoch-s", "epoch-ms"].includes(dialect.stamp);
  return { ...(local && { zone: dialect.zone }), intervalLabel: dialect.label };
}

function headerLines(table: LogTable, dialect: Dialect): string[][] {
  const stamp = stampHeaders(dialect.language, dialect.stamp === "d.m.y in two columns" ? 2 : 1);
  const headers = table.columns.map((column) => headerOf(column, dialect.language));
  const units = table.columns.map((column) => unitText(column, dialect.voltageUnit));
  const inHeader = dialect.unitsRow ? units.map(() => "") : units.map((unit) => (unit === "" ? "" : ` [${unit}]`));
  const after = [...(table.flagged ? [flagHeader(dialect.language)] : []), ...(table.extra ?? []).map((c) => c.header)];
  const blank = (cells: readonly string[]) => cells.map(() => "");
  const lines =
    dialect.headerRows === 1
      ? [[...stamp, ...headers.map(({ upper, lower }, i) => `${`${upper} ${lower}`.trim()}${inHeader[i]}`), ...after]]
      : [
          [...stamp, ...headers.map(({ upper }) => upper), ...after],
          [...blank(stamp), ...headers.map(({ lower }, i) => `${lower}${inHeader[i]}`.trim()), ...blank(after)],
        ];
  if (dialect.unitsRow) lines.push([...blank(stamp), ...units, ...blank(after)]);
  return lines;
}

function unitText(column: LogColumn, voltageUnit: VoltageUnit): string {
  const { unit } = QUANTITIES[column.quantity];
  if (unit === "1") return "";
  if (column.quantity !== "voltage") return unit;
  return typeof voltageUnit === "string" ? voltageUnit : "p.u.";
}

/** Digits to cell text, exactly; undefined for a missing value. */
function numberWriter(column: LogColumn, dialect: Dialect): (digits: number) => string | undefined {
  const { factor, shift } = column.quantity === "voltage" ? conversion(dialect.voltageUnit) : { factor: 1, shift: 0 };
  const decimals = column.decimals + shift;
  return (digits) =>
    Number.isNaN(digits) ? undefined : quoted(decimalText(digits * factor, decimals, dialect), false, dialect);
}

/** A value in V is the value in the other unit times `factor` / 10^`shift`. @throws RangeError where no exact decimal exists */
function conversion(unit: VoltageUnit): { readonly factor: number; readonly shift: number } {
  if (unit === "V") return { factor: 1, shift: 0 };
  if (unit === "kV") return { factor: 1, shift: 3 };
  for (let shift = 0, power = 1; shift <= 9; shift++, power *= 10) {
    if (power % unit.perUnitOf === 0) return { factor: power / unit.perUnitOf, shift };
  }
  throw new RangeError(`values per ${unit.perUnitOf} V have no exact decimal form`);
}

/** digits / 10^decimals as text, in whole-number arithmetic. @throws RangeError beyond 2^53, where digits would be lost */
export function decimalText(
  digits: number,
  decimals: number,
  { decimal, thousands }: Pick<Dialect, "decimal" | "thousands">,
) {
  if (!Number.isSafeInteger(digits))
    throw new RangeError(`${digits} is not a whole number that can be written exactly`);
  const text = String(Math.abs(digits)).padStart(decimals + 1, "0");
  const whole = text.slice(0, text.length - decimals);
  const grouped = thousands === undefined ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, thousands);
  const fraction = decimals === 0 ? "" : `${decimal}${text.slice(-decimals)}`;
  return `${digits < 0 ? "-" : ""}${grouped}${fraction}`;
}

function quoted(cell: string, isText: boolean, { delimiter, quoting }: Dialect): string {
  const needed = cell.includes(delimiter) || /["\r\n]/.test(cell);
  const wanted = quoting === "all" || (quoting === "text" && isText && cell !== "");
  return needed || wanted ? `"${cell.replaceAll('"', '""')}"` : cell;
}

function encode(text: string, encoding: Dialect["encoding"]): Uint8Array {
  switch (encoding) {
    case "utf-8":
      return Buffer.from(text, "utf8");
    case "utf-8-bom":
      return Buffer.from(`\ufeff${text}`, "utf8");
    case "utf-16le-bom":
      return Buffer.from(`\ufeff${text}`, "utf16le");
    case "latin-1":
      if (/[^\0-\xff]/.test(text)) throw new RangeError("the text has characters that Latin-1 lacks");
      return Buffer.from(text, "latin1");
  }
}

/** Packed with no file name, no time and an unknown operating system in the header, so that nothing but the text counts. */
export function gzip(bytes: Uint8Array): Uint8Array {
  const packed = gzipSync(bytes, { level: 9 });
  packed[9] = 255;
  return packed;
}
