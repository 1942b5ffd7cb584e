import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fittingShifts, inBoth, nanovolts, outsideAfter, type ShiftRange } from "../../src/rules/shift-ranges.js";

const sorted = (...values: number[]) => nanovolts(Float64Array.from(values).sort());
const isIn = (ranges: readonly ShiftRange[], shift: number) =>
  ranges.some(({ from = -1e9, to = 1e9 }) => shift >= from && shift <= to);

describe("shifts that keep a counted requirement", () => {
  it("reach from where the lowest value meets the lower limit to where the highest meets the upper one", () => {
    // All of 208 … 252 V must lie within 207 … 253 V: from −1 V to +1 V, ends included.
    expect(fittingShifts(sorted(208, 230, 252), { min: 207, max: 253, allowed: 0 })).toEqual([{ from: -1, to: 1 }]);
    expect(fittingShifts(sorted(208, 252), { max: 253, allowed: 0 })).toEqual([{ to: 1 }]);
    expect(fittingShifts(sorted(208, 252), { min: 207, allowed: 0 })).toEqual([{ from: -1 }]);
  });

  it("let as many values go as may lie outside, on whichever side that gains most", () => {
    // One of four may go. Without 200 V the others spread over 50 V, more than the limits; without 260 V over 40 V.
    expect(fittingShifts(sorted(200, 210, 240, 260), { min: 207, max: 253, allowed: 1 })).toEqual([
      { from: 7, to: 13 },
    ]);
    // Without the highest, 7 … 13 V; without the lowest, −3 … 3 V; in between two lie outside.
    expect(fittingShifts(sorted(200, 210, 240, 250), { min: 207, max: 253, allowed: 1 })).toEqual([
      { from: -3, to: 3 },
      { from: 7, to: 13 },
    ]);
  });

  it("are none where the values spread wider than the limits, and all where every value may go", () => {
    expect(fittingShifts(sorted(200, 260), { min: 207, max: 253, allowed: 0 })).toEqual([]);
    expect(fittingShifts(sorted(200, 260), { min: 207, max: 253, allowed: 2 })).toEqual([{}]);
    expect(fittingShifts(sorted(), { min: 207, max: 253, allowed: 0 })).toEqual([{}]);
  });

  it("are decimals, also where binary numbers leave a remainder", () => {
    expect(253 - 240.2).not.toBe(12.8);
    expect(fittingShifts(sorted(240.2), { max: 253, allowed: 0 })).toEqual([{ to: 12.8 }]);
    expect(outsideAfter(sorted(240.2), { min: 207, max: 253 }, 12.8)).toBe(0);
    expect(outsideAfter(sorted(240.2), { min: 207, max: 253 }, 12.801)).toBe(1);
  });

  it("agree with counting at every tenth of a volt, and between", () => {
    const tenths = fc.array(fc.integer({ min: 1900, max: 2800 }), { minLength: 1, maxLength: 40 });
    const bounds = fc.tuple(fc.integer({ min: 2000, max: 2200 }), fc.integer({ min: 1, max: 600 }));
    fc.assert(
      fc.property(
        tenths,
        bounds,
        fc.integer({ min: 0, max: 8 }),
        fc.integer({ min: 0, max: 2 }),
        (values, [low, width], allowed, sides) => {
          const limit = {
            ...(sides !== 1 && { min: low / 10 }),
            ...(sides !== 2 && { max: (low + width) / 10 }),
          };
          const all = nanovolts(Float64Array.from(values, (v) => v / 10).sort());
          const ranges = fittingShifts(all, { ...limit, allowed });
          // Half tenths decide what lies between two tenths; integers of half tenths keep the count exact.
          const wrong: number[] = [];
          for (let half = -1200; half <= 1200; half++) {
            const moved = values.map((v) => 2 * v + half);
            const outside = moved.filter(
              (v) => (sides !== 1 && v < 2 * low) || (sides !== 2 && v > 2 * (low + width)),
            ).length;
            const shift = half / 20;
            const isRight = outsideAfter(all, limit, shift) === outside && isIn(ranges, shift) === outside <= allowed;
            if (!isRight) wrong.push(shift);
          }
          expect(wrong).toEqual([]);
        },
      ),
      { seed: 8, numRuns: 60 },
    );
  });

  it("come as ranges that rise and do not touch", () => {
    const values = fc.array(fc.integer({ min: 1900, max: 2800 }), { minLength: 3, maxLength: 60 });
    fc.assert(
      fc.property(values, fc.integer({ min: 1, max: 20 }), (tenths, allowed) => {
        const all = nanovolts(Float64Array.from(tenths, (v) => v / 10).sort());
        const ranges = fittingShifts(all, { min: 207, max: 253, allowed });
        for (const [i, { from = -1e9, to = 1e9 }] of ranges.entries()) {
          expect(from).toBeLessThanOrEqual(to);
          expect(from).toBeGreaterThan(ranges[i - 1]?.to ?? Number.NEGATIVE_INFINITY);
        }
      }),
      { seed: 9 },
    );
  });

  it("of two lists are those in both", () => {
    const a = [{ to: -3 }, { from: -1, to: 2 }, { from: 5 }];
    const b = [
      { from: -4, to: 0 },
      { from: 2, to: 7 },
    ];
    expect(inBoth(a, b)).toEqual([
      { from: -4, to: -3 },
      { from: -1, to: 0 },
      { from: 2, to: 2 },
      { from: 5, to: 7 },
    ]);
    expect(inBoth([{}], b)).toEqual(b);
    expect(inBoth([], b)).toEqual([]);
  });
});
