import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { waveformCsv } from "../../../src/formats/waveform-csv/index.js";
import { tenMinutes } from "../csv/log.js";
import { HEADER, open, tableText } from "./support.js";

const recognised = (text: string | Uint8Array) =>
  waveformCsv.recognises(
    typeof text === "string" ? new TextEncoder().encode(text).subarray(0, 65_536) : text,
    "log.csv",
  );
const samples = (time?: (i: number) => string, rate = 10_000) => tableText({ rate, rows: 1500, ...(time && { time }) });
/** A log of values that are never negative. */
const values = (rows: number, time: (i: number) => string) =>
  `Time,U L1 [V],U L2 [V]\n${Array.from({ length: rows }, (_, i) => `${time(i)},${230 + (i % 3)}.4,231.1\n`).join("")}`;
const stamp = (stepMs: number) => (i: number) => new Date(Date.UTC(2026, 2, 1) + i * stepMs).toISOString();

describe("a table of samples is", () => {
  test.each([
    ["one with a short step of time", samples((i) => (i / 10_000).toFixed(4))],
    ["the same packed", gzipSync(samples((i) => (i / 10_000).toFixed(4)))],
    ["the same in UTF-16", Buffer.from(`\ufeff${samples((i) => (i / 10_000).toFixed(4))}`, "utf16le")],
    ["one with stamps of the same second", samples(() => "2026-03-01 00:00:00")],
    ["one without times", samples()],
    [
      "one with numbers of the samples",
      tableText({ rate: 10_000, rows: 900, time: String, header: `sample,${HEADER}` }),
    ],
    [
      "one too short to show both signs",
      `Time [s],u [V]\n${[1, 2, 3, 4].map((i) => `${i / 1000},${20 * i}\n`).join("")}`,
    ],
    [
      "one under lines of preamble",
      `Site: Mill Lane\nRecord Length,2500\nunit,s\n\n${samples((i) => String(i / 10_000))}`,
    ],
    ["one of 500 samples per second", samples((i) => String(i / 500), 500)],
  ])("%s", (_, text) => {
    expect(recognised(text)).toBe(true);
  });
});

describe("no table of samples is", () => {
  test.each([
    ["a ten-minute log", tenMinutes("2026-03-01T00:00", 300, ({ ymd, hm }) => `${ymd} ${hm},231.4,230.1`)],
    ["a log of seconds", values(500, stamp(1000))],
    ["a log of half cycles", values(500, stamp(10))],
    ["a log of signed powers by the half cycle", values(500, stamp(10)).replaceAll("230.4,231.1", "230.4,-231.1")],
    ["a log of milliseconds that never changes its sign", values(500, stamp(1))],
    ["a log of signed powers by the second", values(500, stamp(1000)).replaceAll("230.4,231.1", "230.4,-231.1")],
    ["Unix seconds", values(500, (i) => String(1_772_323_200 + i))],
    ["seconds from the start", values(500, String)],
    ["a table of numbers without times or signs", values(500, () => "7")],
    ["text", "Minutes of the meeting\n\nNobody came, as ever.\n"],
    ["noise", Uint8Array.from({ length: 3000 }, (_, i) => (i * 37) % 256)],
    ["nothing", new Uint8Array(0)],
  ])("%s", (_, text) => {
    expect(recognised(text)).toBe(false);
  });
});

test("the title names the format where files of different formats meet", async () => {
  const recording = await open(samples((i) => (i / 10_000).toFixed(4)));
  expect(recording.sources).toMatchObject([{ name: "log.csv", format: "waveform-csv", sha256: "" }]);
  expect([waveformCsv.id, waveformCsv.title]).toEqual(["waveform-csv", "a table of samples (CSV)"]);
});
