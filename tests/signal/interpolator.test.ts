import { describe, expect, it } from "vitest";
import { Interpolator } from "../../src/signal/interpolator.js";

/** Value at any place of a cosine of so many cycles per sample, from its samples; the droop undone. */
function amplitudeError(interpolator: Interpolator, frequency: number, step: number): number {
  const from = interpolator.reach + 10.3;
  const length = Math.ceil(2 * from + 400 * step);
  const x = Float64Array.from({ length }, (_, i) => Math.cos(2 * Math.PI * frequency * i));
  const out = new Float64Array(400);
  interpolator.resample(out, x, from, step);
  const gain = interpolator.inverseGain(frequency);
  return Math.max(...out.map((v, n) => Math.abs(v * gain - Math.cos(2 * Math.PI * frequency * (from + n * step)))));
}

describe("band-limited interpolation", () => {
  it.each([
    [0.25, 1],
    [0.4, 1.6],
    [0.45, 1.28],
    [0.1, 0.4],
    [0.002, 0.009],
  ])("finds values in a band to %d cycles per sample at %d points per sample", (passband, rate) => {
    const interpolator = new Interpolator(passband, rate);
    for (const share of [0.01, 0.3, 0.7, 0.999]) {
      // Half a step of 1/2048 sample shifts a component by that much of its phase.
      const rounding = (2 * Math.PI * share * passband) / 4096 / Math.min(1, rate);
      expect(amplitudeError(interpolator, share * passband, 1 / rate)).toBeLessThan(1e-4 + 2 * rounding);
    }
  });

  it("suppresses what would fold into the band", () => {
    const interpolator = new Interpolator(0.1, 0.4);
    const x = Float64Array.from({ length: 3000 }, (_, i) => Math.cos(2 * Math.PI * 0.31 * i));
    const out = new Float64Array(400);
    interpolator.resample(out, x, 100, 2.5);
    expect(Math.max(...out.map(Math.abs))).toBeLessThan(1e-4);
  });

  it("keeps a constant exactly, to rounding", () => {
    const out = new Float64Array(100);
    new Interpolator(0.3, 1).resample(out, new Float64Array(300).fill(7), 50.123, 1.01);
    for (const v of out) expect(v).toBeCloseTo(7, 12);
  });

  it("gives three inputs at once what it gives each alone", () => {
    const interpolator = new Interpolator(0.3, 0.9);
    const inputs = [0, 1, 2].map((c) => Float64Array.from({ length: 500 }, (_, i) => Math.sin(i * (c + 1))));
    const together = inputs.map(() => new Float64Array(300));
    interpolator.resampleThree(together as never, inputs as never, 60.7, 1.1);
    const alone = inputs.map((x) => {
      const out = new Float64Array(300);
      interpolator.resample(out, x, 60.7, 1.1);
      return out;
    });
    expect(together).toEqual(alone);
  });

  it("reads no sample beyond its reach", () => {
    const interpolator = new Interpolator(0.3, 1);
    const x = new Float64Array(200).fill(Number.NaN);
    x.fill(1, 80 - interpolator.reach, 120 + interpolator.reach + 1);
    const out = new Float64Array(41);
    interpolator.resample(out, x, 80, 1);
    expect(out.every((v) => Math.abs(v - 1) < 1e-12)).toBe(true);
  });

  it("refuses a band that half of the input's or output's rate does not hold", () => {
    expect(() => new Interpolator(0.5, 2)).toThrow(RangeError);
    expect(() => new Interpolator(0.2, 0.4)).toThrow(RangeError);
    expect(() => new Interpolator(0, 1)).toThrow(RangeError);
  });
});
