const HEX = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, "0"));

/** Places on disk of the 16 bytes as the text has them: the first three fields are little endian. */
const TEXT_ORDER = [3, 2, 1, 0, 5, 4, 7, 6, 8, 9, 10, 11, 12, 13, 14, 15];

/** The identifier in 16 bytes from `at` as canonical text in lower case. */
export function guidText(bytes: Uint8Array, at: number): string {
  let text = "";
  for (let place = 0; place < 16; place++) {
    if (place === 4 || place === 6 || place === 8 || place === 10) text += "-";
    text += HEX[bytes[at + (TEXT_ORDER[place] as number)] as number];
  }
  return text;
}

/** The 16 bytes on disk of an identifier in canonical text. */
export function guidBytes(text: string): Uint8Array {
  const inTextOrder = Uint8Array.from(text.replaceAll("-", "").match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
  return Uint8Array.from(TEXT_ORDER, (byte) => inTextOrder[byte] as number);
}
