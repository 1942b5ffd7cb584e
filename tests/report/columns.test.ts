import { expect, it } from "vitest";
import { columnRuns } from "../../src/report/columns.js";
import { columnRunText } from "../../src/report/wording-log.js";
import { say, type Text } from "../../src/sentence.js";
import { english } from "./support.js";

const column = (position: number, takenFor?: Text, file = "a.csv") => ({
  file,
  position,
  header: "",
  reason: "",
  ...(takenFor !== undefined && { takenFor }),
});

it("columns that differ in their order only become one line; others stay as they are", () => {
  const columns = [
    column(1, "voltage L1, mean, V"),
    column(2, "voltage L2, mean, V"),
    ...[2, 3, 4, 5].map((order) => column(order + 1, say`harmonic voltage ${"L1"}, order ${order}, mean, ${"%"}`)),
    column(7, say`harmonic voltage ${"L1"}, order ${6}, mean, ${"V"}`),
    column(8),
    column(9, say`harmonic voltage ${"L2"}, order ${3}, mean, ${"%"}`),
    ...[2, 3, 4].flatMap((order) => [
      column(10 + 2 * order, say`harmonic voltage ${"L3"}, order ${order}, mean, ${"%"}`),
      column(11 + 2 * order, say`harmonic current ${"L3"}, order ${order}, mean, ${"%"}`),
    ]),
    column(30, say`harmonic voltage ${"L2"}, order ${7}, mean, ${"%"}`),
    column(1, say`harmonic voltage ${"L2"}, order ${9}, mean, ${"%"}`, "b.csv"),
  ];
  expect(english(columnRuns(columns).map(columnRunText))).toEqual([
    "voltage L1, mean, V: column 1",
    "voltage L2, mean, V: column 2",
    "harmonic voltage L1, order 2 to 5, mean, %: columns 3 to 6",
    "harmonic voltage L1, order 6, mean, V: column 7",
    "harmonic voltage L2, order 3, 7, mean, %: columns 9, 30",
    "harmonic voltage L3, order 2 to 4, mean, %: columns 14 to 18 in steps of 2",
    "harmonic current L3, order 2 to 4, mean, %: columns 15 to 19 in steps of 2",
    "harmonic voltage L2, order 9, mean, %: column 1",
  ]);
});
