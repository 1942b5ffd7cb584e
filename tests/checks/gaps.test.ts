import { describe, expect, it } from "vitest";
import { gaps } from "../../src/checks/gaps.js";
import { axis, logged } from "../support/series.js";
import { keepRows, only, ROWS, recordingOf, run, soundWeek, TEN_MINUTES, valuesIn } from "./support.js";

describe("gaps", () => {
  it("tells rows that are not there: how many, how long in all, the longest and where", () => {
    const finding = only(
      run(
        gaps,
        keepRows(soundWeek(), (i) => i !== 30 && (i < 100 || i >= 112)),
      ),
    );
    expect(finding.severity).toBe("note");
    expect(finding.phases).toEqual([]);
    expect(finding.quantities).toContain("voltage");
    expect(finding.evidence).toMatchObject({
      count: 2,
      totalS: 13 * 600,
      lengthS: 604_800,
      share: 13 / 1008,
      longestS: 7200,
      longestFrom: "2026-03-02T16:40:00Z",
      spans: ["2026-03-02T05:00:00Z/2026-03-02T05:10:00Z", "2026-03-02T16:40:00Z/2026-03-02T18:40:00Z"],
    });
    expect(String(finding.sentence)).toContain(
      "2 h 10 min of 7 d without values (1.29 %), the longest 2 h from 2026-03-02T16:40:00Z",
    );
  });

  it("tells values that are missing in one quantity on one phase only", () => {
    const week = soundWeek();
    valuesIn(week, "pst", "L2").fill(Number.NaN, 500, 503);
    const finding = only(run(gaps, week));
    expect(finding).toMatchObject({ quantities: ["pst"], phases: ["L2"] });
    expect(finding.evidence).toMatchObject({ series: 1, of: 3, count: 1, totalS: 1800 });
    expect(String(finding.sentence)).toContain("(1 of 3 series)");
  });

  it("counts a beginning and an end that one table does not cover", () => {
    const long = logged("voltage", "L1", Array(20).fill(230));
    const short = logged("frequency", "system", Array(10).fill(50), { start: long.axis.starts[4] as number });
    expect(only(run(gaps, recordingOf([long, short]))).evidence).toMatchObject({
      quantities: ["frequency"],
      count: 2,
      totalS: 10 * 600,
      longestS: 6 * 600,
    });
  });

  it("measures a Plt that comes every two hours by its own interval", () => {
    const week = soundWeek();
    const plt = valuesIn(week, "plt", "L1");
    for (let i = 0; i < ROWS; i++) if (i % 12 !== 11) plt[i] = Number.NaN;
    expect(run(gaps, week)).toEqual([]);
    plt[35] = Number.NaN;
    expect(only(run(gaps, week)).evidence).toMatchObject({ count: 1, totalS: 7200 });
  });

  it("leaves a step of the clock shorter than half an interval alone", () => {
    const stepped = axis(20);
    for (let i = 10; i < 20; i++) stepped.starts[i] = (stepped.starts[i] as number) + TEN_MINUTES / 2 - 1;
    expect(run(gaps, recordingOf([logged("voltage", "L1", Array(20).fill(230), { axis: stepped })]))).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(gaps, soundWeek())).toEqual([]);
  });
});
