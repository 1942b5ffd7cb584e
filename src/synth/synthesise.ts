import type { WaveformBlock, WaveformSource } from "../recording/waveform.js";
import { channelsOf, type MadeChannel } from "./channels.js";
import { Conductor } from "./conductor.js";
import { FrequencyCourse } from "./frequency-course.js";
import { LARGEST_NOISE, noiseAt } from "./noise.js";
import { type CheckedScenario, loggedSpan } from "./parse-scenario.js";
import { type Modulation, modulationAt, type SignalSpan, spansOf } from "./spans.js";
import { currentWaves, voltageWaves, type Wave } from "./waves.js";

export interface SynthesisedSource extends WaveformSource {
  /** Largest magnitude that each channel can have, in V or A. */
  readonly bounds: readonly number[];
}

/**
 * The waveforms of a scenario, each sample a closed form of its time: computed when a block is asked for, so that memory
 * does not grow with the length, and independent of the length of the blocks. Changes are abrupt: the sample at the time
 * of a change is the first of what follows. Noise and then quantisation come last.
 * @throws RangeError for a scenario without a sampling rate
 */
export function synthesise(scenario: CheckedScenario, blockLength = 4096): SynthesisedSource {
  const { samplesPerSecond, durationS } = scenario;
  if (samplesPerSecond === undefined) throw new RangeError("the scenario asks for no waveforms");
  const voltages = voltageWaves(scenario);
  const currents = currentWaves(scenario) ?? [];
  const spans = spansOf(scenario, voltages);
  const made = channelsOf(scenario, voltages, currents);
  const sampler = new Sampler(scenario, [...voltages, ...currents], voltages.length, spans, made);
  const length = Math.round(durationS * samplesPerSecond);
  return {
    channels: made.map(({ channel }) => channel),
    samplesPerSecond,
    start: loggedSpan(scenario).start,
    length,
    bounds: sampler.bounds(),
    async *blocks(): AsyncGenerator<WaveformBlock> {
      for (let first = 0; first < length; first += blockLength) {
        yield { first, samples: sampler.samples(first, Math.min(blockLength, length - first), samplesPerSecond) };
      }
    },
  };
}

class Sampler {
  private readonly course: FrequencyCourse;
  private readonly conductors: readonly Conductor[];
  private readonly seed: number;

  constructor(
    scenario: CheckedScenario,
    waves: readonly Wave[],
    private readonly voltages: number,
    private readonly spans: readonly SignalSpan[],
    private readonly made: readonly MadeChannel[],
  ) {
    this.course = new FrequencyCourse(scenario);
    this.conductors = waves.map((wave) => new Conductor(wave));
    this.seed = scenario.noise?.seed ?? 0;
  }

  samples(first: number, count: number, samplesPerSecond: number): Float64Array[] {
    const { conductors, course, spans, made } = this;
    const out = made.map(() => new Float64Array(count));
    const values = new Float64Array(conductors.length);
    let s = spans.findLastIndex((span) => span.fromS <= first / samplesPerSecond);
    for (let i = 0; i < count; i++) {
      const t = (first + i) / samplesPerSecond;
      while (t >= (spans[s] as SignalSpan).toS && s + 1 < spans.length) s++;
      const cycles = course.cyclesAt(t);
      const angle = 2 * Math.PI * (cycles - Math.floor(cycles));
      const sin = Math.sin(angle);
      const cos = Math.cos(angle);
      for (let c = 0; c < values.length; c++) {
        values[c] = this.factor(spans[s] as SignalSpan, c, t) * (conductors[c] as Conductor).at(sin, cos, t);
      }
      for (let m = 0; m < made.length; m++) (out[m] as Float64Array)[i] = this.value(m, values, first + i);
    }
    return out;
  }

  bounds(): number[] {
    const largest = this.conductors.map((conductor, c) => {
      const factors = this.spans.map((span) => {
        const percent = (c < this.voltages ? span.modulations[c]?.percent : undefined) ?? 0;
        return (this.steady(span, c) as number) * (1 + percent / 200);
      });
      return conductor.bound * Math.max(...factors);
    });
    return this.made.map(({ plus, minus, noise, step }) => {
      const sum = [...plus, ...minus].reduce((total, c) => total + (largest[c] as number), 0);
      return sum + LARGEST_NOISE * noise + step;
    });
  }

  private factor(span: SignalSpan, conductor: number, t: number): number {
    const steady = this.steady(span, conductor);
    const modulation: Modulation | undefined = conductor < this.voltages ? span.modulations[conductor] : undefined;
    return modulation === undefined ? steady : steady * (1 + modulationAt(modulation, t));
  }

  private steady(span: SignalSpan, conductor: number): number {
    const { voltages } = this;
    return (
      conductor < voltages ? span.voltageFactors[conductor] : span.currentFactors[conductor - voltages]
    ) as number;
  }

  private value(m: number, values: Float64Array, sample: number): number {
    const { plus, minus, noise, step } = this.made[m] as MadeChannel;
    let value = 0;
    for (let k = 0; k < plus.length; k++) value += values[plus[k] as number] as number;
    for (let k = 0; k < minus.length; k++) value -= values[minus[k] as number] as number;
    if (noise > 0) value += noise * noiseAt(this.seed, m, sample);
    return step > 0 ? Math.round(value / step) * step : value;
  }
}
