import { expect, it } from "vitest";
import { columnLines } from "../../src/cli/inspection-lists.js";
import type { ColumnReading } from "../../src/recording/recording.js";

const harmonic = (order: number, reason = `order ${order}: "H${order}"`): ColumnReading => ({
  file: "a.csv",
  position: order,
  header: `H${order}`,
  meaning: { quantity: "harmonic-voltage", phase: "L1", order, statistic: "mean", writtenUnit: "%" },
  reason,
});

it("puts the orders of a spectrum on one line, although each reason names its order", () => {
  expect(columnLines([2, 3, 4, 12].map((order) => harmonic(order)))).toEqual([
    'a.csv columns 2 to 12 (4) "H2" … "H12" → harmonic-voltage L1 orders 2 to 12, mean, % (order 2: "H2")',
  ]);
});

it("keeps an order with another reason on a line of its own", () => {
  const lines = columnLines([...[2, 3, 4, 5].map((order) => harmonic(order)), harmonic(7, "given in the setup")]);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toContain("given in the setup");
});
