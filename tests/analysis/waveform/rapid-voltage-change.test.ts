import { describe, expect, it } from "vitest";
import { measureWaveform } from "../../../src/analysis/waveform/chain.js";
import { rapidVoltageChange } from "../../../src/analysis/waveform/rapid-voltage-change.js";
import { Steadiness } from "../../../src/analysis/waveform/rapid-voltage-change-steadiness.js";
import { voltageEvents } from "../../../src/analysis/waveform/voltage-events.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";
import { random } from "../../support/random.js";
import { sampled, scaled, sines, voltage } from "../../support/waveform.js";
import {
  type DrivenChannel,
  drive,
  eventsOf,
  onePhase,
  type Step,
  startOf,
  threePhases,
} from "./voltage-events-support.js";

const standard = [rapidVoltageChange()];
const withDips = (channels: DrivenChannel[], seconds: number) =>
  drive([voltageEvents(), rapidVoltageChange()], channels, { seconds }).results[1]?.events ?? [];

const only = (events: readonly VoltageEvent[]): VoltageEvent => {
  expect(events).toHaveLength(1);
  return events[0] as VoltageEvent;
};

/** 3 % of 230 V is 6.9 V, half of it 3.45 V. */
describe("rapid voltage changes", () => {
  it("of a lasting step have ΔUmax and ΔUss of its height, and start at it", () => {
    for (const [at, step] of [
      [3, -9],
      [3, 12],
      [3.0034, -9],
      [3.0071, 15],
    ] as const) {
      const event = only(eventsOf(standard, onePhase([at, 230 + step]), { seconds: 6 }));
      expect(event).toMatchObject({ kind: "rapid-voltage-change", phases: ["L1"], unit: "V", complete: true });
      // The mean before the event may hold one value that the step fell into, so a hundredth of the step less.
      expect(Math.abs(event.extreme - Math.abs(step))).toBeLessThan(0.01 * Math.abs(step));
      expect(Math.abs((event.steadyChange as number) - Math.abs(step))).toBeLessThan(0.02 * Math.abs(step));
      expect(event.percent).toBeCloseTo(event.extreme / 2.3, 9);
      expect(Math.abs(startOf(event) - at)).toBeLessThan(0.01);
      expect(event.durationS).toBeLessThan(0.02);
    }
  });

  it("begin beyond the threshold only", () => {
    // The mean already holds half of the step once and all of it once: 1.5 % of it.
    expect(eventsOf(standard, onePhase([3, 230 - 6.9 / 0.9851]), { seconds: 6 })).toHaveLength(0);
    expect(eventsOf(standard, onePhase([3, 230 - 6.9 / 0.9849]), { seconds: 6 })).toHaveLength(1);
    expect(eventsOf([rapidVoltageChange({ threshold: 5 })], onePhase([3, 218.4]), { seconds: 6 })).toHaveLength(0);
    expect(eventsOf([rapidVoltageChange({ threshold: 5 })], onePhase([3, 218.2]), { seconds: 6 })).toHaveLength(1);
  });

  it("tell the overshoot of a motor start from the change that stays", () => {
    // Down by 18 V, back in steps of 2 V every 0.1 s as far as 224 V.
    const steps: Step[] = Array.from({ length: 7 }, (_, i) => [3 + 0.1 * i, 212 + 2 * i]);
    const event = only(withDips(onePhase(...steps), 8));
    expect(event.extreme).toBeCloseTo(18, 0);
    expect(event.steadyChange).toBeGreaterThan(6);
    expect(event.steadyChange).toBeLessThan(7);
    expect(Math.abs(startOf(event) - 3)).toBeLessThan(0.01);
    // From 3.4 s on all is within 3.45 V of the mean of a second: 10 × 220 V, 10 × 222 V and 80 × 224 V make 223.4 V.
    expect(startOf(event) + event.durationS).toBeCloseTo(3.4, 2);
  });

  it("end within the threshold less the hysteresis", () => {
    // 9 V down; then ±h around the new level, 0.1 s by turns, until 5.1 s; the last low one alone lies near the mean.
    const swinging = (h: number): Step[] => Array.from({ length: 21 }, (_, i) => [3 + 0.1 * i, 221 + (i % 2 ? h : -h)]);
    const duration = (h: number, hysteresis: number) =>
      only(eventsOf([rapidVoltageChange({ hysteresis })], onePhase(...swinging(h), [5.1, 221]), { seconds: 9 }))
        .durationS;
    expect(duration(3.3, 50)).toBeLessThan(0.05);
    expect(duration(3.6, 50)).toBeCloseTo(2, 2);
    expect(duration(3.6, 25)).toBeLessThan(0.05);
  });

  it("are one while the next change comes within a second, and two after it", () => {
    expect(eventsOf(standard, onePhase([3, 221], [3.9, 230]), { seconds: 8 })).toHaveLength(1);
    const two = eventsOf(standard, onePhase([3, 221], [4.1, 230]), { seconds: 8 });
    expect(two.map((e) => Math.round(startOf(e) * 100) / 100)).toEqual([3, 4.1]);
    const one = only(eventsOf(standard, onePhase([3, 221], [3.9, 230]), { seconds: 8 }));
    expect(one.durationS).toBeCloseTo(0.9, 2);
    expect(one.steadyChange).toBeLessThan(0.1);
    expect(one.extreme).toBeCloseTo(9, 1);
  });

  it("are no events that cross the threshold of a dip or swell, and none of their beginnings and ends", () => {
    for (const [volts, back] of [
      [205, 230],
      [100, 230],
      [255, 230],
      [206, 216],
    ] as const) {
      for (const shift of [0, 0.0037, 0.0082, 0.0151]) {
        for (const length of [0.04, 0.5, 3]) {
          const channels = onePhase([3 + shift, volts], [3 + shift + length, back]);
          expect(withDips(channels, 9), `${volts} V, ${shift} s, ${length} s`).toHaveLength(0);
        }
      }
    }
    expect(withDips(onePhase([3, 215]), 6)).toHaveLength(1);
  });

  it("are one over all phases, from the first that leaves its level until all are steady", () => {
    const event = only(eventsOf(standard, threePhases([[3, 221]], [[3.5, 218]]), { seconds: 8 }));
    expect(event.phases).toEqual(["L1", "L2"]);
    expect(event.extreme).toBeCloseTo(12, 1);
    expect(event.steadyChange).toBeCloseTo(12, 1);
    expect(event.durationS).toBeCloseTo(0.5, 1);
    expect(event.perPhase?.map((p) => p.phase)).toEqual(["L1", "L2"]);
    expect(event.perPhase?.[0]?.extreme).toBeCloseTo(9, 1);
    expect(event.perPhase?.[0]?.steadyChange).toBeCloseTo(9, 1);
  });

  it("are not found before there is a steady second, nor across a gap", () => {
    expect(eventsOf(standard, onePhase([0.9, 221]), { seconds: 4 })).toHaveLength(0);
    expect(eventsOf(standard, onePhase([1.05, 221]), { seconds: 4 })).toHaveLength(1);
    expect(eventsOf(standard, onePhase([3.5, 221]), { seconds: 8, gaps: [3] })).toHaveLength(0);
    const cut = only(eventsOf(standard, onePhase([2.5, 221]), { seconds: 8, gaps: [3] }));
    expect(cut).toMatchObject({ complete: false, cutOff: { end: "gap" } });
    expect(cut.steadyChange).toBeUndefined();
    expect(cut.extreme).toBeCloseTo(9, 1);
    expect(cut.durationS).toBeCloseTo(0.5, 2);
    const open = only(eventsOf(standard, onePhase([2.5, 221]), { seconds: 3 }));
    expect(open.cutOff).toEqual({ end: "recording" });
  });

  it("go on in the other phases where one has no samples, and are cut off in one that took part", () => {
    const missing: Step[] = [[1.5, Number.NaN]];
    expect(only(eventsOf(standard, threePhases([[3, 221]], missing), { seconds: 6 })).phases).toEqual(["L1"]);
    const late: Step[] = [[3.3, Number.NaN]];
    expect(only(eventsOf(standard, threePhases([[3, 221]], late), { seconds: 6 }))).toMatchObject({
      phases: ["L1"],
      complete: true,
    });
    const cut = only(
      eventsOf(
        standard,
        threePhases([
          [3, 221],
          [3.3, Number.NaN],
        ]),
        { seconds: 6 },
      ),
    );
    expect(cut).toMatchObject({ phases: ["L1"], complete: false, cutOff: { end: "gap" } });
    expect(cut.extreme).toBeCloseTo(9, 1);
  });

  it("keep their trace from before the change until the voltage is steady", () => {
    const { trace } = only(eventsOf(standard, onePhase([3, 221]), { seconds: 6 }));
    expect(trace?.times[0]).toBeLessThan(-0.09);
    expect(trace?.times.at(-1)).toBeGreaterThan(0.95);
    expect(trace?.channels[0]?.values[0]).toBeCloseTo(230, 3);
    expect(trace?.channels[0]?.values.at(-1)).toBeCloseTo(221, 3);
  });

  it("come out of samples, whatever the length of the blocks", async () => {
    const signal = scaled(sines([230, 49.9], [5, 249.5]), 2.0123, 10, 0.95);
    const run = (blocks: number) =>
      measureWaveform(
        sampled([[voltage("L1"), signal]], { samplesPerSecond: 4000, seconds: 5, blocks }),
        { nominalFrequency: 50, declaredVoltage: 230, connection: "star" },
        {},
        [voltageEvents(), rapidVoltageChange()],
      );
    const whole = await run(20_000);
    const event = only(whole.events);
    expect(Math.abs(startOf(event) - 2.0123)).toBeLessThan(0.01);
    expect(Math.abs((event.steadyChange as number) - 0.05 * Math.hypot(230, 5))).toBeLessThan(0.12);
    expect(event.percent).toBeCloseTo(5, 1);
    expect(event.waveform).toHaveLength(1);
    expect(await run(777)).toEqual(whole);
  });
});

describe("the steadiness of the last values", () => {
  it("equals that of the values taken all together", () => {
    const source = random(7, "steadiness");
    const values = Array.from({ length: 2000 }, () => source.below(50));
    const steadiness = new Steadiness(100);
    for (const [i, value] of values.entries()) {
      steadiness.add(value);
      const last = values.slice(Math.max(0, i - 99), i + 1);
      expect(steadiness.isFull).toBe(i >= 99);
      if (i < 99) {
        expect(steadiness.mean).toBeNaN();
        expect(steadiness.spread).toBeNaN();
        continue;
      }
      const mean = last.reduce((a, b) => a + b) / 100;
      expect(steadiness.mean).toBeCloseTo(mean, 9);
      expect(steadiness.spread).toBeCloseTo(Math.max(...last.map((v) => Math.abs(v - mean))), 9);
    }
  });
});
