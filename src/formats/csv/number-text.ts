import { type Ratio, ratio, times, toNumber } from "../../decimal.js";

/** Numbers, missing marks and flags as they are written in cells. */

export type DecimalMark = "." | ",";

/** What loggers and spreadsheets write where there is no value; lower case. Common practice, no source. */
const MISSING = new Set(
  (
    "nan null nil none na n/a n/d n.a. n.d. nd k.a. s/d missing invalid void err error ol o.l. -ol +ol overload overflow over " +
    "inf +inf -inf infinity +infinity -infinity ∞ +∞ -∞ ? #n/a #n/d #nv #na #null! #div/0! #value! #wert! #num! #zahl! #ref! #bezug!"
  ).split(" "),
);
const MISSING_FORM = /^(?:[-–—_*.?#]*|[+-]?1\.#(?:qnan|snan|ind|inf|nan)0*)$/;

/** Empty, `---`, `NaN`, `OL` and the like: no value. A zero is a value. */
export function isMissing(text: string): boolean {
  const lower = text.trim().toLowerCase();
  return MISSING_FORM.test(lower) || MISSING.has(lower);
}

/** Groups of three digits behind a first group of one to three, with one and the same mark between them. */
const GROUPED = /^([+-]?\d{1,3})(?:([.,' ’\u00a0\u202f])\d{3})(?:\2\d{3})*(?!\d)/;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i;
/** A number as it is written anywhere in the trade, decimal mark and groups undecided. */
const NUMBER_LIKE = /^[+-]?(?:\d[\d.,'’ \u00a0\u202f]*|[.,]\d+)(?:e[+-]?\d{1,3})?$/i;
const LONGEST = 64;

export function looksNumeric(text: string): boolean {
  return text.length <= LONGEST && NUMBER_LIKE.test(text.trim().replace("\u2212", "-"));
}

/**
 * The number with a decimal point and without groups ("1.234,5" → "1234.5"); undefined if the text is no number.
 * Where the decimal mark is not known, neither point nor comma may stand in it.
 */
export function plainNumber(text: string, decimal: DecimalMark | undefined): string | undefined {
  if (text.length > LONGEST) return undefined;
  let plain = text.trim().replace("\u2212", "-");
  if (decimal === undefined && /[.,]/.test(plain)) return undefined;
  const [groups, , groupMark] = GROUPED.exec(plain) ?? [];
  if (groups !== undefined && groupMark !== undefined && groupMark !== decimal) {
    plain = groups.replaceAll(groupMark, "") + plain.slice(groups.length);
  }
  if (decimal === ",") {
    if (plain.includes(".")) return undefined;
    plain = plain.replace(",", ".");
  }
  return NUMBER.test(plain) ? plain : undefined;
}

/** A decimal number by its digits: value = mantissa × 10^exponent. `exponent` is the place of the last written digit. */
export interface WrittenNumber {
  readonly value: number;
  readonly exponent: number;
}

/** The double nearest to (number as written) × scale. `plain` comes from `plainNumber`. */
export function scaledNumber(plain: string, scale: Ratio): WrittenNumber {
  const match = /^([^.e]*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i.exec(plain);
  const [power, places] = [Number(match?.[3] ?? 0), match?.[2]?.length ?? 0];
  const shift = powerOfTen(scale);
  const value =
    shift === undefined
      ? toNumber(times(ratio(plain), scale))
      : Number(`${match?.[1] ?? ""}.${match?.[2] ?? ""}e${power + shift}`);
  return { value: value + 0, exponent: power - places };
}

/** n where the ratio is 10^n (−9…9): then the decimal point moves and JavaScript's own exact reading does the rest. */
function powerOfTen({ num, den }: Ratio): number | undefined {
  const [n, d] = [Number(num), Number(den)];
  for (let power = 0; power <= 9; power++) {
    if (n === d * 10 ** power) return power;
    if (d === n * 10 ** power) return -power;
  }
  return undefined;
}

const FLAGGED = new Set([
  "1",
  "x",
  "yes",
  "y",
  "true",
  "flagged",
  "ja",
  "oui",
  "sí",
  "si",
  "sì",
  "wahr",
  "vrai",
  "vero",
]);
const UNFLAGGED = new Set(["", "0", "no", "n", "false", "nein", "non", "falsch", "faux", "falso", "unflagged", "ok"]);

/** 1 flagged, 0 not flagged, undefined if the text says neither. */
export function readFlag(text: string): 0 | 1 | undefined {
  const lower = text.trim().toLowerCase();
  if (UNFLAGGED.has(lower) || /^-+$/.test(lower)) return 0;
  if (FLAGGED.has(lower)) return 1;
  if (/^[+-]?\d+(?:[.,]\d+)?$/.test(lower)) return Number(lower.replace(",", ".")) === 0 ? 0 : 1;
  return undefined;
}
