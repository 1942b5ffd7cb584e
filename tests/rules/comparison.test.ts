import { describe, expect, it } from "vitest";
import type { IntervalSeries } from "../../src/recording/measurements.js";
import { withComparison } from "../../src/rules/comparison.js";
import { pairRequirements } from "../../src/rules/pair-requirements.js";
import type { Requirement, RuleSet } from "../../src/rules/rule-set.js";
import { intervals } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

type Band = Extract<Requirement["criterion"], { kind: "share-within" }>;

/** A voltage requirement with another id, and criterion entries changed. */
function band(id: string, changes: Partial<Band> = {}, rest: Partial<Requirement> = {}): Requirement {
  return { ...VOLTAGE_95, ...rest, id, criterion: { ...(VOLTAGE_95.criterion as Band), ...changes } };
}

const named = (id: string, ...requirements: Requirement[]): RuleSet => ({ ...ruleSet(...requirements), id });

function compare(series: readonly IntervalSeries[], first: RuleSet, other: RuleSet, declared = 230) {
  const judged = (rules: RuleSet, volts: number) => ({
    ruleSet: rules,
    declaredVoltage: volts,
    assessment: judgeSeries(series, rules, { setup: setup(volts) }),
  });
  const result = withComparison(judged(first, 230), [judged(other, declared)]);
  const [comparison] = result.comparison;
  if (comparison === undefined) throw new Error("nothing compared");
  return {
    result,
    comparison,
    why: (row = 0) => comparison.rows[row]?.why.map(({ id, sentence }) => [id, String(sentence)]),
  };
}

const ids = (first: readonly Requirement[], other: readonly Requirement[]) =>
  pairRequirements(first, other).map((pair) => [pair.first?.id, pair.other?.id]);

describe("requirements of two sets", () => {
  it("pair by id before anything else", () => {
    // As an overlay does that turns the 95 % band into one for all values and drops the other.
    expect(ids([VOLTAGE_95, VOLTAGE_100], [band("voltage-95", { share: 1 })])).toEqual([
      ["voltage-95", "voltage-95"],
      ["voltage-100", undefined],
    ]);
  });

  it("pair for-all with for-all and for-most with for-most where the ids say nothing", () => {
    const [most, all] = [band("contract-most", { share: 0.99 }), band("contract-all", { share: 1 })];
    expect(ids([VOLTAGE_95, VOLTAGE_100], [all, most])).toEqual([
      ["voltage-95", "contract-most"],
      ["voltage-100", "contract-all"],
    ]);
    expect(ids([VOLTAGE_95, VOLTAGE_100], [all])).toEqual([
      ["voltage-95", undefined],
      ["voltage-100", "contract-all"],
    ]);
  });

  it("pair over the same period first, then over another, and at last what is left of a quantity", () => {
    const daily = band("daily", {}, { period: "day" });
    const weekly = band("weekly");
    expect(ids([VOLTAGE_95], [daily, weekly])).toEqual([
      ["voltage-95", "weekly"],
      [undefined, "daily"],
    ]);
    expect(ids([VOLTAGE_95], [daily])).toEqual([["voltage-95", "daily"]]);
    expect(ids([VOLTAGE_95], [band("all", { share: 1 })])).toEqual([["voltage-95", "all"]]);
  });

  it("never pair different quantities or kinds, and leave events out", () => {
    const thd = band("thd", { of: "own-unit" }, { quantity: "thd-voltage" });
    const events: Requirement = {
      ...VOLTAGE_95,
      id: "changes",
      criterion: { kind: "indication", event: "rapid-voltage-change", general: 5 },
    };
    expect(ids([VOLTAGE_95, events], [thd, events])).toEqual([
      ["voltage-95", undefined],
      [undefined, "thd"],
    ]);
  });
});

