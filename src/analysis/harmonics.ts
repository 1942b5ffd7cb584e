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
  const ratio = (volts: Float64Array) =>
    volts.map((v, i) => {
      const base = fundamental[i] as number;
      return base === 0 ? Number.NaN : (100 * v) / base;
    });
  return {
    quantity: harmonic.quantity,
    phase: harmonic.phase,
    ...(harmonic.order !== undefined && { order: harmonic.order }),
    unit: "%",
    origin: harmonic.origin,
    axis: harmonic.axis,
    values: ratio(harmonic.values),
  };
}

/**
 * The fundamental in V from the r.m.s. voltage and its harmonics in V: U1² = U² − ΣUh², orders 2 and up.
 * What lies between and above the harmonics is counted to the fundamental. NaN where any value is missing.
 */
export function fundamentalFromRms(rms: Float64Array, harmonics: readonly Float64Array[]): Float64Array {
  return rms.map((u, i) => Math.sqrt(harmonics.reduce((left, uh) => left - (uh[i] as number) ** 2, u * u)));
}
