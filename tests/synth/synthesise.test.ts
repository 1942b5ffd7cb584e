import { describe, expect, it } from "vitest";
import { FrequencyCourse } from "../../src/synth/frequency-course.js";
import type { GivenScenario } from "../../src/synth/scenario.js";
import { synthesise } from "../../src/synth/synthesise.js";
import { farthest, rms, samplesOf, scenario, sineAt } from "./support.js";

const RATE = 6400;
const turn = (cycles: number, degrees = 0) => Math.sin(2 * Math.PI * cycles + (degrees * Math.PI) / 180);
const made = (given: Partial<GivenScenario>) => samplesOf(synthesise(scenario(given)));

describe("the samples are the closed forms that the scenario states", () => {
  it("three sines a third of a turn apart", async () => {
    const u = await made({ voltage: { volts: 230, degrees: 20 } });
    expect(Object.keys(u)).toEqual(["U L1", "U L2", "U L3"]);
    for (const [k, name] of ["U L1", "U L2", "U L3"].entries()) {
      const expected = (i: number) => 230 * Math.SQRT2 * turn((50 * i) / RATE, 20 - 120 * k);
      expect(farthest(u[name] as Float64Array, expected)).toBeLessThan(1e-9);
    }
  });

  it("phases by themselves, harmonics to order 60 and interharmonics, each on the phases it names", async () => {
    const u = await made({
      voltage: {
        phases: { L1: { volts: 231, degrees: 5 }, L2: { volts: 228, degrees: -117 }, L3: { volts: 233, degrees: 122 } },
        harmonics: [
          { order: 5, percent: 4, degrees: 170 },
          { order: 60, percent: 0.5, degrees: 33, phases: ["L2"] },
        ],
        interharmonics: [{ hertz: 183.3, percent: 1.5, degrees: 40, phases: ["L2", "L3"] }],
      },
    });
    const l2 = (i: number) => {
      const t = i / RATE;
      const fifth = 0.04 * turn(250 * t, 5 * -117 + 170);
      const sixtieth = 0.005 * turn(3000 * t, 60 * -117 + 33);
      const between = 0.015 * turn(183.3 * t, -117 + 40);
      return 228 * Math.SQRT2 * (turn(50 * t, -117) + fifth + sixtieth + between);
    };
    expect(farthest(u["U L2"] as Float64Array, l2)).toBeLessThan(1e-9);
    const l1 = (i: number) =>
      231 * Math.SQRT2 * (turn((50 * i) / RATE, 5) + 0.04 * turn((250 * i) / RATE, 5 * 5 + 170));
    expect(farthest(u["U L1"] as Float64Array, l1)).toBeLessThan(1e-9);
  });

  it("phase to phase: differences of the phases, √3 times as large", async () => {
    const u = await made({ connection: "delta", declaredVoltage: 400, voltage: { volts: 400 } });
    expect(Object.keys(u)).toEqual(["U L1-L2", "U L2-L3", "U L3-L1"]);
    const expected = (i: number) => 400 * Math.SQRT2 * turn((50 * i) / RATE, 30);
    expect(farthest(u["U L1-L2"] as Float64Array, expected)).toBeLessThan(1e-9);
    const sum = (i: number) => -(u["U L2-L3"]?.[i] as number) - (u["U L3-L1"]?.[i] as number);
    expect(farthest(u["U L1-L2"] as Float64Array, sum)).toBeLessThan(1e-9);
  });

  it("the frequency on straight lines between points: its integral in closed form, not a sum", async () => {
    const course = [
      { atS: 0.1, hertz: 49 },
      { atS: 0.5, hertz: 51.5 },
      { atS: 0.6, hertz: 51.5 },
      { atS: 0.9, hertz: 47 },
    ];
    // Simpson's rule is exact on straight lines; the corners lie on its nodes.
    const at = (t: number) => {
      if (t <= 0.1) return 49;
      if (t <= 0.5) return 49 + (2.5 / 0.4) * (t - 0.1);
      if (t <= 0.6) return 51.5;
      return t <= 0.9 ? 51.5 - 15 * (t - 0.6) : 47;
    };
    const cycles = new Float64Array(RATE + 1);
    for (let i = 0; i < RATE; i++) {
      const [a, b, c] = [i / RATE, (i + 0.5) / RATE, (i + 1) / RATE];
      cycles[i + 1] = (cycles[i] as number) + (at(a) + 4 * at(b) + at(c)) / 6 / RATE;
    }
    const u = await made({ frequency: course });
    const expected = (i: number) => 230 * Math.SQRT2 * turn(cycles[i] as number);
    expect(farthest(u["U L1"] as Float64Array, expected)).toBeLessThan(1e-8);
    expect(new FrequencyCourse({ frequency: course }).mean(0, 1)).toBeCloseTo(cycles[RATE] as number, 9);
  });

  it("currents that lag their voltage, with harmonics and steps, and their sum in the neutral", async () => {
    const all = await made({
      currents: {
        phases: {
          L1: { amperes: 10, lagDegrees: 30 },
          L2: { amperes: 12, lagDegrees: 0 },
          L3: { amperes: 8, lagDegrees: -15 },
        },
        harmonics: [{ order: 3, percent: 20, degrees: 90 }],
        steps: [{ atS: 0.5, toPercent: 250, phases: ["L1"] }],
        neutral: true,
      },
    });
    const i1 = (i: number) => {
      const cycles = (50 * i) / RATE;
      const size = i / RATE < 0.5 ? 10 : 25;
      return size * Math.SQRT2 * (turn(cycles, -30) + 0.2 * turn(3 * cycles, -90 + 90));
    };
    expect(farthest(all["I L1"] as Float64Array, i1)).toBeLessThan(1e-10);
    const sum = (i: number) => ["I L1", "I L2", "I L3"].reduce((total, name) => total + (all[name]?.[i] as number), 0);
    expect(farthest(all["I N"] as Float64Array, sum)).toBeLessThan(1e-10);
    expect(rms(all["I N"] as Float64Array)).toBeGreaterThan(5);
  });
});

