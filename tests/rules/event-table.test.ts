import { describe, expect, it } from "vitest";
import { readBundledRule } from "../../src/cli/files.js";
import type { VoltageEvent } from "../../src/recording/measurements.js";
import { assessmentSchema } from "../../src/rules/assessment.js";
import { classify, type EventTable, interruptionLength, listEvents } from "../../src/rules/event-table.js";
import { loadRuleSet } from "../../src/rules/load-rule-set.js";
import { START } from "../support/series.js";

const rules = await loadRuleSet("en50160-2010-lv", readBundledRule);
const table = (event: "dip" | "swell"): EventTable => {
  const found = rules.requirements.find((r) => r.criterion.kind === "event-table" && r.criterion.event === event);
  return found?.criterion as EventTable;
};

const event = (kind: VoltageEvent["kind"], percent: number, durationS: number, more = {}): VoltageEvent => ({
  kind,
  origin: "computed",
  phases: ["L1"],
  start: START,
  durationS,
  extreme: 2.3 * percent,
  reference: 230,
  percent,
  unit: "V",
  ...more,
});

const cell = (kind: "dip" | "swell", percent: number, durationS: number) => {
  const found = classify(event(kind, percent, durationS), table(kind));
  return found && found.row + found.column;
};

/** Tables of EN 50160:2010 as a meter technical note on that edition prints them (quoted second-hand). */
describe("the cell of an event", () => {
  it("is the row whose upper bound a dip is below and whose lower one it is not below", () => {
    for (const [percent, row] of [
      [89.999, "A"],
      [80, "A"],
      [79.999, "B"],
      [70, "B"],
      [69.999, "C"],
      [40, "C"],
      [39.999, "D"],
      [5, "D"],
      [4.999, "X"],
      [0, "X"],
    ] as const) {
      expect(cell("dip", percent, 0.1), `${percent} %`).toBe(`${row}1`);
    }
    expect(cell("dip", 90, 0.1)).toBeUndefined();
  });

  it("is the column that a dip is longer than the start of and not longer than the end of, 10 ms included", () => {
    for (const [seconds, column] of [
      [0.01, "1"],
      [0.2, "1"],
      [0.200001, "2"],
      [0.5, "2"],
      [0.500001, "3"],
      [1, "3"],
      [1.000001, "4"],
      [5, "4"],
      [5.000001, "5"],
      [60, "5"],
    ] as const) {
      expect(cell("dip", 50, seconds), `${seconds} s`).toBe(`C${column}`);
    }
    expect(cell("dip", 50, 0.009999)).toBeUndefined();
    expect(cell("dip", 50, 60.000001)).toBeUndefined();
  });

  it("of a swell is from 120 % up, or above 110 %, in three columns", () => {
    expect(cell("swell", 150, 0.01)).toBe("S1");
    expect(cell("swell", 120, 0.5)).toBe("S1");
    expect(cell("swell", 119.999, 0.500001)).toBe("T2");
    expect(cell("swell", 110.001, 5)).toBe("T2");
    expect(cell("swell", 115, 5.000001)).toBe("T3");
    expect(cell("swell", 115, 60)).toBe("T3");
    expect(cell("swell", 115, 61)).toBeUndefined();
    expect(cell("swell", 109, 1)).toBeUndefined();
  });

  it("is none between columns that do not meet", () => {
    const columns = [
      { id: "a", from: 0.01, to: 0.2 },
      { id: "b", from: 0.5, to: 1 },
    ];
    const seconds = (durationS: number) => classify(event("dip", 50, durationS), { ...table("dip"), columns })?.column;
    expect([0.2, 0.3, 0.5, 0.500001].map(seconds)).toEqual(["a", undefined, undefined, "b"]);
  });

  it("is not told for another kind, for an event cut off, and where the voltage in % is not known", () => {
    expect(classify(event("swell", 50, 0.1), table("dip"))).toBeUndefined();
    expect(classify(event("interruption", 0, 0.1), table("dip"))).toBeUndefined();
    expect(classify(event("dip", 50, 0.1, { complete: false }), table("dip"))).toBeUndefined();
    const { percent: _percent, ...unknown } = event("dip", 50, 0.1);
    expect(classify(unknown, table("dip"))).toBeUndefined();
  });
});

describe("the length of an interruption", () => {
  it("is short up to 3 min, long above, and open where it was cut off before", () => {
    expect(interruptionLength(event("interruption", 0, 180))).toBe("short");
    expect(interruptionLength(event("interruption", 0, 180.000001))).toBe("long");
    expect(interruptionLength(event("interruption", 0, 180, { complete: false }))).toBeUndefined();
    expect(interruptionLength(event("interruption", 0, 181, { complete: false }))).toBe("long");
    expect(interruptionLength(event("dip", 0, 181))).toBeUndefined();
  });
});

describe("the list of events in the result document", () => {
  const schema = assessmentSchema.shape.events;

  it("holds the numbers and cells and leaves traces and waveforms out", () => {
    const trace = { times: new Float64Array(1), channels: [] };
    const perPhase = [{ phase: "L1" as const, start: START, durationS: 0.3, extreme: 161, percent: 70, crossings: 2 }];
    const listed = listEvents([event("dip", 70, 0.3, { trace, waveform: [], perPhase, interrupted: true })], rules);
    expect(schema.parse(listed)).toEqual([
      {
        kind: "dip",
        phases: ["L1"],
        start: "2026-03-02T00:00:00Z",
        durationS: 0.3,
        extreme: 161,
        reference: 230,
        percent: 70,
        unit: "V",
        interrupted: true,
        perPhase: [
          { phase: "L1", start: "2026-03-02T00:00:00Z", durationS: 0.3, extreme: 161, percent: 70, crossings: 2 },
        ],
        row: "B",
        column: "2",
      },
    ]);
  });

  it("says what cut an event off and whether an interruption was short or long", () => {
    const cutOff = { end: "gap" } as const;
    const events = [
      event("interruption", 1, 4, { complete: false, cutOff }),
      event("interruption", 1, 4, { complete: true }),
      event("swell", 125, 1),
    ];
    const [cut, whole, swell] = schema.parse(listEvents(events, rules));
    expect(cut).toMatchObject({ complete: false, cutOff });
    expect(cut?.interruption).toBeUndefined();
    expect(whole?.interruption).toBe("short");
    expect(swell).toMatchObject({ row: "S", column: "2" });
  });
});
