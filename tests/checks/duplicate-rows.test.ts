import { describe, expect, it } from "vitest";
import { duplicateRows } from "../../src/checks/duplicate-rows.js";
import { only, run, soundWeek, startOf, withLedger } from "./support.js";

describe("duplicate rows", () => {
  it("counts rows that repeat an interval with the same values, without effect", () => {
    const finding = only(run(duplicateRows, withLedger(soundWeek(), { duplicates: 3 })));
    expect(finding).toMatchObject({ id: "duplicate-rows", severity: "none", evidence: { duplicates: 3 } });
    expect(String(finding.sentence)).toMatch(/^3 rows repeat intervals already logged/);
  });

  it("notes intervals for which rows disagree", () => {
    const finding = only(run(duplicateRows, withLedger(soundWeek(), { conflicts: [startOf(230), startOf(231)] })));
    expect(finding).toMatchObject({
      id: "conflicting-rows",
      severity: "note",
      evidence: { conflicts: 2, first: "2026-03-03T14:20:00Z", at: ["2026-03-03T14:20:00Z", "2026-03-03T14:30:00Z"] },
    });
    expect(String(finding.sentence)).toContain("For 2 intervals, the first at 2026-03-03T14:20:00Z");
  });

  it("finds none in a sound week", () => {
    expect(run(duplicateRows, soundWeek())).toEqual([]);
  });
});
