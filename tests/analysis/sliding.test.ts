import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slidingBound } from "../../src/analysis/sliding-bound.js";
import { SlidingMean } from "../../src/analysis/sliding-mean.js";
import type { SlidingVoltage } from "../../src/recording/supply-detail.js";
import { type Duration, MINUTE, SECOND } from "../../src/recording/time.js";
import { intervals, START } from "../support/series.js";

/** Sliding mean of values in intervals of one length; NaN: missing. */
function slide(values: readonly number[], interval: Duration = MINUTE, declared = 230): SlidingVoltage | undefined {
  const mean = new SlidingMean("L1", interval, declared);
  for (const [i, v] of values.entries()) mean.add(START + i * interval, START + (i + 1) * interval, v);
  return mean.finish();
}

const repeat = (n: number, v: number) => new Array<number>(n).fill(v);
const rms = (values: readonly number[]) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

describe("sliding 10-min voltage", () => {
  it("is the constant of a constant voltage, and on the limit not above it", () => {
    expect(slide(repeat(15, 253))).toEqual({
      phase: "L1",
      interval: MINUTE,
      n: 6,
      lowest: { value: 253, at: START + 10 * MINUTE },
      highest: { value: 253, at: START + 10 * MINUTE },
      limit: 253,
      passed: [],
    });
    expect(slide(repeat(9, 253))).toBeUndefined();
  });

  it("passes the limit at the closed-form time of a step and falls below it again after the step back", () => {
    // 240 V, then 256 V for 12 min, in steps of 1 s. After x s at 256 V: (600 − x)·240² + x·256² > 600·253²
    // gives x > 600·(253² − 240²)/(256² − 240²) = 484.65, so at x = 485; afterwards the same with the parts exchanged.
    const found = slide([...repeat(900, 240), ...repeat(720, 256), ...repeat(900, 240)], SECOND);
    expect(found?.n).toBe(900 + 720 + 900 - 593);
    expect(found?.highest.value).toBeCloseTo(256, 10);
    expect(found?.lowest.value).toBeCloseTo(240, 10);
    // Windows count from 594 of 600 s on, so that the first of all are not yet full.
    expect(found?.passed).toHaveLength(1);
    const [only] = found?.passed ?? [];
    expect(only?.start).toBe(START + (900 + 485) * SECOND);
    // Above while at least 485 s of 256 V are left in the window: until 115 s after the end; at 116 s below.
    expect(only?.durationS).toBe(720 + 116 - 485);
    expect(only?.peak).toBeCloseTo(256, 10);
    expect(only?.complete).toBe(true);
  });

  it("counts a window from 99 % coverage on and leaves out what is less covered", () => {
    const gap = (missing: number) => [...repeat(600, 230), ...repeat(missing, Number.NaN), ...repeat(600, 230)];
    expect(slide(gap(6), SECOND)?.n).toBe(600 - 593 + 600);
    // Seven missing seconds: no window that holds them all; those that have let go of one count again.
    expect(slide(gap(7), SECOND)?.n).toBe(600 - 593 + 600 - 594 + 1);
  });

  it("says that a time above the limit is not complete where the data begin, end or are missing in it", () => {
    const high = slide(repeat(12, 255));
    expect(high?.passed).toEqual([{ start: START + 10 * MINUTE, durationS: 180, peak: 255, complete: false }]);
    const split = slide([...repeat(10, 240), ...repeat(12, 255), Number.NaN, ...repeat(12, 255), ...repeat(12, 240)]);
    expect(split?.passed.map(({ complete }) => complete)).toEqual([false, false]);
  });

  it("forgets a value beyond all measure once it has left the window", () => {
    const found = slide([...repeat(10, 231.3), 1e9, ...repeat(30, 231.3)]);
    expect(found?.lowest.value).toBe(231.3);
    const after = slide([...repeat(10, 231.3), 1e9, ...repeat(30, 231.3), 231.2]);
    expect(after?.lowest.value).toBeCloseTo(Math.sqrt(0.9 * 231.3 ** 2 + 0.1 * 231.2 ** 2), 9);
  });

  it("agrees with the sum over each window, over data much longer than its memory", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 2000, max: 2700 }), { minLength: 40, maxLength: 40 }),
        fc.integer({ min: 1, max: 30 }),
        (cycle, length) => {
          const values = Array.from({ length: 3000 }, (_, i) => (cycle[(i * length) % 40] as number) / 10 + (i % 7));
          const found = slide(values);
          const all = values.slice(9).map((_, i) => rms(values.slice(i, i + 10)));
          expect(found?.n).toBe(all.length);
          expect(found?.highest.value).toBeCloseTo(Math.max(...all), 9);
          expect(found?.lowest.value).toBeCloseTo(Math.min(...all), 9);
          const above = all.map((v) => v > 253 * (1 + 1e-12));
          const begun = above.filter((now, i) => now && above[i - 1] !== true).length;
          expect(found?.passed).toHaveLength(begun);
          const seconds = found?.passed.reduce((sum, p) => sum + p.durationS, 0);
          expect(seconds).toBe(60 * above.filter((now) => now).length);
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });
});

