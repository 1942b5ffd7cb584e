import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command } from "commander";
import fc from "fast-check";
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { registerAssess } from "../../src/cli/commands/assess.js";
import { setupFile } from "../../src/cli/make-report.js";
import { parseSetup } from "../../src/cli/read-setup.js";
import { run } from "../../src/cli/run.js";
import type { Verification } from "../../src/cli/verify-folder.js";
import { identify, type Manifest, manifestText, readManifest } from "../../src/evidence/manifest.js";
import { sha256 } from "../../src/evidence/sha256.js";
import { png } from "../../src/report/pictures.js";

/** The re-run of `verify`: that the folder holds all it needs, and what it says of outputs that differ. */

/** Each option of `assess`, with a value other than the usual one where it can change an output. */
const OPTIONS: Readonly<Record<string, string | undefined>> = {
  "--rules": "spain-lv",
  "--setup": "all.yaml",
  "--declared": "231",
  "--connection": "star",
  "--zone": "+02:00",
  "--date-order": "mdy",
  "--decision-rule": "guarded",
  "--from": "2026-03-02T01:00",
  "--to": "2026-03-02T23:00",
  "--format": "svg,csv,html",
  "--language": "en",
  "--sign": undefined,
  "--out": undefined,
  "--strict": undefined,
  "--quiet": undefined,
  "--json": undefined,
};

const SETUP = `site: &name "mill street: yes"
measuringPoint: *name
report: { number: "0012", customer: "# nobody", laboratory: { name: invented, address: "a\\nb" }, issued: 2026-03-20 }
instrument: { class: S, serialNumber: "1e3", calibrationDate: 2026-01-05, uncertainty: [{ quantity: voltage, expanded: 0.1, of: declared, k: 2 }] }
exclusions: [{ from: 2026-03-02T05:00, to: 2026-03-02T06:00, reason: force-majeure, assertedBy: operator }]
decisionRule: simple
dateOrder: dmy
intervalLabel: end
complaints: [{ at: 2026-03-02T10:00, what: "null" }]
voltageSteps: [-2.5, 2.5]
`;

let folder = "";
const at = (name: string) => join(folder, name);

async function cli(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ["", ""];
  const io = {
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
    interactive: false,
  };
  return { code: await run(args, io, false), out, err };
}

async function verified(name: string): Promise<Verification & { code: number }> {
  const { code, out } = await cli("verify", at(name), "--json");
  return { code, ...(JSON.parse(out) as Verification) };
}

const manifestOf = (name: string) => readManifest(readFileSync(at(`${name}/manifest.json`), "utf8"));

const { render } = png;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  const rows = Array.from({ length: 144 }, (_, i) => {
    const time = new Date(Date.UTC(2026, 2, 2) + i * 600_000).toISOString().slice(11, 16);
    return `03/02/2026 ${time},${(229 + (i % 50) / 10).toFixed(1)},${(230 + (i % 30) / 10).toFixed(1)},${(231 + (i % 7) / 10).toFixed(1)}`;
  });
  writeFileSync(at("day.csv"), `${["Time,U L1 (V),U L2 (V),U L3 (V)", ...rows].join("\n")}\n`);
  writeFileSync(at("all.yaml"), SETUP);
  const options = Object.entries(OPTIONS).flatMap(([option, value]) =>
    value === undefined ? [] : [option, option === "--setup" ? at(value) : value],
  );
  const all = await cli("assess", at("day.csv"), ...options, "--out", at("all"));
  expect([all.code, all.err]).toEqual([0, ""]);
  const few = ["--declared", "230", "--zone", "UTC", "--date-order", "mdy", "--format", "csv,png"];
  const pictures = await cli("assess", at("day.csv"), ...few, "--out", at("pictures"));
  expect([pictures.code, pictures.err]).toEqual([0, ""]);
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => {
  vi.restoreAllMocks();
});

