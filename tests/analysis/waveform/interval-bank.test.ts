import { describe, expect, it } from "vitest";
import { IntervalBank } from "../../../src/analysis/waveform/interval-bank.js";
import type { BasicWindow } from "../../../src/analysis/waveform/phenomenon.js";
import { HOUR, type Instant, MINUTE, SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { one } from "./support.js";

const WINDOW = SECOND / 5;
const COLUMNS = [
  { quantity: "voltage", phase: "L1", unit: "V", rule: "rms" },
  { quantity: "active-power", phase: "L1", unit: "W", rule: "mean" },
] as const;

function window(start: Instant, length = WINDOW, flagged = false): BasicWindow {
  return { from: 0, to: 0, start, end: start + length, cycles: 10, flagged, channels: [] };
}

/** Windows one after the other from a start; `value` says what each holds. */
function fill(
  bank: IntervalBank,
  from: Instant,
  count: number,
  value: (n: number) => number,
  { length = WINDOW, flagged = (_: number): boolean => false } = {},
): void {
  for (let n = 0; n < count; n++) {
    bank.add(window(from + n * length, length, flagged(n)), Float64Array.of(value(n), value(n)));
  }
}

describe("aggregation of basic windows", () => {
  /** IEC 61000-4-30: the root of the mean of the squares; powers are arithmetic means. */
  it("over ten minutes of the clock is √((1000·100² + 2000·200²)/3000) for 100 V and 200 V, and a mean for power", () => {
    const bank = new IntervalBank(COLUMNS);
    fill(bank, START, 3000, (n) => (n < 1000 ? 100 : 200));
    const series = bank.finish();
    const u = one(series, { quantity: "voltage" }, 10 * MINUTE);
    expect([...u.values]).toEqual([Math.sqrt((1000 * 100 ** 2 + 2000 * 200 ** 2) / 3000)]);
    expect([u.min?.[0], u.max?.[0]]).toEqual([100, 200]);
    expect([...u.coverage]).toEqual([1]);
    expect(one(series, { quantity: "active-power" }, 10 * MINUTE).values[0]).toBeCloseTo(500 / 3, 10);
  });

  it("counts the window that overlaps the end of ten minutes to these, and only its part in their coverage", () => {
    const bank = new IntervalBank(COLUMNS);
    // 200.5 ms each: the 2993rd window begins 0.1 s before the tick.
    fill(bank, START, 2993, () => 100, { length: 200_500 });
    const overlapping = START + 2992 * 200_500;
    expect(overlapping).toBeLessThan(START + 10 * MINUTE);
    expect(overlapping + 200_500).toBeGreaterThan(START + 10 * MINUTE);
    fill(bank, START + 10 * MINUTE, 5, () => 300);
    const u = one(bank.finish(), { quantity: "voltage" }, 10 * MINUTE);
    expect([...u.starts]).toEqual([START, START + 10 * MINUTE]);
    expect([...u.values]).toEqual([100, 300]);
    expect(u.coverage[0]).toBe(1);
    expect(u.coverage[1]).toBeCloseTo(1 / 600, 9);
  });

  it("joins fifteen windows to the 150/180-cycle interval", () => {
    const bank = new IntervalBank(COLUMNS, ["3s"]);
    fill(bank, START + SECOND, 37, (n) => Math.floor(n / 15));
    const { starts, values, coverage } = one(bank.finish(), { quantity: "voltage" });
    expect([...starts]).toEqual([1, 4, 7].map((s) => START + s * SECOND));
    expect([...values]).toEqual([0, 1, 2]);
    expect([...coverage].map((c) => c.toFixed(3))).toEqual(["1.000", "1.000", "0.467"]);
  });

  /** IEC 61000-4-30, overlap 2. */
  it("begins a 150/180-cycle interval at a ten-minute tick while the running one goes on to its fifteenth window", () => {
    const bank = new IntervalBank(COLUMNS, ["3s"]);
    fill(bank, START - 2 * SECOND, 10, () => 10);
    fill(bank, START, 30, (n) => (n < 15 ? 20 : 30));
    const { starts, values, coverage } = one(bank.finish(), { quantity: "voltage" });
    expect([...starts]).toEqual([START - 2 * SECOND, START, START + 3 * SECOND]);
    expect(values[0]).toBeCloseTo(Math.sqrt((10 * 10 ** 2 + 5 * 20 ** 2) / 15), 10);
    expect([...values.subarray(1)]).toEqual([20, 30]);
    expect([...coverage]).toEqual([1, 1, 1]);
  });

  it("ends a 150/180-cycle interval at a gap", () => {
    const bank = new IntervalBank(COLUMNS, ["3s"]);
    fill(bank, START + SECOND, 6, () => 10);
    bank.gap();
    fill(bank, START + 20 * SECOND, 15, () => 20);
    const { starts, values, coverage } = one(bank.finish(), { quantity: "voltage" });
    expect([...starts]).toEqual([START + SECOND, START + 20 * SECOND]);
    expect([...values]).toEqual([10, 20]);
    expect(coverage[0]).toBeCloseTo(0.4, 10);
  });

  it("flags every interval that a flagged window belongs to", () => {
    const bank = new IntervalBank(COLUMNS, ["window", "3s", "10min"]);
    fill(bank, START, 3010, () => 1, { flagged: (n) => n === 17 });
    const series = bank.finish();
    const flags = (interval: number) => [...one(series, { quantity: "voltage" }, interval).flagged].indexOf(1);
    expect([WINDOW, 3 * SECOND, 10 * MINUTE].map(flags)).toEqual([17, 1, 0]);
    expect(one(series, { quantity: "voltage" }, 10 * MINUTE).flagged[1]).toBe(0);
  });

  it("leaves out missing values, each column by itself", () => {
    const bank = new IntervalBank(COLUMNS, ["window", "3s", "10min"]);
    for (let n = 0; n < 3000; n++) {
      bank.add(window(START + n * WINDOW), Float64Array.of(n % 4 === 0 ? Number.NaN : 8, 5));
    }
    const series = bank.finish();
    const u = one(series, { quantity: "voltage" }, 10 * MINUTE);
    expect(u.values[0]).toBe(8);
    expect(u.coverage[0]).toBeCloseTo(0.75, 9);
    expect(one(series, { quantity: "active-power" }, 10 * MINUTE).coverage[0]).toBe(1);
    expect(one(series, { quantity: "voltage" }, WINDOW).values).toHaveLength(2250);
  });

  it("makes two hours of twelve ten-minute values, of valid ones only", () => {
    const bank = new IntervalBank(COLUMNS);
    // The fourth ten minutes miss their second half.
    for (let n = 0; n < 36_000; n++) {
      const tenMinutes = Math.floor(n / 3000);
      if (tenMinutes === 3 && n % 3000 >= 1500) continue;
      bank.add(window(START + n * WINDOW), Float64Array.of(tenMinutes < 6 ? 100 : 200, 7));
    }
    const u = one(bank.finish(), { quantity: "voltage" }, 2 * HOUR);
    expect([...u.starts]).toEqual([START]);
    expect(u.values[0]).toBeCloseTo(Math.sqrt((5 * 100 ** 2 + 6 * 200 ** 2) / 11), 10);
    expect(u.coverage[0]).toBeCloseTo(11 / 12, 10);
  });

  it("has no series without a value", () => {
    const bank = new IntervalBank(COLUMNS, ["10min"]);
    bank.add(window(START), Float64Array.of(Number.NaN, 1));
    expect(bank.finish().map((s) => s.quantity)).toEqual(["active-power"]);
  });
});
