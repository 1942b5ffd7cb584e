/** Modified Bessel function of the first kind, order 0 (power series; exact to rounding for the arguments of a window). */
export function besselI0(x: number): number {
  const quarter = (x * x) / 4;
  let term = 1;
  let sum = 1;
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= quarter / (k * k);
    sum += term;
  }
  return sum;
}

/**
 * Shape of the Kaiser window for a stop band `attenuation` dB down, above 50 dB (J. F. Kaiser, 1974; formula as printed
 * in textbooks of signal processing).
 */
export function kaiserBeta(attenuation: number): number {
  return 0.1102 * (attenuation - 8.7);
}

/** Length in samples of a Kaiser-windowed filter whose transition band is `width` cycles per sample wide (same source). */
export function kaiserLength(attenuation: number, width: number): number {
  return (attenuation - 7.95) / (14.36 * width) + 1;
}

/** The window at x = −1 … 1, 1 in the middle, 0 outside. */
export function kaiser(x: number, beta: number): number {
  return Math.abs(x) > 1 ? 0 : besselI0(beta * Math.sqrt(1 - x * x)) / besselI0(beta);
}
