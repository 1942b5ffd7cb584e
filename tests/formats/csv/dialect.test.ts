import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { openLogs } from "../../../src/formats/index.js";
import { content, failure, failureOf, logFile, read, seriesOf, starts, values } from "./log.js";

const PLAIN = `Time,U L1 [V],U L2 [V],f [Hz]
2026-03-01 00:00,231.4,230.9,49.98
2026-03-01 00:10,232.15,1231.5,50.01
2026-03-01 00:20,-0.5,0,50
`;
const expected = async () => content(await read(PLAIN));

describe("one table in many dialects reads the same", () => {
  const german = PLAIN.replaceAll(",", ";").replaceAll(".", ",");
  const dialects: Record<string, string | Uint8Array> = {
    semicolon: PLAIN.replaceAll(",", ";"),
    tab: PLAIN.replaceAll(",", "\t"),
    bar: PLAIN.replaceAll(",", "|"),
    "decimal comma": german,
    "thousands points": german.replace("1231,5", "1.231,5"),
    "thousands blanks": german.replace("1231,5", "1\u00a0231,5"),
    "thousands apostrophes": PLAIN.replace("1231.5", "1'231.5"),
    "thousands commas in quotes": PLAIN.replace("1231.5", '"1,231.5"'),
    "decimal commas in quotes": PLAIN.replace(/-?\d+\.\d+/g, (n) => `"${n.replace(".", ",")}"`),
    "quoted cells": PLAIN.replace(/[^,\n]+/g, '"$&"'),
    "quotes inside the header": PLAIN.replace("Time", '"Time ""local"""'),
    "a delimiter inside a quoted cell": PLAIN.replace("Time", '"Time, of the row"'),
    "a line feed inside a quoted cell": PLAIN.replace("U L1 [V]", '"U L1\n[V]"'),
    "CR LF": PLAIN.replaceAll("\n", "\r\n"),
    "CR alone": PLAIN.replaceAll("\n", "\r"),
    "no line feed at the end": PLAIN.trimEnd(),
    "blank lines": PLAIN.replaceAll("\n", "\n\n"),
    "rows of delimiters at the end": `${PLAIN},,,\n,,,\n`,
    "a delimiter at the end of each row": PLAIN.replaceAll("\n", ",\n"),
    "a delimiter at the end of the rows only": PLAIN.replace(/(\d)\n/g, "$1,\n"),
    "blanks around the numbers": PLAIN.replace(/,(?=[\d-])/g, ",  ").replaceAll("\n", " \n"),
    "a plus sign": PLAIN.replace("231.4", "+231.4"),
    "an exponent": PLAIN.replace("231.4", "2.314E+02"),
    "a minus sign of typography": PLAIN.replace("-0.5", "\u22120.5"),
    "preamble lines": `Site: Mill Lane\nLogger 7, firmware 1.2\n\n${PLAIN}`,
    "preamble padded to the width": `Site,Mill Lane,,\nSerial number,1234,,\n${PLAIN}`,
    "a long preamble": `${"remark of the operator, as he likes it\n".repeat(200)}${PLAIN}`,
    "units row": PLAIN.replace("Time,U L1 [V],U L2 [V],f [Hz]", "Time,U L1,U L2,f\n,V,V,Hz"),
    "units row with a time form": PLAIN.replace(
      "Time,U L1 [V],U L2 [V],f [Hz]",
      "Time,U L1,U L2,f\nyyyy-mm-dd hh:mm,[V],[V],[Hz]",
    ),
    "two-row header": PLAIN.replace("Time,U L1 [V],U L2 [V],f [Hz]", ",Voltage [V],,f [Hz]\nTime,L1,L2,"),
    "two-row header with a units row": PLAIN.replace(
      "Time,U L1 [V],U L2 [V],f [Hz]",
      "Time,Voltage,,Frequency\n,L1,L2,\n,V,V,Hz",
    ),
    "the header repeated among the rows": PLAIN.replace(
      "2026-03-01 00:20",
      "Time,U L1 [V],U L2 [V],f [Hz]\n2026-03-01 00:20",
    ),
    "UTF-8 with byte order mark": `\ufeff${PLAIN}`,
    "UTF-16LE with byte order mark": Buffer.from(`\ufeff${PLAIN}`, "utf16le"),
    "UTF-16LE without": Buffer.from(PLAIN, "utf16le"),
    "UTF-16BE with byte order mark": Buffer.from(`\ufeff${PLAIN}`, "utf16le").swap16(),
    "UTF-16BE without": Buffer.from(PLAIN, "utf16le").swap16(),
    gzip: gzipSync(PLAIN),
    "gzip of UTF-16": gzipSync(Buffer.from(`\ufeff${PLAIN}`, "utf16le")),
    "gzip in two members": Buffer.concat([gzipSync(PLAIN.slice(0, 50)), gzipSync(PLAIN.slice(50))]),
  };
  test.each(Object.entries(dialects))("%s", async (_, text) => {
    expect(content(await read(text))).toEqual(await expected());
  });
});

