import { describe, expect, it } from "vitest";
import { measureWaveform } from "../../../src/analysis/waveform/chain.js";
import { transients } from "../../../src/analysis/waveform/transients.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";
import { random } from "../../support/random.js";
import { type Signal, type SourceOptions, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { startOf } from "./voltage-events-support.js";

const RATE = 10_000;
const POINT = { nominalFrequency: 50, declaredVoltage: 230, connection: "star" } as const;
const CREST = 230 * Math.SQRT2;

const base = sines([230, 49.93], [9, 3 * 49.93, 20], [7, 13 * 49.93, 50]);

/** A damped oscillation of 900 Hz that begins at `at` with a height in V. */
const oscillation =
  (at: number, volts: number): Signal =>
  (t) =>
    t < at ? 0 : volts * Math.exp(-(t - at) / 0.001) * Math.cos(2 * Math.PI * 900 * (t - at));

const plus =
  (...signals: Signal[]): Signal =>
  (t) =>
    signals.reduce((sum, s) => sum + s(t), 0);

async function find(signals: readonly Signal[], options: Partial<SourceOptions> = {}, threshold?: number) {
  const phases = ["L1", "L2", "L3"] as const;
  const channels = signals.map((s, i) => [voltage(phases[i] as "L1"), s] as const);
  const source = sampled(channels, { samplesPerSecond: RATE, seconds: 2, ...options });
  const settings = threshold === undefined ? {} : { threshold };
  return (await measureWaveform(source, POINT, {}, [transients(settings)])).events;
}

const only = (events: readonly VoltageEvent[]): VoltageEvent => {
  expect(events).toHaveLength(1);
  return events[0] as VoltageEvent;
};

describe("transients", () => {
  it("have the time and the height of their largest deviation, and come once", async () => {
    for (const at of [1.0, 1.0043, 1.0111]) {
      const event = only(await find([plus(base, oscillation(at, 200))]));
      expect(event).toMatchObject({ kind: "transient", phases: ["L1"], unit: "V", origin: "computed" });
      expect(startOf(event)).toBeCloseTo(at, 4);
      expect(event.extreme).toBeGreaterThan(197);
      expect(event.extreme).toBeLessThan(203);
      expect(event.reference).toBeCloseTo(CREST, 9);
      expect(event.percent).toBeCloseTo((100 * event.extreme) / CREST, 9);
      // 20 % of the crest is 65 V; 200 V · e^(−t / 1 ms) is below it after 1.1 ms.
      expect(event.durationS).toBeGreaterThan(0.0004);
      expect(event.durationS).toBeLessThan(0.0013);
    }
  });

  it("count from the threshold on", async () => {
    const at = 1.0043;
    expect(await find([plus(base, oscillation(at, 60))])).toHaveLength(0);
    expect(await find([plus(base, oscillation(at, 70))])).toHaveLength(1);
    expect(await find([plus(base, oscillation(at, 60))], {}, 15)).toHaveLength(1);
    expect(await find([plus(base, oscillation(at, -200))])).toHaveLength(1);
  });

  it("of several phases at one time are one", async () => {
    const quiet = sines([230, 49.93, 120]);
    const signals = [plus(base, oscillation(1, 150)), plus(sines([230, 49.93, -120]), oscillation(1.0005, 250)), quiet];
    const event = only(await find(signals));
    expect(event.phases).toEqual(["L1", "L2"]);
    expect(event.extreme).toBeGreaterThan(245);
    expect(event.perPhase?.map((p) => Math.round(p.extreme / 10))).toEqual([15, 25]);
  });

  it("that follow one another come one by one, and one that repeats itself in the next cycle once", async () => {
    const starts = async (...at: number[]) => {
      const events = await find([plus(base, ...at.map((t) => oscillation(t, 200)))]);
      return events.map((e) => Math.round(startOf(e) * 1000) / 1000);
    };
    expect(await starts(0.5, 0.515, 0.6, 1, 1.5)).toEqual([0.5, 0.515, 0.6, 1, 1.5]);
    const cycle = 1 / 49.93;
    expect(await starts(0.5, 0.5 + cycle, 1)).toEqual([0.5, 1]);
  });

  it("are not steps of the amplitude or phase, wherever in the cycle, nor an interruption", async () => {
    for (const factor of [0, 0.5, 0.75, 0.799, 1.201, 1.3]) {
      for (const shift of [0, 0.0024, 0.005, 0.0071, 0.0103]) {
        const stepped = scaled(sines([230, 50]), 0.7 + shift, 1.31, factor);
        expect(await find([stepped]), `${factor}, ${shift} s`).toHaveLength(0);
      }
    }
    for (const degrees of [12, 15, 30, 90]) {
      const [before, after] = [sines([230, 50]), sines([230, 50, degrees])];
      expect(await find([(t) => (t < 1.003 ? before(t) : after(t))]), `${degrees}°`).toHaveLength(0);
    }
  });

  it("are not harmonics, notches of every cycle, noise or a drift of the frequency", async () => {
    const noise = random(5, "transients");
    const notched: Signal = (t) => ((t * 300 + 1e-6) % 1 < 0.05 ? 0.3 : 1) * sines([230, 50])(t);
    const drifting: Signal = (t) => CREST * Math.sin(2 * Math.PI * (50 * t + 0.25 * t * t));
    expect(await find([base], { samplesPerSecond: 2000 })).toHaveLength(0);
    expect(await find([notched])).toHaveLength(0);
    expect(await find([(t) => base(t) + 5 * noise.normal()])).toHaveLength(0);
    expect(await find([drifting])).toHaveLength(0);
  });

  it("are looked for on both sides of a gap, not across it", async () => {
    const signal = plus(base, oscillation(0.5, 200), oscillation(1.5, 200));
    const gaps = [[8000, 10_037]] as const;
    const events = await find([signal], { gaps });
    expect(events.map((e) => Math.round(startOf(e) * 1000) / 1000)).toEqual([0.5, 1.5]);
  });

  it("do not depend on the length of the blocks", async () => {
    const signals = [plus(base, oscillation(0.5, 200), oscillation(1.0999, 90))];
    const whole = await find(signals, { blocks: 20_000 });
    expect(whole).toHaveLength(2);
    expect(await find(signals, { blocks: [997, 13, 4001] })).toEqual(whole);
  });

  it("are listed up to ten thousand, and counted beyond", async () => {
    const samplesPerSecond = 2000;
    const comb: Signal = (t) => CREST * Math.sin(100 * Math.PI * t) + (Math.round(2000 * t) % 72 === 71 ? 300 : 0);
    const source = sampled([[voltage("L1"), comb]], { samplesPerSecond, seconds: 365 });
    const { events, remarks } = await measureWaveform(source, POINT, {}, [transients()]);
    expect(events).toHaveLength(10_000);
    expect(remarks.join()).toMatch(/^1\d\d more transients are not listed; the first 10000 are\.$/);
  });
});
