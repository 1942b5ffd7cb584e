import { describe, expect, it } from "vitest";
import { clockChange } from "../../src/checks/clock-change.js";
import type { Ledger, Recording } from "../../src/recording/recording.js";
import { HOUR } from "../../src/recording/time.js";
import { keepRows, only, run, soundWeek, startOf, withLedger } from "./support.js";

const CHANGE_ROW = 300;
const change = (seenInLog: boolean, by = HOUR): Partial<Ledger> => ({
  clockChanges: [{ at: startOf(CHANGE_ROW), by, seenInLog }],
});
const gapOf = (rows: number, from = CHANGE_ROW) => keepRows(soundWeek(), (i) => i < from || i >= from + rows);
const conflicts = (rows: number) => Array.from({ length: rows }, (_, i) => startOf(CHANGE_ROW + i));
const assumed = (week: Recording, ledger: Partial<Ledger> = {}) =>
  withLedger(week, { ...ledger, timeBase: { ...week.ledger.timeBase, zoneOrigin: "assumed", zone: "UTC" } });

describe("clock change", () => {
  it("states a change that the stamps follow, without effect", () => {
    const finding = only(run(clockChange, withLedger(soundWeek(), change(true))));
    expect(finding).toMatchObject({
      id: "clock-change",
      severity: "none",
      evidence: { at: "2026-03-04T02:00:00Z", byS: 3600, zone: "Europe/Vienna" },
    });
    expect(String(finding.sentence)).toContain("changed by +1 h at 2026-03-04T02:00:00Z");
  });

  it("notes a change of which the stamps show nothing", () => {
    const finding = only(run(clockChange, withLedger(soundWeek(), change(false, -HOUR))));
    expect(finding).toMatchObject({ id: "clock-change-not-seen", severity: "note", evidence: { byS: -3600 } });
  });

  it("notes a gap of just that length beside the change, not one of 70 min and not one two days later", () => {
    const finding = only(run(clockChange, withLedger(gapOf(6), change(false))));
    expect(finding).toMatchObject({
      id: "clock-change-gap",
      severity: "note",
      evidence: { at: "2026-03-04T02:00:00Z", gapAt: "2026-03-04T02:00:00Z" },
    });
    expect(only(run(clockChange, withLedger(gapOf(7), change(false)))).id).toBe("clock-change-not-seen");
    expect(only(run(clockChange, withLedger(gapOf(6, CHANGE_ROW + 288), change(true)))).id).toBe("clock-change");
  });

  it("notes an hour that stands twice beside the change, not 50 min of it", () => {
    const finding = only(run(clockChange, withLedger(soundWeek(), { ...change(false), conflicts: conflicts(6) })));
    expect(finding).toMatchObject({ id: "clock-change-overlap", evidence: { overlapAt: "2026-03-04T02:00:00Z" } });
    const shorter = withLedger(soundWeek(), { ...change(false), conflicts: conflicts(5) });
    expect(only(run(clockChange, shorter)).id).toBe("clock-change-not-seen");
    const scattered = withLedger(soundWeek(), {
      ...change(false),
      conflicts: [startOf(CHANGE_ROW), startOf(CHANGE_ROW + 5)],
    });
    expect(only(run(clockChange, scattered)).id).toBe("clock-change-not-seen");
  });

  it("notes rows of the repeated hour that could not be placed", () => {
    const finding = only(run(clockChange, withLedger(soundWeek(), { unplaced: 6 })));
    expect(finding).toMatchObject({
      id: "unplaced-rows",
      severity: "note",
      evidence: { rows: 6, zone: "Europe/Vienna" },
    });
    expect(String(finding.sentence)).toMatch(/^6 rows could not be placed/);
  });

  it("notes an hour missing or repeated anywhere where the zone was only assumed", () => {
    expect(only(run(clockChange, assumed(gapOf(6))))).toMatchObject({
      id: "one-hour-gap",
      evidence: { gapAt: "2026-03-04T02:00:00Z", zone: "UTC" },
    });
    expect(only(run(clockChange, assumed(soundWeek(), { conflicts: conflicts(6) })))).toMatchObject({
      id: "one-hour-overlap",
      evidence: { overlapAt: "2026-03-04T02:00:00Z" },
    });
  });

  it("leaves the same gap alone where the zone is known, and a gap of two hours where it is not", () => {
    expect(run(clockChange, gapOf(6))).toEqual([]);
    expect(run(clockChange, assumed(gapOf(12)))).toEqual([]);
  });
});
