import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MINUTE } from "../../src/recording/time.js";
import type { Assessment, Verdict } from "../../src/rules/assessment.js";
import { type Dialect, PLAIN } from "../support/dialect.js";
import { column, type LogTable, rows, ticks } from "../support/log-table.js";
import { random } from "../support/random.js";
import { assessLogs, assessTable } from "../support/whole-run.js";
import { setupOf, writeLog } from "../support/write-log.js";

/** Laws that hold for every recording, as whole runs from the bytes of a log. */

const SETUP = { connection: "delta", declaredVoltage: 400 } as const;
const BETWEEN = ["L12", "L23", "L31"] as const;
/** ±10 % of 400 V, −15 % for all values; 5 %, 7 % and so on never come near. */
const LEVELS = { inside: [390, 412], high: [440.01, 452], low: [342, 359.99] } as const;

interface Recipe {
  readonly seed: number;
  readonly count: number;
  /** Of each phase, in thousandths of all intervals. */
  readonly high: number;
  readonly low: number;
  readonly missing: number;
}

/** Recordings about the edge: of a whole week 5 % may lie outside and 5 % may be missing, that is 50 in a thousand each. */
const recipe = fc.record({
  seed: fc.nat(),
  count: fc.oneof(
    { weight: 3, arbitrary: fc.constant(1008) },
    { weight: 1, arbitrary: fc.integer({ min: 300, max: 1400 }) },
  ),
  high: fc.constantFrom(0, 0, 0, 5, 30),
  low: fc.integer({ min: 20, max: 60 }),
  missing: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 45 }), fc.integer({ min: 1, max: 80 })),
});

function recording({ seed, count, high, low, missing }: Recipe): LogTable {
  const draw = (level: keyof typeof LEVELS, uniform: number) =>
    LEVELS[level][0] + uniform * (LEVELS[level][1] - LEVELS[level][0]);
  const voltage = (phase: (typeof BETWEEN)[number]) => {
    const source = random(seed, phase);
    const values = Array.from({ length: count }, () => {
      const kind = source.below(1000);
      if (kind < missing) return Number.NaN;
      const level = kind < missing + high ? "high" : kind < missing + high + low ? "low" : "inside";
      return draw(level, source.uniform());
    });
    return column({ quantity: "voltage", phase }, 2, values);
  };
  const pst = random(seed, "pst");
  return {
    interval: 10 * MINUTE,
    // From the 14th on the day of a date cannot be taken for its month.
    starts: ticks(Date.parse("2026-05-14T00:00Z") * 1000, 10 * MINUTE, count),
    columns: [
      ...BETWEEN.map(voltage),
      column(
        { quantity: "pst", phase: "L12" },
        3,
        Array.from({ length: count }, () => 0.7 + 0.4 * pst.uniform()),
      ),
    ],
  };
}

/** Every verdict there is, with the place it belongs to. */
function verdicts({ verdict, weeks }: Assessment): [string, Verdict][] {
  return [
    ["site", verdict],
    ...weeks
      .filter((w) => w.kind === "consecutive")
      .flatMap((w) =>
        w.requirements.map((r): [string, Verdict] => [`${w.start} ${r.id} ${r.phase} ${r.order ?? ""}`, r.verdict]),
      ),
  ];
}

function shuffled(count: number, seed: number): number[] {
  const source = random(seed, "shuffle");
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = source.below(i + 1);
    [order[i], order[j]] = [order[j] as number, order[i] as number];
  }
  return order;
}

const check = (property: fc.IAsyncProperty<unknown>, numRuns: number) => fc.assert(property, { numRuns, seed: 50160 });

