import type { WaveformChannel } from "../../recording/waveform.js";
import { Interpolator } from "../../signal/interpolator.js";
import { RealSpectrum } from "../../signal/real-spectrum.js";
import type { SampleHistory } from "../../signal/sample-history.js";
import { peak, squareIntegral } from "../../signal/square-integral.js";
import type { Band } from "./band.js";
import type { WindowChannel } from "./phenomenon.js";

interface MeteredChannel extends WindowChannel {
  rms: number;
  peak: number;
}

type Three<T> = readonly [T, T, T];

/** Measures basic windows: r.m.s. and peak of the samples as recorded, and the spectrum over just the window. */
export class WindowMeter {
  readonly channels: readonly MeteredChannel[];
  private readonly skews: readonly number[];
  private readonly spectrum: RealSpectrum;
  private readonly points: readonly Float64Array[];
  private readonly gains: Float64Array;
  private readonly interpolators = new Map<number, Interpolator>();

  constructor(
    channels: readonly WaveformChannel[],
    private readonly samplesPerSecond: number,
    private readonly band: Band,
    private readonly history: SampleHistory,
  ) {
    this.skews = channels.map((c) => c.skewS * samplesPerSecond);
    this.spectrum = new RealSpectrum(band.points);
    this.points = channels.map(() => new Float64Array(band.points));
    this.gains = new Float64Array(band.lines);
    this.channels = channels.map(() => ({
      rms: 0,
      peak: 0,
      spectrum: new Float64Array(2 * band.lines),
      squares: new Float64Array(band.lines),
    }));
  }

  /** Samples needed before and after a window at the nominal frequency. */
  reach(nominalFrequency: number): number {
    return this.interpolatorFor(nominalFrequency).reach + Math.ceil(Math.max(...this.skews.map(Math.abs)));
  }

  /** Fills `channels` from a window at sample positions from … to; false if the samples around it are not at hand. */
  measure(from: number, to: number): boolean {
    const { history, skews, channels } = this;
    const length = to - from;
    const interpolator = this.interpolatorFor((this.band.cycles / length) * this.samplesPerSecond);
    const { base } = history;
    if (from - Math.max(...skews) - interpolator.reach < base) return false;
    if (to - Math.min(...skews) + interpolator.reach >= history.end) return false;

    this.resample(interpolator, from - base, length / this.band.points);
    this.takeGains(interpolator, length);
    for (let c = 0; c < channels.length; c++) {
      const channel = channels[c] as MeteredChannel;
      const samples = history.channels[c] as Float64Array;
      const start = from - base - (skews[c] as number);
      channel.rms = Math.sqrt(Math.max(0, squareIntegral(samples, start, start + length) / length));
      channel.peak = peak(samples, start, start + length);
      this.spectrum.lines(channel.spectrum, this.points[c] as Float64Array, this.band.lines);
      this.undoDroop(channel);
    }
    return true;
  }

  private resample(interpolator: Interpolator, from: number, step: number): void {
    const { points, skews } = this;
    const inputs = this.history.channels;
    for (let c = 0; c < points.length; c++) {
      const skew = skews[c] as number;
      if (c + 2 < points.length && skews[c + 1] === skew && skews[c + 2] === skew) {
        interpolator.resampleThree(
          points.slice(c, c + 3) as unknown as Three<Float64Array>,
          inputs.slice(c, c + 3) as unknown as Three<Float64Array>,
          from - skew,
          step,
        );
        c += 2;
      } else {
        interpolator.resample(points[c] as Float64Array, inputs[c] as Float64Array, from - skew, step);
      }
    }
  }

  /** Lines beyond the band of the interpolation, which ends where the recorder's does, have no value. */
  private takeGains(interpolator: Interpolator, length: number): void {
    for (let k = 0; k < this.gains.length; k++) {
      const frequency = k / length;
      this.gains[k] = frequency <= interpolator.passband ? interpolator.inverseGain(frequency) : Number.NaN;
    }
  }

  private undoDroop({ spectrum, squares }: WindowChannel): void {
    for (let k = 0; k < squares.length; k++) {
      const gain = this.gains[k] as number;
      const re = (spectrum[2 * k] as number) * gain;
      const im = (spectrum[2 * k + 1] as number) * gain;
      spectrum[2 * k] = re;
      spectrum[2 * k + 1] = im;
      squares[k] = re * re + im * im;
    }
  }

  /** One interpolator serves all windows whose frequency rounds to the same number of hertz. */
  private interpolatorFor(frequency: number): Interpolator {
    const hertz = Math.round(frequency);
    let interpolator = this.interpolators.get(hertz);
    if (interpolator === undefined) {
      const { cycles, lines, points, edge } = this.band;
      const perSample = 1 / cycles / this.samplesPerSecond;
      const passband = Math.min(edge / this.samplesPerSecond, (lines - 1) * (hertz + 0.5) * perSample);
      interpolator = new Interpolator(passband, points * (hertz - 0.5) * perSample);
      this.interpolators.set(hertz, interpolator);
    }
    return interpolator;
  }
}
