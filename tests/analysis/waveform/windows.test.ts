import { describe, expect, it } from "vitest";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, POINT, seen } from "./support.js";

const TICK = START + 10 * MINUTE;

/** Half a microsecond at the rates used here, in samples; instants are whole microseconds. */
const EXACT = 0.006;

describe("basic windows", () => {
  it.each([
    { nominalFrequency: 50, f: 49.87, cycles: 10 },
    { nominalFrequency: 60, f: 60.2, cycles: 12 },
  ] as const)(
    "hold $cycles cycles of a $nominalFrequency Hz supply without gap",
    async ({ nominalFrequency, f, cycles }) => {
      const rate = 10240;
      const source = sampled([[voltage("L1"), sines([230, f])]], { samplesPerSecond: rate, seconds: 10 });
      const { windows } = await seen(source, { ...POINT, nominalFrequency });
      expect(windows).toHaveLength(Math.floor((10 * f - 1) / cycles));
      for (const [i, w] of windows.entries()) {
        expect(w.cycles).toBe(cycles);
        expect(w.to - w.from).toBeCloseTo((cycles / f) * rate, 4);
        if (i > 0) expect(w.from).toBe(windows[i - 1]?.to);
        expect(w.start).toBe(START + Math.round((w.from / rate) * SECOND));
      }
    },
  );

  /** IEC 61000-4-30: at the tick a new window begins while the one that is running is finished (overlap 1). */
  it.each([7680, 10000, 12800])(
    "begin anew at a ten-minute tick, to the sample, at %d samples per second",
    async (rate) => {
      const f = 49.91;
      const start = TICK - 1.2345 * SECOND;
      const tick = 1.2345 * rate;
      const source = sampled([[voltage("L1"), sines([230, f, 200])]], { samplesPerSecond: rate, seconds: 3, start });
      const { windows } = await seen(source);
      const length = (10 / f) * rate;
      const at = windows.findIndex((w) => w.start === TICK);
      const [before, after] = [windows[at - 1], windows[at]];
      expect(before?.from).toBeLessThan(tick);
      expect(before?.to).toBeGreaterThan(tick + 1);
      expect((before?.to ?? 0) - (before?.from ?? 0)).toBeCloseTo(length, 4);
      expect(Math.abs((after?.from ?? 0) - tick)).toBeLessThan(EXACT);
      expect((after?.to ?? 0) - (after?.from ?? 0)).toBeCloseTo(length, 4);
      // Before and after that, each begins where the last one ended.
      for (const [i, w] of windows.entries()) if (i > 0 && i !== at) expect(w.from).toBe(windows[i - 1]?.to);
      // And the window at the tick holds whole cycles, too: its harmonics do not leak.
      expect(after?.channels[0]?.squares[9]).toBeLessThan(1e-9);
    },
  );

  it("do not overlap where a window ends just at the tick", async () => {
    const rate = 10000;
    // The first window starts at the second crossing, 20 ms after the start; the tick is 25 windows later.
    const start = TICK - 5.02 * SECOND;
    const source = sampled([[voltage("L1"), sines([230, 50])]], { samplesPerSecond: rate, seconds: 8, start });
    const { windows } = await seen(source);
    expect(windows[0]?.from).toBeCloseTo(200, 6);
    expect(windows.filter((w) => w.start === TICK)).toHaveLength(1);
    for (const [i, w] of windows.entries()) expect(w.from).toBeCloseTo(200 + 2000 * i, 4);
  });

  it("come after all half cycles that start before their end, and carry the flags these set", async () => {
    const signal = scaled(sines([230, 50]), 1, 1.09, 0.5);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 6400, seconds: 3 });
    const { order, halves, windows } = await seen(source, POINT, (half, { flags }) => {
      if ((half.oneCycle[0] as number) < 0.9 * 230) flags.mark(half.from, half.from + half.period / 2);
    });
    let h = 0;
    let w = 0;
    for (const kind of order) {
      if (kind === "half") h++;
      else if (kind === "window") {
        const end = windows[w++]?.to ?? 0;
        expect(halves[h]?.from ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(end - 1e-6);
      }
    }
    const flagged = windows.filter((x) => x.flagged);
    expect(flagged.length).toBeGreaterThan(0);
    for (const x of windows) expect(x.flagged).toBe(x.from < 1.09 * 6400 && x.to > (1 - 0.02) * 6400 + 1);
  });
});

