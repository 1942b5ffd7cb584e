import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aggregate } from "../../src/analysis/aggregation.js";
import { MINUTE, SECOND } from "../../src/recording/time.js";
import { axis, logged, START } from "../support/series.js";

const source = (values: number[], interval = MINUTE, start = START) => ({
  ...logged("voltage", "L1", values, { axis: axis(values.length, interval, start) }),
  origin: "logged" as const,
});

describe("aggregation on the clock", () => {
  it("cuts at the ten-minute ticks of the clock, not at counts of rows", () => {
    const result = aggregate(
      source(
        Array.from({ length: 20 }, (_, i) => i),
        MINUTE,
        START + 7 * MINUTE,
      ),
      10 * MINUTE,
    );
    expect([...result.starts]).toEqual([START, START + 10 * MINUTE, START + 20 * MINUTE]);
    expect([...result.coverage]).toEqual([0.3, 1, 0.7]);
  });

  it("leaves missing values out, lowers the coverage, and lets whole gaps be absent", () => {
    const values = [1, Number.NaN, 1, 1, 1, 1, 1, 1, 1, 1, ...Array(10).fill(Number.NaN), ...Array(10).fill(2)];
    const result = aggregate(source(values), 10 * MINUTE);
    expect([...result.starts]).toEqual([START, START + 20 * MINUTE]);
    expect([...result.coverage]).toEqual([0.9, 1]);
    expect([...result.values]).toEqual([1, 2]);
  });

  it("takes the extremes of the logger where it logged them", () => {
    const s = { ...source([10, 20]), min: Float64Array.of(5, Number.NaN), max: Float64Array.of(11, 99) };
    const result = aggregate(s, 10 * MINUTE);
    expect([result.min?.[0], result.max?.[0]]).toEqual([5, 99]);
  });

  it("flags an interval when any part is flagged", () => {
    const s = source(Array(20).fill(1));
    s.axis.flagged[13] = 1;
    expect([...aggregate(s, 10 * MINUTE).flagged]).toEqual([0, 1]);
  });

  it("refuses an interval that does not divide the target", () => {
    expect(() => aggregate(source([1, 2], 7 * SECOND), 10 * MINUTE)).toThrow(RangeError);
  });

  it("lies between the smallest and the largest value, whatever they are", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.001, max: 1e6, noNaN: true }), { minLength: 10, maxLength: 10 }),
        (values) => {
          const rms = aggregate(source(values), 10 * MINUTE).values[0] as number;
          const exact = Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
          expect(rms).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-12));
          expect(rms).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-12));
          expect(Math.abs(rms / exact - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});
