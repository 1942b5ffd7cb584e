/**
 * Characters that the PDF's font (Libertinus Serif, which comes with the compiler) shows in regular and bold; a test
 * has each of them set. The characters that turn the direction of writing are left out: they could make a text read
 * as another one.
 */
const COVERED =
  "\\u0020-\\u007e\\u00a0-\\u02e4\\u02ea-\\u036f\\u0374\\u0375\\u037a-\\u037e\\u0384-\\u038a\\u038c\\u038e-\\u03a1" +
  "\\u03a3-\\u03ce\\u03d0-\\u03e1\\u03f0-\\u03f6\\u03f8\\u03f9\\u03fb\\u03fd-\\u045f\\u0462\\u0463\\u0470-\\u0477" +
  "\\u0490-\\u04c4\\u04c7-\\u04cc\\u04d0-\\u04f9\\u05be\\u05c0\\u05c3\\u05c6\\u05d0-\\u05ea\\u05f0-\\u05f4" +
  "\\u1e00-\\u1e9b\\u1e9e\\u1ea0-\\u1ef9\\u1f00-\\u1f15\\u1f18-\\u1f1d\\u1f20-\\u1f45\\u1f48-\\u1f4d\\u1f50-\\u1f57" +
  "\\u2000-\\u200d\\u2010-\\u2027\\u202f-\\u2037\\u2039-\\u203e\\u2042\\u2044\\u2070\\u2071\\u2074-\\u208e" +
  "\\u20a2-\\u20a4\\u20a7\\u20a8\\u20ab\\u20ac\\u20b1\\u20bf\\u2100-\\u2103\\u2113\\u2116\\u2122\\u2126\\u212a\\u212b" +
  "\\u2153-\\u2184\\u2190-\\u219b\\u2200-\\u220d\\u220f-\\u221c\\u221e\\u221f\\u2223-\\u222b\\u2248\\u2260-\\u2262" +
  "\\u2264\\u2265\\u22c5\\u2460-\\u2473\\u25a0\\u25a1\\u25b2\\u25b3\\u25bc\\u25bd\\u25c6\\u25c7\\u25cb\\u25cf\\ufffd";

/** Stands for a character without a glyph. */
export const NO_GLYPH = "□";

const MISSING = new RegExp(`[^${COVERED}]`, "gu");

/** The text with a box for each character that the font lacks; each is put into `missing`. */
export function shown(text: string, missing: Set<string>): string {
  return text.replace(MISSING, (character) => {
    missing.add(character);
    return NO_GLYPH;
  });
}

/** "U+5B57, U+6F22". */
export function codePoints(characters: ReadonlySet<string>): string {
  const codes = [...characters].map((character) => character.codePointAt(0) as number).sort((a, b) => a - b);
  return codes.map((code) => `U+${code.toString(16).toUpperCase().padStart(4, "0")}`).join(", ");
}

/** All covered characters, for the test. */
export function coveredCharacters(): string[] {
  const ranges = [...COVERED.matchAll(/\\u([0-9a-f]{4})(?:-\\u([0-9a-f]{4}))?/g)];
  return ranges.flatMap(([, from = "", to = from]) => {
    const first = Number.parseInt(from, 16);
    return Array.from({ length: Number.parseInt(to, 16) - first + 1 }, (_, i) => String.fromCodePoint(first + i));
  });
}