describe("what a re-run needs", () => {
  it("is every option of assess, and all stand in the folder", async () => {
    const program = new Command();
    const io = { out: () => {}, err: () => {}, interactive: false };
    registerAssess(program, io, () => {});
    const known = program.commands[0]?.options.map(({ long }) => long);
    expect(known?.sort()).toEqual(Object.keys(OPTIONS).sort());
    expect(await verified("all")).toMatchObject({ code: 0, rerun: { state: "same" }, faults: [] });
    expect(parseSetup(readFileSync(at("all/setup.yaml"), "utf8"), "setup.yaml")).toEqual({
      ...parseSetup(SETUP, "all.yaml"),
      declaredVoltage: 231,
      connection: "star",
      zone: "+02:00",
      dateOrder: "mdy",
      decisionRule: "guarded",
    });
    expect(manifestOf("all")?.run).toEqual({
      rules: ["spain-lv"],
      rulesGiven: true,
      from: "2026-03-02T01:00",
      to: "2026-03-02T23:00",
      formats: ["svg", "csv", "html"],
      language: "en",
    });
  });

  it("survives being written as YAML, whatever the texts", () => {
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.constantFrom(
        "no",
        "~",
        "1_000",
        "0x1f",
        "2026-03-02",
        "- a",
        "a: b",
        "a #b",
        " a ",
        "\ta\n\n",
        "\u2028",
        "'\"",
        "|\n",
      ),
    );
    const step = fc.double({ min: 0.001, max: 20, noNaN: true });
    fc.assert(
      fc.property(text, text, step, (site, measuringPoint, volts) => {
        const setup = { voltageSteps: [-volts, volts], declaredVoltage: volts, measuringPoint, site };
        const written = setupFile(setup);
        const again = parseSetup(written, "setup.yaml");
        expect(again).toEqual(setup);
        expect(setupFile(again)).toBe(written);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe("what a re-run finds", () => {
  it("is told as a difference, in a picture as in a result", async () => {
    vi.spyOn(png, "render").mockImplementation(async (...args) =>
      (await render(...args)).map(({ path, content }) => ({
        path,
        content: Uint8Array.from([...content, 0] as number[]),
      })),
    );
    const { code, out } = await cli("verify", at("pictures"));
    expect(code).toBe(1);
    expect(out).toMatch(/re-run: charts\/voltage-profile\.png differs from byte \d+ on\n/);
    expect(out).not.toContain("results.json differs");
  });

  it("counts, whatever a manifest with a sound check sum says", async () => {
    const results = readFileSync(at("pictures/results.json"), "utf8");
    const changed = results.replace('"outside"', '"Outside"');
    const manifest = manifestOf("pictures") as Manifest;
    const text = readFileSync(at("pictures/manifest.json"));
    Object.assign(manifest.files.find(({ path }) => path === "results.json") ?? {}, identify(changed));
    writeFileSync(at("pictures/results.json"), changed);
    writeFileSync(at("pictures/manifest.json"), manifestText(manifest));
    const { code, out } = await cli("verify", at("pictures"));
    expect(code).toBe(1);
    expect(out).toMatch(/^1 file does not hold\.\n/);
    expect(out).toMatch(/re-run: results\.json differs from byte \d+ on\n/);
    writeFileSync(at("pictures/results.json"), results);
    writeFileSync(at("pictures/manifest.json"), text);
  });
});

describe("a manifest from elsewhere", () => {
  it.each(["../secret.csv", "/etc/hostname", "a\\b.csv", "..", ""])("cannot name a log %j", (name) => {
    const { sha256: _, ...content } = JSON.parse(readFileSync(at("all/manifest.json"), "utf8"));
    const written = () => {
      const text = `${JSON.stringify(content, undefined, 2)}\n`;
      return `${JSON.stringify({ ...content, sha256: sha256(text) }, undefined, 2)}\n`;
    };
    expect(readManifest(written())).toBeDefined();
    content.logs[0].name = name;
    expect(readManifest(written())).toBeUndefined();
  });
});
