import { isValid } from "../recording/measurements.js";
import { supplyPhases } from "../recording/quantity.js";
import { isoUtc, MINUTE } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";

/** Below this share of the declared voltage on all phases the supply is interrupted (EN 50160:2010, from memory). */
const INTERRUPTED = 0.05;

/**
 * Intervals in which the supply was interrupted throughout: they lie outside every band of the supply voltage, while
 * EN 50160 leaves periods with interruptions out of the voltage variations (4.2.2, from memory). They are counted, and
 * this finding says how many of those outside they are. Intervals that were interrupted in part do not show it.
 */
export const interruptedIntervals: Check = {
  id: "interrupted-intervals",
  title: "Ten-minute intervals in which all voltages lie below 5 % of the declared voltage",
  source: "EN 50160:2010, 4.2.2 and the definition of an interruption, from memory",
  run({ measurements, setup }) {
    const phases = supplyPhases(setup.connection.value);
    const voltages = measurements.series.filter(
      (s) => s.quantity === "voltage" && s.interval === 10 * MINUTE && phases.includes(s.phase),
    );
    const [first] = voltages;
    if (first === undefined) return [];
    const below = voltages.map(
      (s) =>
        new Set(
          s.starts.filter(
            (_, i) => isValid(s, i) && (s.values[i] as number) < INTERRUPTED * setup.declaredVoltage.value,
          ),
        ),
    );
    const interrupted = first.starts.filter((start) => below.every((b) => b.has(start)));
    const from = interrupted[0];
    if (from === undefined) return [];
    const n = interrupted.length;
    const where = n === 1 ? say`In 1 ten-minute interval` : say`In ${n} ten-minute intervals`;
    return [
      {
        id: "interrupted-intervals",
        severity: "note",
        sentence: say`${where}, the first from ${isoUtc(from)}, all voltages lie below 5 % of the declared ${setup.declaredVoltage.value} V: the supply, or the recorder's leads, were interrupted; they count as outside the limits of the supply voltage here, although EN 50160 leaves interruptions out of the voltage variations (from memory), so take ${n} off the numbers outside if the interruption is beyond doubt.`,
        evidence: { intervals: n, from: isoUtc(from), declared: setup.declaredVoltage.value },
        quantities: ["voltage"],
        phases: [],
      },
    ];
  },
};
