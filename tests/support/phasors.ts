/** Complex numbers and symmetrical components, for a network model in test data. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const conj = (a: Complex): Complex => ({ re: a.re, im: -a.im });
export const abs = (a: Complex): number => Math.sqrt(a.re * a.re + a.im * a.im);
export const divide = (a: Complex, b: Complex): Complex => {
  const square = b.re * b.re + b.im * b.im;
  const { re, im } = multiply(a, conj(b));
  return { re: re / square, im: im / square };
};

/** @param degrees counter-clockwise */
export const polar = (size: number, degrees: number): Complex => ({
  re: size * Math.cos((degrees * Math.PI) / 180),
  im: size * Math.sin((degrees * Math.PI) / 180),
});

/** The operator a, a turn of 120°. */
const A = polar(1, 120);

/** Negative over positive sequence of three phase-to-neutral voltages, in % (method of symmetrical components). */
export function sequenceUnbalance(phases: readonly Complex[]): number {
  const [u1, u2, u3] = phases as [Complex, Complex, Complex];
  const square = multiply(A, A);
  const positive = add(u1, add(multiply(A, u2), multiply(square, u3)));
  const negative = add(u1, add(multiply(square, u2), multiply(A, u3)));
  return (100 * abs(negative)) / abs(positive);
}
