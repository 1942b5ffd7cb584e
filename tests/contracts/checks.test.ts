import { existsSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { CHECKS } from "../../src/checks/index.js";

const SRC = resolve(import.meta.dirname, "../../src/checks");
const TESTS = resolve(import.meta.dirname, "../checks");
const NO_CHECKS = ["check.ts", "index.ts"];

describe("the list of checks", () => {
  it("holds every check of the folder once, under the name of its file", () => {
    const files = readdirSync(SRC).filter((f) => f.endsWith(".ts") && !NO_CHECKS.includes(f));
    expect(files.length).toBeGreaterThan(20);
    expect(CHECKS.map((c) => `${c.id}.ts`).sort()).toEqual(files.sort());
  });

  it.each(CHECKS.map((c) => [c.id, c] as const))("%s has a title, a source and a test", (id, { title, source }) => {
    expect(title).toMatch(/^[A-Z].{20,}[^.]$/);
    expect(source).toMatch(/no source|EN 50160|IEC|identity/);
    expect(existsSync(join(TESTS, `${id}.test.ts`))).toBe(true);
  });
});
