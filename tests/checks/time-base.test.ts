import { describe, expect, it } from "vitest";
import { timeBase } from "../../src/checks/time-base.js";
import type { TimeBase } from "../../src/recording/recording.js";
import { only, run, soundWeek, withLedger } from "./support.js";

const week = soundWeek();
const withTimeBase = (change: Partial<TimeBase>) =>
  withLedger(week, { timeBase: { ...week.ledger.timeBase, ...change } });

describe("time base", () => {
  it("notes an interval label that was only assumed", () => {
    const finding = only(run(timeBase, withTimeBase({ labelOrigin: "assumed", intervalLabel: "end" })));
    expect(finding).toMatchObject({
      id: "interval-label-assumed",
      severity: "note",
      evidence: { assumed: "end", intervalS: 600 },
    });
    expect(String(finding.sentence)).toContain(
      "the end was assumed, so every time in this report may be off by one interval (10 min)",
    );
  });

  it("notes a zone that was only assumed", () => {
    const finding = only(run(timeBase, withTimeBase({ zoneOrigin: "assumed", zone: "UTC" })));
    expect(finding).toMatchObject({ id: "zone-assumed", severity: "note", evidence: { assumed: "UTC" } });
    expect(String(finding.sentence)).toContain("they were read as UTC");
  });

  it("finds none where the log or the setup says it", () => {
    expect(run(timeBase, withTimeBase({ labelOrigin: "inferred", zoneOrigin: "stamps" }))).toEqual([]);
    expect(run(timeBase, week)).toEqual([]);
  });
});
