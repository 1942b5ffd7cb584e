import { describe, expect, it } from "vitest";
import { highestVoltage } from "../../src/checks/highest-voltage.js";
import { SECOND } from "../../src/recording/time.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek, valuesIn } from "./support.js";

describe("highest voltage", () => {
  it("warns of danger above 115 %, with the highest value, its phase and time", () => {
    const week = soundWeek();
    const [l1, l2] = [valuesIn(week, "voltage", "L1"), valuesIn(week, "voltage", "L2")];
    l1[100] = 266;
    l2.set([265, 271.5, 268], 200);
    l2[400] = 270;
    const finding = only(run(highestVoltage, week));
    expect(finding).toMatchObject({
      id: "highest-voltage",
      severity: "note",
      danger: "high-voltage",
      phases: ["L1", "L2"],
    });
    expect(finding.evidence).toEqual({
      phases: ["L1", "L2"],
      rows: 5,
      declared: 230,
      thresholdShare: 1.15,
      highest: 271.5,
      share: 271.5 / 230,
      phase: "L2",
      at: "2026-03-03T09:30:00Z",
      longestS: 1800,
    });
    expect(String(finding.sentence)).toContain(
      "in 5 rows, at most 271.5 V (118 %) on L2 at 2026-03-03T09:30:00Z and for 30 min on end",
    );
    expect(String(finding.sentence)).toContain("licensed electrician");
  });

  it("lets just 115 % pass", () => {
    const week = soundWeek();
    valuesIn(week, "voltage", "L1")[100] = 264.5;
    expect(run(highestVoltage, week)).toEqual([]);
    valuesIn(week, "voltage", "L1")[100] = 264.51;
    expect(run(highestVoltage, week)).toHaveLength(1);
  });

  it("needs a second on end of shorter values", () => {
    const swell = (rows: number) => {
      const values = Array(50)
        .fill(230)
        .fill(280, 10, 10 + rows);
      return run(highestVoltage, recordingOf([logged("voltage", "L1", values, { interval: SECOND / 5 })]));
    };
    expect(swell(4)).toEqual([]);
    expect(only(swell(5)).evidence).toMatchObject({ rows: 5, longestS: 1 });
  });

  it("does not look at voltages between phases in star, nor where the declared voltage cannot be right", () => {
    const values = Array(50).fill(400);
    expect(run(highestVoltage, recordingOf([logged("voltage", "L12", values)]))).toEqual([]);
    expect(run(highestVoltage, recordingOf([logged("voltage", "L1", values)]))).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(highestVoltage, soundWeek())).toEqual([]);
  });
});
