import { describe, expect, it } from "vitest";
import { symmetricalComponents } from "../../../src/analysis/waveform/phasor.js";
import { unbalance } from "../../../src/analysis/waveform/unbalance.js";
import { SECOND } from "../../../src/recording/time.js";
import { sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one, POINT } from "./support.js";

const WINDOW = SECOND / 5;
const F = 49.87;

/** r.m.s. and angle in degrees of the voltages on L1, L2, L3 or L12, L23, L31. */
function supply(
  phases: readonly ["L1" | "L12", "L2" | "L23", "L3" | "L31"],
  phasors: readonly (readonly [number, number])[],
) {
  return sampled(
    phases.map((p, i) => {
      const [rms, degrees] = phasors[i] as readonly [number, number];
      return [voltage(p), sines([rms, F, degrees], [rms / 20, 5 * F, 5 * degrees + i])] as const;
    }),
    { samplesPerSecond: 10240, seconds: 2 },
  );
}

describe("unbalance", () => {
  /** Worked numbers of the same phasors, by symmetrical components: u2 = 0.67340 %, u0 = 1.83693 %. */
  it("is |U2|/|U1| and |U0|/|U1| of the fundamentals, harmonics left aside", async () => {
    const source = supply(
      ["L1", "L2", "L3"],
      [
        [230, 0],
        [225, -121],
        [235, 119],
      ],
    );
    const { series } = await measured(source, {}, [unbalance]);
    const u2 = one(series, { quantity: "negative-sequence-unbalance" }, WINDOW);
    const u0 = one(series, { quantity: "zero-sequence-unbalance" }, WINDOW);
    expect(u2.values.length).toBeGreaterThan(7);
    expect(farthest(u2.values, 0.6734)).toBeLessThan(1e-4);
    expect(farthest(u0.values, 1.83693)).toBeLessThan(1e-4);
  });

  /** Public voltage-unbalance calculator, example 200/205/220 V; u2 by the β formula of IEC 61000-4-30: 5.84145 %. */
  it("comes from phase-to-phase voltages as well, without u0", async () => {
    // A triangle of 200, 205 and 220 V: the angles follow from the law of cosines.
    const [a, b, c] = [200, 205, 220];
    const inner = (x: number, y: number, opposite: number) =>
      (Math.acos((x * x + y * y - opposite * opposite) / (2 * x * y)) * 180) / Math.PI;
    const source = supply(
      ["L12", "L23", "L31"],
      [
        [a, 0],
        [b, -(180 - inner(a, b, c))],
        [c, 180 - inner(c, a, b)],
      ],
    );
    const delta = { ...POINT, connection: "delta", declaredVoltage: 210 } as const;
    const { series } = await measured(source, {}, [unbalance], delta);
    expect(new Set(series.map((s) => s.quantity))).toEqual(new Set(["negative-sequence-unbalance"]));
    expect(farthest(one(series, {}, WINDOW).values, 5.84145)).toBeLessThan(1e-4);
  });

  it("is withheld, with the reason, where the phases turn the wrong way round", async () => {
    const source = supply(
      ["L1", "L2", "L3"],
      [
        [230, 0],
        [230, 120],
        [230, -120],
      ],
    );
    const { series, unavailable, remarks } = await measured(source, {}, [unbalance]);
    expect(series).toEqual([]);
    expect(unavailable.map((u) => u.quantity)).toEqual(["negative-sequence-unbalance", "zero-sequence-unbalance"]);
    expect(remarks.join()).toContain("L1, L3, L2");
  });

  it("has no value while the supply is interrupted", async () => {
    const signals = [0, -120, 120].map((degrees) => scaled(sines([230, 50, degrees]), 1, 3, 0.001));
    const source = sampled(
      (["L1", "L2", "L3"] as const).map((p, i) => [voltage(p), signals[i] as (t: number) => number] as const),
      { samplesPerSecond: 6400, seconds: 4 },
    );
    const { series } = await measured(source, {}, [unbalance]);
    const u2 = one(series, { quantity: "negative-sequence-unbalance" }, WINDOW);
    expect(u2.values.length).toBeGreaterThan(7);
    expect(u2.values.length).toBeLessThan(12);
  });

  it("needs three voltages", async () => {
    const source = sampled([[voltage("L1"), sines([230, 50])]], { samplesPerSecond: 6400, seconds: 1 });
    expect((await measured(source, {}, [unbalance])).unavailable).toHaveLength(1);
  });
});

describe("symmetrical components", () => {
  it("add up to the phasors they were made from", () => {
    const [a, b, c] = [
      { re: 3, im: -1 },
      { re: -2, im: 0.5 },
      { re: 0.25, im: 7 },
    ] as const;
    const { zero, positive, negative } = symmetricalComponents(a, b, c);
    expect(zero.re + positive.re + negative.re).toBeCloseTo(a.re, 12);
    expect(zero.im + positive.im + negative.im).toBeCloseTo(a.im, 12);
  });
});
