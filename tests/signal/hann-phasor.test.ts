import { describe, expect, it } from "vitest";
import { hannPhasor } from "../../src/signal/hann-phasor.js";

const PERIOD = 33.7;
const OMEGA = (2 * Math.PI) / PERIOD;

function phasor(signal: (t: number) => number, centre: number, periods = 3): [number, number] {
  const x = Float64Array.from({ length: 500 }, (_, t) => signal(t));
  const out = new Float64Array(2);
  hannPhasor(out, x, centre, periods * PERIOD, OMEGA);
  return [out[0] as number, out[1] as number];
}

describe("phasor through a Hann window", () => {
  it("is A·e^(jω(centre − t0))/j for a sine that starts at t0", () => {
    const [re, im] = phasor((t) => 5 * Math.sin(OMEGA * (t - 200)), 203.3);
    expect(re).toBeCloseTo(5 * Math.sin(OMEGA * 3.3), 5);
    expect(im).toBeCloseTo(-5 * Math.cos(OMEGA * 3.3), 5);
  });

  it("is blind to multiples of the frequency and to a constant", () => {
    for (const h of [0, 2, 3, 5, 7]) {
      const [re, im] = phasor((t) => 10 * Math.cos(h * OMEGA * t + 1), 222.2);
      expect(Math.hypot(re, im)).toBeLessThan(1e-4);
    }
  });

  it("is turned little by a fall of the amplitude inside the window, whatever the cycle it comes at", () => {
    for (let cut = 200; cut < 234; cut += 3) {
      const [re, im] = phasor((t) => (t < cut ? 1 : 0.1) * Math.sin(OMEGA * (t - 200)), 200);
      expect(Math.abs(Math.atan2(im, re) + Math.PI / 2)).toBeLessThan(0.05);
    }
  });

  it("is NaN when a sample in the window is missing, and only then", () => {
    const signal = (t: number) => (t === 320 ? Number.NaN : Math.sin(OMEGA * t));
    expect(phasor(signal, 220)[0]).toBeNaN();
    expect(phasor(signal, 200)[0]).not.toBeNaN();
  });
});
