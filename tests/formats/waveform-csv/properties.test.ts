import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openLogs } from "../../../src/formats/index.js";
import { waveformCsv } from "../../../src/formats/waveform-csv/index.js";
import { rateWithin, roundestIn } from "../../../src/formats/waveform-csv/round-number.js";
import { logFile } from "../csv/log.js";
import { expected, onlySource, samplesOf, tableText } from "./support.js";

const RATE = 10_240;
const seconds = (i: number) => (i / RATE).toFixed(6);

describe("samples do not depend on", () => {
  test("how much is read at a time", async () => {
    const lost = (i: number) => i % 97 === 5 || (i > 300 && i < 350);
    const text = tableText({ rate: RATE, rows: 900, time: seconds, lost });
    const property = fc.asyncProperty(fc.integer({ min: 1, max: 3000 }), async (mostPerRead) => {
      const recording = await waveformCsv.open([logFile(text, "log.csv", Math.max(mostPerRead, 40))], {});
      const source = onlySource(recording);
      expect(source.samplesPerSecond).toBe(RATE);
      expect(await samplesOf(source)).toEqual(expected(RATE, 900, lost));
    });
    await fc.assert(property, { seed: 31, numRuns: 12 });
  });

  test("how the recording is divided into files, nor on their order", async () => {
    const cuts = fc.uniqueArray(fc.integer({ min: 1, max: 35 }), { minLength: 1, maxLength: 4 });
    const property = fc.asyncProperty(cuts, fc.boolean(), async (places, reversed) => {
      const bounds = [0, ...places.map((p) => 25 * p).sort((a, b) => a - b), 900];
      const files = bounds.slice(1).map((to, k) => {
        const from = bounds[k] as number;
        return logFile(tableText({ rate: RATE, rows: to - from, from, time: seconds }), `${k}.csv`);
      });
      const source = onlySource(await openLogs(reversed ? files.reverse() : files, { samplesPerSecond: RATE }));
      expect(await samplesOf(source)).toEqual(expected(RATE, 900));
    });
    await fc.assert(property, { seed: 32, numRuns: 10 });
  });

  test("the length of the file, which is read in blocks", async () => {
    const lost = (i: number) => i % 9973 === 17 || (i > 20_000 && i < 21_000);
    const text = tableText({ rate: RATE, rows: 60_000, time: seconds, lost });
    const source = onlySource(await openLogs([logFile(text)], {}));
    expect([source.samplesPerSecond, source.length]).toEqual([RATE, 60_000]);
    let longest = 0;
    for await (const { samples } of source.blocks()) longest = Math.max(longest, samples[0]?.length ?? 0);
    expect(longest).toBeLessThan(20_000);
    const all = await samplesOf(source);
    const wanted = expected(RATE, 60_000, lost);
    expect(all.map((own, c) => own.findIndex((v, i) => !Object.is(v, wanted[c]?.[i])))).toEqual([-1, -1, -1]);
  });

  test("how often they are read", async () => {
    const source = onlySource(await openLogs([logFile(tableText({ rate: RATE, rows: 500, time: seconds }))], {}));
    for await (const { first } of source.blocks()) if (first === 0) break;
    const [once, again] = await Promise.all([samplesOf(source), samplesOf(source)]);
    expect(once).toEqual(expected(RATE, 500));
    expect(again).toEqual(once);
  });
});

test("gaps are found wherever they are, at any rate, to the digits that are written", async () => {
  const property = fc.asyncProperty(
    fc.integer({ min: 2000, max: 50_000 }),
    fc.uniqueArray(fc.integer({ min: 1, max: 798 }), { maxLength: 6 }),
    fc.integer({ min: 0, max: 400 }),
    fc.constantFrom<(t: number) => string>(
      (t) => t.toFixed(7),
      (t) => t.toExponential(7),
      (t) => String(Number(t.toPrecision(7))),
      String,
    ),
    async (rate, singles, width, written) => {
      const lost = (i: number) => singles.includes(i) || (i >= 200 && i < 200 + width);
      const text = tableText({ rate, rows: 800, time: (i) => written(i / rate), lost });
      const source = onlySource(await openLogs([logFile(text)], { samplesPerSecond: rate, channels: KNOWN }));
      expect(await samplesOf(source)).toEqual(expected(rate, 800, lost));
    },
  );
  await fc.assert(property, { seed: 33, numRuns: 25 });
});

/** Tables of a few cycles at 50 000 per second need not show that they alternate. */
const KNOWN = [
  { channel: 2, quantity: "voltage" as const },
  { channel: 3, quantity: "voltage" as const },
  { channel: 4, quantity: "current" as const },
];

describe("the roundest number of a range", () => {
  test.each([
    [10_239.9, 10_240.1, 10_240],
    [9990, 10_020, 10_000],
    [0.0000997, 0.0001004, 0.0001],
    [2.34567, 2.3457, 2.3457],
    [5, 5, 5],
  ])("%f … %f: %f", (low, high, value) => {
    expect(roundestIn(low, high).value).toBe(value);
  });

  test("as a rate may be that of a round period", () => {
    expect(rateWithin(299.999, 300.001)).toBe(1e6 / 300);
    expect(rateWithin(97.6561, 97.6564)).toBe(10_240);
  });

  test("lies in it and has no more digits than any other there", () => {
    const property = fc.property(
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      (low, share) => {
        const high = low * (1 + share);
        const { value, digits } = roundestIn(low, high);
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
        if (digits <= 15) expect(Number(value.toPrecision(digits))).toBe(value);
      },
    );
    fc.assert(property, { seed: 34, numRuns: 300 });
  });
});
