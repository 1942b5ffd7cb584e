import { describe, expect, it } from "vitest";
import { measureWaveform } from "../../../src/analysis/waveform/chain.js";
import { frequency } from "../../../src/analysis/waveform/frequency.js";
import { magnitude } from "../../../src/analysis/waveform/magnitude.js";
import { UsageError } from "../../../src/errors.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import type { WaveformSource } from "../../../src/recording/waveform.js";
import { START } from "../../support/series.js";
import { current, sampled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one, POINT, seen } from "./support.js";

const RATE = 6400;
const supply = sines([230, 49.9, 15], [10, 5 * 49.9]);
const RMS = Math.hypot(230, 10);

describe("gaps", () => {
  it("end a stretch: no window or half cycle reaches into one, and the next stretch starts by itself", async () => {
    const gap = [12345, 20000] as const;
    const source = sampled([[voltage("L1"), supply]], { samplesPerSecond: RATE, seconds: 6, gaps: [gap] });
    const { windows, halves, gaps, order } = await seen(source);
    expect(gaps).toEqual([20000]);
    expect(order.filter((o) => o === "gap")).toHaveLength(1);
    expect(windows.filter((w) => w.to <= 12345)).toHaveLength(9);
    for (const { from, to } of windows) expect(to <= gap[0] || from >= gap[1]).toBe(true);
    for (const { from, period } of halves) expect(from + period <= gap[0] || from >= gap[1]).toBe(true);
    expect(
      farthest(
        windows.map((w) => w.channels[0]?.rms ?? 0),
        RMS,
      ),
    ).toBeLessThan(1e-4);
    const first = windows.find((w) => w.from >= 20000);
    expect((first?.from ?? 0) - 20000).toBeLessThan(RATE / 49.9 + 40);
  });

  it("lower the coverage of ten minutes and of ten seconds by what they take", async () => {
    const start = START + 10 * MINUTE - 5 * SECOND;
    const source = sampled([[voltage("L1"), supply]], {
      samplesPerSecond: 2000,
      seconds: 615,
      start,
      gaps: [[200_000, 260_000]],
    });
    const { series } = await measured(source, {}, [frequency, magnitude]);
    const u = one(series, { quantity: "voltage" }, 10 * MINUTE);
    expect([...u.starts]).toEqual([0, 10, 20].map((m) => START + m * MINUTE));
    // 30 s are missing; windows that the gap or the search for the first cycle cuts off cost up to 0.25 s more.
    expect(u.coverage[1]).toBeLessThanOrEqual(0.95);
    expect(u.coverage[1]).toBeGreaterThan(0.95 - 0.25 / 600);
    expect(u.coverage[0]).toBeCloseTo(5 / 600, 3);
    expect(farthest(u.values, RMS)).toBeLessThan(0.001);
    const f = one(series, { quantity: "frequency" });
    expect(
      Array.from(
        f.coverage.filter((c) => c < 0.99),
        (c) => Math.round(100 * c),
      ),
    ).toEqual([50, 50, 50]);
    expect(farthest(f.values, 49.9)).toBeLessThan(1e-5);
  });

  it("of one channel take its own values and no others", async () => {
    const lost = (t: number) => (t > 1 && t < 1.05 ? Number.NaN : sines([10, 49.9])(t));
    const source = sampled(
      [
        [voltage("L1"), supply],
        [current("L1"), lost],
      ],
      { samplesPerSecond: RATE, seconds: 3 },
    );
    const { windows, halves } = await seen(source);
    expect(windows.every((w) => Math.abs((w.channels[0]?.rms ?? 0) - RMS) < 1e-3)).toBe(true);
    const touched = windows.filter((w) => w.from < 1.05 * RATE && w.to > 1 * RATE);
    expect(touched.length).toBeGreaterThan(0);
    for (const w of windows) expect(Number.isNaN(w.channels[1]?.rms)).toBe(touched.includes(w));
    expect(halves.filter((h) => Number.isNaN(h.oneCycle[1])).length).toBeGreaterThan(4);
    expect(halves.some((h) => Number.isNaN(h.oneCycle[0]))).toBe(false);
  });

  it("written as missing samples in all channels leave out the windows they touch", async () => {
    const lost = (t: number) => (t > 1 && t < 1.3 ? Number.NaN : supply(t));
    const { windows } = await seen(sampled([[voltage("L1"), lost]], { samplesPerSecond: RATE, seconds: 4 }));
    const known = windows.filter((w) => !Number.isNaN(w.channels[0]?.rms));
    expect(known.length).toBeGreaterThanOrEqual(16);
    for (const w of windows) if (!known.includes(w)) expect(w.from < 1.3 * RATE && w.to > 1 * RATE).toBe(true);
  });

  it("that go back in time are a fault of the source", async () => {
    const source: WaveformSource = {
      ...sampled([[voltage("L1"), supply]], { samplesPerSecond: RATE, seconds: 1 }),
      async *blocks() {
        yield { first: 100, samples: [new Float64Array(50)] };
        yield { first: 120, samples: [new Float64Array(50)] };
      },
    };
    await expect(measureWaveform(source, POINT)).rejects.toThrow(RangeError);
  });
});

describe("what cannot be measured", () => {
  it("is a recording without a voltage", async () => {
    const source = sampled([[current("L1"), supply]], { samplesPerSecond: RATE, seconds: 1 });
    await expect(measureWaveform(source, POINT)).rejects.toThrow(UsageError);
  });

  it("is a recording with fewer than 2000 samples per second", async () => {
    const source = sampled([[voltage("L1"), supply]], { samplesPerSecond: 1600, seconds: 1 });
    await expect(measureWaveform(source, POINT)).rejects.toThrow(/1600 samples per second/);
  });

  it("is, over windows, a recording of nine cycles, and the result says so", async () => {
    const source = sampled([[voltage("L1"), supply]], { samplesPerSecond: RATE, seconds: 0.18 });
    const { series, remarks } = await measured(source, {}, [magnitude]);
    expect(series).toEqual([]);
    expect(remarks.join()).toContain("basic window");
  });

  it("is nothing in an empty recording", async () => {
    const source = sampled([[voltage("L1"), supply]], { samplesPerSecond: RATE, seconds: 0 });
    expect((await measured(source, {}, [magnitude])).remarks).toHaveLength(1);
  });
});
