import { describe, expect, it } from "vitest";
import { impossibleValues } from "../../src/checks/impossible-values.js";
import { withoutImpossibleValues } from "../../src/recording/impossible-values.js";
import { only, run, soundWeek, valuesIn } from "./support.js";

describe("impossible values", () => {
  it("are left out as missing and reported with their number", () => {
    const week = soundWeek();
    valuesIn(week, "voltage", "L2").fill(-9999, 10, 13);
    const cleared = withoutImpossibleValues(week);
    expect([...valuesIn(cleared, "voltage", "L2").subarray(9, 14)].map(Number.isNaN)).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(only(run(impossibleValues, cleared))).toMatchObject({
      severity: "note",
      phases: ["L2"],
      evidence: { quantity: "voltage", phase: "L2", count: 3, lowest: -9999 },
    });
  });

  it("are none in a sound week, and exported power may be negative", () => {
    const week = soundWeek();
    expect(withoutImpossibleValues(week)).toBe(week);
    expect(run(impossibleValues, week)).toEqual([]);
    const power = week.series.find((s) => s.quantity === "active-power");
    power?.values.fill(-5000);
    expect(withoutImpossibleValues(week)).toBe(week);
  });
});
