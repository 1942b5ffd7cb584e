import { describe, expect, it, test } from "vitest";
import { isoUtc } from "../../../src/recording/time.js";
import { expected, failure, HEADER, onlySource, open, samplesOf, tableText } from "./support.js";

const remarksOf = async (text: string, setup = {}) => (await open(text, setup)).ledger.remarks.map(String);

describe("the sampling rate is that of the times", () => {
  test.each([
    ["seconds with four decimals", 10_000, (i: number) => (i / 10_000).toFixed(4), "Time [s]"],
    ["milliseconds", 10_000, (i: number) => (i / 10).toFixed(1), "Time (ms)"],
    ["microseconds", 5000, (i: number) => String(i * 200), "t/µs"],
    ["nanoseconds", 5000, (i: number) => String(i * 200_000), "Zeit in ns"],
    ["no unit", 6400, (i: number) => String(i / 6400), "t"],
    ["a first column with a strange name", 6400, (i: number) => String(i / 6400), "Abscissa"],
    ["a rate whose period has endless decimals", 12_000, (i: number) => (i / 12_000).toFixed(6), "Time [s]"],
    ["five significant digits", 10_240, (i: number) => String(Number((i / 10_240).toPrecision(5))), "Time [s]"],
    ["exponents", 10_240, (i: number) => (i / 10_240).toExponential(4), "Time [s]"],
    ["exponents from before zero", 20_000, (i: number) => ((i - 1000) / 20_000).toExponential(5), "Time [s]"],
    ["all digits of a double", 3000, (i: number) => String(i / 3000), "Time [s]"],
    ["a rate that is not round", 10_239.87, (i: number) => (i / 10_239.87).toFixed(6), "Time [s]"],
    ["seconds since 1970", 10_000, (i: number) => (1_772_323_200 + i / 10_000).toFixed(4), "time"],
    ["single precision", 8000, (i: number) => Math.fround(i / 8000).toPrecision(9), "Time [s]"],
  ])("%s", async (_, rate, time, name) => {
    const text = tableText({ rate, rows: 9000, time, header: `${name},${HEADER}` });
    const recording = await open(text);
    const source = onlySource(recording);
    expect(Math.abs(source.samplesPerSecond / rate - 1)).toBeLessThan(Number.isInteger(rate) ? 1e-15 : 2e-6);
    expect(source.length).toBe(9000);
    expect(await samplesOf(source)).toEqual(expected(rate, 9000));
    expect(recording.ledger.remarks.filter((r) => !String(r).includes("does not say when"))).toEqual([]);
  });

  test("a doubtful one is remarked on with its bounds", async () => {
    const text = tableText({ rate: 10_240, rows: 9000, time: (i) => (i / 10_240).toFixed(4) });
    expect(onlySource(await open(text)).samplesPerSecond).toBe(10_240);
    const remarks = await remarksOf(text);
    expect(remarks).toContainEqual(
      expect.stringMatching(
        /^log\.csv: by its times the sampling rate lies between 10239\.4 and 10240\.6 per second; 10240 is used/,
      ),
    );
    expect(remarks).toContainEqual(
      "log.csv: its times are written in steps of 0.0001 s, so that a loss of up to 2 samples would not show and all times may be off by 0.0001 s.",
    );
  });

  test("one that they hardly tell is asked for, and taken from the setup", async () => {
    const text = tableText({ rate: 10_240, rows: 30_000, time: (i) => `2026-03-01T00:00:0${Math.floor(i / 10_240)}Z` });
    expect(await failure(text)).toMatch(
      /^LogError: log\.csv, line 2: its times are too few or too coarse to tell the sampling rate \(between 10239\.5 and 20480 per second\): state samplesPerSecond in the setup$/,
    );
    const source = onlySource(await open(text, { samplesPerSecond: 10_240 }));
    expect([source.samplesPerSecond, source.length, isoUtc(source.start)]).toEqual([
      10_240,
      30_000,
      "2026-03-01T00:00:00Z",
    ]);
    expect(await samplesOf(source)).toEqual(expected(10_240, 30_000));
  });

  test("a stated one that contradicts them is refused", async () => {
    const text = tableText({ rate: 10_000, rows: 500, time: (i) => (i / 10_000).toFixed(4) });
    expect(await failure(text, { samplesPerSecond: 9000 })).toBe(
      "UsageError: the setup states samplesPerSecond: 9000, but by its times log.csv has 10000 samples per second; correct it or take it out",
    );
  });

  test("too low a one for measuring is said", async () => {
    const text = tableText({ rate: 1000, rows: 500, time: (i) => (i / 1000).toFixed(3) });
    expect(await remarksOf(text)).toContain(
      "log.csv: 1000 samples per second are too few; waveforms are measured from 2000 on.",
    );
  });
});

