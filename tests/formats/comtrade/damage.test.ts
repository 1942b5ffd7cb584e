import { describe, expect, it } from "vitest";
import { LogError } from "../../../src/errors.js";
import { openComtrade } from "../../../src/formats/comtrade/index.js";
import { writeComtrade, writeSingleFile } from "../../../src/formats/comtrade/write.js";
import { type Random, random } from "../../support/random.js";
import { eachVoltage, field, LINES, memoryFile, record, reopen, rows, samplesOf, sines, withLine } from "./support.js";

describe("a configuration that cannot be used gets one sentence with its line", () => {
  it.each<[string, (text: string) => string, string]>([
    ["empty", () => "", "mill.cfg, line 1: the configuration ends before the name of the station; the file is cut off"],
    ["one line", () => "Mill Lane,1,1999", "mill.cfg, line 2: the configuration ends before the number of channels"],
    [
      "no counts",
      withLine(2, "three"),
      'mill.cfg, line 2: the numbers of channels, such as "8,6A,2D", cannot be found',
    ],
    [
      "too few channels",
      (t) => t.split("\r\n").slice(0, 4).join("\r\n"),
      "mill.cfg, line 2: 3 analog and 0 status channels are promised, but their lines do not follow",
    ],
    ["absurd counts", withLine(2, "999999,999999A,0D"), ""],
    [
      "a factor that is no number",
      withLine(4, (line) => field(5, "abc")(line)),
      "mill.cfg, line 4: the conversion factors a and b of a channel cannot be found",
    ],
    [
      "no number of rates",
      withLine(LINES.rateCount, "x"),
      "mill.cfg, line 7: the number of sampling rates cannot be read",
    ],
    [
      "absurdly many rates",
      withLine(LINES.rateCount, "99999999"),
      "mill.cfg, line 7: 99999999 sampling rates are more than 10000",
    ],
    ["no rate", withLine(LINES.rate, "fast,640"), "mill.cfg, line 8: the sampling rate cannot be read"],
    ["a negative rate", withLine(LINES.rate, "-3200,640"), "mill.cfg, line 8: the sampling rate cannot be read"],
    [
      "no last sample",
      withLine(LINES.rate, "3200"),
      "mill.cfg, line 8: the number of the last sample at this rate cannot be read",
    ],
    [
      "falling last samples",
      (t) => withLine(LINES.rate, "3200,320\r\n1600,300")(withLine(LINES.rateCount, "2")(t)),
      "mill.cfg, line 9: the number of the last sample does not lie above that of the rate before",
    ],
    ["no first time", withLine(LINES.first, ""), 'mill.cfg, line 9: the time of the first sample cannot be read ("")'],
    [
      "a garbled time",
      withLine(LINES.first, "03/03/2026,25:61:00"),
      "mill.cfg, line 9: the time of the first sample cannot be read",
    ],
    [
      "another kind of data",
      withLine(LINES.kind, "BINARY16"),
      'mill.cfg, line 11: the kind of data "BINARY16" is none of ASCII, BINARY, BINARY32, FLOAT32',
    ],
    [
      "an end before the kind",
      (t) => t.split("\r\n").slice(0, 10).join("\r\n"),
      "mill.cfg, line 11: the configuration ends before the kind of data; the file is cut off",
    ],
  ])("%s", async (what, cfg, message) => {
    if (what === "absurd counts") {
      expect((await reopen({}, { cfg })).remarks.join()).toContain(
        "999999 analog and 0 status channels are promised, but 3 and 0",
      );
      return;
    }
    const opened = reopen({}, { cfg });
    await expect(opened).rejects.toThrow(message);
    await expect(opened).rejects.toBeInstanceOf(LogError);
  });
});

