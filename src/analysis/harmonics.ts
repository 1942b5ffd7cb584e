import type { SourceSeries } from "./aggregation.js";

/** Highest order that counts in the THD of EN 50160. */
export const THD_HIGHEST_ORDER = 40;

/**
 * Total harmonic distortion in %: √ΣUh² over orders 2…40, each Uh in % of the fundamental (EN 50160, definition of THD).
 * NaN where any order is missing in an interval.
 * @param orders one series per order 2…40, all on one time axis, in %
 */
export function thdFromHarmonics(orders: readonly SourceSeries[]): SourceSeries {
  const first = orders[0];
  if (first === undefined) throw new RangeError("no harmonics");
  const values = new Float64Array(first.values.length);
  for (const { values: uh } of orders) {
    for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) + (uh[i] as number) ** 2;
  }
  return {
    quantity: "thd-voltage",
    phase: first.phase,
    unit: "%",
    origin: "computed",
    axis: first.axis,
    values: values.map(Math.sqrt),
  };
}

/** Each harmonic voltage in % of the fundamental, from volts. NaN where either value is missing or the fundamental is 0. */
export function inPercentOf(fundamental: Float64Array, harmonic: SourceSeries): SourceSeries {
  return {
    quantity: harmonic.quantity,
    phase: harmonic.phase,
    ...(harmonic.order !== undefined && { order: harmonic.order }),
    unit: "%",
    origin: harmonic.origin,
    axis: harmonic.axis,
    values: harmonic.values.map((v, i) => percent(v, fundamental[i] as number)),
  };
}

const MICRO = 1e6;

/**
 * 100 · part / whole. Readings with up to six decimals are taken as whole millionths, so that the result is the double
 * nearest to the exact quotient and a value on its limit stays on it (4.6 V of 230 V is 2 %).
 */
function percent(part: number, whole: number): number {
  if (whole === 0) return Number.NaN;
  const [p, w] = [Math.round(part * MICRO), Math.round(whole * MICRO)];
  return p / MICRO === part && w / MICRO === whole ? (100 * p) / w : (100 * part) / whole;
}

/**
 * The fundamental in V from the r.m.s. voltage and its harmonics in V: U1² = U² − ΣUh², orders 2 and up.
 * What lies between and above the harmonics is counted to the fundamental. NaN where any value is missing.
 */
export function fundamentalFromRms(rms: Float64Array, harmonics: readonly Float64Array[]): Float64Array {
  return rms.map((u, i) => Math.sqrt(harmonics.reduce((left, uh) => left - (uh[i] as number) ** 2, u * u)));
}
