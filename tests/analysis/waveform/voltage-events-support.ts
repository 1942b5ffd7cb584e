import { bandFor } from "../../../src/analysis/waveform/band.js";
import { FlaggedSpans } from "../../../src/analysis/waveform/flagged-spans.js";
import type {
  BasicWindow,
  ChainSetup,
  Phenomenon,
  PhenomenonResult,
  PhenomenonState,
} from "../../../src/analysis/waveform/phenomenon.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";
import type { Phase } from "../../../src/recording/quantity.js";
import { SECOND } from "../../../src/recording/time.js";
import type { WaveformChannel } from "../../../src/recording/waveform.js";
import { SampleHistory } from "../../../src/signal/sample-history.js";
import { START } from "../../support/series.js";
import { current, voltage } from "../../support/waveform.js";

const RATE = 10_000;

/** From a time in s on, the r.m.s. value of a sine is this; NaN: its samples are missing. */
export type Step = readonly [from: number, rms: number];

export interface DrivenChannel {
  readonly channel: WaveformChannel;
  /** Phase of the sine in degrees at time 0. */
  readonly degrees: number;
  readonly steps: readonly Step[];
}

/** Three phase voltages of 230 V, 120° apart, with steps of r.m.s. value on each. */
export function threePhases(l1: readonly Step[], l2: readonly Step[] = [], l3: readonly Step[] = []): DrivenChannel[] {
  return [l1, l2, l3].map((steps, i) => ({
    channel: voltage(["L1", "L2", "L3"][i] as Phase),
    degrees: -120 * i,
    steps: [[0, 230], ...steps],
  }));
}

export function onePhase(...steps: Step[]): DrivenChannel[] {
  return threePhases(steps).slice(0, 1);
}

export function oneCurrent(...steps: Step[]): DrivenChannel[] {
  return [{ channel: current("L1"), degrees: 0, steps }];
}

/** A value that is V volts from `from` to `to`, and 230 V after it. */
export const sag = (from: number, to: number, volts: number): Step[] => [
  [from, volts],
  [to, 230],
];

export interface Drive {
  readonly seconds: number;
  readonly hertz?: number;
  /** Times in s of the signal at which a gap of one second follows; nothing is measured across it. */
  readonly gaps?: readonly number[];
  readonly setup?: Partial<ChainSetup>;
}

export function setupFor(channels: readonly DrivenChannel[], given: Partial<ChainSetup> = {}): ChainSetup {
  return {
    channels: channels.map((c) => c.channel),
    samplesPerSecond: RATE,
    start: START,
    length: 0,
    nominalFrequency: 50,
    declaredVoltage: 230,
    connection: "star",
    options: {},
    flags: new FlaggedSpans(),
    history: new SampleHistory(channels.length, RATE),
    band: bandFor(RATE, 50, 0),
    ...given,
  };
}

/**
 * Hands phenomena the half cycles and basic windows of sines with steps, computed in closed form, in the order of the
 * chain. Zero crossings are those of a sine of phase 0.
 */
export function drive(
  phenomena: readonly Phenomenon[],
  channels: readonly DrivenChannel[],
  { seconds, hertz = 50, gaps = [], setup: given }: Drive,
): { results: PhenomenonResult[]; setup: ChainSetup } {
  const setup = setupFor(channels, given);
  const states: PhenomenonState[] = phenomena.map((p) => p.start(setup));
  const period = 1 / hertz;
  const n = channels.length;
  const half = {
    from: 0,
    period: period * RATE,
    oneCycle: new Float64Array(n),
    halfCycle: new Float64Array(n),
    peak: new Float64Array(n),
  };
  let nextWindow = 0;
  const windowLength = 10 * period;
  const pending = [...gaps];
  for (let k = 0; (k / 2 + 1) * period <= seconds; k++) {
    const from = (k * period) / 2;
    while (nextWindow + windowLength <= from + 1e-9) {
      const window = basicWindow(setup, channels, hertz, nextWindow, nextWindow + windowLength);
      for (const state of states) state.window?.(window);
      nextWindow += windowLength;
    }
    const gap = pending[0];
    if (gap !== undefined && from + period > gap) {
      if (from < gap + 1) continue;
      for (const state of states) state.gap?.(Math.round(from * RATE));
      pending.shift();
      nextWindow = from;
    }
    half.from = from * RATE;
    for (const [c, channel] of channels.entries()) {
      half.oneCycle[c] = rms(channel, hertz, from, from + period);
      half.halfCycle[c] = rms(channel, hertz, from, from + period / 2);
      half.peak[c] = Math.SQRT2 * (half.halfCycle[c] as number);
    }
    for (const state of states) state.halfCycle?.(half);
  }
  return { results: states.map((s) => s.finish()), setup };
}

/** Events of the first phenomenon. */
export function eventsOf(...args: Parameters<typeof drive>): readonly VoltageEvent[] {
  return drive(...args).results[0]?.events ?? [];
}

/** Seconds from the start of the recording to the start of an event. */
export const startOf = (event: Pick<VoltageEvent, "start">) => (event.start - START) / SECOND;

/** R.m.s. value of a sine with steps, by the integral of its square. */
export function rms({ degrees, steps }: DrivenChannel, hertz: number, from: number, to: number): number {
  const omega = 2 * Math.PI * hertz;
  const phase = (degrees * Math.PI) / 180;
  const integral = (t: number) => t - Math.sin(2 * (omega * t + phase)) / (2 * omega);
  let sum = 0;
  for (const [i, [at, volts]] of steps.entries()) {
    const a = Math.max(from, at);
    const b = Math.min(to, steps[i + 1]?.[0] ?? Number.POSITIVE_INFINITY);
    if (b > a) sum += volts * volts * (integral(b) - integral(a));
  }
  return Math.sqrt(Math.max(0, sum / (to - from)));
}

function basicWindow(
  setup: ChainSetup,
  channels: readonly DrivenChannel[],
  hertz: number,
  from: number,
  to: number,
): BasicWindow {
  const none = new Float64Array(0);
  return {
    from: from * RATE,
    to: to * RATE,
    start: START + Math.round(from * SECOND),
    end: START + Math.round(to * SECOND),
    cycles: 10,
    flagged: setup.flags.touches(from * RATE, to * RATE),
    channels: channels.map((c) => ({ rms: rms(c, hertz, from, to), peak: 0, spectrum: none, squares: none })),
  };
}
