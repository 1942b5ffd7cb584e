import type { SourceSeries } from "./aggregation.js";

/**
 * Negative-sequence unbalance in % from the r.m.s. values of the three phase-to-phase voltages (same unit):
 * β = ΣU⁴ / (ΣU²)², u2 = √((1 − √(3 − 6β)) / (1 + √(3 − 6β))).
 * IEC 61000-4-30, supply voltage unbalance, the form for three-wire r.m.s. values; exact for fundamental voltages.
 * 3 − 6β is held at 1 where rounding lifts it above, and at 0 where the three voltages form no triangle: the unbalance is
 * then 100 % or more, and counts as 100 %. NaN where a value is missing or all are zero.
 */
export function unbalanceFromPhaseToPhase(u12: number, u23: number, u31: number): number {
  const squares = [u12 * u12, u23 * u23, u31 * u31] as const;
  const sum = squares[0] + squares[1] + squares[2];
  const beta = (squares[0] ** 2 + squares[1] ** 2 + squares[2] ** 2) / (sum * sum);
  const root = Math.sqrt(Math.max(0, Math.min(1, 3 - 6 * beta)));
  return 100 * Math.sqrt((1 - root) / (1 + root));
}

/** u2 interval by interval from three logged phase-to-phase voltages on one time axis. */
export function unbalanceSeries(u12: SourceSeries, u23: SourceSeries, u31: SourceSeries): SourceSeries {
  return {
    quantity: "negative-sequence-unbalance",
    phase: "system",
    unit: "%",
    origin: "computed",
    axis: u12.axis,
    values: u12.values.map((v, i) => unbalanceFromPhaseToPhase(v, u23.values[i] as number, u31.values[i] as number)),
  };
}
