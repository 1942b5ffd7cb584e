import { describe, expect, it } from "vitest";
import { clippedMaximum } from "../../src/checks/clipped-maximum.js";
import { only, run, seriesIn, soundWeek, valuesIn } from "./support.js";

/** The value that `rows` rows of a series exceed. */
function exceededBy(values: Float64Array, rows: number): number {
  return values.slice().sort()[values.length - 1 - rows] as number;
}

describe("clipped maximum", () => {
  it("notes a current that ends at one value, with how often", () => {
    const week = soundWeek();
    const i3 = valuesIn(week, "current", "L3");
    const limit = exceededBy(i3, 60);
    i3.set(i3.map((v) => Math.min(v, limit)));
    const rows = i3.filter((v) => v === limit).length;
    const finding = only(run(clippedMaximum, week));
    expect(rows).toBeGreaterThanOrEqual(61);
    expect(finding).toMatchObject({
      id: "clipped-maximum",
      severity: "note",
      quantities: ["current"],
      phases: ["L3"],
      evidence: { value: limit, rows, of: 1008, share: rows / 1008, lowerValues: 4 },
    });
    const next = [...new Set(i3)].sort((a, b) => b - a).slice(1, 5);
    expect(finding.evidence.below).toBe(i3.filter((v) => next.includes(v)).length);
  });

  it("looks at the logged maxima where there are any", () => {
    const week = soundWeek();
    const max = seriesIn(week, "voltage", "L2").max as Float64Array;
    const limit = exceededBy(max, 40);
    max.set(max.map((v) => Math.min(v, limit)));
    expect(only(run(clippedMaximum, week))).toMatchObject({
      quantities: ["voltage"],
      phases: ["L2"],
      evidence: { value: limit },
    });
  });

  it("needs five rows, and more than the next four lower values hold", () => {
    const topped = (rows: number, below: number) => {
      const week = soundWeek();
      const { values } = seriesIn(week, "current", "L1");
      values.fill(95, 0, rows);
      values.set([94, 93, 92], rows);
      values.fill(91, rows + 3, rows + 3 + below);
      return run(clippedMaximum, week);
    };
    expect(topped(4, 1)).toEqual([]);
    expect(only(topped(5, 1)).evidence).toMatchObject({ value: 95, rows: 5, below: 4 });
    expect(topped(10, 6)).toHaveLength(1);
    expect(topped(10, 7)).toEqual([]);
  });

  it("takes the ordinary value of a quiet column for no limit", () => {
    const week = soundWeek();
    const i1 = valuesIn(week, "current", "L1");
    i1.set(i1.map((_, i) => (i < 505 ? 0 : -1 - (i % 50))));
    expect(run(clippedMaximum, week)).toEqual([]);
  });

  it("finds none in a sound week, whatever its digits", () => {
    for (const decimals of [0, 1, 2]) expect(run(clippedMaximum, soundWeek({ decimals }))).toEqual([]);
  });
});
