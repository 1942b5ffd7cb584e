import { describe, expect, it } from "vitest";
import { interruptedIntervals } from "../../src/checks/interrupted-intervals.js";
import { only, run, soundWeek, valuesIn } from "./support.js";

describe("interrupted intervals", () => {
  const week = (values: Partial<Record<"L1" | "L2" | "L3", number>>) => {
    const recording = soundWeek();
    for (const [phase, value] of Object.entries(values)) {
      valuesIn(recording, "voltage", phase as "L1").fill(value, 100, 106);
    }
    return run(interruptedIntervals, recording);
  };

  it("counts the intervals in which all voltages lie below 5 % of declared, and says what that means", () => {
    const finding = only(week({ L1: 0.2, L2: 11.4, L3: 0 }));
    expect(finding).toMatchObject({
      id: "interrupted-intervals",
      severity: "note",
      evidence: { intervals: 6, from: "2026-03-02T16:40:00Z", declared: 230 },
    });
    expect(String(finding.sentence)).toMatch(/^In 6 ten-minute intervals, the first from 2026-03-02T16:40:00Z/);
    expect(String(finding.sentence)).toContain("take 6 off the numbers outside");
  });

  it("is silent where one voltage is left, at 5 % exactly, and in a sound week", () => {
    expect(week({ L1: 0.2, L2: 0.2 })).toEqual([]);
    expect(week({ L1: 11.5, L2: 11.5, L3: 11.5 })).toEqual([]);
    expect(run(interruptedIntervals, soundWeek())).toEqual([]);
  });
});
