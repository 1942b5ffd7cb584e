import { measureWaveform } from "../analysis/waveform/chain.js";
import type { ChainOptions, Phenomenon, PhenomenonResult } from "../analysis/waveform/phenomenon.js";
import type { SeriesKey } from "../recording/quantity.js";
import { scenarioOf } from "../synth/parse-scenario.js";
import type { GivenScenario } from "../synth/scenario.js";
import { synthesise } from "../synth/synthesise.js";

/** A scenario without what is the same for all of them here. */
export type Signal = Omit<GivenScenario, "title" | "start" | "zone" | "samplesPerSecond"> & {
  readonly samplesPerSecond: number;
};

export type Measured = Required<PhenomenonResult>;

/** Begins on a tick of ten minutes. */
const START = "2027-03-04T12:00:00Z";

/** Measures a made signal with the chain. */
export async function measured(
  signal: Signal,
  phenomena: readonly Phenomenon[],
  options: ChainOptions = {},
): Promise<Measured> {
  const scenario = scenarioOf({ ...signal, title: "check", start: START, zone: "UTC" });
  const { nominalFrequency, declaredVoltage, connection } = scenario;
  return measureWaveform(synthesise(scenario), { nominalFrequency, declaredVoltage, connection }, options, phenomena);
}

/** Of all values of a series the one farthest from what is expected. @throws RangeError if there is no such series */
export function farthest({ series }: Measured, key: SeriesKey, expected: number): number {
  const found = series.find(
    (s) => s.quantity === key.quantity && s.phase === key.phase && s.order === key.order && s.hertz === key.hertz,
  );
  if (found === undefined || found.values.length === 0) {
    throw new RangeError(`nothing was measured of ${JSON.stringify(key)}`);
  }
  return found.values.reduce((far, value) => (Math.abs(value - expected) <= Math.abs(far - expected) ? far : value));
}