test("a repeated header is skipped with a remark", async () => {
  const [header, ...rows] = PLAIN.trimEnd().split("\n");
  const recording = await read(`${rows.map((row) => `${header}\n${row}\n`).join("")}`);
  expect(content(recording)).toEqual(await expected());
  expect(recording.ledger.remarks.map(String)).toEqual(["log.csv: the header is repeated 2 times among the rows"]);
});

test("without a header the setup names the columns by their position", async () => {
  const columns = [
    { column: 2, quantity: "voltage", phase: "L1", unit: "V" },
    { column: 3, quantity: "voltage", phase: "L2", unit: "V" },
    { column: 4, quantity: "frequency", phase: "system", unit: "Hz" },
  ] as const;
  const rows = PLAIN.slice(PLAIN.indexOf("\n") + 1);
  for (const text of [rows, `\ufeff${rows}`, Buffer.from(`\ufeff${rows}`, "utf16le")]) {
    expect(content(await read(text, { columns: [...columns] }))).toEqual(await expected());
  }
});

test("the plain table is read exactly", async () => {
  const recording = await read(PLAIN);
  expect(starts(recording)).toEqual(["2026-03-01T00:00:00Z", "2026-03-01T00:10:00Z", "2026-03-01T00:20:00Z"]);
  expect(values(recording)).toEqual([231.4, 232.15, -0.5]);
  expect(values(recording, { phase: "L2" })).toEqual([230.9, 1231.5, 0]);
  expect(values(recording, { quantity: "frequency", phase: "system" })).toEqual([49.98, 50.01, 50]);
  expect(seriesOf(recording).axis.interval).toBe(600e6);
  expect(seriesOf(recording).unit).toBe("V");
  expect(recording.start).toBe(Date.UTC(2026, 2, 1) * 1000);
  expect(recording.end).toBe(Date.UTC(2026, 2, 1, 0, 30) * 1000);
  expect(recording.sources).toEqual([{ name: "log.csv", bytes: PLAIN.length, sha256: "", format: "csv" }]);
  expect(recording.ledger.remarks.map(String)).toEqual([]);
  const [first] = recording.ledger.columns;
  expect({ ...first, reason: String(first?.reason) }).toEqual({
    file: "log.csv",
    position: 1,
    header: "Time",
    use: "time",
    reason: "the time of each row",
  });
});

test("names in Windows-1252 and in UTF-8 come out as written", async () => {
  const text = PLAIN.replace("Time", "Zeit des Gerätes in der Größe").replace("U L1", "Spannung L1");
  for (const bytes of [Buffer.from(text, "latin1"), Buffer.from(text, "utf8")]) {
    const recording = await read(bytes);
    expect(recording.ledger.columns[0]?.header).toBe("Zeit des Gerätes in der Größe");
    expect(values(recording)).toEqual([231.4, 232.15, -0.5]);
  }
});

