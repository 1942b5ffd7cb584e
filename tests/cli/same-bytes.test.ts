import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, relative, resolve } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { fontFiles } from "../../src/cli/files.js";
import { RENDERERS } from "../../src/report/index.js";

/**
 * The program as built, in processes of their own that differ in all that must not matter: time zone, locale, current
 * folder, order of the logs, line endings of the user's files, fonts of the machine. Every output must be the same byte for byte.
 */

const ROOT = resolve(import.meta.dirname, "../..");
const FORMATS = RENDERERS.map(({ id }) => id).join(",");
const SETUP = `site: mill street (invented)\nzone: Europe/Vienna\ndeclaredVoltage: 230\ncomments:\n  - { at: 2026-03-28T10:00, text: "cover opened; ärger" }\n`;
const OWN_SET = "id: own\ntitle: contract of an invented site\ninherits: en50160-2010-lv\nnotes: [a note]\n";

let folder = "";
let program = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  // A package whose dist/ is built from the sources under test; all else is the project's own.
  const root = join(folder, "package");
  mkdirSync(root);
  for (const entry of readdirSync(ROOT).filter((name) => name !== "dist"))
    symlinkSync(join(ROOT, entry), join(root, entry));
  const tsc = join(ROOT, "node_modules/.bin/tsc");
  execFileSync(tsc, ["-p", "tsconfig.build.json", "--outDir", join(root, "dist")], { cwd: ROOT });
  program = join(root, "dist/main.js");
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Where a user's own fonts lie (XDG Base Directory Specification). */
const DATA_HOME = ".local/share";
const homeAt = (home: string) => ({ HOME: home, XDG_DATA_HOME: join(home, DATA_HOME) });

/** A home folder with fonts that have the names of the program's own, with letters twice as large. */
function homeWithOtherFonts(): string {
  const home = join(folder, "home");
  const fonts = join(home, DATA_HOME, "fonts");
  mkdirSync(fonts, { recursive: true });
  for (const path of fontFiles()) {
    const font = readFileSync(path);
    // OpenType specification, "head": unitsPerEm is the 16-bit number at offset 18 of that table.
    const tables = Array.from({ length: font.readUInt16BE(4) }, (_, i) => font.subarray(12 + 16 * i, 28 + 16 * i));
    const head = tables.find((entry) => entry.toString("latin1", 0, 4) === "head")?.readUInt32BE(8) as number;
    font.writeUInt16BE(font.readUInt16BE(head + 18) / 2, head + 18);
    writeFileSync(join(fonts, basename(path)), font);
  }
  return home;
}

/** A word set with the compiler of the PDF in a process of its own. */
function setWord(home: string, fonts: readonly string[]): string {
  const script = `
    import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
    const compiler = NodeCompiler.create({ workspace: "/", fontArgs: [{ fontPaths: ${JSON.stringify(fonts)} }] });
    const text = '#set document(date: none); #set text(font: "Noto Sans", fallback: false); word';
    process.stdout.write(Buffer.from(compiler.pdf(compiler.compile({ mainFileContent: text }).result, {})).toString("base64"));`;
  const env = { ...process.env, ...homeAt(home) };
  return execFileSync(process.execPath, ["--input-type=module", "-e", script], { cwd: ROOT, env }).toString();
}

interface Surroundings {
  readonly name: string;
  readonly env: Readonly<Record<string, string>>;
  readonly eol: string;
  readonly reversed: boolean;
}

/** Two days over the clock change of Vienna; the second log has the frequency. Files lie in a folder of their own. */
function outputs({ name, env, eol, reversed }: Surroundings): Map<string, string> {
  const place = join(folder, name);
  mkdirSync(place);
  const table = (head: string, row: (i: number) => string) =>
    [
      head,
      ...Array.from({ length: 288 }, (_, i) => {
        const stamp = new Date(Date.UTC(2026, 2, 28) + i * 600_000).toISOString().slice(0, 19);
        return `${stamp}Z,${row(i)}`;
      }),
      "",
    ].join("\n");
  const volts = (i: number, phase: number) => (226 + ((i * (7 + phase)) % 290) / 10).toFixed(1);
  writeFileSync(
    join(place, "volts.csv"),
    table("Time,U L1 (V),U L2 (V),U L3 (V)", (i) => `${volts(i, 1)},${volts(i, 2)},${volts(i, 3)}`),
  );
  writeFileSync(
    join(place, "hertz.csv"),
    table("Time,Frequency (Hz)", (i) => (50 + ((i % 9) - 4) / 100).toFixed(3)),
  );
  writeFileSync(join(place, "setup.yaml"), SETUP.replaceAll("\n", eol));
  writeFileSync(join(place, "own.yaml"), OWN_SET.replaceAll("\n", eol));
  const logs = reversed ? ["hertz.csv", "volts.csv"] : ["volts.csv", "hertz.csv"];
  const options = ["--setup", "setup.yaml", "--rules", "./own.yaml", "--from", "2026-03-28T06:00", "--format", FORMATS];
  execFileSync(process.execPath, [program, "assess", ...logs, ...options, "--out", "out", "--quiet"], {
    cwd: place,
    env: { ...process.env, ...env },
  });
  const files = readdirSync(join(place, "out"), { recursive: true, withFileTypes: true }).filter((e) => e.isFile());
  return new Map(
    files
      .map((e) => join(e.parentPath, e.name))
      .sort()
      .map((path) => [relative(join(place, "out"), path), readFileSync(path).toString("latin1")]),
  );
}

it("same inputs give the same bytes in another time zone, locale, folder, order, line ending and with other fonts", () => {
  const [noFonts, otherFonts] = [join(folder, "nobody"), homeWithOtherFonts()];
  const here = outputs({
    name: "here",
    env: { TZ: "UTC", LC_ALL: "C", LANG: "C", ...homeAt(noFonts) },
    eol: "\n",
    reversed: false,
  });
  const there = outputs({
    name: "a place with blanks",
    env: { TZ: "Pacific/Chatham", LC_ALL: "tr_TR.UTF-8", LANG: "tr_TR.UTF-8", ...homeAt(otherFonts) },
    eol: "\r\n",
    reversed: true,
  });
  const names = [...here.keys()];
  expect(names).toEqual(expect.arrayContaining(["manifest.json", "report.html", "results.json", "rules/own.yaml"]));
  expect(names.filter((name) => name.startsWith("charts/")).length).toBeGreaterThan(3);
  expect([...there.keys()]).toEqual(names);
  expect(names.filter((name) => here.get(name) !== there.get(name))).toEqual([]);
});

it.runIf(process.platform === "linux")("the other fonts would be taken, were the program's own not handed over", () => {
  const [noFonts, otherFonts] = [join(folder, "nobody"), join(folder, "home")];
  const own = setWord(noFonts, fontFiles());
  expect(setWord(otherFonts, fontFiles())).toBe(own);
  expect(setWord(otherFonts, [])).not.toBe(own);
  expect(setWord(otherFonts, [])).not.toBe(setWord(noFonts, []));
});