describe("verdicts by several limit sets", () => {
  const values = week((i) => (i < 45 ? 248 : 230));
  const series = [intervals("voltage", "L1", values)];
  const first = named("standard", VOLTAGE_95);

  it("leave the first set's result as it is and hold the other's beside it", () => {
    const { result, comparison, why } = compare(series, first, named("national", band("voltage-95", { max: 107 })));
    const { comparison: _, ...alone } = judgeSeries(series, first);
    expect(result).toMatchObject(alone);
    expect(comparison).toMatchObject({ ruleSet: { id: "national" }, verdict: "conforms", declaredVoltage: 230 });
    expect(comparison.rows).toHaveLength(1);
    expect(comparison.rows[0]).toMatchObject({
      quantity: "voltage",
      phase: "L1",
      first: { id: "voltage-95", verdict: "conforms", limit: { min: 207, max: 253 }, outside: 0, allowed: 50 },
      other: { id: "voltage-95", verdict: "conforms", limit: { min: 207, max: 246.1 }, outside: 45, allowed: 50 },
    });
    expect(why()).toEqual([]);
  });

  it("say why they differ: limit, share", () => {
    const limit = compare(series, first, named("national", band("voltage-95", { max: 107, share: 0.99 })));
    expect(limit.comparison.verdict).toBe("does-not-conform");
    expect(limit.why()).toEqual([
      ["limit", "Limit: 207 to 253 V in standard, 207 to 246.1 V in national."],
      ["share", "Share that must lie within: 95 % in standard, 99 % in national."],
    ]);
    expect(limit.comparison.rows[0]?.why[0]?.values).toEqual({
      firstMin: 207,
      firstMax: 253,
      otherMin: 207,
      otherMax: 246.1,
    });
  });

  it("say why they differ: declared voltage, period, binding", () => {
    const declared = compare(series, first, named("old", band("voltage-95", { share: 1 })), 220);
    expect(declared.why()?.map(([id]) => id)).toEqual(["declared-voltage", "limit", "share"]);
    expect(declared.why()?.[0]?.[1]).toBe("Declared voltage: 230 V for standard, 220 V for old.");
    const high = [
      intervals(
        "voltage",
        "L1",
        week((i) => (i < 45 ? 255 : 230)),
      ),
    ];
    expect(compare(high, first, named("daily", band("voltage-95", {}, { period: "day" }))).why()).toEqual([
      ["period", "Period that is counted: week in standard, day in daily."],
    ]);
    expect(compare(high, first, named("info", band("voltage-95", {}, { binding: false }))).why()).toEqual([
      ["binding", "For information only in info."],
    ]);
  });

  it("say why they differ: flagged intervals", () => {
    const flagged = week((i) => (i < 60 ? 1 : 0)).map((v) => (v === 1 ? 1 : 0));
    const high = [
      intervals(
        "voltage",
        "L1",
        week((i) => (i < 60 ? 255 : 230)),
        { flagged },
      ),
    ];
    const { comparison, why } = compare(high, first, named("strict", band("voltage-95", {}, { flagged: "exclude" })));
    expect(comparison.verdict).toBe("conforms");
    expect(why()).toEqual([["flagged", "Flagged intervals count in standard and are left out in strict."]]);
  });

  it("say why they differ: interval", () => {
    const minutes = Array.from({ length: 10 * 1008 }, (_, i) => (i % 10 === 0 && i < 6000 ? 255 : 230));
    const both = [...series, intervals("voltage", "L1", minutes, { interval: 60_000_000 })];
    const { why } = compare(both, first, named("short", band("voltage-95", {}, { interval: "1min" })));
    expect(why()).toEqual([["interval", "Values of 10 min in standard, of 1 min in short."]]);
  });

  it("say that only one of them has a requirement, or could judge it", () => {
    const two = named("two", VOLTAGE_95, VOLTAGE_100);
    expect(compare(series, two, first).why(1)).toEqual([["only-in-first", "Only two asks for it."]]);
    expect(compare(series, first, two).why(1)).toEqual([["only-in-other", "Only two asks for it."]]);
    const { comparison, why } = compare(series, first, named("short", band("voltage-95", {}, { interval: "1min" })));
    expect(why()).toEqual([["not-assessed", "Not assessed by short: The log holds no values of the supply voltage."]]);
    expect(comparison.rows[0]).not.toHaveProperty("other");
    expect(comparison.notAssessed).toHaveLength(1);
  });

  it("take the worst period of each requirement, and of a rest after whole weeks only what fails", () => {
    // The rest of 100 intervals is undecided by both; the second week holds 60 values above 253 V.
    const long = [...week({}), ...week((i) => (i < 60 ? 255 : 230)), ...week({}, 100)];
    const { comparison } = compare(
      [intervals("voltage", "L1", long)],
      first,
      named("other", band("voltage-95", { max: 115 })),
    );
    expect(comparison.rows[0]?.first).toMatchObject({ verdict: "does-not-conform", outside: 60 });
    expect(comparison.rows[0]?.first?.week).toBe("2026-03-09T00:00:00Z");
    expect(comparison.rows[0]?.other).toMatchObject({ verdict: "conforms", week: "2026-03-02T00:00:00Z" });
    const failing = [...week({}), ...week({ 5: 260 }, 100)];
    const two = named("two", VOLTAGE_95, VOLTAGE_100);
    const { rows } = compare([intervals("voltage", "L1", failing)], two, two).comparison;
    expect(rows.map((row) => row.first?.verdict)).toEqual(["conforms", "does-not-conform"]);
  });
});
