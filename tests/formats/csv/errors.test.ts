import { gzipSync } from "node:zlib";
import { describe, expect, test, vi } from "vitest";
import { RowStore } from "../../../src/formats/csv/row-store.js";
import { openLogs } from "../../../src/formats/index.js";
import { failure, failureOf, logFile, read, starts } from "./log.js";

const HEADER = "Time;U L1 [V];U L2 [V]\n";
const ROWS = [
  "2026-03-01 00:00;231.4;230.1",
  "2026-03-01 00:10;231.5;230.2",
  "2026-03-01 00:20;231.6;230.3",
  "2026-03-01 00:30;231.7;230.4",
];
const log = (rows: readonly string[] = ROWS) => `${HEADER}${rows.join("\n")}\n`;

describe("what is no readable log ends in one sentence", () => {
  test.each<[string, string | Uint8Array, string]>([
    ["an empty file", "", "LogError: log.csv: the file is empty: copy it from the logger again"],
    [
      "blank lines only",
      "\n\r\n  \n",
      "LogError: log.csv, line 3: no column holds dates and times in a form that can be read (2026-03-01 00:10, 01.03.2026 00:10, 03/01/2026 12:10 AM, Unix seconds …)",
    ],
    [
      "a header only",
      HEADER,
      "LogError: log.csv, line 1: the header is not followed by any row of values: export it with its rows",
    ],
    [
      "a preamble and a header only",
      `Site: Mill Lane\n${HEADER}`,
      "LogError: log.csv, line 2: the header is not followed by any row of values: export it with its rows",
    ],
    ["prose", "Dear colleague,\nthe log follows.\n", "LogError: log.csv"],
    [
      "rows without stamps",
      "No;U L1 [V]\n1;230.1\n2;230.2\n3;230.3\n",
      "LogError: log.csv, line 4: no column holds dates and times in a form that can be read",
    ],
    [
      "binary data",
      Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 256),
      "LogError: log.csv, byte 0: is in no form that can be read here (COMTRADE, PQDIF, a table of samples (CSV), delimited text (CSV)): export the log as one of them",
    ],
    [
      "gzip of binary data",
      gzipSync(Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 256)),
      "LogError: log.csv, byte 0: is in no form",
    ],
    ["gzip that is cut off", gzipSync(log(Array(3000).fill(ROWS[0]))).subarray(0, 90), "LogError: log.csv, byte "],
    [
      "gzip that is damaged",
      gzipSync(log()).map((b, i) => (i === 40 ? b ^ 0x55 : b)),
      "LogError: log.csv, byte 0: the gzip data are damaged or cut off: copy the file from the logger again",
    ],
    [
      "no known column",
      log().replace(HEADER, "Time;Foo;Bar\n"),
      'LogError: log.csv: none of its columns was understood ("Foo", "Bar"): say in the setup, under columns:, what they hold',
    ],
    [
      "a row with too few cells",
      log(ROWS.with(1, "2026-03-01 00:10;231.5")),
      "LogError: log.csv, line 3: the row has 2 cells where 3 are expected; correct the row or delete it",
    ],
    [
      "a row with too many cells",
      log(ROWS.with(1, `${ROWS[1]};5`)),
      "LogError: log.csv, line 3: the row has 4 or more cells where 3 are expected; correct the row or delete it",
    ],
    [
      "a header with too many cells",
      log().replace("L2 [V]", "L2 [V];U L3 [V]"),
      "LogError: log.csv, line 2: the row has 3 cells where 4 are expected; correct the row or delete it",
    ],
    [
      "a line of words after the rows",
      `${log()}End of log\n`,
      'LogError: log.csv, line 6, column 1: "End of log" is not a date and time in "Time"; correct the row, or delete it and all below it if the data end above',
    ],
    [
      "a row of statistics after the rows",
      `${log()}Mittelwert;231.5;230.2\nMaximum;231.7;230.4\n`,
      'LogError: log.csv, line 6, column 1: "Mittelwert" is not a date and time in "Time"; correct the row, or delete it and all below it if the data end above',
    ],
    [
      "only extremes",
      log().replace(HEADER, "Time;U L1 min [V];U L1 max [V]\n"),
      "LogError: log.csv: none of the columns that were understood holds a mean value: export the means as well, or say in the setup which column holds them (columns: statistic: mean)",
    ],
    [
      "zero bytes in a cell",
      log(ROWS.with(2, "2026-03-01 00:20;23\u0000.6;230.3")),
      'LogError: log.csv, line 4, column 2: "23·.6" is neither a number nor a mark for a missing value in "U L1 [V]"; correct the cell or empty it',
    ],
    [
      "a quote that stays open",
      log(ROWS.with(1, '2026-03-01 00:10;"231.5;230.2')),
      "LogError: log.csv, line 3: a quoted cell is never closed",
    ],
    [
      "decimal commas between commas",
      "Time,U L1 [V],U L2 [V]\n2026-03-01 00:00,231,4,230,1\n2026-03-01 00:10,231,5,230,2\n",
      "LogError: log.csv, line 2: the row has 4 or more cells where 3 are expected: are its decimal commas not in quotes?",
    ],
  ])("%s", async (_, text, message) => {
    const sentence = await failure(text);
    expect(sentence.slice(0, message.length)).toBe(message);
    expect(sentence).not.toContain("\n");
  });

  test("a row that never ends is given up early", async () => {
    const text = log(ROWS.with(1, `2026-03-01 00:10;"${"x".repeat(9_000_000)}`));
    expect(await failure(text)).toBe(
      "LogError: log.csv, line 3: the row does not end within 4 MB: is a quote opened and never closed?",
    );
  });

  test("a log that outgrows the memory", async () => {
    const grow = vi.spyOn(RowStore.prototype, "grow").mockImplementation(() => {
      throw new RangeError("Array buffer allocation failed");
    });
    // Long rows at first make the reader expect few of them.
    const long = Array.from({ length: 40 }, (_, i) => `${ROWS[0]};${"x".repeat(20_000 + i)}`);
    const text = `${HEADER.trimEnd()};note\n${[...long, ...Array(2000).fill(`${ROWS[1]};`)].join("\n")}\n`;
    expect(await failure(text)).toMatch(/^LogError: log\.csv, line \d+: the log is too long for the memory: split it$/);
    grow.mockRestore();
    expect((await read(text)).ledger.duplicates).toBe(2038);
  });

  test("lines are counted as an editor counts them", async () => {
    const text = `Site: "Mill\nLane"\n\n"Time";"U L1\n[V]";U L2 [V];note\r\n${ROWS[0]};"two\nlines"\n\n${ROWS[1]};x\n2026-03-01 00:20;abc;1.5;x\n`;
    expect(await failure(text)).toContain('log.csv, line 10, column 2: "abc"');
  });
});

