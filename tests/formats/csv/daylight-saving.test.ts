import { describe, expect, test } from "vitest";
import { openLogs } from "../../../src/formats/index.js";
import { MINUTE, WEEK } from "../../../src/recording/time.js";
import { content, failure, logFile, read, seriesOf, starts, tenMinutes, values } from "./log.js";

// Directive 2000/84/EC: clocks of the Union change at 01:00 UTC on the last Sundays of March and October.
const SPRING = Date.parse("2026-03-29T01:00Z");
const AUTUMN = Date.parse("2026-10-25T01:00Z");
const vienna = (utc: Date) => (utc.getTime() >= SPRING && utc.getTime() < AUTUMN ? 120 : 60);
const setup = { zone: "Europe/Vienna" };

const HEADER = "Time;U L1 [V]\n";
const row = ({ ymd, hm }: { ymd: string; hm: string }, i: number) => `${ymd} ${hm};${(2300 + (i % 97)) / 10}`;
const week = (fromUtc: string, rows = 1008) => HEADER + tenMinutes(fromUtc, rows, row, vienna);

describe("a week of ten minutes across a change of the clock has 1008 intervals", () => {
  test.each([
    ["spring", "2026-03-25T23:00", SPRING, 60],
    ["autumn", "2026-10-21T22:00", AUTUMN, -60],
  ])("%s", async (_, from, change, by) => {
    const recording = await read(week(from), setup);
    const { axis } = seriesOf(recording);
    expect(axis.starts.length).toBe(1008);
    expect(recording.end - recording.start).toBe(WEEK);
    expect(axis.starts.every((t, i) => t === Date.parse(`${from}Z`) * 1000 + i * 10 * MINUTE)).toBe(true);
    expect(values(recording)).toEqual(Array.from({ length: 1008 }, (_v, i) => (2300 + (i % 97)) / 10));
    expect(recording.ledger).toMatchObject({
      unplaced: 0,
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      clockSteps: [],
    });
    expect(recording.ledger.clockChanges).toEqual([{ at: change * 1000, by: by * MINUTE, seenInLog: true }]);
  });

  test("with stamps at the end of the interval", async () => {
    for (const [from, stamped] of [
      ["2026-03-25T23:00", "2026-03-25T23:10"],
      ["2026-10-21T22:00", "2026-10-21T22:10"],
    ] as const) {
      const recording = await read(week(stamped), { ...setup, intervalLabel: "end" });
      expect(seriesOf(recording).axis.starts.length).toBe(1008);
      expect(recording.start).toBe(Date.parse(`${from}Z`) * 1000);
      expect(recording.ledger).toMatchObject({ unplaced: 0, clockSteps: [] });
    }
  });

  test("newest row first", async () => {
    const [, ...lines] = week("2026-10-21T22:00").trimEnd().split("\n");
    const reversed = await read(`${HEADER}${lines.reverse().join("\n")}\n`, setup);
    expect(content(reversed)).toEqual(content(await read(week("2026-10-21T22:00"), setup)));
    expect(reversed.ledger.outOfOrder).toBe(0);
    expect(reversed.ledger.remarks.map(String)).toEqual([
      "log.csv: its newest row stands first; it was read from its end",
    ]);
  });

  test("in a fixed offset or with offsets in the stamps nothing changes", async () => {
    const fixed = await read(HEADER + tenMinutes("2026-10-21T22:00", 1008, row, () => 60), { zone: "+01:00" });
    expect(content(fixed)).toEqual(content(await read(week("2026-10-21T22:00"), setup)));
    expect(fixed.ledger.clockChanges).toEqual([]);
    const offset = (i: number) => (Date.parse("2026-10-21T22:00Z") + i * 600_000 < AUTUMN ? "+02:00" : "+01:00");
    const stated = (c: { ymd: string; hm: string }, i: number) => row(c, i).replace(";", `${offset(i)};`);
    const recording = await read(HEADER + tenMinutes("2026-10-21T22:00", 1008, stated, vienna));
    expect(content(recording)).toEqual(content(fixed));
  });

  test("with offsets in the stamps, a given zone only names the local time", async () => {
    const offset = (i: number) => (Date.parse("2026-10-21T22:00Z") + i * 600_000 < AUTUMN ? "+02:00" : "+01:00");
    const stated = (c: { ymd: string; hm: string }, i: number) => row(c, i).replace(";", `${offset(i)};`);
    const text = HEADER + tenMinutes("2026-10-21T22:00", 1008, stated, vienna);
    const recording = await read(text, setup);
    expect(content(recording)).toEqual(content(await read(text)));
    expect(recording.ledger.timeBase).toMatchObject({ zone: "Europe/Vienna", zoneOrigin: "given" });
    expect(recording.ledger).toMatchObject({ unplaced: 0, clockSteps: [], clockChanges: [] });
  });
});

