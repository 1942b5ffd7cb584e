import { describe, expect, it } from "vitest";
import { RealSpectrum } from "../../src/signal/real-spectrum.js";
import { random } from "../support/random.js";

describe("spectrum of real points", () => {
  it.each([8, 16, 64, 128])("equals the sum that defines it, for %d points", (n) => {
    const { normal } = random(3, `points ${n}`);
    const x = Float64Array.from({ length: n }, normal);
    const lines = new Float64Array(n);
    new RealSpectrum(n).lines(lines, x, n / 2);
    for (let k = 0; k < n / 2; k++) {
      let re = 0;
      let im = 0;
      for (let i = 0; i < n; i++) {
        re += (x[i] as number) * Math.cos((2 * Math.PI * i * k) / n);
        im -= (x[i] as number) * Math.sin((2 * Math.PI * i * k) / n);
      }
      const scale = k === 0 ? 1 / n : Math.SQRT2 / n;
      expect(lines[2 * k]).toBeCloseTo(scale * re, 12);
      expect(lines[2 * k + 1]).toBeCloseTo(scale * im, 12);
    }
  });

  it("shows a sine of 230 V r.m.s. as a line of 230 V at −90°, and an offset as line 0", () => {
    const n = 256;
    const x = Float64Array.from({ length: n }, (_, i) => 4 + 230 * Math.SQRT2 * Math.sin((2 * Math.PI * 10 * i) / n));
    const lines = new Float64Array(n);
    new RealSpectrum(n).lines(lines, x, n / 2);
    expect(lines[0]).toBeCloseTo(4, 12);
    expect(lines[20]).toBeCloseTo(0, 10);
    expect(lines[21]).toBeCloseTo(-230, 10);
  });
});
