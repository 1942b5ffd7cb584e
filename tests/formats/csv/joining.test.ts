import { describe, expect, test } from "vitest";
import { openLogs } from "../../../src/formats/index.js";
import type { Recording } from "../../../src/recording/recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { content, failureOf, logFile, randomNumbers, read, seriesOf, starts, tenMinutes, values } from "./log.js";

const open = (texts: Record<string, string>, setup: GivenSetup = {}): Promise<Recording> =>
  openLogs(
    Object.entries(texts).map(([name, text]) => logFile(text, name)),
    setup,
  );

const HEADER = "Time;U L1 [V];U L1 min [V];Flag\n";
const week = tenMinutes(
  "2026-03-02T00:00",
  1008,
  ({ dmy, hm }, i) =>
    `${dmy} ${hm};${(2300 + (i % 89)) / 10};${i % 50 === 7 ? "" : 220 + (i % 9)};${i % 200 === 0 ? 1 : 0}`,
);
const lines = week.trimEnd().split("\n");
const log = (rows: readonly string[]) => `${HEADER}${rows.join("\n")}\n`;

describe("a log split in two reads as the whole", () => {
  test.each([1, 2, 144, 500, 1006, 1007])("at row %i, in either order", async (cut) => {
    const whole = await read(log(lines));
    const [a, b] = [log(lines.slice(0, cut)), log(lines.slice(cut))];
    for (const parts of [
      { "a.csv": a, "b.csv": b },
      { "b.csv": b, "a.csv": a },
    ]) {
      const recording = await open(parts);
      expect(content(recording)).toEqual(content(whole));
      expect(recording.ledger).toMatchObject({ duplicates: 0, conflicts: [], outOfOrder: 0, clockSteps: [] });
    }
  });

  test("with an overlap, which is counted", async () => {
    const recording = await open({ "a.csv": log(lines.slice(0, 600)), "b.csv": log(lines.slice(500)) });
    expect(content(recording)).toEqual(content(await read(log(lines))));
    expect(recording.ledger.duplicates).toBe(100);
  });

  test("row by row at random", async () => {
    const random = randomNumbers(5);
    const side = lines.map(() => random(2));
    const part = (k: number) => log(lines.filter((_, i) => side[i] === k));
    const recording = await open({ "a.csv": part(0), "b.csv": part(1) });
    expect(content(recording)).toEqual(content(await read(log(lines))));
  });

  test("every second row, where each file alone looks like a log of 20 minutes", async () => {
    const part = (k: number) => log(lines.filter((_, i) => i % 2 === k));
    expect(seriesOf(await read(part(0))).axis.interval).toBe(1200e6);
    expect(content(await open({ "a.csv": part(0), "b.csv": part(1) }))).toEqual(content(await read(log(lines))));
  });

  test("where only one part shows which number is the day", async () => {
    const slashes = lines.map((line) => line.replace(/^(..)\.(..)\./, "$1/$2/"));
    const early = slashes.slice(0, 100);
    const late = tenMinutes("2026-03-13T00:00", 100, ({ dmy, hm }) => `${dmy.replaceAll(".", "/")} ${hm};231;220;0`);
    expect(await failureOf(open({ "a.csv": log(early) }))).toContain("--date-order");
    const recording = await open({ "a.csv": log(early), "b.csv": HEADER + late });
    expect(starts(recording)[0]).toBe("2026-03-02T00:00:00Z");
    expect(starts(recording).at(-1)).toBe("2026-03-13T16:30:00Z");
  });
});

test("the same file twice: every row is a duplicate", async () => {
  const recording = await open({ "a.csv": log(lines), "b.csv": log(lines) });
  expect(content(recording)).toEqual(content(await read(log(lines))));
  expect(recording.ledger.duplicates).toBe(1008);
});

test("files with different columns share one axis, on the union of their starts", async () => {
  const current = `Time;I L1 [A]\n${lines
    .slice(100, 1000)
    .map((line) => `${line.split(";")[0]};12.5`)
    .join("\n")}\n`;
  const recording = await open({ "u.csv": log(lines), "i.csv": current });
  const [u, i] = [seriesOf(recording), seriesOf(recording, { quantity: "current" })];
  expect(u.axis).toBe(i.axis);
  expect(u.axis.starts.length).toBe(1008);
  expect([i.values[99], i.values[100], i.values[999], i.values[1000]]).toEqual([Number.NaN, 12.5, 12.5, Number.NaN]);
  expect(recording.ledger.duplicates).toBe(0);
  expect(recording.ledger.columns.map((c) => c.file)).toEqual(["u.csv", "u.csv", "u.csv", "u.csv", "i.csv", "i.csv"]);
});

test("a mean in one file and its extremes in another are one series", async () => {
  const part = (header: string, cell: string) =>
    `Time;${header}\n${lines.map((line) => `${line.split(";")[0]};${cell}`).join("\n")}\n`;
  const recording = await open({ "mean.csv": part("U L1 [V]", "231.5"), "max.csv": part("U L1 max [V]", "240.2") });
  expect(seriesOf(recording).max?.[0]).toBe(240.2);
});

test("logs of different intervals keep an axis each", async () => {
  const frequency = Array.from({ length: 600 }, (_, i) => `${1_772_409_600 + 10 * i};${50 + (i % 7) / 1000}`).join(
    "\n",
  );
  const recording = await open({ "u.csv": log(lines), "f.csv": `Time;f [Hz]\n${frequency}\n` });
  const [u, f] = [seriesOf(recording), seriesOf(recording, { quantity: "frequency", phase: "system" })];
  expect([u.axis.interval, f.axis.interval]).toEqual([600e6, 10e6]);
  expect([u.axis.starts.length, f.axis.starts.length]).toEqual([1008, 600]);
  expect(recording.end).toBe((u.axis.starts.at(-1) as number) + 600e6);
});

