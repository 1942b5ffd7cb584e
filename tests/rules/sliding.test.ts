import { describe, expect, it } from "vitest";
import type { SlidingVoltage, SupplyDetail } from "../../src/recording/supply-detail.js";
import { MINUTE } from "../../src/recording/time.js";
import { intervals, START } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, week } from "./support.js";

const sliding = (passed: SlidingVoltage["passed"]): SlidingVoltage => ({
  phase: "L1",
  interval: MINUTE,
  n: 9_000,
  lowest: { value: 221, at: START + 10 * MINUTE },
  highest: { value: 255, at: START + 40 * MINUTE },
  limit: 253,
  passed,
});

const resultOf = (values: readonly number[], supply: Partial<SupplyDetail>, connection: "single" | "star" = "single") =>
  judgeSeries([intervals("voltage", "L1", values)], ruleSet(VOLTAGE_95), {
    setup: setup(230, connection),
    supply: { sliding: [], bounds: [], spans: [], ...supply },
  }).sliding;

describe("sliding beside fixed intervals", () => {
  it("says of each time above the limit whether a fixed interval within it shows it", () => {
    // The fixed interval that ends at minute 40 is above 253 V; none ends between minutes 63 and 67.
    const passed = [
      { start: START + 36 * MINUTE, durationS: 300, peak: 255, complete: true },
      { start: START + 63 * MINUTE, durationS: 300, peak: 253.4, complete: true },
    ];
    const found = resultOf(week({ 3: 254 }), { sliding: [sliding(passed)] });
    expect(found?.phases[0]).toEqual({
      phase: "L1",
      limit: 253,
      intervalS: 60,
      n: 9_000,
      lowest: { value: 221, at: "2026-03-02T00:10:00Z" },
      highest: { value: 255, at: "2026-03-02T00:40:00Z" },
      passed: [
        { start: "2026-03-02T00:36:00Z", durationS: 300, peak: 255, complete: true, inFixed: true },
        { start: "2026-03-02T01:03:00Z", durationS: 300, peak: 253.4, complete: true, inFixed: false },
      ],
      unseen: 1,
    });
  });

  it("takes the first and the last window above the limit as part of the time, and the next one not", () => {
    const ending = (minute: number, durationS: number) =>
      resultOf(week({ 3: 254 }), {
        sliding: [sliding([{ start: START + minute * MINUTE, durationS, peak: 254, complete: true }])],
      })?.phases[0]?.unseen;
    expect(ending(40, 60)).toBe(0);
    expect(ending(36, 300)).toBe(0);
    expect(ending(41, 60)).toBe(1);
    expect(ending(36, 240)).toBe(1);
  });

  it("names the phases of which nothing can be told, and repeats bounds of judged phases only", () => {
    const bound = { limit: 253, pairs: 1007, highest: { value: 252.1, at: START + 10 * MINUTE }, possible: 0 };
    const found = resultOf(week({}), {
      bounds: [
        { phase: "L1", ...bound },
        { phase: "L2", ...bound },
      ],
    });
    expect(found?.bounds).toEqual([
      { phase: "L1", limit: 253, pairs: 1007, highest: { value: 252.1, at: "2026-03-02T00:10:00Z" }, possible: 0 },
    ]);
    expect(found?.untold).toEqual([]);
    expect(resultOf(week({}), {})).toEqual({ phases: [], bounds: [], untold: ["L1"] });
  });
});
