/** Text of configuration files: lines, fields and numbers as real files write them. */

const UTF_8 = new TextDecoder("utf-8", { fatal: true });
const WINDOWS_1252 = new TextDecoder("windows-1252");

/** UTF-8 where the bytes are valid UTF-8, else one byte per character (Windows-1252, which contains Latin-1). */
export function decodeText(bytes: Uint8Array): string {
  try {
    return UTF_8.decode(bytes);
  } catch {
    return WINDOWS_1252.decode(bytes);
  }
}

/** One character per byte, so that positions in the text are positions in the file. */
export function decodeBytewise(bytes: Uint8Array): string {
  return WINDOWS_1252.decode(bytes);
}

const LONGEST_NUMBER = 64;

/** The lines of a text, without the blank lines, zero bytes and end-of-file marks (0x1A) at its end. */
export function linesOf(text: string): string[] {
  const lines = text.split(/\r\n|\n|\r/).map((line) => line.replaceAll("\u001a", "").replaceAll("\0", ""));
  while (lines.at(-1)?.trim() === "") lines.pop();
  return lines;
}

/** Fields between commas, without the blanks around them. */
export function fieldsOf(line: string): string[] {
  return line.split(",").map((field) => field.trim());
}

/** A decimal number in any usual form ("1E-3", ".5", "+1.0", "1.0D-3"); NaN for anything else, an empty text too. */
export function numberOf(text: string | undefined): number {
  if (text === undefined || text.length > LONGEST_NUMBER || !/^[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?$/.test(text))
    return Number.NaN;
  return Number(text.replace(/[dD]/, "e"));
}

/** A text of the file for a message: in quotes, without control characters, at most 40 characters of it. */
export function quoted(text: string): string {
  const plain = text.trim().replaceAll(/\p{Cc}/gu, "\u{fffd}");
  return `"${plain.length > 40 ? `${plain.slice(0, 40)}…` : plain}"`;
}
