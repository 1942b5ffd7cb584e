import { type Phase, QUANTITIES, type Quantity } from "../../recording/quantity.js";
import { DAY, type Duration, HOUR, MINUTE, SECOND } from "../../recording/time.js";
import { Numeral, type Sentence, say, strung, type Text } from "../../sentence.js";

/** Five significant digits without trailing zeros: 253.04 stays 253.04, 20814.37 becomes 20814. */
export function figure(value: number): Numeral {
  return new Numeral(String(Number(value.toPrecision(5))));
}

/** Three significant digits, for ratios that are estimates. */
export function rough(value: number): Numeral {
  return new Numeral(String(Number(value.toPrecision(3))));
}

/** "1.29 %": a share of 0…1 with three significant digits. */
export function percent(share: number): Text {
  return say`${rough(100 * share)} %`;
}

/** "7 d 8 h", "2 h 20 min", "0.2 s": a length of time in its two largest units. */
export function span(length: Duration): Text {
  if (length < SECOND) return say`${figure(length / SECOND)} s`;
  const units = [
    [DAY, (n: number) => say`${n} d`],
    [HOUR, (n: number) => say`${n} h`],
    [MINUTE, (n: number) => say`${n} min`],
    [SECOND, (n: number) => say`${n} s`],
  ] as const;
  let rest = length;
  const parts = units.flatMap(([unit, text]) => {
    const n = Math.floor(rest / unit);
    rest -= n * unit;
    return n === 0 ? [] : [text(n)];
  });
  return strung(parts.slice(0, 2), " ");
}

const COUNTED = {
  row: [say`1 row`, (n: number) => say`${n} rows`],
  interval: [say`1 interval`, (n: number) => say`${n} intervals`],
  day: [say`1 day`, (n: number) => say`${n} days`],
  time: [say`1 time`, (n: number) => say`${n} times`],
  gap: [say`1 gap`, (n: number) => say`${n} gaps`],
  run: [say`1 run`, (n: number) => say`${n} runs`],
} as const satisfies Record<string, readonly [Text, (n: number) => Text]>;

/** "1 row", "3 rows". */
export function counted(n: number, noun: keyof typeof COUNTED): Text {
  const [one, several] = COUNTED[noun];
  return n === 1 ? one : several(n);
}

/** "L1", "L1 and L2", "L1, L2 and L3". */
export function list(names: readonly Text[]): Text {
  const last = names[names.length - 1];
  return last === undefined || names.length === 1 ? (last ?? "") : say`${strung(names.slice(0, -1), ", ")} and ${last}`;
}

/** "supply voltage L2", "power frequency". */
export function nameOf(quantity: Quantity, ...phases: readonly Phase[]): Sentence {
  const where = phases.filter((p) => p !== "system");
  const { name } = QUANTITIES[quantity];
  return where.length === 0 ? name : strung([name, list(where)], " ");
}

/** "0.95 %", "231.4 V", "1.2" for a quantity without a unit. */
export function withUnit(quantity: Quantity, value: number): Text {
  const { unit } = QUANTITIES[quantity];
  return unit === "1" ? figure(value) : say`${figure(value)} ${unit}`;
}

/** The caution that goes with every next step at the installation. */
export const LICENSED = say`leave any work on live parts to a licensed electrician or the network operator, under the local codes`;
