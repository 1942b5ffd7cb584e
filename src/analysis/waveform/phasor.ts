/** Phasors and symmetrical components. */
export interface Phasor {
  readonly re: number;
  readonly im: number;
}

const HALF_ROOT_3 = Math.sqrt(3) / 2;

export interface SymmetricalComponents {
  readonly zero: Phasor;
  readonly positive: Phasor;
  readonly negative: Phasor;
}

/**
 * Zero, positive and negative sequence of three phasors: X0 = (A + B + C)/3, X1 = (A + aB + a²C)/3,
 * X2 = (A + a²B + aC)/3 with a = 1∠120° (Fortescue 1918; IEC 61000-4-30, 5.7.1).
 */
export function symmetricalComponents(a: Phasor, b: Phasor, c: Phasor): SymmetricalComponents {
  const sum = { re: b.re + c.re, im: b.im + c.im };
  // aB + a²C = −(B + C)/2 + j·(√3/2)·(B − C), and a²B + aC is the same with −j.
  const turned = { re: -HALF_ROOT_3 * (b.im - c.im), im: HALF_ROOT_3 * (b.re - c.re) };
  const rest = { re: a.re - sum.re / 2, im: a.im - sum.im / 2 };
  return {
    zero: { re: (a.re + sum.re) / 3, im: (a.im + sum.im) / 3 },
    positive: { re: (rest.re + turned.re) / 3, im: (rest.im + turned.im) / 3 },
    negative: { re: (rest.re - turned.re) / 3, im: (rest.im - turned.im) / 3 },
  };
}

export function magnitudeOf({ re, im }: Phasor): number {
  return Math.hypot(re, im);
}

/** Line k of a spectrum of real and imaginary parts by turns. */
export function line(spectrum: Float64Array, k: number): Phasor {
  return { re: spectrum[2 * k] as number, im: spectrum[2 * k + 1] as number };
}
