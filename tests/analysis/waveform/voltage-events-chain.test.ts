import { describe, expect, it } from "vitest";
import { measureWaveform } from "../../../src/analysis/waveform/chain.js";
import { magnitude } from "../../../src/analysis/waveform/magnitude.js";
import { voltageEvents } from "../../../src/analysis/waveform/voltage-events.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { current, type Signal, type SourceOptions, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { startOf } from "./voltage-events-support.js";

const POINT = { nominalFrequency: 50, declaredVoltage: 230, connection: "star" } as const;
const PHASES = [
  ["L1", 0],
  ["L2", -120],
  ["L3", 120],
] as const;

/** Three voltages of 230 V with 3 % of fifth harmonic, and a factor on all of them between two times. */
function threeVoltages(hertz: number, from: number, to: number, factor: number, options: SourceOptions) {
  const channels = PHASES.map(([phase, degrees]) => {
    const steady = sines([230, hertz, degrees], [6.9, 5 * hertz, 40]);
    return [voltage(phase), scaled(steady, from, to, factor)] as const;
  });
  return sampled(channels, options);
}

describe("voltage events through the whole chain", () => {
  it("have start and duration within half a cycle and the residual voltage within 0.2 % of Un", async () => {
    for (const [hertz, samplesPerSecond, factor, nominalFrequency] of [
      [50, 2000, 0.5, 50],
      [49.87, 10_240, 0.85, 50],
      [52.1, 6400, 0.3, 50],
      [60.3, 7680, 0.7, 60],
      [50, 5000, 1.25, 50],
    ] as const) {
      for (const from of [1, 1.0037, 1.0081]) {
        for (const length of [0.04, 0.2, 0.7713]) {
          const source = threeVoltages(hertz, from, from + length, factor, { samplesPerSecond, seconds: 2.4 });
          const { events } = await measureWaveform(source, { ...POINT, nominalFrequency }, {}, [voltageEvents()]);
          const what = `${hertz} Hz, ${samplesPerSecond}/s, ${factor}, ${from} s, ${length} s`;
          expect(events, what).toHaveLength(1);
          const [event] = events as [VoltageEvent];
          expect(event.kind).toBe(factor < 1 ? "dip" : "swell");
          expect(event.phases).toEqual(["L1", "L2", "L3"]);
          expect(Math.abs(startOf(event) - from), what).toBeLessThan(0.5 / nominalFrequency);
          expect(Math.abs(event.durationS - length), what).toBeLessThan(0.5 / nominalFrequency);
          // R.m.s. value with the harmonic: √(1 + 0.03²) = 1.00045 times that of the fundamental.
          expect(Math.abs((event.percent as number) - 100 * factor * 1.00045), what).toBeLessThan(0.2);
          expect(event.complete).toBe(true);
        }
      }
    }
  });

  it("find interruptions of all voltages and what follows them", async () => {
    const source = threeVoltages(50, 1.0031, 4.0072, 0, { samplesPerSecond: 4000, seconds: 6 });
    const { events } = await measureWaveform(source, POINT, {}, [voltageEvents()]);
    expect(events.map((e) => e.kind)).toEqual(["dip", "interruption"]);
    for (const event of events) {
      expect(Math.abs(startOf(event) - 1.0031)).toBeLessThan(0.01);
      expect(Math.abs(event.durationS - 3.0041)).toBeLessThan(0.01);
      expect(event.extreme).toBeLessThan(0.001);
    }
    expect(events[0]?.interrupted).toBe(true);
  });

  it("do not depend on the length of the blocks", async () => {
    const signal = scaled(scaled(sines([230, 49.9]), 1.0234, 1.1234, 0.6), 2.5, 2.52, 1.3);
    const run = (blocks: number | readonly number[]) =>
      measureWaveform(sampled([[voltage("L1"), signal]], { samplesPerSecond: 5000, seconds: 4, blocks }), POINT, {}, [
        voltageEvents(),
      ]);
    const whole = await run(20_000);
    expect(whole.events.map((e) => e.kind)).toEqual(["dip", "swell"]);
    for (const blocks of [5117, 5200, 1000, [37, 411, 2003]]) expect(await run(blocks)).toEqual(whole);
  });

  it("keep the samples around start and end, of all channels, as they were recorded", async () => {
    const u = scaled(sines([230, 50]), 1, 1.9, 0.5);
    const i = sines([5, 50, -30]);
    const rate = 4000;
    const source = sampled(
      [
        [voltage("L1"), u],
        [current("L1"), i],
      ],
      { samplesPerSecond: rate, seconds: 4 },
    );
    const { events } = await measureWaveform(source, POINT, {}, [voltageEvents()]);
    const [event] = events as [VoltageEvent];
    expect(event.waveform).toHaveLength(2);
    const spans = event.waveform?.map((piece) => {
      const first = (piece.start - START) / SECOND;
      return [first, first + (piece.channels[0]?.samples.length ?? 0) / piece.samplesPerSecond];
    });
    for (const [k, t] of [0.9, 1.2, 1.8, 2.1].entries()) expect(spans?.flat()[k]).toBeCloseTo(t, 2);
    const before = (event.start - (event.waveform?.[0]?.start ?? 0)) / SECOND;
    expect(before).toBeGreaterThan(0.1 - 1 / rate);
    expect(before).toBeLessThan(0.1 + 1e-6);
    for (const piece of event.waveform ?? []) {
      expect(piece.channels.map((c) => `${c.quantity} ${c.phase}`)).toEqual(["voltage L1", "current L1"]);
      const first = ((piece.start - START) / SECOND) * rate;
      for (const [c, signal] of [u, i].entries()) {
        const samples = piece.channels[c]?.samples ?? [];
        for (const [n, sample] of samples.entries()) {
          expect(Math.abs(sample - signal(Math.round(first + n) / rate))).toBeLessThan(1e-4);
        }
      }
    }
  });

  it("do not keep a sample twice where the stretches around start and end meet", async () => {
    const source = sampled([[voltage("L1"), scaled(sines([230, 50]), 1, 1.25, 0.5)]], {
      samplesPerSecond: 4000,
      seconds: 3,
    });
    const [event] = (await measureWaveform(source, POINT, {}, [voltageEvents()])).events as [VoltageEvent];
    const [first, second, ...more] = event.waveform ?? [];
    expect(more).toHaveLength(0);
    const end = (first?.start ?? 0) + ((first?.channels[0]?.samples.length ?? 0) * SECOND) / 4000;
    expect(second?.start).toBe(end);
  });

  it("of a short event keep one stretch of samples, and less of it at the edges of the recording", async () => {
    const signal: Signal = scaled(scaled(sines([230, 50]), 1, 1.06, 0.5), 2.9, 2.95, 0.5);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 4000, seconds: 3.05 });
    const { events } = await measureWaveform(source, POINT, {}, [voltageEvents()]);
    const seconds = events.map((e) => e.waveform?.map((p) => (p.channels[0]?.samples.length ?? 0) / 4000));
    expect(seconds[0]?.[0]).toBeCloseTo(0.36, 2);
    expect(seconds[1]?.[0]).toBeCloseTo(0.25, 2);
    expect(seconds.map((s) => s?.length)).toEqual([1, 1]);
  });

  it("flag the interval they fall into, and not the one that begins at the tick after them", async () => {
    const source = sampled([[voltage("L1"), scaled(sines([230, 50]), 0.7, 0.9, 0.5)]], {
      samplesPerSecond: 2000,
      seconds: 3,
      start: START + 10 * MINUTE - SECOND,
    });
    const { series } = await measureWaveform(source, POINT, {}, [voltageEvents(), magnitude]);
    const voltages = series.find((s) => s.quantity === "voltage" && s.interval === 10 * MINUTE);
    expect([...(voltages?.flagged ?? [])]).toEqual([1, 0]);
  });
});