describe("what changes in the course of time", () => {
  it("steps, dips, swells and interruptions to the sample, whole wave and r.m.s. as stated", async () => {
    const u = await made({
      voltage: { volts: 236, harmonics: [{ order: 5, percent: 6 }], steps: [{ atS: 0.4, toPercent: 95 }] },
      dips: [{ atS: 0.1, durationS: 0.1, residualPercent: 40, phases: ["L1"] }],
      swells: [{ atS: 0.6, durationS: 0.1, percent: 120, phases: ["L1", "L3"] }],
      interruptions: [{ atS: 0.8, durationS: 0.04, residualPercent: 2 }],
    });
    const [l1, l2] = [u["U L1"] as Float64Array, u["U L2"] as Float64Array];
    const whole = 236 * Math.hypot(1, 0.06);
    const at = (s: number) => Math.round(s * RATE);
    expect(rms(l1, 0, at(0.1))).toBeCloseTo(whole, 9);
    expect(rms(l1, at(0.1), at(0.2))).toBeCloseTo(92, 9);
    expect(rms(l2, at(0.1), at(0.2))).toBeCloseTo(whole, 9);
    expect(rms(l1, at(0.2), at(0.4))).toBeCloseTo(whole, 9);
    expect(rms(l1, at(0.4), at(0.6))).toBeCloseTo(0.95 * whole, 9);
    expect(rms(l1, at(0.6), at(0.7))).toBeCloseTo(276, 9);
    expect(rms(l2, at(0.8), at(0.84))).toBeCloseTo(4.6, 9);
    expect(rms(l2, at(0.84))).toBeCloseTo(0.95 * whole, 9);
    // A quarter of a cycle on, away from the zero crossing: the very sample at which the dip begins and the one before.
    const shifted = await made({ dips: [{ atS: 0.105, durationS: 0.1, residualPercent: 50, phases: ["L1"] }] });
    const peak = 230 * Math.SQRT2;
    expect(shifted["U L1"]?.[at(0.105)]).toBeCloseTo(0.5 * peak, 9);
    expect(shifted["U L1"]?.[at(0.105) - 1]).toBeCloseTo(peak * turn(50 * (0.105 - 1 / RATE)), 9);
    expect(shifted["U L1"]?.[at(0.205)]).toBeCloseTo(peak, 9);
  });

  it("of several steps the last one before a time holds, whatever their order in the scenario", async () => {
    const steps = [
      { atS: 0.6, toPercent: 90 },
      { atS: 0.2, toPercent: 110 },
      { atS: 0.4, toPercent: 95, phases: ["L2" as const] },
    ];
    const u = await made({ voltage: { volts: 200, steps } });
    const fifth = RATE / 5;
    const levels = (name: string) =>
      [0, 1, 2, 3].map((k) => rms(u[name] as Float64Array, k * fifth, (k + 1) * fifth).toFixed(6));
    expect(levels("U L1")).toEqual(["200.000000", "220.000000", "220.000000", "180.000000"]);
    expect(levels("U L2")).toEqual(["200.000000", "220.000000", "190.000000", "180.000000"]);
  });

  it("follows one dip by the next without a sample between (two stages)", async () => {
    const u = await made({
      dips: [
        { atS: 0.3, durationS: 0.1, residualPercent: 30 },
        { atS: 0.4, durationS: 0.1, residualPercent: 70 },
      ],
    });
    expect(rms(u["U L2"] as Float64Array, 0.3 * RATE, 0.4 * RATE)).toBeCloseTo(69, 9);
    expect(rms(u["U L2"] as Float64Array, 0.4 * RATE, 0.5 * RATE)).toBeCloseTo(161, 9);
  });

  it("modulation of the whole wave between its times, resting during a dip", async () => {
    const u = await made({
      modulation: [{ shape: "sinusoidal", hertz: 8.8, percent: 10, fromS: 0.25, toS: 0.75, phases: ["L1"] }],
      dips: [{ atS: 0.5, durationS: 0.1, residualPercent: 60 }],
    });
    const expected = (i: number) => {
      const t = i / RATE;
      const modulated = t >= 0.25 && t < 0.75 && !(t >= 0.5 && t < 0.6);
      const factor = modulated ? 1 + 0.05 * turn(8.8 * (t - 0.25)) : t >= 0.5 && t < 0.6 ? 0.6 : 1;
      return 230 * Math.SQRT2 * factor * turn(50 * t);
    };
    expect(farthest(u["U L1"] as Float64Array, expected)).toBeLessThan(1e-9);
    const square = await made({ modulation: [{ shape: "rectangular", hertz: 4, percent: 2 }] });
    expect(farthest(square["U L3"] as Float64Array, squareWave)).toBeLessThan(1e-9);
  });
});

