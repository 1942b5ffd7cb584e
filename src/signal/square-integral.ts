/**
 * Integral of x² from index `from` to index `to`, both fractional, the samples being one apart: trapezoids with the
 * Euler–Maclaurin end correction, and at either end the exact integral of the cubic through the four squares around it.
 * Over whole periods of a band-limited signal the error comes from the ends alone; for a 50 Hz sine at 2 kHz it is below
 * 10⁻⁵ of the integral over one cycle. NaN if any sample it needs is NaN. Needs one sample before and two after.
 */
export function squareIntegral(x: Float64Array, from: number, to: number): number {
  const first = Math.floor(from);
  const last = Math.floor(to);
  let sum = 0;
  for (let i = first; i <= last; i++) {
    const v = x[i] as number;
    sum += v * v;
  }
  return sum + endCorrection(x, last, to - last) - startCorrection(x, first, from - first);
}

/** What to add at the upper end: half of the last square less, and the part of the step that reaches beyond it. */
function endCorrection(x: Float64Array, n: number, f: number): number {
  const square = (x[n] as number) ** 2;
  return partOfStep(x, n, f) - square / 2 - slope(x, n) / 12;
}

function startCorrection(x: Float64Array, n: number, f: number): number {
  const square = (x[n] as number) ** 2;
  return partOfStep(x, n, f) + square / 2 - slope(x, n) / 12;
}

function slope(x: Float64Array, n: number): number {
  return ((x[n + 1] as number) ** 2 - (x[n - 1] as number) ** 2) / 2;
}

/** Integral from n to n + f, f in 0 … 1, of the cubic through the squares at n − 1 … n + 2. */
function partOfStep(x: Float64Array, n: number, f: number): number {
  const a = (x[n - 1] as number) ** 2;
  const b = (x[n] as number) ** 2;
  const c = (x[n + 1] as number) ** 2;
  const d = (x[n + 2] as number) ** 2;
  // Newton's forward differences about n − 1, in powers of f.
  const linear = -a / 3 - b / 2 + c - d / 6;
  const quadratic = (a + c) / 2 - b;
  const cubic = (d - a) / 6 + (b - c) / 2;
  return f * (b + f * (linear / 2 + f * (quadratic / 3 + (f * cubic) / 4)));
}

/** Largest absolute value of the samples at index from … to; both fractional, only samples between them count. */
export function peak(x: Float64Array, from: number, to: number): number {
  let largest = 0;
  for (let i = Math.ceil(from); i <= to; i++) {
    const size = Math.abs(x[i] as number);
    // A missing sample makes the comparison false and the result NaN.
    if (!(size <= largest)) largest = size;
    if (Number.isNaN(largest)) return largest;
  }
  return largest;
}
