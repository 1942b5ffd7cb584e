import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { setupSchema } from "../../src/recording/setup.js";
import { FLAWS, withEveryFlaw } from "./flaws.js";
import type { LogColumn, LogTable } from "./log-table.js";
import { CLEAN, sampleFiles, tableOf, VILLAGE } from "./sample-logs.js";
import { samplePqdif } from "./sample-pqdif.js";
import { simulate } from "./sample-site.js";

const folder = new URL("../../sample-logs/", import.meta.url);
const orders = Array.from({ length: 39 }, (_, i) => i + 2);
const WEEK_ROWS = 1008;

const pqdifFiles = await samplePqdif();

describe("sample-logs/", () => {
  const files = [...sampleFiles(), ...pqdifFiles];

  test.each(files.map((file) => [file.name, file] as const))("%s is what the script writes", (name, { bytes }) => {
    const committed = readFileSync(new URL(name, folder));
    // The text, not the packed bytes, which depend on the zlib of the Node at hand.
    const text = (b: Uint8Array) => (name.endsWith(".gz") ? gunzipSync(b) : Buffer.from(b));
    expect(text(committed).equals(text(bytes))).toBe(true);
  });

  test("making them twice gives the same bytes", async () => {
    for (const [i, { bytes }] of [...sampleFiles(), ...(await samplePqdif())].entries())
      expect(Buffer.compare(bytes, files[i]?.bytes as Uint8Array)).toBe(0);
  });

  test("the setups are setups, the files are small", () => {
    const setups = files.filter(({ name }) => name.endsWith(".setup.yaml"));
    expect(setups).toHaveLength(4);
    for (const { bytes } of setups)
      expect(setupSchema.safeParse(parse(new TextDecoder().decode(bytes))).success).toBe(true);
    expect(Math.max(...files.map(({ bytes }) => bytes.length))).toBeLessThan(1_500_000);
    expect(files.reduce((sum, { bytes }) => sum + bytes.length, 0)).toBeLessThan(3_000_000);
  });
});

describe.each([
  ["village-feeder", VILLAGE],
  ["clean-site", CLEAN],
])("%s agrees with itself", (_, site) => {
  const table = tableOf(simulate(site), orders);
  const get = (quantity: LogColumn["quantity"], phase: LogColumn["phase"], rest: Partial<LogColumn> = {}) =>
    numbers(table, quantity, phase, rest);

  test("lowest ≤ mean ≤ highest", () => {
    for (const phase of ["L1", "L2", "L3"] as const) {
      const [min, mean, max] = (["min", "mean", "max"] as const).map((statistic) =>
        get("voltage", phase, { statistic }),
      );
      mean?.forEach((u, i) => {
        expect(min?.[i]).toBeLessThanOrEqual(u);
        expect(max?.[i]).toBeGreaterThanOrEqual(u);
      });
    }
  });

  test("u2 is that of the three phase-to-phase voltages (IEC 61000-4-30, 5.7.1, closed formula)", () => {
    const [l12, l23, l31] = (["L12", "L23", "L31"] as const).map((phase) => get("voltage", phase));
    get("negative-sequence-unbalance", "system").forEach((u2, i) => {
      const u = [l12?.[i], l23?.[i], l31?.[i]] as number[];
      const squares = u.reduce((sum, v) => sum + v ** 2, 0);
      const beta = u.reduce((sum, v) => sum + v ** 4, 0) / squares ** 2;
      const root = Math.sqrt(Math.max(0, 3 - 6 * beta));
      expect(Math.abs(100 * Math.sqrt((1 - root) / (1 + root)) - u2)).toBeLessThan(0.02);
    });
  });

  test("THD is the root sum of the harmonics", () => {
    for (const phase of ["L1", "L2", "L3"] as const) {
      const harmonics = orders.map((order) => get("harmonic-voltage", phase, { order }));
      get("thd-voltage", phase).forEach((thd, i) => {
        const sum = Math.sqrt(harmonics.reduce((total, h) => total + (h[i] as number) ** 2, 0));
        expect(Math.abs(sum - thd)).toBeLessThan(0.02);
      });
    }
  });

  test("Plt is the cubic mean of the last twelve Pst", () => {
    for (const phase of ["L1", "L2", "L3"] as const) {
      const pst = get("pst", phase);
      get("plt", phase).forEach((plt, i) => {
        const expected = Math.cbrt(pst.slice(i - 11, i + 1).reduce((sum, v) => sum + v ** 3, 0) / 12);
        if (i < 11) expect(plt).toBeNaN();
        else expect(Math.abs(expected - plt)).toBeLessThan(0.001);
      });
    }
  });
});

