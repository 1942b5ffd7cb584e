import { type Phase, QUANTITIES, type Quantity } from "../../recording/quantity.js";
import { DAY, type Duration, HOUR, MINUTE, SECOND } from "../../recording/time.js";

/** Five significant digits without trailing zeros: 253.04 stays 253.04, 20814.37 becomes 20814. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(5)));
}

/** Three significant digits, for ratios that are estimates. */
export function rough(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** "1.29 %": a share of 0…1 with three significant digits. */
export function percent(share: number): string {
  return `${rough(100 * share)} %`;
}

/** "7 d 8 h", "2 h 20 min", "0.2 s": a length of time in its two largest units. */
export function span(length: Duration): string {
  if (length < SECOND) return `${figure(length / SECOND)} s`;
  const units = [
    [DAY, "d"],
    [HOUR, "h"],
    [MINUTE, "min"],
    [SECOND, "s"],
  ] as const;
  let rest = length;
  const parts = units.flatMap(([unit, name]) => {
    const n = Math.floor(rest / unit);
    rest -= n * unit;
    return n === 0 ? [] : [`${n} ${name}`];
  });
  return parts.slice(0, 2).join(" ");
}

/** "1 row", "3 rows". */
export function counted(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? "" : "s"}`;
}

/** "L1", "L1 and L2", "L1, L2 and L3". */
export function list(names: readonly string[]): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
}

/** "supply voltage L2", "power frequency". */
export function nameOf(quantity: Quantity, ...phases: readonly Phase[]): string {
  const where = phases.filter((p) => p !== "system");
  return where.length === 0 ? String(QUANTITIES[quantity].name) : `${QUANTITIES[quantity].name} ${list(where)}`;
}

/** "0.95 %", "231.4 V", "1.2" for a quantity without a unit. */
export function withUnit(quantity: Quantity, value: number): string {
  const { unit } = QUANTITIES[quantity];
  return unit === "1" ? figure(value) : `${figure(value)} ${unit}`;
}

/** The caution that goes with every next step at the installation. */
export const LICENSED =
  "leave any work on live parts to a licensed electrician or the network operator, under the local codes";

/** The sentence with a capital first letter. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
