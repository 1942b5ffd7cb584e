import { describe, expect, test } from "vitest";
import { MINUTE } from "../../src/recording/time.js";
import type { Assessment } from "../../src/rules/assessment.js";
import { type Dialect, PLAIN } from "../support/dialect.js";
import { column, type LogTable, ticks } from "../support/log-table.js";
import { random } from "../support/random.js";
import { assessTable, rowOf } from "../support/whole-run.js";

/**
 * Counts on the edge, as whole runs from the text of a log. Limits of EN 50160:2010, low voltage, Un 230 V:
 * 95 % of a week within 207 … 253 V, all of it within 195.5 … 253 V. Of 1008 ten-minute intervals 50 may lie outside.
 */
const WEEK_ROWS = 1008;
const SETUP = { connection: "star", declaredVoltage: 230 } as const;
const MOST = "supply-voltage";
const ALWAYS = "supply-voltage-always";
const HIGH = 253.01;
const LOW = 206.99;

/** Three phases that vary about 230 V as voltages do, with the given values of L2 put in from the given row on. */
function log(count: number, ...changes: readonly { from: number; values: readonly number[] }[]): LogTable {
  const voltage = (phase: "L1" | "L2" | "L3") => {
    const source = random(50160, phase);
    const values = Array.from({ length: count }, () => 229 + 2 * source.uniform());
    if (phase === "L2") for (const { from, values: put } of changes) values.splice(from, put.length, ...put);
    return column({ quantity: "voltage", phase }, 2, values);
  };
  return {
    interval: 10 * MINUTE,
    starts: ticks(Date.parse("2026-06-01T00:00Z") * 1000, 10 * MINUTE, count),
    columns: [voltage("L1"), voltage("L2"), voltage("L3")],
  };
}

const repeated = (value: number, count: number) =>
  // A hundredth of a volt to and fro, so that no run of equal readings arises; outside stays outside.
  Array.from({ length: count }, (_, i) => value + (value > 230 ? 0.01 : -0.01) * (i % 3));

const run = (table: LogTable, dialect?: Dialect) => assessTable(table, SETUP, dialect);
const first = (result: Assessment, id: string) => rowOf(result.weeks[0], id, "L2");

describe("a whole week", () => {
  test("50 of 1008 outside conform, 51 do not", async () => {
    const fifty = await run(log(WEEK_ROWS, { from: 300, values: repeated(LOW, 50) }));
    expect(first(fifty, MOST)).toMatchObject({ n: 1008, outside: 50, allowed: 50, verdict: "conforms", robust: true });
    expect(fifty.verdict).toBe("conforms");
    const fiftyOne = await run(log(WEEK_ROWS, { from: 300, values: repeated(LOW, 51) }));
    expect(first(fiftyOne, MOST)).toMatchObject({ n: 1008, outside: 51, allowed: 50, verdict: "does-not-conform" });
    expect(fiftyOne.verdict).toBe("does-not-conform");
  });

  test("253.0 V conforms, 253.01 V does not: no value may lie above +10 %", async () => {
    const at = await run(log(WEEK_ROWS, { from: 300, values: [253] }));
    expect(first(at, ALWAYS)).toMatchObject({ limit: { min: 195.5, max: 253 }, outside: 0, verdict: "conforms" });
    expect(at.verdict).toBe("conforms");
    const above = await run(log(WEEK_ROWS, { from: 300, values: [253.01] }));
    expect(first(above, ALWAYS)).toMatchObject({
      outside: 1,
      worst: { value: 253.01, at: "2026-06-03T02:00:00Z" },
      verdict: "does-not-conform",
    });
    expect(first(above, MOST).verdict).toBe("conforms");
    expect(above.verdict).toBe("does-not-conform");
  });

  test("195.5 V conforms, 195.4 V does not: no value may lie below −15 %", async () => {
    const at = await run(log(WEEK_ROWS, { from: 300, values: [195.5] }));
    expect(first(at, ALWAYS)).toMatchObject({ outside: 0, verdict: "conforms" });
    const below = await run(log(WEEK_ROWS, { from: 300, values: [195.4] }));
    expect(first(below, ALWAYS)).toMatchObject({ outside: 1, worst: { value: 195.4 }, verdict: "does-not-conform" });
    expect(below.verdict).toBe("does-not-conform");
  });

  test("too high and too low count together: 26 high and 25 low fail, though each side alone passes", async () => {
    const high = { from: 100, values: repeated(HIGH, 26) };
    const low = { from: 600, values: repeated(LOW, 25) };
    expect(first(await run(log(WEEK_ROWS, high)), MOST)).toMatchObject({ outside: 26, verdict: "conforms" });
    expect(first(await run(log(WEEK_ROWS, low)), MOST)).toMatchObject({ outside: 25, verdict: "conforms" });
    expect(first(await run(log(WEEK_ROWS, high, low)), MOST)).toMatchObject({
      outside: 51,
      verdict: "does-not-conform",
    });
  });

  test("phases count each by itself", async () => {
    const result = await run(log(WEEK_ROWS, { from: 300, values: repeated(LOW, 51) }));
    expect((["L1", "L2", "L3"] as const).map((phase) => rowOf(result.weeks[0], MOST, phase).outside)).toEqual([
      0, 51, 0,
    ]);
  });
});

