import { PHASE_TO_PHASE, type Phase } from "../recording/quantity.js";
import type { WaveformChannel } from "../recording/waveform.js";
import { declaredToNeutral } from "./phases.js";
import type { Scenario } from "./scenario.js";
import type { Wave } from "./waves.js";

/** A channel of the log: a sum of conductors, less others. */
export interface MadeChannel {
  readonly channel: WaveformChannel;
  /** Places in the list of the voltages followed by the currents. */
  readonly plus: readonly number[];
  readonly minus: readonly number[];
  /** Standard deviation of the noise, and the step between two values (0: none), in V or A. */
  readonly noise: number;
  readonly step: number;
}

/** The channels in the order of the log: voltages, currents, the current of the neutral. */
export function channelsOf(scenario: Scenario, voltages: readonly Wave[], currents: readonly Wave[]): MadeChannel[] {
  const { connection, noise, quantisation, currents: given } = scenario;
  const voltage = (phase: Phase, plus: number, minus: readonly number[]): MadeChannel => ({
    channel: channel("voltage", phase),
    plus: [plus],
    minus,
    noise: ((noise?.voltagePercent ?? 0) / 100) * declaredToNeutral(scenario),
    step: quantisation?.volts ?? 0,
  });
  const current = (phase: Phase, plus: readonly number[], size: number): MadeChannel => ({
    channel: channel("current", phase),
    plus,
    minus: [],
    noise: ((noise?.currentPercent ?? 0) / 100) * size,
    step: quantisation?.amperes ?? 0,
  });
  const sizeOf = (wave: Wave) => wave.orders.get(1)?.rms as number;
  const places = currents.map((_, k) => voltages.length + k);
  return [
    ...(connection === "delta"
      ? PHASE_TO_PHASE.map((phase, k) => voltage(phase, k, [(k + 1) % 3]))
      : voltages.map(({ phase }, k) => voltage(phase, k, []))),
    ...currents.map((wave, k) => current(wave.phase, [places[k] as number], sizeOf(wave))),
    ...(given?.neutral === true ? [current("N", places, Math.max(...currents.map(sizeOf)))] : []),
  ];
}

/** Named "U L1", "U L1-L2", "I N". */
function channel(quantity: WaveformChannel["quantity"], phase: Phase): WaveformChannel {
  const conductors = phase.replace(/^L(\d)(\d)$/, "L$1-L$2");
  return { name: `${quantity === "voltage" ? "U" : "I"} ${conductors}`, quantity, phase, skewS: 0 };
}
