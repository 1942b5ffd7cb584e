/**
 * The component of one frequency about a point of the signal, as seen through a Hann window.
 *
 * With a half-width of a whole number of periods the window is blind to every multiple of the frequency, and to a
 * constant. If the frequency is right, a change of the amplitude inside the window hardly turns the phase: an abrupt fall
 * to a tenth by 3° at most, through what is let in of the mirror frequency.
 * @param out real and imaginary part: A·sin(ω(t − t0)) gives A·e^(jω(centre − t0)) / j; NaN if a sample is NaN
 * @param centre fractional index
 * @param half half-width of the window, in samples
 * @param omega in radians per sample
 */
export function hannPhasor(out: Float64Array, x: Float64Array, centre: number, half: number, omega: number): void {
  const first = Math.ceil(centre - half);
  const last = Math.floor(centre + half);
  const t = first - centre;
  let cos = Math.cos(omega * t);
  let sin = -Math.sin(omega * t);
  const turnCos = Math.cos(omega);
  const turnSin = -Math.sin(omega);
  let windowCos = Math.cos((Math.PI * t) / half);
  let windowSin = Math.sin((Math.PI * t) / half);
  const windowTurnCos = Math.cos(Math.PI / half);
  const windowTurnSin = Math.sin(Math.PI / half);
  let re = 0;
  let im = 0;
  for (let i = first; i <= last; i++) {
    const weighted = (x[i] as number) * (1 + windowCos);
    re += weighted * cos;
    im += weighted * sin;
    const c = cos * turnCos - sin * turnSin;
    sin = cos * turnSin + sin * turnCos;
    cos = c;
    const w = windowCos * windowTurnCos - windowSin * windowTurnSin;
    windowSin = windowCos * windowTurnSin + windowSin * windowTurnCos;
    windowCos = w;
  }
  // The window's sum is 2·half, and half of a sine's amplitude is in the positive frequency.
  out[0] = re / half;
  out[1] = im / half;
}
