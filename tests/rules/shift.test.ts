import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/recording/finding.js";
import { MINUTE } from "../../src/recording/time.js";
import { intervals } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

const BOTH = ruleSet(VOLTAGE_95, VOLTAGE_100);
const given = { voltageSteps: [-2, 2] };

describe("what a tap step would change", () => {
  it("counts the values outside after each step of the declared voltage, and gives the range that fits", () => {
    // 60 values at 255 V, the rest at 240 V. −2 % of 230 V is −4.6 V: 250.4 V, all inside.
    const values = week((i) => (i < 60 ? 255 : 240));
    const { shift } = judgeSeries([intervals("voltage", "L1", values)], BOTH, { given });
    expect(shift?.steps).toEqual([
      { percent: -2, volts: -4.6 },
      { percent: 0, volts: 0 },
      { percent: 2, volts: 4.6 },
    ]);
    expect(shift?.stepsOrigin).toBe("given");
    expect(shift?.periods).toHaveLength(1);
    const [period] = shift?.periods ?? [];
    expect(period?.kind).toBe("week");
    expect(period?.rows.map(({ requirement, allowed, outside }) => ({ requirement, allowed, outside }))).toEqual([
      { requirement: "voltage-95", allowed: 50, outside: [0, 60, 60] },
      { requirement: "voltage-100", allowed: 0, outside: [0, 60, 60] },
    ]);
    // 255 + s ≤ 253 and 240 + s ≥ 207, of which the second is at the 95 % rule's lower limit.
    expect(period?.phases).toEqual([
      { phase: "L1", ranges: [{ from: -33, to: -2, fromPercent: -3300 / 230, toPercent: -200 / 230 }] },
    ]);
    expect(period?.all).toEqual(period?.phases[0]?.ranges);
  });

  it("finds one shift for all phases, or none", () => {
    const series = (low: number, high: number) => [
      intervals(
        "voltage",
        "L1",
        week((i) => (i % 2 === 0 ? low : 230)),
      ),
      intervals(
        "voltage",
        "L2",
        week((i) => (i % 2 === 0 ? high : 230)),
      ),
      intervals("voltage", "L3", week({})),
    ];
    const shiftOf = (low: number, high: number) =>
      judgeSeries(series(low, high), BOTH, { setup: setup(230, "star") }).shift?.periods[0];
    expect(shiftOf(215, 259)?.all).toEqual([{ from: -8, to: -6, fromPercent: -800 / 230, toPercent: -600 / 230 }]);
    const none = shiftOf(210, 259);
    expect(none?.all).toEqual([]);
    expect(none?.phases.map(({ ranges }) => ranges.length)).toEqual([1, 1, 1]);
  });

  it("takes the usual steps where none are given and says so", () => {
    const { shift } = judgeSeries([intervals("voltage", "L1", week({}))], BOTH);
    expect(shift?.stepsOrigin).toBe("assumed");
    expect(shift?.steps.map(({ percent }) => percent)).toEqual([-5, -2.5, 0, 2.5, 5]);
  });

  it("of several weeks fits each of them, and leaves a rest out of the range", () => {
    // First week up to 255 V, second down to 208 V, then a rest that nothing fits.
    const values = [...week({ 5: 255 }), ...week({ 5: 208 }), ...week({ 5: 100, 6: 300 }, 100)];
    const periods = judgeSeries([intervals("voltage", "L1", values)], ruleSet(VOLTAGE_100)).shift?.periods ?? [];
    expect(periods.map(({ kind }) => kind)).toEqual(["week", "week", "recording"]);
    expect(periods[0]?.all?.[0]).toMatchObject({ from: 195.5 - 230, to: -2 });
    expect(periods[1]?.all?.[0]).toMatchObject({ from: 195.5 - 208, to: 23 });
    expect(periods[2]?.all?.[0]).toMatchObject({ from: -12.5, to: -2 });
    expect(periods[2]?.rows[0]).toMatchObject({ n: 2116, outside: [2, 2, 3, 3, 3] });
    expect(periods[2]?.rows[0]).not.toHaveProperty("allowed");
  });

  it("gives no range where less than 95 % is valid, and counts what is there", () => {
    const few = week((i) => (i < 52 ? Number.NaN : 230));
    const period = judgeSeries([intervals("voltage", "L1", few)], BOTH).shift?.periods[0];
    expect(period?.rows[0]).toMatchObject({ n: 956, missing: 52 });
    expect(period?.phases).toEqual([]);
    expect(period).not.toHaveProperty("all");
    const enough = week((i) => (i < 50 ? Number.NaN : 230));
    expect(judgeSeries([intervals("voltage", "L1", enough)], BOTH).shift?.periods[0]?.all).toHaveLength(1);
  });

  it("of a daily requirement fits every day, not the days together", () => {
    const daily = ruleSet({ ...VOLTAGE_95, period: "day" });
    // Ten values of one day at 255 V: more than the 7 of 144 that may lie outside, less than 5 % of the week.
    const values = week((i) => (i >= 144 && i < 154 ? 255 : 240));
    const series = [intervals("voltage", "L1", values)];
    expect(judgeSeries(series, daily).shift?.periods[0]?.all?.[0]).toMatchObject({ to: -2 });
    expect(judgeSeries(series, ruleSet(VOLTAGE_95)).shift?.periods[0]?.all?.[0]).toMatchObject({ to: 13 });
    expect(judgeSeries(series, daily).shift?.periods[0]?.rows[0]).toMatchObject({ allowed: 49 });
  });

  it("says nothing of a recording that is unsound, or where no voltage is judged", () => {
    const finding: Finding = {
      id: "wrong",
      severity: "blocks",
      sentence: "Leads are mixed up.",
      evidence: {},
      quantities: ["voltage"],
      phases: [],
    };
    const series = [intervals("voltage", "L1", week({}))];
    expect(judgeSeries(series, BOTH, { findings: [finding] })).not.toHaveProperty("shift");
    const minutes = [intervals("voltage", "L1", week({}), { interval: 30 * MINUTE })];
    expect(judgeSeries(minutes, BOTH)).not.toHaveProperty("shift");
  });
});
