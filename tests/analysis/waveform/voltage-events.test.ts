import { describe, expect, it } from "vitest";
import type { Phenomenon } from "../../../src/analysis/waveform/phenomenon.js";
import { voltageEvents } from "../../../src/analysis/waveform/voltage-events.js";
import type { VoltageEvent } from "../../../src/recording/measurements.js";
import {
  type DrivenChannel,
  drive,
  eventsOf,
  onePhase,
  sag,
  setupFor,
  startOf,
  threePhases,
} from "./voltage-events-support.js";

const standard = [voltageEvents()];
const PERIOD = 0.02;
/** Half a cycle, and a microsecond of rounding. */
const HALF_CYCLE = PERIOD / 2 + 1e-6;

const only = (events: readonly VoltageEvent[]): VoltageEvent => {
  expect(events).toHaveLength(1);
  return events[0] as VoltageEvent;
};

describe("dips of one voltage", () => {
  it("are placed exactly where both steps stand at zero crossings", () => {
    const event = only(eventsOf(standard, onePhase(...sag(1, 1.1, 115)), { seconds: 2 }));
    expect(event.kind).toBe("dip");
    expect(startOf(event)).toBeCloseTo(1, 5);
    expect(event.durationS).toBeCloseTo(0.1, 5);
    expect(event.extreme).toBeCloseTo(115, 6);
    expect(event).toMatchObject({ unit: "V", reference: 230, origin: "computed", phases: ["L1"], complete: true });
    expect(event.percent).toBeCloseTo(50, 6);
  });

  it("are placed within half a cycle and hold the residual voltage, whatever depth, length and place in the cycle", () => {
    for (const percent of [0, 6, 30, 50, 70, 80, 85, 88]) {
      for (const cycles of [0.5, 0.7, 1, 1.3, 1.6, 2.5, 10, 31.4]) {
        for (const shift of [0, 0.1, 0.25, 0.37, 0.5, 0.61, 0.83]) {
          const from = 1 + shift * PERIOD;
          const to = from + cycles * PERIOD;
          const events = eventsOf(standard, onePhase(...sag(from, to, 2.3 * percent)), { seconds: 2 });
          const dips = events.filter((e) => e.kind === "dip");
          // Half a cycle that starts inside one and is shallow leaves no cycle below 90 %.
          if (dips.length === 0 && cycles < 1.5 && percent >= 50) continue;
          const what = `${percent} %, ${cycles} cycles, ${shift}`;
          const event = only(dips);
          expect(Math.abs(startOf(event) - from), what).toBeLessThanOrEqual(HALF_CYCLE);
          expect(Math.abs(event.durationS - (to - from)), what).toBeLessThanOrEqual(HALF_CYCLE);
          if (cycles < 1.5) continue;
          expect(Math.abs(startOf(event) - from), what).toBeLessThan(0.081 * PERIOD);
          expect(Math.abs(event.durationS - (to - from)), what).toBeLessThan(0.161 * PERIOD);
          expect(Math.abs((event.percent as number) - percent), what).toBeLessThan(1e-6);
        }
      }
    }
  });

  it("begin below the threshold, not at it, and end at the threshold plus hysteresis", () => {
    const at = (...steps: [number, number][]) => eventsOf(standard, onePhase(...steps), { seconds: 3 });
    expect(at([1, 207.01], [1.5, 230])).toHaveLength(0);
    expect(at([1, 206.99], [1.5, 230])).toHaveLength(1);
    // 92 % of 230 V is 211.6 V.
    const held = only(at([1, 200], [1.2, 211.5], [2, 230]));
    expect(held.durationS).toBeCloseTo(1, 5);
    const released = only(at([1, 200], [1.2, 211.7], [2, 230]));
    expect(released.durationS).toBeCloseTo(0.2, 5);
    expect(at([1, 200], [1.2, 211.7], [2, 200], [2.2, 230])).toHaveLength(2);
  });

  it("follow thresholds that were given", () => {
    const steps = onePhase([1, 190], [1.2, 196], [1.5, 230]);
    const events = (settings: object) => eventsOf([voltageEvents(settings)], steps, { seconds: 2 });
    expect(events({ dip: 80 })).toHaveLength(0);
    expect(only(events({ dip: 85, hysteresis: 0 })).durationS).toBeCloseTo(0.2, 5);
    expect(only(events({ dip: 85, hysteresis: 2 })).durationS).toBeCloseTo(0.5, 5);
  });

  it("that change slowly are placed within a third of a cycle of where the voltage passes the threshold", () => {
    // 230 V falls by 1 V each half cycle: 207 V is passed at 1.23 s, 211.6 V on the way back.
    const down = Array.from({ length: 40 }, (_, i): [number, number] => [1 + 0.01 * i, 230 - i]);
    const up = Array.from({ length: 40 }, (_, i): [number, number] => [1.4 + 0.01 * i, 190 + i]);
    const event = only(eventsOf(standard, onePhase(...down, ...up), { seconds: 2.5 }));
    expect(Math.abs(startOf(event) - 1.235)).toBeLessThan(PERIOD / 3);
    expect(Math.abs(startOf(event) + event.durationS - 1.621)).toBeLessThan(PERIOD / 3);
  });
});

