import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command } from "commander";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { registerRules } from "../../src/cli/commands/rules.js";
import { bundledRuleIds, readBundledRule } from "../../src/cli/files.js";
import { UsageError } from "../../src/errors.js";
import { loadRuleSet } from "../../src/rules/load-rule-set.js";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-rules-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function rules(...args: string[]): Promise<string> {
  let printed = "";
  const program = new Command().exitOverride();
  registerRules(program, {
    out: (text) => {
      printed += text;
    },
  });
  await program.parseAsync(["rules", ...args], { from: "user" });
  return printed;
}

function write(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const CONTRACT = `id: contract
title: Supply contract of the village mill
inherits: en50160-2010-lv
remove: [voltage-swells]
change:
  supply-voltage:
    criterion: { max: 105.5 }
    source: supply contract, annex 2
    confirmed: true
`;

describe("mainswitness rules list", () => {
  it("names every set, its parents and how many values are not confirmed; it is the default", async () => {
    const text = await rules("list");
    expect(await rules()).toBe(text);
    for (const id of await bundledRuleIds()) expect(text).toContain(`\n${id}\n`);
    expect(text).toContain(
      "\nen50160-2010-lv\n  EN 50160:2010, low voltage\n  35 limits and indications, 2 of them not confirmed\n",
    );
    expect(text).toContain("\n  inherits en50160-2010-lv-not-interconnected and en50160-2022-lv\n");
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("prints the same as JSON", async () => {
    const sets = JSON.parse(await rules("--json"));
    expect(sets.map((set: { id: string }) => set.id)).toEqual(await bundledRuleIds());
    expect(sets.find((set: { id: string }) => set.id === "netherlands-lv")).toEqual({
      id: "netherlands-lv",
      title: "Netherlands, low voltage (EN 50160:2010 with Netcode elektriciteit)",
      inherits: ["en50160-2010-lv"],
      limits: 37,
      unconfirmed: 1,
    });
  });

  it("says what to write instead of an unknown word", async () => {
    await expect(rules("spain-lv")).rejects.toThrow(
      new UsageError(
        '"spain-lv" is not known after "mainswitness rules"; for one limit set write "mainswitness rules show ' +
          'spain-lv", for all of them "mainswitness rules list".',
      ),
    );
  });
});

describe("mainswitness rules show", () => {
  it("prints limit, share, clause, source and state of every requirement within 100 columns", async () => {
    for (const id of await bundledRuleIds()) {
      const text = await rules("show", id);
      expect(text.split("\n").filter((line) => line.length > 100)).toEqual([]);
      const { requirements } = await loadRuleSet(id, readBundledRule);
      for (const { title, clause, source, confirmed } of requirements) {
        expect(text).toContain(`\n${title}${confirmed ? "" : "   NOT CONFIRMED"}\n  limit `);
        expect(text).toContain(`\n  clause      ${clause}\n`);
        expect(text.replace(/\s+/g, " ")).toContain(source);
      }
    }
  });

  it("puts limits in plain words, with exact volts and hertz", async () => {
    const text = (await rules("show", "en50160-2010-lv")).replace(/\n {14}/g, " ");
    for (const sentence of [
      "  limit       90 % to 110 % of the declared voltage (207 V to 253 V at 230 V)\n" +
        "  holds for   at least 95 % of the 10-minute values of a week, each phase by itself; flagged values count\n",
      "  holds for   all 10-minute values of a week, each phase by itself; flagged values count\n",
      "  limit       99 % to 101 % of the nominal frequency (49.5 Hz to 50.5 Hz)\n" +
        "  holds for   at least 99.5 % of the 10-second values of a year; flagged values count\n",
      "  limit       at most 1\n  holds for   at least 95 % of the 2-hour values",
      "order 2: 2 %, order 3: 5 %, order 4: 1 %",
      "9 % at 100 Hz, 9 % at 500 Hz, 5 % at 1000 Hz",
      "B below 80 % down to 70 %",
      "X below 5 %; columns: 1 from 0.01 s to 0.2 s",
      "  limit       none; generally at most 5 % of the declared voltage, at times up to 10 %\n",
    ]) {
      expect(text).toContain(sentence);
    }
    expect(await rules("show", "en50160-2010-mv")).toContain("90 % to 110 % of the declared voltage\n");
  });

  it("says which harmonic orders are unconfirmed by themselves", async () => {
    const text = (await rules("show", "en50160-2022-lv")).replace(/\n {14}/g, " ");
    expect(text).toContain(
      "  note        order 15: not confirmed; from memory, not confirmed by any document seen; every document seen prints 0.5 %",
    );
    const part = write(
      "part.yaml",
      "id: part\ntitle: Part\ninherits: en50160-2010-lv\nchange:\n  harmonic-voltage:\n    criterion:\n" +
        "      orders:\n        7: { max: 4.5, source: hearsay, confirmed: false }\n",
    );
    expect((await rules("show", part)).replace(/\s+/g, " ")).toContain(
      "order 6: 0.5 %, order 7: 4.5 % (not confirmed),",
    );
  });

  it("prints the whole set as JSON, of a file too", async () => {
    expect(JSON.parse(await rules("show", "spain-lv", "--json"))).toEqual(
      await loadRuleSet("spain-lv", readBundledRule),
    );
    const set = JSON.parse(await rules("show", write("contract.yaml", CONTRACT), "--json"));
    expect(set.files.map((file: { id: string }) => file.id)).toEqual(["contract", "en50160-2010-lv"]);
  });

  it("refuses an unknown id and a file that is not there", async () => {
    await expect(rules("show", "en50160-2011-lv")).rejects.toThrow(UsageError);
    await expect(rules("show", join(folder, "none.yaml"))).rejects.toThrow(UsageError);
  });
});

describe("mainswitness rules check", () => {
  it("says that a file is sound and what it changes", async () => {
    const path = write("contract.yaml", CONTRACT);
    expect(await rules("check", path)).toBe(
      `${path} is sound: Supply contract of the village mill (contract), 34 limits and indications, 2 of them not confirmed.
Compared with en50160-2010-lv:
  supply-voltage:
    criterion max: 110 becomes 105.5
    source: "${(await loadRuleSet("en50160-2010-lv", readBundledRule)).requirements[2]?.source}" becomes "supply contract, annex 2"
  voltage-swells: removed
`,
    );
    expect(JSON.parse(await rules("check", path, "--json"))).toMatchObject({
      sound: true,
      id: "contract",
      limits: 34,
      unconfirmed: 2,
      parent: "en50160-2010-lv",
      changes: [
        { of: "supply-voltage", kind: "changed", entries: [{ entry: "criterion max", from: 110, to: 105.5 }, {}] },
        { of: "voltage-swells", kind: "removed", entries: [] },
      ],
    });
  });

  it("says so where nothing is changed or inherited", async () => {
    const same = write("same.yaml", "id: same\ntitle: Same\ninherits: france-lv\n");
    expect(await rules("check", same)).toMatch(/\nIt is no different from france-lv\.\n$/);
    const base = write("en50160-2010-lv.yaml", (await readBundledRule("en50160-2010-lv"))?.text ?? "");
    expect(await rules("check", base)).toMatch(/\nIt inherits nothing\.\n$/);
  });

  it("names added requirements and changed facts", async () => {
    const mill = write(
      "mill.yaml",
      "id: mill\ntitle: Mill\ninherits: [en50160-2010-lv, netherlands-lv]\nnominalVoltage: null\n",
    );
    const text = await rules("check", mill);
    expect(text).toContain("\n  flicker-always: added\n");
    expect(text).toContain("\n    nominalVoltage: 230 becomes nothing\n");
  });

  it("gives the fault of a file that is not sound, with its place", async () => {
    const path = write("broken.yaml", CONTRACT.replace("id: contract", "id: broken").replace("max: 105.5", "max: 80"));
    await expect(rules("check", path)).rejects.toThrow(
      new UsageError(`${path}, line 7, column 5: min (90) is above max (80); exchange or correct them.`),
    );
  });
});
