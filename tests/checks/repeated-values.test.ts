import { describe, expect, it } from "vitest";
import { repeatedValues } from "../../src/checks/repeated-values.js";
import type { Finding } from "../../src/recording/finding.js";
import { only, run, seriesIn, soundWeek, valuesIn } from "./support.js";

/** A sound week that holds one value for some rows; neighbours differ. */
function held(rows: number, decimals: number): readonly Finding[] {
  const week = soundWeek({ decimals });
  const u = valuesIn(week, "voltage", "L3");
  u.fill(233, 300, 300 + rows);
  u[299] = 231;
  u[300 + rows] = 231;
  return run(repeatedValues, week);
}

/** The longest run of equal values in a sound week. */
function longestRun(decimals: number): number {
  let longest = 0;
  let length = 0;
  const { values } = seriesIn(soundWeek({ decimals }), "voltage", "L3");
  values.forEach((v, i) => {
    length = v === values[i - 1] ? length + 1 : 1;
    longest = Math.max(longest, length);
  });
  return longest;
}

describe("repeated values", () => {
  it("notes a held value in a log of 0.01 V", () => {
    const finding = only(held(24, 2));
    expect(finding).toMatchObject({ id: "repeated-values", severity: "note", quantities: ["voltage"], phases: ["L3"] });
    expect(finding.evidence).toEqual({
      quantity: "voltage",
      phase: "L3",
      runs: 1,
      rows: 24,
      of: 1008,
      share: 24 / 1008,
      longest: 24,
      longestS: 14_400,
      from: "2026-03-04T02:00:00Z",
      value: 233,
    });
    expect(String(finding.sentence)).toContain("the longest 24 rows (4 h) of 233 V from 2026-03-04T02:00:00Z");
  });

  it("needs more than six rows, and more than four times the log's ordinary runs", () => {
    expect(held(6, 2)).toEqual([]);
    expect(held(9, 2)).toHaveLength(1);
    // Whole volts repeat themselves honestly, for longer than six rows.
    expect(longestRun(0)).toBeGreaterThan(6);
    expect(held(9, 0)).toEqual([]);
    expect(held(60, 0)).toHaveLength(1);
  });

  it("blocks above 5 % of the rows: 51 of 1008, not 50", () => {
    expect(only(held(50, 2)).severity).toBe("note");
    expect(only(held(51, 2)).severity).toBe("blocks");
  });

  it("finds a day without a change although the whole log is one run", () => {
    const week = soundWeek({ decimals: 1 });
    valuesIn(week, "voltage", "L1").fill(230);
    const constant = only(run(repeatedValues, week));
    expect(constant).toMatchObject({
      severity: "blocks",
      phases: ["L1"],
      evidence: { longest: 1008, rows: 1008, value: 230 },
    });
  });

  it("accuses no whole-volt log of a steady supply, and no dead phase", () => {
    const week = soundWeek({ decimals: 0 });
    valuesIn(week, "voltage", "L1").fill(230);
    valuesIn(week, "voltage", "L2").fill(0);
    expect(run(repeatedValues, week)).toEqual([]);
    const fine = soundWeek();
    valuesIn(fine, "voltage", "L2").fill(0.4, 100, 150);
    expect(run(repeatedValues, fine)).toEqual([]);
  });

  it("finds none in a sound week", () => {
    for (const decimals of [0, 1, 2]) expect(run(repeatedValues, soundWeek({ decimals }))).toEqual([]);
  });
});