describe("swells", () => {
  it("mirror dips: above 110 %, ended at 108 % or below, with the highest voltage and the highest sample", () => {
    const at = (...steps: [number, number][]) => eventsOf(standard, onePhase(...steps), { seconds: 3 });
    expect(at([1, 252.99], [1.5, 230])).toHaveLength(0);
    const event = only(at([1, 276], [1.2, 248.5], [1.5, 248.3], [2, 230]));
    expect(event.kind).toBe("swell");
    expect(startOf(event)).toBeCloseTo(1, 4);
    expect(event.durationS).toBeCloseTo(0.5, 4);
    expect(event.percent).toBeCloseTo(120, 6);
    expect(event.peak).toBeCloseTo(276 * Math.SQRT2, 6);
  });
});

describe("polyphase events", () => {
  it("make one dip of phases that overlap, from the first that falls to the last that is back", () => {
    const channels = threePhases(sag(1, 1.3, 184), sag(1.2, 1.6, 161));
    const event = only(eventsOf(standard, channels, { seconds: 2.5 }));
    expect(event.phases).toEqual(["L1", "L2"]);
    expect(Math.abs(startOf(event) - 1)).toBeLessThan(0.0017);
    expect(Math.abs(event.durationS - 0.6)).toBeLessThan(0.0034);
    expect(event.percent).toBeCloseTo(70, 6);
    const [l1, l2] = event.perPhase ?? [];
    expect(l1).toMatchObject({ phase: "L1", crossings: 1, start: event.start });
    expect(l1?.percent).toBeCloseTo(80, 6);
    expect(l1?.durationS).toBeCloseTo(0.3, 5);
    expect(l2?.phase).toBe("L2");
    expect(Math.abs(startOf(l2 ?? event) - 1.2)).toBeLessThan(0.0017);
    expect(Math.abs((l2?.durationS ?? 0) - 0.4)).toBeLessThan(0.0034);
  });

  it("last from the earliest start to the latest end of those that fall and return in the same half cycle", () => {
    const three: DrivenChannel[] = [sag(1.0041, 1.2095, 80), sag(1.0051, 1.2085, 80), sag(1.0061, 1.2075, 80)].map(
      (steps, i) => ({ ...(threePhases([])[i] as DrivenChannel), degrees: 0, steps: [[0, 230], ...steps] }),
    );
    const event = only(eventsOf(standard, three, { seconds: 2 }));
    const { start, durationS, perPhase = [] } = event;
    const starts = perPhase.map((p) => p.start);
    const ends = perPhase.map((p) => p.start + 1e6 * p.durationS);
    expect(new Set(starts).size).toBe(3);
    expect(start).toBe(Math.min(...starts));
    expect(start + 1e6 * durationS).toBeCloseTo(Math.max(...ends), 3);
  });

  it("make two dips of phases that do not overlap", () => {
    const events = eventsOf(standard, threePhases(sag(1, 1.2, 184), sag(1.3, 1.6, 161)), { seconds: 2.5 });
    expect(events.map((e) => e.phases)).toEqual([["L1"], ["L2"]]);
  });

  it("go on until every phase is past the hysteresis, also one that never fell below the threshold", () => {
    const event = only(eventsOf(standard, threePhases(sag(1, 1.2, 184), sag(1.1, 1.5, 209)), { seconds: 2.5 }));
    expect(event.phases).toEqual(["L1"]);
    expect(Math.abs(event.durationS - 0.5)).toBeLessThan(0.0034);
    expect(event.perPhase?.[0]?.durationS).toBeCloseTo(0.2, 5);
  });

  it("count how often a phase crossed", () => {
    const l1 = [...sag(1, 1.1, 184), ...sag(1.2, 1.3, 184), ...sag(1.4, 1.5, 161)];
    const event = only(eventsOf(standard, threePhases(l1, sag(0.95, 1.6, 200)), { seconds: 2.5 }));
    expect(event.perPhase?.map((p) => p.crossings)).toEqual([3, 1]);
    expect(event.perPhase?.[0]?.durationS).toBeCloseTo(0.5, 5);
    expect(event.perPhase?.[0]?.percent).toBeCloseTo(70, 6);
  });

  it("are interruptions while all phases are below 5 %, until one is at 7 %", () => {
    const l1 = sag(1, 2, 2.3);
    const l2 = sag(1.1, 2.2, 2.3);
    const l3: [number, number][] = [
      [1.2, 2.3],
      [1.5, 16],
      [1.6, 16.2],
      [2.1, 230],
    ];
    const events = eventsOf(standard, threePhases(l1, l2, l3), { seconds: 3 });
    expect(events.map((e) => e.kind)).toEqual(["dip", "interruption"]);
    const [dip, interruption] = events as [VoltageEvent, VoltageEvent];
    expect(dip.interrupted).toBe(true);
    expect(Math.abs(dip.durationS - 1.2)).toBeLessThan(0.0034);
    expect(interruption.phases).toEqual(["L1", "L2", "L3"]);
    expect(Math.abs(startOf(interruption) - 1.2)).toBeLessThan(0.0017);
    expect(Math.abs(interruption.durationS - 0.4)).toBeLessThan(0.0034);
    expect(interruption.percent).toBeCloseTo(1, 6);
  });

  it("are dips only while one phase keeps its voltage", () => {
    const events = eventsOf(standard, threePhases(sag(1, 2, 0), sag(1, 2, 0), sag(1, 2, 11.6)), { seconds: 3 });
    expect(events.map((e) => e.kind)).toEqual(["dip"]);
    expect(events[0]?.interrupted).toBeUndefined();
    expect(events[0]?.phases).toEqual(["L1", "L2", "L3"]);
  });

  it("use the voltages of the connection, and neither those between phases nor the neutral", () => {
    const channels = threePhases([]);
    const dead = (phase: "N" | "L12") => ({
      channel: { ...(channels[0] as DrivenChannel).channel, phase },
      degrees: 0,
      steps: [[0, 1] as const],
    });
    expect(eventsOf(standard, [...channels, dead("N"), dead("L12")], { seconds: 2 })).toHaveLength(0);
    const between = eventsOf(standard, [dead("L12")], { seconds: 2 });
    expect(between[0]?.reference).toBeCloseTo(230 * Math.sqrt(3), 9);
  });
});