describe("a table without times", () => {
  const text = tableText({ rate: 10_000, rows: 700 });
  test("needs the rate", async () => {
    expect(await failure(text)).toBe(
      "LogError: log.csv: it has no column of times: state samplesPerSecond in the setup",
    );
  });

  test("is read at the stated rate, from the stated start", async () => {
    const setup = { samplesPerSecond: 10_000, start: "2026-03-29T03:30", zone: "Europe/Vienna" };
    const recording = await open(text, setup);
    const source = onlySource(recording);
    expect([source.samplesPerSecond, source.length, isoUtc(source.start)]).toEqual([
      10_000,
      700,
      "2026-03-29T01:30:00Z",
    ]);
    expect(await samplesOf(source)).toEqual(expected(10_000, 700));
    expect(recording.ledger.timeBase).toMatchObject({ zone: "Europe/Vienna", zoneOrigin: "given" });
    expect(isoUtc(recording.end)).toBe("2026-03-29T01:30:00.07Z".replace("07Z", "070Z"));
  });

  test("may have one column only", async () => {
    const lines = text.split("\n").map((line) => line.split(",")[0]);
    const source = onlySource(await open(lines.join("\n"), { samplesPerSecond: 10_000 }));
    expect(await samplesOf(source)).toEqual(expected(10_000, 700).slice(0, 1));
  });

  test("but with numbers of the samples shows gaps", async () => {
    const lost = (i: number) => i >= 100 && i < 140;
    const counted = tableText({ rate: 10_000, rows: 700, time: String, header: `no.,${HEADER}`, lost });
    expect(await failure(counted)).toBe(
      "LogError: log.csv: its first column counts the samples and tells no time: state samplesPerSecond in the setup",
    );
    const source = onlySource(await open(counted, { samplesPerSecond: 10_000 }));
    expect(await samplesOf(source)).toEqual(expected(10_000, 700, lost));
  });

  test("is also one whose times the setup leaves out", async () => {
    const shaky = tableText({ rate: 10_000, rows: 700, time: (i) => (i / 10_000 + (i % 7) * 1e-5).toFixed(6) });
    expect(await failure(shaky)).toMatch(/^LogError: log\.csv, line \d+: by the spacing .* state samplesPerSecond if/);
    const setup = { samplesPerSecond: 10_000, channels: [{ channel: "Time [s]", ignore: true as const }] };
    expect(await samplesOf(onlySource(await open(shaky, setup)))).toEqual(expected(10_000, 700));
  });
});

describe("the start", () => {
  const text = tableText({ rate: 10_000, rows: 500, time: (i) => (5 + i / 10_000).toFixed(4) });
  test("of times without a date is put on 1970, which is said", async () => {
    const recording = await open(text);
    expect(isoUtc(recording.start)).toBe("1970-01-01T00:00:00Z");
    const { timeBase } = recording.ledger;
    expect(timeBase).toMatchObject({ zone: "UTC", zoneOrigin: "assumed" });
    expect(String(timeBase.stampForm)).toBe("seconds from the beginning of the recording");
    expect(String(timeBase.labelReason)).toContain("samples carry the time at which they were taken");
    expect(recording.ledger.remarks.map(String)).toEqual([
      expect.stringMatching(
        /^The log does not say when it was recorded: its first sample is put on 1970-01-01T00:00:00Z/,
      ),
    ]);
  });

  test("may be stated with an offset", async () => {
    const recording = await open(text, { start: "2026-03-01T00:00:00.25+01:00" });
    expect(isoUtc(recording.start)).toBe("2026-02-28T23:00:00.250Z");
    expect(recording.ledger.timeBase.zoneOrigin).toBe("given");
  });

  test("may not be stated beside dates", async () => {
    const dated = tableText({
      rate: 10_000,
      rows: 300,
      time: (i) => `2026-03-01 00:00:00.${String(i).padStart(4, "0")}`,
    });
    expect(await failure(dated, { start: "2026-03-01T00:00" })).toBe(
      "UsageError: the setup states start, but log.csv carries dates of its own; take start out",
    );
  });
});

