/** Analogue transfer functions as gain, zeros and poles, in rad/s. */

export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** gain · Π(s − zero) / Π(s − pole). Complex zeros and poles come with their conjugates. */
export interface TransferFunction {
  readonly gain: number;
  readonly zeros: readonly Complex[];
  readonly poles: readonly Complex[];
}

export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

export const divide = (a: Complex, b: Complex): Complex => {
  const norm = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / norm, im: (a.im * b.re - a.re * b.im) / norm };
};

export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });

export const real = (re: number): Complex => ({ re, im: 0 });

/** Π(s − root) over the roots. */
export function productOfDistances(s: Complex, roots: readonly Complex[]): Complex {
  return roots.reduce((product, root) => multiply(product, subtract(s, root)), real(1));
}

/** Value at s = j2πf. */
export function responseAt(filter: TransferFunction, hertz: number): Complex {
  const s = { re: 0, im: 2 * Math.PI * hertz };
  const zeros = multiply(real(filter.gain), productOfDistances(s, filter.zeros));
  return divide(zeros, productOfDistances(s, filter.poles));
}

export function magnitudeAt(filter: TransferFunction, hertz: number): number {
  const { re, im } = responseAt(filter, hertz);
  return Math.hypot(re, im);
}

/** One filter after the other. */
export function cascade(...filters: readonly TransferFunction[]): TransferFunction {
  return {
    gain: filters.reduce((gain, filter) => gain * filter.gain, 1),
    zeros: filters.flatMap((filter) => filter.zeros),
    poles: filters.flatMap((filter) => filter.poles),
  };
}

/** Butterworth low pass of even order: gain 1 at zero frequency, −3 dB at the corner. */
export function butterworthLowPass(order: number, cornerHertz: number): TransferFunction {
  if (order % 2 !== 0) throw new RangeError("The order must be even");
  const corner = 2 * Math.PI * cornerHertz;
  const poles = Array.from({ length: order }, (_, k) => {
    const angle = (Math.PI * (2 * k + 1 + order)) / (2 * order);
    return { re: corner * Math.cos(angle), im: corner * Math.sin(angle) };
  });
  return { gain: corner ** order, zeros: [], poles };
}

/** First-order high pass: gain 1 at high frequency, −3 dB at the corner. */
export function firstOrderHighPass(cornerHertz: number): TransferFunction {
  return { gain: 1, zeros: [real(0)], poles: [real(-2 * Math.PI * cornerHertz)] };
}