describe("bound of the sliding mean by fixed values and their extremes", () => {
  const fixed = (rows: readonly (readonly [low: number, mean: number, high: number])[]) => ({
    ...intervals(
      "voltage",
      "L1",
      rows.map(([, mean]) => mean),
    ),
    min: Float64Array.from(rows, ([low]) => low),
    max: Float64Array.from(rows, ([, , high]) => high),
  });

  it("is the value itself where the extremes leave no room, and the closed form of two equal intervals", () => {
    expect(
      slidingBound(
        fixed([
          [230, 230, 230],
          [230, 230, 230],
        ]),
        230,
      ),
    ).toEqual({
      phase: "L1",
      limit: 253,
      pairs: 1,
      highest: { value: 230, at: START + 10 * MINUTE },
      possible: 0,
    });
    // Half of each at 260 V and half at √(2·250² − 260²) ≈ 239.6 V: the two high halves can meet in one window.
    const low = Math.sqrt(2 * 250 ** 2 - 260 ** 2);
    const found = slidingBound(
      fixed([
        [low, 250, 260],
        [low, 250, 260],
      ]),
      230,
    );
    expect(found?.highest.value).toBeCloseTo(260, 9);
    expect(found?.possible).toBe(1);
  });

  it("counts what a high part leaves for the rest of its interval", () => {
    // At the share 0.49 of one interval its part meets both bounds; the other's part, 0.51 long, is held by its lowest value.
    const row = [240, 250, 260] as const;
    const square = 0.49 * 260 ** 2 + (250 ** 2 - 0.49 * 240 ** 2);
    expect(slidingBound(fixed([row, row]), 230)?.highest.value).toBeCloseTo(Math.sqrt(square), 9);
  });

  it("gives none without highest values, across a gap, or for an interval that is not valid", () => {
    const { max: _, ...noMax } = fixed([
      [230, 240, 250],
      [230, 240, 250],
    ]);
    expect(slidingBound(noMax, 230)).toBeUndefined();
    const row = [230, 240, 250] as const;
    const gap = { ...fixed([row, row]), starts: Float64Array.of(START, START + 20 * MINUTE) };
    expect(slidingBound(gap, 230)).toBeUndefined();
    expect(slidingBound({ ...fixed([row, row]), coverage: Float64Array.of(1, 0.9) }, 230)).toBeUndefined();
  });

  it("is never below the sliding mean of the data it is made from, and is reached by some", () => {
    const minutes = fc.array(fc.integer({ min: 2300, max: 2600 }), { minLength: 30, maxLength: 30 });
    let closest = Number.POSITIVE_INFINITY;
    fc.assert(
      fc.property(minutes, (tenths) => {
        const values = tenths.map((v) => v / 10);
        const rows = [0, 10, 20].map((i) => {
          const part = values.slice(i, i + 10);
          return [Math.min(...part), rms(part), Math.max(...part)] as const;
        });
        const bound = slidingBound(fixed(rows), 230)?.highest.value ?? 0;
        const sliding = slide(values)?.highest.value ?? 0;
        closest = Math.min(closest, bound - sliding);
        expect(bound).toBeGreaterThanOrEqual(sliding - 1e-9);
      }),
      { seed: 3, numRuns: 500, examples: [[[...repeat(5, 2400), ...repeat(10, 2600), ...repeat(15, 2400)]]] },
    );
    expect(closest).toBeLessThan(1e-9);
  });
});