function squareWave(i: number): number {
  const level = ((4 * i) / RATE) % 1 < 0.5 ? 1.01 : 0.99;
  return 230 * Math.SQRT2 * level * turn((50 * i) / RATE, -240);
}

describe("noise and quantisation", () => {
  it("noise has the stated size and a normal spread, is the same for the same seed and differs by seed and channel", async () => {
    const given = (seed: number): Partial<GivenScenario> => ({ durationS: 10, noise: { voltagePercent: 1, seed } });
    const clean = await made({ durationS: 10 });
    const noisy = await made(given(5));
    const noise = (noisy["U L1"] as Float64Array).map((v, i) => v - (clean["U L1"]?.[i] as number));
    // Of 64000 samples the r.m.s. scatters by 0.3 %, the shares by 0.2 %: limits at four times that.
    expect(rms(noise)).toBeGreaterThan(2.3 * 0.988);
    expect(rms(noise)).toBeLessThan(2.3 * 1.012);
    const within = (limit: number) => noise.filter((v) => Math.abs(v) < limit * 2.3).length / noise.length;
    expect(Math.abs(within(1) - 0.6827)).toBeLessThan(0.008);
    expect(Math.abs(within(2) - 0.9545)).toBeLessThan(0.004);
    expect(Math.abs(noise.reduce((a, b) => a + b) / noise.length)).toBeLessThan(4 * (2.3 / Math.sqrt(64000)));
    expect((await made(given(5)))["U L1"]).toEqual(noisy["U L1"]);
    const other = (await made(given(6)))["U L1"] as Float64Array;
    const products = other.map((v, i) => (v - (clean["U L1"]?.[i] as number)) * (noise[i] as number));
    expect(Math.abs(products.reduce((a, b) => a + b)) / 64000 / 2.3 ** 2).toBeLessThan(4 / Math.sqrt(64000));
    const l2 = (noisy["U L2"] as Float64Array).map(
      (v, i) => (v - (clean["U L2"]?.[i] as number)) * (noise[i] as number),
    );
    expect(Math.abs(l2.reduce((a, b) => a + b)) / 64000 / 2.3 ** 2).toBeLessThan(4 / Math.sqrt(64000));
  });

  it("quantisation puts each sample on the nearest whole step", async () => {
    const exact = await made({ voltage: { volts: 231.7 } });
    const coarse = await made({ voltage: { volts: 231.7 }, quantisation: { volts: 0.25 } });
    const l1 = coarse["U L1"] as Float64Array;
    expect(l1.every((v) => Number.isInteger(v / 0.25))).toBe(true);
    expect(farthest(l1, (i) => exact["U L1"]?.[i] as number)).toBeLessThanOrEqual(0.125 + 1e-12);
    expect(farthest(l1, (i) => exact["U L1"]?.[i] as number)).toBeGreaterThan(0.12);
  });

  it("no sample lies beyond the stated bound, and the bound is near", async () => {
    const source = synthesise(
      scenario({
        voltage: {
          volts: 230,
          harmonics: [{ order: 3, percent: 10, degrees: 180 }],
          steps: [{ atS: 0.2, toPercent: 110 }],
        },
        modulation: [{ shape: "rectangular", hertz: 5, percent: 10, fromS: 0.5 }],
        noise: { voltagePercent: 0.5, seed: 1 },
      }),
    );
    const u = await samplesOf(source);
    const peak = farthest(u["U L1"] as Float64Array, () => 0);
    expect(source.bounds[0]).toBeGreaterThan(peak);
    expect(source.bounds[0]).toBeLessThan(1.05 * peak);
  });
});

