import { describe, expect, it } from "vitest";
import { aggregate } from "../../src/analysis/aggregation.js";
import { pltFromPst } from "../../src/analysis/flicker.js";
import { HOUR, MINUTE } from "../../src/recording/time.js";
import { axis, logged } from "../support/series.js";

describe("Plt from twelve Pst: (ΣPst³ / 12)^⅓, worked values computed outside this project with the published formula", () => {
  it.each([
    { name: "twelve of 1.0", pst: Array(12).fill(1), plt: 1 },
    { name: "one of 2.0 and eleven of 0", pst: [2, ...Array(11).fill(0)], plt: 0.8736 },
    { name: "six of 1.0 and six of 0.5", pst: [...Array(6).fill(1), ...Array(6).fill(0.5)], plt: 0.8255 },
  ])("$name give $plt", ({ pst, plt }) => {
    const result = pltFromPst({ ...logged("pst", "L1", pst), origin: "logged" });
    expect(result.values).toHaveLength(1);
    expect(result.values[0]).toBeCloseTo(plt, 4);
    expect(result.interval).toBe(2 * HOUR);
    expect(result.coverage[0]).toBe(1);
  });
});

describe("ten-minute r.m.s. from one-minute values (IEC 61000-4-30: root of the mean square)", () => {
  it("is √((3·100² + 7·200²) / 10) for three minutes of 100 V and seven of 200 V", () => {
    const values = [100, 100, 100, ...Array(7).fill(200)];
    const result = aggregate(
      { ...logged("voltage", "L1", values, { axis: axis(10, MINUTE) }), origin: "logged" },
      10 * MINUTE,
    );
    expect(result.values[0]).toBeCloseTo(Math.sqrt(31000), 10);
  });

  it("keeps a constant exactly, so that a value on the limit stays on it", () => {
    for (const v of [254.1, 253.3, 195.4, 0.1]) {
      const result = aggregate(
        { ...logged("voltage", "L1", Array(600).fill(v), { axis: axis(600, MINUTE / 60) }), origin: "logged" },
        10 * MINUTE,
      );
      expect([...result.values]).toEqual([v]);
    }
  });
});
