import { describe, expect, it } from "vitest";
import type { GivenScenario } from "../../src/synth/scenario.js";
import { meanSquare } from "../../src/synth/signal-truth.js";
import { synthesise } from "../../src/synth/synthesise.js";
import { truthOf } from "../../src/synth/truth.js";
import { rms, samplesOf, scenario, sineAt } from "./support.js";

const RATE = 6400;

async function both(given: Partial<GivenScenario>) {
  const checked = scenario(given);
  const truth = truthOf(checked);
  return { truth, samples: await samplesOf(synthesise(checked)) };
}

/** Everything that changes does so at whole cycles, so that sums over a span are exact. */
const RICH: Partial<GivenScenario> = {
  voltage: {
    volts: 234,
    degrees: 12,
    unbalance: { negativePercent: 2, negativeDegrees: 40, zeroPercent: 1.5, zeroDegrees: -100 },
    harmonics: [
      { order: 3, percent: 2, degrees: 20 },
      { order: 5, percent: 4, degrees: 170 },
      { order: 5, percent: 1, degrees: 80, phases: ["L2"] },
      { order: 44, percent: 1.2 },
    ],
    interharmonics: [{ hertz: 175, percent: 1.1, degrees: 8 }],
    steps: [{ atS: 0.2, toPercent: 96 }],
  },
  dips: [{ atS: 0.4, durationS: 0.2, residualPercent: 55, phases: ["L1", "L3"] }],
  swells: [{ atS: 0.8, durationS: 0.2, percent: 118, phases: ["L2"] }],
  currents: {
    amperes: 16,
    lagDegrees: 25,
    harmonics: [
      { order: 3, percent: 15, degrees: 30 },
      { order: 5, percent: 10, degrees: 100 },
    ],
    steps: [{ atS: 0.6, toPercent: 50, phases: ["L2"] }],
    neutral: true,
  },
};

describe.each([
  ["star", RICH],
  [
    "delta",
    {
      ...RICH,
      connection: "delta",
      declaredVoltage: 400,
      voltage: { ...RICH.voltage, volts: 405, unbalance: { negativePercent: 2 } },
    },
  ],
] as const)("truth of a rich scenario (%s) against sums over its samples", (connection, given) => {
  it("r.m.s., fundamental, harmonics, interharmonics and distortion of every channel in every span", async () => {
    const { truth, samples } = await both(given as Partial<GivenScenario>);
    expect(truth.spans.map(({ fromS, toS }) => [fromS, toS])).toEqual([
      [0, 0.2],
      [0.2, 0.4],
      [0.4, 0.6],
      [0.6, 0.8],
      [0.8, 1],
    ]);
    expect(truth.channels.map(({ name }) => name)).toEqual(Object.keys(samples));
    let compared = 0;
    for (const { fromS, toS, channels } of truth.spans) {
      for (const [name, own] of Object.entries(channels)) {
        const signal = samples[name] as Float64Array;
        const at = (hertz: number) => sineAt(signal, RATE, hertz, fromS * RATE, toS * RATE);
        expect(rms(signal, fromS * RATE, toS * RATE)).toBeCloseTo(own.rms, 8);
        expect(at(50).rms).toBeCloseTo(own.fundamentalRms, 8);
        if (own.thdPercent === null) {
          expect(own.fundamentalRms).toBeLessThan(1e-6);
          continue;
        }
        expect(Math.cos(((at(50).degrees - own.fundamentalDegrees) * Math.PI) / 180)).toBeCloseTo(1, 9);
        const percent = (hertz: number) => (100 * at(hertz).rms) / at(50).rms;
        for (const [order, value] of Object.entries(own.harmonicsPercent)) {
          expect(percent(50 * Number(order))).toBeCloseTo(value as number, 7);
          compared++;
        }
        for (const [hertz, value] of Object.entries(own.interharmonicsPercentByHz ?? {})) {
          expect(percent(Number(hertz))).toBeCloseTo(value as number, 7);
        }
        const orders = Array.from({ length: 39 }, (_, i) => percent(50 * (i + 2)));
        expect(Math.hypot(...orders)).toBeCloseTo(own.thdPercent, 7);
      }
    }
    expect(compared).toBeGreaterThan(40);
  });

  it("unbalance by symmetrical components of the summed fundamentals", async () => {
    const { truth, samples } = await both(given as Partial<GivenScenario>);
    for (const span of truth.spans) {
      const phasors = Object.values(samples)
        .slice(0, 3)
        .map((signal) => sineAt(signal, RATE, 50, span.fromS * RATE, span.toS * RATE));
      const component = (turn: number) => {
        const parts = phasors.map(
          ({ rms: size, degrees }, k) => [size, ((degrees + k * turn) * Math.PI) / 180] as const,
        );
        return Math.hypot(
          parts.reduce((total, [size, angle]) => total + size * Math.cos(angle), 0),
          parts.reduce((total, [size, angle]) => total + size * Math.sin(angle), 0),
        );
      };
      expect((100 * component(-120)) / component(120)).toBeCloseTo(span.u2Percent as number, 6);
      if (connection === "star") expect((100 * component(0)) / component(120)).toBeCloseTo(span.u0Percent as number, 6);
      else expect(span.u0Percent).toBeUndefined();
    }
    if (connection === "star") {
      expect(truth.spans[0]?.u2Percent).toBeCloseTo(2, 9);
      expect(truth.spans[0]?.u0Percent).toBeCloseTo(1.5, 9);
    } else expect(truth.spans[1]?.u2Percent).toBeCloseTo(2, 9);
  });
});

