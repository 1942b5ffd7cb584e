import FFT from "fft.js";

/**
 * Fourier transform of 2ⁿ real points as a complex one of half the size: even points are taken as real, odd ones as
 * imaginary parts, and the two spectra are told apart by their symmetry.
 */
export class RealSpectrum {
  private readonly fft: FFT;
  private readonly mixed: Float64Array;
  private readonly turns: Float64Array;

  /** @param points 2ⁿ, at least 4 */
  constructor(readonly points: number) {
    this.fft = new FFT(points / 2);
    this.mixed = new Float64Array(points);
    this.turns = Float64Array.from({ length: points }, (_, i) => {
      const angle = (-2 * Math.PI * (i >> 1)) / points;
      return i % 2 === 0 ? Math.cos(angle) : Math.sin(angle);
    });
  }

  /**
   * Lines 0 … lines − 1 of the transform as r.m.s. phasors, real and imaginary part by turns: a sine of amplitude √2 that
   * fits k times into the points gives a line k of size 1. Line 0 is the mean.
   * @param lines at most points / 2
   */
  lines(out: Float64Array, points: Float64Array, lines: number): void {
    const { mixed, turns } = this;
    const size = mixed.length;
    this.fft.transform(mixed, points);
    const scale = Math.SQRT2 / this.points / 2;
    out[0] = ((mixed[0] as number) + (mixed[1] as number)) / this.points;
    out[1] = 0;
    for (let k = 2; k < 2 * lines; k += 2) {
      const re = mixed[k] as number;
      const im = mixed[k + 1] as number;
      const mirrorRe = mixed[size - k] as number;
      const mirrorIm = mixed[size - k + 1] as number;
      const oddRe = im + mirrorIm;
      const oddIm = mirrorRe - re;
      const cos = turns[k] as number;
      const sin = turns[k + 1] as number;
      out[k] = scale * (re + mirrorRe + cos * oddRe - sin * oddIm);
      out[k + 1] = scale * (im - mirrorIm + cos * oddIm + sin * oddRe);
    }
  }
}
