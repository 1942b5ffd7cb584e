import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";

/**
 * Data runs one way: log file → Recording → Measurements → Assessment → report. Were a stage to import a later one or
 * a sibling, a new format could change a verdict and a limit could change what was measured; then neither could be
 * checked alone. Each folder may import only those named here (and itself).
 */
const ALLOWED: Record<string, string[]> = {
  main: ["cli", "errors"],
  cli: [
    "assess",
    "inspect",
    "formats",
    "analysis",
    "checks",
    "rules",
    "report",
    "evidence",
    "synth",
    "prove",
    "recording",
    "decimal",
    "errors",
    "checked-yaml",
  ],
  assess: ["formats", "analysis", "checks", "rules", "evidence", "recording", "errors"],
  inspect: ["assess", "analysis", "checks", "rules", "recording", "errors"],
  formats: ["recording", "decimal", "errors"],
  analysis: ["signal", "recording", "decimal", "errors"],
  checks: ["recording", "signal", "decimal", "errors"],
  rules: ["recording", "decimal", "errors", "checked-yaml"],
  // The result is the contract between judging and rendering: types only, see the second test.
  report: ["rules", "recording", "decimal", "errors"],
  evidence: ["recording", "errors"],
  // Makes signals whose truth it computes without measuring them; what writes them down is handed the samples by the CLI.
  synth: ["recording", "decimal", "errors", "checked-yaml"],
  prove: ["analysis", "synth", "recording", "decimal", "errors"],
  recording: ["decimal", "errors"],
  signal: [],
  "checked-yaml": ["errors"],
  decimal: [],
  errors: [],
  sentence: [],
};

/** Every stage may write sentences. */
for (const stages of Object.values(ALLOWED)) stages.push("sentence");

interface Import {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

const src = resolve(import.meta.dirname, "../src");
const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((f) => f.endsWith(".ts"));
const stageOf = (path: string) => path.split("/")[0]?.replace(/\.(ts|js)$/, "") ?? "";
const imports: Import[] = files.flatMap((file) => {
  const text = readFileSync(join(src, file), "utf8");
  const found = [...text.matchAll(/(?:import|export)\s+(type\s)?[^;"]*?from\s+"(\.[^"]+)"|import\("(\.[^"]+)"\)/g)];
  return found.map((m) => ({
    file,
    from: stageOf(file),
    to: stageOf(relative(src, resolve(dirname(join(src, file)), m[2] ?? m[3] ?? ""))),
    typeOnly: m[1] !== undefined,
  }));
});

describe("import directions", () => {
  it("finds the imports that it judges", () => {
    expect(files.length).toBeGreaterThan(30);
    expect(imports.length).toBeGreaterThan(100);
    expect([...new Set(imports.map((i) => i.from))].filter((s) => !(s in ALLOWED))).toEqual([]);
  });

  it("keeps every stage from importing a later stage or a sibling", () => {
    const wrong = imports.filter((i) => i.from !== i.to && !ALLOWED[i.from]?.includes(i.to));
    expect(wrong.map((i) => `${i.file} imports ${i.to}`)).toEqual([]);
  });

  it("lets the report import only the types of the rules: it renders verdicts and never makes one", () => {
    const wrong = imports.filter((i) => i.from === "report" && i.to === "rules" && !i.typeOnly);
    expect(wrong.map((i) => i.file)).toEqual([]);
  });

  it("keeps file access and the process in cli/ and main.ts, so that stages are pure and testable", () => {
    const wrong = files.filter((file) => {
      if (file === "main.ts" || file.startsWith("cli/")) return false;
      const text = readFileSync(join(src, file), "utf8");
      return /from "node:(fs|fs\/promises|process|child_process|http|https|net)"|\bprocess\./.test(text);
    });
    expect(wrong).toEqual([]);
  });
});
