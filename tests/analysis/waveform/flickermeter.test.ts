import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FlickerInterval, Flickermeter, SETTLING_S } from "../../../src/analysis/waveform/flickermeter.js";
import {
  blockThree,
  type Lamp,
  perceptibilityScale,
  pstFromLevels,
  weightingFilter,
} from "../../../src/analysis/waveform/flickermeter-design.js";
import { ImpulseInvariantFilter } from "../../../src/signal/impulse-invariant-filter.js";
import { LevelHistogram } from "../../../src/signal/level-histogram.js";
import { magnitudeAt } from "../../../src/signal/transfer-function.js";

type Signal = (t: number) => number;

const turn = (cycles: number) => Math.sin(2 * Math.PI * cycles);
const sampled = (signal: Signal, rate: number, from: number, to: number) =>
  Float64Array.from({ length: Math.round((to - from) * rate) }, (_, n) => signal(from + n / rate));

function meterFor(rate: number, lamp: Lamp = 230, nominalFrequency: 50 | 60 = 50): Flickermeter {
  return new Flickermeter({ samplesPerSecond: rate, lamp, nominalFrequency });
}

function feed(meter: Flickermeter, rate: number, signal: Signal, from: number, to: number): void {
  for (let t = from; t < to; t += 10) {
    const block = sampled(signal, rate, t, Math.min(t + 10, to));
    meter.push(block, 0, block.length);
  }
}

/** What the meter shows for `seconds` of the signal, after it has settled on it. */
function measure(rate: number, signal: Signal, seconds: number, meter = meterFor(rate)): FlickerInterval {
  feed(meter, rate, signal, -SETTLING_S, 0);
  meter.closeInterval();
  feed(meter, rate, signal, 0, seconds);
  return meter.closeInterval();
}

/** Carrier, 5th and 7th harmonic, sinusoidal and stepwise modulation with no common period. */
const lively =
  (carrier: number, depth = 0.01): Signal =>
  (t) => {
    const modulation = 0.3 * turn(8.8 * t) + 0.5 * turn(1.37 * t) + 0.4 * Math.sign(turn(t / 17)) + 0.2 * turn(21 * t);
    const shape = turn(carrier * t) + 0.05 * turn(5 * carrier * t + 0.3) + 0.03 * turn(7 * carrier * t);
    return shape * (1 + (depth / 2) * modulation);
  };

describe("block 3", () => {
  it("is 3 dB down by the high pass at 0.05 Hz and by the low pass at 35 Hz, or 42 Hz for 60 Hz mains", () => {
    for (const [mains, corner] of [
      [50, 35],
      [60, 42],
    ] as const) {
      for (const edge of [0.05, corner]) {
        const lost = magnitudeAt(blockThree(230, mains), edge) / magnitudeAt(weightingFilter(230), edge);
        expect(lost).toBeCloseTo(Math.SQRT1_2, 4);
      }
    }
  });

  it.each([
    [230, 50],
    [230, 60],
    [120, 50],
    [120, 60],
  ] as const)("digital and analogue magnitude agree, %d V %d Hz", (lamp, mains) => {
    const filter = blockThree(lamp, mains);
    for (const rate of [1000, 1066.7, 1999]) {
      const digital = new ImpulseInvariantFilter(filter, rate);
      const response = Float64Array.from({ length: 60 * rate }, (_, n) => digital.next(n === 0 ? 1 : 0));
      for (const f of [0.05, 0.5, 8.8, 25, 40, 2 * mains]) {
        let re = 0;
        let im = 0;
        for (const [n, h] of response.entries()) {
          re += h * Math.cos((2 * Math.PI * f * n) / rate);
          im -= h * Math.sin((2 * Math.PI * f * n) / rate);
        }
        expect(Math.hypot(re, im) / magnitudeAt(filter, f)).toBeCloseTo(1, 5);
      }
    }
  });

  it("weights 8.8 Hz by 1 for the 230 V lamp, as the constants are normalised", () => {
    expect(magnitudeAt(weightingFilter(230), 8.8)).toBeCloseTo(1, 2);
  });
});