describe("the repeated hour in autumn", () => {
  const text = week("2026-10-24T22:00", 60);
  const lines = text.trimEnd().split("\n");
  const inHour = (line: string) => line.includes(" 02:");

  test("passed only once cannot be placed: those rows are left out and counted", async () => {
    const seen = new Set<string>();
    const once = lines.filter((line) => {
      const stamp = line.split(";")[0] as string;
      return !seen.has(stamp) && seen.add(stamp);
    });
    expect(once.length).toBe(lines.length - 6);
    const recording = await read(`${once.join("\n")}\n`, setup);
    expect(recording.ledger.unplaced).toBe(6);
    expect(starts(recording)).not.toContain("2026-10-25T00:00:00Z");
    expect(starts(recording)).not.toContain("2026-10-25T01:00:00Z");
    expect(starts(recording).length).toBe(60 - 12);
    expect(recording.ledger.clockChanges[0]?.seenInLog).toBe(false);
  });

  test("with gaps in it is placed by the one step back", async () => {
    const gaps = lines.filter((_, i) => i % 3 !== 1 || i > 25 || i < 10);
    const recording = await read(`${gaps.join("\n")}\n`, setup);
    const whole = await read(text, setup);
    expect(recording.ledger.unplaced).toBe(0);
    const kept = new Map(starts(whole).map((t, i) => [t, values(whole)[i]]));
    expect(values(recording)).toEqual(starts(recording).map((t) => kept.get(t)));
  });

  test("in disorder is left out, and only it", async () => {
    const hour = lines.filter(inHour);
    const disorder = [...lines.slice(0, 13), ...hour.map((_, i) => hour[(i * 5) % 12] as string), ...lines.slice(25)];
    const recording = await read(`${disorder.join("\n")}\n`, setup);
    expect(recording.ledger.unplaced).toBe(12);
    expect(starts(recording).length).toBe(48);
  });

  test("of an hourly log has one row for each pass", async () => {
    const hourly = tenMinutes("2026-10-24T22:00", 60, row, vienna)
      .split("\n")
      .filter((_, i) => i % 6 === 0);
    const recording = await read(`${HEADER}${hourly.join("\n")}\n`, setup);
    expect(starts(recording).slice(1, 5)).toEqual([
      "2026-10-24T23:00:00Z",
      "2026-10-25T00:00:00Z",
      "2026-10-25T01:00:00Z",
      "2026-10-25T02:00:00Z",
    ]);
  });

  test("cut between two files, in any order of files, reads as the whole", async () => {
    const whole = content(await read(text, setup));
    for (let cut = 5; cut < 35; cut++) {
      const [a, b] = [lines.slice(0, cut), [lines[0], ...lines.slice(cut)]].map((part) => `${part.join("\n")}\n`);
      const files = [logFile(a as string, "a.csv"), logFile(b as string, "b.csv")];
      for (const order of [files, files.toReversed()]) {
        const recording = await openLogs(order, setup);
        expect(content(recording), `cut at ${cut}`).toEqual(whole);
        expect(recording.ledger.unplaced).toBe(0);
      }
    }
  });

  test("of a zone that changes by half an hour", async () => {
    // Lord Howe Island ends summer time on the first Sunday of April at 15:00 UTC, from +11:00 to +10:30 (IANA tz database).
    const change = Date.parse("2026-04-04T15:00Z");
    const local = (utc: Date) => (utc.getTime() < change ? 660 : 630);
    const recording = await read(HEADER + tenMinutes("2026-04-04T12:00", 36, row, local), {
      zone: "Australia/Lord_Howe",
    });
    expect(starts(recording)).toEqual(
      Array.from({ length: 36 }, (_, i) =>
        new Date(Date.parse("2026-04-04T12:00Z") + i * 600_000).toISOString().replace(".000", ""),
      ),
    );
    expect(recording.ledger.clockChanges[0]?.by).toBe(-30 * MINUTE);
  });
});

describe("the skipped hour in spring", () => {
  test("holds no stamp: a log with one does not follow summer time", async () => {
    const winterTime = HEADER + tenMinutes("2026-03-28T23:00", 60, row, () => 60);
    expect(await failure(winterTime, setup)).toBe(
      "LogError: log.csv, line 14: in Europe/Vienna the clock skipped this hour: the log's clock seems not to follow summer time; give its fixed offset, such as --zone +01:00",
    );
    expect(starts(await read(winterTime, { zone: "+01:00" })).length).toBe(60);
  });

  test("may be named by the end of the last interval before it", async () => {
    const ends =
      HEADER + tenMinutes("2026-03-28T23:10", 60, row, vienna).replace("2026-03-29 03:00", "2026-03-29 02:00");
    const recording = await read(ends, { ...setup, intervalLabel: "end" });
    expect(starts(recording).length).toBe(60);
    expect(starts(recording)).toContain("2026-03-29T00:50:00Z");
    expect(recording.ledger.clockSteps).toEqual([]);
    expect(await failure(ends, setup)).toContain("the clock skipped this hour");
  });
});
