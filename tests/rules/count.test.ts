import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowedOutside } from "../../src/decimal.js";
import { DAY, MINUTE, WEEK } from "../../src/recording/time.js";
import { countWindow, decide, runningCounts } from "../../src/rules/count.js";
import { intervals, START } from "../support/series.js";
import { VOLTAGE_95 } from "./support.js";

describe("how many may lie outside", () => {
  // EN 50160 counts for full periods, computed outside this project as floor((1 − share) · n).
  it.each([
    [0.95, 1008, 50],
    [0.99, 1008, 10],
    [0.95, 84, 4],
    [0.995, 3_153_600, 15_768],
    [0.995, 60_480, 302],
    [0.95, 60_480, 3024],
    [0.99, 28_800, 288],
    [0.95, 1000, 50],
    [0.95, 900, 45],
    [0.95, 672, 33],
    [0.95, 504, 25],
    [0.95, 144, 7],
    [1, 1008, 0],
  ])("share %d of %d intervals: %d", (share, n, allowed) => {
    expect(allowedOutside(share, n)).toBe(allowed);
  });

  it("agrees with exact rational arithmetic: k may lie outside exactly when k / n ≤ 1 − share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 1, max: 100_000 }), (permille, n) => {
        const k = BigInt(allowedOutside(permille / 1000, n));
        const within = (outside: bigint) => outside * 1000n <= BigInt(1000 - permille) * BigInt(n);
        expect([within(k), within(k + 1n)]).toEqual([true, false]);
      }),
    );
  });
});

describe("the verdict of a count", () => {
  it.each([
    { n: 1008, outside: 50, verdict: "conforms", robust: true },
    { n: 1008, outside: 51, verdict: "does-not-conform", robust: true },
    { n: 1000, outside: 42, verdict: "conforms", robust: true },
    { n: 1000, outside: 43, verdict: "conforms", robust: false },
    { n: 1000, outside: 50, verdict: "conforms", robust: false },
    { n: 990, outside: 50, verdict: "does-not-conform", robust: false },
    { n: 958, outside: 1, verdict: "conforms", robust: false },
    { n: 957, outside: 1, verdict: "undecided", robust: false },
    { n: 504, outside: 30, verdict: "undecided", robust: false },
    { n: 504, outside: 51, verdict: "does-not-conform", robust: true },
    { n: 0, outside: 0, verdict: "undecided", robust: false },
    { n: 2015, outside: 53, verdict: "does-not-conform", robust: true },
  ])("$outside of $n outside, 1008 expected, 95 %: $verdict, robust $robust", ({ n, outside, verdict, robust }) => {
    expect(decide(0.95, 1008, n, outside)).toMatchObject({ verdict, robust });
  });

  it("decides nothing where no interval may count, as when all are flagged and left out", () => {
    expect(decide(0.95, 0, 0, 0)).toEqual({ verdict: "undecided", robust: false });
  });

  it("is robust exactly when every filling of the missing intervals gives the same verdict", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 1, max: 60 }),
        fc.nat(60),
        fc.nat(60),
        (percent, expected, a, b) => {
          const n = Math.min(expected, a);
          const outside = Math.min(n, b);
          const share = percent / 100;
          const fails = (k: number) => k * 100 > (100 - percent) * expected;
          const fillings = Array.from({ length: expected - n + 1 }, (_, more) => fails(outside + more));
          const decision = decide(share, expected, n, outside);
          expect(decision.robust).toBe(new Set(fillings).size === 1);
          if (decision.robust) expect(decision.verdict).toBe(fillings[0] ? "does-not-conform" : "conforms");
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("never becomes better when one more interval lies outside", () => {
    const rank = { conforms: 0, undecided: 1, "does-not-conform": 2 } as Record<string, number>;
    fc.assert(
      fc.property(
        fc.constantFrom(0.95, 0.99, 0.995, 1),
        fc.integer({ min: 1, max: 1008 }),
        fc.nat(1008),
        fc.nat(1007),
        (share, expected, a, b) => {
          const n = Math.min(expected, a);
          const outside = Math.min(n - 1, b);
          if (outside < 0) return;
          const before = decide(share, expected, n, outside).verdict;
          const after = decide(share, expected, n, outside + 1).verdict;
          expect(rank[after]).toBeGreaterThanOrEqual(rank[before] as number);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("counting a window", () => {
  const limit = { min: 207, max: 253 };
  const count = (values: readonly number[], start: number, end: number, flagged?: readonly number[]) => {
    const series = intervals("voltage", "L1", values, flagged ? { flagged } : {});
    return countWindow(runningCounts({ series, limit, requirement: VOLTAGE_95 }), series, start, end);
  };

  it("includes the limits and counts both sides together", () => {
    const found = count([253, 253.01, 207, 206.99, 230, Number.NaN], START, START + DAY);
    expect(found.all).toEqual({ n: 5, outside: 2 });
  });

  it("expects 1008 ten-minute intervals in a week, also off the clock's ticks", () => {
    expect(count([230], START, START + WEEK).expected).toBe(1008);
    const series = intervals("voltage", "L1", [230, 230], { start: START + 3 * MINUTE });
    const found = countWindow(
      runningCounts({ series, limit, requirement: VOLTAGE_95 }),
      series,
      START + 3 * MINUTE,
      START + 3 * MINUTE + WEEK,
    );
    expect(found).toMatchObject({ expected: 1008, all: { n: 2 } });
  });

  it("counts only intervals that lie wholly inside", () => {
    const found = count([260, 260, 260, 260], START + 5 * MINUTE, START + 35 * MINUTE);
    expect(found).toMatchObject({ expected: 2, all: { n: 2, outside: 2 } });
  });

  it("counts with and without flagged intervals", () => {
    const found = count([260, 260, 230, 230], START, START + DAY, [1, 0, 1, 0]);
    expect([found.all, found.unflagged]).toEqual([
      { n: 4, outside: 2 },
      { n: 2, outside: 1 },
    ]);
  });

  it("gives the same as counting one by one, for any window", () => {
    const values = fc.array(fc.constantFrom(200, 207, 230, 253, 254, Number.NaN), { minLength: 1, maxLength: 80 });
    fc.assert(
      fc.property(values, fc.integer({ min: -5, max: 85 }), fc.nat(90), (v, from, length) => {
        const start = START + from * 10 * MINUTE;
        const end = start + length * 10 * MINUTE;
        const inside = v.filter((_, i) => START + i * 10 * MINUTE >= start && START + (i + 1) * 10 * MINUTE <= end);
        const valid = inside.filter((x) => !Number.isNaN(x));
        expect(count(v, start, end).all).toEqual({
          n: valid.length,
          outside: valid.filter((x) => x < 207 || x > 253).length,
        });
      }),
    );
  });
});
