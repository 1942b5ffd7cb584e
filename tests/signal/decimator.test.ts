import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimator } from "../../src/signal/decimator.js";

function decimate(decimator: Decimator, input: Float64Array, pieces: (left: number) => number): Float64Array {
  const output: number[] = [];
  const out = new Float64Array(decimator.maxOutput);
  for (let at = 0; at < input.length; ) {
    const count = Math.min(pieces(input.length - at), input.length - at, decimator.maxPush);
    const n = decimator.push(input.subarray(at, at + count), count, out);
    output.push(...out.subarray(0, n));
    at += count;
  }
  return Float64Array.from(output);
}

const tone = (rate: number, hertz: number, length: number) =>
  Float64Array.from({ length }, (_, n) => Math.cos((2 * Math.PI * hertz * n) / rate));

/** Amplitude of a tone behind the decimator, from the mean square of whole periods. */
function gain(rate: number, factor: number, hertz: number): number {
  const seconds = 2;
  const output = decimate(new Decimator(rate, factor, 120), tone(rate, hertz, rate * (seconds + 0.1)), () => 1000);
  const last = output.subarray(output.length - Math.round((seconds * rate) / factor));
  return Math.sqrt((2 * last.reduce((sum, x) => sum + x * x, 0)) / last.length);
}

describe("Decimator", () => {
  it.each([
    { rate: 2000, factor: 2 },
    { rate: 10240, factor: 10 },
    { rate: 20000, factor: 20 },
  ])("is flat to 120 Hz and 80 dB down where it would fold into that, $rate / $factor", ({ rate, factor }) => {
    for (const f of [1, 9, 35, 60, 100, 120]) expect(Math.abs(gain(rate, factor, f) - 1)).toBeLessThan(5e-4);
    const folded = rate / factor - 9;
    expect(gain(rate, factor, folded)).toBeLessThan(1.5e-4);
  });

  it("keeps a constant exactly", () => {
    const output = decimate(new Decimator(6400, 6, 120), new Float64Array(500).fill(2), () => 100);
    expect(output.length).toBeGreaterThan(70);
    for (const value of output) expect(value).toBeCloseTo(2, 12);
  });

  it("gives the same samples however the input is cut", () => {
    const input = tone(10240, 77, 5000);
    const whole = decimate(new Decimator(10240, 10, 120), input, () => 1024);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 1024 }), { minLength: 1, maxLength: 20 }), (sizes) => {
        let i = 0;
        const cut = decimate(new Decimator(10240, 10, 120), input, () => sizes[i++ % sizes.length] as number);
        expect(cut).toEqual(whole);
      }),
      { numRuns: 50 },
    );
  });
});
