import { describe, expect, it } from "vitest";
import { frequencyConstant } from "../../src/checks/frequency-constant.js";
import { SECOND } from "../../src/recording/time.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek, valuesIn } from "./support.js";

const constant = (n: number, resolution: number, value = 50) =>
  recordingOf([{ ...logged("frequency", "system", Array(n).fill(value)), resolution }]);

describe("constant frequency", () => {
  it("blocks the frequency where it never changes in a day, written to 10 mHz or finer", () => {
    const finding = only(run(frequencyConstant, constant(144, 0.01)));
    expect(finding).toMatchObject({
      id: "frequency-constant",
      severity: "blocks",
      quantities: ["frequency"],
      evidence: { values: 144, value: 50, resolution: 0.01 },
    });
    expect(String(finding.sentence)).toMatch(
      /^All 144 values of the power frequency are 50 Hz to the last digit \(0.01 Hz\)/,
    );
  });

  it("accuses no log of 0.1 Hz, none shorter than a day, and none whose digits are not known", () => {
    expect(run(frequencyConstant, constant(1008, 0.1))).toEqual([]);
    expect(run(frequencyConstant, constant(143, 0.01))).toEqual([]);
    expect(run(frequencyConstant, recordingOf([logged("frequency", "system", Array(144).fill(50))]))).toEqual([]);
  });

  it("notes a constant hour at 1 mHz, not 50 min, and not at 10 mHz", () => {
    const held = (rows: number, resolution = 0.001) => {
      const week = soundWeek();
      const f = valuesIn(week, "frequency", "system");
      f.fill(50.017, 400, 400 + rows);
      f[400 + rows] = 49.999;
      f[399] = 49.999;
      return run(frequencyConstant, {
        ...week,
        series: week.series.map((s) => (s.quantity === "frequency" ? { ...s, resolution } : s)),
      });
    };
    expect(only(held(6))).toMatchObject({
      id: "frequency-constant-hour",
      severity: "note",
      evidence: { value: 50.017, timeS: 3600, values: 6, from: "2026-03-04T18:40:00Z" },
    });
    expect(held(5)).toEqual([]);
    expect(held(6, 0.01)).toEqual([]);
    const minutes = (rows: number) => {
      const values = Array.from({ length: 200 }, (_, i) => (i < rows ? 50.002 : 50 + (i % 9) / 1000));
      return recordingOf([{ ...logged("frequency", "system", values, { interval: 60 * SECOND }), resolution: 0.001 }]);
    };
    expect(run(frequencyConstant, minutes(59))).toEqual([]);
    expect(only(run(frequencyConstant, minutes(60))).evidence).toMatchObject({ timeS: 3600, values: 60 });
  });

  it("does not join equal values across a gap", () => {
    const first = logged("frequency", "system", [50.001, ...Array(8).fill(50.002), 50.003]);
    const starts = first.axis.starts.map((t, i) => (i < 5 ? t : t + 86_400 * SECOND));
    const series = { ...first, resolution: 0.001, axis: { ...first.axis, starts } };
    expect(run(frequencyConstant, recordingOf([series]))).toEqual([]);
  });

  it("notes a day that spreads by less than 1 mHz: ±0.9 mHz, not ±1.1 mHz", () => {
    const swinging = (by: number) =>
      recordingOf([
        {
          ...logged(
            "frequency",
            "system",
            Array.from({ length: 288 }, (_, i) => 50 + (i % 2 === 0 ? by : -by)),
          ),
          resolution: 0.0001,
        },
      ]);
    const finding = only(run(frequencyConstant, swinging(0.0009)));
    expect(finding).toMatchObject({
      id: "frequency-calm",
      severity: "note",
      evidence: { calmDays: 2, days: 2, from: "2026-03-02T00:00:00Z" },
    });
    expect(finding.evidence.deviationMilliHz).toBeCloseTo(0.9, 6);
    expect(run(frequencyConstant, swinging(0.0011))).toEqual([]);
  });

  it("finds none in a sound week, nor without a frequency", () => {
    expect(run(frequencyConstant, soundWeek())).toEqual([]);
    expect(run(frequencyConstant, recordingOf([logged("voltage", "L1", [230])]))).toEqual([]);
  });
});
