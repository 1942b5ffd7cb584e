import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { UsageError } from "../../src/errors.js";
import { parseScenario } from "../../src/synth/parse-scenario.js";
import { scenarioSchema } from "../../src/synth/scenario.js";

const BASE = [
  "title: Test bench (invented)",
  "start: 2027-03-04T12:00:00",
  "zone: Europe/Vienna",
  "durationS: 10",
  "samplesPerSecond: 6400",
  "nominalFrequency: 50",
  "declaredVoltage: 230",
  "connection: star",
  "frequency: 50",
  "voltage: { volts: 230 }",
];

/** The base with lines replaced by their key, or added at the end. */
function text(...lines: string[]): string {
  const key = (line: string) => line.split(":")[0];
  const kept = BASE.filter((line) => !lines.some((l) => key(l) === key(line)));
  return `${[...kept, ...lines].join("\n")}\n`;
}

function fault(...lines: string[]): string {
  try {
    parseScenario(text(...lines), "s.yaml");
  } catch (error) {
    expect(error).toBeInstanceOf(UsageError);
    return (error as Error).message;
  }
  throw new Error("no fault was found");
}

const DELTA = ["connection: delta", "declaredVoltage: 400"];

describe("a scenario that does not hold together ends in one sentence with line and column", () => {
  it.each([
    [
      ["amplitude: 3"],
      /^s\.yaml, line 11, column 1: "amplitude" is not known here; the names known here are title, start/,
    ],
    [["voltage: { volts: 230, harmonics: [{ order: 5, persent: 3 }] }"], /line 10, column 48: "persent" is not known/],
    [["declaredVoltage: -230"], /line 10, column 18: "declaredVoltage" must be above 0, not -230/],
    [["dips: [{ atS: 1, durationS: 0.1, residualPercent: 95 }]"], /line 11, column 51: .* below 90, not 95/],
    [["swells: [{ atS: 1, durationS: 0.1, percent: 105 }]"], /line 11, column 45: .* above 110/],
    [["interruptions: [{ atS: 1, durationS: 0.1, residualPercent: 7 }]"], /line 11.* below 5/],
    [["start: tomorrow"], /line 10, column 8: "tomorrow" is not a date and time such as/],
    [["start: 2027-02-31T12:00:00"], /is not a date and time/],
    [["start: 2027-03-28T02:30:00"], /the clock of Europe\/Vienna skips 2027-03-28T02:30:00/],
    [["start: 2027-10-31T02:30:00"], /shows 2027-10-31T02:30:00 twice; add the offset/],
    [["zone: Middle/Earth"], /line 10, column 7: "Middle\/Earth" is not a known time zone/],
    [
      ["frequency: [{ atS: 5, hertz: 50 }, { atS: 5, hertz: 51 }]"],
      /line 10, column 43: the points must come in the order/,
    ],
    [["voltage: { degrees: 10 }"], /line 10.*: give either "volts" for all phases or "phases"/],
    [["voltage: { phases: { L1: { volts: 1, degrees: 0 }, L2: { volts: 1, degrees: 0 } } }"], /L3 is missing; add it/],
    [[...DELTA, "voltage: { phases: { L1: { volts: 1, degrees: 0 } } }"], /takes "volts" and "unbalance"/],
    [[...DELTA, "voltage: { volts: 400, unbalance: { zeroPercent: 1 } }"], /no zero sequence/],
    [[...DELTA, "modulation: [{ shape: sinusoidal, hertz: 8, percent: 1, phases: [L1] }]"], /all phases are modulated/],
    [["connection: single", "voltage: { volts: 230, unbalance: { negativePercent: 1 } }"], /three phases; take it out/],
    [["connection: single", "dips: [{ atS: 1, durationS: 1, residualPercent: 5, phases: [L2] }]"], /there is L1 only/],
    [["currents: { lagDegrees: 3 }"], /give either "amperes" for all phases or "phases"/],
    [
      ["dips: [{ atS: 9.9, durationS: 0.2, residualPercent: 50 }]"],
      /line 11, column 8: it ends after the recording, which is 10 s/,
    ],
    [["voltage: { volts: 230, steps: [{ atS: 10, toPercent: 90 }] }"], /it lies beyond the end of the recording/],
    [["modulation: [{ shape: sinusoidal, hertz: 8, percent: 1, fromS: 5, toS: 4 }]"], /it must end after its begin/],
    [
      [
        "dips: [{ atS: 1, durationS: 1, residualPercent: 50, phases: [L1] }]",
        "swells: [{ atS: 1.5, durationS: 1, percent: 120, phases: [L2, L1] }]",
      ],
      /line 12, column 10: another dip, swell or interruption lasts on the same phase/,
    ],
    [
      [
        "modulation: [{ shape: sinusoidal, hertz: 8, percent: 1 }, { shape: rectangular, hertz: 9, percent: 1, fromS: 2 }]",
      ],
      /another modulation lasts on the same phase/,
    ],
    [["voltage: { volts: 230, harmonics: [{ order: 64, percent: 1 }] }"], /half the sampling rate, 3200 Hz/],
    [["voltage: { volts: 230, interharmonics: [{ hertz: 3310, percent: 1 }] }"], /half the sampling rate/],
    [["voltage: { volts: 230, interharmonics: [{ hertz: 250, percent: 1 }] }"], /put it under "harmonics"/],
    [["intervalLogs: [5min]"], /"intervalLogs" must be 1min or 10min/],
  ])("%j", (lines, expected) => {
    expect(fault(...lines)).toMatch(expected);
  });

  it("asks for something to write", () => {
    const nothing = text().replace("samplesPerSecond: 6400\n", "");
    expect(() => parseScenario(nothing, "s.yaml")).toThrow(/line 1, column 1: there is nothing to write/);
  });
});

it("reads the start in the zone of the recorder, or with an offset of its own", () => {
  const start = (line: string) => new Date(parseScenario(text(line), "s.yaml").startInstant / 1000).toISOString();
  expect(start("start: 2027-03-04T12:00:00")).toBe("2027-03-04T11:00:00.000Z");
  expect(start("start: 2027-07-04 12:00:00.25")).toBe("2027-07-04T10:00:00.250Z");
  expect(start("start: 2027-03-04T12:00:00Z")).toBe("2027-03-04T12:00:00.000Z");
  expect(start("start: 2027-10-31T02:30:00+01:00")).toBe("2027-10-31T01:30:00.000Z");
});

it("lets entries on other phases overlap, and entries on one phase follow each other", () => {
  const both = text(
    "dips: [{ atS: 1, durationS: 0.1, residualPercent: 50, phases: [L1] }, { atS: 1.1, durationS: 1, residualPercent: 70, phases: [L1] }]",
    "swells: [{ atS: 1, durationS: 2, percent: 120, phases: [L2] }]",
  );
  expect(parseScenario(both, "s.yaml").dips).toHaveLength(2);
});

it("scenarios/README.md names every entry", () => {
  const readme = readFileSync(resolve(import.meta.dirname, "../../scenarios/README.md"), "utf8");
  const names = [...Object.keys(scenarioSchema.shape), ...Object.keys(scenarioSchema.shape.voltage.shape)];
  expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(readme))).toEqual([]);
});
