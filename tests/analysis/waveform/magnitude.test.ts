import { describe, expect, it } from "vitest";
import { magnitude } from "../../../src/analysis/waveform/magnitude.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { current, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one, POINT } from "./support.js";

const WINDOW = SECOND / 5;

describe("magnitude of voltage and current", () => {
  /** Closed form: the root of the sum of the squares of the components; class A of IEC 61000-4-30 allows 0.1 %. */
  it.each([2000, 6400, 7680, 10000, 12800, 25600])("is right to 0.02 %% at %d samples per second", async (rate) => {
    for (const f of [42.5, 47.3, 49.87, 50.23, 57.5]) {
      const parts = [
        [230, f, 10],
        [20, 3 * f, 50],
        [12, 5 * f],
        [7, 13 * f, 100],
      ] as const;
      const source = sampled([[voltage("L1"), sines(...parts)]], { samplesPerSecond: rate, seconds: 2 });
      const u = one((await measured(source, {}, [magnitude])).series, { quantity: "voltage" }, WINDOW);
      expect(u.values.length).toBeGreaterThanOrEqual(7);
      const truth = Math.hypot(...parts.map(([rms]) => rms));
      expect(farthest(u.values, truth) / truth).toBeLessThan(2e-4);
    }
  });

  it("keeps the channels apart and has the crest factor √2 of a sine, 1 of a rectangle", async () => {
    const rectangle = (t: number) => (Math.sin(2 * Math.PI * 50 * t) >= 0 ? 7 : -7);
    const source = sampled(
      [
        [voltage("L2"), sines([231, 50])],
        [current("L2"), rectangle],
      ],
      { samplesPerSecond: 10000, seconds: 2 },
    );
    const { series } = await measured(source, {}, [magnitude]);
    expect(farthest(one(series, { quantity: "voltage", phase: "L2" }, WINDOW).values, 231)).toBeLessThan(1e-6);
    expect(farthest(one(series, { quantity: "current", phase: "L2" }, WINDOW).values, 7)).toBeLessThan(0.01);
    expect(farthest(one(series, { quantity: "crest-factor-voltage" }, WINDOW).values, Math.SQRT2)).toBeLessThan(1e-4);
    expect(farthest(one(series, { quantity: "crest-factor-current" }, WINDOW).values, 1)).toBeLessThan(2e-3);
  });

  /** IEC 61000-4-30, Annex D: with Udin = 230 V, 207 V for a third of the time and 241.5 V for the rest. */
  it("has under- and overdeviation of values held at Udin", async () => {
    const start = START + 10 * MINUTE;
    const signal = scaled(scaled(sines([230, 50]), 0, 200, 0.9), 200, 605, 1.05);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 2000, seconds: 605, start: start - SECOND });
    const { series } = await measured(source, {}, [magnitude]);
    // The recording begins 1 s before the tick: 199 s of the ten minutes are low.
    const share = 199 / 600;
    const under = one(series, { quantity: "underdeviation" }, 10 * MINUTE);
    const over = one(series, { quantity: "overdeviation" }, 10 * MINUTE);
    const at = under.starts.indexOf(start);
    expect(under.values[at]).toBeCloseTo(100 * (1 - Math.sqrt(share * 0.9 ** 2 + 1 - share)), 2);
    expect(over.values[at]).toBeCloseTo(100 * (Math.sqrt(share + (1 - share) * 1.05 ** 2) - 1), 2);
    expect(under.max?.[at]).toBeCloseTo(10, 6);
    expect(under.min?.[at]).toBeCloseTo(0, 9);
    expect(over.max?.[at]).toBeCloseTo(5, 6);
  });

  it("relates phase-to-phase voltages of a star connection to √3 times its declared voltage", async () => {
    const source = sampled([[voltage("L12"), sines([0.9 * 230 * Math.sqrt(3), 50])]], {
      samplesPerSecond: 6400,
      seconds: 2,
    });
    const low = one((await measured(source, {}, [magnitude])).series, { quantity: "underdeviation" }, WINDOW);
    expect(farthest(low.values, 10)).toBeLessThan(1e-6);
    const delta = { ...POINT, connection: "delta", declaredVoltage: 400 } as const;
    const other = sampled([[voltage("L12"), sines([380, 50])]], { samplesPerSecond: 6400, seconds: 2 });
    const { series } = await measured(other, {}, [magnitude], delta);
    expect(farthest(one(series, { quantity: "underdeviation" }, WINDOW).values, 5)).toBeLessThan(1e-6);
  });
});