describe("Pst from percentiles", () => {
  it("is √(0.5096 P) for a constant Pinst of P: the five weights add up to 0.5096", () => {
    expect(pstFromLevels(() => 4)).toBeCloseTo(Math.sqrt(0.5096 * 4), 12);
  });

  it("weights each group of percentiles as the formula does", () => {
    const only = (percents: number[]) => pstFromLevels((percent) => (percents.includes(percent) ? 1 : 0)) ** 2;
    expect(only([0.1])).toBeCloseTo(0.0314, 12);
    expect(only([0.7, 1, 1.5])).toBeCloseTo(0.0525, 12);
    expect(only([2.2, 3, 4])).toBeCloseTo(0.0657, 12);
    expect(only([6, 8, 10, 13, 17])).toBeCloseTo(0.28, 12);
    expect(only([30, 50, 80])).toBeCloseTo(0.08, 12);
    expect(only([8])).toBeCloseTo(0.28 / 5, 12);
  });

  it.each([0.05, 0.3, 1, 6, 20])("comes from the classes within 0.1 % of sorting all values, near Pst %d", (pst) => {
    const values = Float64Array.from({ length: 60000 }, (_, i) => {
      const x = (i * 0.6180339887498949) % 1;
      return 2 * pst ** 2 * (0.1 + x + 30 * Math.max(0, x - 0.95));
    });
    const classes = new LevelHistogram();
    for (const value of values) classes.add(value);
    const descending = values.slice().sort().reverse();
    const exact = pstFromLevels((percent) => descending[Math.round((percent / 100) * values.length) - 1] as number);
    const classified = pstFromLevels((percent) => classes.exceededBy(percent / 100));
    expect(Math.abs(classified / exact - 1)).toBeLessThan(1e-3);
  });
});

describe("Flickermeter", () => {
  it("shows the same Pst at every sampling rate within 1 %, off nominal frequency and with harmonics", () => {
    const at = (rate: number) => measure(rate, lively(50.23), 120).pst;
    const reference = at(20000);
    expect(reference).toBeGreaterThan(0.9);
    for (const rate of [3200, 6400, 10000, 10240, 12800]) expect(Math.abs(at(rate) / reference - 1)).toBeLessThan(0.01);
  });

  it("gives the same result, to the last bit, however the samples are cut into blocks", () => {
    const rate = 2500;
    const samples = sampled(lively(49.87), rate, 0, 75);
    samples[9000] = Number.NaN;
    const whole = meterFor(rate);
    whole.push(samples, 0, samples.length);
    const expected = whole.closeInterval();
    expect(expected.seconds).toBeGreaterThan(10);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 20000 }), { minLength: 1, maxLength: 12 }), (sizes) => {
        const meter = meterFor(rate);
        let piece = 0;
        for (let at = 0; at < samples.length; ) {
          const end = Math.min(samples.length, at + (sizes[piece++ % sizes.length] as number));
          meter.push(samples, at, end);
          at = end;
        }
        expect(meter.closeInterval()).toEqual(expected);
      }),
      { numRuns: 15 },
    );
  });

  it("does not depend on the unit of the voltage", () => {
    const kilovolts = measure(3200, lively(50), 20);
    const volts = measure(3200, (t) => 20000 * lively(50)(t), 20);
    expect(volts.pst / kilovolts.pst).toBeCloseTo(1, 9);
  });

  it("is linear: Pst grows with ΔV/V from 0.05 to 20", () => {
    const square = (depth: number) => measure(2000, (t) => turn(50 * t) * (1 + depth * Math.sign(turn(7 * t))), 60).pst;
    const unit = square(0.001);
    expect(square(0.001 * (0.05 / unit))).toBeCloseTo(0.05, 2);
    expect(Math.abs(square(0.001 * (5 / unit)) / 5 - 1)).toBeLessThan(0.002);
    expect(Math.abs(square(0.001 * (20 / unit)) / 20 - 1)).toBeLessThan(0.02);
  });

  it.each([
    [50, 42.5],
    [50, 50.44],
    [50, 57.5],
    [60, 51],
    [60, 60],
    [60, 69],
  ] as const)("shows of a steady %d Hz supply at %d Hz only what block 3 leaves of twice that", (mains, frequency) => {
    const filter = blockThree(230, mains);
    const left = (perceptibilityScale(230, filter) * magnitudeAt(filter, 2 * frequency) ** 2) / 2;
    const steady = measure(10240, (t) => turn(frequency * t), 20, meterFor(10240, 230, mains));
    expect(steady.pst / Math.sqrt(0.5096 * left)).toBeCloseTo(1, 2);
    const distorted = measure(10240, lively(frequency, 0), 20, meterFor(10240, 230, mains));
    expect(distorted.pst).toBeLessThan(0.04);
  });

  it("keeps harmonics that fold onto slow modulation out of it: order 19 and 21 at 50.44 Hz", () => {
    const distorted: Signal = (t) => turn(50.44 * t) + 0.02 * turn(19 * 50.44 * t) + 0.02 * turn(21 * 50.44 * t);
    expect(measure(10000, distorted, 20).pst).toBeLessThan(0.03);
  });

  it("refuses less than 2 kHz", () => {
    expect(() => meterFor(1999)).toThrow(RangeError);
    expect(() => meterFor(Number.NaN)).toThrow(RangeError);
  });
});

