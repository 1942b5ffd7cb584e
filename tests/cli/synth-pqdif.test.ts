import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pqdifBlock } from "../../src/cli/made-pqdif.js";
import { run } from "../../src/cli/run.js";
import { openLogs } from "../../src/formats/index.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import { parseScenario } from "../../src/synth/parse-scenario.js";
import { synthesise } from "../../src/synth/synthesise.js";
import { inMemory } from "../support/whole-run.js";
import { farthest, samplesOf, scenario } from "../synth/support.js";

const BENCH = `title: Test bench (invented)
zone: Europe/Vienna
nominalFrequency: 50
declaredVoltage: 230
connection: star
frequency: 50.02
voltage: { volts: 231, harmonics: [{ order: 5, percent: 3, degrees: 20 }] }
`;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-synth-pqdif-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function made(name: string, text: string, format = "pqdif") {
  const [path, out] = [join(folder, `${name}.yaml`), join(folder, `${name}-${format}`)];
  writeFileSync(path, text);
  let err = "";
  const io = {
    out: () => {},
    err: (told: string) => {
      err += told;
    },
    interactive: false,
  };
  const code = await run(["synth", path, "--out", out, "--format", format, "--quiet"], io, false);
  const logs = code === 0 ? readdirSync(out).filter((file) => /\.(pqd|csv)$/.test(file)) : [];
  const files = logs.map((file) => inMemory({ name: file, bytes: new Uint8Array(readFileSync(join(out, file))) }));
  return { code, err, logs, open: (setup: GivenSetup = { zone: "Europe/Vienna" }) => openLogs(files, setup) };
}

describe("waveforms as PQDIF", () => {
  it("read back as one recording, over several observations", async () => {
    const text = `${BENCH}start: 2027-03-04T12:00:00\ndurationS: 45\nsamplesPerSecond: 6400\n`;
    const { logs, open } = await made("long", text);
    expect(logs).toEqual(["long.pqd"]);
    const { waveforms } = await open();
    expect(waveforms.map(({ length, start }) => [length, start])).toEqual([[288_000, Date.UTC(2027, 2, 4, 11) * 1000]]);
    const [read, source] = [
      await samplesOf(waveforms[0] as never),
      await samplesOf(synthesise(parseScenario(text, ""))),
    ];
    for (const name of ["U L1", "U L2", "U L3"]) {
      const distance = farthest(read[name] as Float64Array, (i) => source[name]?.[i] as number);
      // Half a step of single precision between 256 and 512 V.
      expect(distance).toBeLessThanOrEqual(2 ** -16);
      expect(distance).toBeGreaterThan(0);
    }
  });

  it.each([0.02, 0.0001])("hold exactly the steps of %s V that the scenario quantises to", async (volts) => {
    const text = `${BENCH}start: 2027-03-04T12:00:00\ndurationS: 1\nsamplesPerSecond: 6400\nquantisation: { volts: ${volts} }\n`;
    const { open } = await made(`steps-${volts}`, text);
    const [read, source] = [
      await samplesOf((await open()).waveforms[0] as never),
      await samplesOf(synthesise(parseScenario(text, ""))),
    ];
    expect(farthest(read["U L1"] as Float64Array, (i) => source["U L1"]?.[i] as number)).toBeLessThan(1e-9);
  });

  it("that need more than 32 bits are refused", async () => {
    const text = `${BENCH}start: 2027-03-04T12:00:00\ndurationS: 1\nsamplesPerSecond: 6400\nquantisation: { volts: 1.0e-8 }\n`;
    const { code, err } = await made("fine", text);
    expect(code).toBe(2);
    expect(err).toMatch(
      /fine\.pqd: [-\d.e]+ cannot be written as INTEGER4; make the scenario shorter, its steps larger/,
    );
  });

  it("are cut where a whole number of microseconds has passed", () => {
    for (const samplesPerSecond of [6400, 10_240, 44_100, 12_800.0, 1_000_000, 10_000_000, 7919]) {
      const block = pqdifBlock(scenario({ samplesPerSecond }));
      expect(Number.isInteger((block * 1e6) / samplesPerSecond)).toBe(true);
      expect(block).toBeLessThanOrEqual(2 ** 18);
      expect(block).toBeGreaterThan(2 ** 17);
    }
  });
});

describe("interval logs as PQDIF", () => {
  it("hold the same as those in text, over a change of the clock", async () => {
    const text = `${BENCH}start: 2027-03-28T01:35:00
durationS: 14400
intervalLogs: [10min]
interruptions: [{ atS: 1500, durationS: 300 }]
currents: { amperes: 10, lagDegrees: 60 }
noise: { intervalPercent: 0.5, seed: 4 }
`;
    const [pqdif, csv] = [await made("hours", text), await made("hours", text, "csv")];
    expect([pqdif.logs, csv.logs]).toEqual([["hours-10min.pqd"], ["hours-10min.csv"]]);
    const [read, expected] = [await pqdif.open(), await csv.open({ zone: "Europe/Vienna", intervalLabel: "start" })];
    expect(read.series.length).toBeGreaterThan(15);
    const all = (recording: typeof read) =>
      recording.series
        .map(({ quantity, phase, order, axis: { interval, starts, flagged }, values, resolution = 0 }) => {
          const key = `${quantity} ${phase} ${order ?? ""}`;
          return [key, interval, [...starts], [...values], [...flagged], resolution.toPrecision(3)] as const;
        })
        .sort(([a], [b]) => a.localeCompare(b));
    expect(all(read)).toEqual(all(expected));
    expect(read.series[0]?.axis.flagged.reduce((sum, f) => sum + f, 0)).toBe(1);
  });
});
