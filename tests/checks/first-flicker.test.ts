import { describe, expect, it } from "vitest";
import { firstFlicker } from "../../src/checks/first-flicker.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

const pst = (first: number, rest: readonly number[] = Array(20).fill(0.4)) =>
  recordingOf([logged("pst", "L2", [Number.NaN, first, ...rest])]);

describe("first flicker", () => {
  it("notes a first Pst far above the next twelve", () => {
    const finding = only(run(firstFlicker, pst(2.6)));
    expect(finding).toMatchObject({
      id: "first-flicker",
      severity: "note",
      quantities: ["pst", "plt"],
      phases: ["L2"],
      evidence: { phase: "L2", value: 2.6, at: "2026-03-02T00:10:00Z", median: 0.4, next: 12 },
    });
    expect(String(finding.sentence)).toContain(
      "The first short-term flicker severity L2 is 2.6 at 2026-03-02T00:10:00Z",
    );
  });

  it("needs 1.0, three times the median, and the top of the next twelve", () => {
    expect(run(firstFlicker, pst(1.21))).toHaveLength(1);
    expect(run(firstFlicker, pst(1.19))).toEqual([]);
    expect(run(firstFlicker, pst(0.99, Array(20).fill(0.1)))).toEqual([]);
    expect(run(firstFlicker, pst(2, [...Array(11).fill(0.4), 2, 0.4]))).toEqual([]);
    expect(run(firstFlicker, pst(2.6, Array(11).fill(0.4)))).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(firstFlicker, soundWeek())).toEqual([]);
  });
});
