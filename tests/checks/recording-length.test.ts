import { describe, expect, it } from "vitest";
import { recordingLength } from "../../src/checks/recording-length.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

describe("recording length", () => {
  it("notes a recording that is one interval short of a week", () => {
    const finding = only(run(recordingLength, recordingOf([logged("voltage", "L1", Array(1007).fill(230))])));
    expect(finding).toMatchObject({
      id: "recording-length",
      severity: "note",
      evidence: { lengthS: 1007 * 600, weekS: 604_800, share: 1007 / 1008 },
    });
    expect(String(finding.sentence)).toContain("99.9 % of the week");
  });

  it("lets just a week pass", () => {
    expect(run(recordingLength, soundWeek())).toEqual([]);
  });
});
