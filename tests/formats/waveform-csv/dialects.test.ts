import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { expected, failure, onlySource, open, samplesOf, tableText } from "./support.js";

const plain = tableText({ rate: 10_000, rows: 1200, time: (i) => (i / 10_000).toFixed(4) });
const german = plain.replaceAll(",", ";").replaceAll(".", ",");
const quoted = plain.replace(/[^,\n]+/g, '"$&"');

describe("the same samples come of every dialect", () => {
  test.each<[string, string | Uint8Array]>([
    ["comma and point", plain],
    ["semicolon and decimal comma", german],
    ["tab", plain.replaceAll(",", "\t")],
    ["tab and decimal comma", german.replaceAll(";", "\t")],
    ["quoted decimal commas", german.replace(/[^;\n]+/g, '"$&"').replaceAll(";", ",")],
    ["CR LF", plain.replaceAll("\n", "\r\n")],
    ["CR", plain.replaceAll("\n", "\r")],
    ["all cells quoted", quoted],
    ["no line end at the end", plain.slice(0, -1)],
    ["UTF-8 with byte order mark", `\ufeff${plain}`],
    ["UTF-16 with byte order mark", Buffer.from(`\ufeff${german}`, "utf16le")],
    ["UTF-16 without", Buffer.from(plain, "utf16le")],
    ["gzip", gzipSync(plain)],
    ["gzip of UTF-16", gzipSync(Buffer.from(`\ufeff${plain}`, "utf16le"))],
    ["a row of units", `Time,u L1,u L2,i L1\ns,V,V,A\n${plain.slice(plain.indexOf("\n") + 1)}`],
    ["a preamble", `Site;Mill Lane\nSamples;1200\n\n${german}`],
    ["header repeated among the rows", plain.replaceAll("\n0.0500,", `\n${plain.split("\n")[0]}\n0.0500,`)],
    ["blank lines", plain.replaceAll("\n0.0", "\n\n0.0")],
    ["plus signs and blanks", plain.replace(/,(\d)/g, ", +$1")],
    ["exponents", plain.replace(/(-?\d+\.\d+)(?=\n)/g, "$1e0")],
  ])("%s", async (_, text) => {
    const recording = await open(text);
    expect(recording.waveforms[0]?.samplesPerSecond).toBe(10_000);
    expect(await samplesOf(onlySource(recording))).toEqual(expected(10_000, 1200));
  });
});

describe("what is missing or damaged", () => {
  const lines = plain.split("\n");
  const edited = (line: number, edit: (text: string) => string) =>
    lines.map((text, i) => (i === line - 1 ? edit(text) : text)).join("\n");

  test.each(["", "---", "NaN", "OL"])("a value written %j is a missing sample, not a gap", async (mark) => {
    const source = onlySource(await open(edited(700, (text) => text.replace(/,[^,]*$/, `,${mark}`))));
    const all = expected(10_000, 1200);
    (all[2] as Float64Array)[698] = Number.NaN;
    expect(await samplesOf(source)).toEqual(all);
  });

  test("what is no number is named with line and column", async () => {
    expect(await failure(edited(700, (text) => text.replace(/,[^,]*$/, ",1.2x")))).toBe(
      'LogError: log.csv, line 700, column 4: "1.2x" is neither a number nor a mark for a missing value in "i L1 [A]"; correct the cell or empty it',
    );
  });

  test("a row that is too short is named with its line", async () => {
    expect(await failure(edited(700, (text) => text.replace(/,[^,]*$/, "")))).toBe(
      "LogError: log.csv, line 700: the row has 3 cells where 4 are expected; correct the row or delete it",
    );
  });

  test("a last line that is cut off is left out and said so", async () => {
    const recording = await open(plain.slice(0, -4));
    expect(recording.ledger.remarks.map(String)).toContain(
      "log.csv, line 1201: the last line is cut off and was left out",
    );
    expect(await samplesOf(onlySource(recording))).toEqual(expected(10_000, 1199));
  });

  test("a packed file that is cut off ends in a sentence", async () => {
    const packed = gzipSync(plain);
    expect(await failure(packed.subarray(0, packed.length >> 1))).toMatch(
      /^LogError: log\.csv, byte \d+ of the unpacked text: /,
    );
  });
});
