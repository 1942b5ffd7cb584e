import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.js";
import { assessmentSchema } from "../../src/rules/assessment.js";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  // 60 of 1008 values at 248.0 to 248.3 V: within 230 V ± 10 %, outside ± 7 %; minute values inside a contract's own band.
  const stamp = (i: number) => new Date(Date.UTC(2026, 2, 2) + i * 60_000).toISOString().slice(0, 19);
  const volts = (i: number) => ((i < 600 ? 2480 + ((i * 7) % 4) : 2310 + ((i * 7) % 50)) / 10).toFixed(1);
  const rows = Array.from({ length: 10_080 }, (_, i) => `${stamp(i)},${volts(i)}`);
  writeFileSync(join(folder, "week.csv"), `${["Time,U L1 (V)", ...rows].join("\n")}\n`);
  const contract = `id: contract
title: Supply contract (invented)
inherits: en50160-2010-lv
standard: Supply contract
change:
  supply-voltage:
    interval: 1min
    criterion: { max: 108 }
    source: contract of 2 February 2026, annex 3
    confirmed: true
    note: Values of one minute.
`;
  writeFileSync(join(folder, "contract.yaml"), contract);
});
afterAll(() => rmSync(folder, { recursive: true }));

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
  return {
    code: await run(
      args.map((a) => a.replace("@", folder)),
      io,
      false,
    ),
    out,
    err,
  };
}

const assess = (...rules: string[]) =>
  cli(
    "assess",
    "@/week.csv",
    "--zone",
    "UTC",
    "--out",
    "@/report",
    "--format",
    "json",
    ...rules.flatMap((r) => ["--rules", r]),
  );

describe("assess by several limit sets", () => {
  it("judges by the first and compares the others, a contract's own interval included", async () => {
    const { code } = await assess("en50160-2010-lv", "spain-lv", "@/contract.yaml");
    expect(code).toBe(0);
    const result = assessmentSchema.parse(JSON.parse(readFileSync(join(folder, "report/results.json"), "utf8")));
    expect(result.ruleSet.id).toBe("en50160-2010-lv");
    expect(result.verdict).toBe("conforms");
    expect(result.comparison.map(({ ruleSet, verdict }) => [ruleSet.id, verdict])).toEqual([
      ["spain-lv", "does-not-conform"],
      ["contract", "conforms"],
    ]);
    const [spain, contract] = result.comparison;
    expect(spain?.ruleSet.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(
      spain?.rows
        .filter(({ why }) => why.length > 0)
        .map(({ first, other, why }) => [first?.id, other?.verdict, why[0]?.sentence]),
    ).toEqual([
      ["supply-voltage", "does-not-conform", "Limit: 207 to 253 V in en50160-2010-lv, 213.9 to 246.1 V in spain-lv."],
    ]);
    const mine = contract?.rows.find(({ other }) => other?.id === "supply-voltage");
    expect(mine?.other).toMatchObject({ intervalS: 60, n: 10_080, outside: 0, limit: { max: 248.4 } });
    expect(mine?.first).toMatchObject({ intervalS: 600, n: 1008 });
  });

  it("gives the first set's result as alone, but for what the others' intervals add to the measured values", async () => {
    const read = () => JSON.parse(readFileSync(join(folder, "report/results.json"), "utf8"));
    await assess("en50160-2010-lv");
    const alone = read();
    await assess("en50160-2010-lv", "spain-lv");
    expect({ ...read(), comparison: [] }).toEqual(alone);
  });

  it("a user's own set cannot pass for one of the program's, and is told as one of its own", async () => {
    const bundled = readFileSync(new URL("../../rules/en50160-2010-lv.yaml", import.meta.url), "utf8");
    mkdirSync(join(folder, "own"), { recursive: true });
    const put = (name: string, text: string) => writeFileSync(join(folder, "own", name), text);
    put("en50160-2010-lv.yaml", bundled);
    await assess("@/own/en50160-2010-lv.yaml");
    const copy = assessmentSchema.parse(JSON.parse(readFileSync(join(folder, "report/results.json"), "utf8")));
    expect(copy.ruleSet.notes.join()).not.toContain("does not come with the program");
    put("en50160-2010-lv.yaml", bundled.replace("min: 90, max: 110", "min: 80, max: 110"));
    expect(await assess("@/own/en50160-2010-lv.yaml")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/the id "en50160-2010-lv" is that of a set that comes with the program/),
    });
    put("mine.yaml", "id: mine\ntitle: EN 50160 2010 – Low voltage\ninherits: en50160-2010-lv\nremove: [flicker]\n");
    expect(await assess("@/own/mine.yaml")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/the title .* is that of the set en50160-2010-lv/),
    });
    await assess("@/contract.yaml");
    const own = assessmentSchema.parse(JSON.parse(readFileSync(join(folder, "report/results.json"), "utf8")));
    expect(own.ruleSet.notes[0]).toBe("This limit set is a file of its own, which does not come with the program.");
  });

  it.each([
    [["en50160-2010-lv", "en50160-2010-lv"], /--rules names en50160-2010-lv twice/],
    [["en50160-2010-lv", "en50160-2010-mv"], /en50160-2010-mv is for MV and 50 Hz, en50160-2010-lv for LV/],
    [["en50160-2010-lv", "nonsense"], /no limit set "nonsense"/],
  ])("refuses %j", async (rules, sentence) => {
    const { code, err } = await assess(...rules);
    expect(code).toBe(2);
    expect(err).toMatch(sentence);
  });
});