test("the decimal mark is not guessed, but found where anything shows it", async () => {
  const voltages = "Time;U L1 [V];U L2 [V]\n2026-03-01 00:00;231.412;231.300\n2026-03-01 00:10;231.407;231.299\n";
  expect(await failure(voltages)).toBe(
    'LogError: log.csv: "231.412" can be a decimal number or one with thousands separators: state in the setup decimalMark: "." or decimalMark: ","',
  );
  expect(values(await read(voltages, { decimalMark: "." }))).toEqual([231.412, 231.407]);
  expect(values(await read(voltages, { decimalMark: "," }))).toEqual([231412, 231407]);
  expect(values(await read(voltages.replace("231.299", "231.29")))).toEqual([231.412, 231.407]);
  expect(values(await read(voltages.replace("231.299", "0.299")))).toEqual([231.412, 231.407]);
  expect(values(await read(voltages.replace("231.299", "231.299,5")))).toEqual([231412, 231407]);
  expect(values(await read(voltages.replace("231.299", "1.231.299")))).toEqual([231412, 231407]);
  expect(values(await read(voltages.replaceAll(";", ",")))).toEqual([231.412, 231.407]);
  const frequency = "Time;f [Hz]\n2026-03-01 00:00;49,981\n2026-03-01 00:10;50,002\n";
  expect(values(await read(frequency), { quantity: "frequency", phase: "system" })).toEqual([49.981, 50.002]);
  const both = openLogs([logFile(voltages, "a.csv"), logFile(frequency.replaceAll(",", "."), "b.csv")], {});
  expect(values(await both)).toEqual([231.412, 231.407]);
  expect((await both).ledger.remarks.map(String)).toEqual(["a.csv: its decimal mark was taken from the other files"]);
  const opposed = openLogs([logFile(voltages, "a.csv"), logFile(voltages, "b.csv")], {});
  expect(await failureOf(opposed)).toContain('LogError: a.csv: "231.412" can be');
});

test("whole numbers first and a decimal mark only far behind: asked for, not guessed", async () => {
  const rows = Array.from({ length: 40_000 }, (_, i) => `${1_772_323_200 + 10 * i};230`).join("\n");
  const text = `Time;U L1 [V]\n${rows}\n${1_772_323_200 + 400_000};230,412\n`;
  expect(await failure(text)).toBe(
    'LogError: log.csv, line 40002, column 2: "230,412" has a mark that the rows above it lack: state in the setup decimalMark: "." or decimalMark: "," in "U L1 [V]"',
  );
  expect(values(await read(text, { decimalMark: "," })).at(-1)).toBe(230.412);
});

test("blocks may end anywhere", async () => {
  for (const most of [1, 2, 3, 7, 64]) {
    const recording = await openLogs([logFile(PLAIN.replaceAll("\n", "\r\n"), "log.csv", most)], {});
    expect(content(recording)).toEqual(await expected());
  }
});

test("rows across the blocks of a long log, all kinds of cells", async () => {
  const rows = 60_000;
  const cell = (i: number) => ['"1,5"', "2.25", " 3.125 ", "", '"x ""y"" z"'][i % 5] as string;
  const lines = Array.from(
    { length: rows },
    (_, i) => `${1_772_323_200 + i},${cell(4 * i)},${cell(2 + i * 5)},${cell(4)}`,
  );
  const text = `Time,U L1 [V],U L2 [V],note\n${lines.join("\n")}\n`
    .replaceAll('"1,5"', '"1.5"')
    .replaceAll('"x ""y"" z"', "");
  const recording = await read(text);
  const first = values(recording);
  expect(first.length).toBe(rows);
  expect(first.slice(0, 5)).toEqual([1.5, Number.NaN, Number.NaN, 3.125, 2.25]);
  for (let i = 5; i < rows; i++) if (!Object.is(first[i], first[i - 5])) throw new Error(`row ${i} is ${first[i]}`);
  expect(values(recording, { phase: "L2" }).every((v) => v === 3.125)).toBe(true);
});