it("power is the mean of u·i, reactive power that of the fundamental, apparent power the product of the r.m.s. values", async () => {
  const { truth, samples } = await both(RICH);
  for (const { fromS, toS, power } of truth.spans) {
    expect(power).toHaveLength(3);
    for (const { phase, activeW, reactiveVar, apparentVA } of power ?? []) {
      const [u, i] = [samples[`U ${phase}`] as Float64Array, samples[`I ${phase}`] as Float64Array];
      const [from, to] = [fromS * RATE, toS * RATE];
      let product = 0;
      for (let k = from; k < to; k++) product += (u[k] as number) * (i[k] as number);
      expect(product / (to - from)).toBeCloseTo(activeW, 6);
      const [u1, i1] = [sineAt(u, RATE, 50, from, to), sineAt(i, RATE, 50, from, to)];
      expect(u1.rms * i1.rms * Math.sin(((u1.degrees - i1.degrees) * Math.PI) / 180)).toBeCloseTo(reactiveVar, 6);
      expect(rms(u, from, to) * rms(i, from, to)).toBeCloseTo(apparentVA, 6);
    }
  }
  // 234 V is the positive sequence, so the phases carry 16 A at about 234 V and 25° lag.
  expect(truth.spans[0]?.power?.[0]?.reactiveVar).toBeGreaterThan(0);
});

it("lists events as injected, on the clock of the recorder, which may be fast", async () => {
  const { truth } = await both({
    clockOffsetS: 2.5,
    dips: [{ atS: 0.25, durationS: 0.1, residualPercent: 40, phases: ["L2"] }],
    interruptions: [{ atS: 0.5, durationS: 0.3 }],
  });
  expect(truth.recording.start).toBe("2027-03-04T12:00:02.500Z");
  expect(truth.recording.clockOffsetS).toBe(2.5);
  expect(truth.channels.map(({ unit }) => unit)).toEqual(["V", "V", "V"]);
  expect(truth.events).toMatchObject([
    { kind: "dip", phases: ["L2"], start: "2027-03-04T12:00:02.750Z", startS: 0.25, durationS: 0.1, extremeV: 92 },
    { kind: "interruption", phases: ["L1", "L2", "L3"], start: "2027-03-04T12:00:03Z", durationS: 0.3, extremeV: 0 },
  ]);
  expect(truth.spans.at(-2)?.channels["U L1"]).toMatchObject({ rms: 0, thdPercent: null });
  expect(truth.spans.at(-2)?.u2Percent).toBeNull();
});

it("ten-minute values: r.m.s. with modulation and events, mean frequency, flags, for whole intervals of the clock only", async () => {
  const rate = 1000;
  const { truth, samples } = await both({
    start: "2027-03-04T11:59:00Z",
    durationS: 1290,
    samplesPerSecond: rate,
    connection: "single",
    frequency: [
      { atS: 60, hertz: 49.9 },
      { atS: 660, hertz: 50.3 },
    ],
    voltage: { volts: 230, steps: [{ atS: 300, toPercent: 90 }] },
    modulation: [
      { shape: "sinusoidal", hertz: 0.0021, percent: 8, fromS: 100, toS: 600 },
      { shape: "rectangular", hertz: 0.0013, percent: 5, fromS: 700 },
    ],
    dips: [{ atS: 70, durationS: 20, residualPercent: 30 }],
  });
  expect(truth.tenMinutes.map(({ start, flagged }) => [start, flagged])).toEqual([
    ["2027-03-04T12:00:00Z", true],
    ["2027-03-04T12:10:00Z", false],
  ]);
  for (const [k, { rms: expected, frequencyHz }] of truth.tenMinutes.entries()) {
    const [from, to] = [(60 + 600 * k) * rate, (660 + 600 * k) * rate];
    // Parts of a cycle at the ends: 10 ms of 600 s.
    expect(rms(samples["U L1"] as Float64Array, from, to) / (expected["U L1"] as number)).toBeCloseTo(1, 4);
    expect(frequencyHz).toBeCloseTo(k === 0 ? 50.1 : 50.3, 9);
  }
});

it("mean square of a modulation over any stretch of it, against a sum over a million points", () => {
  for (const shape of ["sinusoidal", "rectangular"] as const) {
    const modulation = { shape, hertz: 0.7, percent: 30, fromS: 0.3 };
    for (const [from, to] of [
      [0.3, 0.9],
      [1.1, 7.77],
      [5, 5.2],
    ] as const) {
      let total = 0;
      const points = 1_000_000;
      for (let i = 0; i < points; i++) {
        const part = (0.7 * (from + ((i + 0.5) / points) * (to - from) - 0.3)) % 1;
        const level = shape === "sinusoidal" ? Math.sin(2 * Math.PI * part) : part < 0.5 ? 1 : -1;
        total += (1 + 0.15 * level) ** 2;
      }
      expect(meanSquare(modulation, from, to)).toBeCloseTo(total / points, 5);
    }
  }
});
