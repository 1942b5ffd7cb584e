import { describe, expect, it } from "vitest";
import { clockSteps } from "../../src/checks/clock-steps.js";
import { SECOND } from "../../src/recording/time.js";
import { only, run, soundWeek, startOf, withLedger } from "./support.js";

describe("clock steps", () => {
  it("tells how many there are, the first, and the largest with its sign", () => {
    const steps = [
      { at: startOf(700), by: 200 * SECOND },
      { at: startOf(712), by: -203 * SECOND },
    ];
    const finding = only(run(clockSteps, withLedger(soundWeek(), { clockSteps: steps })));
    expect(finding).toMatchObject({
      id: "clock-steps",
      severity: "note",
      evidence: {
        steps: 2,
        first: "2026-03-06T20:40:00Z",
        largestS: -203,
        largestAt: "2026-03-06T22:40:00Z",
        at: ["2026-03-06T20:40:00Z 200 s", "2026-03-06T22:40:00Z -203 s"],
      },
    });
    expect(String(finding.sentence)).toContain(
      "2 times, first at 2026-03-06T20:40:00Z, farthest by -203 s at 2026-03-06T22:40:00Z",
    );
  });

  it("finds none in a sound week", () => {
    expect(run(clockSteps, soundWeek())).toEqual([]);
  });
});