test("one quantity in two intervals gives two series", async () => {
  const seconds = Array.from({ length: 600 }, (_, i) => `${1_772_409_600 + i};231.5`).join("\n");
  const recording = await open({ "slow.csv": log(lines), "fast.csv": `Time;U L1 [V]\n${seconds}\n` });
  expect(recording.series.map((s) => s.axis.interval)).toEqual([1e6, 600e6]);
});

test("logs whose ticks differ and that share no column keep an axis each; with a common column they share one", async () => {
  const shifted = (header: string) =>
    `Time;${header}\n${tenMinutes("2026-03-02T00:03", 200, ({ dmy, hm }) => `${dmy} ${hm};12.5`)}`;
  const apart = await open({ "u.csv": log(lines), "i.csv": shifted("I L1 [A]") });
  expect(seriesOf(apart).axis.starts.length).toBe(1008);
  expect(seriesOf(apart, { quantity: "current" }).axis.starts.length).toBe(200);
  expect(apart.ledger.clockSteps).toEqual([]);
  const later = tenMinutes("2026-03-09T00:03", 200, ({ dmy, hm }) => `${dmy} ${hm};231.5;220;0`);
  const together = await open({ "a.csv": log(lines), "b.csv": HEADER + later });
  expect(seriesOf(together).axis.starts.length).toBe(1208);
  expect(together.ledger.clockSteps).toEqual([{ at: Date.UTC(2026, 2, 9, 0, 3) * 1000, by: 180e6 }]);
});

test("each file has its own dialect, stamps and unit", async () => {
  const kilovolts = lines.slice(500).map((line) => {
    const [stamp, u, min, flag] = line.split(";") as [string, string, string, string];
    const [, d, m, y, time] = /(..)\.(..)\.(....) (.*)/.exec(stamp) as unknown as string[];
    return `${y}-${m}-${d}T${time}Z,${Number(u) / 1000},${min === "" ? "" : Number(min) / 1000},${flag}`;
  });
  const second = `${HEADER.replaceAll(";", ",").replaceAll("[V]", "[kV]")}${kilovolts.join("\n")}\n`;
  const recording = await open({ "a.csv": log(lines.slice(0, 500)), "b.csv": second });
  expect(values(recording)).toEqual(values(await read(log(lines))));
  expect(recording.ledger.timeBase).toMatchObject({ zoneOrigin: "assumed" });
  expect(String(recording.ledger.timeBase.stampForm)).toContain("; ");
});

test("files may mark different ends of their intervals", async () => {
  const ends = log(lines.slice(500)).replace("Time", "Interval end");
  const recording = await open({ "a.csv": log(lines.slice(0, 500)), "b.csv": ends });
  expect(starts(recording).length).toBe(1007);
  expect(recording.ledger.conflicts.length).toBe(1);
  expect(recording.ledger.remarks.map(String)).toEqual([
    "a.csv: its stamps mark the start of the interval",
    "b.csv: its stamps mark the end of the interval",
  ]);
});

test("one quantity in two units is refused", async () => {
  const part = (unit: string) =>
    `Time;U L1 h5 [${unit}]\n${lines.map((line) => `${line.split(";")[0]};1.5`).join("\n")}\n`;
  expect(await failureOf(open({ "a.csv": part("%"), "b.csv": part("V") }))).toBe(
    "LogError: b.csv, column 2: harmonic-voltage L1 order 5 is logged in V here and in % in a.csv: assess these files apart",
  );
});

test("the setup may name columns that only one of the files has, but none that no file has", async () => {
  const other = `Time;Kanal 7\n${lines.map((line) => `${line.split(";")[0]};49.98`).join("\n")}\n`;
  const columns = [{ column: "Kanal 7", quantity: "frequency", phase: "system", unit: "Hz" } as const];
  const recording = await open({ "a.csv": log(lines), "b.csv": other }, { columns });
  expect(seriesOf(recording, { quantity: "frequency", phase: "system" }).values[0]).toBe(49.98);
  expect(await failureOf(open({ "a.csv": log(lines), "b.csv": log(lines) }, { columns }))).toBe(
    'UsageError: the setup names the column "Kanal 7" under columns:, which none of the logs has; write it exactly as in the log, or give its position',
  );
});

test("a column named by position must be called alike in all files", async () => {
  const [a, b] = [log(lines.slice(0, 500)), log(lines.slice(500))];
  const setup: GivenSetup = { columns: [{ column: 2, phase: "L2" }] };
  expect(seriesOf(await open({ "a.csv": a, "b.csv": b }, setup), { phase: "L2" }).values.length).toBe(1008);
  const refusal = (here: string) =>
    `UsageError: the setup names column 2 under columns:, which is ${here}; where several files are read, give the header text instead`;
  const moved = b.replace("U L1 [V];", "U L3 [V];");
  expect(await failureOf(open({ "a.csv": a, "b.csv": moved }, setup))).toBe(
    refusal('"U L3 [V]" in b.csv and "U L1 [V]" in a.csv'),
  );
  const twoTimes = b.replaceAll(/^([^;]*);/gm, "$1;$1;");
  expect(await failureOf(open({ "a.csv": a, "b.csv": twoTimes }, setup))).toBe(
    refusal('no column of values in b.csv and "U L1 [V]" in a.csv'),
  );
});