describe("a file of another kind is named", () => {
  const bytes = (text: string) => Uint8Array.from([...`${text}${" ;1;2\n".repeat(50)}`].map((c) => c.charCodeAt(0)));
  const workbook =
    "is a spreadsheet workbook or another office document: open it, save the table as CSV (text) and read that";
  test.each([
    ["PDF", bytes("%PDF-1.7\n"), "is a PDF document, which holds no table to read: export the log as CSV (text)"],
    ["xlsx", bytes("PK\u0003\u0004\u0014\u0000\u0006\u0000[Content_Types].xml"), workbook],
    ["ods", bytes("PK\u0003\u0004mimetypeapplication/vnd.oasis.opendocument.spreadsheet"), workbook],
    ["xls", bytes("\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1"), workbook],
    ["zip", bytes("PK\u0003\u0004\u0014\u0000log.csv"), "is a ZIP archive: unpack it and read the logs in it"],
  ])("%s, packed with gzip or not", async (_, content, sentence) => {
    expect(await failure(content)).toBe(`LogError: log.csv, byte 0: ${sentence}`);
    expect(await failure(gzipSync(content))).toBe(`LogError: log.csv, byte 0: ${sentence}`);
  });
});

describe("a log that breaks off", () => {
  const whole = `${HEADER}${Array.from({ length: 60 }, (_, i) => `2026-03-01 0${Math.floor(i / 10)}:${String((i % 10) * 6).padStart(2, "0")};231.${i % 10};230.${(i + 3) % 10}`).join("\n")}\n`;

  test("in its last line loses that line, and says so, wherever it breaks", async () => {
    const lastLine = whole.trimEnd().lastIndexOf("\n") + 1;
    for (let end = lastLine + 1; end < whole.length - 1; end++) {
      const recording = await read(whole.slice(0, end));
      expect(starts(recording).length, whole.slice(lastLine, end)).toBe(59);
      expect(recording.ledger.remarks.map(String)).toEqual([
        "log.csv, line 61: the last line is cut off and was left out",
      ]);
    }
  });

  test("in a number without a fixed number of decimals loses that line if its whole part is too short", async () => {
    const mixed = whole.replace(/\.[05](?=;|\n)/g, "");
    expect(starts(await read(mixed.slice(0, mixed.lastIndexOf("230") + 3))).length).toBe(60);
    expect(starts(await read(mixed.slice(0, mixed.lastIndexOf("230") + 2))).length).toBe(59);
  });

  test("behind its last character loses nothing", async () => {
    const recording = await read(whole.trimEnd());
    expect(starts(recording).length).toBe(60);
    expect(recording.ledger.remarks.map(String)).toEqual([]);
  });

  test("in zero bytes loses that line", async () => {
    expect(starts(await read(`${whole}\u0000\u0000\u0000\u0000`)).length).toBe(60);
  });

  test("in its only line is an error", async () => {
    expect(await failure(`${HEADER}2026-03-01 00:00;231.4`)).toMatch(/^LogError: log\.csv, line 2: /);
  });
});

describe("several files", () => {
  test("must all be logs", async () => {
    const bad = logFile(new Uint8Array(100), "bad.bin");
    expect(await failureOf(openLogs([logFile(log(), "a.csv"), bad], {}))).toMatch(
      /^LogError: bad\.bin, byte 0: is in no form/,
    );
    expect(await failureOf(openLogs([], {}))).toMatch(/^LogError: no log: name at least one file/);
  });

  test("an error names its file", async () => {
    const files = [logFile(log(), "a.csv"), logFile(log(ROWS.with(1, "x")), "b.csv")];
    expect(await failureOf(openLogs(files, {}))).toMatch(/^LogError: b\.csv, line 3, column 1/);
  });
});
