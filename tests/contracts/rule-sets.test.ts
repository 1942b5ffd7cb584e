import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { bundledRuleIds, readBundledRule } from "../../src/cli/files.js";
import { loadRuleSet, loadRuleSetFile } from "../../src/rules/load-rule-set.js";

const FOLDER = resolve(import.meta.dirname, "../../rules");
const names = readdirSync(FOLDER);
const MEMORY = "from memory, not confirmed by any document seen";

interface Overlay {
  readonly inherits?: string | string[];
  readonly change?: Record<string, Record<string, unknown>>;
}

const contentOf = (name: string): Overlay => parse(readFileSync(join(FOLDER, name), "utf8"));

/** Paths and values of a change's criterion, lists and null as single values. */
function leaves(value: unknown, path: string[] = []): { path: string[]; value: unknown }[] {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [{ path, value }];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

describe.each(names)("rules/%s", (name) => {
  const id = name.replace(/\.yaml$/, "");

  it("is a limit set that loads under the name of its file", async () => {
    expect(await bundledRuleIds()).toContain(id);
    const set = await loadRuleSet(id, readBundledRule);
    expect(set.id).toBe(id);
    expect(set.files[0]?.id).toBe(id);
    expect(set.title).not.toBe("");
    expect(set.notes.length).toBeGreaterThan(0);
  });

  it("states clause and source of every requirement, and says why a value is not confirmed", async () => {
    const { requirements } = await loadRuleSet(id, readBundledRule);
    expect(requirements.length).toBeGreaterThan(0);
    for (const { clause, source, confirmed, note } of requirements) {
      expect(clause).toMatch(/\S/);
      expect(source).toMatch(/\S/);
      if (source === MEMORY) expect(confirmed).toBe(false);
      if (!confirmed) expect(source === MEMORY || note !== undefined).toBe(true);
    }
  });

  it("judges a band that holds for all values before or beside one for most of them, never a narrower one", async () => {
    const { requirements } = await loadRuleSet(id, readBundledRule);
    const bands = new Map(requirements.map((r) => [r.id, r.criterion]));
    for (const [most, criterion] of bands) {
      const always = bands.get(`${most}-always`);
      if (always?.kind !== "share-within" || criterion.kind !== "share-within") continue;
      expect(always.share).toBe(1);
      expect(criterion.share).toBeLessThan(1);
      expect(always.min ?? 0).toBeLessThanOrEqual(criterion.min ?? 0);
      expect(always.max ?? 0).toBeGreaterThanOrEqual(criterion.max ?? 0);
    }
  });

  it("changes no limit to what it is already, so that each value stands in one place", async () => {
    const { change, ...rest } = contentOf(name);
    if (change === undefined) return;
    const before = await loadRuleSetFile(stringify(rest), name, readBundledRule);
    for (const [requirementId, patch] of Object.entries(change)) {
      const inherited = before.requirements.find((r) => r.id === requirementId);
      expect(inherited).toBeDefined();
      for (const { path, value } of leaves(patch.criterion ?? {})) {
        if (path.at(-1) === "confirmed") continue;
        const old = path.reduce(
          (v: unknown, key) => (v as Record<string, unknown> | undefined)?.[key],
          inherited?.criterion,
        );
        expect({ path, value: old ?? null }).not.toEqual({ path, value });
      }
    }
  });
});

it("has one set that stands on its own; all others inherit", () => {
  expect(names.filter((name) => contentOf(name).inherits === undefined)).toEqual(["en50160-2010-lv.yaml"]);
});
