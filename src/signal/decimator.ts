import { kaiser, kaiserBeta, kaiserLength } from "./kaiser.js";

const ATTENUATION_DB = 80;

/**
 * Low pass for taking every `factor`-th sample: Kaiser-windowed sinc, gain 1 at zero frequency, with a transition
 * symmetrical about half the new rate. The number of taps is a multiple of four.
 * @param passHertz end of the flat part; what the new rate folds back into it is 80 dB down
 */
function lowPassTaps(samplesPerSecond: number, factor: number, passHertz: number): Float64Array {
  const transition = 1 / factor - (2 * passHertz) / samplesPerSecond;
  const length = 4 * Math.ceil(kaiserLength(ATTENUATION_DB, transition) / 4);
  const beta = kaiserBeta(ATTENUATION_DB);
  const middle = (length - 1) / 2;
  const taps = Float64Array.from({ length }, (_, i) => {
    const x = (i - middle) / factor;
    const sinc = x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    return sinc * kaiser((i - middle) / middle, beta);
  });
  const sum = taps.reduce((a, b) => a + b);
  return taps.map((tap) => tap / sum);
}

/** Most samples that one call of `push` may bring. */
const MAX_PUSH = 1024;

/** Low pass and every `factor`-th sample of it; the same samples out however the samples in are cut into pieces. */
export class Decimator {
  readonly maxPush = MAX_PUSH;
  readonly maxOutput: number;
  private readonly factor: number;
  private readonly taps: Float64Array;
  private readonly window: Float64Array;
  /** Samples in the window; the next output needs `taps.length` of them. */
  private held = 0;

  constructor(samplesPerSecond: number, factor: number, passHertz: number) {
    this.factor = factor;
    this.taps = lowPassTaps(samplesPerSecond, factor, passHertz);
    this.window = new Float64Array(this.taps.length + MAX_PUSH);
    this.maxOutput = Math.ceil(MAX_PUSH / factor) + 1;
  }

  /** Takes `count` samples, at most `maxPush`, from the start of `samples`; returns how many it wrote to `output`. */
  push(samples: Float64Array, count: number, output: Float64Array): number {
    const { factor, taps, window } = this;
    const length = taps.length;
    window.set(count === samples.length ? samples : samples.subarray(0, count), this.held);
    const held = this.held + count;
    let start = 0;
    let outputs = 0;
    for (; start + length <= held; start += factor) {
      // Four sums, because each addition would otherwise wait for the one before.
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let i = 0; i < length; i += 4) {
        const at = start + i;
        a += (taps[i] as number) * (window[at] as number);
        b += (taps[i + 1] as number) * (window[at + 1] as number);
        c += (taps[i + 2] as number) * (window[at + 2] as number);
        d += (taps[i + 3] as number) * (window[at + 3] as number);
      }
      output[outputs++] = a + b + (c + d);
    }
    window.copyWithin(0, start, held);
    this.held = held - start;
    return outputs;
  }
}
