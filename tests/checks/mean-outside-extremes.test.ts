import { describe, expect, it } from "vitest";
import { meanOutsideExtremes } from "../../src/checks/mean-outside-extremes.js";
import type { LoggedSeries, Recording } from "../../src/recording/recording.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, seriesIn, soundWeek } from "./support.js";

function voltage(week: Recording): Required<Pick<LoggedSeries, "values" | "min" | "max">> {
  const { values, min, max } = seriesIn(week, "voltage", "L2");
  if (min === undefined || max === undefined) throw new Error("the sound week has extremes");
  return { values, min, max };
}

describe("mean outside its extremes", () => {
  it("notes single rows, with the farthest", () => {
    const week = soundWeek();
    const { values, min, max } = voltage(week);
    values[340] = (max[340] as number) + 0.5;
    values[341] = (min[341] as number) - 0.75;
    const finding = only(run(meanOutsideExtremes, week));
    expect(finding).toMatchObject({
      id: "mean-outside-extremes",
      severity: "note",
      quantities: ["voltage"],
      phases: ["L2"],
    });
    expect(finding.evidence).toEqual({
      quantity: "voltage",
      phase: "L2",
      rows: 2,
      of: 1008,
      share: 2 / 1008,
      at: "2026-03-04T08:50:00Z",
      value: values[341],
      min: min[341],
      max: max[341],
    });
    expect(String(finding.sentence)).toContain("In 2 of 1008 rows (0.198 %)");
  });

  it("blocks above 1 % of the rows: 11 of 1008, not 10", () => {
    const blockedAt = (rows: number) => {
      const week = soundWeek();
      const { values, max } = voltage(week);
      for (let i = 0; i < rows; i++) values[i] = (max[i] as number) + 2;
      return only(run(meanOutsideExtremes, week)).severity;
    };
    expect(blockedAt(10)).toBe("note");
    expect(blockedAt(11)).toBe("blocks");
  });

  it("finds columns mixed up where only a maximum was logged", () => {
    const values = Array.from({ length: 200 }, (_, i) => 230 + Math.sin(i) * 3);
    const series = {
      ...logged("voltage", "L1", values),
      max: Float64Array.from(values, (v) => v - 1),
      resolution: 0.1,
    };
    const finding = only(run(meanOutsideExtremes, recordingOf([series])));
    expect(finding.severity).toBe("blocks");
    expect(finding.evidence).toMatchObject({ rows: 200, of: 200 });
    expect(finding.evidence).not.toHaveProperty("min");
  });

  it("allows the last digit, also where extremes are written more coarsely than the mean", () => {
    const values = Array.from({ length: 500 }, (_, i) => Number((230 + 3 * Math.sin(i / 9)).toFixed(2)));
    const whole = { min: Float64Array.from(values, Math.round), max: Float64Array.from(values, Math.round) };
    expect(
      run(meanOutsideExtremes, recordingOf([{ ...logged("voltage", "L1", values), ...whole, resolution: 0.01 }])),
    ).toEqual([]);
    const tight = { min: Float64Array.from(values, (v) => v + 0.01), max: Float64Array.from(values, (v) => v + 1) };
    expect(
      run(meanOutsideExtremes, recordingOf([{ ...logged("voltage", "L1", values), ...tight, resolution: 0.01 }])),
    ).toEqual([]);
  });

  it("leaves powers alone, whose extremes may be magnitudes", () => {
    const values = Array(100).fill(-500);
    const series = {
      ...logged("active-power", "L1", values),
      min: Float64Array.from(values, () => 400),
      max: Float64Array.from(values, () => 600),
    };
    expect(run(meanOutsideExtremes, recordingOf([series]))).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(meanOutsideExtremes, soundWeek())).toEqual([]);
  });
});
