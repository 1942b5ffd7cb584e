import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { IntervalSeries } from "../../src/recording/measurements.js";
import type { Quantity } from "../../src/recording/quantity.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import type { Instrument } from "../../src/recording/setup-evidence.js";
import { assessmentSchema, type Row } from "../../src/rules/assessment.js";
import { runningCounts } from "../../src/rules/count.js";
import type { Requirement } from "../../src/rules/rule-set.js";
import { CLASS_ACCURACY, expandedAt, uncertaintyOf } from "../../src/rules/uncertainty.js";
import { random } from "../support/random.js";
import { intervals } from "../support/series.js";
import { judgeSeries, ruleSet, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

/** Expanded uncertainty of a value of a quantity, 230 V declared. */
function expanded(instrument: Instrument, quantity: Quantity, value: number, resolution?: number): number | undefined {
  const series: IntervalSeries = { ...intervals(quantity, "L1", [1]), ...(resolution !== undefined && { resolution }) };
  const parts = uncertaintyOf({ series }, { instrument });
  return parts.length === 0 ? undefined : expandedAt(parts, 230, value);
}

const VT = { what: "voltage transformer", measures: "voltage", class: 0.5 } as const;

describe("the uncertainty of a value", () => {
  it("is what IEC 61000-4-30 allows the class: ±0.1 % (A) or ±0.5 % (S) of the declared voltage", () => {
    expect(expanded({ class: "A" }, "voltage", 253)).toBeCloseTo(0.23, 12);
    expect(expanded({ class: "S" }, "voltage", 253)).toBeCloseTo(1.15, 12);
    expect(expanded({ class: "A" }, "frequency", 50)).toBe(0.01);
    expect(expanded({ class: "S" }, "negative-sequence-unbalance", 2)).toBe(0.3);
  });

  it("is 5 % of a harmonic, and never less than 0.05 (A) or 0.15 (S) % of the nominal voltage (IEC 61000-4-7)", () => {
    expect(expanded({ class: "A" }, "harmonic-voltage", 6)).toBeCloseTo(0.3, 12);
    expect(expanded({ class: "A" }, "harmonic-voltage", 0.5)).toBe(0.05);
    expect(expanded({ class: "S" }, "harmonic-voltage", 0.5)).toBe(0.15);
    // The two meet at 1 % and at 3 %.
    expect(expanded({ class: "A" }, "harmonic-voltage", 1)).toBeCloseTo(0.05, 12);
    expect(expanded({ class: "S" }, "harmonic-voltage", 3)).toBeCloseTo(0.15, 12);
  });

  it("grows by a transformer of class 0.5 to 0.51 % (A) and 0.71 % (S) at the declared voltage", () => {
    // √(0.1² + 0.5²) and √(0.5² + 0.5²), closed form.
    expect(((expanded({ class: "A", sensors: [VT] }, "voltage", 230) ?? 0) / 230) * 100).toBeCloseTo(
      Math.sqrt(0.26),
      12,
    );
    expect(((expanded({ class: "S", sensors: [VT] }, "voltage", 230) ?? 0) / 230) * 100).toBeCloseTo(
      Math.sqrt(0.5),
      12,
    );
    const three = [VT, { ...VT, class: 0.2 }, { ...VT, measures: "current" as const, class: 3 }];
    expect(expanded({ class: "S", sensors: three }, "voltage", 230)).toBe(
      expanded({ class: "S", sensors: [VT] }, "voltage", 230),
    );
  });

  it("holds the last digit: steps of q add q/√3, twice the standard uncertainty of JCGM 100:2008, 4.3.7", () => {
    expect(expanded({ class: "A" }, "voltage", 230, 0.1)).toBeCloseTo(Math.sqrt(0.23 ** 2 + 0.1 ** 2 / 3), 12);
    expect(expanded({ class: "A" }, "voltage", 230, 1)).toBeCloseTo(Math.sqrt(0.23 ** 2 + 1 / 3), 12);
  });

  it("is the stated one where there is one, brought to k = 2", () => {
    const uncertainty = [
      { quantity: "voltage", expanded: 0.3, of: "absolute", k: 3 },
      { quantity: "plt", expanded: 8, of: "reading" },
    ] as const;
    expect(expanded({ class: "A", uncertainty: [...uncertainty] }, "voltage", 230)).toBeCloseTo(0.2, 12);
    expect(expanded({ class: "S", uncertainty: [...uncertainty] }, "plt", 1)).toBeCloseTo(0.08, 12);
  });

  it("is not known without a class, of another class, or where the class gives none", () => {
    expect(expanded({}, "voltage", 230, 0.1)).toBeUndefined();
    expect(expanded({ class: "other", sensors: [VT] }, "voltage", 230)).toBeUndefined();
    expect(expanded({ class: "S" }, "plt", 1)).toBeUndefined();
  });

  it("calls confirmed only the 0.1 % of class A, the one figure read in a public document", () => {
    const confirmed = Object.entries(CLASS_ACCURACY).flatMap(([name, all]) =>
      Object.entries(all).flatMap(([quantity, accuracy]) => (accuracy.confirmed ? [`${name} ${quantity}`] : [])),
    );
    expect(confirmed).toEqual(["A voltage"]);
  });
});

const THD: Requirement = {
  ...VOLTAGE_95,
  id: "thd",
  quantity: "thd-voltage",
  criterion: { kind: "share-within", share: 0.95, max: 8, of: "own-unit" },
};
const U02: Instrument = { uncertainty: [{ quantity: "thd-voltage", expanded: 0.2, of: "absolute" }] };

function thdRow(values: readonly number[], given: GivenSetup): Row {
  const a = judgeSeries([intervals("thd-voltage", "L1", values)], ruleSet(THD), { given });
  const json = JSON.parse(JSON.stringify(a));
  expect(assessmentSchema.parse(json)).toEqual(json);
  return a.weeks[0]?.requirements[0] as Row;
}

/** `k` of 1008 values at `value`, the others at 2 %. */
const some = (k: number, value: number) => week((i) => (i < k ? value : 2));

describe("the four zones of ILAC-G8:09/2019, limit 8.0 % and U = 0.2 %", () => {
  it.each([
    [7.7, "conforms-clearly", "conforms", "conforms", true],
    [7.8, "conforms-clearly", "conforms", "conforms", true],
    [7.9, "conforms-within", "conforms", "undecided", false],
    [8.0, "conforms-within", "conforms", "undecided", false],
    [8.1, "fails-within", "does-not-conform", "undecided", false],
    [8.2, "fails-within", "does-not-conform", "undecided", false],
    [8.3, "fails-clearly", "does-not-conform", "does-not-conform", true],
  ])("51 of 1008 values at %f %%: %s", (value, zone, simple, guarded, clear) => {
    const found = thdRow(some(51, value), { instrument: U02 });
    expect(found).toMatchObject({ verdict: simple, zone, clear, uncertainty: 0.2 });
    expect(found.near).toBe(Math.abs(value - 8) < 0.2001 ? 51 : 0);
    const strict = thdRow(some(51, value), { instrument: U02, decisionRule: "guarded" });
    expect(strict).toMatchObject({ verdict: guarded, zone, clear, outside: found.outside });
    expect(strict.reason?.id).toBe(guarded === "undecided" ? "within-uncertainty" : undefined);
  });

  it("stay clear where 50 values lie within the uncertainty, which may all be outside", () => {
    expect(thdRow(some(50, 7.9), { instrument: U02 })).toMatchObject({ zone: "conforms-clearly", near: 50 });
    const found = thdRow(some(101, 8.1), { instrument: U02 });
    expect(found.counts).toMatchObject({ narrowed: { n: 1008, outside: 101 }, widened: { n: 1008, outside: 0 } });
  });

  it("tell a voltage of 253.1 V by class A from one of 253.3 V", () => {
    const zone = (value: number) =>
      judgeSeries([intervals("voltage", "L1", week({ 9: value }))], ruleSet(VOLTAGE_100), {
        given: { instrument: { class: "A" } },
      }).weeks[0]?.requirements[0];
    expect(zone(253.1)).toMatchObject({ verdict: "does-not-conform", zone: "fails-within", near: 1 });
    expect(zone(253.3)).toMatchObject({ verdict: "does-not-conform", zone: "fails-clearly", near: 0 });
    expect(zone(252.9)).toMatchObject({ verdict: "conforms", zone: "conforms-within" });
    expect(zone(252.77)).toMatchObject({ verdict: "conforms", zone: "conforms-clearly", near: 1 });
  });

  it("are not said of what is not decided, nor without an uncertainty", () => {
    const half = thdRow(some(30, 9).slice(0, 504), { instrument: U02 });
    expect(half).toMatchObject({ verdict: "undecided", reason: { id: "too-little-data" }, near: 0, uncertainty: 0.2 });
    expect(half).not.toHaveProperty("zone");
    const bare = thdRow(some(51, 7.9), {});
    for (const key of ["zone", "clear", "near", "uncertainty"]) expect(bare).not.toHaveProperty(key);
  });

  it("bound missing intervals in the moved counts too", () => {
    // 48 of 1000 outside, 8 missing: decided by coverage; inwards 52 are outside, more than the week allows.
    const values = week((i) => (i < 48 ? 9 : i < 52 ? 7.9 : i >= 1000 ? Number.NaN : 2));
    expect(thdRow(values, { instrument: U02 })).toMatchObject({
      verdict: "conforms",
      robust: false,
      zone: "conforms-within",
    });
  });
});

describe("guarded acceptance", () => {
  it("leaves a quantity of unknown uncertainty undecided", () => {
    const found = thdRow(some(0, 2), { decisionRule: "guarded", instrument: { class: "other" } });
    expect(found).toMatchObject({ verdict: "undecided", reason: { id: "uncertainty-unknown" } });
  });

  it("chooses the worst seven days by its own verdict", () => {
    // Nowhere more than 50 outside, but around the turn of the week 51 at 7.9 %.
    const values = week((i) => (i >= 990 && i < 1041 ? 7.9 : 2), 2016);
    const judged = (given: GivenSetup) =>
      judgeSeries([intervals("thd-voltage", "L1", values)], ruleSet(THD), { given });
    expect(judged({ instrument: U02 }).weeks.map(({ kind }) => kind)).toEqual(["consecutive", "consecutive"]);
    const a = judged({ instrument: U02, decisionRule: "guarded" });
    expect(a.weeks.map(({ kind, verdict }) => [kind, verdict])).toEqual([
      ["consecutive", "conforms"],
      ["consecutive", "conforms"],
      ["worst-sliding", "undecided"],
    ]);
    expect(a.decision).toEqual({ rule: "guarded", origin: "given" });
    expect(judged({}).decision).toEqual({ rule: "simple", origin: "assumed" });
  });

  it("accepts what lies on the limit in less than 2.5 % of measurements, simple acceptance in half (ILAC-G8, 4.2)", () => {
    const n = 40_000;
    const noise = random(5, "on the limit");
    const series = intervals(
      "thd-voltage",
      "L1",
      Array.from({ length: n }, () => 8 + 0.1 * noise.normal()),
    );
    const counts = runningCounts({ series, limit: { max: 8 }, requirement: THD }, [], () => 0.2);
    const accepted = (outside?: Uint32Array) => 1 - (outside?.[n] ?? 0) / n;
    expect(accepted(counts.outside)).toBeCloseTo(0.5, 1);
    // 1 − Φ(2) = 2.275 %.
    expect(accepted(counts.guard?.narrowed)).toBeCloseTo(0.02275, 2);
    expect(accepted(counts.guard?.narrowed)).toBeLessThan(0.025);
  });
});

describe("worked examples of JCGM 106:2012, 7.3 (numbers from memory)", () => {
  const n = 40_000;
  const outsideShare = (mean: number, u: number, limit: { min?: number; max?: number }) => {
    const noise = random(106, `mean ${mean}`);
    const values = Array.from({ length: n }, () => mean + u * noise.normal());
    const counts = runningCounts({ series: intervals("thd-voltage", "L1", values), limit, requirement: THD });
    return (counts.outside[n] as number) / n;
  };

  it("a burst strength of 509.7 kPa, u = 8.6 kPa, conforms to at least 490 kPa with Φ(2.29) = 0.989", () => {
    expect(1 - outsideShare(509.7, 8.6, { min: 490 })).toBeCloseTo(0.989, 2);
  });

  it("a breakdown voltage of −5.47 V, u = 0.05 V, conforms to at most −5.40 V with Φ(1.40) = 0.919", () => {
    expect(1 - outsideShare(-5.47, 0.05, { max: -5.4 })).toBeCloseTo(0.919, 2);
  });
});

describe("whatever the values", () => {
  const values = fc.array(fc.integer({ min: 700, max: 900 }), { minLength: 60, maxLength: 60 });
  /** A week in which the first `k` values are repeated from a list, the others far inside. */
  const spread = (list: readonly number[], k: number) =>
    week((i) => (i < k ? (list[i % list.length] as number) / 100 : 2));

  it("a verdict is clear if and only if moving all values by U towards or across the limit leaves it", () => {
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 200 }), (list, k) => {
        const base = spread(list, k);
        const found = thdRow(base, { instrument: U02 });
        const towards = found.verdict === "conforms" ? 0.2 : -0.2;
        // Whole hundredths, so that the shift is exact.
        const shifted = thdRow(
          base.map((v) => (Math.round(v * 100) + Math.round(towards * 100)) / 100),
          {},
        );
        expect(found.clear).toBe(shifted.verdict === found.verdict);
        expect(found.near).toBe(base.filter((v) => Math.abs(Math.round(v * 100) - 800) <= 20).length);
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  it("guarded acceptance decides nothing against simple acceptance, and only what is clear", () => {
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 120 }), (list, k) => {
        const simple = thdRow(spread(list, k), { instrument: U02 });
        const guarded = thdRow(spread(list, k), { instrument: U02, decisionRule: "guarded" });
        expect(guarded.verdict).toBe(simple.clear === true ? simple.verdict : "undecided");
      }),
      { seed: 6, numRuns: 100 },
    );
  });
});
