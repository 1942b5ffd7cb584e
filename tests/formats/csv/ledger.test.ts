import { describe, expect, test } from "vitest";
import { intervalOf, tickPhase } from "../../../src/formats/csv/interval.js";
import { MINUTE, SECOND } from "../../../src/recording/time.js";
import { content, failure, read, seriesOf, shuffled, starts, tenMinutes, values } from "./log.js";

const HEADER = "Time;U L1 [V];U L2 [V];Flag\n";
const lines = tenMinutes("2026-03-01T00:00", 20, ({ ymd, hm }, i) => `${ymd} ${hm};${231 + i}.5;${230 + i}.25;0`)
  .trimEnd()
  .split("\n");
const log = (rows: readonly string[]) => `${HEADER}${rows.join("\n")}\n`;
const at = (i: number) => Date.UTC(2026, 2, 1) * 1000 + i * 10 * MINUTE;
/** Row i with other cells. */
const row = (i: number, cells: string) => `${(lines[i] as string).split(";")[0]};${cells}`;
const clean = async () => content(await read(log(lines)));

describe("rows that repeat an interval", () => {
  test("with the same values are counted once more as duplicates", async () => {
    const recording = await read(log([...lines, lines[3] as string, lines[3] as string, lines[7] as string]));
    expect(content(recording)).toEqual(await clean());
    expect(recording.ledger).toMatchObject({ duplicates: 3, conflicts: [] });
  });

  test("complete one another where one lacks a value", async () => {
    const recording = await read(log(lines.with(4, row(4, "235.5;;0")).concat(row(4, "---;234.25;1"))));
    expect(values(recording)[4]).toBe(235.5);
    expect(values(recording, { phase: "L2" })[4]).toBe(234.25);
    expect([...seriesOf(recording).axis.flagged].indexOf(1)).toBe(4);
    expect(recording.ledger.conflicts).toEqual([]);
  });

  test("are flagged if any of them is", async () => {
    const recording = await read(log([row(4, "235.5;234.25;1"), ...lines]));
    expect([...seriesOf(recording).axis.flagged].indexOf(1)).toBe(4);
    expect(recording.ledger.duplicates).toBe(1);
  });

  test("with two values have neither, whatever the order, also if one of them comes again", async () => {
    const contradiction = [row(4, "240.0;234.25;0"), lines[4] as string];
    const results = [
      [...lines, ...contradiction],
      [...contradiction, ...lines],
      shuffled([...lines, ...contradiction], 3),
    ].map((rows) => read(log(rows)));
    const [first] = await Promise.all(results);
    for (const result of results) {
      const recording = await result;
      expect(values(recording)[4]).toBeNaN();
      expect(values(recording, { phase: "L2" })[4]).toBe(234.25);
      expect(recording.ledger).toMatchObject({ conflicts: [at(4)], duplicates: 0 });
      expect(content(recording)).toEqual(content(first as NonNullable<typeof first>));
    }
  });
});

describe("the order of rows", () => {
  test("does not change what is read", async () => {
    for (let seed = 1; seed <= 20; seed++)
      expect(content(await read(log(shuffled(lines, seed))))).toEqual(await clean());
  });

  test("is accounted for", async () => {
    const late = [...lines.slice(0, 5), ...lines.slice(6), lines[5] as string];
    const early = [lines[12] as string, ...lines.filter((_, i) => i !== 12)];
    expect((await read(log(late))).ledger.outOfOrder).toBe(1);
    expect((await read(log(early))).ledger.outOfOrder).toBe(12);
    expect((await read(log(lines))).ledger.outOfOrder).toBe(0);
  });
});

describe("the clock", () => {
  const seconds = (times: readonly number[]) =>
    log(times.map((t) => `${new Date(Date.UTC(2026, 2, 1) + t * 1000).toISOString().slice(0, 23)};231.5;230.5;0`));
  const even = Array.from({ length: 30 }, (_, i) => i * 600);

  test("may jitter by 1 % of the interval: stamps are put on their tick, and the remark says by how much", async () => {
    const jitter = even.map((t, i) => t + ([0, 5.9, -3.25, 0.001][i % 4] as number));
    const recording = await read(seconds(jitter.map((t) => t + 600)));
    expect([...seriesOf(recording).axis.starts]).toEqual(even.map((t) => at(0) + (t + 600) * SECOND));
    expect(recording.ledger.remarks.map(String)).toEqual([
      "log.csv: 22 stamps beside their tick were put on it; the farthest was 5.9 s away",
    ]);
    expect(recording.ledger.clockSteps).toEqual([]);
  });

  test("may keep ticks of its own", async () => {
    const recording = await read(seconds(even.map((t) => t + 200)));
    expect([...seriesOf(recording).axis.starts]).toEqual(even.map((t) => at(0) + (t + 200) * SECOND));
    expect(recording.ledger.remarks.map(String)).toEqual([]);
  });

  test("may step: stamps beyond the jitter stay and every step is listed", async () => {
    const stepped = even.map((t, i) => (i < 20 ? t : i < 25 ? t + 200 : t));
    const recording = await read(seconds(stepped));
    expect([...seriesOf(recording).axis.starts]).toEqual(stepped.map((t) => at(0) + t * SECOND));
    expect(recording.ledger.clockSteps).toEqual([
      { at: at(20) + 200 * SECOND, by: 200 * SECOND },
      { at: at(25), by: -200 * SECOND },
    ]);
  });

  test("may drift: stamps stay as they are, and the remark says how far their distances are off", async () => {
    const slow = Array.from({ length: 200 }, (_, i) => i * 601);
    const recording = await read(seconds(slow));
    expect([...seriesOf(recording).axis.starts]).toEqual(slow.map((t) => at(0) + t * SECOND));
    expect(seriesOf(recording).axis.interval).toBe(600 * SECOND);
    expect(recording.ledger.clockSteps).toEqual([]);
    expect(recording.ledger.remarks.map(String)).toEqual([
      "log.csv: the distance of rows is off its interval by up to 1 s",
    ]);
  });

  test("leaves gaps that are no steps", async () => {
    const recording = await read(log(lines.filter((_, i) => i < 5 || i > 8)));
    expect(starts(recording).length).toBe(16);
    expect(recording.ledger.clockSteps).toEqual([]);
  });
});

