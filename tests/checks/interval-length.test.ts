import { describe, expect, it } from "vitest";
import { intervalLength } from "../../src/checks/interval-length.js";
import { HOUR, MINUTE } from "../../src/recording/time.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

const values = Array.from({ length: 50 }, (_, i) => 230 + (i % 3));

describe("interval length", () => {
  it("names the quantities logged at more than ten minutes", () => {
    const interval = 15 * MINUTE;
    const finding = only(
      run(
        intervalLength,
        recordingOf([logged("voltage", "L1", values, { interval }), logged("thd-voltage", "L1", values, { interval })]),
      ),
    );
    expect(finding).toMatchObject({
      id: "interval-length",
      severity: "note",
      quantities: ["voltage", "thd-voltage"],
      evidence: { intervalS: 900, standardS: 600 },
    });
    expect(String(finding.sentence)).toContain("every 15 min");
  });

  it("lets ten minutes pass, and Plt every two hours, but not Plt every three", () => {
    const ten = logged("voltage", "L1", values, { interval: 10 * MINUTE });
    expect(run(intervalLength, recordingOf([ten, logged("plt", "L1", values, { interval: 2 * HOUR })]))).toEqual([]);
    expect(
      only(run(intervalLength, recordingOf([logged("plt", "L1", values, { interval: 3 * HOUR })]))).evidence,
    ).toMatchObject({
      intervalS: 10_800,
      quantities: ["plt"],
    });
  });

  it("finds none in a sound week", () => {
    expect(run(intervalLength, soundWeek())).toEqual([]);
  });
});
