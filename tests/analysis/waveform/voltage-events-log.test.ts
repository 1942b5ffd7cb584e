import { describe, expect, it } from "vitest";
import { EventLog } from "../../../src/analysis/waveform/voltage-events-log.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";

const event = (start: number): VoltageEvent => ({
  kind: "dip",
  origin: "computed",
  phases: ["L1"],
  start,
  durationS: 0.1,
  extreme: 100,
  unit: "V",
});

const record = (samples: number, rows = 10) => ({
  trace: { times: new Float64Array(rows), channels: [{ phase: "L1" as const, values: new Float32Array(rows) }] },
  waveform:
    samples === 0
      ? []
      : [
          {
            start: 0,
            samplesPerSecond: 1000,
            channels: [{ quantity: "voltage" as const, phase: "L1" as const, samples: new Float32Array(samples) }],
          },
        ],
});

describe("the log of events", () => {
  it("keeps everything while there is room, and says nothing then", () => {
    const log = new EventLog();
    log.add(event(2), 10, record(1000));
    log.add(event(1), 20, record(0));
    const { events, remarks } = log.finish("dips");
    expect(events?.map((e) => e.start)).toEqual([1, 2]);
    expect(events?.map((e) => e.waveform?.length)).toEqual([undefined, 1]);
    expect(events?.every((e) => e.trace?.times.length === 10)).toBe(true);
    expect(remarks?.map(String)).toEqual([]);
  });

  it("keeps all events, and the samples of the most severe ones that fit, the earlier of equals", () => {
    // A million bytes each; there is room for sixteen.
    const log = new EventLog();
    for (let i = 0; i < 100; i++) log.add(event(i), i < 50 ? 30 : i === 99 ? 80 : 40, record(250_000));
    const { events, remarks } = log.finish("dips, swells and interruptions");
    expect(events).toHaveLength(100);
    const withSamples = events?.flatMap((e) => (e.waveform === undefined ? [] : [e.start]));
    expect(withSamples).toEqual([...Array.from({ length: 15 }, (_, i) => 50 + i), 99]);
    expect(events?.every((e) => e.trace !== undefined)).toBe(true);
    expect(remarks?.map(String)).toEqual([
      "The waveform around them was kept for the 16 most severe of 100 dips, swells and interruptions.",
    ]);
  });

  it("drops traces by the same rule", () => {
    // 12 000 bytes each; there is room for 666.
    const log = new EventLog();
    for (let i = 0; i < 1500; i++) log.add(event(i), i === 1499 ? 2 : 1, record(0, 1000));
    const { events = [], remarks } = log.finish("dips");
    expect(events).toHaveLength(1500);
    const kept = events.filter((e) => e.trace !== undefined);
    expect(kept).toHaveLength(666);
    expect(kept.at(-2)?.start).toBe(664);
    expect(kept.at(-1)?.start).toBe(1499);
    expect(remarks?.map(String)).toEqual([
      "The half-cycle values around them were kept for the 666 most severe of 1500 dips.",
    ]);
  });
});
