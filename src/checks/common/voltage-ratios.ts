import type { Setup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import { figure } from "./wording.js";

/** Why a measured voltage lies at a certain ratio to the declared one, and what to do about it. */
export interface Explanation {
  readonly id: string;
  readonly sentence: Text;
}

interface UsualRatio {
  readonly id: string;
  readonly ratio: number;
  /** How close the ratio must be where a very bad supply could reach it too. */
  readonly tolerance: number;
  readonly sentence: (median: number, setup: Setup) => Text;
}

const SQRT3 = Math.sqrt(3);
/** Where no supply in service can be, the nearest usual ratio explains a median up to this far from it. */
const WIDE = 0.1;

const transformer = () =>
  say`that is the factor of a wrong voltage transformer ratio or a misplaced decimal point, so give voltageRatio in the setup, or --declared`;
const unit = () =>
  say`that is the factor between V and kV or mV and V, so state the unit of the voltage columns in the setup, or give --declared in volts`;

const USUAL: readonly UsualRatio[] = [
  {
    id: "phase-to-phase-logged",
    ratio: SQRT3,
    tolerance: 0.03,
    sentence: (_, { connection, declaredVoltage }) =>
      connection.value === "delta"
        ? say`that is √3 and the declared voltage seems to be phase to neutral, so give it phase to phase: --declared ${figure(declaredVoltage.value * SQRT3)}`
        : say`that is √3 and the log seems to hold voltages between phases, so give --connection delta and the declared voltage between phases: --declared ${figure(declaredVoltage.value * SQRT3)}`,
  },
  {
    // The commonest mistake (400 V given for 230 V), and supplies lie up to 10 % off their nominal voltage; no supply
    // of use to anyone spends half of its time at 52 to 64 % of the declared voltage.
    id: "phase-to-neutral-logged",
    ratio: 1 / SQRT3,
    tolerance: WIDE,
    sentence: (_, { connection, declaredVoltage }) =>
      connection.value === "delta"
        ? say`that is 1/√3 and the log seems to hold voltages to neutral, so give --connection star and the declared voltage to neutral: --declared ${figure(declaredVoltage.value / SQRT3)}`
        : say`that is 1/√3 and the declared voltage seems to be phase to phase, so give it to neutral: --declared ${figure(declaredVoltage.value / SQRT3)}`,
  },
  { id: "factor-2", ratio: 2, tolerance: 0.02, sentence: transformer },
  { id: "factor-1/2", ratio: 0.5, tolerance: 0.02, sentence: transformer },
  { id: "factor-10", ratio: 10, tolerance: 0.02, sentence: transformer },
  { id: "factor-1/10", ratio: 0.1, tolerance: 0.02, sentence: transformer },
  { id: "factor-100", ratio: 100, tolerance: 0.02, sentence: transformer },
  { id: "factor-1/100", ratio: 0.01, tolerance: 0.02, sentence: transformer },
  { id: "factor-1000", ratio: 1000, tolerance: 0.02, sentence: unit },
  { id: "factor-1/1000", ratio: 0.001, tolerance: 0.02, sentence: unit },
];

/** Rated secondary voltages of voltage transformers, V (IEC 61869-3, from memory). */
const SECONDARY = [100, 110, 100 / SQRT3, 110 / SQRT3] as const;

/** The usual mistake that puts the median where it is. `certain`: the median lies where no supply in service can be. */
export function explain(median: number, setup: Setup, certain: boolean): Explanation | undefined {
  const declared = setup.declaredVoltage.value;
  const off = (expected: number) => Math.abs(Math.log(median / expected));
  if (certain && declared >= 1000) {
    const secondary = SECONDARY.find((v) => off(v) < Math.log1p(0.05));
    if (secondary !== undefined) {
      return {
        id: "secondary-voltage",
        sentence: say`that is near ${figure(secondary)} V, a secondary voltage of voltage transformers, so give their ratio as voltageRatio in the setup, such as ${figure(declared)}/${figure(secondary)}`,
      };
    }
  }
  const nearest = USUAL.reduce((a, b) => (off(b.ratio * declared) < off(a.ratio * declared) ? b : a));
  if (off(nearest.ratio * declared) > Math.log1p(certain ? WIDE : nearest.tolerance)) return undefined;
  return { id: nearest.id, sentence: nearest.sentence(median, setup) };
}

/** Nominal voltages in use, V (IEC 60038 and national practice, from memory). */
const TO_NEUTRAL = [100, 110, 120, 127, 220, 230, 240, 254, 277, 347, 400];
const BETWEEN_PHASES = [
  200, 208, 220, 240, 380, 400, 415, 440, 480, 500, 525, 600, 690, 1000, 3000, 3300, 4160, 6000, 6600, 10000, 10500,
  11000, 12470, 13200, 13800, 15000, 20000, 20800, 22000, 24940, 30000, 33000, 34500, 35000, 66000, 110000,
];
const NOMINAL_TOLERANCE = 0.015;

/** Another nominal voltage within 1.5 % of the median and nearer to it than the declared one. */
export function otherNominal(median: number, declared: number, betweenPhases: boolean): number | undefined {
  const medium = BETWEEN_PHASES.filter((v) => v >= 1000).map((v) => v / SQRT3);
  const candidates = betweenPhases ? BETWEEN_PHASES : [...TO_NEUTRAL, ...medium];
  const distance = (v: number) => Math.abs(Math.log(median / v));
  const nearest = candidates.reduce((a, b) => (distance(b) < distance(a) ? b : a));
  if (Math.abs(median - nearest) > NOMINAL_TOLERANCE * nearest) return undefined;
  return distance(nearest) < distance(declared) ? nearest : undefined;
}
