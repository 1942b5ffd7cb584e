import { describe, expect, it } from "vitest";
import { rowOrder } from "../../src/checks/row-order.js";
import { only, run, soundWeek, withLedger } from "./support.js";

describe("row order", () => {
  it("counts rows that stand before an earlier one", () => {
    const finding = only(run(rowOrder, withLedger(soundWeek(), { outOfOrder: 6 })));
    expect(finding).toMatchObject({ id: "row-order", severity: "note", evidence: { rows: 6 } });
    expect(String(finding.sentence)).toMatch(/^6 rows do not stand in the order of time/);
    expect(String(only(run(rowOrder, withLedger(soundWeek(), { outOfOrder: 1 }))).sentence)).toMatch(
      /^1 row does not stand/,
    );
  });

  it("finds none in a sound week", () => {
    expect(run(rowOrder, soundWeek())).toEqual([]);
  });
});
