import { describe, expect, it } from "vitest";
import { magnitudeOf, type Phasor, symmetricalComponents } from "../../src/analysis/waveform/phasor.js";

const polar = (size: number, degrees: number): Phasor => ({
  re: size * Math.cos((degrees * Math.PI) / 180),
  im: size * Math.sin((degrees * Math.PI) / 180),
});

/** Two textbook-companion notebooks on symmetrical components (Example 3.3.1, pages 487–488, and Example 21_1). */
interface Example {
  readonly name: string;
  readonly phasors: readonly [Phasor, Phasor, Phasor];
  readonly zero: readonly [number, number];
  readonly positive: readonly [number, number];
  readonly negative: readonly [number, number];
}

const EXAMPLES: readonly [Example, Example] = [
  {
    name: "currents of Example 3.3.1",
    phasors: [
      { re: 12, im: 24 },
      { re: 16, im: -2 },
      { re: -4, im: -6 },
    ],
    zero: [8, 5.333],
    positive: [0.845, 15.107],
    negative: [3.155, 3.56],
  },
  {
    name: "voltages of Example 21_1",
    phasors: [polar(100, 90), polar(116, 0), polar(71, 224.8)],
    zero: [21.873, 16.657],
    positive: [-25.379, 89.701],
    negative: [3.505, -6.358],
  },
];

describe("symmetrical components of published examples", () => {
  it.each(EXAMPLES)("$name", ({ phasors, zero, positive, negative }) => {
    const found = symmetricalComponents(...phasors);
    for (const [part, [re, im]] of [
      [found.zero, zero],
      [found.positive, positive],
      [found.negative, negative],
    ] as const) {
      expect(Math.abs(part.re - re)).toBeLessThan(0.001);
      expect(Math.abs(part.im - im)).toBeLessThan(0.001);
    }
  });

  it("give u2 = 7.788 % for Example 21_1", () => {
    const { positive, negative } = symmetricalComponents(...EXAMPLES[1].phasors);
    expect((100 * magnitudeOf(negative)) / magnitudeOf(positive)).toBeCloseTo(7.788, 3);
  });

  /**
   * Documentation of a public calculator: 147∠13°, 154∠129°, 150∠237° give 149.285∠6.321° and 10.135∠49.004°. It lists
   * the phases in the opposite rotation, so that with the definition used here the first is the negative sequence.
   */
  it("tell positive from negative sequence by the order of the phases", () => {
    const { zero, positive, negative } = symmetricalComponents(polar(147, 13), polar(154, 129), polar(150, 237));
    expect(magnitudeOf(negative)).toBeCloseTo(149.285, 3);
    expect(magnitudeOf(positive)).toBeCloseTo(10.135, 3);
    expect(magnitudeOf(zero)).toBeCloseTo(14.824, 3);
  });
});
