import { describe, expect, it } from "vitest";
import { power } from "../../src/analysis/waveform/power.js";
import type { Quantity } from "../../src/recording/quantity.js";
import { SECOND } from "../../src/recording/time.js";
import { farthest, measured, one, POINT } from "../analysis/waveform/support.js";
import { type Component, current, sampled, sines, voltage } from "../support/waveform.js";

/**
 * IEEE 1459-2010, Annex B, single-phase example: r.m.s. values and phases of voltage and current as printed in a public
 * demonstration script of the standard; results recomputed from the standard's definitions with eight digits outside
 * this project. Cosine or sine makes no difference as long as all components of one order share it.
 */
const F = 50;
const VOLTAGE: readonly Component[] = [
  [100, F, 0],
  [8, 3 * F, -70],
  [15, 5 * F, 140],
  [5, 7 * F, 20],
];
const CURRENT: readonly Component[] = [
  [100, F, -30],
  [20, 3 * F, -165],
  [15, 5 * F, 234],
  [10, 7 * F, 234],
];

const RESULTS: Readonly<Partial<Record<Quantity, number>>> = {
  "active-power": 8589.162,
  "reactive-power": 5000,
  "apparent-power": 10517.493,
  "fundamental-active-power": 8660.254,
  "fundamental-apparent-power": 10000,
  "nonactive-power": 6069.921,
  "current-distortion-power": 2692.582,
  "voltage-distortion-power": 1772.005,
  "harmonic-apparent-power": 477.127,
  "power-factor": 0.816655,
  "displacement-factor": 0.866025,
};

describe("IEEE 1459-2010, Annex B", () => {
  it.each(Object.entries(RESULTS))("%s is %d", async (quantity, expected) => {
    for (const samplesPerSecond of [6400, 10000, 10240]) {
      const source = sampled(
        [
          [voltage("L1"), sines(...VOLTAGE)],
          [current("L1"), sines(...CURRENT)],
        ],
        { samplesPerSecond, seconds: 2 },
      );
      const point = { ...POINT, declaredVoltage: 100, connection: "single" } as const;
      const { series } = await measured(source, {}, [power], point);
      const values = one(series, { quantity: quantity as Quantity, phase: "L1" }, SECOND / 5).values;
      expect(values.length).toBeGreaterThan(7);
      expect(farthest(values, expected) / expected).toBeLessThan(2e-5);
    }
  });
});
