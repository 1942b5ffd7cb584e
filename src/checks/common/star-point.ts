/** Zero-sequence and negative-sequence voltage of three phases, V. */
export interface StarPoint {
  readonly zero: number;
  readonly negative: number;
}

const SIN = Math.sqrt(3) / 2;

/**
 * Where the star point lies in the triangle of the phase-to-phase voltages, from six r.m.s. values: the triangle is
 * drawn from its sides, the star point from the differences of the squares of its distances to the corners. Its
 * distance from the centroid is the zero-sequence voltage; the corners seen from the centroid give the negative
 * sequence (the smaller of the two rotations). NaN where the three sides make no triangle.
 * Source: method of symmetrical components; the centroid of the corners is the point of zero sum.
 */
export function starPoint(
  [u1, u2, u3]: readonly [number, number, number],
  [u12, u23, u31]: readonly [number, number, number],
): StarPoint {
  // Corner 1 is the origin, corner 2 lies on the x axis.
  const x3 = (u31 * u31 + u12 * u12 - u23 * u23) / (2 * u12);
  const y3 = Math.sqrt(u31 * u31 - x3 * x3);
  const x = (u1 * u1 - u2 * u2 + u12 * u12) / (2 * u12);
  const y = (u1 * u1 - u3 * u3 + u31 * u31 - 2 * x * x3) / (2 * y3);
  const cx = (u12 + x3) / 3;
  const cy = y3 / 3;
  // Corners 2 and 3 turned by ±120° and added to corner 1: (2 + 3)·cos 120° ± j·(2 − 3)·sin 120°.
  const re = -(u12 + x3) / 2;
  const im = -y3 / 2;
  const across = { re: SIN * y3, im: SIN * (u12 - x3) };
  const one = Math.hypot(re + across.re, im + across.im) / 3;
  const other = Math.hypot(re - across.re, im - across.im) / 3;
  return { zero: Math.hypot(x - cx, y - cy), negative: Math.min(one, other) };
}
