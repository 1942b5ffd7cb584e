import type { WaveformBlock, WaveformSource } from "../../src/recording/waveform.js";
import { type CheckedScenario, scenarioOf } from "../../src/synth/parse-scenario.js";
import type { GivenScenario } from "../../src/synth/scenario.js";

/** One second of 230 V at 50 Hz and 6400 samples per second, with what is laid over it. */
export function scenario(given: Partial<GivenScenario> = {}): CheckedScenario {
  return scenarioOf({
    title: "Test bench (invented)",
    start: "2027-03-04T12:00:00Z",
    zone: "UTC",
    durationS: 1,
    samplesPerSecond: 6400,
    nominalFrequency: 50,
    declaredVoltage: 230,
    connection: "star",
    frequency: 50,
    voltage: { volts: 230 },
    ...given,
  });
}

/** All samples of each channel by name. */
export async function samplesOf(source: WaveformSource): Promise<Record<string, Float64Array>> {
  const whole = source.channels.map(() => new Float64Array(source.length));
  for await (const { first, samples } of source.blocks() as AsyncIterable<WaveformBlock>) {
    for (const [c, block] of samples.entries()) whole[c]?.set(block, first);
  }
  return Object.fromEntries(source.channels.map(({ name }, c) => [name, whole[c] as Float64Array]));
}

/** R.m.s. value and angle in degrees of the sine at a frequency, by the defining sum over [from, to). */
export function sineAt(samples: Float64Array, rate: number, hertz: number, from = 0, to = samples.length) {
  let re = 0;
  let im = 0;
  for (let i = from; i < to; i++) {
    const angle = 2 * Math.PI * hertz * (i / rate);
    re += (samples[i] as number) * Math.sin(angle);
    im += (samples[i] as number) * Math.cos(angle);
  }
  const scale = Math.SQRT2 / (to - from);
  return { rms: scale * Math.hypot(re, im), degrees: (Math.atan2(im, re) * 180) / Math.PI };
}

export function rms(samples: Float64Array, from = 0, to = samples.length): number {
  let squares = 0;
  for (let i = from; i < to; i++) squares += (samples[i] as number) ** 2;
  return Math.sqrt(squares / (to - from));
}

/** Largest distance between two signals. */
export function farthest(samples: Float64Array, expected: (i: number) => number): number {
  return samples.reduce((largest, value, i) => Math.max(largest, Math.abs(value - expected(i))), 0);
}
