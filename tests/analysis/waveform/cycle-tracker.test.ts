import { describe, expect, it } from "vitest";
import { current, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { POINT, seen } from "./support.js";

/** Places of the upward crossings of a sine with a phase of 0: whole cycles after the start. */
function crossingErrors(cycles: readonly { readonly from: number }[], samplesPerSecond: number, f: number): number[] {
  return cycles.map(({ from }) => {
    const turns = (from / samplesPerSecond) * f;
    return turns - Math.round(turns);
  });
}

const largest = (values: readonly number[]) => Math.max(...values.map(Math.abs));

describe("tracking of cycles", () => {
  it.each([
    [2000, 42.5],
    [6400, 57.5],
    [10000, 49.87],
    [51200, 50.23],
    [1e6, 50.1],
  ])("finds the crossings of a sine at %d samples per second and %d Hz to a millionth of a cycle", async (rate, f) => {
    const seconds = rate > 1e5 ? 0.5 : 2;
    const { cycles } = await seen(sampled([[voltage("L1"), sines([230, f])]], { samplesPerSecond: rate, seconds }));
    expect(cycles.length).toBeGreaterThanOrEqual(Math.floor(seconds * f) - 2);
    expect(cycles.every((c) => c.tracked)).toBe(true);
    expect(largest(crossingErrors(cycles, rate, f))).toBeLessThan(1e-6);
    for (const [i, c] of cycles.entries()) if (i > 0) expect(c.from).toBe(cycles[i - 1]?.to);
  });

  it.each([51, 60, 69])("finds cycles of a 60 Hz supply at %d Hz", async (f) => {
    const source = sampled([[voltage("L1"), sines([120, f])]], { samplesPerSecond: 7680, seconds: 2 });
    const { cycles } = await seen(source, { ...POINT, nominalFrequency: 60, declaredVoltage: 120 });
    expect(largest(crossingErrors(cycles, 7680, f))).toBeLessThan(1e-6);
  });

  it("takes the crossings of the fundamental where harmonics make six crossings of the voltage in a cycle", async () => {
    const f = 49.9;
    const signal = sines([230, f], [60, 3 * f, 180], [70, 5 * f, 180], [40, 13 * f, 180]);
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 3 }));
    expect(cycles).toHaveLength(148);
    expect(largest(crossingErrors(cycles, 10240, f))).toBeLessThan(2e-5);
  });

  it("follows a supply that speeds up by 1 Hz/s", async () => {
    // The phase of a linear sweep from 49 Hz.
    const turns = (t: number) => 49 * t + t ** 2 / 2;
    const signal = (t: number) => 325 * Math.sin(2 * Math.PI * turns(t));
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 3 }));
    const inside = cycles.slice(4, -4).map(({ from }) => turns(from / 10240));
    expect(inside.length).toBeGreaterThan(130);
    expect(largest(inside.map((t) => t - Math.round(t)))).toBeLessThan(3e-4);
  });

  it("keeps the crossings through a dip to 40 % that starts and ends anywhere in the cycle", async () => {
    const f = 50.4;
    const signal = scaled(sines([230, f]), 1.0137, 1.2291, 0.4);
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 2 }));
    expect(cycles.every((c) => c.tracked)).toBe(true);
    expect(largest(crossingErrors(cycles, 10240, f))).toBeLessThan(5e-3);
  });

  it("continues the last period while all voltages are gone, and says so", async () => {
    const f = 49.2;
    const signal = scaled(sines([230, f]), 1, 2.5, 0);
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 4 }));
    const gone = cycles.filter(({ from, to }) => from > 1.07 * 6400 && to < 2.43 * 6400);
    expect(gone.length).toBeGreaterThan(60);
    expect(gone.some((c) => c.tracked)).toBe(false);
    for (const { from, to } of gone) expect(6400 / (to - from)).toBeCloseTo(f, 2);
    const after = cycles.filter(({ from }) => from > 2.7 * 6400);
    expect(after.every((c) => c.tracked)).toBe(true);
    expect(largest(crossingErrors(after, 6400, f))).toBeLessThan(1e-4);
  });

  it("finds a supply that comes back 5 Hz away", async () => {
    const [before, after] = [sines([230, 50]), sines([230, 45])];
    const signal = (t: number) => (t < 1 ? before(t) : t < 2 ? 0 : after(t));
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 4 }));
    // Three cycles of supply fill the window, a few more settle the period.
    const settled = cycles.filter(({ from }) => from > 2.2 * 6400);
    expect(settled.length).toBeGreaterThan(75);
    console.log(
      crossingErrors(settled.slice(0, 20), 6400, 45)
        .map((x) => x.toExponential(1))
        .join(" "),
    );
    expect(largest(crossingErrors(settled, 6400, 45))).toBeLessThan(1e-6);
  });

  it("finds a frequency again that leaps by 4 Hz without an interruption", async () => {
    const turns = (t: number) => (t < 1 ? 50 * t : 50 + 46 * (t - 1));
    const signal = (t: number) => 325 * Math.sin(2 * Math.PI * turns(t));
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 3 }));
    const settled = cycles.filter(({ from }) => from > 1.7 * 6400).map(({ from }) => turns(from / 6400));
    expect(settled.length).toBeGreaterThan(50);
    expect(largest(settled.map((t) => t - Math.round(t)))).toBeLessThan(1e-4);
  });

  it("goes on with another voltage where the reference dies, and comes back to it", async () => {
    const f = 49.7;
    const dead = scaled(sines([230, f]), 1, 2, 0);
    const source = sampled(
      [
        [voltage("L1"), dead],
        [current("L1"), () => 0],
        [voltage("L2"), sines([230, f, -120])],
        [voltage("L3"), sines([230, f, 120])],
      ],
      { samplesPerSecond: 10240, seconds: 3 },
    );
    const { cycles } = await seen(source);
    // The crossings stay those of L1, and only the two cycles of the exchange are not counted.
    expect(cycles.filter((c) => !c.tracked).length).toBe(2);
    expect(largest(crossingErrors(cycles, 10240, f))).toBeLessThan(0.02);
    const meanwhile = cycles.filter(({ from }) => from > 1.1 * 10240 && from < 1.9 * 10240);
    expect(largest(crossingErrors(meanwhile, 10240, f))).toBeLessThan(1e-4);
  });

  it("compares the voltages anew after a gap", async () => {
    const f = 50;
    // Behind the gap L2 and L3 are exchanged; 0.3 s later L1 dies.
    const second = (t: number) => (t < 1.5 ? sines([230, f, -120]) : sines([230, f, 120]))(t);
    const source = sampled(
      [
        [voltage("L1"), scaled(sines([230, f]), 2.3, 9, 0)],
        [voltage("L2"), second],
      ],
      { samplesPerSecond: 6400, seconds: 4, gaps: [[6400, 2 * 6400]] },
    );
    const { cycles } = await seen(source);
    const end = cycles.filter(({ from }) => from > 2.5 * 6400);
    expect(end.length).toBeGreaterThan(60);
    expect(largest(crossingErrors(end, 6400, f))).toBeLessThan(1e-3);
  });

  it("takes the first voltage that is alive where the first channel never is", async () => {
    const f = 50.1;
    const source = sampled(
      [
        [voltage("L1"), () => 0.5],
        [voltage("L2"), sines([230, f])],
      ],
      { samplesPerSecond: 6400, seconds: 2 },
    );
    const { cycles } = await seen(source);
    expect(cycles.every((c) => c.tracked)).toBe(true);
    expect(largest(crossingErrors(cycles, 6400, f))).toBeLessThan(1e-6);
  });

  it("counts cycles at the nominal frequency, untracked, while a recording begins without supply", async () => {
    const signal = scaled(sines([230, 50.5]), 0, 1, 0);
    const { cycles } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 3 }));
    const before = cycles.filter(({ to }) => to < 0.93 * 6400);
    expect(before.length).toBeGreaterThan(40);
    for (const { from, to, tracked } of before) {
      expect(tracked).toBe(false);
      expect(to - from).toBeCloseTo(128, 6);
    }
    const after = cycles.filter(({ from }) => from > 1.3 * 6400);
    expect(largest(crossingErrors(after, 6400, 50.5))).toBeLessThan(1e-4);
  });

  it("allows for the skew of the reference channel", async () => {
    const skew = 40e-6;
    const source = sampled([[voltage("L1", skew), sines([230, 50])]], { samplesPerSecond: 10240, seconds: 1 });
    const { cycles } = await seen(source);
    expect(largest(crossingErrors(cycles, 10240, 50))).toBeLessThan(1e-6);
  });

  it.each([5, 6, 8, 10])("measures a stretch of only %d cycles", async (count) => {
    const source = sampled([[voltage("L1"), sines([230, 49.5, 77])]], {
      samplesPerSecond: 6400,
      seconds: count / 49.5 + 0.03,
    });
    const { cycles, halves } = await seen(source);
    expect(cycles.length).toBeGreaterThanOrEqual(count - 1);
    for (const { from, to } of cycles) expect(6400 / (to - from)).toBeCloseTo(49.5, 2);
    for (const h of halves) expect(h.oneCycle[0]).toBeCloseTo(230, 1);
  });

  it("finds nothing in a stretch of three cycles", async () => {
    const source = sampled([[voltage("L1"), sines([230, 50])]], { samplesPerSecond: 6400, seconds: 0.06 });
    expect((await seen(source)).cycles).toEqual([]);
  });
});
