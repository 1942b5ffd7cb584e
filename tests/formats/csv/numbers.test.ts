import { describe, expect, test } from "vitest";
import { type Ratio, ratio, times, toNumber } from "../../../src/decimal.js";
import { isMissing, plainNumber, readFlag, scaledNumber } from "../../../src/formats/csv/number-text.js";
import { failure, randomNumbers, read, seriesOf, values } from "./log.js";

/** A log of one voltage column in the given unit. */
function column(cells: readonly string[], unit = "V"): string {
  const row = (cell: string, i: number) =>
    `2026-03-01 ${String(i >> 2).padStart(2, "0")}:${(i % 4) * 15 || "00"};${cell}\n`;
  return `Time;U L1 [${unit}]\n${cells.map(row).join("")}`;
}

describe("values are the doubles nearest to the written decimals times the unit", () => {
  test.each([
    ["kV", ["0.2531", "0.2299", "0.1"], [253.1, 229.9, 100]],
    ["kV", ["10.0337898013691", "0.2", "3e-1"], [10033.7898013691, 200, 300]],
    ["mV", ["230100.5", "1", "0.3"], [230.1005, 0.001, 0.0003]],
    ["V", ["253.00", "1e-3", "0.30000000000000004"], [253, 0.001, 0.30000000000000004]],
    ["kV", ["0.23139999389648438", "2.531e-1", "000000000000000000.2531"], [231.39999389648438, 253.1, 253.1]],
  ])("in %s", async (unit, cells, expected) => {
    expect(values(await read(column(cells, unit)))).toEqual(expected);
  });

  test("per unit and per cent of a declared voltage: 1.1 × 230 is 253, not 253.00000000000003", async () => {
    expect(230 * 1.1).not.toBe(253);
    const setup = { declaredVoltage: 230, connection: "star" } as const;
    expect(values(await read(column(["1.1", "0.9", "1.0987"], "p.u."), setup))).toEqual([253, 207, 252.701]);
    expect(values(await read(column(["110.0", "90", "109.87"], "% of declared"), setup))).toEqual([253, 207, 252.701]);
  });

  test("a transformer ratio that is no power of ten", async () => {
    const setup = { voltageRatio: "20000/110" } as const;
    const cells = ["63.51", "57.7", "63.507123456789012345"];
    const scale = { num: 20000n, den: 110n };
    const expected = cells.map((cell) => toNumber(times(ratio(cell), scale)));
    expect(values(await read(column(cells), setup))).toEqual(expected);
    expect(expected[0]).toBeCloseTo(11547.272727, 5);
  });

  test("fast and slow ways agree with exact arithmetic for any number and scale", async () => {
    const scales: Ratio[] = [
      ratio(1),
      ratio(1000),
      ratio("0.001"),
      ratio("2.3"),
      { num: 20000n, den: 110n },
      { num: 1n, den: 3n },
    ];
    const random = randomNumbers(12345);
    for (let k = 0; k < 3000; k++) {
      const digits = String(random(10 ** (1 + random(9)))) + (k % 3 === 0 ? String(random(1e9)) : "");
      const places = random(digits.length + 1);
      const text = `${random(2) ? "-" : ""}${digits.slice(0, digits.length - places) || "0"}.${digits.slice(digits.length - places)}`;
      for (const scale of scales) {
        const exact = toNumber(times(ratio(text), scale)) + 0;
        expect(scaledNumber(text, scale).value, text).toBe(exact);
      }
    }
    const cells = Array.from({ length: 60 }, () => `${random(400)}.${random(10 ** (1 + random(8)))}`);
    const recording = await read(column(cells, "kV"), { voltageRatio: "20000/110" });
    expect(values(recording)).toEqual(cells.map((c) => toNumber(times(ratio(c), { num: 20_000_000n, den: 110n }))));
  });

  test("no negative zero", async () => {
    for (const v of values(await read(column(["-0", "-0.0", "-0.0e0"])))) expect(Object.is(v, 0)).toBe(true);
  });
});

