import type { IntervalSeries } from "../../recording/measurements.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase, type Quantity } from "../../recording/quantity.js";
import type { Setup } from "../../recording/setup.js";
import { MINUTE } from "../../recording/time.js";
import { nearestRank, sortedFinite } from "../../signal/order-statistics.js";
import type { CheckInput } from "../check.js";

/** What is measured on one voltage input, and so is worth nothing when the input is. */
export const VOLTAGE_QUANTITIES: readonly Quantity[] = [
  "voltage",
  "thd-voltage",
  "harmonic-voltage",
  "interharmonic-voltage",
  "mains-signalling",
  "pst",
  "plt",
];

/** The voltages that are judged: phase to neutral in star, phase to phase in delta, L1 in a single-phase supply. */
export function judgedPhases({ connection }: Setup): readonly Phase[] {
  if (connection.value === "single") return ["L1"];
  return connection.value === "delta" ? PHASE_TO_PHASE : PHASE_TO_NEUTRAL;
}

/** The declared voltage as it shows on a phase, in V; undefined for the neutral and the system. */
export function declaredOn(phase: Phase, { connection, declaredVoltage }: Setup): number | undefined {
  const delta = connection.value === "delta";
  if ((PHASE_TO_PHASE as readonly Phase[]).includes(phase)) {
    return delta ? declaredVoltage.value : declaredVoltage.value * Math.sqrt(3);
  }
  if ((PHASE_TO_NEUTRAL as readonly Phase[]).includes(phase)) {
    return delta ? declaredVoltage.value / Math.sqrt(3) : declaredVoltage.value;
  }
  return undefined;
}

/** Where the voltage of one phase lies: nearest-rank order statistics of its ten-minute values, in V. */
export interface Level {
  readonly phase: Phase;
  readonly declared: number;
  readonly median: number;
  readonly p05: number;
  readonly p95: number;
}

/**
 * The levels of all voltages that have a declared value, from ten-minute values where there are any, else from values
 * at the interval they were logged at. Phases without a value are left out.
 */
export function voltageLevels({ measurements, setup }: CheckInput): readonly Level[] {
  const byPhase = new Map<Phase, IntervalSeries>();
  for (const s of measurements.series) {
    if (s.quantity === "voltage" && (!byPhase.has(s.phase) || s.interval === 10 * MINUTE)) byPhase.set(s.phase, s);
  }
  return [...byPhase].flatMap(([phase, { values }]) => {
    const declared = declaredOn(phase, setup);
    const sorted = sortedFinite(values);
    if (declared === undefined || sorted.length === 0) return [];
    const at = (share: number) => nearestRank(sorted, share);
    return [{ phase, declared, median: at(0.5), p05: at(0.05), p95: at(0.95) }];
  });
}