describe("half a week", () => {
  test("30 of 504 outside are undecided", async () => {
    const result = await run(log(504, { from: 100, values: repeated(LOW, 30) }));
    expect(result.weeks[0]?.complete).toBe(false);
    expect(first(result, MOST)).toMatchObject({
      n: 504,
      outside: 30,
      missing: 504,
      verdict: "undecided",
      robust: false,
    });
    expect(result.verdict).toBe("undecided");
  });

  test("51 outside already fail the week", async () => {
    const result = await run(log(504, { from: 100, values: repeated(LOW, 51) }));
    expect(first(result, MOST)).toMatchObject({ n: 504, outside: 51, verdict: "does-not-conform", robust: true });
    expect(result.verdict).toBe("does-not-conform");
  });
});

describe("a week across a change of the clock has 1008 intervals", () => {
  const local: Dialect = { ...PLAIN, id: "local", delimiter: ";", stamp: "d.m.y", zone: "Europe/Vienna" };

  test.each([
    ["to summer time, 29 March 2026", "2026-03-25T23:00Z"],
    ["to winter time, 25 October 2026", "2026-10-21T22:00Z"],
  ])("%s", async (_, start) => {
    const table = log(WEEK_ROWS, { from: 300, values: repeated(LOW, 50) });
    const starts = ticks(Date.parse(start) * 1000, 10 * MINUTE, WEEK_ROWS);
    const result = await run({ ...table, starts }, local);
    expect(result.recording.intervals).toMatchObject({ expected: 1008, present: 1008, missing: 0, duplicate: 0 });
    expect(result.weeks.map((w) => [w.start, w.complete])).toEqual([[start.replace("Z", ":00Z"), true]]);
    expect(first(result, MOST)).toMatchObject({ n: 1008, outside: 50, missing: 0, verdict: "conforms" });
  });
});

test("the sliding window finds a bad week that no consecutive week shows", async () => {
  const split = { from: WEEK_ROWS - 30, values: repeated(LOW, 60) };
  const result = await run(log(2 * WEEK_ROWS, split));
  const consecutive = result.weeks.filter((w) => w.kind === "consecutive");
  expect(consecutive.map((w) => rowOf(w, MOST, "L2").outside)).toEqual([30, 30]);
  expect(consecutive.map((w) => w.verdict)).toEqual(["conforms", "conforms"]);
  const sliding = result.weeks.filter((w) => w.kind === "worst-sliding");
  expect(sliding.map((w) => w.verdict)).toContain("does-not-conform");
  const worst = sliding.flatMap((w) => w.requirements).find((r) => r.id === MOST && r.phase === "L2");
  expect(worst).toMatchObject({ n: 1008, outside: 60, verdict: "does-not-conform" });
  expect(result.verdict).toBe("does-not-conform");
});
