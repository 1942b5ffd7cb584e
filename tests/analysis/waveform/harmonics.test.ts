import { describe, expect, it } from "vitest";
import { groupSquare, interharmonicSquare, subgroupSquare } from "../../../src/analysis/waveform/harmonic-groups.js";
import { harmonics } from "../../../src/analysis/waveform/harmonics.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { current, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one, POINT } from "./support.js";

const WINDOW = SECOND / 5;

/** IEC 61000-4-7, definitions of groups and subgroups, on lines whose squares are 1 … */
describe("groups of spectral lines", () => {
  const squares = Float64Array.from({ length: 700 }, (_, k) => k);
  const sum = (from: number, to: number) => ((from + to) * (to - from + 1)) / 2;

  it.each([10, 12])("hold the lines of the standard, %d per order", (spacing) => {
    const [k, half] = [7 * spacing, spacing / 2];
    expect(subgroupSquare(squares, 7, spacing)).toBe(sum(k - 1, k + 1));
    expect(groupSquare(squares, 7, spacing)).toBe(sum(k - half + 1, k + half - 1) + (k - half) / 2 + (k + half) / 2);
    expect(interharmonicSquare(squares, 7, spacing)).toBe(sum(k + 2, k + spacing - 2));
    expect(interharmonicSquare(squares, 0, spacing)).toBe(sum(2, spacing - 2));
  });

  it("have no value where a line is not measured", () => {
    expect(subgroupSquare(squares, 70, 10)).toBeNaN();
  });
});

