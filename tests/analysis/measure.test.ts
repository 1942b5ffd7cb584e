import { describe, expect, it } from "vitest";
import { measureLogged as measure } from "../../src/analysis/index.js";
import { isValid } from "../../src/recording/measurements.js";
import type { LoggedSeries, Recording } from "../../src/recording/recording.js";
import { DAY, HOUR, MINUTE, SECOND } from "../../src/recording/time.js";
import { axis, logged, START } from "../support/series.js";

function recording(...series: LoggedSeries[]): Recording {
  return {
    kind: "logged-series",
    waveforms: [],
    sources: [],
    start: START,
    end: START + DAY,
    series,
    ledger: {
      columns: [],
      timeBase: { zone: "UTC", zoneOrigin: "given", intervalLabel: "start", labelOrigin: "given", stampForm: "test" },
      remarks: [],
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      unplaced: 0,
      clockSteps: [],
      clockChanges: [],
    },
  };
}
const find = (m: ReturnType<typeof measure>, quantity: string, phase = "L1", order?: number) =>
  m.series.find((s) => s.quantity === quantity && s.phase === phase && s.order === order);

describe("measure", () => {
  it("takes ten-minute values as they were logged", () => {
    const m = measure(recording(logged("voltage", "L1", [230, Number.NaN, 231])));
    const u = find(m, "voltage");
    expect(u).toMatchObject({ interval: 10 * MINUTE, origin: "logged" });
    expect([0, 1, 2].map((i) => u && isValid(u, i))).toEqual([true, false, true]);
  });

  it("combines frequency to 10 s by the mean and power to 10 min by the mean", () => {
    const second = axis(20, SECOND);
    const f = logged(
      "frequency",
      "system",
      Array.from({ length: 20 }, (_, i) => (i < 10 ? 50 : 50 + i / 100)),
      { axis: second },
    );
    const p = logged("active-power", "system", [-100, 300], { interval: 5 * MINUTE });
    const m = measure(recording(f, p));
    expect(find(m, "frequency", "system")).toMatchObject({ interval: 10 * SECOND, origin: "computed" });
    expect(find(m, "frequency", "system")?.values[1]).toBeCloseTo(50.145, 12);
    expect([...(find(m, "active-power", "system")?.values ?? [])]).toEqual([100]);
  });

  it("keeps what was logged too slowly at its own interval and says what cannot be had", () => {
    const m = measure(
      recording(
        logged("voltage", "L1", [230, 230], { interval: 15 * MINUTE }),
        logged("frequency", "system", [50], { interval: 10 * MINUTE }),
      ),
    );
    expect(find(m, "voltage")?.interval).toBe(15 * MINUTE);
    expect(
      m.unavailable.map((u) => [
        u.quantity,
        String(u.reason).includes("15 min") || String(u.reason).includes("10 min"),
      ]),
    ).toEqual(
      expect.arrayContaining([
        ["voltage", true],
        ["frequency", true],
      ]),
    );
  });

  it("prefers the logger's own ten-minute values to finer ones, and serves an interval that a rule asks for", () => {
    const fine = logged("voltage", "L1", Array(20).fill(220), { interval: MINUTE });
    const own = logged("voltage", "L1", [230, 231]);
    const m = measure(recording(fine, own), [{ quantity: "voltage", interval: MINUTE }]);
    expect(m.series.filter((s) => s.quantity === "voltage").map((s) => [s.interval, s.values[0]])).toEqual([
      [10 * MINUTE, 230],
      [MINUTE, 220],
    ]);
  });
});

