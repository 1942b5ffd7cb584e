import { describe, expect, it } from "vitest";
import { FlaggedSpans } from "../../../src/analysis/waveform/flagged-spans.js";
import { frequency } from "../../../src/analysis/waveform/frequency.js";
import type { ChainSetup } from "../../../src/analysis/waveform/phenomenon.js";
import { SECOND } from "../../../src/recording/time.js";
import { random } from "../../support/random.js";
import { START } from "../../support/series.js";
import { type Signal, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one } from "./support.js";

const MILLIHERTZ = 1e-3;

async function tenSeconds(signal: Signal, samplesPerSecond: number, seconds: number, start = START) {
  const source = sampled([[voltage("L1"), signal]], { samplesPerSecond, seconds, start });
  return one((await measured(source, {}, [frequency])).series, { quantity: "frequency" });
}

/** Closed form: the frequency put in. The 1 mHz is a tenth of what class A of IEC 61000-4-30 allows. */
describe("power frequency over 10 s", () => {
  it.each([
    [6400, 42.5],
    [7680, 49.87],
    [10000, 50.23],
    [12800, 57.5],
  ])("is right to a microhertz for a sine at %d samples per second, %d Hz", async (rate, f) => {
    const series = await tenSeconds(sines([230, f, 33]), rate, 30);
    expect(series.values).toHaveLength(3);
    expect(farthest(series.values, f)).toBeLessThan(1e-6);
    expect([...series.starts]).toEqual([0, 10, 20].map((s) => START + s * SECOND));
    expect(series.coverage[1]).toBe(1);
  });

  it("stays within 1 mHz with harmonics, an interharmonic, noise of 1 % and dips, one of them across the tick", async () => {
    for (const f of [42.6, 49.87, 50.23, 57.4]) {
      const { normal } = random(5, `noise ${f}`);
      const supply = sines([230, f], [11.5, 3 * f, 100], [13.8, 5 * f, 30], [11.5, 7 * f, 200], [2, 181.7]);
      const dips = scaled(scaled(supply, 4.0037, 4.31, 0.4), 9.93, 10.05, 0.3);
      const series = await tenSeconds((t) => dips(t) + 2.3 * normal(), 6400, 30);
      expect(series.values).toHaveLength(3);
      expect(farthest(series.values, f)).toBeLessThan(MILLIHERTZ);
    }
  });

  it("counts whole cycles over their duration: a swing inside the ten seconds comes out as its mean", async () => {
    // ±0.63 Hz about 50 Hz, once a second: the phase is back where a steady 50 Hz has it at every tick.
    const signal = (t: number) => 325 * Math.sin(2 * Math.PI * (50 * t + 0.2 * Math.sin(Math.PI * t) ** 2));
    const { values } = await tenSeconds(signal, 6400, 30);
    expect(farthest(values.subarray(1, 2), 50)).toBeLessThan(MILLIHERTZ);
    // At either end of the recording three cycles continue the period beside them, which here is on the move.
    expect(farthest(values, 50)).toBeLessThan(3 * MILLIHERTZ);
  });

  it("gives each ten seconds of the clock its own value, without overlap", async () => {
    // 50 Hz in the first ten seconds, then 50.5 Hz with unbroken phase; the recording starts 4 s before a tick.
    const turns = (t: number) => (t < 4 ? 50 * t : 200 + 50.5 * (t - 4));
    const start = START + 6 * SECOND;
    const series = await tenSeconds((t) => 325 * Math.sin(2 * Math.PI * turns(t)), 6400, 24, start);
    expect([...series.starts]).toEqual([0, 10, 20].map((s) => START + s * SECOND));
    expect(series.values[0]).toBeCloseTo(50, 2);
    expect(farthest(series.values.subarray(1), 50.5)).toBeLessThan(MILLIHERTZ);
    expect(series.coverage[0]).toBeCloseTo(0.4, 2);
    expect(series.coverage[1]).toBe(1);
    expect(series.coverage[2]).toBe(1);
  });

  it("counts a cycle that crosses the tick to neither side", () => {
    const channels = [voltage("L1")];
    const setup = {
      channels,
      samplesPerSecond: 1000,
      start: START,
      flags: new FlaggedSpans(),
    } as unknown as ChainSetup;
    const state = frequency.start(setup);
    // 499 cycles of 20 ms, one of 40 ms across the tick, then 16 ms each; an untracked one is left out.
    let at = 0;
    const cycle = (length: number, tracked = true) => {
      state.cycle?.({ from: at, to: at + length, tracked });
      at += length;
    };
    for (let n = 0; n < 499; n++) cycle(20);
    cycle(40);
    cycle(31, false);
    for (let n = 0; n < 600; n++) cycle(16);
    const f = one(state.finish().series ?? [], {});
    expect([...f.values]).toEqual([50, 62.5]);
    expect(f.coverage[0]).toBe(1);
    expect(f.coverage[1]).toBeCloseTo((20 + 600 * 16) / 10_000, 9);
  });

  it("leaves the cycles of an interruption out, and the time they take uncovered", async () => {
    const series = await tenSeconds(scaled(sines([230, 49.9]), 3, 5, 0), 6400, 20);
    expect(series.coverage[0]).toBeGreaterThan(0.78);
    expect(series.coverage[0]).toBeLessThan(0.83);
    expect(series.values[0]).toBeCloseTo(49.9, 2);
    expect(series.coverage[1]).toBe(1);
  });

  it("has no value where there was no supply", async () => {
    const series = await tenSeconds(scaled(sines([230, 50]), 9, 21, 0), 6400, 30);
    expect([...series.starts]).toEqual([START, START + 20 * SECOND]);
  });
});