describe("half cycles", () => {
  it("carry Urms(1/2) to 0.02 % at rates that are no multiple of the frequency", async () => {
    for (const [rate, f] of [
      [2000, 47.3],
      [6400, 52.1],
      [10000, 49.87],
    ] as const) {
      const source = sampled([[voltage("L1"), sines([230, f, 10])]], { samplesPerSecond: rate, seconds: 2 });
      const { halves } = await seen(source);
      expect(halves.length).toBeGreaterThan(180);
      for (const [i, h] of halves.entries()) {
        expect(Math.abs((h.oneCycle[0] as number) / 230 - 1)).toBeLessThan(2e-4);
        expect(Math.abs((h.halfCycle[0] as number) / 230 - 1)).toBeLessThan(2e-4);
        expect(h.period).toBeCloseTo(rate / f, 4);
        if (i > 0) expect(h.from - (halves[i - 1]?.from ?? 0)).toBeCloseTo(rate / f / 2, 3);
      }
    }
  });

  /**
   * Closed form: a fall to 40 % at a zero crossing leaves one value of mixed halves, √((1 + 0.16)/2) of 230 V, and all
   * others are 230 V or 92 V.
   */
  it("show a dip that starts and ends at zero crossings as a rectangle with one step at either side", async () => {
    const f = 49.6;
    const signal = scaled(sines([230, f]), 50 / f, 60.5 / f, 0.4);
    const { halves } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 2 }));
    const values = halves.map((h) => h.oneCycle[0] as number);
    const levels = [230, 230 * Math.sqrt((1 + 0.16) / 2), 92];
    const counts = levels.map((level) => values.filter((v) => Math.abs(v - level) < 0.005 * 230).length);
    expect(counts[1]).toBe(2);
    expect(counts[2]).toBe(20);
    expect(counts[0]).toBe(values.length - 22);
    expect(Math.abs(Math.min(...values) - 92)).toBeLessThan(0.002 * 230);
  });

  it("keep the r.m.s. right where the phase jumps by 30° at the start of a dip", async () => {
    const f = 50.2;
    const [before, during] = [sines([230, f]), sines([92, f, -30])];
    const signal = (t: number) => (t >= 1 && t < 1.4 ? during(t) : before(t));
    const { halves } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 3 }));
    const inside = halves.filter((h) => h.from > 1.0 * 10240 && h.from + h.period < 1.4 * 10240);
    expect(inside.length).toBeGreaterThan(35);
    for (const h of inside) expect(Math.abs((h.oneCycle[0] as number) - 92)).toBeLessThan(0.002 * 230);
  });

  it("are right to the last one, wherever in a cycle the recording ends", async () => {
    for (let extra = 0; extra < 130; extra += 3) {
      const samples = 3200 + extra;
      const channels = [20, -100].map((degrees) => [voltage("L1"), sines([230, 50.3, degrees])] as const);
      const source = sampled(channels, { samplesPerSecond: 6400, seconds: samples / 6400 });
      const { halves } = await seen(source);
      const last = halves.at(-1);
      expect((last?.from ?? 0) + (last?.period ?? 0)).toBeGreaterThan(samples - 6400 / 50.3 / 2 - 4);
      for (const { oneCycle } of halves) expect(farthest(oneCycle, 230) / 230).toBeLessThan(2e-4);
    }
  });

  it("and windows see channels with a skew at the same instants as those without", async () => {
    const supply = scaled(sines([230, 50, 12]), 1.003, 1.42, 0.3);
    const source = sampled(
      [
        [voltage("L1"), supply],
        [voltage("L2", 0.0021), supply],
        [voltage("L3", -0.0007), supply],
      ],
      { samplesPerSecond: 12800, seconds: 2 },
    );
    const { halves, windows } = await seen(source);
    for (const { oneCycle, halfCycle } of halves) {
      for (const values of [oneCycle, halfCycle]) {
        for (const c of [1, 2]) expect(Math.abs((values[c] as number) - (values[0] as number))).toBeLessThan(0.3);
      }
    }
    for (const { channels } of windows) {
      const [a, b, c] = channels.map((x) => x.rms) as [number, number, number];
      expect(Math.abs(b - a)).toBeLessThan(0.02);
      expect(Math.abs(c - a)).toBeLessThan(0.02);
    }
  });

  it("give the peak of each half cycle", async () => {
    const signal = (t: number) => sines([230, 50])(t) + (t > 1.004 && t < 1.0045 ? 400 : 0);
    const { halves } = await seen(sampled([[voltage("L1"), signal]], { samplesPerSecond: 10000, seconds: 2 }));
    const peaks = halves.map((h) => h.peak[0] as number);
    const high = peaks.filter((p) => p > 330);
    expect(high).toHaveLength(1);
    expect(high[0]).toBeGreaterThan(700);
    expect(Math.min(...peaks)).toBeGreaterThan(325);
  });
});