describe("the sliding reference", () => {
  const sliding = [voltageEvents({ reference: "sliding" })];

  it("begins with the declared voltage and approaches the voltage with a time constant of one minute", () => {
    // From 230 V towards 220 V: after 60 s 63.2 % of the way (0.9967^300 = 0.371), so 223.7 V, and 90 % of it 201.3 V.
    const at = (seconds: number, volts: number) =>
      eventsOf(sliding, onePhase([0, 220], ...sag(seconds, seconds + 0.2, volts)), { seconds: seconds + 1 });
    const event = only(at(60, 201.2));
    expect(event.reference).toBeCloseTo(220 + 10 * 0.9967 ** 300, 1);
    expect(event.percent).toBeCloseTo((100 * 201.2) / (event.reference as number), 6);
    expect(at(60, 201.5)).toHaveLength(0);
    expect(only(at(1, 206.5)).reference).toBeCloseTo(220 + 10 * 0.9967 ** 5, 6);
  });

  it("holds still where samples are missing", () => {
    const steps = onePhase([0, 220], [30, Number.NaN], [31, 220], ...sag(60, 60.2, 180));
    const event = eventsOf(sliding, steps, { seconds: 61 }).find((e) => e.complete);
    // Windows of 0.2 s: 300 less the six that touch the missing second.
    expect(event?.reference).toBeCloseTo(220 + 10 * 0.9967 ** 294, 1);
  });

  it("holds still during an event", () => {
    const event = only(eventsOf(sliding, onePhase([1, 180], [61, 206], [62, 212], [63, 230]), { seconds: 65 }));
    expect(event.durationS).toBeCloseTo(61, 3);
  });

  it("does not move the threshold of interruptions", () => {
    // The reference is at 220.002 V after ten minutes; 5 % of 230 V is 11.5 V, of the reference 11.0 V.
    const steps = onePhase([0, 220], ...sag(600, 600.2, 11.2).slice(0, 1), [600.2, 220]);
    const events = eventsOf(sliding, steps, { seconds: 601 });
    expect(events.map((e) => e.kind)).toEqual(["dip", "interruption"]);
  });
});

