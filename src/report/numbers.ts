import { ratio } from "../decimal.js";
import type { Row } from "../rules/assessment.js";

/** How numbers are printed: decimal point, no thousands separators, a true minus sign. */

const DECIMALS: Readonly<Record<string, number>> = { V: 1, A: 1, "%": 2, Hz: 3, W: 0, var: 0, VA: 0 };
/** Below these digits measured values are noise. */
const MOST_MEASURED = 6;
/** More digits than a double holds. */
const MOST_DECIMALS = 17;

/** Digits after the point that a value of this unit is usually printed with. */
export function decimalsOf(unit: string): number {
  return DECIMALS[unit] ?? 2;
}

/** Swaps the hyphen for a minus sign; a negative zero loses it. */
export function minus(text: string): string {
  if (/^-[0.]*$/.test(text)) return text.slice(1);
  return text.replace(/^-/, "−");
}

export function fixed(value: number, decimals: number): string {
  return minus(value.toFixed(decimals));
}

/** A measured value that no limit is set to: the usual digits, and of a small one at least two that count. */
export function measured(value: number, unit: string): string {
  const size = Math.abs(value);
  const needed = size === 0 ? 0 : 1 - Math.floor(Math.log10(size));
  return fixed(value, Math.min(MOST_MEASURED, Math.max(decimalsOf(unit), needed)));
}

/** An exact number such as a limit: all its digits, and at least `decimals` of them after the point. */
export function exact(value: number, decimals: number): string {
  for (let d = decimals; d <= MOST_DECIMALS; d++) if (Number(value.toFixed(d)) === value) return fixed(value, d);
  return minus(String(value));
}

/**
 * The value with as many digits after the point as it takes for the printed number to lie on the same side of the
 * limit as the value itself: 253.04 against 253 is "253.04", never "253.0"; 252.96 is "252.96".
 */
export function formatAgainstLimit(value: number, limit: number, decimals: number): string {
  return formatAgainstLimits(value, { max: limit }, decimals);
}

/**
 * The same against a lower and an upper limit, of which either may be absent. The report page carries the text of this
 * function with that of `fixed` and `minus`, so it uses nothing else.
 */
export function formatAgainstLimits(value: number, limit: Row["limit"], decimals: number): string {
  const sides = [limit.min, limit.max].filter((side) => side !== undefined);
  for (let d = decimals; d <= 17; d++) {
    const printed = Number(value.toFixed(d));
    if (sides.every((side) => Math.sign(printed - side) === Math.sign(value - side))) return fixed(value, d);
  }
  return minus(String(value));
}

/** 0.95 is exactly 95 %, 1 − 0.95 exactly 5 %: percent of a share written as a decimal. */
export function percentOfShare(share: number): number {
  const { num, den } = ratio(share);
  return Number(num * 100n) / Number(den);
}

/** Share that may lie outside, in percent: 5 for 0.95. */
export function allowedPercent(share: number): number {
  const { num, den } = ratio(share);
  return Number((den - num) * 100n) / Number(den);
}

/** Share found outside in percent, never rounded across the share allowed: 50 of 1008 against 5 % is "4.96". */
export function foundPercent(row: Pick<Row, "outside" | "n" | "share">): string {
  if (row.n === 0) return "–";
  return formatAgainstLimit((100 * row.outside) / row.n, allowedPercent(row.share), 1);
}
