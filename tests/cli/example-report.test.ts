import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.js";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

test("the committed example report is what the program makes of the sample logs (npm run example)", async () => {
  const { scripts } = JSON.parse(readFileSync(at("package.json"), "utf8")) as { scripts: { demo: string } };
  const args = scripts.demo
    .split(" ")
    .slice(2)
    .map((word) => (word.startsWith("sample-logs/") ? at(word) : word));
  const folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  try {
    let out = "";
    const io = {
      out: (text: string) => {
        out += text;
      },
      err: () => {},
      interactive: false,
    };
    expect(await run([...args, "--out", join(folder, "r"), "--format", "json", "--json"], io, false)).toBe(0);
    expect(out).toBe(readFileSync(at("reports/village-feeder/results.json"), "utf8"));
    const { sources } = JSON.parse(out) as { sources: { sha256: string }[] };
    const page = readFileSync(at("reports/village-feeder/report.html"), "utf8");
    for (const { sha256 } of sources) expect(page).toContain(sha256);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