describe("flags", () => {
  it("cover the event, and the basic windows that it falls into and no others", () => {
    const { setup } = drive(standard, onePhase(...sag(1.01, 1.21, 115)), { seconds: 3 });
    const flagged = (from: number, to: number) => setup.flags.touches(from * 10_000, to * 10_000);
    expect(flagged(1.01, 1.02)).toBe(true);
    expect(flagged(1.2, 1.21)).toBe(true);
    expect(flagged(0, 0.99)).toBe(false);
    expect(flagged(1.23, 3)).toBe(false);
    // A shallow dip ends a cycle earlier by its half-cycle values, and is marked whole all the same.
    const shallow = drive(standard, onePhase(...sag(1.01, 1.21, 0.89 * 230)), { seconds: 3 });
    expect(shallow.setup.flags.touches(12_001, 12_100)).toBe(true);
  });

  it("are complete when a window is closed", () => {
    // The dip begins two half cycles before the end of a window and ends one half cycle into the next.
    const seen: boolean[] = [];
    const watch = {
      id: "watch",
      clause: "",
      start: () => ({ window: (w: { flagged: boolean }) => seen.push(w.flagged) > 0, finish: () => ({}) }),
    };
    const steps = onePhase([0.38, 115], [0.41, 230], [0.96, 300], [0.98, 230]);
    drive([voltageEvents(), watch as unknown as Phenomenon], steps, { seconds: 1.5 });
    expect(seen).toEqual([false, true, true, false, true, false, false]);
  });
});

describe("events that the samples cut off", () => {
  it("say so at the start and at the end of the recording", () => {
    const [first, last] = eventsOf(standard, onePhase([0, 115], [0.5, 230], [1.5, 115]), { seconds: 2 });
    expect(first).toMatchObject({ complete: false, cutOff: { start: "recording" } });
    expect(startOf(first as VoltageEvent)).toBe(0);
    expect(first?.perPhase?.[0]?.start).toBe(first?.start);
    expect(first?.durationS).toBeCloseTo(0.5, 5);
    expect(last).toMatchObject({ complete: false, cutOff: { end: "recording" } });
    expect(last?.durationS).toBeCloseTo(0.5, 5);
  });

  it("become two at a gap", () => {
    const events = eventsOf(standard, onePhase([1, 115], [4, 230]), { seconds: 5, gaps: [2] });
    expect(events.map((e) => e.cutOff)).toEqual([{ end: "gap" }, { start: "gap" }]);
    expect(events.map((e) => e.complete)).toEqual([false, false]);
    expect(events[0]?.durationS).toBeCloseTo(1, 5);
    expect(startOf(events[1] as VoltageEvent)).toBe(3);
    expect(events[1]?.durationS).toBeCloseTo(1, 5);
  });

  it("become two where samples of one of their channels are missing", () => {
    const channels = threePhases(
      [
        [1, 115],
        [1.2, Number.NaN],
        [1.4, 115],
        [1.6, 230],
      ],
      [],
    );
    const events = eventsOf(standard, channels, { seconds: 2.5 });
    expect(events.map((e) => e.cutOff)).toEqual([{ end: "gap" }, { start: "gap" }]);
    expect(events[0]?.durationS).toBeCloseTo(0.2, 2);
    expect(events[1]?.durationS).toBeCloseTo(0.2, 2);
  });

  it("go on as a new event in the channels that still have samples", () => {
    const channels = threePhases(
      [
        [1, 115],
        [1.6, 230],
      ],
      [
        [1, 115],
        [1.3, Number.NaN],
      ],
    );
    const [first, second] = eventsOf(standard, channels, { seconds: 2.5 });
    expect(first).toMatchObject({ phases: ["L1", "L2"], cutOff: { end: "gap" } });
    expect(second).toMatchObject({ phases: ["L1"], complete: false, cutOff: { start: "gap" } });
    expect(startOf(second as VoltageEvent) + (second?.durationS ?? 0)).toBeCloseTo(1.6, 5);
  });

  it("last in every phase to the cut, also in one that was back for a time", () => {
    const channels = threePhases([...sag(1, 1.1, 115), [1.3, 115]], [[1, 150]]);
    const event = only(eventsOf(standard, channels, { seconds: 1.5 }));
    expect(event.perPhase?.map((p) => [p.phase, p.crossings, p.durationS])).toEqual([
      ["L1", 2, event.durationS],
      ["L2", 1, expect.closeTo(event.durationS, 2)],
    ]);
  });

  it("do not end because of a channel that had no part in them", () => {
    const event = only(eventsOf(standard, threePhases(sag(1, 1.5, 115), [[1.2, Number.NaN]]), { seconds: 2.5 }));
    expect(event).toMatchObject({ complete: true, phases: ["L1"] });
    expect(event.durationS).toBeCloseTo(0.5, 5);
  });

  it("last at least half a cycle", () => {
    const event = only(eventsOf(standard, onePhase(...sag(1.003, 1.012, 174.8)), { seconds: 2 }));
    expect(event.durationS).toBe(0.01);
  });
});