describe("the length of the interval", () => {
  const every = (distances: readonly number[]) => {
    let t = 1_772_323_200;
    return Float64Array.from([t, ...distances.map((d) => (t += d))], (s) => s * SECOND);
  };
  const cycle = (pattern: readonly number[], n: number) =>
    Array.from({ length: n }, (_, i) => pattern[i % pattern.length] as number);

  test.each([
    ["ten minutes", cycle([600], 10), 600],
    ["ten minutes from two rows", [600], 600],
    ["seven minutes", cycle([420], 10), 420],
    ["a clock that loses a second each time", cycle([601], 100), 600],
    ["a polling loop that is a little slow", cycle([1.003, 1.002, 1.004], 1000), 1],
    ["a length that is near no usual one", cycle([605], 100), 605],
    ["stamps cut to the second", cycle([599, 601], 100), 600],
    ["stamps that jitter", cycle([602, 597.5, 603, 597.5], 100), 600],
    ["gaps of whole intervals", cycle([600, 600, 1800], 30), 600],
    ["half of the rows missing", cycle([10, 20, 30, 20, 10, 40], 60), 10],
    ["200 ms", cycle([0.2], 50), 0.2],
    ["a day", [86400, 86400], 86400],
  ])("%s", (_, distances, expected) => {
    expect(intervalOf(every(distances))).toBe(expected * SECOND);
  });

  test.each([
    ["one row", []],
    ["events stamped in whole seconds", cycle([1, 7, 19, 43, 101], 20)],
    ["no common distance", [1, 7, 19, 43, 101, 5, 233]],
    ["more than a day", [7 * 86400, 7 * 86400]],
  ])("cannot be told from %s", (_, distances) => {
    expect(intervalOf(every(distances))).toBeUndefined();
  });

  test("is asked for in words", async () => {
    expect(await failure(log(lines.slice(0, 1)))).toBe(
      "LogError: log.csv: fewer than two different stamps, so the length of an interval cannot be told: take a longer part of the log",
    );
    const odd = [1, 2, 9, 40, 41.5, 90, 200].map(
      (m) =>
        `2026-03-01 0${Math.floor(m / 60)}:${String(Math.floor(m % 60)).padStart(2, "0")}:${m % 1 ? "30" : "00"};1.5;2.5;0`,
    );
    expect(await failure(log(odd))).toContain("its rows follow one another at no common distance");
  });

  test("ticks lie where most starts lie", () => {
    const minutes = (m: readonly number[]) => Float64Array.from(m, (x) => x * MINUTE);
    expect(tickPhase(minutes([3, 13, 23, 33, 44]), 10 * MINUTE)).toBe(3 * MINUTE);
    expect(tickPhase(minutes([0.05, 10.02, 19.99, 29.96, 45]), 10 * MINUTE)).toBe(0);
    expect(tickPhase(minutes([5.01, 15.02, 25.03, 35.04]), 10 * MINUTE)).toBe(5.03 * MINUTE);
    expect(tickPhase(minutes([1, 12, 23, 34, 45, 56]), 10 * MINUTE)).toBeUndefined();
  });
});

test("extremes without a mean and columns without any value are left out with a remark", async () => {
  const text = `Time;U L1 mean [V];U L1 min [V];U L1 max [V];U L2 max [V];U L3 [V]\n${lines
    .map((line) => `${line.split(";")[0]};231.5;230.1;;240.2;---`)
    .join("\n")}\n`;
  const recording = await read(text);
  expect(recording.series.map((s) => s.phase)).toEqual(["L1"]);
  expect(seriesOf(recording).min?.[0]).toBe(230.1);
  expect(seriesOf(recording).max).toBeUndefined();
  expect(recording.ledger.remarks.map(String)).toEqual([
    "supply voltage L1, maximum: its column holds no value and was left out",
    "supply voltage L2, maximum: logged without its mean, so it was left out",
    "supply voltage L3, mean: its column holds no value and was left out",
  ]);
});
