import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.js";
import { LANGUAGES } from "../../src/report/languages/index.js";
import { assessmentSchema } from "../../src/rules/assessment.js";

/** Whole runs of the commands as a user types them, with what is printed and the exit code. */

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  const week = (head: string, row: (i: number) => string) => {
    const stamp = (i: number) => new Date(Date.UTC(2026, 2, 2) + i * 600_000).toISOString().slice(0, 19);
    return `${[head, ...Array.from({ length: 1008 }, (_, i) => `${stamp(i)},${row(i)}`)].join("\n")}\n`;
  };
  const volts = (i: number, phase: number) => (231 + ((i * (7 + phase)) % 50) / 10).toFixed(1);
  const log = (name: string, text: string) => writeFileSync(join(folder, name), text);
  log(
    "good.csv",
    week("Time,U L1 (V),U L2 (V),U L3 (V),Wobble", (i) => `${volts(i, 1)},${volts(i, 2)},${volts(i, 3)},x`),
  );
  log(
    "bad.csv",
    week("Time,U L1 (V),U L2 (V),U L3 (V)", (i) => `${volts(i, 1)},${i === 5 ? "253.01" : volts(i, 2)},${volts(i, 3)}`),
  );
  log(
    "kilovolts.csv",
    week("Time,U12 (kV),U23 (kV),U31 (kV)", (i) => `20.${i % 9},20.${(i + 3) % 9},20.${(i + 5) % 9}`),
  );
  log(
    "broken.csv",
    week("Time,U L1 (V)", (i) => (i === 40 ? "23x.1" : volts(i, 1))),
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

async function cli(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = "";
  let err = "";
  const io = {
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
    interactive: false,
  };
  const code = await run(
    args.map((a) => a.replace("@", folder)),
    io,
    false,
  );
  return { code, out, err };
}

describe("assess", () => {
  it("writes the report folder and prints the statement and where the report lies", async () => {
    const { code, out, err } = await cli("assess", "@/good.csv", "--out", "@/r1", "--zone", "UTC");
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain("conformed to EN 50160:2010, low voltage");
    expect(out.trimEnd().endsWith("/r1/report.html")).toBe(true);
    expect(readdirSync(join(folder, "r1")).sort()).toEqual([
      "manifest.json",
      "report.html",
      "report.pdf",
      "results.json",
      "setup.yaml",
    ]);
  });

  it("prints results.json with --json, which keeps to its schema and is what the folder holds", async () => {
    const { out } = await cli("assess", "@/bad.csv", "--out", "@/r2", "--format", "json", "--json");
    const result = assessmentSchema.parse(JSON.parse(out));
    expect(result.verdict).toBe("does-not-conform");
    expect(readFileSync(join(folder, "r2/results.json"), "utf8")).toBe(out);
  });

  it("ends with 4 under --strict unless the supply conforms, and with 0 without it", async () => {
    const at = (log: string, ...more: string[]) =>
      cli("assess", log, "--out", "@/r3", "--format", "json", "--quiet", ...more);
    expect((await at("@/bad.csv", "--strict")).code).toBe(4);
    expect((await at("@/good.csv", "--strict")).code).toBe(0);
    expect(await at("@/bad.csv")).toMatchObject({ code: 0, out: "", err: "" });
  });

  it.each([
    [["--foo"], 2, /unknown option '--foo'/],
    [["--declared", "much"], 2, /--declared much is not a voltage/],
    [["--declared", "20000"], 2, /20\.00 kV.*--rules/],
    [["--connection", "single"], 2, /judges L1 only.*L2, L3/],
    [["--rules", "nonsense"], 2, /no limit set "nonsense".*en50160-2010-lv/],
    [["--format", "html,scroll"], 2, /--format scroll is not known.*html/],
    [["--language", "tlh"], 2, /--language tlh is not known; it can be en \(English\)/],
    [["--zone", "Mars/Olympus"], 2, /not a known time zone/],
    [["--from", "2026-03-05", "--to", "2026-03-04"], 2, /does not lie before/],
    [["--from", "2027-01-01"], 2, /Nothing of the log lies in the span/],
    [["--from", "soon"], 2, /--from soon is not a date/],
    [["--setup", "@/nothing.yaml"], 2, /nothing\.yaml cannot be read/],
  ])("refuses %j with one sentence and writes nothing", async (options, expected, sentence) => {
    const { code, out, err } = await cli("assess", "@/good.csv", "--out", "@/never", ...options);
    expect([code, out]).toEqual([expected, ""]);
    expect(err).toMatch(sentence);
    expect(err.trimEnd().split("\n").length).toBeLessThanOrEqual(2);
    expect(existsSync(join(folder, "never"))).toBe(false);
  });

  it("ends with 3 for a log that cannot be read, with its place", async () => {
    expect(await cli("assess", "@/nothing.csv")).toMatchObject({
      code: 3,
      err: expect.stringContaining("no such file"),
    });
    const { code, err } = await cli("assess", "@/broken.csv", "--out", "@/never");
    expect(code).toBe(3);
    expect(err).toMatch(/broken\.csv, line 42, column 2.*23x\.1/);
    expect(existsSync(join(folder, "never"))).toBe(false);
  });

  it("asks for the declared voltage of a log in kilovolts", async () => {
    const { code, err } = await cli("assess", "@/kilovolts.csv", "--rules", "en50160-2010-mv");
    expect(code).toBe(2);
    expect(err).toMatch(/20\.\d+ kV.*--declared/);
    const { out } = await cli(
      "assess",
      "@/kilovolts.csv",
      "--rules",
      "en50160-2010-mv",
      "--declared",
      "20000",
      "--out",
      "@/r4",
    );
    expect(out).toContain("18000 to 22000 V");
  });

  it("replaces a report folder, and nothing else", async () => {
    const again = await cli("assess", "@/good.csv", "--out", "@/r1", "--format", "json");
    expect(again.code).toBe(0);
    expect(readdirSync(join(folder, "r1")).sort()).toEqual(["manifest.json", "results.json", "setup.yaml"]);
    writeFileSync(join(folder, "r1/notes.txt"), "mine");
    expect(await cli("assess", "@/good.csv", "--out", "@/r1")).toMatchObject({
      code: 2,
      err: expect.stringContaining("notes.txt"),
    });
    expect(await cli("assess", "@/good.csv", "--out", "@")).toMatchObject({
      code: 2,
      err: expect.stringContaining("not a report folder"),
    });
    expect(readFileSync(join(folder, "r1/notes.txt"), "utf8")).toBe("mine");
    expect(readdirSync(folder).filter((n) => n.startsWith("."))).toEqual([]);
  });

  it("assesses only the span asked for, and says so in the result", async () => {
    const span = ["--from", "2026-03-03", "--to", "2026-03-04T12:00Z"];
    const { out } = await cli("assess", "@/good.csv", "--out", "@/r5", "--format", "json", "--json", ...span);
    const { recording } = assessmentSchema.parse(JSON.parse(out));
    expect(recording).toMatchObject({
      start: "2026-03-03T00:00:00Z",
      end: "2026-03-04T12:00:00Z",
      cropped: { start: "2026-03-02T00:00:00Z", end: "2026-03-09T00:00:00Z" },
      intervals: { expected: 216, present: 216 },
    });
  });
});

describe("inspect", () => {
  it("shows what each column was taken for and why, and what was not understood", async () => {
    const { code, out } = await cli("inspect", "@/good.csv");
    expect(code).toBe(0);
    expect(out).toMatch(/"U L2 \(V\)" → voltage L2, mean, V \(/);
    expect(out).toMatch(/Columns not used \(1\)\n {2}good\.csv column 5 "Wobble"/);
    expect(out).toContain("Can be assessed");
  });

  it("asks instead of failing where a fact is missing", async () => {
    const { code, out } = await cli("inspect", "@/kilovolts.csv", "--rules", "en50160-2010-mv");
    expect(code).toBe(0);
    expect(out).toMatch(/Needed before a verdict\n.*--declared/);
  });

  it("writes a setup file that gives the same result when it is passed back", async () => {
    const setup = ["--declared", "230", "--zone", "Europe/Vienna"];
    expect((await cli("inspect", "@/bad.csv", ...setup, "--write-setup", "@/s.yaml")).code).toBe(0);
    const with_ = async (...options: string[]) =>
      JSON.parse((await cli("assess", "@/bad.csv", "--out", "@/r6", "--format", "json", "--json", ...options)).out);
    expect((await with_("--setup", "@/s.yaml")).weeks).toEqual((await with_(...setup)).weeks);
    expect(await cli("inspect", "@/bad.csv", "--write-setup", "@/s.yaml")).toMatchObject({ code: 2 });
  });
});

describe("the program", () => {
  it("assess names every language in its help", async () => {
    const { code, out } = await cli("assess", "--help");
    expect(code).toBe(0);
    const [, listed = ""] = /language of the report\s+and of the\s+summary: ([^(]*)\(/.exec(out) ?? [];
    expect(listed.match(/\b[a-z]{2}\b/g)?.filter((word) => word !== "or")).toEqual(LANGUAGES.map(({ id }) => id));
  });

  it("ends every failure with a full stop", async () => {
    expect((await cli("assess", "@/no-such-log.csv")).err).toMatch(
      /^mainswitness: .*check the name and the rights\.\n$/,
    );
    expect((await cli("judge")).err).toMatch(/[^.]\.\n$/);
  });

  it("names an unknown command, and helps", async () => {
    expect(await cli("judge")).toMatchObject({ code: 2, err: expect.stringContaining('no command "judge"') });
    const { code, out } = await cli("--help");
    expect(code).toBe(0);
    for (const command of ["assess", "inspect", "rules", "synth", "prove", "verify"]) expect(out).toContain(command);
    expect((await cli("--version")).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
