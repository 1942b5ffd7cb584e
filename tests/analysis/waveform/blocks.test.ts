import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measureWaveform } from "../../../src/analysis/waveform/chain.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { random } from "../../support/random.js";
import { START } from "../../support/series.js";
import { current, type SourceOptions, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { POINT, seen } from "./support.js";

const RATE = 4000;
const SECONDS = 8;

/** A supply with harmonics, noise, a dip, a gap and a ten-minute tick in it, cut into blocks. */
function recording(blocks: NonNullable<SourceOptions["blocks"]>) {
  const { normal } = random(11, "noise");
  const noise = Float64Array.from({ length: RATE * SECONDS }, normal);
  const noisy = (signal: (t: number) => number) => (t: number) => signal(t) + (noise[Math.round(t * RATE)] as number);
  const supply = (degrees: number) => sines([230, 49.83, degrees], [8, 3 * 49.83], [5, 5 * 49.83, 40], [1, 183]);
  return sampled(
    [
      [voltage("L1"), noisy(scaled(supply(0), 1.234, 1.4, 0.3))],
      [voltage("L2"), noisy(supply(-120))],
      [voltage("L3"), noisy(supply(120))],
      [current("L1"), noisy(sines([10, 49.83, -30], [3, 5 * 49.83, 10]))],
      [current("L2", 20e-6), noisy(sines([9, 49.83, -150]))],
      [current("L3"), noisy(sines([11, 49.83, 85]))],
    ],
    {
      samplesPerSecond: RATE,
      seconds: SECONDS,
      start: START + 10 * MINUTE - 4.4321 * SECOND,
      blocks,
      gaps: [[2.5 * RATE, 2.6 * RATE]],
    },
  );
}

const options = {
  levels: ["window", "3s", "10min", "2h"],
  signallingFrequencies: [183, 316.7],
  smoothed: true,
} as const;

describe("the length of blocks", () => {
  it("never changes a result, to the last bit", async () => {
    const whole = await measureWaveform(recording(RATE * SECONDS), POINT, options);
    expect(whole.series.length).toBeGreaterThan(1000);
    expect(new Set(whole.series.map((s) => s.quantity)).size).toBeGreaterThan(20);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 20, max: 3000 }), { minLength: 1, maxLength: 6 }), async (blocks) => {
        const cut = await measureWaveform(recording(blocks), POINT, options);
        expect(cut).toEqual(whole);
      }),
      { numRuns: 5, seed: 4, examples: [[[7]], [[1, 2999]], [[4096]]] },
    );
  });

  it("never changes what the phenomena are handed, nor its order", async () => {
    const whole = await seen(recording(RATE * SECONDS));
    for (const blocks of [1, 333, [5, 2000]]) {
      const { order, halves, windows, cycles, gaps } = await seen(recording(blocks));
      expect({ order, halves, windows, cycles, gaps }).toEqual({
        order: whole.order,
        halves: whole.halves,
        windows: whole.windows,
        cycles: whole.cycles,
        gaps: whole.gaps,
      });
    }
  });
});
