import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

/** What poppler-utils (pdftotext, pdfinfo, pdfdetach), which had no part in making it, reads out of a PDF. */
export interface ReadPdf {
  /** Text of each page in the order in which it was written, runs of spaces and line ends as one space. */
  readonly pages: readonly string[];
  /** The fields of pdfinfo by name. */
  readonly info: ReadonlyMap<string, string>;
  readonly attached: ReadonlyMap<string, Buffer>;
}

export function readPdf(bytes: Uint8Array): ReadPdf {
  const folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  try {
    const file = join(folder, "report.pdf");
    writeFileSync(file, bytes);
    const run = (name: string, ...args: string[]) =>
      execFileSync(name, args, { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"], maxBuffer: 1e8 });
    const text = run("pdftotext", "-raw", "-enc", "UTF-8", file, "-");
    const info = run("pdfinfo", "-isodates", file);
    const names = [...run("pdfdetach", "-list", file).matchAll(/^\d+: (.*)$/gm)].map(([, name = ""]) => name);
    run("pdfdetach", "-saveall", "-o", folder, file);
    return {
      pages: text.split("\f").slice(0, -1).map(plain),
      info: new Map(
        info.split("\n").map((line) => [line.split(":")[0] ?? "", line.slice(line.indexOf(":") + 1).trim()]),
      ),
      attached: new Map(names.map((name) => [name, readFileSync(join(folder, name))])),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** One space for any, so that texts can be compared whatever the lines they were broken into. */
export function plain(text: string): string {
  return text.replace(/[\s\u00a0]+/g, " ").trim();
}

/** A suite that needs poppler-utils; see describeInBrowser. */
export function describeWithPoppler(title: string, suite: () => void): void {
  describe(title, () => {
    if (spawnSync("pdftotext", ["-v"]).error === undefined) return suite();
    it("needs poppler-utils", () => {
      console.warn(`${title}: not tested, as no pdftotext was found; install poppler-utils.`);
      expect(process.env.CI, "with CI=true missing poppler-utils are a failure").not.toBe("true");
    });
  });
}
