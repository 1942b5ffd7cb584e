import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/recording/finding.js";
import type { VoltageEvent } from "../../src/recording/measurements.js";
import { DAY, HOUR, isoUtc, SECOND, WEEK, YEAR } from "../../src/recording/time.js";
import { assessmentSchema } from "../../src/rules/assessment.js";
import type { Requirement } from "../../src/rules/rule-set.js";
import { intervals, START } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

const voltage = (values: readonly number[], flagged?: readonly number[]) =>
  intervals("voltage", "L1", values, flagged ? { flagged } : {});
const both = ruleSet(VOLTAGE_95, VOLTAGE_100);
const only95 = ruleSet(VOLTAGE_95);
const first = (a: ReturnType<typeof judgeSeries>) => a.weeks[0]?.requirements[0];

describe("the boundaries of a week of 1008 ten-minute values at Un 230 V", () => {
  it("conforms with 50 outside and does not with 51", () => {
    expect(first(judgeSeries([voltage(week((i) => (i < 50 ? 253.01 : 230)))], only95))).toMatchObject({
      outside: 50,
      allowed: 50,
      verdict: "conforms",
      robust: true,
    });
    expect(first(judgeSeries([voltage(week((i) => (i < 51 ? 253.01 : 230)))], only95))).toMatchObject({
      outside: 51,
      verdict: "does-not-conform",
      robust: true,
    });
  });

  it("takes 253.0 V as inside and 253.01 V as outside; the limit is exactly 253", () => {
    const on = judgeSeries([voltage(week({ 7: 253 }))], both);
    expect(on.verdict).toBe("conforms");
    expect(first(on)?.limit).toEqual({ min: 207, max: 253 });
    const over = judgeSeries([voltage(week({ 7: 253.01 }))], both);
    expect(over.verdict).toBe("does-not-conform");
    expect(over.weeks[0]?.requirements[1]?.worst).toEqual({ value: 253.01, at: isoUtc(START + 70 * 60 * SECOND) });
  });

  it("counts 26 too high and 25 too low together, though each side alone passes", () => {
    const high = (i: number) => i < 26;
    const low = (i: number) => i >= 500 && i < 525;
    expect(judgeSeries([voltage(week((i) => (high(i) ? 253.5 : 230)))], only95).verdict).toBe("conforms");
    expect(judgeSeries([voltage(week((i) => (low(i) ? 206 : 230)))], only95).verdict).toBe("conforms");
    expect(judgeSeries([voltage(week((i) => (high(i) ? 253.5 : low(i) ? 206 : 230)))], only95).verdict).toBe(
      "does-not-conform",
    );
  });

  it("fails on one value of 195.4 V and not on 195.5 V", () => {
    expect(judgeSeries([voltage(week({ 99: 195.4 }))], both).verdict).toBe("does-not-conform");
    expect(judgeSeries([voltage(week({ 99: 195.5 }))], both).verdict).toBe("conforms");
  });

  it("leaves half a week with 30 outside undecided and fails it with 51", () => {
    const half = (k: number) => judgeSeries([voltage(week((i) => (i < k ? 254 : 230), 504))], only95);
    expect(half(30).weeks[0]).toMatchObject({ complete: false, verdict: "undecided" });
    expect(first(half(30))).toMatchObject({ n: 504, missing: 504, reason: { id: "too-little-data" } });
    expect(half(30).verdict).toBe("undecided");
    expect(half(51).verdict).toBe("does-not-conform");
  });

  it("judges each phase by itself", () => {
    const bad = week((i) => (i < 51 ? 254 : 230));
    const phases = [
      intervals("voltage", "L1", week({})),
      intervals("voltage", "L2", bad),
      intervals("voltage", "L3", week({})),
    ];
    const a = judgeSeries(phases, only95, { setup: setup(230, "star") });
    expect(a.weeks[0]?.requirements.map((r) => [r.phase, r.verdict])).toEqual([
      ["L1", "conforms"],
      ["L2", "does-not-conform"],
      ["L3", "conforms"],
    ]);
    expect(a.verdict).toBe("does-not-conform");
  });
});

