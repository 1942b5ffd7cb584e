import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { atMost, exactInterval, quantileRanks } from "../../src/rules/binomial.js";
import { intervals } from "../support/series.js";
import { judgeSeries, ruleSet, VOLTAGE_95, VOLTAGE_100, week } from "./support.js";

interface Fixture {
  readonly shares: readonly { outside: number; n: number; from: number; to: number }[];
  readonly quantiles: readonly { n: number; p: number; ranks: [number, number]; coverage: number }[];
}
const scipy: Fixture = JSON.parse(readFileSync(new URL("../fixtures/sampling.json", import.meta.url), "utf8"));

describe("the exact interval of a share", () => {
  it.each(scipy.shares)("agrees with SciPy for $outside of $n", ({ outside, n, from, to }) => {
    const found = exactInterval(outside, n, 0.95);
    expect(found.from).toBeCloseTo(from, 9);
    expect(found.to).toBeCloseTo(to, 9);
  });

  // R. G. Newcombe, Statistics in Medicine 17 (1998), 857–872, table I, method "Clopper–Pearson exact" (numbers from memory, agree with SciPy).
  it.each([
    [81, 263, 0.2527, 0.3676],
    [15, 148, 0.0578, 0.1617],
    [0, 20, 0, 0.1684],
    [1, 29, 0.0009, 0.1776],
  ])("is that of a published comparison for %i of %i", (k, n, from, to) => {
    const found = exactInterval(k, n, 0.95);
    expect(found.from).toBeCloseTo(from, 4);
    expect(found.to).toBeCloseTo(to, 4);
  });

  it("has the closed form for none outside: 1 − (α/2)^(1/n)", () => {
    expect(exactInterval(0, 1008, 0.95).to).toBeCloseTo(1 - 0.025 ** (1 / 1008), 12);
  });
});

describe("the ranks around a quantile", () => {
  it.each(scipy.quantiles)("agree with SciPy for p = $p of $n values", ({ n, p, ranks, coverage }) => {
    const found = quantileRanks(n, p, 0.95);
    expect(found.ranks).toEqual(ranks);
    expect(found.coverage).toBeCloseTo(coverage, 8);
  });

  it("are those of the table of the median: 2nd to 9th of 10 with 1002/1024, 1st to 6th of 6 with 62/64", () => {
    expect(quantileRanks(10, 0.5, 0.95)).toEqual({ ranks: [2, 9], coverage: expect.closeTo(1002 / 1024, 12) });
    expect(quantileRanks(6, 0.5, 0.95)).toEqual({ ranks: [1, 6], coverage: expect.closeTo(62 / 64, 12) });
  });

  it("leave out at most 2.5 % at each end, and cannot be drawn closer", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.constantFrom(0.5, 0.95, 0.99), (n, p) => {
        const [low, high] = quantileRanks(n, p, 0.95).ranks;
        expect(atMost(low - 1, n, p)).toBeLessThanOrEqual(0.025);
        expect(atMost(low, n, p)).toBeGreaterThan(0.025);
        if (high <= n) expect(atMost(high - 1, n, p)).toBeGreaterThanOrEqual(0.975);
        expect(atMost(high - 2, n, p)).toBeLessThan(0.975);
      }),
      { seed: 3, numRuns: 100 },
    );
  });
});

describe("a row's sampling statement", () => {
  const row = (values: number[], rule = VOLTAGE_95) =>
    judgeSeries([intervals("voltage", "L1", values)], ruleSet(rule)).weeks[0]?.requirements[0]?.sampling;

  it("gives the 944th and 972nd of 1008 values for the upper limit, the 37th and 65th for the lower one", () => {
    // Values 220.0 … 235.105: the value of rank r is 220 + 0.015·(r − 1).
    const found = row(week((i) => 220 + 0.015 * ((i * 5) % 1008)));
    expect(found?.high).toMatchObject({ ranks: [944, 972], coverage: expect.closeTo(0.9575, 4) });
    expect(found?.high?.from).toBeCloseTo(220 + 0.015 * 943, 9);
    expect(found?.high?.to).toBeCloseTo(220 + 0.015 * 971, 9);
    expect(found?.low?.ranks).toEqual([37, 65]);
    expect(found?.low?.from).toBeCloseTo(220 + 0.015 * 36, 9);
  });

  it("leaves an end open where no value is high enough, and gives no quantile where all must lie within", () => {
    const short = row(week({}, 12));
    expect(short?.high).toMatchObject({ ranks: [10, 13], from: 230 });
    expect(short?.high).not.toHaveProperty("to");
    expect(row(week({}), VOLTAGE_100)).toEqual({
      confidence: 0.95,
      shareOutside: { from: 0, to: expect.closeTo(0.003653, 6) },
    });
  });

  it("states 3.70 to 6.49 % for 50 outside of 1008", () => {
    const share = row(week((i) => (i < 50 ? 254 : 230)))?.shareOutside;
    expect(share?.from).toBeCloseTo(0.037, 4);
    expect(share?.to).toBeCloseTo(0.0649, 4);
  });
});
