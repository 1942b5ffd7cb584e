/**
 * Characters that Noto Sans, with which PDF and PNG are set, shows in regular and bold; a test has each of them set. The
 * characters that turn the direction of writing are left out: they could make a text read as another one.
 */
const COVERED =
  "\\u0020-\\u007e\\u00a0-\\u0377\\u037a-\\u037f\\u0384-\\u038a\\u038c\\u038e-\\u03a1\\u03a3-\\u03e1" +
  "\\u03f0-\\u052f\\u1d00-\\u1df9\\u1dfb-\\u1f15\\u1f18-\\u1f1d\\u1f20-\\u1f45\\u1f48-\\u1f4d\\u1f50-\\u1f57" +
  "\\u1f59\\u1f5b\\u1f5d\\u1f5f-\\u1f7d\\u1f80-\\u1fb4\\u1fb6-\\u1fc4\\u1fc6-\\u1fd3\\u1fd6-\\u1fdb" +
  "\\u1fdd-\\u1fef\\u1ff2-\\u1ff4\\u1ff6-\\u1ffe\\u2000-\\u200d\\u2010-\\u2027\\u202f-\\u205f\\u2070\\u2071" +
  "\\u2074-\\u208e\\u2090-\\u209c\\u20a0-\\u20c0\\u2100-\\u215f\\u2183\\u2184\\u2189\\u2212\\u25cc" +
  "\\u2c60-\\u2c7f\\u2de0-\\u2e5d\\ua640-\\ua69f\\ua700-\\ua7ca\\ufb00-\\ufb06\\ufe20-\\ufe2f\\ufffd";

/** Stands for a character without a glyph. */
export const NO_GLYPH = "\ufffd";

/** Signs of formulas that the font lacks, written otherwise. */
const SPELLED: Readonly<Record<string, string>> = { "≤": "<=", "≥": ">=", "√": "root of ", "→": "->" };
const SIGNS = new RegExp(`[${Object.keys(SPELLED).join("")}]`, "g");

const MISSING = new RegExp(`[^${COVERED}]`, "gu");

/** A text without the signs that the font lacks and that can be written otherwise. Not for SVG: the result may hold "<". */
export function spelled(text: string): string {
  return text.replace(SIGNS, (sign) => SPELLED[sign] as string);
}

/** The text with a sign for each character that the font lacks; each is put into `missing`. */
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
