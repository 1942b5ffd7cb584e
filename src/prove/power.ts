import { power } from "../analysis/waveform/power.js";
import type { Quantity } from "../recording/quantity.js";
import { farthest, measured, type Signal } from "./measured.js";
import type { ProofTable } from "./proof-table.js";

/** Order: V∠°, A∠°. */
const ANNEX_B = {
  3: [8, -70, 20, -165],
  5: [15, 140, 15, 234],
  7: [5, 20, 10, 234],
} as const;
const LAG = 30;

const RESULTS = [
  ["P", "active-power", "W", 8589.162],
  ["Q1", "reactive-power", "var", 5000],
  ["S", "apparent-power", "VA", 10517.493],
  ["P1", "fundamental-active-power", "W", 8660.254],
  ["S1", "fundamental-apparent-power", "VA", 10000],
  ["N", "nonactive-power", "var", 6069.921],
  ["DI", "current-distortion-power", "var", 2692.582],
  ["DV", "voltage-distortion-power", "var", 1772.005],
  ["SH", "harmonic-apparent-power", "VA", 477.127],
  ["PF", "power-factor", "1", 0.816655],
  ["PF1", "displacement-factor", "1", 0.866025],
] as const satisfies readonly (readonly [string, Quantity, string, number])[];

export const POWER_TABLE: ProofTable = {
  id: "power",
  title: "Power of a distorted voltage and current, one phase",
  source:
    "Inputs: IEEE 1459-2010, Annex B, tabulated in a public demonstration script; results computed from the standard's definitions outside this program. Tolerance ±1 %: class I of IEC 61000-4-7 for powers from 150 W on, from memory",
  confirmed: true,
  async *rows() {
    const orders = Object.entries(ANNEX_B).map(([order, values]) => ({ order: Number(order), values }));
    const signal: Signal = {
      durationS: 3,
      samplesPerSecond: 10_000,
      nominalFrequency: 60,
      declaredVoltage: 100,
      connection: "single",
      frequency: 59.93,
      voltage: {
        volts: 100,
        harmonics: orders.map(({ order, values: [percent, degrees] }) => ({ order, percent, degrees })),
      },
      currents: {
        amperes: 100,
        lagDegrees: LAG,
        // Angles of the scenario count from the zero crossing of the fundamental current.
        harmonics: orders.map(({ order, values: [, , percent, degrees] }) => ({
          order,
          percent,
          degrees: degrees + order * LAG,
        })),
      },
    };
    const result = await measured(signal, [power], { levels: ["window"] });
    for (const [what, quantity, unit, expected] of RESULTS) {
      const computed = farthest(result, { quantity, phase: "L1" }, expected);
      yield { what, unit, expected, computed, tolerance: 0.01 * expected };
    }
  },
};
