import { describe, expect, it } from "vitest";
import { besselI0, kaiser, kaiserBeta, kaiserLength } from "../../src/signal/kaiser.js";

/** Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.8 (values of e^(−x)·I0(x)). */
const TABLE = [
  [0, 1],
  [1, 0.4657596077],
  [5, 0.1835408126],
  [10, 0.1278333372],
] as const;

describe("Kaiser window", () => {
  it.each(TABLE)("uses I0(%d) as tabulated", (x, scaled) => {
    expect(besselI0(x) * Math.exp(-x)).toBeCloseTo(scaled, 9);
  });

  it("is 1 in the middle, 1/I0(β) at the ends, 0 outside, and even", () => {
    expect(kaiser(0, 6)).toBe(1);
    expect(kaiser(1, 6)).toBeCloseTo(1 / besselI0(6), 12);
    expect(kaiser(-0.3, 6)).toBe(kaiser(0.3, 6));
    expect(kaiser(1.01, 6)).toBe(0);
  });

  /** Textbook example of Kaiser's design: 60 dB over a transition of 0.2·π rad, i.e. 0.1 cycles: β = 5.653, M = 37 or N = 38. */
  it("has the shape and length of the textbook design for 60 dB", () => {
    expect(kaiserBeta(60)).toBeCloseTo(5.653, 3);
    expect(Math.ceil(kaiserLength(60, 0.1))).toBe(38);
  });
});
