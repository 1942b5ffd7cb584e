import { describe, expect, it } from "vitest";
import { pltFromPst } from "../../src/checks/plt-from-pst.js";
import type { LoggedSeries } from "../../src/recording/recording.js";
import { HOUR } from "../../src/recording/time.js";
import { logged } from "../support/series.js";
import { keepRows, only, recordingOf, run, soundWeek, valuesIn } from "./support.js";

/** Two hours each of: twelve 1.0; one 2.0 and eleven 0; six 1.0 and six 0.5. Their Plt: 1, 0.8736, 0.8255. */
const PST = [...Array(12).fill(1), 2, ...Array(11).fill(0), ...Array(6).fill(1), ...Array(6).fill(0.5)];
const written = (s: LoggedSeries, resolution: number): LoggedSeries => ({ ...s, resolution });
const withPlt = (plt: readonly number[], interval = 2 * HOUR) =>
  recordingOf([written(logged("pst", "L1", PST), 0.01), written(logged("plt", "L1", plt, { interval }), 0.01)]);

describe("Plt from Pst", () => {
  it("agrees with the closed form (ΣPst³ / 12)^⅓ on two-hour rows", () => {
    expect(run(pltFromPst, withPlt([1, 0.87, 0.83]))).toEqual([]);
  });

  it("counts the cases that disagree by more than the written digits, with the worst", () => {
    const finding = only(run(pltFromPst, withPlt([1, 0.9, 0.6])));
    expect(finding).toMatchObject({
      id: "plt-from-pst",
      severity: "note",
      quantities: ["plt"],
      phases: ["L1"],
      evidence: { phase: "L1", compared: 3, disagree: 2, share: 2 / 3, at: "2026-03-02T04:00:00Z", logged: 0.6 },
    });
    expect(finding.evidence.expected).toBeCloseTo(Math.cbrt(6.75 / 12), 12);
    expect(String(finding.sentence)).toContain(
      "in 2 of 3 cases (66.7 %), most in the two hours from 2026-03-02T04:00:00Z with 0.6 logged and 0.82548 from Pst",
    );
  });

  it("allows one last digit of each: 0.02 in all", () => {
    expect(run(pltFromPst, withPlt([1.02, 0.87, 0.83]))).toEqual([]);
    expect(only(run(pltFromPst, withPlt([1.03, 0.87, 0.83]))).evidence).toMatchObject({
      disagree: 1,
      logged: 1.03,
      expected: 1,
    });
  });

  it("knows the habits of ten-minute rows: sliding, or a block's Plt in all its rows, those of the next, or one", () => {
    const minutes = (values: readonly number[]) => withPlt(values, HOUR / 6);
    const blocks = [1, Math.cbrt(8 / 12), Math.cbrt(6.75 / 12)];
    const all = Array.from({ length: 36 }, (_, i) => blocks[Math.floor(i / 12)] as number);
    const sliding = PST.map((_, i) =>
      i < 11 ? Number.NaN : Math.cbrt(PST.slice(i - 11, i + 1).reduce((s, p) => s + p ** 3, 0) / 12),
    );
    for (const honest of [
      all,
      [...Array(12).fill(Number.NaN), ...all.slice(0, 24)],
      all.map((v, i) => (i % 12 === 11 ? v : Number.NaN)),
      all.map((v, i) => (i % 12 === 0 ? v : Number.NaN)),
      sliding,
    ]) {
      expect(run(pltFromPst, minutes(honest))).toEqual([]);
      expect(run(pltFromPst, minutes(honest.map((v) => 0.8 * v)))).toHaveLength(1);
    }
  });

  it("compares no two hours in which a Pst is missing, and nothing without Pst", () => {
    const week = withPlt([1, 0.2, 0.83]);
    valuesIn(week, "pst", "L1")[15] = Number.NaN;
    expect(run(pltFromPst, week)).toEqual([]);
    const short = withPlt([1, 0.2, 0.83]);
    const cut = keepRows(short, (i) => i !== 15);
    expect(
      run(pltFromPst, { ...cut, series: [cut.series[0] as LoggedSeries, short.series[1] as LoggedSeries] }),
    ).toEqual([]);
    expect(run(pltFromPst, recordingOf([logged("plt", "L1", [1, 0.2], { interval: 2 * HOUR })]))).toEqual([]);
  });

  it("finds none in a sound week, and all of a scaled Plt", () => {
    expect(run(pltFromPst, soundWeek())).toEqual([]);
    const week = soundWeek();
    const plt = valuesIn(week, "plt", "L2");
    plt.set(plt.map((v) => 0.6 * v));
    expect(only(run(pltFromPst, week)).evidence).toMatchObject({ phase: "L2", compared: 997, disagree: 997 });
  });
});
