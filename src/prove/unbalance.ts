import { unbalanceFromPhaseToPhase } from "../analysis/unbalance.js";
import { magnitudeOf, symmetricalComponents } from "../analysis/waveform/phasor.js";
import { unbalance } from "../analysis/waveform/unbalance.js";
import { farthest, measured, type Signal } from "./measured.js";
import type { ProofTable } from "./proof-table.js";

interface Phasor {
  readonly volts: number;
  readonly degrees: number;
}

interface Example {
  readonly what: string;
  readonly phases: readonly [Phasor, Phasor, Phasor];
  readonly u2: number;
  readonly u0: number;
}

const volts = (size: number, degrees: number): Phasor => ({ volts: size, degrees });

/** u0 of the first is computed from the published zero and positive sequence, 27.494 V and 93.222 V. */
const EXAMPLES: readonly Example[] = [
  {
    what: "100 V at 90°, 116 V at 0°, 71 V at 224.8°",
    phases: [volts(100, 90), volts(116, 0), volts(71, 224.8)],
    u2: 7.788,
    u0: 29.493,
  },
  {
    what: "230 V at 0°, 225 V at −121°, 235 V at 119°",
    phases: [volts(230, 0), volts(225, -121), volts(235, 119)],
    u2: 0.6734,
    u0: 1.83693,
  },
];

export const UNBALANCE_TABLE: ProofTable = {
  id: "unbalance",
  title: "Unbalance from waveforms",
  source:
    "Textbook-companion notebook on symmetrical components, Example 21_1, and a second example computed from the definition outside this program. Tolerance ±0.15 %: IEC 61000-4-30 class A, from memory",
  confirmed: true,
  async *rows() {
    for (const { what, phases, u2, u0 } of EXAMPLES) {
      const [L1, L2, L3] = phases;
      const signal: Signal = {
        durationS: 3,
        samplesPerSecond: 6400,
        nominalFrequency: 50,
        declaredVoltage: 100,
        connection: "star",
        frequency: 50.1,
        voltage: { phases: { L1, L2, L3 }, harmonics: [{ order: 5, percent: 4, degrees: 30 }] },
      };
      const result = await measured(signal, [unbalance], { levels: ["window"] });
      for (const [name, quantity, expected] of [
        ["u2", "negative-sequence-unbalance", u2],
        ["u0", "zero-sequence-unbalance", u0],
      ] as const) {
        const computed = farthest(result, { quantity, phase: "system" }, expected);
        yield { what: `${name} of ${what}`, unit: "%", expected, computed, tolerance: 0.15 };
      }
    }
  },
};

/** U12, U23, U31 in V and u2 in %. */
const PHASE_TO_PHASE = [
  [400, 400, 400, 0],
  [400, 390, 410, 2.88803],
  [400, 380, 400, 3.36297],
  [230, 240, 220, 5.02719],
  [200, 205, 220, 5.84145],
  [396.0195, 398.40306, 400.6656, 0.6734],
] as const;

export const UNBALANCE_FORMULA_TABLE: ProofTable = {
  id: "unbalance-from-phase-to-phase",
  title: "Unbalance from three r.m.s. values phase to phase",
  source:
    "Formula with β of IEC 61000-4-30, read in public code; numbers computed from it outside this program to five digits, the last from phasors",
  confirmed: true,
  *rows() {
    for (const [u12, u23, u31, expected] of PHASE_TO_PHASE) {
      const computed = unbalanceFromPhaseToPhase(u12, u23, u31);
      yield { what: `${u12}, ${u23}, ${u31} V`, unit: "%", expected, computed, tolerance: 0.00001 };
    }
  },
};

export const SEQUENCE_TABLE: ProofTable = {
  id: "symmetrical-components",
  title: "Symmetrical components",
  source: "Textbook-companion notebook on symmetrical components, Example 3.3.1: currents 12+24j, 16−2j, −4−6j A",
  confirmed: true,
  *rows() {
    const { zero, positive, negative } = symmetricalComponents(
      { re: 12, im: 24 },
      { re: 16, im: -2 },
      { re: -4, im: -6 },
    );
    const row = (what: string, expected: number, computed: number) => ({
      what,
      unit: "A",
      expected,
      computed,
      tolerance: 0.0005,
    });
    yield row("zero sequence, real part", 8, zero.re);
    yield row("zero sequence, imaginary part", 5.333, zero.im);
    yield row("positive sequence, size", 15.1305, magnitudeOf(positive));
    yield row("negative sequence, size", 4.7565, magnitudeOf(negative));
  },
};