describe("stamps", () => {
  const fraction = (i: number) => `${Math.floor(i / 10_000)}.${String(i % 10_000).padStart(4, "0")}`;
  test.each([
    ["ISO with offset", (i: number) => `2026-03-01T01:00:0${fraction(i)}+01:00`, "stamps"],
    ["day first, in UTC", (i: number) => `13.03.2026 00:00:0${fraction(i)}`, "assumed"],
    ["date and time in two columns", (i: number) => `2026-03-01,00:00:0${fraction(i)}`, "assumed"],
  ])("%s", async (_, time, zoneOrigin) => {
    const header = time(0).includes(",00") ? `Date,Time,${HEADER}` : `Time,${HEADER}`;
    const recording = await open(tableText({ rate: 10_000, rows: 12_000, time, header }));
    const source = onlySource(recording);
    expect(isoUtc(source.start)).toMatch(/^2026-03-(01|13)T00:00:00Z$/);
    expect([source.samplesPerSecond, source.length]).toEqual([10_000, 12_000]);
    expect(recording.ledger.timeBase.zoneOrigin).toBe(zoneOrigin);
    expect(recording.ledger.remarks.map(String)).toEqual([]);
    expect(await samplesOf(source)).toEqual(expected(10_000, 12_000));
  });

  test("with offsets are shown in the given zone, which must exist", async () => {
    const text = tableText({ rate: 10_000, rows: 300, time: (i) => `2026-07-01T00:00:0${fraction(i)}+01:00` });
    const recording = await open(text, { zone: "Europe/Vienna" });
    expect(isoUtc(recording.start)).toBe("2026-06-30T23:00:00Z");
    expect(recording.ledger.timeBase).toMatchObject({ zone: "Europe/Vienna", zoneOrigin: "given" });
    expect(await failure(text, { zone: "Europe/Nowhere" })).toMatch(/^UsageError: "Europe\/Nowhere" is not a known/);
  });

  test("run on over midnight and over the end of summer time", async () => {
    const at = Date.parse("2026-10-25T00:59:59.500Z");
    const local = (i: number) => {
      const utc = at + i / 2;
      const shown = new Date(utc + (utc < Date.parse("2026-10-25T01:00Z") ? 7_200_000 : 3_600_000)).toISOString();
      return `${shown.slice(0, 10)} ${shown.slice(11, 23)}${i % 2 === 1 ? "5" : "0"}`;
    };
    const recording = await open(tableText({ rate: 2000, rows: 3000, time: local }), { zone: "Europe/Vienna" });
    const source = onlySource(recording);
    expect([isoUtc(source.start), source.length]).toEqual(["2026-10-25T00:59:59.500Z", 3000]);
    expect(recording.ledger.clockChanges).toEqual([
      { at: Date.parse("2026-10-25T01:00Z") * 1000, by: -3_600_000_000, seenInLog: true },
    ]);
    expect(recording.ledger.remarks.map(String)).toContainEqual(expect.stringMatching(/first time occurs twice/));
  });

  test("with an undecided order of day and month are asked about", async () => {
    const text = tableText({ rate: 1000, rows: 300, time: (i) => `01/03/2026 00:00:00.${String(i).padStart(3, "0")}` });
    expect(await failure(text)).toMatch(/^LogError: log\.csv: its dates can be read in more than one order/);
    expect(isoUtc((await open(text, { dateOrder: "dmy" })).start)).toBe("2026-03-01T00:00:00Z");
  });
});

describe("gaps and uneven times", () => {
  const at = (i: number) => (i / 10_000).toFixed(5);

  test("a jump by whole samples is a gap, of one sample as of many", async () => {
    const lost = (i: number) => i === 3 || (i >= 2000 && i < 7777) || i === 8500;
    const text = tableText({ rate: 10_000, rows: 9000, time: at, lost });
    const source = onlySource(await open(text));
    expect(source.length).toBe(9000);
    expect(await samplesOf(source)).toEqual(expected(10_000, 9000, lost));
    expect(await remarksOf(text)).toContain("log.csv: 5779 samples are missing in 3 gaps, by the times of the rows.");
  });

  test("a single lost sample shows where times have as few digits as can be", async () => {
    const lost = (i: number) => i === 4321;
    const text = tableText({ rate: 10_000, rows: 9000, time: (i) => (i / 10_000).toFixed(4), lost });
    expect(await samplesOf(onlySource(await open(text)))).toEqual(expected(10_000, 9000, lost));
  });

  it.each([
    [
      "half a sample too late",
      (i: number) => ((i < 200 ? i : i + 0.5) / 10_000).toFixed(6),
      "1.5 samples behind the row before, which is no whole number",
    ],
    ["a time twice", (i: number) => ((i < 200 ? i : i - 1) / 10_000).toFixed(6), "not later than the row before"],
    ["a step back", (i: number) => ((i === 200 ? 20 : i) / 10_000).toFixed(6), "not later than the row before"],
    [
      "another rate",
      (i: number) => ((i < 1200 ? i : 1200 + (i - 1200) * 0.7) / 10_000).toFixed(6),
      "samples behind the row before",
    ],
  ])("%s is refused with its line", async (_, time, what) => {
    const sentence = await failure(tableText({ rate: 10_000, rows: 2000, time }));
    expect(sentence).toMatch(
      /^LogError: log\.csv, line (20[23]|120[23]): by the spacing of most rows \(10000 per second\) its time is /,
    );
    expect(sentence).toContain(what);
  });

  test("a missing time is refused with its line", async () => {
    const time = (i: number) => (i === 77 ? "---" : at(i));
    expect(await failure(tableText({ rate: 10_000, rows: 900, time }))).toBe(
      "LogError: log.csv, line 79: the row has no time",
    );
  });

  test("a clock that runs off the even spacing is refused", async () => {
    const time = (i: number) => (i / 10_000 + 2e-5 * Math.sin(i / 700)).toFixed(7);
    expect(await failure(tableText({ rate: 10_000, rows: 9000, time }))).toMatch(/by the spacing of most rows/);
  });
});
