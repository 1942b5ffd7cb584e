import { expect, it } from "vitest";
import { intervalLogLines } from "../../src/synth/interval-log.js";
import type { GivenScenario } from "../../src/synth/scenario.js";
import { scenario } from "./support.js";

function rows(given: Partial<GivenScenario>, log: "1min" | "10min"): Record<string, string>[] {
  const [header, ...lines] = [...intervalLogLines(scenario(given), log)].map((line) => line.trimEnd().split(","));
  return lines.map((cells) => Object.fromEntries((header as string[]).map((name, i) => [name, cells[i] as string])));
}

const HOUR: Partial<GivenScenario> = {
  start: "2027-03-28T01:35:00",
  zone: "Europe/Vienna",
  durationS: 3600,
  voltage: { volts: 230, harmonics: [{ order: 5, percent: 4 }], steps: [{ atS: 600, toPercent: 110 }] },
  interruptions: [{ atS: 1500, durationS: 300 }],
  currents: { amperes: 10, lagDegrees: 60 },
};

it("has one row for each whole interval, with local stamps that jump where the clock is put forward", () => {
  const log = rows(HOUR, "10min");
  expect(log.map(({ Time }) => Time)).toEqual([
    "2027-03-28T01:40:00+01:00",
    "2027-03-28T01:50:00+01:00",
    "2027-03-28T03:00:00+02:00",
    "2027-03-28T03:10:00+02:00",
    "2027-03-28T03:20:00+02:00",
  ]);
  expect(log.map(({ Flag }) => Flag)).toEqual(["0", "0", "1", "0", "0"]);
});

it("has the r.m.s. over each interval, of the parts by the mean of their squares", () => {
  const log = rows(HOUR, "10min");
  const whole = 230 * Math.hypot(1, 0.04);
  const u = log.map((row) => Number(row["Voltage L1 mean [V]"]));
  // The step is five minutes into the first interval; the interruption takes the second half of the third.
  expect(u[0]).toBeCloseTo(whole * Math.sqrt((1 + 1.1 ** 2) / 2), 3);
  expect(u[1]).toBeCloseTo(1.1 * whole, 3);
  expect(u[2]).toBeCloseTo(1.1 * whole * Math.SQRT1_2, 3);
  expect(log[2]?.["Harmonic voltage L1 order 5 mean [%]"]).toBe("4.0000");
  expect(log[1]?.["Active power L2 mean [W]"]).toBe((1.1 * 230 * 10 * 0.5).toFixed(3));
  expect(log[1]?.["Reactive power L2 mean [var]"]).toBe((1.1 * 230 * 10 * Math.sin(Math.PI / 3)).toFixed(3));
});

it("leaves a cell empty where an interval has no fundamental, and writes the voltage that is left", () => {
  const log = rows(HOUR, "1min");
  expect(log).toHaveLength(60);
  const dead = log[25];
  expect(dead?.["Voltage L1 mean [V]"]).toBe("0.000");
  expect(dead?.["THD voltage L1 mean [%]"]).toBe("");
  expect(dead?.["Unbalance u2 mean [%]"]).toBe("");
});

it("scatters values by the stated share and no other, the same way each time", () => {
  const noisy = { ...HOUR, noise: { intervalPercent: 1, seed: 4 } };
  const [clean, scattered] = [rows(HOUR, "1min"), rows(noisy, "1min")];
  expect(rows(noisy, "1min")).toEqual(scattered);
  const shares = scattered.flatMap((row, i) =>
    ["Voltage L1 mean [V]", "Current L2 mean [A]", "Active power L3 mean [W]"].flatMap((name) => {
      const exact = Number(clean[i]?.[name]);
      return exact === 0 ? [] : [Number(row[name]) / exact - 1];
    }),
  );
  const size = Math.sqrt(shares.reduce((total, share) => total + share ** 2, 0) / shares.length);
  // 165 values: the size scatters by 5.5 %, here limited to four times that.
  expect(shares.length).toBeGreaterThan(160);
  expect(Math.abs(size / 0.01 - 1)).toBeLessThan(0.22);
});
