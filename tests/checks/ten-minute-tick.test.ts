import { describe, expect, it } from "vitest";
import { tenMinuteTick } from "../../src/checks/ten-minute-tick.js";
import { MINUTE, SECOND } from "../../src/recording/time.js";
import { logged, START } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

const values = Array(6).fill(230);

describe("ten-minute tick", () => {
  it("counts intervals that begin between two ticks", () => {
    const finding = only(
      run(tenMinuteTick, recordingOf([logged("voltage", "L1", values, { start: START + 187 * SECOND })])),
    );
    expect(finding).toMatchObject({
      id: "ten-minute-tick",
      severity: "note",
      evidence: { off: 6, rows: 6, first: "2026-03-02T00:03:07Z", offsetS: 187 },
    });
    expect(String(finding.sentence)).toMatch(/^6 of 6 ten-minute intervals/);
  });

  it("leaves shorter intervals alone, which are combined on the clock", () => {
    expect(
      run(tenMinuteTick, recordingOf([logged("voltage", "L1", values, { start: START + MINUTE, interval: MINUTE })])),
    ).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(tenMinuteTick, soundWeek())).toEqual([]);
  });
});
