import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.js";
import { openLogs } from "../../src/formats/index.js";
import { parseScenario } from "../../src/synth/parse-scenario.js";
import { synthesise } from "../../src/synth/synthesise.js";
import { inMemory } from "../support/whole-run.js";
import { farthest, samplesOf } from "../synth/support.js";

const SCENARIOS = resolve(import.meta.dirname, "../../scenarios");
const SHORT = `title: Test bench (invented), short
start: 2027-03-04T12:00:00
zone: Europe/Vienna
durationS: 0.5
samplesPerSecond: 6400
nominalFrequency: 50
declaredVoltage: 230
connection: star
frequency: 50.02
voltage: { volts: 231, harmonics: [{ order: 5, percent: 3, degrees: 20 }] }
dips: [{ atS: 0.2, durationS: 0.1, residualPercent: 40, phases: [L1] }]
currents: { amperes: 12, lagDegrees: 10, harmonics: [{ order: 3, percent: 20 }], neutral: true }
noise: { voltagePercent: 0.1, seed: 2 }
clockOffsetS: 1.25
`;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-synth-"));
  writeFileSync(join(folder, "short.yaml"), SHORT);
});
afterAll(() => rmSync(folder, { recursive: true }));

async function main(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = "";
  let err = "";
  const io = { out: (t: string) => (out += t), err: (t: string) => (err += t), interactive: false };
  const code = await run(args, { ...io, out: (t) => void io.out(t), err: (t) => void io.err(t) }, false);
  return { code, out, err };
}

const bytes = (path: string) => new Uint8Array(readFileSync(path));

function hashes(of: string): Record<string, string> {
  const sha = (name: string) =>
    createHash("sha256")
      .update(bytes(join(of, name)))
      .digest("hex");
  return Object.fromEntries(
    readdirSync(of)
      .sort()
      .map((name) => [name, sha(name)]),
  );
}

describe("a made COMTRADE record reads back as it was made", () => {
  it.each([
    ["comtrade", "ascii", "1991"],
    ["comtrade", "ascii", "1999"],
    ["comtrade", "binary", "1991"],
    ["comtrade", "binary", "1999"],
    ["comtrade", "binary", "2013"],
    ["comtrade", "binary32", "2013"],
    ["comtrade", "float32", "2013"],
    ["cff", "ascii", "2013"],
    ["cff", "binary32", "2013"],
  ])("%s %s %s", async (format, kind, edition) => {
    const out = join(folder, `${format}-${kind}-${edition}`);
    const args = ["--out", out, "--format", format, "--kind", kind, "--edition", edition];
    expect(await main("synth", join(folder, "short.yaml"), ...args, "--quiet")).toEqual({ code: 0, out: "", err: "" });
    const logs = readdirSync(out).filter((name) => /\.(cfg|dat|cff)$/.test(name));
    expect(logs).toHaveLength(format === "cff" ? 1 : 2);
    const files = logs.map((name) => inMemory({ name, bytes: bytes(join(out, name)) }));
    const recording = await openLogs(files, {
      zone: "Europe/Vienna",
      ...(edition === "1991" && { dateOrder: "mdy" }),
    });
    const source = recording.waveforms[0];
    if (source === undefined) throw new Error("no waveform was read");
    expect(source.channels.map(({ quantity, phase }) => `${quantity} ${phase}`)).toEqual([
      ...["L1", "L2", "L3"].map((p) => `voltage ${p}`),
      ...["L1", "L2", "L3", "N"].map((p) => `current ${p}`),
    ]);
    expect(source.samplesPerSecond).toBe(6400);
    expect(new Date(source.start / 1000).toISOString()).toBe("2027-03-04T11:00:01.250Z");
    const read = Object.values(await samplesOf(source));
    const made = Object.values(await samplesOf(synthesise(parseScenario(SHORT, "short.yaml"))));
    const distance = Math.max(...read.map((signal, c) => farthest(signal, (i) => made[c]?.[i] as number)));
    // Half a step of 16 bits or of five digits over 350 V.
    expect(distance).toBeLessThan({ ascii: 0.002, binary: 0.006, binary32: 1e-6, float32: 2e-5 }[kind] as number);
    expect(distance).toBeGreaterThan(0);
  });

  it("holds exactly the steps that the scenario quantises to", async () => {
    const scenario = `${SHORT}quantisation: { volts: 0.02, amperes: 0.005 }\n`;
    writeFileSync(join(folder, "steps.yaml"), scenario);
    const out = join(folder, "steps");
    expect((await main("synth", join(folder, "steps.yaml"), "--out", out, "--quiet")).code).toBe(0);
    const files = ["steps.cfg", "steps.dat"].map((name) => inMemory({ name, bytes: bytes(join(out, name)) }));
    const recording = await openLogs(files, {});
    const read = await samplesOf(recording.waveforms[0] as never);
    const made = await samplesOf(synthesise(parseScenario(scenario, "steps.yaml")));
    for (const name of ["U L1", "I N"]) {
      expect(farthest(read[name] as Float64Array, (i) => made[name]?.[i] as number)).toBeLessThan(1e-9);
    }
    writeFileSync(join(folder, "fine.yaml"), `${SHORT}quantisation: { volts: 0.001 }\n`);
    const refused = await main("synth", join(folder, "fine.yaml"), "--out", join(folder, "fine"));
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(
      /With steps of 0.001 V BINARY data reach 32.767 V, and U L1 needs \d+ V; take another --kind/,
    );
    expect(existsSync(join(folder, "fine"))).toBe(false);
  });
});