it("rates that do not follow, too many channels and endless lines end at once", async () => {
  const rates = reopen({}, { cfg: withLine(LINES.rateCount, "77") });
  await expect(rates).rejects.toThrow("mill.cfg, line 7: 77 sampling rates are promised, but do not follow");
  const many = (text: string) =>
    text.replace("3,3A", "10001,10001A").replace(/(3,VC.*\r\n)/, (line) => line.repeat(9999));
  await expect(reopen({}, { cfg: many })).rejects.toThrow("line 2: 10001 analog channels are more than 10000");
  const began = performance.now();
  for (const [text, pieces] of [
    [" ", 1e6],
    ["1", 1e6],
    [", ", 5e5],
    ["--- file type ", 1e5],
  ] as const) {
    const line = text.repeat(pieces);
    for (let number = 1; number <= 12; number++) {
      await reopen({}, { cfg: withLine(number, (old) => old + line) }).catch((error) =>
        expect(error).toBeInstanceOf(LogError),
      );
    }
    const single = reopen({ length: 10 }, { cfg: () => `--- file type: CFG ---\r\n--- file type${line}` });
    await expect(single).rejects.toBeInstanceOf(LogError);
  }
  expect(performance.now() - began).toBeLessThan(20_000);
});

describe("data that cannot be used get one sentence with line or byte", () => {
  const opened = (kind: "ASCII" | "BINARY", dat: (bytes: Uint8Array) => Uint8Array) => reopen({ kind }, { dat });

  it("no rows", async () => {
    await expect(opened("BINARY", () => new Uint8Array(0))).rejects.toThrow("mill.dat, byte 0: it holds no rows");
    await expect(opened("BINARY", (b) => b.subarray(0, 9))).rejects.toThrow(
      "mill.dat, byte 0: the rows cannot be found",
    );
    await expect(opened("ASCII", () => new TextEncoder().encode("1,2\r\n3,4\r\n"))).rejects.toThrow(
      "mill.dat, line 1: no rows with 5 columns of numbers, as the configuration promises, can be found",
    );
  });

  it("noise", async () => {
    const source = random(5, "noise");
    await expect(opened("BINARY", (b) => b.map(() => source.below(256)).subarray(1))).rejects.toThrow(
      "mill.dat, byte 0: the rows cannot be found: by the configuration each has 14 bytes",
    );
  });

  it("a row without end", async () => {
    const endless = new Uint8Array(20e6).fill(48);
    endless.set(new TextEncoder().encode("1,0,"));
    await expect(opened("ASCII", () => endless)).rejects.toThrow("mill.dat, byte 0: the row beginning here has no end");
  });

  it("text among the numbers", async () => {
    const dat = rows((row, i) => (i === 300 ? field(3, "12b4")(row) : row));
    await expect(opened("ASCII", dat)).rejects.toThrow('mill.dat, line 301: "12b4" in column 4 is no number');
  });

  it("a file that shrinks while it is read", async () => {
    for (const kind of ["ASCII", "BINARY"] as const) {
      const written = record({ kind });
      const pair = writeComtrade(written, sines(written));
      let bytes = pair.dat;
      const dat = {
        name: "mill.dat",
        size: bytes.length,
        read: async (o: number, n: number) => bytes.subarray(o, o + n),
      };
      const { sources } = await openComtrade([memoryFile("mill.cfg", pair.cfg), dat], {});
      bytes = bytes.subarray(0, 4000);
      await expect(samplesOf(sources[0])).rejects.toThrow(
        /^mill.dat, (line|byte) \d+: the file became shorter while it was read$/,
      );
    }
  });

  it("a factor of 0 is said", async () => {
    const { remarks } = await reopen({}, { cfg: eachVoltage(field(5, "0")) });
    expect(String(remarks[0])).toBe('mill.cfg: the channel "VA" has the factor 0, so all its values are 0.');
  });
});