describe("several sources of one quantity", () => {
  const start = (minutes: number) => START + minutes * MINUTE;

  it("leaves no part of a recording out when its interval changes", () => {
    const own = logged("voltage", "L1", [231, 231], { start: START });
    const fine = logged("voltage", "L1", Array(20).fill(260), { interval: MINUTE, start: start(20) });
    const m = measure(recording(own, fine));
    const u = find(m, "voltage");
    expect([...(u?.starts ?? [])]).toEqual([0, 10, 20, 30].map(start));
    expect([...(u?.values ?? [])]).toEqual([231, 231, 260, 260]);
    expect(u?.origin).toBe("computed");
  });

  it("fills a missing ten-minute value from finer ones, and takes the longer of two finer intervals", () => {
    const own = logged("voltage", "L1", [231, Number.NaN]);
    const five = logged("voltage", "L1", [240, 240, 241, 241], { interval: 5 * MINUTE });
    const one = logged("voltage", "L1", Array(20).fill(250), { interval: MINUTE });
    expect([...(find(measure(recording(own, one, five)), "voltage")?.values ?? [])]).toEqual([231, 241]);
  });

  it("takes Plt from Pst where there are Pst, and as logged elsewhere", () => {
    const pst = logged("pst", "L1", Array(12).fill(0.5));
    const plt = logged("plt", "L1", [9, 3], { interval: 2 * HOUR });
    expect([...(find(measure(recording(pst, plt)), "plt")?.values ?? [])]).toEqual([0.5, 3]);
  });

  it("takes the logged THD and u2, and derives them only where they are missing", () => {
    const ax = axis(2);
    const orders = Array.from({ length: 39 }, (_, i) =>
      logged("harmonic-voltage", "L1", [1, 1], { order: i + 2, axis: ax }),
    );
    const thd = logged("thd-voltage", "L1", [2, Number.NaN], { axis: ax });
    const lines = (["L12", "L23", "L31"] as const).map((p, i) =>
      logged("voltage", p, [390 + 10 * i, 390 + 10 * i], { axis: ax }),
    );
    const u2 = logged("negative-sequence-unbalance", "system", [0.7, Number.NaN], { axis: ax });
    const m = measure(recording(...orders, thd, ...lines, u2));
    expect([...(find(m, "thd-voltage")?.values ?? [])]).toEqual([2, Math.sqrt(39)]);
    expect(find(m, "negative-sequence-unbalance", "system")?.values[0]).toBe(0.7);
    expect(find(m, "negative-sequence-unbalance", "system")?.values[1]).toBeCloseTo(2.88803, 5);
  });
});

describe("what follows from logged values", () => {
  const ax = axis(2);
  const harmonic = (order: number, values: number[], unit: "%" | "V") =>
    logged("harmonic-voltage", "L1", values, { order, unit, axis: ax });

  it("computes THD as the root sum of squares of orders 2 to 40 and of no others", () => {
    // 39 orders of 1 % give √39 %; orders 1 and 41 must not count.
    const orders = Array.from({ length: 41 }, (_, i) => harmonic(i + 1, [i + 1 === 1 ? 100 : 1, 1], "%"));
    const m = measure(recording(...orders));
    expect(find(m, "thd-voltage")).toMatchObject({ origin: "computed" });
    expect(find(m, "thd-voltage")?.values[0]).toBeCloseTo(Math.sqrt(39), 12);
  });

  it("computes no THD from part of the orders, and says so", () => {
    const m = measure(recording(...[2, 3, 5, 7].map((h) => harmonic(h, [1, 1], "%"))));
    expect(find(m, "thd-voltage")).toBeUndefined();
    expect(String(m.unavailable.find((u) => u.quantity === "thd-voltage")?.reason)).toMatch(/holds 4 of these 39/);
  });

  it("puts harmonics in volts in % of the logged fundamental", () => {
    const m = measure(recording(harmonic(1, [200, 230], "V"), harmonic(5, [10, 4.6], "V")));
    expect([...(find(m, "harmonic-voltage", "L1", 5)?.values ?? [])]).toEqual([5, 2]);
  });

  it("finds the fundamental as the r.m.s. voltage without its harmonics where order 1 is not logged", () => {
    // IEEE 1459-2010 Annex B: V1 = 100, V3 = 8, V5 = 15, V7 = 5 V; V = 101.5579 V (computed from the annex's inputs).
    const u = logged("voltage", "L1", [Math.sqrt(100 ** 2 + 8 ** 2 + 15 ** 2 + 5 ** 2), 0], { axis: ax });
    expect(u.values[0]).toBeCloseTo(101.5579, 4);
    const m = measure(recording(u, harmonic(3, [8, 0], "V"), harmonic(5, [15, 0], "V"), harmonic(7, [5, 0], "V")));
    expect(find(m, "harmonic-voltage", "L1", 5)?.values[0]).toBeCloseTo(15, 10);
    expect(find(m, "harmonic-voltage", "L1", 5)?.values[1]).toBeNaN();
  });

  it("asks for the fundamental where neither it nor the voltage is there", () => {
    const m = measure(recording(harmonic(5, [10, 10], "V")));
    expect(String(m.unavailable.find((u) => u.quantity === "harmonic-voltage")?.reason)).toMatch(/fundamental/);
  });

  it("computes u2 only from three phase-to-phase voltages of one time axis", () => {
    const l12 = logged("voltage", "L12", [400, 400], { axis: ax });
    const l23 = logged("voltage", "L23", [390, 400], { axis: ax });
    const l31 = logged("voltage", "L31", [410, Number.NaN], { axis: ax });
    const u2 = find(measure(recording(l12, l23, l31)), "negative-sequence-unbalance", "system");
    expect(u2?.values[0]).toBeCloseTo(2.88803, 5);
    expect(u2?.values[1]).toBeNaN();
    expect(measure(recording(l12, l23)).unavailable.some((u) => u.quantity === "negative-sequence-unbalance")).toBe(
      true,
    );
  });
});