describe("settling", () => {
  const rate = 2000;

  it("keeps the first minute out", () => {
    const meter = meterFor(rate);
    feed(meter, rate, lively(50), 0, SETTLING_S);
    expect(meter.maxPinst).toBeNaN();
    expect(meter.closeInterval()).toEqual({ pst: Number.NaN, pinstMax: Number.NaN, seconds: 0 });
    feed(meter, rate, lively(50), SETTLING_S, SETTLING_S + 5);
    expect(meter.maxPinst).toBeGreaterThan(0);
    const { seconds, pinstMax } = meter.closeInterval();
    expect(seconds).toBeCloseTo(5, 1);
    expect(pinstMax).toBeGreaterThan(0);
    expect(meter.maxPinst).toBeNaN();
  });

  it("leaves less than 0.1 % of Pst: a meter begun just before agrees with one that has run for long", () => {
    for (const begun of [0, 23, 61, 99]) {
      const long = meterFor(rate);
      feed(long, rate, lively(50, 0.03), begun - 400, begun);
      long.closeInterval();
      const late = meterFor(rate);
      for (const meter of [long, late]) feed(meter, rate, lively(50, 0.03), begun, begun + SETTLING_S);
      long.closeInterval();
      late.closeInterval();
      for (const meter of [long, late]) {
        feed(meter, rate, lively(50, 0.03), begun + SETTLING_S, begun + SETTLING_S + 600);
      }
      expect(Math.abs(late.closeInterval().pst / long.closeInterval().pst - 1)).toBeLessThan(1e-3);
    }
  });

  it("begins anew after a gap, and keeps what was classified before it", () => {
    const meter = meterFor(rate);
    feed(meter, rate, lively(50), 0, SETTLING_S + 20);
    meter.push(Float64Array.of(Number.NaN), 0, 1);
    feed(meter, rate, lively(50), 100, 100 + SETTLING_S);
    feed(meter, rate, lively(50), 100 + SETTLING_S, 105 + SETTLING_S);
    expect(meter.closeInterval().seconds).toBeCloseTo(25, 1);
    const broken = meterFor(rate);
    feed(broken, rate, lively(50), 0, SETTLING_S + 20);
    broken.restart();
    feed(broken, rate, lively(50), 100, 100 + SETTLING_S + 5);
    expect(broken.closeInterval().seconds).toBeCloseTo(25, 1);
  });

  it.each([
    { name: "after nothing at all", before: 0, settled: 60 },
    { name: "after noise, once it has been twice the reference for 10 s", before: 1e-4, settled: 50 },
    { name: "after what rounding left of nothing", before: 1e-40, settled: 50 },
  ])("begins anew when a supply is switched on $name", ({ before, settled }) => {
    const steady = lively(50, 0);
    const meter = meterFor(rate);
    feed(meter, rate, (t) => before * steady(t), 0, 100);
    feed(meter, rate, steady, 100, 120);
    meter.closeInterval();
    feed(meter, rate, steady, 120, 220);
    const { pst, seconds } = meter.closeInterval();
    expect(pst).toBeLessThan(0.03);
    expect(seconds).toBeCloseTo(settled, 0);
  });

  it("counts a short interruption as the flicker it is", () => {
    const meter = meterFor(rate);
    const { pst, seconds } = measure(rate, (t) => (t > 20 && t < 21 ? 0 : lively(50, 0)(t)), 60, meter);
    expect(seconds).toBeCloseTo(60, 1);
    expect(pst).toBeGreaterThan(10);
  });
});
