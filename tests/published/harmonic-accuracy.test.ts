import { describe, expect, it } from "vitest";
import { harmonics } from "../../src/analysis/waveform/harmonics.js";
import { SECOND } from "../../src/recording/time.js";
import { measured, POINT } from "../analysis/waveform/support.js";
import { sampled, sines, voltage } from "../support/waveform.js";

const NOMINAL = 230;
const RATES = [6400, 7680, 10000, 10240, 12800, 20000, 25600];
const FREQUENCIES = [47.3, 49.87, 50.23, 52.1];

/** Orders with their share of the nominal voltage in %, from 0.1 % to 20 %; all others are absent. */
const SPECTRUM: readonly (readonly [order: number, percent: number])[] = [
  [2, 0.1],
  [3, 20],
  [5, 6],
  [7, 5],
  [11, 3.5],
  [13, 0.5],
  [16, 0.2],
  [25, 1.5],
  [31, 0.1],
  [37, 1],
  [41, 10],
  [47, 0.3],
  [49, 2],
  [50, 0.3],
];

/**
 * IEC 61000-4-7:2002 + A1:2008, class I, from memory: 5 % of the reading from 1 % of the nominal voltage up, 0.05 % of the
 * nominal voltage below. The amplitudes put in are the truth.
 */
const tolerance = (percent: number) => (percent >= 1 ? 0.05 * percent : 0.05);

describe("harmonics at frequencies off the nominal and rates that are no multiple of them", () => {
  for (const samplesPerSecond of RATES) {
    it.each(FREQUENCIES)(`are within class I at ${samplesPerSecond} samples per second and %d Hz`, async (f) => {
      const parts = SPECTRUM.map(([n, percent]) => [(NOMINAL * percent) / 100, n * f, 33 * n] as const);
      const signal = sines([NOMINAL, f, 20], ...parts);
      const source = sampled([[voltage("L1"), signal]], { samplesPerSecond, seconds: 1.5 });
      const { series } = await measured(source, { levels: ["window"] }, [harmonics], POINT);
      const truth = new Map(SPECTRUM);
      let orders = 0;
      for (const { quantity, order, values, interval } of series) {
        expect(interval).toBe(SECOND / 5);
        expect(values.length).toBeGreaterThanOrEqual(6);
        const put = quantity === "harmonic-voltage" ? (truth.get(order as number) ?? 0) : 0;
        if (quantity === "thd-voltage") continue;
        orders++;
        // Where nothing was put in: no more than 0.1 % may leak, here of the fundamental and a fifth of that.
        const allowed = put === 0 ? 0.02 : tolerance(put);
        expect(Math.max(...values.map((v) => Math.abs(v - put)))).toBeLessThan(allowed);
        // What the method can do is far inside the class.
        if (put > 0) expect(Math.max(...values.map((v) => Math.abs(v - put)))).toBeLessThan(0.001 + 0.001 * put);
      }
      expect(orders).toBe(49 + 50);
    });
  }
});