describe("Plt", () => {
  const pst = (values: number[], start = START) => logged("pst", "L1", values, { start });

  it("is made of twelve Pst on the two-hour blocks of the clock; a block with one missing is not valid", () => {
    const values = Array(36).fill(1);
    values[15] = Number.NaN;
    const plt = find(measure(recording(pst(values, START + 10 * MINUTE))), "plt");
    expect([...(plt?.starts ?? [])]).toEqual([0, 1, 2, 3].map((k) => START + k * 2 * HOUR));
    expect([0, 1, 2, 3].map((i) => plt && isValid(plt, i))).toEqual([false, false, true, false]);
  });

  it("comes from the Pst rather than from a logged Plt", () => {
    const logged2h = logged("plt", "L1", [9], { interval: 2 * HOUR });
    const m = measure(recording(pst(Array(12).fill(0.5)), logged2h));
    expect(m.series.filter((s) => s.quantity === "plt").map((s) => [s.origin, s.values[0]])).toEqual([
      ["computed", 0.5],
    ]);
  });

  it("logged in ten-minute rows is the value of each block's last row, or its only value", () => {
    const sliding = [
      ...Array.from({ length: 12 }, (_, i) => i / 10),
      ...Array(11).fill(Number.NaN),
      0.7,
      Number.NaN,
      0.4,
      ...Array(10).fill(Number.NaN),
      1,
      2,
      ...Array(10).fill(Number.NaN),
    ];
    const plt = find(measure(recording(logged("plt", "L1", sliding))), "plt");
    expect([...(plt?.values ?? [])]).toEqual([1.1, 0.7, 0.4, Number.NaN]);
    expect(plt?.interval).toBe(2 * HOUR);
  });

  it("logged off the clock's tick is the value of the row in which the block ends, and flagged with any of its rows", () => {
    const plt = logged(
      "plt",
      "L1",
      Array.from({ length: 24 }, (_, i) => i / 10),
      { start: START + 3 * MINUTE },
    );
    plt.axis.flagged[4] = 1;
    const blocks = find(measure(recording(plt)), "plt");
    expect([...(blocks?.values ?? [])]).toEqual([1.1, 2.3]);
    expect([...(blocks?.flagged ?? [])]).toEqual([1, 0]);
  });
});