describe("weeks", () => {
  it("finds with the sliding window a bad week that no consecutive week shows", () => {
    const split = week((i) => (i >= 1008 - 30 && i < 1008 + 30 ? 254 : 230), 2016);
    const a = judgeSeries([voltage(split)], only95);
    expect(a.weeks.filter((w) => w.kind === "consecutive").map((w) => w.verdict)).toEqual(["conforms", "conforms"]);
    expect(a.weeks.filter((w) => w.kind === "worst-sliding")).toMatchObject([
      { verdict: "does-not-conform", requirements: [{ outside: 60 }] },
    ]);
    expect(a.verdict).toBe("does-not-conform");
  });

  it("finds the same worst sliding window as trying every one", () => {
    const values = week((i) => ((i * 7919) % 1013 < 60 ? 254 : (i * 31) % 97 === 0 ? Number.NaN : 230), 1500);
    const a = judgeSeries([voltage(values)], only95);
    const counts = Array.from(
      { length: 1500 - 1008 + 1 },
      (_, i) => values.slice(i, i + 1008).filter((v) => v > 253).length,
    );
    const shown = Math.max(...a.weeks.flatMap((w) => (w.complete ? w.requirements.map((r) => r.outside) : [])));
    expect(shown).toBe(Math.max(...counts));
  });

  it("does not let a rest shorter than a week make a conforming recording undecided, but lets it fail", () => {
    const rest = (k: number) =>
      judgeSeries([voltage(week((i) => (i >= 1008 && i < 1008 + k ? 254 : 230), 1008 + 300))], only95);
    expect(rest(0).weeks.map((w) => [w.complete, w.verdict])).toEqual([
      [true, "conforms"],
      [false, "undecided"],
    ]);
    expect(rest(0).verdict).toBe("conforms");
    expect(rest(51).verdict).toBe("does-not-conform");
  });

  it("counts Plt in whole two-hour blocks of the week", () => {
    const plt: Requirement = {
      ...VOLTAGE_95,
      id: "plt",
      quantity: "plt",
      interval: "2h",
      criterion: { kind: "share-within", share: 0.95, max: 1, of: "own-unit" },
    };
    const values = (k: number) => Array.from({ length: 84 }, (_, i) => (i < k ? 1.2 : 0.5));
    const judged = (k: number) =>
      first(judgeSeries([intervals("plt", "L1", values(k), { interval: 2 * HOUR }), voltage(week({}))], ruleSet(plt)));
    expect(judged(4)).toMatchObject({ n: 84, allowed: 4, verdict: "conforms" });
    expect(judged(5)).toMatchObject({ verdict: "does-not-conform" });
  });
});

describe("the yearly frequency rule", () => {
  const frequency = (max: number, share: number, id: string): Requirement => ({
    ...VOLTAGE_95,
    id,
    quantity: "frequency",
    interval: "10s",
    phases: "system",
    period: "year",
    criterion: { kind: "share-within", share, min: 200 - max - 100, max, of: "nominal-frequency" },
  });
  const rules = ruleSet(frequency(101, 0.995, "f-99"), frequency(104, 1, "f-100"));
  const weekOfFrequency = (f: (i: number) => number) =>
    intervals(
      "frequency",
      "system",
      Array.from({ length: 60480 }, (_, i) => f(i)),
      { interval: 10 * SECOND },
    );

  it("is for information over a week", () => {
    const a = judgeSeries([weekOfFrequency((i) => (i < 400 ? 50.6 : 50))], rules);
    expect(a.weeks[0]?.requirements.map((r) => [r.outside, r.verdict, r.reason?.id])).toEqual([
      [400, "for-information", "needs-a-year"],
      [0, "for-information", "needs-a-year"],
    ]);
    expect(a.verdict).toBe("not-assessed");
  });

  it("fails in a week that breaks the 100 % limit, or that alone uses up what a year allows", () => {
    expect(
      judgeSeries([weekOfFrequency((i) => (i === 5 ? 52.1 : 50))], rules).weeks[0]?.requirements.map((r) => r.verdict),
    ).toEqual(["for-information", "does-not-conform"]);
    expect(first(judgeSeries([weekOfFrequency((i) => (i < 15768 ? 50.6 : 50))], rules))?.verdict).toBe(
      "for-information",
    );
    expect(first(judgeSeries([weekOfFrequency((i) => (i < 15769 ? 50.6 : 50))], rules))?.verdict).toBe(
      "does-not-conform",
    );
  });

  it("is judged over 365 days where the recording is that long", () => {
    const series = (k: number) =>
      intervals(
        "frequency",
        "system",
        Array.from({ length: YEAR / (10 * SECOND) }, (_, i) => (i % 200 === 0 && i < 200 * k ? 50.6 : 50)),
        { interval: 10 * SECOND },
      );
    const judged = (k: number) => judgeSeries([series(k)], ruleSet(frequency(101, 0.995, "f-99")));
    expect(judged(15768).weeks.at(-1)).toMatchObject({
      kind: "year",
      complete: true,
      verdict: "conforms",
      requirements: [{ n: 3_153_600, outside: 15768, allowed: 15768 }],
    });
    const extra = intervals(
      "frequency",
      "system",
      Array.from({ length: YEAR / (10 * SECOND) }, (_, i) => (i < 15769 ? 50.6 : 50)),
      { interval: 10 * SECOND },
    );
    expect(judgeSeries([extra], ruleSet(frequency(101, 0.995, "f-99"))).verdict).toBe("does-not-conform");
  });
});