it("gives the same samples whatever the length of the blocks", async () => {
  const rich = scenario({
    frequency: [
      { atS: 0, hertz: 49.7 },
      { atS: 1, hertz: 50.4 },
    ],
    voltage: { volts: 229, harmonics: [{ order: 7, percent: 3 }], interharmonics: [{ hertz: 61.8, percent: 1 }] },
    modulation: [{ shape: "rectangular", hertz: 7.3, percent: 3 }],
    dips: [{ atS: 0.313, durationS: 0.2171, residualPercent: 20, phases: ["L2"] }],
    currents: { amperes: 5 },
    noise: { voltagePercent: 1, currentPercent: 1, seed: 9 },
    quantisation: { volts: 0.01 },
  });
  const whole = await samplesOf(synthesise(rich, 100_000));
  for (const blockLength of [1, 37, 4096]) expect(await samplesOf(synthesise(rich, blockLength))).toEqual(whole);
});

it("finds in its samples what the defining sums of Fourier find", async () => {
  const u = await made({ voltage: { volts: 230, harmonics: [{ order: 11, percent: 2.5, degrees: 77 }] } });
  const eleventh = sineAt(u["U L1"] as Float64Array, RATE, 550);
  expect(eleventh.rms).toBeCloseTo(5.75, 9);
  expect(eleventh.degrees).toBeCloseTo(77, 7);
});
