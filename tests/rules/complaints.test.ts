import { describe, expect, it } from "vitest";
import type { VoltageEvent } from "../../src/recording/measurements.js";
import type { SupplyDetail } from "../../src/recording/supply-detail.js";
import { MINUTE, SECOND } from "../../src/recording/time.js";
import { intervals, START } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

const BOTH = ruleSet(VOLTAGE_95, VOLTAGE_100);
const vienna = { ...setup(), zone: { value: "Europe/Vienna", origin: "given" as const } };
const values = week({ 3: 254, 4: 190, 10: Number.NaN });
const series = [intervals("voltage", "L1", values)];
const complained = (at: string, to?: string) => ({
  given: { complaints: [{ at, ...(to !== undefined && { to }), what: "lamps flicker" }] },
});

describe("a complaint against the recording", () => {
  it("names the fixed interval that covers it and the limits it lies outside of", () => {
    const { complaints } = judgeSeries(series, BOTH, complained("2026-03-02T00:35"));
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatchObject({ at: "2026-03-02T00:35:00Z", what: "lamps flicker", within: "recording" });
    const covering = {
      intervalS: 600,
      start: "2026-03-02T00:30:00Z",
      end: "2026-03-02T00:40:00Z",
      expected: 1,
      valid: 1,
      outside: 1,
      lowest: 254,
      highest: 254,
    };
    expect(complaints[0]?.phases).toEqual([
      {
        phase: "L1",
        covered: true,
        intervals: [
          { requirement: "voltage-95", ...covering },
          { requirement: "voltage-100", ...covering },
        ],
      },
    ]);
    expect(complaints[0]).not.toHaveProperty("alike");
  });

  it("reads a time in the log's zone, and one with an offset as it is", () => {
    const at = (text: string) => judgeSeries(series, BOTH, { ...complained(text), setup: vienna }).complaints[0]?.at;
    expect(at("2026-03-02T13:30")).toBe("2026-03-02T12:30:00Z");
    expect(at("2026-03-02T13:30+02:00")).toBe("2026-03-02T11:30:00Z");
  });

  it("of a span takes every interval that it overlaps, to its end and not beyond", () => {
    const covering = (from: string, to: string) =>
      judgeSeries(series, BOTH, complained(from, to)).complaints[0]?.phases[0]?.intervals[0];
    expect(covering("2026-03-02T00:35", "2026-03-02T00:50")).toMatchObject({
      start: "2026-03-02T00:30:00Z",
      end: "2026-03-02T00:50:00Z",
      expected: 2,
      valid: 2,
      outside: 2,
      lowest: 190,
      highest: 254,
    });
    expect(covering("2026-03-02T00:50", "2026-03-02T01:50")).toMatchObject({ expected: 6, valid: 5, outside: 0 });
  });

  it("is not covered where the interval is missing, or before and after the recording", () => {
    const of = (at: string, to?: string) => judgeSeries(series, BOTH, complained(at, to)).complaints[0];
    expect(of("2026-03-02T01:45")).toMatchObject({ within: "recording", phases: [{ covered: false }] });
    expect(of("2026-03-01T23:59")).toMatchObject({ within: "outside", phases: [{ covered: false }] });
    expect(of("2026-03-09T00:00")).toMatchObject({ within: "outside", phases: [{ covered: false }] });
    expect(of("2026-03-08T23:59")).toMatchObject({ within: "recording", phases: [{ covered: true }] });
    expect(of("2026-03-08T23:00", "2026-03-09T01:00")).toMatchObject({
      within: "partly",
      phases: [{ covered: false }],
    });
  });

  it("outside the recording is held against the same hour on days of the same class", () => {
    const alike = (at: string, on = series) => judgeSeries(on, BOTH, complained(at)).complaints[0]?.alike;
    // A Wednesday of the year before: 11:30 to 13:30 holds 12 intervals on each of five working days.
    expect(alike("2025-03-05T12:30")).toEqual({ days: "working-day", n: 60 });
    expect(alike("2025-03-08T12:30")).toEqual({ days: "saturday", n: 12 });
    expect(alike("2025-03-09T12:30")).toEqual({ days: "sunday", n: 12 });
    // 22:30 to 24:00 of Sunday the 8th, and 00:00 to 00:30 of Monday the 2nd, which is within an hour of Sunday 23:30.
    expect(alike("2025-03-09T23:30")).toEqual({ days: "sunday", n: 9 + 3 });
    const fewer = [intervals("voltage", "L1", values.slice(0, 3 * 144))];
    expect(alike("2025-03-08T12:30", fewer)).toEqual({ days: "saturday", n: 0 });
    const toSaturday = [intervals("voltage", "L1", values.slice(0, 6 * 144))];
    expect(alike("2025-03-08T12:30", toSaturday)).toEqual({ days: "saturday", n: 12 });
    expect(alike("2025-03-09T12:30", toSaturday)).toEqual({ days: "sunday", n: 0 });
  });

  it("repeats what the shortest intervals showed within five minutes on either side, and the events there", () => {
    const at = START + 12 * 3600 * SECOND;
    const asked = { from: at - 5 * MINUTE, to: at + 5 * MINUTE };
    const supply: SupplyDetail = {
      sliding: [],
      bounds: [],
      spans: [
        {
          phase: "L1",
          asked: { ...asked, to: asked.to + 1 },
          interval: SECOND,
          n: 1,
          start: at,
          end: at,
          lowest: 1,
          highest: 1,
          mean: 1,
        },
        {
          phase: "L1",
          asked,
          interval: SECOND,
          n: 600,
          start: asked.from,
          end: asked.to,
          lowest: 221,
          highest: 249,
          mean: 236.5,
        },
      ],
    };
    const dip = (start: number, durationS: number): VoltageEvent => ({
      kind: "dip",
      origin: "computed",
      phases: ["L1"],
      unit: "V",
      start,
      durationS,
      extreme: 180,
    });
    const events = [
      dip(asked.from - 2 * SECOND, 1),
      dip(asked.from - 2 * SECOND, 3),
      dip(asked.to - SECOND, 1),
      dip(asked.to, 1),
    ];
    const [complaint] = judgeSeries(series, BOTH, { ...complained("2026-03-02T12:00"), supply, events }).complaints;
    expect(complaint?.phases[0]?.around).toEqual({
      start: "2026-03-02T11:55:00Z",
      end: "2026-03-02T12:05:00Z",
      intervalS: 1,
      n: 600,
      lowest: 221,
      highest: 249,
      mean: 236.5,
    });
    expect(complaint?.events.map(({ start, durationS }) => [start, durationS])).toEqual([
      ["2026-03-02T11:54:58Z", 3],
      ["2026-03-02T12:04:59Z", 1],
    ]);
  });

  it("stands in order of time, as comments do; a span that ends before it begins is refused", () => {
    const given = {
      complaints: [
        { at: "2026-03-04T10:00", what: "second" },
        { at: "2026-03-03T10:00", what: "first" },
      ],
      comments: [
        { at: "2026-03-05T10:00", phase: "L1" as const, text: "later" },
        { at: "2026-03-03T10:00", to: "2026-03-03T11:00", text: "earlier" },
      ],
    };
    const { complaints, comments } = judgeSeries(series, BOTH, { given });
    expect(complaints.map(({ what }) => what)).toEqual(["first", "second"]);
    expect(comments).toEqual([
      { at: "2026-03-03T10:00:00Z", to: "2026-03-03T11:00:00Z", text: "earlier" },
      { at: "2026-03-05T10:00:00Z", phase: "L1", text: "later" },
    ]);
    expect(() => judgeSeries(series, BOTH, complained("2026-03-03T10:00", "2026-03-03T10:00"))).toThrow(
      /complaints, item 1: to 2026-03-03T10:00 does not lie after at/,
    );
  });
});
