import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { defaultReportFolder } from "../../src/cli/files.js";
import { run } from "../../src/cli/run.js";

/** A PQDIF file as its user meets it: inspected, with a setup written from it, under any spelling of its extension. */

const LOG = resolve(import.meta.dirname, "../../sample-logs/market-hall.pqd");
const SETUP = LOG.replace(/\.pqd$/, ".setup.yaml");

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-pqdif-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function main(...args: string[]) {
  const [out, err]: string[][] = [[], []];
  const io = { out: (t: string) => void out?.push(t), err: (t: string) => void err?.push(t), interactive: false };
  const code = await run(args, io, false);
  return { code, out: (out ?? []).join(""), err: (err ?? []).join("") };
}

describe("inspect", () => {
  it("gives all observations, columns and listed events as JSON", async () => {
    const { code, out } = await main("inspect", LOG, "--setup", SETUP, "--json", "--quiet");
    const found = JSON.parse(out);
    expect(code).toBe(0);
    expect(found.files).toEqual([{ name: "market-hall.pqd", bytes: readFileSync(LOG).length, format: "pqdif" }]);
    expect(found.observations.map((o: { name: string; use: string }) => [o.name, o.use])).toEqual([
      ["intervals 1", "logged values"],
      ["voltage dip", "waveforms"],
      ["event list", "an event or a list of events"],
    ]);
    expect(found.columns.map((c: { position: number }) => c.position)).toEqual(
      Array.from({ length: 106 }, (_, i) => i + 1),
    );
    expect(found.loggedEvents.map((e: { kind?: string; phases: string[] }) => [e.kind, e.phases.join()])).toEqual([
      ["dip", "L1"],
      [undefined, "L2"],
      [undefined, "L2"],
    ]);
  });

  it("puts the orders of a spectrum in one line of text", async () => {
    const { out } = await main("inspect", LOG, "--setup", SETUP, "--quiet");
    expect(out).toContain(
      'columns 29 to 52 (24) "Uh L1, order 2, mean" … "Uh L1, order 25, mean" → harmonic-voltage L1 orders 2 to 25, mean, %',
    );
    expect(out).toContain(
      '"voltage dip" at 2027-05-04T13:21:40Z (trigger 2027-05-04T13:21:40.300Z), triggered by a channel',
    );
    expect(out).toContain("2027-05-04T13:21:40.300Z dip, L1, 61 %, 0.21 s");
    expect(out).toContain('column 105 "events of L2, value" → events (magnitude or duration of events)');
    expect(out).not.toContain("Columns not used");
  });

  it("writes a setup that reads back as what it was understood as", async () => {
    const written = join(folder, "market.setup.yaml");
    expect((await main("inspect", LOG, "--setup", SETUP, "--write-setup", written, "--quiet")).code).toBe(0);
    const text = readFileSync(written, "utf8");
    expect(text).toContain(
      '  - { column: "U L1, mean", quantity: "voltage", phase: "L1", statistic: "mean", unit: "V" }',
    );
    expect(text).toContain('channels:\n  - { channel: "u L1", quantity: "voltage", phase: "L1" }');
    const series = async (setup: string) =>
      JSON.parse((await main("inspect", LOG, "--setup", setup, "--json", "--quiet")).out).series;
    expect(await series(written)).toEqual(await series(SETUP));
  });

  it("reads a file with the extension in capitals", async () => {
    const copy = join(folder, "MARKET.PQD");
    copyFileSync(LOG, copy);
    const { code, out } = await main("inspect", copy, "--setup", SETUP, "--json", "--quiet");
    expect([code, JSON.parse(out).files[0].format]).toEqual([0, "pqdif"]);
  });

  it("says in one sentence which column a setup names that is not there", async () => {
    const setup = join(folder, "wrong.yaml");
    writeFileSync(setup, 'columns: [{ column: "U L9", ignore: true }]\n');
    const { code, err } = await main("inspect", LOG, "--setup", setup, "--quiet");
    expect(code).toBe(2);
    expect(err).toContain('the setup names the column "U L9" under columns:, which market-hall.pqd does not have');
  });
});

it("names the report folder after the log, without its extension in any case", () => {
  expect(["a/Week.PQD", "week.pqdif"].map(defaultReportFolder)).toEqual(["reports/Week", "reports/week"]);
});