test("the resolution is the smallest step of a last digit, in the stored unit", async () => {
  const resolution = async (cells: string[], unit?: string) => seriesOf(await read(column(cells, unit))).resolution;
  expect(await resolution(["231.4", "231", "232.15"])).toBe(0.01);
  expect(await resolution(["0.2314", "0.23"], "kV")).toBe(0.1);
  expect(await resolution(["231", "---"])).toBe(1);
  expect(await resolution(["2.314e2", "---"])).toBe(0.1);
  expect(await resolution(["23e1", "---"])).toBe(10);
});

test("every usual mark is a missing value, never zero", async () => {
  const marks = [
    "",
    " ",
    "-",
    "---",
    "–",
    "NaN",
    "nan",
    "n/a",
    "n/d",
    "N/A",
    "#N/A",
    "null",
    "NULL",
    "None",
    "OL",
    "-OL",
    "inf",
    "***",
    "1.#QNAN",
    "#NV",
    '""',
    '"n/a"',
  ];
  const cells = ["230.5", ...marks, "0", "0.0"];
  const expected = [230.5, ...marks.map(() => Number.NaN), 0, 0];
  expect(values(await read(column(cells)))).toEqual(expected);
  for (const word of ["nano", "0", "-1", "ok", "voltage"]) expect(isMissing(word), word).toBe(false);
});

test.each(["abc", "231.4 V", "2 31", "1.2.3", "0x12", "12,34,567", "1e", "<0.1", "1e999", "9".repeat(80), "2\u00003"])(
  "%j in a column that is used is an error with its line, column and text",
  async (cell) => {
    const message = await failure(column(["230.1", "230.2", cell, "230.3"]));
    expect(message).toMatch(
      /^LogError: log\.csv, line 4, column 2: ".*" is neither a number nor a mark for a missing value in "U L1 \[V\]"; correct the cell or empty it$/,
    );
  },
);

test("what a cell of an unused column holds does not matter", async () => {
  const text = column(["230.1;abc", "230.2;231.4 V", "230.3;"]).replace("[V]", "[V];remark of the day");
  const recording = await read(text);
  expect(values(recording)).toEqual([230.1, 230.2, 230.3]);
  expect(recording.ledger.columns[2]?.meaning).toBeUndefined();
});

test("groups of three are read only where they are groups of three", () => {
  expect(plainNumber("1.234.567,89", ",")).toBe("1234567.89");
  expect(plainNumber("-1,234.5", ".")).toBe("-1234.5");
  expect(plainNumber("1 234 567", ".")).toBe("1234567");
  expect(plainNumber("1,23", ".")).toBeUndefined();
  expect(plainNumber("1234,567", ".")).toBeUndefined();
  expect(plainNumber("1,234,56", ".")).toBeUndefined();
  expect(plainNumber("1,234 567", ".")).toBeUndefined();
  expect(plainNumber("1.234,5.6", ",")).toBeUndefined();
  expect(plainNumber("231.4", ",")).toBeUndefined();
});

test("flags say yes or no in plain marks", async () => {
  const flags = ["1", "0", "x", "", "yes", "no", "TRUE", "false", "flagged", "-", "1.0", "0.0"];
  const text = column(flags.map((flag) => `230.1;${flag}`)).replace("[V]", "[V];Flag");
  const recording = await read(text);
  expect([...seriesOf(recording).axis.flagged]).toEqual([1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0]);
  const two = text.replaceAll("\n", ";0\n").replace("Flag;0", "Flag;Flagged").replace("230.1;0;0", "230.1;0;1");
  expect([...seriesOf(await read(two)).axis.flagged]).toEqual([1, 1, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0]);
  const codes = text.replace("yes", "2");
  const given = await read(codes, { columns: [{ column: "Flag", quantity: "flag" }] });
  expect([...seriesOf(given).axis.flagged]).toEqual([1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0]);
  expect(readFlag("perhaps")).toBeUndefined();
});

test("a flag column that says something else far down is an error with its line", async () => {
  const cells = Array.from({ length: 1000 }, (_, i) => `${1_772_323_200 + i};230.1;${i === 900 ? "maybe" : "0"}`);
  expect(await failure(`Time;U L1 [V];Flag\n${cells.join("\n")}\n`)).toBe(
    'LogError: log.csv, line 902, column 3: "maybe" says neither flagged nor not flagged (1 or 0) in "Flag"; correct the cell or empty it',
  );
});
