import { expect, test } from "vitest";
import { abs, add, divide, multiply, polar, sequenceUnbalance, subtract } from "./phasors.js";

test("complex division undoes multiplication", () => {
  const a = { re: 3, im: -2 };
  const b = { re: 0.5, im: 4 };
  expect(abs(subtract(divide(multiply(a, b), b), a))).toBeLessThan(1e-15);
});

test("a balanced star has √3 between its phases and no unbalance; a made one has the u2 it was made with", () => {
  const balanced = [polar(230, 0), polar(230, -120), polar(230, 120)] as const;
  expect(abs(subtract(balanced[0], balanced[1]))).toBeCloseTo(230 * Math.sqrt(3), 10);
  expect(sequenceUnbalance(balanced)).toBeLessThan(1e-12);
  const negative = [polar(4.6, 40), polar(4.6, 160), polar(4.6, -80)] as const;
  const sum = balanced.map((u, p) => add(u, negative[p] as (typeof negative)[0]));
  expect(sequenceUnbalance(sum)).toBeCloseTo(2, 10);
});