test("village-feeder shows what its description says", () => {
  const table = tableOf(simulate(VILLAGE), orders);
  const week = (quantity: LogColumn["quantity"], phase: LogColumn["phase"], rest: Partial<LogColumn> = {}) =>
    numbers(table, quantity, phase, rest).slice(0, WEEK_ROWS);
  const above = (values: readonly number[], limit: number) => values.filter((v) => v > limit).length;
  expect(above(week("voltage", "L2"), 253)).toBe(42);
  expect(above(week("voltage", "L1"), 253) + above(week("voltage", "L3"), 253)).toBe(0);
  for (const [order, edition2022] of [
    [15, 1],
    [21, 0.75],
  ] as const) {
    const perPhase = (["L1", "L2", "L3"] as const).map((phase) => week("harmonic-voltage", phase, { order }));
    for (const values of perPhase) expect(above(values, 0.5)).toBeGreaterThan(50);
    for (const values of perPhase) expect(above(values, edition2022)).toBe(0);
  }
  expect(table.flagged?.reduce((sum, f) => sum + f, 0)).toBe(2);
});

describe("every-flaw", () => {
  const sound = tableOf(simulate(VILLAGE), orders);
  const flawed = withEveryFlaw(sound);
  const rowOf = (i: number) => flawed.starts.indexOf(sound.starts[i] as number);

  test("has the gap, the repeated, disagreeing and late rows, and the clock step", () => {
    const times = (i: number) => flawed.starts.filter((t) => t === sound.starts[i]).length;
    expect(FLAWS.gap.map(times)).toEqual([0, 0]);
    expect([...FLAWS.repeatedRows, ...FLAWS.conflictingRows].map(times)).toEqual([2, 2, 2, 2, 2]);
    expect(rowOf(FLAWS.lateRows[0])).toBeGreaterThan(rowOf(FLAWS.lateRows[1] + 1));
    const first = FLAWS.clockStep[0];
    const before = rowOf(first - 1);
    expect((flawed.starts[before + 1] as number) - (flawed.starts[before] as number)).toBe(800e6);
    const [one, two] = [rowOf(FLAWS.conflictingRows[0]), rowOf(FLAWS.conflictingRows[0]) + 1];
    const u = numbers(flawed, "voltage", "L1", {});
    expect((u[two] as number) - (u[one] as number)).toBeCloseTo(1.5, 10);
  });

  test("leaves the phase-to-phase voltages alone while the star point wanders", () => {
    const i = FLAWS.openNeutral[0];
    const change = (phase: LogColumn["phase"]) =>
      (numbers(flawed, "voltage", phase, {})[rowOf(i)] as number) - (numbers(sound, "voltage", phase, {})[i] as number);
    expect((["L12", "L23", "L31"] as const).map(change)).toEqual([0, 0, 0]);
    expect(change("L1")).toBeLessThan(-17);
    expect(change("L2")).toBeGreaterThan(8);
  });

  test("does not touch the table it was made from", () => {
    expect(tableOf(simulate(VILLAGE), orders)).toEqual(sound);
  });
});

function numbers(
  table: LogTable,
  quantity: LogColumn["quantity"],
  phase: LogColumn["phase"],
  { order, statistic = "mean" }: Partial<LogColumn>,
): number[] {
  const found = table.columns.find(
    (c) => c.quantity === quantity && c.phase === phase && c.order === order && c.statistic === statistic,
  );
  if (found === undefined) throw new RangeError(`no column ${quantity} ${phase}`);
  return Array.from(found.digits, (d) => d / 10 ** found.decimals);
}
