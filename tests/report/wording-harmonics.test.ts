import { describe, expect, it } from "vitest";
import { harmonicsTitle } from "../../src/report/wording-harmonics.js";
import type { Row } from "../../src/rules/assessment.js";

const row = (order: number, high: number, verdict: Row["verdict"]) =>
  ({ order, phase: "L3", percentile: { high }, limit: { max: 0.5 }, unit: "%", verdict }) as unknown as Row;

describe("the title over the harmonics", () => {
  it("names the orders that fail", () => {
    expect(String(harmonicsTitle([row(15, 0.65, "does-not-conform"), row(21, 0.1, "conforms")]))).toBe(
      "Harmonic order 15 above the limit on L3",
    );
  });

  it("names the nearest where all conform", () => {
    expect(String(harmonicsTitle([row(15, 0.45, "conforms"), row(21, 0.1, "conforms")]))).toBe(
      "No harmonic order was judged above its limit; the nearest, order 15 on L3, reached 90 % of its limit",
    );
  });

  it("does not call an undecided order near where it lies above its limit", () => {
    expect(String(harmonicsTitle([row(15, 0.65, "undecided"), row(21, 0.1, "conforms")]))).toBe(
      "Order 15 on L3 reached 130 % of its limit, but no harmonic order could be judged to fail; the table says why",
    );
  });
});