/** One to eight changes of bytes: another value, a cut, a repetition, an exchange, a digit, an insertion of what is dangerous. */
function mutate(bytes: Uint8Array, source: Random): Uint8Array {
  const list = [...bytes];
  const at = () => source.below(list.length + 1);
  for (let n = 1 + source.below(8); n > 0; n--) {
    const kind = source.below(7);
    if (kind === 0) list[at()] = source.below(256);
    else if (kind === 1) list.splice(at(), source.below(40));
    else if (kind === 2) {
      const from = at();
      list.splice(at(), 0, ...list.slice(from, from + source.below(60)));
    } else if (kind === 3) list.length = Math.max(1, at());
    else if (kind === 4) list[at()] = 48 + source.below(10);
    else if (kind === 5)
      list.splice(at(), 0, ...[...(DANGEROUS[source.below(DANGEROUS.length)] as string)].map((c) => c.charCodeAt(0)));
    else {
      const [one, other] = [source.below(list.length || 1), source.below(list.length || 1)];
      [list[one], list[other]] = [list[other] ?? 0, list[one] ?? 0];
    }
  }
  return Uint8Array.from(list, (byte) => byte ?? 0);
}

const DANGEROUS = [
  ",",
  "\r\n",
  "\n\n",
  "-",
  "99999999999999999999",
  "1e308",
  "1e-320",
  "0",
  "-1",
  "NaN",
  "\0\0\0\0",
  "\xff\xff\xff\xff",
  "\x00\x80",
  "--- file type: DAT BINARY: 9999999999 ---\r\n",
  "A",
  "D",
  "0,0",
  "Infinity",
  "0x10",
  ",,,,,,,,,,,,,,",
  "1999",
  "2013",
  "BINARY",
  "ASCII",
];

it("10 000 mutated records end in a result or in one sentence, without crash or hang", async () => {
  const source = random(20_260_303, "mutation");
  const kinds = [
    record({ edition: 1991, kind: "BINARY", length: 48 }),
    record({ edition: 1999, kind: "ASCII", length: 40, statusChannels: ["gate"] }),
    record({ edition: 1999, kind: "BINARY", length: 48, statusChannels: ["gate"] }),
    record({ edition: 2013, kind: "BINARY32", length: 40 }),
    record({ edition: 2013, kind: "FLOAT32", length: 40 }),
  ].map((written) => {
    const samples = sines({ ...written, samplesPerSecond: 800 });
    const single = written.edition === 2013 ? writeSingleFile(written, samples) : undefined;
    return { ...writeComtrade(written, samples), single };
  });
  const began = performance.now();
  let [results, sentences, slowest] = [0, 0, 0];
  for (let i = 0; i < 10_000; i++) {
    const { cfg, dat, single } = kinds[i % kinds.length] as (typeof kinds)[number];
    const part = source.below(3);
    const files =
      single !== undefined && source.below(3) === 0
        ? [memoryFile("m.cff", mutate(single, source))]
        : [
            memoryFile("m.cfg", part === 1 ? cfg : mutate(cfg, source)),
            memoryFile("m.dat", part === 0 ? dat : mutate(dat, source)),
          ];
    const before = performance.now();
    try {
      const { sources } = await openComtrade(files, { zone: "+01:00" });
      let seen = 0;
      for (const one of sources) {
        expect(one.samplesPerSecond > 0 && Number.isFinite(one.samplesPerSecond)).toBe(true);
        expect(Number.isSafeInteger(one.start) && Number.isSafeInteger(one.length)).toBe(true);
        let next = 0;
        for await (const { first, samples } of one.blocks()) {
          expect(first).toBeGreaterThanOrEqual(next);
          expect(samples.length).toBe(one.channels.length);
          next = first + (samples[0]?.length ?? 0);
          seen += samples[0]?.length ?? 0;
        }
        expect(next).toBe(one.length);
      }
      expect(seen).toBeLessThan(2000);
      results++;
    } catch (error) {
      if (!(error instanceof LogError)) throw error;
      expect(error.message).toMatch(/^m\.(cfg|dat|cff)(, (line|byte) \d+)?: .+$/);
      expect(error.message).not.toMatch(/undefined|\[object/);
      sentences++;
    }
    slowest = Math.max(slowest, performance.now() - before);
  }
  expect(results + sentences).toBe(10_000);
  expect(results).toBeGreaterThan(1000);
  expect(sentences).toBeGreaterThan(1000);
  expect(slowest).toBeLessThan(2000);
  expect(performance.now() - began).toBeLessThan(60_000);
}, 120_000);
