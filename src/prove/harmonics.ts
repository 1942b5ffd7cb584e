import { harmonics } from "../analysis/waveform/harmonics.js";
import { mainsSignalling } from "../analysis/waveform/mains-signalling.js";
import { farthest, measured, type Signal } from "./measured.js";
import type { ProofTable } from "./proof-table.js";

/** % of the fundamental by order, each with its own angle. */
const SPECTRUM: Readonly<Record<number, number>> = {
  2: 0.1,
  3: 20,
  5: 12,
  7: 0.5,
  11: 3.5,
  13: 1,
  19: 0.2,
  25: 1.5,
  31: 0.1,
  40: 0.9,
  49: 5,
  50: 0.3,
};
/** Without a component, beside large ones. */
const EMPTY = [4, 6, 48];

/** Nominal frequency, frequency, samples per second: no rate is a multiple of the frequency. */
const SIGNALS = [
  [50, 47.3, 10_000],
  [50, 49.87, 12_800],
  [50, 50.23, 6400],
  [50, 52.1, 20_000],
  [60, 58.61, 10_240],
  [60, 61.3, 10_000],
] as const;

function distorted(nominalFrequency: 50 | 60, hertz: number, samplesPerSecond: number): Signal {
  const list = Object.entries(SPECTRUM).map(([order, percent], i) => ({
    order: Number(order),
    percent,
    degrees: 47 * i,
  }));
  return {
    durationS: 2,
    samplesPerSecond,
    nominalFrequency,
    declaredVoltage: 230,
    connection: "single",
    frequency: hertz,
    voltage: {
      volts: 230,
      harmonics: list,
      // In the middle of the group above order 8, and as large as class I still measures.
      interharmonics: [{ hertz: 8.5 * hertz, percent: 0.4, degrees: 33 }],
    },
  };
}

/** IEC 61000-4-7, class I, in % of the nominal voltage. */
const classI = (percent: number) => (percent >= 1 ? 0.05 * percent : 0.05);

export const HARMONICS_TABLE: ProofTable = {
  id: "harmonics",
  title: "Harmonic voltages off the nominal frequency",
  source:
    "Class I: ±5 % of the value from 1 % of the nominal voltage on, ±0.05 % of the nominal voltage below: IEC 61000-4-7, from memory. Subgroups; of the 10/12-cycle values of 2 s the farthest",
  confirmed: false,
  async *rows(quick) {
    for (const [i, [nominal, hertz, rate]] of SIGNALS.entries()) {
      if (quick && i % 3 !== 0) continue;
      const result = await measured(distorted(nominal, hertz, rate), [harmonics], { levels: ["window"] });
      const at = `${hertz} Hz, ${rate} samples per second`;
      for (const order of [...Object.keys(SPECTRUM).map(Number), ...EMPTY].sort((a, b) => a - b)) {
        const expected = SPECTRUM[order] ?? 0;
        const computed = farthest(result, { quantity: "harmonic-voltage", phase: "L1", order }, expected);
        yield { what: `order ${order}, ${at}`, unit: "%", expected, computed, tolerance: classI(expected) };
      }
      const between = farthest(result, { quantity: "interharmonic-voltage", phase: "L1", order: 8 }, 0.4);
      yield { what: `above order 8, ${at}`, unit: "%", expected: 0.4, computed: between, tolerance: classI(0.4) };
    }
  },
};

export const THD_TABLE: ProofTable = {
  id: "thd",
  title: "Total harmonic distortion",
  source:
    "√Σ(Yn/Y1)², IEC 61000-2-2 as quoted in the public IEC term base; 100 V with 20 V of order 3 is the example of a public modelling library. Tolerance: class I of IEC 61000-4-7, from memory",
  confirmed: true,
  async *rows() {
    const signal = { ...distorted(50, 50, 10_000), voltage: { volts: 100, harmonics: [{ order: 3, percent: 20 }] } };
    const result = await measured(signal, [harmonics], { levels: ["window"] });
    const computed = farthest(result, { quantity: "thd-voltage", phase: "L1" }, 20);
    yield { what: "100 V and 20 V of order 3", unit: "%", expected: 20, computed, tolerance: 1 };
  },
};

/** Hz and % of the declared voltage; far enough apart not to share spectral lines. */
const CARRIERS = [
  [175, 3],
  [316.67, 6],
  [425, 2],
  [1060, 5],
] as const;

export const SIGNALLING_TABLE: ProofTable = {
  id: "mains-signalling",
  title: "Mains signalling voltages",
  source:
    "±5 % of the value from 3 % to 15 % of the declared voltage, ±0.15 % of it from 1 % to 3 %: IEC 61000-4-30 class A, from memory. 3-s values",
  confirmed: false,
  async *rows() {
    const signal: Signal = {
      ...distorted(50, 50.02, 10_000),
      durationS: 4,
      voltage: { volts: 230, interharmonics: CARRIERS.map(([hertz, percent]) => ({ hertz, percent })) },
    };
    const options = { levels: ["3s"] as const, signallingFrequencies: CARRIERS.map(([hertz]) => hertz) };
    const result = await measured(signal, [mainsSignalling], options);
    for (const [hertz, expected] of CARRIERS) {
      const computed = farthest(result, { quantity: "mains-signalling", phase: "L1", hertz }, expected);
      const tolerance = expected >= 3 ? 0.05 * expected : 0.15;
      yield { what: `${hertz} Hz`, unit: "%", expected, computed, tolerance };
    }
  },
};
