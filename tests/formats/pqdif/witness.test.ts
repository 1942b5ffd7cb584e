import { describe, expect, it } from "vitest";
import {
  type WrittenRecord as ComtradeRecord,
  comtradeRows,
  configurationBytes,
} from "../../../src/formats/comtrade/write.js";
import { waveformObservation } from "../../../src/formats/pqdif/write-recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { SECOND } from "../../../src/recording/time.js";
import type { Assessment } from "../../../src/rules/assessment.js";
import { parseScenario } from "../../../src/synth/parse-scenario.js";
import { synthesise } from "../../../src/synth/synthesise.js";
import { PLAIN } from "../../support/dialect.js";
import { type LogTable, rows } from "../../support/log-table.js";
import { tableOf, VILLAGE } from "../../support/sample-logs.js";
import { simulate } from "../../support/sample-site.js";
import { assessLogs } from "../../support/whole-run.js";
import { setupOf, writeLog } from "../../support/write-log.js";
import { pqdifOf } from "../../support/write-pqdif.js";

/** One recording in several formats gives one result: no reader can read it wrong alone. */

const SITE: GivenSetup = { connection: "star", declaredVoltage: 230, nominalFrequency: 50 };
const ORDERS = Array.from({ length: 39 }, (_, i) => i + 2);
const village = () => tableOf(simulate(VILLAGE), ORDERS);

const inCsv = (table: LogTable) => {
  const dialect = { ...PLAIN, zone: "Europe/Vienna" };
  return assessLogs([{ name: "log.csv", bytes: writeLog(table, dialect) }], {
    ...SITE,
    ...setupOf(dialect),
    zone: "Europe/Vienna",
  });
};

async function inPqdif(...[tables, more, form]: Parameters<typeof pqdifOf>): Promise<Assessment> {
  return assessLogs([{ name: "log.pqd", bytes: await pqdifOf(tables, more, form) }], {
    ...SITE,
    zone: "Europe/Vienna",
  });
}

describe("a week of intervals in CSV and in PQDIF", () => {
  it("gives the same weeks, values and findings", async () => {
    const [csv, pqdif] = await Promise.all([inCsv(village()), inPqdif([village()])]);
    expect(csv.weeks.length).toBeGreaterThan(0);
    expect(csv.weeks[0]?.requirements.length).toBeGreaterThan(50);
    expect(pqdif.weeks).toEqual(csv.weeks);
    expect(pqdif.summary).toEqual(csv.summary);
    expect(pqdif.recording.intervals).toEqual(csv.recording.intervals);
    expect(pqdif.recording.findings.map((f) => f.id)).toEqual(csv.recording.findings.map((f) => f.id));
    expect(pqdif.notAssessed).toEqual(csv.notAssessed);
    expect(pqdif.setup.intervalLabel).toMatchObject({ value: "start", origin: "inferred" });
    expect(pqdif.verdict).toBe(csv.verdict);
  }, 60_000);

  it("with rows missing, and whatever way the PQDIF file stores them", async () => {
    const all = village();
    const kept = [...all.starts.keys()].filter((i) => i < 300 || i >= 320);
    const [early, late] = [kept.filter((i) => i < 500), kept.filter((i) => i >= 500)];
    const csv = await inCsv(rows(all, kept));
    // A gap within an observation is not what increments can say, so the log is divided there.
    const parts = [early.filter((i) => i < 300), early.filter((i) => i >= 300), late].map((part) => rows(all, part));
    for (const form of [{ compressed: false }, { compressed: true, embed: false }]) {
      expect((await inPqdif(parts, undefined, form)).weeks).toEqual(csv.weeks);
    }
  }, 60_000);

  it("with snippets of waveforms between the intervals", async () => {
    const table = village();
    const u = Float64Array.from(
      { length: 6400 },
      (_, i) => 325 * Math.sin((2 * Math.PI * i) / 128) * (i > 2000 && i < 4000 ? 0.5 : 1),
    );
    const channel = { name: "u1", quantity: "voltage", phase: "L1" } as const;
    const mixed = await inPqdif([table], (definitions) => [
      waveformObservation(definitions, "snippet", (table.starts[100] as number) + 77 * SECOND, 6400, [channel], [u]),
    ]);
    expect(mixed.weeks).toEqual((await inCsv(table)).weeks);
    expect(mixed.events.map((e) => [e.kind, e.phases.join()])).toContainEqual(["dip", "L1"]);
    expect(mixed.recording.findings.map((f) => f.id)).toContain("events-triggered");
  }, 60_000);
});

const SCENARIO = `title: Test bench (invented)
start: 2027-03-04T11:59:50
zone: Europe/Vienna
durationS: 640
samplesPerSecond: 3200
nominalFrequency: 50
connection: star
declaredVoltage: 230
frequency: 50.01
voltage:
  volts: 230.6
  unbalance: { negativePercent: 0.7 }
  harmonics: [{ order: 3, percent: 2.5 }, { order: 5, percent: 4 }]
dips:
  - { atS: 100, durationS: 0.3, residualPercent: 62, phases: [L1, L2] }
swells:
  - { atS: 300, durationS: 1.1, percent: 118, phases: [L3] }
quantisation: { volts: 0.02 }
`;

describe("waveforms in COMTRADE and in PQDIF", () => {
  it("give the same events and weeks", async () => {
    const scenario = parseScenario(SCENARIO, "bench.yaml");
    const source = synthesise(scenario);
    const channels = source.channels.map(({ name, quantity, phase }) => ({ name, quantity, phase }));
    const record: ComtradeRecord = {
      station: "bench",
      device: "synthesised",
      edition: 2013,
      kind: "BINARY",
      channels: channels.map((c) => ({ ...c, fullScale: 0.02 * 32_767 })),
      samplesPerSecond: source.samplesPerSecond,
      length: source.length,
      start: source.start,
      nominalFrequency: 50,
      utcOffset: 0,
    };
    const write = comtradeRows(record);
    const data: Uint8Array[] = [];
    const samples = channels.map(() => new Float64Array(source.length));
    for await (const block of source.blocks()) {
      data.push(write(block.first, block.samples).slice());
      for (const [c, s] of block.samples.entries()) samples[c]?.set(s, block.first);
    }
    const piece = 60 * source.samplesPerSecond;
    const pqd = await pqdifOf([], (definitions) =>
      Array.from({ length: Math.ceil(source.length / piece) }, (_, k) =>
        waveformObservation(
          definitions,
          `minute ${k + 1}`,
          source.start + k * 60 * SECOND,
          source.samplesPerSecond,
          channels,
          samples.map((s) => s.subarray(k * piece, (k + 1) * piece)),
          { voltage: 0.02 },
        ),
      ),
    );
    const comtrade = await assessLogs(
      [
        { name: "b.cfg", bytes: configurationBytes(record) },
        { name: "b.dat", bytes: Uint8Array.from(Buffer.concat(data)) },
      ],
      { ...SITE, dateOrder: "dmy" },
    );
    const pqdif = await assessLogs([{ name: "b.pqd", bytes: pqd }], SITE);
    expect(comtrade.events.filter((e) => e.kind === "dip" || e.kind === "swell")).toHaveLength(2);
    expect(pqdif.events).toEqual(comtrade.events);
    expect(pqdif.weeks).toEqual(comtrade.weeks);
    expect(pqdif.summary).toEqual(comtrade.summary);
  }, 120_000);
});
