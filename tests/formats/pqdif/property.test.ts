import fc from "fast-check";
import { expect, it } from "vitest";
import type { ValueType, WrittenChannel, WrittenSeries } from "../../../src/formats/pqdif/write-description.js";
import { INCREMENT, observationOf, reopened, SCALED, sourceOf, VALUES, valueLog } from "./support.js";

/** A series that may be written, the storage method of its definition, and what is to be read. */
interface Example {
  readonly series: WrittenSeries;
  readonly storage: number;
  readonly values: readonly number[];
}

const real = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 });
const WHOLE: readonly (readonly [ValueType, number, number])[] = [
  ["INTEGER1", -128, 127],
  ["INTEGER2", -32_768, 32_767],
  ["INTEGER4", -2_147_483_648, 2_147_483_647],
  ["UNS_INTEGER1", 0, 255],
  ["UNS_INTEGER2", 0, 65_535],
  ["UNS_INTEGER4", 0, 4_294_967_295],
];

const plain = fc.array(real, { maxLength: 40 }).map(
  (values): Example => ({
    series: { type: "REAL8", values },
    storage: VALUES,
    values: values.map((v) => v + 0),
  }),
);

const scaled = fc
  .tuple(fc.constantFrom(...WHOLE), fc.constantFrom(0.5, 0.01, 3), fc.constantFrom(0, -7, 100))
  .chain(([[type, min, max], scale, offset]) =>
    fc.array(fc.integer({ min, max }), { maxLength: 40 }).map((stored): Example => {
      const values = stored.map((n) => n * scale + offset);
      return { series: { type, values, scale, offset }, storage: VALUES | SCALED, values };
    }),
  );

const stepped = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: -1000, max: 1000 })), { maxLength: 5 })
  .map((steps): Example => {
    const rates = steps.flatMap(([count, rate]) => Array.from({ length: count }, () => rate));
    // The definition, step by step: the first value is 0, each next one is greater by the rate of its segment.
    const values: number[] = [];
    for (const rate of rates) values.push(values.length === 0 ? 0 : (values.at(-1) as number) + rate);
    return { series: { type: "REAL8", steps }, storage: INCREMENT, values };
  });

it("whatever is written is read, in part as well, and so is what shares it", async () => {
  const examples = fc.array(fc.oneof(plain, scaled, stepped), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(
      examples,
      fc.boolean(),
      fc.boolean(),
      fc.nat(40),
      fc.nat(40),
      async (all, compressed, embed, a, b) => {
        const source = sourceOf(...all.map(({ storage }, i) => valueLog(`U${i}`, 1, storage, storage)));
        const channels = all.map(
          ({ series }, definition): WrittenChannel => ({
            definition,
            series: [series, { share: { channel: definition, series: 0 } }],
          }),
        );
        const file = await reopened([source, observationOf(...channels)], { compressed, embed });
        expect(file.warnings).toEqual([]);
        const values = await file.observations[0]?.open();
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        for (const [c, { values: expected }] of all.entries()) {
          expect(file.observations[0]?.channels[c]?.series.map(({ count }) => count)).toEqual([
            expected.length,
            expected.length,
          ]);
          expect([...((await values?.values(c, 0)) ?? [])].map((v) => v + 0)).toEqual(expected);
          expect([...((await values?.values(c, 1, from, to)) ?? [])].map((v) => v + 0)).toEqual(
            expected.slice(from, to),
          );
        }
      },
    ),
    { seed: 1159, numRuns: 150 },
  );
});
