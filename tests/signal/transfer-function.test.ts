import { describe, expect, it } from "vitest";
import { ImpulseInvariantFilter } from "../../src/signal/impulse-invariant-filter.js";
import {
  butterworthLowPass,
  cascade,
  firstOrderHighPass,
  magnitudeAt,
  real,
  type TransferFunction,
} from "../../src/signal/transfer-function.js";

/** Magnitude of a digital filter at a frequency, from its impulse response. */
function digitalMagnitude(filter: TransferFunction, rate: number, seconds: number, hertz: number): number {
  const digital = new ImpulseInvariantFilter(filter, rate);
  let re = 0;
  let im = 0;
  for (let n = 0; n < seconds * rate; n++) {
    const h = digital.next(n === 0 ? 1 : 0);
    const angle = (2 * Math.PI * hertz * n) / rate;
    re += h * Math.cos(angle);
    im -= h * Math.sin(angle);
  }
  return Math.hypot(re, im);
}

describe("analogue filters", () => {
  it("has the Butterworth magnitude 1/√(1 + (f/fc)^2n)", () => {
    const filter = butterworthLowPass(6, 35);
    for (const f of [0, 1, 20, 35, 50, 100]) {
      expect(magnitudeAt(filter, f)).toBeCloseTo(1 / Math.sqrt(1 + (f / 35) ** 12), 12);
    }
  });

  it("has the first-order high-pass magnitude and multiplies in a cascade", () => {
    const highPass = firstOrderHighPass(0.05);
    const lowPass = butterworthLowPass(2, 7);
    for (const f of [0.01, 0.05, 3]) {
      expect(magnitudeAt(highPass, f)).toBeCloseTo(f / Math.hypot(f, 0.05), 12);
      expect(magnitudeAt(cascade(highPass, lowPass), f)).toBeCloseTo(
        magnitudeAt(highPass, f) * magnitudeAt(lowPass, f),
        12,
      );
    }
  });

  it("refuses an odd order", () => {
    expect(() => butterworthLowPass(5, 35)).toThrow(RangeError);
  });
});

describe("impulse-invariant filter", () => {
  it("has the analogue magnitude where the filter falls steeply, with no warping up to a third of the rate", () => {
    const filter = cascade(firstOrderHighPass(0.5), butterworthLowPass(6, 35));
    for (const f of [0.1, 0.5, 8.8, 35, 60, 100]) {
      const analogue = magnitudeAt(filter, f);
      expect(digitalMagnitude(filter, 1000, 10, f) / analogue).toBeCloseTo(1, 4);
    }
  });

  it("is the sampled impulse response of s ↦ 1/((s+1)(s+2)), e^-t − e^-2t", () => {
    const digital = new ImpulseInvariantFilter({ gain: 1, zeros: [], poles: [real(-1), real(-2)] }, 100);
    for (let n = 0; n < 300; n++) {
      const t = n / 100;
      expect(digital.next(n === 0 ? 1 : 0)).toBeCloseTo((Math.exp(-t) - Math.exp(-2 * t)) / 100, 12);
    }
  });

  it("stays at its final value when settled on the input", () => {
    const digital = new ImpulseInvariantFilter(butterworthLowPass(4, 10), 1000);
    digital.settleOn(3);
    for (let n = 0; n < 100; n++) expect(digital.next(3)).toBeCloseTo(3, 5);
  });

  it("refuses a filter whose impulse response begins with a jump, and coinciding poles", () => {
    expect(() => new ImpulseInvariantFilter(firstOrderHighPass(1), 1000)).toThrow(RangeError);
    const double = { gain: 1, zeros: [], poles: [real(-1), real(-1)] };
    expect(() => new ImpulseInvariantFilter(double, 1000)).toThrow("coincide");
  });
});
