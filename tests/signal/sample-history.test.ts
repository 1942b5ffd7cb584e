import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SampleHistory } from "../../src/signal/sample-history.js";

describe("history of samples", () => {
  it("holds the last samples of every channel in place, however they were appended", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 40 }),
        fc.integer({ max: 1e6 }),
        (sizes, first) => {
          const keep = 50;
          const history = new SampleHistory(2, keep);
          history.restart(first);
          let next = first;
          for (const size of sizes) {
            const block = [0, 1].map((c) => Float64Array.from({ length: size + 3 }, (_, i) => c + 10 * (next + i - 1)));
            history.append(block, 1, size + 1);
            next += size;
            expect(history.end).toBe(next);
            expect(history.base).toBeLessThanOrEqual(Math.max(first, next - keep));
            for (let n = Math.max(first, next - keep); n < next; n++) {
              expect(history.channels.map((x) => x[n - history.base])).toEqual([10 * n, 1 + 10 * n]);
            }
          }
        },
      ),
      { numRuns: 60, seed: 1 },
    );
  });

  it("does not grow with what passes through", () => {
    const history = new SampleHistory(1, 1000);
    const block = [new Float64Array(300)];
    for (let i = 0; i < 500; i++) history.append(block, 0, 300);
    expect(history.channels[0]?.length).toBeLessThan(4000);
  });
});
