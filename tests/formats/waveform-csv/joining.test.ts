import { describe, expect, test } from "vitest";
import { openLogs } from "../../../src/formats/index.js";
import { isoUtc } from "../../../src/recording/time.js";
import { failureOf, logFile } from "../csv/log.js";
import { expected, onlySource, samplesOf, tableText } from "./support.js";

const RATE = 10_000;
const dated = (i: number) => `2026-03-01T00:00:0${(i / RATE).toFixed(4)}Z`;
const seconds = (i: number) => (i / RATE).toFixed(4);
const part = (from: number, rows: number, time: (i: number) => string, name: string, header?: string) =>
  logFile(tableText({ rate: RATE, rows, from, time, ...(header !== undefined && { header }) }), name);

describe("files of one recording", () => {
  test.each([
    ["with dates", dated],
    ["with times that run on", seconds],
  ])("%s are joined in time order, with the time between them as gap", async (_, time) => {
    const files = [part(900, 600, time, "c.csv"), part(0, 400, time, "a.csv"), part(400, 300, time, "b.csv")];
    const recording = await openLogs(files, {});
    const source = onlySource(recording);
    const lost = (i: number) => i >= 700 && i < 900;
    expect([source.length, source.samplesPerSecond]).toEqual([1500, RATE]);
    expect(await samplesOf(source)).toEqual(expected(RATE, 1500, lost));
    expect(recording.sources.map(({ name }) => name)).toEqual(["c.csv", "a.csv", "b.csv"]);
    expect(recording.ledger.columns.map(({ file }) => file)).toEqual(Array(4).fill("c.csv"));
  });

  test("count their times from the first of them", async () => {
    const files = [part(900, 600, seconds, "b.csv"), part(100, 400, seconds, "a.csv")];
    const { start, end } = await openLogs(files, { start: "2026-03-01T12:00Z" });
    expect([isoUtc(start), isoUtc(end)]).toEqual(["2026-03-01T12:00:00Z", "2026-03-01T12:00:00.140Z"]);
  });

  test.each([
    [
      "overlap in their dates",
      [part(0, 600, dated, "a.csv"), part(500, 600, dated, "b.csv")],
      /^LogError: b\.csv, line 2: it begins at 2026-03-01T00:00:00\.050Z, 0\.01 s before a\.csv ends; files of one recording must not overlap$/,
    ],
    [
      "begin anew",
      [part(0, 600, seconds, "a.csv"), logFile(tableText({ rate: RATE, rows: 600, time: seconds }), "b.csv")],
      /^LogError: b\.csv, line 2: its times overlap those of a\.csv, and neither carries a date: assess them apart$/,
    ],
    [
      "have other columns",
      [part(0, 600, dated, "a.csv"), part(600, 600, dated, "b.csv", "Time,u L1 [V],u L3 [V],i L1 [A]")],
      /^LogError: b\.csv, line 2: its columns are not those of a\.csv; assess files with different channels apart$/,
    ],
    [
      "differ in carrying dates",
      [part(0, 600, dated, "a.csv"), part(600, 600, seconds, "b.csv")],
      /^LogError: b\.csv: it has no dates while a\.csv has: assess them apart$/,
    ],
  ])("that %s are refused", async (_, files, message) => {
    expect(await failureOf(openLogs(files, {}))).toMatch(message);
  });

  test("of which one is an interval log are refused", async () => {
    const other = logFile("Time,U L1 [V]\n2026-03-01 00:00,230\n2026-03-01 00:10,231\n", "b.csv");
    expect(await failureOf(openLogs([part(0, 600, dated, "a.csv"), other], {}))).toMatch(
      /^LogError: b\.csv: is delimited text \(CSV\) while a\.csv is a table of samples \(CSV\)/,
    );
  });
});
