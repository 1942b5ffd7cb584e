import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowedOutside } from "../../src/decimal.js";
import {
  allowedPercent,
  exact,
  fixed,
  formatAgainstLimit,
  formatAgainstLimits,
  foundPercent,
  percentOfShare,
} from "../../src/report/numbers.js";

const read = (text: string) => Number(text.replace("−", "-"));
/** Decimal numbers as logs write them, and doubles of any kind. */
const decimal = fc.tuple(fc.integer({ min: -4_000_000, max: 4_000_000 }), fc.integer({ min: 0, max: 6 }));
const number = fc.oneof(
  decimal.map(([digits, places]) => Number(`${digits}e-${places}`)),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
);

describe("formatAgainstLimit", () => {
  it.each([
    [253.04, 253, 1, "253.04"],
    [253.01, 253, 1, "253.01"],
    [252.96, 253, 1, "252.96"],
    [253, 253, 1, "253.0"],
    [256.13, 253, 1, "256.1"],
    [8.000001, 8, 2, "8.000001"],
    [-1.5, 0, 0, "−2"],
    [1e-9, 0, 2, "0.000000001"],
  ])("prints %d against %d as %3$s", (value, limit, decimals, printed) => {
    expect(formatAgainstLimit(value, limit, decimals)).toBe(printed);
  });

  it("never prints a number that lies on another side of the limit than the value", () => {
    fc.assert(
      fc.property(number, number, fc.integer({ min: 0, max: 4 }), (value, limit, decimals) => {
        const printed = read(formatAgainstLimit(value, limit, decimals));
        expect(Math.sign(printed - limit)).toBe(Math.sign(value - limit));
      }),
      { numRuns: 2000 },
    );
  });

  it("keeps to both sides of a band", () => {
    expect(formatAgainstLimits(206.97, { min: 207, max: 253 }, 1)).toBe("206.97");
    expect(formatAgainstLimits(253.02, { min: 207, max: 253 }, 1)).toBe("253.02");
    expect(formatAgainstLimits(230.04, { min: 207, max: 253 }, 1)).toBe("230.0");
  });
});

describe("shares", () => {
  it("are exact where 1 − share is not in binary", () => {
    expect(1 - 0.95).not.toBe(0.05);
    expect(allowedPercent(0.95)).toBe(5);
    expect(allowedPercent(0.995)).toBe(0.5);
    expect(percentOfShare(0.995)).toBe(99.5);
  });

  it.each([
    [50, "4.96"],
    [51, "5.1"],
    [73, "7.2"],
    [0, "0.0"],
  ])("%d of 1008 against 5 %% is %s", (outside, printed) => {
    expect(foundPercent({ outside, n: 1008, share: 0.95 })).toBe(printed);
  });

  it("printed never contradict the count that decides", () => {
    const share = fc.constantFrom(0.95, 0.99, 0.995, 1, 0.9);
    fc.assert(
      fc.property(
        share,
        fc.integer({ min: 1, max: 70_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (s, n, part) => {
          const outside = Math.round(n * part * 0.2);
          const isTooMany = outside > allowedOutside(s, n);
          expect(read(foundPercent({ outside, n, share: s })) > allowedPercent(s)).toBe(isTooMany);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("exact and fixed", () => {
  it("print every digit of a limit and at least those asked for", () => {
    expect(exact(253, 1)).toBe("253.0");
    expect(exact(0.75, 0)).toBe("0.75");
    expect(exact(-0.5, 0)).toBe("−0.5");
    fc.assert(fc.property(decimal, ([d, p]) => read(exact(Number(`${d}e-${p}`), 0)) === Number(`${d}e-${p}`)));
  });

  it("print no negative zero", () => {
    expect(fixed(-0.04, 1)).toBe("0.0");
  });
});
