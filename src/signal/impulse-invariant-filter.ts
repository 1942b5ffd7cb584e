import { divide, multiply, productOfDistances, real, subtract, type TransferFunction } from "./transfer-function.js";

/**
 * Digital filter whose impulse response is the analogue one sampled: Σ T·rᵢ / (1 − e^(pᵢT) z⁻¹) over the poles pᵢ with
 * residues rᵢ (impulse invariance, any textbook of digital signal processing). Its response is the analogue one plus
 * that one's aliases around multiples of the sampling rate; there is no warping of the frequency axis. Meant for
 * filters that have fallen to nothing at the sampling rate.
 */
export class ImpulseInvariantFilter {
  private readonly decayRe: Float64Array;
  private readonly decayIm: Float64Array;
  private readonly weightRe: Float64Array;
  private readonly weightIm: Float64Array;
  private readonly stateRe: Float64Array;
  private readonly stateIm: Float64Array;

  /**
   * @throws RangeError where two poles coincide, or where the numerator's degree is not at least two below the
   * denominator's: the impulse response would then begin with a jump
   */
  constructor(filter: TransferFunction, samplesPerSecond: number) {
    if (filter.zeros.length > filter.poles.length - 2) throw new RangeError("The filter does not fall off fast enough");
    const upper = filter.poles.filter((pole) => pole.im >= 0);
    this.decayRe = new Float64Array(upper.length);
    this.decayIm = new Float64Array(upper.length);
    this.weightRe = new Float64Array(upper.length);
    this.weightIm = new Float64Array(upper.length);
    this.stateRe = new Float64Array(upper.length);
    this.stateIm = new Float64Array(upper.length);
    for (const [i, pole] of upper.entries()) {
      const others = filter.poles.filter((other) => other !== pole);
      const distances = productOfDistances(pole, others);
      if (distances.re === 0 && distances.im === 0) throw new RangeError("Two poles coincide");
      const residue = divide(multiply(real(filter.gain), productOfDistances(pole, filter.zeros)), distances);
      const decay = Math.exp(pole.re / samplesPerSecond);
      this.decayRe[i] = decay * Math.cos(pole.im / samplesPerSecond);
      this.decayIm[i] = decay * Math.sin(pole.im / samplesPerSecond);
      // A pair of conjugate poles adds up to twice the real part of one.
      const share = (pole.im > 0 ? 2 : 1) / samplesPerSecond;
      this.weightRe[i] = share * residue.re;
      this.weightIm[i] = share * residue.im;
    }
  }

  /** The state the filter would be in had the input been this constant for ever. */
  settleOn(input: number): void {
    for (let i = 0; i < this.stateRe.length; i++) {
      const decay = { re: this.decayRe[i] as number, im: this.decayIm[i] as number };
      const state = divide(real(input), subtract(real(1), decay));
      this.stateRe[i] = state.re;
      this.stateIm[i] = state.im;
    }
  }

  next(input: number): number {
    const { decayRe, decayIm, weightRe, weightIm, stateRe, stateIm } = this;
    let output = 0;
    for (let i = 0; i < stateRe.length; i++) {
      const re = stateRe[i] as number;
      const im = stateIm[i] as number;
      const a = decayRe[i] as number;
      const b = decayIm[i] as number;
      const newRe = a * re - b * im + input;
      const newIm = a * im + b * re;
      stateRe[i] = newRe;
      stateIm[i] = newIm;
      output += (weightRe[i] as number) * newRe - (weightIm[i] as number) * newIm;
    }
    return output;
  }
}
