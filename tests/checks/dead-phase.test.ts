import { describe, expect, it } from "vitest";
import { deadPhase } from "../../src/checks/dead-phase.js";
import { only, run, soundWeek, valuesIn } from "./support.js";

describe("dead phase", () => {
  it("blocks a phase whose median is below 5 % of declared, and the unbalance", () => {
    const week = soundWeek();
    valuesIn(week, "voltage", "L2").fill(11.4);
    const finding = only(run(deadPhase, week));
    expect(finding).toMatchObject({
      id: "dead-phase",
      severity: "blocks",
      phases: ["L2", "system"],
      evidence: { phase: "L2", median: 11.4, declared: 230, share: 11.4 / 230 },
    });
    expect(finding.quantities).toEqual(
      expect.arrayContaining(["voltage", "thd-voltage", "pst", "negative-sequence-unbalance"]),
    );
    expect(String(finding.sentence)).toMatch(/^Supply voltage L2 reads 11.4 V in the median, 4.96 % of 230 V/);
    expect(String(finding.sentence)).toContain("licensed electrician");
  });

  it("lets just 5 % pass: 11.5 V of 230 V", () => {
    const week = soundWeek();
    valuesIn(week, "voltage", "L2").fill(11.5);
    expect(run(deadPhase, week)).toEqual([]);
  });

  it("notes an hour without one phase, not 50 min", () => {
    const lost = (rows: number) => {
      const week = soundWeek();
      valuesIn(week, "voltage", "L3").fill(0.4, 650, 650 + rows);
      return run(deadPhase, week);
    };
    expect(only(lost(6))).toMatchObject({
      id: "lost-phase",
      severity: "note",
      phases: ["L3"],
      evidence: { phase: "L3", threshold: 11.5, timeS: 3600, rows: 6, of: 1008, first: "2026-03-06T12:20:00Z" },
    });
    expect(lost(5)).toEqual([]);
  });

  it("says of a voltage between phases that both inputs may carry one phase", () => {
    const week = soundWeek();
    valuesIn(week, "voltage", "L31").fill(4, 100, 200);
    expect(String(only(run(deadPhase, week)).sentence)).toContain("both its inputs carry the same phase");
  });

  it("holds its peace in an interruption of all phases", () => {
    const week = soundWeek();
    for (const phase of ["L1", "L2", "L3", "L12", "L23", "L31"] as const)
      valuesIn(week, "voltage", phase).fill(0, 100, 200);
    expect(run(deadPhase, week)).toEqual([]);
    for (const { quantity, values } of week.series) if (quantity === "voltage") values.fill(0.3);
    expect(run(deadPhase, week)).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(deadPhase, soundWeek())).toEqual([]);
  });
});
