import { expect, test } from "vitest";
import { random, wandering } from "./random.js";

test("the same seed and name give the same numbers, another name gives others", () => {
  const draw = (seed: number, name: string) => {
    const source = random(seed, name);
    return Array.from({ length: 5 }, () => source.uniform());
  };
  expect(draw(1, "a")).toEqual(draw(1, "a"));
  expect(draw(1, "a")).not.toEqual(draw(1, "b"));
  expect(draw(1, "a")).not.toEqual(draw(2, "a"));
});

test("uniform numbers fill 0 … 1 evenly, normal ones have mean 0 and standard deviation 1", () => {
  const source = random(7, "moments");
  const n = 20_000;
  const tenths = new Array<number>(10).fill(0);
  for (let i = 0; i < n; i++) {
    const tenth = source.below(10);
    tenths[tenth] = (tenths[tenth] as number) + 1;
  }
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const v = source.normal();
    sum += v;
    squares += v * v;
  }
  for (const count of tenths) expect(Math.abs(count / n - 0.1)).toBeLessThan(0.01);
  expect(Math.abs(sum / n)).toBeLessThan(0.03);
  expect(Math.abs(squares / n - 1)).toBeLessThan(0.05);
});

test("a wandering value keeps its spread and resembles its predecessor", () => {
  const next = wandering(random(3, "walk"), 0.9);
  const values = Array.from({ length: 20_000 }, next);
  const square = values.reduce((sum, v) => sum + v * v, 0) / values.length;
  const product = values.slice(1).reduce((sum, v, i) => sum + v * (values[i] as number), 0) / (values.length - 1);
  expect(Math.abs(square - 1)).toBeLessThan(0.1);
  expect(Math.abs(product / square - 0.9)).toBeLessThan(0.02);
});
