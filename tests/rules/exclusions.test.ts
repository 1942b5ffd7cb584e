import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { VoltageEvent } from "../../src/recording/measurements.js";
import type { GivenExclusion } from "../../src/recording/setup-evidence.js";
import { DAY, HOUR, type Instant, isoUtc, MINUTE, SECOND, WEEK, YEAR } from "../../src/recording/time.js";
import { assessmentSchema } from "../../src/rules/assessment.js";
import type { Requirement } from "../../src/rules/rule-set.js";
import { intervals, START } from "../support/series.js";
import { judgeSeries, ruleSet, setup, TEN_MINUTES, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

const only95 = ruleSet(VOLTAGE_95);
const voltage = (values: readonly number[], flagged?: readonly number[]) =>
  intervals("voltage", "L1", values, flagged ? { flagged } : {});

function excluding(...spans: readonly [Instant, Instant][]): { given: { exclusions: GivenExclusion[] } } {
  const exclusions = spans.map(
    ([from, to]): GivenExclusion => ({
      from: isoUtc(from),
      to: isoUtc(to),
      reason: "exceptional-weather",
      assertedBy: "network operator",
      reference: "storm report 12",
    }),
  );
  return { given: { exclusions } };
}
const at = (i: number) => START + i * TEN_MINUTES;

describe("an exclusion", () => {
  const stormy = voltage(week((i) => (i < 51 ? 254 : 230)));

  it("takes its intervals out of both present and missing, and shows both verdicts", () => {
    const a = judgeSeries([stormy], only95, excluding([at(0), at(10)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({
      n: 998,
      outside: 41,
      missing: 0,
      excluded: 10,
      verdict: "conforms",
      robust: true,
      verdictWithoutExclusions: "does-not-conform",
      counts: { withExcluded: { n: 1008, outside: 51 }, withoutExcluded: { n: 998, outside: 41 } },
    });
    expect(a).toMatchObject({ verdict: "conforms", verdictWithoutExclusions: "does-not-conform" });
    expect(a.weeks[0]).toMatchObject({ verdict: "conforms", verdictWithoutExclusions: "does-not-conform" });
    expect(a.recording.intervals).toMatchObject({ expected: 1008, present: 998, missing: 0, excluded: 10 });
    expect(a.exclusions).toEqual([
      {
        from: isoUtc(at(0)),
        to: isoUtc(at(10)),
        reason: "exceptional-weather",
        assertedBy: "network operator",
        reference: "storm report 12",
        intervals: 10,
        turnsVerdict: true,
      },
    ]);
    const json = JSON.parse(JSON.stringify(a));
    expect(assessmentSchema.parse(json)).toEqual(json);
  });

  it("leaves its values out of the worst value, the value at the required share and the sampling interval", () => {
    const a = judgeSeries([voltage(week((i) => (i < 60 ? 260 : 230)))], only95, excluding([at(0), at(60)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({
      worst: { value: 230 },
      percentile: { low: 230, high: 230 },
      sampling: { high: { from: 230, to: 230 }, shareOutside: { from: 0 } },
    });
  });

  it("takes every interval that it touches, and no other", () => {
    const one = judgeSeries([stormy], only95, excluding([at(3) + MINUTE, at(3) + 2 * MINUTE]));
    expect(one.weeks[0]?.requirements[0]?.excluded).toBe(1);
    const exact = judgeSeries([stormy], only95, excluding([at(3), at(4)]));
    expect(exact.weeks[0]?.requirements[0]?.excluded).toBe(1);
    const twoInOne = excluding([at(3) + MINUTE, at(3) + 2 * MINUTE], [at(3) + 5 * MINUTE, at(3) + 6 * MINUTE]);
    const two = judgeSeries([stormy], only95, twoInOne);
    expect(two.weeks[0]?.requirements[0]).toMatchObject({ excluded: 1, missing: 0 });
    const edge = judgeSeries([stormy], only95, excluding([at(3) - SECOND, at(4) + SECOND]));
    expect(edge.weeks[0]?.requirements[0]?.excluded).toBe(3);
    const plt = {
      ...VOLTAGE_95,
      quantity: "plt",
      interval: "2h",
      phases: "supply",
    } as const satisfies Partial<Requirement>;
    const limit = { kind: "share-within", share: 0.95, max: 1, of: "own-unit" } as const;
    const blocks = intervals("plt", "L1", week({}, 84), { interval: 2 * HOUR });
    const a = judgeSeries(
      [blocks],
      ruleSet({ ...plt, criterion: limit }),
      excluding([START + HOUR, START + HOUR + MINUTE]),
    );
    expect(a.weeks[0]?.requirements[0]).toMatchObject({ n: 83, excluded: 1 });
  });

  it("does not turn the verdict where another one covers the same, or the rest still fails", () => {
    const twice = judgeSeries([stormy], only95, excluding([at(0), at(10)], [at(5), at(15)]));
    expect(twice.exclusions.map(({ intervals: n, turnsVerdict }) => [n, turnsVerdict])).toEqual([
      [10, false],
      [10, false],
    ]);
    expect(twice.weeks[0]?.requirements[0]).toMatchObject({ excluded: 15, verdict: "conforms" });
    expect(twice.verdictWithoutExclusions).toBe("does-not-conform");
    const bad = voltage(week((i) => (i < 100 ? 254 : 230)));
    expect(judgeSeries([bad], only95, excluding([at(0), at(10)])).exclusions[0]?.turnsVerdict).toBe(false);
  });

  it("can also make a verdict worse: what is left must still hold 95 %", () => {
    const a = judgeSeries([voltage(week((i) => (i < 50 ? 254 : 230)))], only95, excluding([at(500), at(600)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({
      n: 908,
      allowed: 45,
      outside: 50,
      verdict: "does-not-conform",
    });
    expect(a).toMatchObject({ verdict: "does-not-conform", verdictWithoutExclusions: "conforms" });
  });

  it("takes a gap inside it out of what is missing", () => {
    const gap = voltage(week((i) => (i >= 300 && i < 360 ? Number.NaN : 230)));
    expect(judgeSeries([gap], only95).weeks[0]?.requirements[0]).toMatchObject({ missing: 60, robust: false });
    const a = judgeSeries([gap], only95, excluding([at(290), at(370)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({ n: 928, missing: 0, excluded: 80, robust: true });
    expect(a.recording.intervals).toMatchObject({ present: 928, missing: 0, excluded: 80 });
  });

  it("never makes good what was not recorded: beyond the end of the recording it is cut off", () => {
    const half = voltage(week((i) => (i < 30 ? 254 : 230), 504));
    const a = judgeSeries([half], only95, excluding([at(500), at(1008)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({ n: 500, excluded: 4, missing: 504, verdict: "undecided" });
  });

  it("counts a flagged interval once", () => {
    const values = week((i) => (i >= 500 && i < 505 ? Number.NaN : 230));
    const flagged = values.map((_, i) => (i < 20 ? 1 : 0));
    const rule: Requirement = { ...VOLTAGE_95, flagged: "exclude" };
    const a = judgeSeries([voltage(values, flagged)], ruleSet(rule), excluding([at(10), at(30)]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({
      n: 973,
      missing: 5,
      excluded: 20,
      counts: { withFlagged: { n: 983 }, withoutFlagged: { n: 973 } },
    });
  });

  it("leaves a week that is mostly excluded unassessed, unless more lies outside than a whole week allows", () => {
    const most = excluding([at(0), at(600)]);
    const a = judgeSeries([voltage(week((i) => (i >= 1000 ? 254 : 230)))], only95, most);
    expect(a.weeks[0]?.requirements[0]).toMatchObject({ verdict: "not-assessed", reason: { id: "mostly-excluded" } });
    expect(a).toMatchObject({ verdict: "not-assessed", verdictWithoutExclusions: "conforms" });
    const bad = judgeSeries([voltage(week((i) => (i >= 957 ? 254 : 230)))], only95, most);
    expect(bad.verdict).toBe("does-not-conform");
    expect(judgeSeries([voltage(week({}))], only95, excluding([at(0), at(504)])).verdict).toBe("conforms");
  });

  it("does not let a seven-day window of few remaining intervals stand for the recording", () => {
    const values = week((i) => (i >= 1108 && i < 1112 ? 254 : 230), 2016);
    const a = judgeSeries([voltage(values)], only95, excluding([at(100), at(1105)]));
    expect(a.weeks.map(({ kind, verdict }) => [kind, verdict])).toEqual([
      ["consecutive", "not-assessed"],
      ["consecutive", "conforms"],
    ]);
    expect(a.verdict).toBe("conforms");
  });

  it("passes over an excluded day of a daily rule, and looks at the other days without exclusions", () => {
    const daily: Requirement = {
      ...VOLTAGE_95,
      id: "signalling",
      quantity: "thd-voltage",
      period: "day",
      criterion: { kind: "share-within", share: 0.99, max: 8, of: "own-unit" },
    };
    const bad = intervals(
      "thd-voltage",
      "L1",
      week((i) => (i >= 144 && i < 154 ? 9 : 1)),
    );
    const a = judgeSeries([bad], ruleSet(daily), excluding([START + DAY, START + 2 * DAY]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({
      verdict: "conforms",
      excluded: 0,
      verdictWithoutExclusions: "does-not-conform",
    });
  });

  it("lowers what a year allows of a yearly rule", () => {
    const yearly: Requirement = {
      ...VOLTAGE_95,
      quantity: "frequency",
      interval: "10s",
      phases: "system",
      period: "year",
      criterion: { kind: "share-within", share: 0.99995, min: 99, max: 101, of: "nominal-frequency" },
    };
    const allowed = Math.floor((YEAR / SECOND / 10) * 0.00005);
    expect(allowed).toBe(157);
    const days = 3;
    const values = Array.from({ length: days * 8640 }, (_, i) => (i < 157 ? 51 : 50));
    const series = intervals("frequency", "system", values, { interval: 10 * SECOND });
    expect(judgeSeries([series], ruleSet(yearly)).weeks[0]?.requirements[0]?.verdict).toBe("for-information");
    // 12 960 of 3 153 600 intervals left out: floor(0.00005 · 3 140 640) = 157, so one more has to go.
    const a = judgeSeries([series], ruleSet(yearly), excluding([START + DAY, START + 2.5 * DAY]));
    expect(a.weeks[0]?.requirements[0]).toMatchObject({ verdict: "for-information", excluded: 12_960 });
    const more = judgeSeries([series], ruleSet(yearly), excluding([START + DAY, START + 2.6 * DAY]));
    expect(more.weeks[0]?.requirements[0]).toMatchObject({ verdict: "does-not-conform", excluded: 13_824 });
  });

  it("marks the events that it touches", () => {
    const dip = (start: Instant): VoltageEvent => ({
      kind: "dip",
      origin: "computed",
      phases: ["L1"],
      unit: "V",
      start,
      durationS: 0.5,
      extreme: 180,
    });
    const events = [dip(at(1)), dip(at(5) - 0.2 * SECOND), dip(at(7)), dip(at(9))];
    const a = judgeSeries([voltage(week({}))], only95, { ...excluding([at(5), at(9)]), events });
    expect(a.events.map(({ excluded }) => excluded)).toEqual([undefined, true, true, undefined]);
  });

  it.each([
    ["outside the log", [START - DAY, START] as const, /item 1, from .* lies outside the log, which runs from/],
    ["the wrong way round", [at(5), at(4)] as const, /item 1, ends .* before it begins .*; correct its times\.$/],
  ])("is refused where it is %s", (_, [from, to], message) => {
    expect(() => judgeSeries([voltage(week({}))], only95, excluding([from, to]))).toThrow(message);
  });

  it("is read in the log's zone", () => {
    const given = {
      exclusions: [
        { ...excluding([at(0), at(1)]).given.exclusions[0], from: "2026-03-02T06:00", to: "2026-03-02T07:00" },
      ],
    };
    const a = judgeSeries([voltage(week({}))], only95, {
      given: given as { exclusions: GivenExclusion[] },
      setup: setup(),
    });
    expect(a.exclusions[0]).toMatchObject({ from: "2026-03-02T06:00:00Z", intervals: 6 });
  });
});

describe("whatever is excluded", () => {
  const span = fc.tuple(fc.integer({ min: -300, max: 1300 }), fc.integer({ min: 1, max: 400 }));
  const spans = fc.array(span, { maxLength: 4 });

  it("the counts are those of the intervals that no span touches, and all add up", () => {
    fc.assert(
      fc.property(spans, fc.integer(), (list, seed) => {
        // Times in steps of 5 min, so that spans begin and end within intervals too.
        const inside = list
          .map(([from, length]): [Instant, Instant] => [
            START + from * 5 * MINUTE,
            START + (from + length) * 5 * MINUTE,
          ])
          .filter(([from, to]) => to > START && from < START + WEEK);
        const values = week((i) =>
          ((i * 7919 + seed) >>> 3) % 17 === 0 ? Number.NaN : 230 + (((i * 31 + seed) >>> 1) % 50),
        );
        const a = judgeSeries([voltage(values)], ruleSet(VOLTAGE_95, VOLTAGE_100), excluding(...inside));
        const free = values.filter((_, i) => inside.every(([from, to]) => to <= at(i) || from >= at(i + 1)));
        const valid = free.filter((v) => !Number.isNaN(v));
        for (const row of a.weeks[0]?.requirements ?? []) {
          expect(row.n).toBe(valid.length);
          expect(row.outside).toBe(valid.filter((v) => v > 253).length);
          expect(row.excluded).toBe(1008 - free.length);
          expect(row.n + row.missing + row.excluded).toBe(1008);
        }
        const without = judgeSeries([voltage(values)], ruleSet(VOLTAGE_95, VOLTAGE_100));
        expect(a.verdictWithoutExclusions ?? a.verdict).toBe(without.verdict);
        if (inside.length === 0) expect(a).toEqual(without);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
});
