import { describe, expect, it } from "vitest";
import { power } from "../../../src/analysis/waveform/power.js";
import { HOUR, MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { current, type Signal, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one, POINT } from "./support.js";

const WINDOW = SECOND / 5;
const F = 49.87;
const TURN = Math.PI / 180;

/** Angles in degrees of three phases. */
const ANGLES = [0, -120, 120];
const PHASES = ["L1", "L2", "L3"] as const;

function star(
  voltages: readonly Signal[],
  currents: readonly Signal[],
  options = { samplesPerSecond: 6400, seconds: 2 },
) {
  return sampled(
    [
      ...PHASES.map((p, i) => [voltage(p), voltages[i] as Signal] as const),
      ...PHASES.map((p, i) => [current(p), currents[i] as Signal] as const),
    ],
    options,
  );
}

describe("power of three phases", () => {
  it("balanced and sinusoidal is three times that of a phase, in all definitions", async () => {
    const source = star(
      ANGLES.map((a) => sines([230, F, a])),
      ANGLES.map((a) => sines([10, F, a - 25])),
    );
    const { series, remarks } = await measured(source, {}, [power]);
    const [p, q, s] = [6900 * Math.cos(25 * TURN), 6900 * Math.sin(25 * TURN), 6900];
    for (const [quantity, value] of [
      ["active-power", p],
      ["reactive-power", q],
      ["apparent-power", s],
      ["fundamental-active-power", p],
      ["fundamental-apparent-power", s],
      ["nonactive-power", q],
      ["power-factor", p / s],
      ["displacement-factor", p / s],
    ] as const) {
      const system = one(series, { quantity, phase: "system" }, WINDOW).values;
      expect(farthest(system, value) / value).toBeLessThan(1e-4);
      const share = quantity.endsWith("factor") ? 1 : 1 / 3;
      expect(farthest(one(series, { quantity, phase: "L2" }, WINDOW).values, value * share) / value).toBeLessThan(1e-4);
    }
    for (const quantity of [
      "current-distortion-power",
      "voltage-distortion-power",
      "harmonic-apparent-power",
    ] as const) {
      expect(farthest(one(series, { quantity, phase: "system" }, WINDOW).values, 0)).toBeLessThan(0.1 * s);
    }
    expect(remarks).toHaveLength(1);
  });

  /**
   * Closed form by IEEE 1459-2010, 3.2.2.8: one phase of three carries 30 A, the neutral too: Ie² = (30² + 30²)/3, and
   * with balanced voltages Ue = 230 V; S = 3·Ue·Ie, PF = P/S = 1/√6.
   */
  it("with one phase loaded has the effective apparent power of the standard", async () => {
    const source = star(
      ANGLES.map((a) => sines([230, F, a])),
      [sines([30, F]), () => 0, () => 0],
    );
    const { series } = await measured(source, {}, [power]);
    const apparent = 3 * 230 * Math.sqrt((30 ** 2 + 30 ** 2) / 3);
    expect(
      farthest(one(series, { quantity: "apparent-power", phase: "system" }, WINDOW).values, apparent),
    ).toBeLessThan(0.5);
    const factor = one(series, { quantity: "power-factor", phase: "system" }, WINDOW);
    expect(farthest(factor.values, 1 / Math.sqrt(6))).toBeLessThan(1e-4);
    // All is sinusoidal, the neutral's current, too.
    const distortion = one(series, { quantity: "current-distortion-power", phase: "system" }, WINDOW);
    expect(farthest(distortion.values, 0)).toBeLessThan(0.005 * apparent);
    // The positive sequence is a third of the current, in phase with its voltage.
    const fundamental = one(series, { quantity: "fundamental-active-power", phase: "system" }, WINDOW);
    expect(farthest(fundamental.values, 3 * 230 * 10)).toBeLessThan(0.5);
    expect(farthest(one(series, { quantity: "displacement-factor", phase: "system" }, WINDOW).values, 1)).toBeLessThan(
      1e-4,
    );
  });

  /** IEEE 1459-2010, 3.2.2.8: Ue² = (3·ΣUa² + ΣUab²)/18, here with a zero sequence in the voltages. */
  it("counts a zero sequence of the voltages as the standard does", async () => {
    const rms = [240, 225, 235];
    const source = star(
      ANGLES.map((a, i) => sines([rms[i] as number, F, a])),
      ANGLES.map((a) => sines([10, F, a])),
    );
    const { series } = await measured(source, {}, [power]);
    const [a, b, c] = rms as [number, number, number];
    // Between two phases 120° apart: Uab² = Ua² + Ub² + Ua·Ub.
    const between = 2 * (a * a + b * b + c * c) + a * b + b * c + c * a;
    const apparent = 3 * Math.sqrt((3 * (a * a + b * b + c * c) + between) / 18) * 10;
    expect(
      farthest(one(series, { quantity: "apparent-power", phase: "system" }, WINDOW).values, apparent),
    ).toBeLessThan(0.05);
  });

  it("takes the neutral's current as measured where there is a channel for it", async () => {
    const source = sampled(
      [
        ...PHASES.map((p, i) => [voltage(p), sines([230, F, ANGLES[i] as number])] as const),
        ...PHASES.map((p, i) => [current(p), sines([10, F, ANGLES[i] as number])] as const),
        [current("N"), sines([6, F])],
      ],
      { samplesPerSecond: 6400, seconds: 2 },
    );
    const { series } = await measured(source, {}, [power]);
    const apparent = 3 * 230 * Math.sqrt((3 * 100 + 36) / 3);
    expect(
      farthest(one(series, { quantity: "apparent-power", phase: "system" }, WINDOW).values, apparent),
    ).toBeLessThan(0.5);
  });

  it.each([
    ["three currents", PHASES],
    ["two currents", ["L1", "L3"] as const],
  ])("of a three-wire supply comes from phase-to-phase voltages and %s", async (_, measuredCurrents) => {
    const phases = ANGLES.map((a) => sines([230, F, a], [5, 5 * F, 5 * a]));
    const currents = ANGLES.map((a) => sines([20, F, a - 40], [4, 5 * F, 5 * a + 10]));
    const between = (a: number, b: number) => (t: number) => (phases[a]?.(t) ?? 0) - (phases[b]?.(t) ?? 0);
    const source = sampled(
      [
        [voltage("L12"), between(0, 1)],
        [voltage("L23"), between(1, 2)],
        [voltage("L31"), between(2, 0)],
        ...measuredCurrents.map((p) => [current(p), currents[PHASES.indexOf(p)] as Signal] as const),
      ],
      { samplesPerSecond: 10240, seconds: 2 },
    );
    const delta = { ...POINT, connection: "delta", declaredVoltage: 400 } as const;
    const { series } = await measured(source, {}, [power], delta);
    const value = (quantity: "active-power" | "reactive-power" | "apparent-power") =>
      one(series, { quantity, phase: "system" }, WINDOW).values;
    const p = 3 * (230 * 20 * Math.cos(40 * TURN) + 5 * 4 * Math.cos(10 * TURN));
    expect(farthest(value("active-power"), p) / p).toBeLessThan(1e-4);
    expect(farthest(value("reactive-power"), 3 * 230 * 20 * Math.sin(40 * TURN)) / p).toBeLessThan(1e-4);
    expect(farthest(value("apparent-power"), 3 * Math.hypot(230, 5) * Math.hypot(20, 4)) / p).toBeLessThan(1e-4);
    expect(series.every((s) => s.phase === "system")).toBe(true);
  });

  it("puts channels with a skew at the same instant", async () => {
    for (const phases of [["L1"], PHASES] as const) {
      const source = sampled(
        [
          ...phases.map((p, i) => [voltage(p), sines([230, F, ANGLES[i] as number])] as const),
          ...phases.map(
            (p, i) => [current(p, 90e-6), sines([10, F, (ANGLES[i] as number) - 30], [3, 7 * F, 50])] as const,
          ),
        ],
        { samplesPerSecond: 10240, seconds: 2 },
      );
      const { series } = await measured(source, {}, [power]);
      const value = (quantity: "active-power" | "reactive-power") =>
        one(series, { quantity, phase: "L1" }, WINDOW).values;
      expect(farthest(value("active-power"), 2300 * Math.cos(30 * TURN))).toBeLessThan(0.05);
      expect(farthest(value("reactive-power"), 1150)).toBeLessThan(0.05);
    }
  });

  it("has no factor without load, and says what power needs", async () => {
    const dead = sampled(
      [
        [voltage("L1"), sines([230, F])],
        [current("L1"), () => 0],
      ],
      { samplesPerSecond: 6400, seconds: 2 },
    );
    const { series } = await measured(dead, {}, [power]);
    const factor = one(series, { quantity: "power-factor" }, WINDOW);
    expect(factor.values.every(Number.isNaN)).toBe(true);
    expect(factor.coverage.every((c) => c === 0)).toBe(true);
    expect(farthest(one(series, { quantity: "active-power" }, WINDOW).values, 0)).toBe(0);

    const elsewhere = sampled(
      [
        [voltage("L1"), sines([230, F])],
        [current("L2"), sines([10, F])],
      ],
      { samplesPerSecond: 6400, seconds: 1 },
    );
    expect((await measured(elsewhere, {}, [power])).unavailable).toHaveLength(1);
  });
});

describe("energy", () => {
  it("counts import and export apart, over ten minutes of the clock", async () => {
    // 2300 W towards the load for 200 s of the ten minutes, then 1150 W back.
    const back = scaled(scaled(sines([10, F]), 201, 700, -0.5), 700, 800, 0);
    const source = sampled(
      [
        [voltage("L1"), sines([230, F])],
        [current("L1"), back],
      ],
      { samplesPerSecond: 2000, seconds: 603, start: START - SECOND },
    );
    const { series } = await measured(source, {}, [power]);
    const energy = (quantity: "energy-import" | "energy-export") => {
      const s = one(series, { quantity, phase: "L1" }, 10 * MINUTE);
      expect(s.unit).toBe("Wh");
      return s.values.subarray(s.starts.indexOf(START - 10 * MINUTE));
    };
    const hours = HOUR / SECOND;
    expect(energy("energy-import")[1]).toBeCloseTo((2300 * 200) / hours, 0);
    expect(energy("energy-export")[1]).toBeCloseTo((1150 * 400) / hours, 0);
    // Of the ten minutes before, only their last second was recorded.
    expect(energy("energy-import")[0]).toBeLessThan(2300 / hours);
    expect(energy("energy-import")[0]).toBeGreaterThan((0.75 * 2300) / hours);
  });
});