describe("the trace of an event", () => {
  it("holds Urms(1/2) from 0.1 s before it to 0.2 s after it, in the middle of each cycle", () => {
    const { trace } = only(eventsOf(standard, threePhases(sag(1, 1.1, 115)), { seconds: 2 }));
    const times = [...(trace?.times ?? [])];
    expect(times[0]).toBeGreaterThan(-0.13);
    expect(times[0]).toBeLessThan(-0.1 + 1e-9);
    expect(times.at(-1)).toBeGreaterThan(0.3 - 1e-9);
    expect(times.at(-1)).toBeLessThan(0.33);
    for (let i = 1; i < times.length; i++) expect((times[i] as number) - (times[i - 1] as number)).toBeCloseTo(0.01, 6);
    expect(trace?.channels.map((c) => c.phase)).toEqual(["L1", "L2", "L3"]);
    const at = (t: number) => times.findIndex((x) => Math.abs(x - t) < 1e-4);
    const [l1, l2] = trace?.channels ?? [];
    expect(l1?.values[at(-0.01)]).toBeCloseTo(230, 3);
    expect(l1?.values[at(0)]).toBeCloseTo(Math.sqrt((230 ** 2 + 115 ** 2) / 2), 3);
    expect(l1?.values[at(0.01)]).toBeCloseTo(115, 3);
    expect(l1?.values[at(0.11)]).toBeCloseTo(230, 3);
    expect(l2?.values.every((v) => Math.abs(v - 230) < 0.001)).toBe(true);
  });

  it("of a long event keeps its first and last second in full, is thinned out between, and loses no extreme", () => {
    const steps: [number, number][] = [
      [1, 180],
      [300, 100],
      [300.02, 180],
      [601, 230],
    ];
    const { trace } = only(eventsOf(standard, onePhase(...steps), { seconds: 602 }));
    const times = [...(trace?.times ?? [])];
    expect(times.length).toBeLessThan(540);
    const within = (from: number, to: number) => times.filter((t) => t > from && t < to).length;
    expect(within(0, 1)).toBeGreaterThanOrEqual(99);
    expect(within(599, 600)).toBeGreaterThanOrEqual(99);
    expect(within(1.2, 598.9)).toBeGreaterThan(100);
    const lowest = Math.min(...(trace?.channels[0]?.values ?? []));
    expect(lowest).toBeCloseTo(100, 2);
    const steady = times.slice(160, -160).map((t, i) => t - (times[159 + i] as number));
    expect(Math.max(...steady.slice(0, -1))).toBeCloseTo(Math.min(...steady.slice(0, -1)), 6);
  });
});

describe("very many events", () => {
  it("are found fast, and memory for their traces is bounded", () => {
    const steps = Array.from({ length: 10_000 }, (_, i) => sag(0.3 + 0.06 * i, 0.33 + 0.06 * i, i === 5000 ? 0 : 150));
    const channels = onePhase(...steps.flat());
    const levels = Float64Array.from({ length: 60_100 }, (_, k) => {
      const j = k - 30;
      return j >= 0 && j < 60_000 && j % 6 < 3 ? (Math.floor(j / 6) === 5000 ? 0 : 150) : 230;
    });
    const setup = setupFor(channels);
    const state = voltageEvents().start(setup);
    const half = {
      from: 0,
      period: 200,
      oneCycle: new Float64Array(1),
      halfCycle: new Float64Array(1),
      peak: new Float64Array(1),
    };
    const began = performance.now();
    for (let k = 0; k + 1 < levels.length; k++) {
      half.from = 100 * k;
      half.halfCycle[0] = levels[k] as number;
      half.oneCycle[0] = Math.hypot(levels[k] as number, levels[k + 1] as number) / Math.SQRT2;
      state.halfCycle?.(half);
    }
    const events = state.finish().events ?? [];
    expect(performance.now() - began).toBeLessThan(5000);
    const dips = events.filter((e) => e.kind === "dip");
    expect(dips).toHaveLength(10_000);
    expect(events.filter((e) => e.kind === "interruption")).toHaveLength(1);
    for (const dip of dips) expect(dip.durationS).toBeCloseTo(0.03, 5);
  });
});
