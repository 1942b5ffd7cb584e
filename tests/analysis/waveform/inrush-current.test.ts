import { describe, expect, it } from "vitest";
import { inrushCurrent } from "../../../src/analysis/waveform/inrush-current.js";
import { current } from "../../support/waveform.js";
import { drive, eventsOf, oneCurrent, onePhase, type Step, startOf } from "./voltage-events-support.js";

const above = (thresholdA: number) => [inrushCurrent({ thresholdA })];

describe("inrush currents", () => {
  it("are looked for only where a threshold is given", () => {
    expect(drive([inrushCurrent()], oneCurrent([0, 5], [1, 100]), { seconds: 2 }).results).toEqual([{}]);
  });

  it("have the highest half cycle, the highest sample and their length in half cycles", () => {
    const [event, ...more] = eventsOf(above(20), oneCurrent([0, 5], [1, 80], [1.02, 40], [1.1, 10]), { seconds: 2 });
    expect(more).toHaveLength(0);
    expect(event).toMatchObject({ kind: "inrush-current", unit: "A", phases: ["L1"], reference: 20, complete: true });
    expect(startOf(event ?? { start: 0 })).toBeCloseTo(1, 6);
    expect(event?.durationS).toBeCloseTo(0.1, 6);
    expect(event?.extreme).toBeCloseTo(80, 9);
    expect(event?.percent).toBeCloseTo(400, 9);
    expect(event?.peak).toBeCloseTo(80 * Math.SQRT2, 9);
  });

  it("begin above the threshold and end at the threshold less the hysteresis", () => {
    const count = (...steps: Step[]) => eventsOf(above(20), oneCurrent([0, 5], ...steps), { seconds: 2 }).length;
    expect(count([1, 19.99], [1.1, 5])).toBe(0);
    expect(count([1, 20.01], [1.1, 5])).toBe(1);
    const length = (volts: number) =>
      eventsOf(above(20), oneCurrent([0, 5], [1, 30], [1.1, volts], [1.5, 5]), { seconds: 2 })[0]?.durationS;
    expect(length(19.61)).toBeCloseTo(0.5, 6);
    expect(length(19.59)).toBeCloseTo(0.1, 6);
  });

  it("of several phases at one time are one; voltages and the neutral are left out", () => {
    const channels = [
      ...onePhase(),
      ...(["L1", "L2", "N"] as const).map((phase, i) => ({
        channel: current(phase),
        degrees: -120 * i,
        steps: [
          [0, 5],
          [1 + 0.1 * i, 50 + 10 * i],
          [1.3, 5],
        ] as Step[],
      })),
    ];
    const events = eventsOf(above(20), channels, { seconds: 2 });
    expect(events.map((e) => e.phases)).toEqual([["L1", "L2"]]);
    expect(events[0]?.extreme).toBeCloseTo(60, 3);
    expect(events[0]?.perPhase?.map((p) => Math.round(100 * p.durationS))).toEqual([30, 20]);
  });

  it("say where the samples cut them off, and keep their half cycles", () => {
    const [event] = eventsOf(above(20), oneCurrent([0, 5], [1.9, 50]), { seconds: 2 });
    expect(event).toMatchObject({ complete: false, cutOff: { end: "recording" } });
    const { trace } = event ?? {};
    expect(trace?.channels.map((c) => c.phase)).toEqual(["L1"]);
    expect(trace?.times[trace.channels[0]?.values.findIndex((v) => v > 49) ?? -1]).toBeCloseTo(0.005, 6);
  });
});