describe("flags, findings and data that are not there", () => {
  const values = week((i) => (i < 60 ? 254 : 230));
  const flags = values.map((_, i) => (i < 20 ? 1 : 0));

  it("lets the requirement say whether flagged intervals decide, and shows both counts", () => {
    const include = first(judgeSeries([voltage(values, flags)], only95));
    const exclude = first(judgeSeries([voltage(values, flags)], ruleSet({ ...VOLTAGE_95, flagged: "exclude" })));
    expect(include).toMatchObject({ n: 1008, outside: 60, verdict: "does-not-conform" });
    expect(exclude).toMatchObject({ n: 988, outside: 40, allowed: 49, missing: 0, verdict: "conforms", robust: true });
    for (const row of [include, exclude]) {
      expect(row?.counts).toEqual({ withFlagged: { n: 1008, outside: 60 }, withoutFlagged: { n: 988, outside: 40 } });
    }
  });

  it("takes a flagged interval without a value neither as present nor as missing, where flagged ones are left out", () => {
    const blank = week((i) => (i < 67 ? Number.NaN : 230));
    const row = first(
      judgeSeries(
        [
          voltage(
            blank,
            blank.map((_, i) => (i < 67 ? 1 : 0)),
          ),
        ],
        ruleSet({ ...VOLTAGE_95, flagged: "exclude" }),
      ),
    );
    expect(row).toMatchObject({ n: 941, missing: 0, verdict: "conforms", robust: true });
  });

  it("finds a bad window that begins in a gap", () => {
    // Rows 100 to 149 are absent; from row 100 on, 958 of 1008 are there and 48 of them outside, where 47 may.
    const outside = new Set([...Array.from({ length: 47 }, (_, j) => 160 + 20 * j), 1107]);
    const values = week((i) => (i >= 100 && i < 150 ? Number.NaN : outside.has(i) ? 254 : 230), 1300);
    const a = judgeSeries([voltage(values)], only95);
    const sliding = a.weeks.filter((w) => w.kind === "worst-sliding");
    expect(sliding.map((w) => w.verdict)).toEqual(["does-not-conform"]);
    expect(a.verdict).toBe("does-not-conform");
  });

  it("makes a quantity undecided whose recording a finding calls unsound", () => {
    const finding: Finding = {
      id: "declared-voltage",
      severity: "blocks",
      sentence: "Wrong by √3.",
      evidence: {},
      quantities: ["voltage"],
      phases: [],
    };
    const a = judgeSeries([voltage(values)], only95, { findings: [finding] });
    expect(first(a)).toMatchObject({
      verdict: "undecided",
      robust: false,
      reason: { id: "recording-unsound", values: { finding: "declared-voltage" } },
    });
    expect(judgeSeries([voltage(values)], only95, { findings: [{ ...finding, phases: ["L2"] }] }).verdict).toBe(
      "does-not-conform",
    );
  });

  it("lists what was not logged and does not count it as good", () => {
    const thd: Requirement = {
      ...VOLTAGE_95,
      id: "thd",
      quantity: "thd-voltage",
      criterion: { kind: "share-within", share: 0.95, max: 8, of: "own-unit" },
    };
    const a = judgeSeries([voltage(week({}))], ruleSet(VOLTAGE_95, thd));
    expect(a.verdict).toBe("conforms");
    expect(a.notAssessed).toMatchObject([{ requirement: "thd", reason: { id: "not-logged" } }]);
    expect(judgeSeries([voltage(week({}))], ruleSet(thd)).verdict).toBe("not-assessed");
  });

  it("says which orders of a harmonic table were not in the log", () => {
    const table: Requirement = {
      ...VOLTAGE_95,
      id: "harmonics",
      quantity: "harmonic-voltage",
      criterion: {
        kind: "share-within-by-order",
        share: 0.95,
        orders: { "5": { max: 6 }, "15": { max: 0.5, confirmed: false } },
      },
    };
    const a = judgeSeries(
      [
        intervals(
          "harmonic-voltage",
          "L1",
          week((i) => (i < 51 ? 6.1 : 3)),
          { order: 5 },
        ),
      ],
      ruleSet(table),
    );
    expect(a.weeks[0]?.requirements).toMatchObject([
      { order: 5, limit: { max: 6 }, verdict: "does-not-conform", confirmed: true },
    ]);
    expect(a.notAssessed).toMatchObject([
      { requirement: "harmonics", reason: { id: "partly-logged", values: { missing: "order 15 L1" } } },
    ]);
  });

  it("judges a daily rule by the worst day of the week", () => {
    const daily: Requirement = { ...VOLTAGE_95, period: "day" };
    const bad = (k: number) =>
      judgeSeries([voltage(week((i) => (i >= 288 && i < 288 + k ? 254 : 230)))], ruleSet(daily));
    expect(first(bad(7))).toMatchObject({ n: 144, outside: 7, allowed: 7, verdict: "conforms" });
    expect(first(bad(8))).toMatchObject({
      n: 144,
      outside: 8,
      verdict: "does-not-conform",
      worst: { at: isoUtc(START + 2 * DAY) },
    });
  });
});