describe("harmonics", () => {
  it("of a 60 Hz supply stand 12 lines apart", async () => {
    const f = 60.3;
    const signal = sines([120, f], [6, 3 * f, 20], [1.2, 50 * f, 70]);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 15360, seconds: 2 });
    const point = { ...POINT, nominalFrequency: 60, declaredVoltage: 120 } as const;
    const { series } = await measured(source, {}, [harmonics], point);
    const order = (n: number) => one(series, { quantity: "harmonic-voltage", order: n }, WINDOW).values;
    expect(farthest(order(3), 5)).toBeLessThan(1e-3);
    expect(farthest(order(50), 1)).toBeLessThan(1e-3);
    expect(farthest(order(2), 0)).toBeLessThan(1e-3);
  });

  it("of a current are in A with the fundamental, its distortion in %", async () => {
    const source = sampled(
      [
        [voltage("L1"), sines([230, 50.1])],
        [current("L1"), sines([8, 50.1, -40], [4, 3 * 50.1, 10], [3, 5 * 50.1])],
      ],
      { samplesPerSecond: 10240, seconds: 2 },
    );
    const { series } = await measured(source, {}, [harmonics]);
    const order = (n: number) => one(series, { quantity: "harmonic-current", order: n }, WINDOW).values;
    for (const [n, rms] of [
      [1, 8],
      [3, 4],
      [5, 3],
    ] as const)
      expect(farthest(order(n), rms)).toBeLessThan(1e-3);
    expect(farthest(one(series, { quantity: "thd-current" }, WINDOW).values, (100 * 5) / 8)).toBeLessThan(0.01);
    expect(series.some((s) => s.quantity === "harmonic-voltage" && s.order === 1)).toBe(false);
  });

  it("THD is the root of the sum of the squares of orders 2 to 40, not further", async () => {
    const f = 49.9;
    const signal = sines([200, f], [6, 2 * f], [8, 40 * f, 50], [10, 41 * f, 90]);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 12800, seconds: 2 });
    const { series } = await measured(source, {}, [harmonics]);
    expect(farthest(one(series, { quantity: "thd-voltage" }, WINDOW).values, 5)).toBeLessThan(1e-3);
  });

  it("an interharmonic on a line goes to the subgroup it is in the middle of", async () => {
    // Line 34 of a 50 Hz supply, 170 Hz: between orders 3 and 4.
    const signal = sines([230, 50], [2.3, 170, 10]);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 2 });
    const { series } = await measured(source, {}, [harmonics]);
    const between = (n: number) => one(series, { quantity: "interharmonic-voltage", order: n }, WINDOW).values;
    expect(farthest(between(3), 1)).toBeLessThan(2e-3);
    for (const n of [0, 1, 2, 4, 5, 49]) expect(farthest(between(n), 0)).toBeLessThan(2e-3);
    const harmonic = (n: number) => one(series, { quantity: "harmonic-voltage", order: n }, WINDOW).values;
    expect(farthest(harmonic(3), 0)).toBeLessThan(2e-3);
  });

  it("groups take in what subgroups leave to the interharmonics", async () => {
    // Line 33: in the group of order 3, outside its subgroup.
    const signal = sines([230, 50], [6.9, 150], [9.2, 165]);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 2 });
    const order3 = async (kind: "groups" | "subgroups") =>
      one(
        (await measured(source, { harmonics: kind }, [harmonics])).series,
        { quantity: "harmonic-voltage", order: 3 },
        WINDOW,
      );
    expect(farthest((await order3("subgroups")).values, 3)).toBeLessThan(2e-3);
    expect(farthest((await order3("groups")).values, 5)).toBeLessThan(2e-3);
  });

  it("smoothed, follow a step as a low pass of 1.5 s does", async () => {
    const signal = (t: number) => sines([230, 50])(t) + (t < 2 ? 0 : sines([23, 250])(t));
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 8 });
    const { series } = await measured(source, { smoothed: true }, [harmonics]);
    const { starts, values } = one(series, { quantity: "harmonic-voltage", order: 5 }, WINDOW);
    for (const [i, v] of values.entries()) {
      // The window that ends at t has seen t − 2 s of the step.
      const t = ((starts[i] as number) - START) / SECOND + 0.2 - 2;
      if (t > 0.2) expect(Math.abs(v - 10 * (1 - Math.exp(-t / 1.5)))).toBeLessThan(0.6);
      if (t < 0) expect(v).toBeLessThan(0.01);
    }
    const last = values.at(-1) as number;
    expect(last).toBeGreaterThan(9.6);
    expect(last).toBeLessThan(9.9);
  });

  it("are aggregated over ten minutes as the root of the mean of the squares", async () => {
    const signal = (t: number) => sines([230, 50])(t) + (t < 401 ? 0 : sines([9.2, 150])(t));
    const start = START - SECOND;
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 2000, seconds: 602, start });
    const { series } = await measured(source, {}, [harmonics]);
    const third = one(series, { quantity: "harmonic-voltage", order: 3 }, 10 * MINUTE);
    const at = third.starts.indexOf(START);
    expect(third.values[at]).toBeCloseTo(Math.sqrt((200 * 4 ** 2) / 600), 2);
    expect(third.coverage[at]).toBe(1);
  });

  it("have no value while the voltage is interrupted", async () => {
    const source = sampled([[voltage("L1"), scaled(sines([230, 50], [10, 250]), 1, 3, 0.01)]], {
      samplesPerSecond: 6400,
      seconds: 4,
    });
    const { series } = await measured(source, {}, [harmonics]);
    const thd = one(series, { quantity: "thd-voltage" }, WINDOW);
    expect(thd.values.length).toBeGreaterThan(7);
    expect(thd.values.length).toBeLessThan(12);
    expect(Math.max(...thd.values)).toBeLessThan(40);
  });

  it.each([
    [2000, 17],
    [3200, 28],
    [4000, 35],
  ])("end, at %d samples per second, with order %d: beyond it they are absent, and THD too", async (rate, highest) => {
    const source = sampled([[voltage("L1"), sines([230, 50], [4.6, highest * 50, 30])]], {
      samplesPerSecond: rate,
      seconds: 2,
    });
    const { series, remarks, unavailable } = await measured(source, {}, [harmonics]);
    const orders = series.filter((s) => s.quantity === "harmonic-voltage" && s.interval === WINDOW).map((s) => s.order);
    expect(orders).toEqual(Array.from({ length: highest - 1 }, (_, i) => i + 2));
    expect(farthest(one(series, { quantity: "harmonic-voltage", order: highest }, WINDOW).values, 2)).toBeLessThan(
      2e-3,
    );
    expect(series.some((s) => s.quantity === "thd-voltage")).toBe(false);
    expect(remarks.join()).toContain(`to order ${highest} only`);
    expect(unavailable).toMatchObject([{ quantity: "thd-voltage", phase: "L1" }]);
  });

  it("near the end of the band have no value in windows whose frequency is too high for them", async () => {
    // Order 44 at 50 Hz is 2200 Hz, inside the 2250 Hz of a recorder with 5000 samples per second; at 52 Hz it is not.
    const frequencyAt = async (f: number) => {
      const source = sampled([[voltage("L1"), sines([230, f], [4.6, 44 * f])]], { samplesPerSecond: 5000, seconds: 2 });
      const { series } = await measured(source, {}, [harmonics]);
      return series.filter((s) => s.quantity === "harmonic-voltage" && s.interval === WINDOW && s.order === 44);
    };
    expect(farthest((await frequencyAt(50))[0]?.values ?? [], 2)).toBeLessThan(2e-3);
    expect(await frequencyAt(52)).toEqual([]);
  });
});
