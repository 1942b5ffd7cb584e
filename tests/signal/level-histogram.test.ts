import { describe, expect, it } from "vitest";
import { LevelHistogram } from "../../src/signal/level-histogram.js";

/** Evenly spread numbers in 0…1 without a random generator: fractional parts of multiples of the golden ratio. */
const spread = (n: number) => Array.from({ length: n }, (_, i) => (i * 0.6180339887498949) % 1);

describe("LevelHistogram", () => {
  it.each([
    { name: "even over eleven decades", values: spread(20000).map((x) => 10 ** (11 * x - 4)) },
    { name: "even on the linear scale", values: spread(20000).map((x) => 1 + x) },
    { name: "squares of a sine", values: spread(20000).map((x) => Math.sin(2 * Math.PI * x) ** 2 + 1e-3) },
    { name: "one value only", values: Array(1000).fill(0.731) as number[] },
    { name: "two far apart", values: spread(1000).map((x) => (x < 0.25 ? 400 : 0.002)) },
  ])("agrees with sorting: $name", ({ values }) => {
    const histogram = new LevelHistogram();
    for (const value of values) histogram.add(value);
    const descending = Float64Array.from(values).sort().reverse();
    for (const share of [0.001, 0.007, 0.01, 0.03, 0.1, 0.3, 0.5, 0.8]) {
      const sorted = descending[Math.round(share * values.length) - 1] as number;
      const neighbour = descending[Math.round(share * values.length)] as number;
      const level = histogram.exceededBy(share);
      expect(level).toBeLessThan(sorted * 1.001);
      expect(level).toBeGreaterThan(neighbour / 1.001);
    }
  });

  it("interpolates inside a class", () => {
    const histogram = new LevelHistogram();
    for (const x of spread(1000)) histogram.add(1 + x / 1024);
    for (const share of [0.1, 0.25, 0.8]) expect((histogram.exceededBy(share) - 1) * 1024).toBeCloseTo(1 - share, 9);
  });

  it("counts what lies outside its range in the outermost classes", () => {
    const histogram = new LevelHistogram();
    for (const value of [0, 1e-30, 1, 1e30, Number.POSITIVE_INFINITY]) histogram.add(value);
    expect(histogram.count).toBe(5);
    expect(histogram.exceededBy(1)).toBeLessThan(1e-6);
    expect(histogram.exceededBy(0.2)).toBeGreaterThan(1e7);
    expect(histogram.exceededBy(0.5)).toBeCloseTo(1, 2);
  });

  it("has no level without values, and none left after clearing", () => {
    const histogram = new LevelHistogram();
    expect(histogram.exceededBy(0.5)).toBeNaN();
    histogram.add(1);
    histogram.clear();
    expect(histogram.count).toBe(0);
    expect(histogram.exceededBy(0.5)).toBeNaN();
  });
});