describe("the folder", () => {
  it("holds log, truth and setup, the same bytes each time", async () => {
    const [one, two] = [join(folder, "one"), join(folder, "two")];
    const made = await main("synth", join(folder, "short.yaml"), "--out", one);
    expect(made.code).toBe(0);
    expect(made.out).toContain(`mainswitness assess ${one}/short.cfg --setup ${one}/short.setup.yaml`);
    await main("synth", join(folder, "short.yaml"), "--out", two);
    expect(Object.keys(hashes(one))).toEqual(["short.cfg", "short.dat", "short.setup.yaml", "truth.json"]);
    expect(hashes(two)).toEqual(hashes(one));
    const truth = JSON.parse(readFileSync(join(one, "truth.json"), "utf8"));
    expect(truth.schema).toBe(1);
    expect(truth.tool.name).toBe("mainswitness");
    expect(truth.events).toMatchObject([
      { kind: "dip", phases: ["L1"], start: "2027-03-04T11:00:01.450Z", extremeV: 92 },
    ]);
  });

  it("replaces a folder of its own and leaves anything else alone", async () => {
    const own = join(folder, "own");
    await main("synth", join(folder, "short.yaml"), "--out", own, "--quiet");
    writeFileSync(join(own, "short.dat"), "old");
    await main("synth", join(folder, "short.yaml"), "--out", own, "--quiet");
    expect(bytes(join(own, "short.dat")).length).toBeGreaterThan(10_000);
    const foreign = mkdtempSync(join(folder, "foreign-"));
    writeFileSync(join(foreign, "notes.txt"), "mine");
    const refused = await main("synth", join(folder, "short.yaml"), "--out", foreign);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain("exists and is not a folder of a made log, so it is left alone");
    expect(readdirSync(foreign)).toEqual(["notes.txt"]);
  });

  it("leaves nothing behind when writing stops half-way", async () => {
    const target = mkdtempSync(join(folder, "half-"));
    const { writeMadeLogFolder } = await import("../../src/cli/files.js");
    const pieces = async function* () {
      yield "first";
      throw new RangeError("stopped");
    };
    await expect(writeMadeLogFolder(join(target, "log"), [{ path: "a.csv", content: pieces() }])).rejects.toThrow(
      "stopped",
    );
    expect(readdirSync(target)).toEqual([]);
  });
});

describe("wrong usage exits with 2", () => {
  it.each([
    [["--kind", "binary64"], /Allowed choices are ascii, binary, binary32, float32/],
    [["--kind", "float32", "--edition", "1999"], /--kind float32 exists from the edition of 2013 on/],
    [["--format", "cff", "--edition", "1991"], /--format cff exists from the edition of 2013 on/],
  ])("%j", async (args, expected) => {
    const { code, err } = await main("synth", join(folder, "short.yaml"), ...args);
    expect(code).toBe(2);
    expect(err).toMatch(expected);
  });

  it("for a scenario that is not there or has a fault, with its line", async () => {
    const missing = await main("synth", join(folder, "none.yaml"));
    expect(missing).toMatchObject({ code: 2, err: expect.stringContaining("none.yaml cannot be read") });
    writeFileSync(join(folder, "fault.yaml"), `${SHORT}colour: blue\n`);
    const fault = await main("synth", join(folder, "fault.yaml"));
    expect(fault).toMatchObject({
      code: 2,
      err: expect.stringContaining('fault.yaml, line 15, column 1: "colour" is not known'),
    });
  });
});

it("writes waveforms as text too: time in s, one column per channel", async () => {
  const out = join(folder, "text");
  expect((await main("synth", join(folder, "short.yaml"), "--out", out, "--format", "csv", "--quiet")).code).toBe(0);
  const lines = readFileSync(join(out, "short.csv"), "utf8").trimEnd().split("\r\n");
  expect(lines[0]).toBe("Time [s],U L1 [V],U L2 [V],U L3 [V],I L1 [A],I L2 [A],I L3 [A],I N [A]");
  expect(lines).toHaveLength(1 + 3200);
  const made = Object.values(await samplesOf(synthesise(parseScenario(SHORT, "short.yaml"))));
  for (const i of [0, 1, 1999, 3199]) {
    const [time, ...values] = (lines[1 + i] as string).split(",").map(Number);
    expect(time).toBe(i / 6400);
    for (const [c, value] of values.entries()) expect(Math.abs(value - (made[c]?.[i] as number))).toBeLessThan(6e-7);
  }
});

describe("the example scenarios", () => {
  const names = readdirSync(SCENARIOS).filter((name) => name.endsWith(".yaml"));

  it("are there and are read", () => {
    expect(names.length).toBeGreaterThanOrEqual(3);
    for (const name of names) {
      const { title } = parseScenario(readFileSync(join(SCENARIOS, name), "utf8"), name);
      expect(title).toContain("(invented)");
    }
  });

  it("a week of interval values can be assessed with its setup alone, and shows the evenings above the limit", async () => {
    const out = join(folder, "week");
    expect((await main("synth", join(SCENARIOS, "orchard-lane-week.yaml"), "--out", out, "--quiet")).code).toBe(0);
    const name = basename("orchard-lane-week");
    const report = await main(
      "assess",
      join(out, `${name}-10min.csv`),
      "--setup",
      join(out, `${name}.setup.yaml`),
      "--out",
      join(folder, "report"),
      "--format",
      "json",
      "--json",
    );
    expect(report.err).toBe("");
    expect(report.code).toBe(0);
    const { weeks } = JSON.parse(report.out);
    const voltage = weeks[0].requirements.find(
      (r: { id: string; phase: string }) => r.id === "supply-voltage" && r.phase === "L1",
    );
    // Three evenings of four hours.
    expect(voltage).toMatchObject({ n: 1008, outside: 72, verdict: "does-not-conform" });
  });
});
