import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FlaggedSpans } from "../../../src/analysis/waveform/flagged-spans.js";

describe("flagged spans", () => {
  it("touch what they overlap, not what they only meet", () => {
    const flags = new FlaggedSpans();
    flags.mark(10, 20);
    flags.mark(20, 25);
    flags.mark(40, 50);
    expect(flags.touches(0, 10)).toBe(false);
    expect(flags.touches(0, 10.5)).toBe(true);
    expect(flags.touches(24, 41)).toBe(true);
    expect(flags.touches(25, 40)).toBe(false);
    expect(flags.touches(50, 90)).toBe(false);
  });

  it("agree with a plain list of all spans that were marked", () => {
    const span = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 8 }));
    fc.assert(
      fc.property(
        fc.array(span, { maxLength: 30 }),
        fc.nat(300),
        fc.integer({ min: 1, max: 40 }),
        (steps, from, length) => {
          const flags = new FlaggedSpans();
          const marked: [number, number][] = [];
          let at = 0;
          for (const [step, size] of steps) {
            at += step;
            flags.mark(at, at + size);
            marked.push([at, at + size]);
          }
          const plain = marked.some(([a, b]) => a < from + length && b > from);
          expect(flags.touches(from, from + length)).toBe(plain);
        },
      ),
      { seed: 2 },
    );
  });
});
