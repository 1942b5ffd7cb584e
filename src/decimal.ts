/**
 * Exact decimal numbers, for limits and unit conversions that must not carry binary rounding.
 * 230 V × 110 % is 253 V; in binary floating point 230 × 1.1 is 253.00000000000003.
 */

/** The value num / den, both integers, den > 0. */
export interface Ratio {
  readonly num: bigint;
  readonly den: bigint;
}

const DECIMAL = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/;

/**
 * The exact value of a decimal number as written. A `number` is taken as its shortest decimal
 * form, so 0.1 means one tenth.
 * @throws RangeError if the text is no decimal number.
 */
export function ratio(value: number | string): Ratio {
  const match = DECIMAL.exec(String(value).trim());
  const digits = `${match?.[2] ?? ""}${match?.[3] ?? ""}`;
  if (!match || digits === "") throw new RangeError(`"${value}" is not a decimal number`);
  const exponent = Number(match[4] ?? 0) - (match[3]?.length ?? 0);
  const num = BigInt(digits) * (match[1] === "-" ? -1n : 1n);
  return exponent >= 0 ? { num: num * 10n ** BigInt(exponent), den: 1n } : { num, den: 10n ** BigInt(-exponent) };
}

export function times(a: Ratio, b: Ratio): Ratio {
  return { num: a.num * b.num, den: a.den * b.den };
}

/**
 * The double nearest to a/b. A reading parsed from decimal text is the double nearest to that text,
 * so comparing it with this value agrees with comparing the two decimals as long as both have at
 * most 15 significant digits.
 */
export function toNumber({ num, den }: Ratio): number {
  const negative = num < 0n;
  const n = negative ? -num : num;
  // 20 correct decimal digits, a sticky digit for what was cut; Number() rounds the text correctly.
  const scale = Math.max(0, 20 - (n.toString().length - den.toString().length));
  const scaled = n * 10n ** BigInt(scale);
  const quotient = scaled / den;
  const sticky = scaled % den === 0n ? "0" : "1";
  const value = Number(`${quotient}${sticky}e${-scale - 1}`);
  return negative ? -value : value;
}

const perUnit = new Map<number, { outside: number; of: number }>();

/**
 * floor((1 − share) · n), exactly: how many of n intervals may lie outside. `share` in 0…1 with at most six decimals,
 * n below 10⁹, so that every product is an exact integer.
 */
export function allowedOutside(share: number, n: number): number {
  let fraction = perUnit.get(share);
  if (fraction === undefined) {
    const { num, den } = ratio(share);
    fraction = { outside: Number(den - num), of: Number(den) };
    perUnit.set(share, fraction);
  }
  const product = fraction.outside * n;
  return (product - (product % fraction.of)) / fraction.of;
}
