import { declaredToNeutral, phasesOf } from "./phases.js";
import type { Scenario, ScenarioPhase } from "./scenario.js";

const RADIANS = Math.PI / 180;

/** A sine with an r.m.s. value in V or A and an angle in radians at the first sample. */
export interface Sine {
  readonly rms: number;
  readonly angle: number;
}

/** What one conductor carries as the recording begins: a voltage to neutral or a current. */
export interface Wave {
  readonly phase: ScenarioPhase;
  /** By order from 1; the angle is that of the sine of order × phase. */
  readonly orders: ReadonlyMap<number, Sine>;
  readonly interharmonics: readonly (Sine & { readonly hertz: number })[];
  /** Whole r.m.s. over that of the fundamental. */
  readonly ratio: number;
}

export function voltageWaves(scenario: Scenario): Wave[] {
  const { voltage } = scenario;
  const fundamentals = fundamentalVoltages(scenario);
  return phasesOf(scenario).map((phase, k) => {
    const fundamental = fundamentals[k] as Sine;
    const interharmonics = voltage.interharmonics
      .filter((entry) => applies(entry, phase))
      .map(({ hertz, percent, degrees }) => ({
        hertz,
        rms: (percent / 100) * fundamental.rms,
        angle: fundamental.angle + degrees * RADIANS,
      }));
    return wave(phase, fundamental, voltage.harmonics, interharmonics);
  });
}

/** Undefined where the scenario has no currents. */
export function currentWaves(scenario: Scenario): Wave[] | undefined {
  const { currents } = scenario;
  if (currents === undefined) return undefined;
  const voltages = fundamentalVoltages(scenario);
  return phasesOf(scenario).map((phase, k) => {
    const own = currents.phases?.[phase];
    const rms = own?.amperes ?? (currents.amperes as number);
    const angle = (voltages[k] as Sine).angle - (own?.lagDegrees ?? currents.lagDegrees) * RADIANS;
    return wave(phase, { rms, angle }, currents.harmonics, []);
  });
}

function applies(
  { phases }: { readonly phases?: readonly ScenarioPhase[] | undefined },
  phase: ScenarioPhase,
): boolean {
  return phases === undefined || phases.includes(phase);
}

function wave(
  phase: ScenarioPhase,
  fundamental: Sine,
  harmonics: Scenario["voltage"]["harmonics"],
  interharmonics: Wave["interharmonics"],
): Wave {
  const orders = new Map([[1, fundamental]]);
  for (const { order, percent, degrees } of harmonics.filter((entry) => applies(entry, phase))) {
    const angle = order * fundamental.angle + degrees * RADIANS;
    orders.set(
      order,
      sum([orders.get(order) ?? { rms: 0, angle: 0 }, { rms: (percent / 100) * fundamental.rms, angle }]),
    );
  }
  const all = [...orders.values(), ...sameFrequencyAdded(interharmonics)];
  return { phase, orders, interharmonics, ratio: Math.hypot(...all.map(({ rms }) => rms)) / fundamental.rms };
}

function sameFrequencyAdded(list: Wave["interharmonics"]): Sine[] {
  const hertz = [...new Set(list.map((entry) => entry.hertz))];
  return hertz.map((f) => sum(list.filter((entry) => entry.hertz === f)));
}

/** Sum of sines of one frequency. */
export function sum(sines: readonly Sine[]): Sine {
  const re = sines.reduce((total, { rms, angle }) => total + rms * Math.cos(angle), 0);
  const im = sines.reduce((total, { rms, angle }) => total + rms * Math.sin(angle), 0);
  return { rms: Math.hypot(re, im), angle: Math.atan2(im, re) };
}

function fundamentalVoltages(scenario: Scenario): Sine[] {
  const { voltage, connection } = scenario;
  const { phases, volts, unbalance } = voltage;
  if (phases !== undefined) {
    return phasesOf(scenario).map((phase) => {
      const own = phases[phase] as { volts: number; degrees: number };
      return { rms: own.volts, angle: own.degrees * RADIANS };
    });
  }
  const positive = {
    rms: declaredToNeutral({ connection, declaredVoltage: volts as number }),
    angle: voltage.degrees * RADIANS,
  };
  const part = (percent: number, degrees: number) => ({
    rms: (percent / 100) * positive.rms,
    angle: positive.angle + degrees * RADIANS,
  });
  const negative = part(unbalance?.negativePercent ?? 0, unbalance?.negativeDegrees ?? 0);
  const zero = part(unbalance?.zeroPercent ?? 0, unbalance?.zeroDegrees ?? 0);
  const turned = ({ rms, angle }: Sine, thirds: number) => ({ rms, angle: angle + (thirds * 2 * Math.PI) / 3 });
  return phasesOf(scenario).map((_, k) =>
    unbalance === undefined ? turned(positive, -k) : sum([turned(positive, -k), turned(negative, k), zero]),
  );
}
