import { frequency } from "../analysis/waveform/frequency.js";
import { magnitude } from "../analysis/waveform/magnitude.js";
import { farthest, measured, type Signal } from "./measured.js";
import type { ProofTable } from "./proof-table.js";

const DISTORTED = [
  { order: 3, percent: 5, degrees: 20 },
  { order: 5, percent: 6, degrees: 180 },
  { order: 7, percent: 5, degrees: -60 },
];

function single(nominalFrequency: 50 | 60, hertz: number, durationS: number, more: Partial<Signal> = {}): Signal {
  return {
    durationS,
    samplesPerSecond: 7000,
    nominalFrequency,
    declaredVoltage: 230,
    connection: "single",
    frequency: hertz,
    voltage: { volts: 230, harmonics: DISTORTED },
    ...more,
  };
}

/** % of the declared voltage, nominal frequency, frequency. */
const VOLTAGES = [
  [10, 50, 50],
  [50, 50, 49.87],
  [100, 50, 50],
  [100, 50, 47.3],
  [100, 50, 52.1],
  [150, 50, 50.23],
  [10, 60, 60],
  [100, 60, 59.37],
  [150, 60, 61.9],
] as const;

export const MAGNITUDE_TABLE: ProofTable = {
  id: "magnitude",
  title: "Magnitude of the supply voltage, with harmonics",
  source:
    "±0.1 % of the declared voltage for 10 … 150 % of it: IEC 61000-4-30 class A, second-hand; the range from memory. Of the 10/12-cycle values of 3 s the farthest",
  confirmed: false,
  async *rows(quick) {
    for (const [i, [percent, nominal, hertz]] of VOLTAGES.entries()) {
      if (quick && i % 2 === 1) continue;
      const volts = (230 * percent) / 100;
      const signal = single(nominal, hertz, 3, { voltage: { volts, harmonics: DISTORTED } });
      const expected = volts * Math.hypot(1, ...DISTORTED.map((h) => h.percent / 100));
      const result = await measured(signal, [magnitude], { levels: ["window"] });
      const computed = farthest(result, { quantity: "voltage", phase: "L1" }, expected);
      yield { what: `${percent} % of 230 V at ${hertz} Hz`, unit: "V", expected, computed, tolerance: 0.23 };
    }
  },
};

const FREQUENCIES = [
  [50, 42.5],
  [50, 47.3],
  [50, 50],
  [50, 50.23],
  [50, 57.5],
  [60, 51],
  [60, 60.3],
  [60, 69],
] as const;

export const FREQUENCY_TABLE: ProofTable = {
  id: "frequency",
  title: "Power frequency over 10 s, with harmonics and noise",
  source: "±10 mHz for 42.5 … 57.5 Hz and 51 … 69 Hz: IEC 61000-4-30 class A, from memory",
  confirmed: false,
  async *rows(quick) {
    const noise = { voltagePercent: 0.5, seed: 1 };
    for (const [i, [nominal, hertz]] of FREQUENCIES.entries()) {
      if (quick && i % 2 === 1) continue;
      const result = await measured(single(nominal, hertz, 10, { noise }), [frequency]);
      const computed = farthest(result, { quantity: "frequency", phase: "system" }, hertz);
      yield { what: `${hertz} Hz`, unit: "Hz", expected: hertz, computed, tolerance: 0.01 };
    }
    const rising = [
      { atS: 0, hertz: 49.8 },
      { atS: 10, hertz: 50.3 },
    ];
    const result = await measured(single(50, 50, 10, { noise, frequency: rising }), [frequency]);
    const computed = farthest(result, { quantity: "frequency", phase: "system" }, 50.05);
    yield { what: "from 49.8 Hz to 50.3 Hz in 10 s", unit: "Hz", expected: 50.05, computed, tolerance: 0.01 };
  },
};
