import { describe, expect, it } from "vitest";
import { thdFromHarmonics } from "../../src/checks/thd-from-harmonics.js";
import type { Recording } from "../../src/recording/recording.js";
import { only, run, seriesIn, soundWeek, valuesIn, without } from "./support.js";

function scaled(quantity: "thd-voltage" | "harmonic-voltage", factor: number, rows = 1008): Recording {
  const week = soundWeek();
  for (const { values } of week.series.filter((s) => s.quantity === quantity && s.phase === "L1")) {
    for (let i = 0; i < rows; i++) values[i] = (values[i] as number) * factor;
  }
  return week;
}

/** Root sum of squares of L1's harmonics 2…40 in a row. */
function rootSum(week: Recording, row: number): number {
  const squares = week.series
    .filter((s) => s.quantity === "harmonic-voltage" && s.phase === "L1")
    .map((s) => (s.values[row] as number) ** 2);
  return Math.sqrt(squares.reduce((a, b) => a + b));
}

describe("THD from harmonics", () => {
  it("counts rows that disagree, with the worst", () => {
    const week = scaled("thd-voltage", 0.7);
    const finding = only(run(thdFromHarmonics, week));
    expect(finding).toMatchObject({
      id: "thd-from-harmonics",
      severity: "note",
      quantities: ["thd-voltage", "harmonic-voltage"],
      phases: ["L1"],
      evidence: { phase: "L1", rows: 1008, of: 1008, share: 1, complete: "yes" },
    });
    const thd = valuesIn(week, "thd-voltage", "L1");
    const off = thd.map((v, i) => rootSum(week, i) - v);
    const worst = off.indexOf(Math.max(...off));
    expect(finding.evidence.thd).toBe(thd[worst]);
    expect(finding.evidence.sum).toBeCloseTo(rootSum(week, worst), 12);
  });

  it("allows 3 % of the value", () => {
    // Rounding 39 orders to 0.01 % moves the root sum by up to 0.03 %, which is 2 % of this week's THD.
    expect(run(thdFromHarmonics, scaled("thd-voltage", 1.01))).toEqual([]);
    expect(run(thdFromHarmonics, scaled("thd-voltage", 1.06))).toHaveLength(1);
    expect(run(thdFromHarmonics, scaled("thd-voltage", 0.94))).toHaveLength(1);
  });

  it("lets single rows pass: 10 of 1008, not 11; flagged rows do not count", () => {
    expect(run(thdFromHarmonics, scaled("thd-voltage", 0.7, 10))).toEqual([]);
    expect(only(run(thdFromHarmonics, scaled("thd-voltage", 0.7, 11))).evidence).toMatchObject({ rows: 11, of: 1008 });
    const flagged = scaled("thd-voltage", 0.7, 11);
    seriesIn(flagged, "thd-voltage", "L1").axis.flagged.fill(1, 0, 5);
    expect(run(thdFromHarmonics, flagged)).toEqual([]);
  });

  it("lets THD be higher, never lower, where orders are missing", () => {
    const some = (week: Recording) => without(week, (s) => s.order !== undefined && ![3, 5, 7].includes(s.order));
    expect(run(thdFromHarmonics, some(soundWeek()))).toEqual([]);
    expect(run(thdFromHarmonics, some(scaled("thd-voltage", 1.5)))).toEqual([]);
    expect(only(run(thdFromHarmonics, some(scaled("thd-voltage", 0.7)))).evidence).toMatchObject({ complete: "no" });
  });

  it("blocks the one that is in a wrong unit", () => {
    const thd = only(run(thdFromHarmonics, scaled("thd-voltage", 0.01)));
    expect(thd).toMatchObject({
      id: "distortion-unit",
      severity: "blocks",
      quantities: ["thd-voltage"],
      phases: ["L1"],
    });
    expect(thd.evidence.ratio as number).toBeCloseTo(100, 0);
    expect(only(run(thdFromHarmonics, scaled("harmonic-voltage", 0.01))).quantities).toEqual(["harmonic-voltage"]);
    expect(only(run(thdFromHarmonics, scaled("harmonic-voltage", 100))).quantities).toEqual(["harmonic-voltage"]);
    expect(only(run(thdFromHarmonics, scaled("thd-voltage", 0.02))).severity).toBe("note");
  });

  it("allows what rounding to one decimal does to 39 orders", () => {
    const week = soundWeek();
    for (const s of week.series) {
      if (s.quantity !== "harmonic-voltage" && s.quantity !== "thd-voltage") continue;
      s.values.set(s.values.map((v) => Number(v.toFixed(1))));
    }
    const coarse = { ...week, series: week.series.map((s) => ({ ...s, resolution: 0.1 })) };
    expect(run(thdFromHarmonics, coarse)).toEqual([]);
  });

  it("finds none in a sound week, nor without harmonics", () => {
    expect(run(thdFromHarmonics, soundWeek())).toEqual([]);
    expect(
      run(
        thdFromHarmonics,
        without(scaled("thd-voltage", 0.7), (s) => s.order !== undefined),
      ),
    ).toEqual([]);
  });
});
