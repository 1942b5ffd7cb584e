import { describe, expect, it } from "vitest";
import { calibration } from "../../src/checks/calibration.js";
import type { Instrument } from "../../src/recording/setup-evidence.js";
import { inputOf, soundWeek } from "./support.js";

const week = inputOf(soundWeek(), {});
const day = (t: number) => new Date(t / 1000).toISOString().slice(0, 10);
const [FIRST, LAST] = [day(week.recording.start), day(week.recording.end)];
const found = (instrument?: Instrument) =>
  calibration.run({ ...week, ...(instrument !== undefined && { instrument }) }).map(({ evidence }) => evidence);

describe("the calibration interval of the instrument", () => {
  it("is silent where nothing was stated, or the recording lies within it to the day", () => {
    expect(found()).toEqual([]);
    expect(found({ class: "A" })).toEqual([]);
    expect(found({ calibrationDate: FIRST, calibrationDue: LAST })).toEqual([]);
  });

  it("is noted where it ended before the recording did, or began after it", () => {
    expect(found({ calibrationDue: FIRST })).toEqual([{ due: FIRST, end: LAST }]);
    expect(found({ calibrationDate: LAST })).toEqual([{ calibrated: LAST, start: FIRST }]);
  });
});