describe("what only waveforms show", () => {
  const table: Requirement = {
    ...VOLTAGE_95,
    id: "dips",
    binding: false,
    interval: "half-cycle",
    period: "year",
    criterion: {
      kind: "event-table",
      event: "dip",
      rows: [{ id: "A", from: 90, to: 80 }],
      columns: [{ id: "1", from: 0.01, to: 0.2 }],
    },
  };
  const dip: VoltageEvent = {
    kind: "dip",
    origin: "computed",
    phases: ["L1"],
    start: START,
    durationS: 0.1,
    extreme: 195.5,
    percent: 85,
    unit: "V",
  };

  it("lists events with their cell, and says that interval values alone show none", () => {
    const seen = judgeSeries([voltage(week({}))], ruleSet(VOLTAGE_95, table), { events: [dip] });
    expect(seen.events).toMatchObject([{ kind: "dip", row: "A", column: "1", start: isoUtc(START) }]);
    expect(seen.notAssessed).toEqual([]);
    expect(seen.ruleSet.requirements[1]?.table?.rows).toEqual([{ id: "A", from: 90, to: 80 }]);
    const blind = judgeSeries([voltage(week({}))], ruleSet(VOLTAGE_95, table));
    expect(blind.notAssessed).toMatchObject([{ requirement: "dips", reason: { id: "no-events" } }]);
  });

  it("judges a signalling voltage day by day under its curve, log–log between the points", () => {
    const rule: Requirement = {
      ...VOLTAGE_95,
      id: "signalling",
      quantity: "mains-signalling",
      interval: "3s",
      period: "day",
      criterion: {
        kind: "share-below-curve",
        share: 0.99,
        points: [
          [100, 9],
          [500, 9],
          [1000, 5],
        ],
      },
    };
    const at = (hertz: number, k: number) => {
      const values = Array.from({ length: 28_800 }, (_, i) => (i < k ? 9.1 : 2));
      const series = { ...intervals("mains-signalling", "L1", values, { interval: 3 * SECOND }), hertz };
      return judgeSeries([series], ruleSet(rule));
    };
    expect(first(at(175, 288))).toMatchObject({ hertz: 175, limit: { max: 9 }, n: 28_800, outside: 288, allowed: 288 });
    const bad = at(175, 289).weeks[0];
    expect(bad?.requirements[0]?.outside).toBe(289);
    // Halfway between 500 and 1000 Hz on a logarithmic axis lies 707.1 Hz, and halfway between 9 and 5 % lies √45 %.
    expect(first(at(500 * Math.SQRT2, 0))?.limit.max).toBeCloseTo(Math.sqrt(45), 10);
    expect(at(2000, 0).notAssessed).toMatchObject([{ requirement: "signalling" }]);
  });
});

describe("the result document", () => {
  it("keeps to its schema and gives the same bytes twice", () => {
    const make = () =>
      judgeSeries([voltage(week((i) => (i % 20 === 0 ? 254 : i === 77 ? Number.NaN : 230), 1300))], both);
    const result = JSON.parse(JSON.stringify(make()));
    expect(assessmentSchema.parse(result)).toEqual(result);
    expect(JSON.stringify(make())).toBe(JSON.stringify(make()));
  });

  it("gives nearest-rank percentiles, which are values that occurred", () => {
    const row = first(judgeSeries([voltage(week((i) => 200 + i / 100))], only95));
    // ceil(0.95 · 1008) = 958: the 958th smallest, counted from either side.
    expect(row?.percentile).toEqual({ high: 200 + 957 / 100, low: 200 + 50 / 100 });
    expect(isoUtc(START + WEEK)).toBe("2026-03-09T00:00:00Z");
  });
});
