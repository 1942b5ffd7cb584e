import { describe, expect, it } from "vitest";
import { type FlickerTrial, flickerTrials, runTrial } from "../../src/analysis/waveform/flicker-trials.js";

/**
 * The flickermeter against the test values of IEC 61000-4-15 Ed 2, whose sources stand beside the numbers in
 * src/analysis/waveform/flicker-tables.ts. The standard itself was not read.
 */
const TRIALS = flickerTrials();
const TABLES = TRIALS.filter((trial) => trial.title.startsWith("Table "));
const OTHERS = TRIALS.filter((trial) => !TABLES.includes(trial));

const name = ({ title, lamp, nominalFrequency, what }: FlickerTrial) =>
  `${title}, ${lamp} V ${nominalFrequency} Hz: ${what}`;

const deviationPercent = (trial: FlickerTrial, samplesPerSecond: number) =>
  Math.abs(100 * (runTrial(trial, samplesPerSecond) / trial.expected - 1));

it("holds every row of the tables and every further test", () => {
  const count = (title: string) => TRIALS.filter((trial) => trial.title.startsWith(title)).length;
  expect(["Table 1", "Table 2", "Table 5"].map(count)).toEqual([150, 168, 28]);
  expect(OTHERS).toHaveLength(4 + 16 + 8 + 4 + 12);
  expect(TABLES.every((trial) => trial.confirmed && trial.tolerancePercent <= 8)).toBe(true);
  expect(OTHERS.some((trial) => trial.confirmed)).toBe(false);
});

describe("Tables 1, 2 and 5 within 1 % at 6.4 kHz (the standard's tolerance is 8 % for Pinst and 5 % for Pst)", () => {
  it.each(TABLES.map((trial) => [name(trial), trial] as const))("%s", (_, trial) => {
    expect(deviationPercent(trial, 6400)).toBeLessThan(1);
  });
});

describe("Tables 1 and 2 within the standard's tolerance at the lowest rate, 2 kHz", () => {
  const slow = TABLES.filter((trial) => trial.quantity === "pinst-max");
  it.each(slow.map((trial) => [name(trial), trial] as const))("%s", (_, trial) => {
    expect(deviationPercent(trial, 2000)).toBeLessThan(trial.tolerancePercent);
  });
});

describe("further tests of Ed 2, from memory, within the standard's tolerance at 6.4 kHz", () => {
  it.each(OTHERS.map((trial) => [name(trial), trial] as const))("%s", (_, trial) => {
    expect(deviationPercent(trial, 6400)).toBeLessThan(trial.tolerancePercent);
  });
});