describe("what cannot change a verdict", () => {
  test("the order of the rows", async () => {
    await check(
      fc.asyncProperty(recipe, fc.nat(), async (made, seed) => {
        const table = recording(made);
        const mixed = rows(table, shuffled(made.count, seed));
        const [one, other] = [await assessTable(table, SETUP), await assessTable(mixed, SETUP)];
        expect(other.weeks).toEqual(one.weeks);
        expect(other.verdict).toBe(one.verdict);
      }),
      40,
    );
  });

  test("splitting the log into files, named in any order", async () => {
    const cuts = fc.array(fc.integer({ min: 1, max: 299 }), { minLength: 1, maxLength: 4 });
    await check(
      fc.asyncProperty(recipe, cuts, fc.nat(), async (made, ends, seed) => {
        const table = recording(made);
        const bounds = [...new Set([0, ...ends, made.count])].sort((a, b) => a - b);
        const parts = bounds.slice(1).map((end, i) => {
          const from = bounds[i] as number;
          const indexes = Array.from({ length: end - from }, (_, k) => from + k);
          return { name: `part-${i}.csv`, bytes: writeLog(rows(table, indexes), PLAIN) };
        });
        const order = shuffled(parts.length, seed);
        const split = await assessLogs(
          order.map((i) => parts[i] as (typeof parts)[0]),
          { ...SETUP, ...setupOf(PLAIN) },
        );
        const whole = await assessTable(table, SETUP);
        expect(split.weeks).toEqual(whole.weeks);
        expect(split.verdict).toBe(whole.verdict);
      }),
      30,
    );
  });

  test("units and dialect", async () => {
    await check(
      fc.asyncProperty(recipe, dialect(), async (made, written) => {
        const table = recording(made);
        const [one, other] = [await assessTable(table, SETUP), await assessTable(table, SETUP, written)];
        expect(other.weeks).toEqual(one.weeks);
        expect(other.verdict).toBe(one.verdict);
      }),
      60,
    );
  });
});

test("adding exceedances never improves a verdict", async () => {
  const severity = ["not-assessed", "for-information", "conforms", "undecided", "does-not-conform"];
  const added = fc.record({
    seed: fc.nat(),
    steps: fc.array(fc.oneof(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 60 })), {
      minLength: 1,
      maxLength: 5,
    }),
    level: fc.constantFrom("high", "low", "low"),
  });
  await check(
    fc.asyncProperty(recipe, added, async (made, { seed, steps, level }) => {
      const table = recording(made);
      const source = random(seed, "added");
      let before = verdicts(await assessTable(table, SETUP));
      for (const count of steps) {
        for (const { digits } of table.columns.slice(0, BETWEEN.length)) {
          for (let k = 0; k < count; k++) {
            const i = source.below(digits.length);
            if (!Number.isNaN(digits[i])) digits[i] = (level === "high" ? 44_100 : 34_500) + source.below(500);
          }
        }
        const after = verdicts(await assessTable(table, SETUP));
        expect(after.map(([place]) => place)).toEqual(before.map(([place]) => place));
        for (const [i, [place, verdict]] of before.entries()) {
          const now = after[i]?.[1] as Verdict;
          expect(severity.indexOf(now), place).toBeGreaterThanOrEqual(severity.indexOf(verdict));
        }
        before = after;
      }
    }),
    30,
  );
});

/** Any dialect that can be read without guessing: no mark is both decimal sign, group separator or delimiter at once. */
function dialect(): fc.Arbitrary<Dialect> {
  return (
    fc
      .record({
        language: fc.constantFrom<Dialect["language"]>("en", "de", "fr", "it", "es"),
        delimiter: fc.constantFrom<Dialect["delimiter"]>(",", ";", "\t", "|"),
        decimal: fc.constantFrom<Dialect["decimal"]>(".", ","),
        encoding: fc.constantFrom<Dialect["encoding"]>("utf-8", "utf-8-bom", "utf-16le-bom", "latin-1"),
        quoting: fc.constantFrom<Dialect["quoting"]>("where-needed", "text", "all"),
        lineEnd: fc.constantFrom<Dialect["lineEnd"]>("\n", "\r\n"),
        preamble: fc.constantFrom<Dialect["preamble"]>([], ["Site: end of line"], ["first", "", "third line: 3"]),
        headerRows: fc.constantFrom<Dialect["headerRows"]>(1, 2),
        unitsRow: fc.boolean(),
        gzip: fc.boolean(),
        stamp: fc.constantFrom<Dialect["stamp"]>(
          "iso-offset",
          "iso-utc",
          "iso-local",
          "d.m.y",
          "d/m/y",
          "m/d/y 12-hour",
          "d.m.y in two columns",
          "epoch-s",
          "epoch-ms",
          "serial-days",
        ),
        zone: fc.constantFrom("UTC", "Europe/Vienna", "America/New_York", "Asia/Kolkata", "Pacific/Auckland"),
        label: fc.constantFrom<Dialect["label"]>("start", "end"),
        missing: fc.constantFrom<Dialect["missing"]>([""], ["---"], ["NaN"], ["OL"], ["n/a", "-"]),
        voltageUnit: fc.constantFrom<Dialect["voltageUnit"]>("V", "kV", { perUnitOf: 400 }),
      })
      .map((made) => ({ ...made, id: "any" }))
      // A decimal comma between commas is quoted, which is unambiguous only where every such cell is.
      .filter(({ decimal, delimiter }) => !(decimal === "," && delimiter === ","))
  );
}
