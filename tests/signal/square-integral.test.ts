import { describe, expect, it } from "vitest";
import { peak, squareIntegral } from "../../src/signal/square-integral.js";

describe("integral of squares between fractional positions", () => {
  it("is exact where the squares lie on a cubic", () => {
    const square = (t: number) => 2 + 0.3 * t - 0.02 * t ** 2 + 0.001 * t ** 3;
    const integral = (t: number) => 2 * t + 0.15 * t ** 2 - (0.02 / 3) * t ** 3 + 0.00025 * t ** 4;
    const x = Float64Array.from({ length: 40 }, (_, t) => Math.sqrt(square(t)));
    for (const [from, to] of [
      [1, 30],
      [1.25, 30.75],
      [4.999, 5.001],
      [7.1, 7.9],
      [3.5, 12],
    ] as const) {
      expect(squareIntegral(x, from, to)).toBeCloseTo(integral(to) - integral(from), 10);
    }
  });

  /** Closed form: over whole periods of a sine the mean of the squares is half the square of its amplitude. */
  it.each([40, 128, 204.8, 213.7])("gives one cycle of %d samples to 10⁻⁵ wherever it starts", (period) => {
    const x = Float64Array.from({ length: 700 }, (_, i) => 325 * Math.sin((2 * Math.PI * i) / period + 0.4));
    for (let start = 2; start < 10; start += 0.37) {
      const meanSquare = squareIntegral(x, start, start + period) / period;
      expect(Math.abs(meanSquare / (325 ** 2 / 2) - 1)).toBeLessThan(1e-5);
    }
  });

  it("has parts that add up to the whole", () => {
    const x = Float64Array.from({ length: 50 }, (_, i) => Math.cos(i * 1.7) + i / 10);
    const parts = squareIntegral(x, 3.3, 17.9) + squareIntegral(x, 17.9, 40.2);
    expect(parts).toBeCloseTo(squareIntegral(x, 3.3, 40.2), 9);
  });

  it("is NaN when a sample it needs is missing, and only then", () => {
    const x = new Float64Array(30).fill(1);
    x[12] = Number.NaN;
    expect(squareIntegral(x, 5.5, 11.5)).toBeNaN();
    expect(squareIntegral(x, 5.5, 9.5)).toBeCloseTo(4, 12);
    expect(squareIntegral(x, 13.5, 20)).toBeNaN();
    expect(squareIntegral(x, 14.5, 20)).toBeCloseTo(5.5, 12);
  });
});

describe("largest absolute sample", () => {
  const x = Float64Array.of(9, 1, -4, 3, Number.NaN, 8);
  it("counts samples between the positions only", () => {
    expect(peak(x, 0.5, 3.9)).toBe(4);
    expect(peak(x, 0, 3)).toBe(9);
    expect(peak(x, 5, 5)).toBe(8);
  });
  it("is NaN when one of them is missing", () => {
    expect(peak(x, 3, 5)).toBeNaN();
  });
});
