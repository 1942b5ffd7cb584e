import { describe, expect, it } from "vitest";
import { identicalPhases } from "../../src/checks/identical-phases.js";
import { only, run, soundWeek, valuesIn } from "./support.js";

/** A sound week in which some rows of L2 are those of L1. */
function copied(from: number, to: number, decimals = 1) {
  const week = soundWeek({ decimals });
  valuesIn(week, "voltage", "L2").set(valuesIn(week, "voltage", "L1").subarray(from, to), from);
  return week;
}

describe("identical phases", () => {
  it("blocks two phases that are equal to the last digit in all rows, and the unbalance", () => {
    const finding = only(run(identicalPhases, copied(0, 1008)));
    expect(finding).toMatchObject({
      id: "identical-phases",
      severity: "blocks",
      quantities: [
        "voltage",
        "harmonic-voltage",
        "thd-voltage",
        "pst",
        "plt",
        "negative-sequence-unbalance",
        "zero-sequence-unbalance",
      ],
      phases: ["L1", "L2", "system"],
      evidence: { quantity: "voltage", pairs: ["L1=L2"], equal: 1008, rows: 1008, share: 1 },
    });
    expect(String(finding.sentence)).toContain("agree to the last digit in 1008 of 1008 rows (100 %)");
  });

  it("finds it in a log of whole volts too", () => {
    expect(only(run(identicalPhases, copied(0, 1008, 0))).severity).toBe("blocks");
  });

  it("blocks above 5 % of the rows in long stretches, notes less, and passes a stretch below 100 rows", () => {
    const day = only(run(identicalPhases, copied(360, 504)));
    expect(day).toMatchObject({
      severity: "blocks",
      evidence: { stretchRows: 144, stretchFrom: "2026-03-04T12:00:00Z" },
    });
    const short = copied(360, 460);
    // The same rows on a longer log: less than 5 %.
    const long = { ...short, series: short.series.map((s) => stretchOut(s)) };
    expect(only(run(identicalPhases, long))).toMatchObject({
      severity: "note",
      evidence: { stretchRows: 100, rows: 3024 },
    });
    expect(run(identicalPhases, copied(360, 455))).toEqual([]);
  });

  it("names all three phases where all are one", () => {
    const week = copied(0, 1008);
    valuesIn(week, "voltage", "L3").set(valuesIn(week, "voltage", "L1"));
    expect(only(run(identicalPhases, week)).evidence).toMatchObject({ pairs: ["L1=L2", "L1=L3", "L2=L3"] });
  });

  it("only notes bridged inputs in a single-phase supply", () => {
    const finding = only(run(identicalPhases, copied(0, 1008), { connection: { value: "single", origin: "given" } }));
    expect(finding.severity).toBe("note");
  });

  it("notes phases that are all but equal", () => {
    const week = soundWeek();
    const l1 = valuesIn(week, "voltage", "L1");
    valuesIn(week, "voltage", "L2").set(l1.map((v, i) => v + (i % 2 === 0 ? 0.01 : 0.03)));
    const finding = only(run(identicalPhases, week));
    expect(finding).toMatchObject({ id: "alike-phases", severity: "note", phases: ["L1", "L2"] });
    const mean = l1.reduce((sum, v) => sum + v, 0) / l1.length;
    expect(finding.evidence.difference).toBeCloseTo(0.02 / mean, 9);
    expect(finding.evidence.correlation).toBeGreaterThan(0.999);
  });

  it("takes no steady supply for one lead: whole volts that never leave two values", () => {
    const week = soundWeek({ decimals: 0 });
    const steady = Float64Array.from({ length: 1008 }, (_, i) => (i % 50 === 0 ? 231 : 230));
    for (const phase of ["L1", "L2", "L3"] as const) valuesIn(week, "voltage", phase).set(steady);
    expect(run(identicalPhases, week)).toEqual([]);
  });

  it("finds none in a sound week", () => {
    expect(run(identicalPhases, soundWeek({ decimals: 0 }))).toEqual([]);
    expect(run(identicalPhases, soundWeek())).toEqual([]);
  });
});

/** Three weeks: the series and twice its own rows, turned by a constant that differs from phase to phase. */
function stretchOut<S extends ReturnType<typeof soundWeek>["series"][number]>(s: S): S {
  const shift = Number(s.phase.charCodeAt(1)) / 10;
  const rows = s.values.length;
  const values = Float64Array.from({ length: 3 * rows }, (_, i) =>
    i < rows ? (s.values[i] as number) : (s.values[i % rows] as number) + ((i * shift) % 7),
  );
  return { ...s, axis: longAxis(s.axis), values };
}

const axes = new Map<unknown, ReturnType<typeof soundWeek>["series"][number]["axis"]>();
function longAxis(axis: ReturnType<typeof soundWeek>["series"][number]["axis"]) {
  const rows = 3 * axis.starts.length;
  const long = axes.get(axis) ?? {
    interval: axis.interval,
    starts: Float64Array.from({ length: rows }, (_, i) => (axis.starts[0] as number) + i * axis.interval),
    flagged: new Uint8Array(rows),
  };
  axes.set(axis, long);
  return long;
}
