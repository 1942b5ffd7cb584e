import { voltageEvents } from "../analysis/waveform/voltage-events.js";
import type { VoltageEvent } from "../recording/measurements.js";
import { type Instant, isoUtc } from "../recording/time.js";
import { measured, type Signal } from "./measured.js";
import type { ProofTable } from "./proof-table.js";

interface Case {
  readonly what: string;
  readonly kind: VoltageEvent["kind"];
  readonly atS: number;
  readonly durationS: number;
  /** Of the declared voltage. */
  readonly percent: number;
}

const DECLARED = 230;

/** Starts anywhere in a cycle; depths and lengths as the test levels of IEC 61000-4-11 and beyond. */
const CASES: readonly Case[] = [
  { what: "dip to 70 %, 0.5 s", kind: "dip", atS: 1.2037, durationS: 0.5, percent: 70 },
  { what: "dip to 40 %, 0.2 s", kind: "dip", atS: 1.2, durationS: 0.2, percent: 40 },
  { what: "dip to 80 %, 5 s", kind: "dip", atS: 1.2051, durationS: 5, percent: 80 },
  { what: "dip to 85 %, 0.06 s", kind: "dip", atS: 1.2113, durationS: 0.06, percent: 85 },
  { what: "swell to 120 %, 0.3 s", kind: "swell", atS: 1.2071, durationS: 0.3, percent: 120 },
  { what: "swell to 140 %, 0.1 s", kind: "swell", atS: 1.2005, durationS: 0.1, percent: 140 },
  { what: "interruption, 1 s", kind: "interruption", atS: 1.2029, durationS: 1, percent: 0 },
];

export const EVENTS_TABLE: ProofTable = {
  id: "events",
  title: "Dips, swells and interruptions: size, start and length",
  source:
    "Size ±0.2 % of the declared voltage, length ±1 cycle (half a cycle at either end): IEC 61000-4-30 class A, from memory",
  confirmed: false,
  async *rows(quick) {
    for (const nominal of quick ? ([50] as const) : ([50, 60] as const)) {
      for (const given of CASES) yield* eventRows(given, nominal);
    }
  },
};

async function* eventRows(given: Case, nominalFrequency: 50 | 60) {
  const { kind, atS, durationS, percent } = given;
  const where = { atS, durationS };
  const signal: Signal = {
    durationS: atS + durationS + 1,
    samplesPerSecond: 10_000,
    nominalFrequency,
    declaredVoltage: DECLARED,
    connection: "single",
    frequency: nominalFrequency - 0.03,
    voltage: { volts: DECLARED, harmonics: [{ order: 5, percent: 4, degrees: 40 }] },
    ...(kind === "dip" && { dips: [{ ...where, residualPercent: percent }] }),
    ...(kind === "swell" && { swells: [{ ...where, percent }] }),
    ...(kind === "interruption" && { interruptions: [{ ...where, residualPercent: percent }] }),
  };
  const { events } = await measured(signal, [voltageEvents()]);
  const found = events.find((e) => e.kind === kind);
  const what = `${given.what}, ${nominalFrequency} Hz`;
  const cycle = 1 / nominalFrequency;
  yield {
    what: `${what}: voltage`,
    unit: "V",
    expected: (DECLARED * percent) / 100,
    computed: found?.extreme ?? Number.NaN,
    tolerance: 0.002 * DECLARED,
  };
  yield {
    what: `${what}: start`,
    unit: "s",
    expected: atS,
    computed: found === undefined ? Number.NaN : secondsOf(found.start),
    tolerance: cycle / 2,
  };
  yield {
    what: `${what}: length`,
    unit: "s",
    expected: durationS,
    computed: found?.durationS ?? Number.NaN,
    tolerance: cycle,
  };
}

/** Seconds after the full minute, at which the signals begin. */
function secondsOf(at: Instant): number {
  return Number(isoUtc(at).slice(17, -1));
}
