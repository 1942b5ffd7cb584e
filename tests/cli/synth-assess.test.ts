import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.js";
import type { Truth } from "../../src/synth/truth.js";

/** A log made from a scenario and assessed with its setup: the results against truth.json, which no measurement made. */

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-synth-assess-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const BENCH = `title: Test bench (invented)
start: 2027-03-04T13:00:00
zone: Europe/Vienna
samplesPerSecond: 6400
nominalFrequency: 50
declaredVoltage: 230
`;

const STEADY = `${BENCH}durationS: 11
connection: star
frequency: 50.04
voltage:
  volts: 233
  unbalance: { negativePercent: 1.2, negativeDegrees: 50, zeroPercent: 0.8, zeroDegrees: -20 }
  harmonics:
    - { order: 3, percent: 1.5, degrees: 10 }
    - { order: 5, percent: 4, degrees: 170 }
    - { order: 29, percent: 0.4, degrees: 80 }
currents: { amperes: 25, lagDegrees: 20, harmonics: [{ order: 5, percent: 12, degrees: 100 }] }
`;

const EVENTS = `${BENCH}durationS: 14
connection: star
frequency: 49.97
clockOffsetS: 0.75
voltage: { volts: 231, harmonics: [{ order: 5, percent: 4 }] }
dips:
  - { atS: 2.2031, durationS: 0.12, residualPercent: 40, phases: [L1] }
  - { atS: 5.4, durationS: 0.5, residualPercent: 72 }
swells: [{ atS: 8.017, durationS: 0.2, percent: 118, phases: [L3] }]
interruptions: [{ atS: 11.005, durationS: 0.6 }]
`;

interface SummaryRow {
  readonly quantity: string;
  readonly phase: string;
  readonly order?: number;
  readonly interval: string;
  readonly min: number;
  readonly max: number;
}

/** The parts of results.json that are compared here. */
interface Results {
  readonly summary: readonly SummaryRow[];
  readonly events: readonly {
    readonly kind: string;
    readonly phases: readonly string[];
    readonly start: string;
    readonly durationS: number;
    readonly extreme: number;
  }[];
}

async function assessed(
  name: string,
  scenario: string,
  ...args: string[]
): Promise<{ truth: Truth; results: Results }> {
  writeFileSync(join(folder, `${name}.yaml`), scenario);
  const [out, report] = [join(folder, name), join(folder, `${name}-report`)];
  let err = "";
  const io = {
    out: () => {},
    err: (text: string) => {
      err += text;
    },
    interactive: false,
  };
  const codes = [
    await run(["synth", join(folder, `${name}.yaml`), "--out", out, "--quiet", ...args], io, false),
    await run(
      // biome-ignore format: a command line
      ["assess", join(out, `${name}.${{ csv: "csv", pqdif: "pqd" }[args[1] ?? ""] ?? "cfg"}`), "--setup", join(out, `${name}.setup.yaml`), "--out", report, "--format", "json", "--quiet"],
      io,
      false,
    ),
  ];
  expect([err, ...codes]).toEqual(["", 0, 0]);
  const json = (path: string) => JSON.parse(readFileSync(path, "utf8"));
  return { truth: json(join(out, "truth.json")), results: json(join(report, "results.json")) };
}

/** Lowest and highest value of a quantity at the 10/12-cycle interval, or the only one it has. */
function range({ summary }: Results, quantity: string, phase: string, order?: number): readonly [number, number] {
  const rows = summary.filter((s) => s.quantity === quantity && s.phase === phase && s.order === order);
  const row = rows.find((s) => s.interval === "10/12-cycle") ?? rows[0];
  if (row === undefined) throw new RangeError(`no ${quantity} ${phase} ${order ?? ""} in the summary`);
  return [row.min, row.max];
}

function within(expected: number, tolerance: number, [min, max]: readonly [number, number]): void {
  expect(min).toBeGreaterThanOrEqual(expected - tolerance);
  expect(max).toBeLessThanOrEqual(expected + tolerance);
}

describe.each([["comtrade"], ["csv"], ["pqdif"]])("a steady signal as %s", (format) => {
  it("is measured as it was made", async () => {
    const { truth, results } = await assessed(`steady-${format}`, STEADY, "--format", format);
    const [span] = truth.spans as [Truth["spans"][number]];
    within(truth.frequency.meanHz, 0.001, range(results, "frequency", "system"));
    within(span.u2Percent as number, 0.05, range(results, "negative-sequence-unbalance", "system"));
    within(span.u0Percent as number, 0.05, range(results, "zero-sequence-unbalance", "system"));
    expect(span.power).toHaveLength(3);
    for (const { phase, activeW, reactiveVar, apparentVA } of span.power ?? []) {
      const u = span.channels[`U ${phase}`] as (typeof span.channels)[string];
      const i = span.channels[`I ${phase}`] as (typeof span.channels)[string];
      within(u.rms, 0.0002 * u.rms, range(results, "voltage", phase));
      within(i.rms, 0.0005 * i.rms, range(results, "current", phase));
      within(u.thdPercent as number, 0.02, range(results, "thd-voltage", phase));
      for (const [order, percent] of Object.entries(u.harmonicsPercent)) {
        within(percent as number, 0.01, range(results, "harmonic-voltage", phase, Number(order)));
      }
      within(0, 0.01, range(results, "harmonic-voltage", phase, 4));
      within(activeW, 3, range(results, "active-power", phase));
      within(reactiveVar, 3, range(results, "reactive-power", phase));
      within(apparentVA, 3, range(results, "apparent-power", phase));
    }
    expect(results.events).toEqual([]);
  });
});

it("the flicker of a published row is in the example scenario, and Pst is 1 in the ten minutes that it names", async () => {
  const scenario = readFileSync(resolve(import.meta.dirname, "../../scenarios/sawmill-flicker.yaml"), "utf8");
  const { results } = await assessed("sawmill-flicker", scenario);
  within(1, 0.01, range(results, "pst", "L1"));
});

it("events are found with kind, phases, start, length and size, on the recorder's clock", async () => {
  const { truth, results } = await assessed("events", EVENTS);
  const [made, found] = [truth.events, results.events];
  expect(made).toHaveLength(4);
  // An interruption has a dip around it.
  expect(found.map(({ kind, phases }) => `${kind} ${phases.join(" ")}`)).toEqual([
    "dip L1",
    "dip L1 L2 L3",
    "swell L3",
    "dip L1 L2 L3",
    "interruption L1 L2 L3",
  ]);
  for (const { kind, start, durationS, extremeV } of made) {
    const near = found.find((e) => e.kind === kind && Math.abs(Date.parse(e.start) - Date.parse(start)) < 500);
    if (near === undefined) throw new Error(`no ${kind} near ${start}`);
    expect(Math.abs(Date.parse(near.start) - Date.parse(start))).toBeLessThanOrEqual(10);
    expect(Math.abs(near.durationS - durationS)).toBeLessThan(0.01);
    expect(Math.abs(near.extreme - extremeV)).toBeLessThan(0.002 * 230);
  }
});
