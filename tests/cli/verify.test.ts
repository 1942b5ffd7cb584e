import { generateKeyPairSync } from "node:crypto";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.js";
import type { Verification } from "../../src/cli/verify-folder.js";
import { identify, manifestText, readManifest } from "../../src/evidence/manifest.js";

/** A signed report of one day with a user's own limit set, then every way in which it can be spoilt. */

const OWN_SET = `id: own\r
title: contract of an invented site\r
inherits: en50160-2010-lv\r
notes: [a note of its own]\r
`;

let folder = "";
const at = (...path: string[]) => join(folder, ...path);

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
  return { code: await run(args, io, false), out, err };
}

async function verified(...args: string[]): Promise<Verification & { code: number }> {
  const { code, out } = await cli("verify", ...args, "--json");
  return { code, ...(JSON.parse(out) as Verification) };
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "mainswitness-"));
  const { privateKey, publicKey } = generateKeyPairSync("ed25519");
  writeFileSync(at("key.pem"), privateKey.export({ format: "pem", type: "pkcs8" }));
  writeFileSync(at("public.pem"), publicKey.export({ format: "pem", type: "spki" }));
  writeFileSync(at("own.yaml"), OWN_SET);
  const rows = Array.from({ length: 144 }, (_, i) => {
    const stamp = new Date(Date.UTC(2026, 2, 2) + i * 600_000).toISOString().slice(0, 19);
    return `${stamp},${(229 + (i % 50) / 10).toFixed(1)},${(230 + (i % 30) / 10).toFixed(1)},${(231 + (i % 7) / 10).toFixed(1)}`;
  });
  writeFileSync(at("day.csv"), `${["Time,U L1 (V),U L2 (V),U L3 (V)", ...rows].join("\n")}\n`);
  const options = ["--rules", at("own.yaml"), "--zone", "UTC", "--from", "2026-03-02T01:00", "--declared", "230"];
  const made = await cli(
    ...["assess", at("day.csv"), "--out", at("good"), "--format", "html,svg", "--sign", at("key.pem")],
    ...options,
  );
  expect([made.code, made.err]).toEqual([0, ""]);
  mkdirSync(at("elsewhere/deep"), { recursive: true });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** A copy of the report two folders away from the log, so that the log is not found. */
function copied(): string {
  const copy = at("elsewhere/deep/copy");
  rmSync(copy, { recursive: true, force: true });
  cpSync(at("good"), copy, { recursive: true });
  return copy;
}

function flip(path: string, byte = 100): void {
  const bytes = readFileSync(path);
  const place = Math.min(byte, bytes.length - 1);
  bytes[place] = (bytes[place] as number) ^ 1;
  writeFileSync(path, bytes);
}

function rewritten(copy: string, change: (manifest: NonNullable<ReturnType<typeof readManifest>>) => void): void {
  const manifest = readManifest(readFileSync(join(copy, "manifest.json"), "utf8"));
  if (manifest === undefined) throw new Error("the manifest of the sound report cannot be read");
  delete manifest.signer;
  change(manifest);
  rmSync(join(copy, "manifest.json.sig"), { force: true });
  writeFileSync(join(copy, "manifest.json"), manifestText(manifest));
}

const filesOf = (path: string) =>
  readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => join(e.parentPath, e.name));

describe("a sound report", () => {
  it("is made again from the log beside it, from setup, options and own limit set in the folder", async () => {
    const result = await verified(at("good"), "--key", at("public.pem"));
    expect(result).toMatchObject({
      code: 0,
      holds: true,
      signature: "given-key",
      rerun: { state: "same" },
      faults: [],
    });
    expect(result.manifest.files).toBe(filesOf(at("good")).length - 2);
    expect(readFileSync(at("good/report.html"), "utf8")).toContain(result.results);
    expect(readFileSync(at("good/rules/own.yaml"), "utf8")).toBe(OWN_SET.replaceAll("\r", ""));
  });

  it("says so in words, and what it was compared with", async () => {
    const { code, out } = await cli("verify", at("good"), at("day.csv"));
    expect(code).toBe(0);
    expect(out).toMatch(/^The report is untouched, and made again from the logs it is the same byte for byte\.\n/);
    expect(out).toContain(`SHA-256 of manifest.json  ${identify(readFileSync(at("good/manifest.json"))).sha256}`);
  });

  it("without its log is checked as a folder, and the answer says that the result was not", async () => {
    const { code, out } = await cli("verify", copied());
    expect(code).toBe(0);
    expect(out).toMatch(/not made again from the logs.*[\s\S]*Re-run: not done.*day\.csv/);
  });

  it("knows a log that was renamed by its hash", async () => {
    cpSync(at("day.csv"), at("elsewhere/other-name.csv"));
    expect(await verified(copied(), at("elsewhere/other-name.csv"))).toMatchObject({
      code: 0,
      rerun: { state: "same" },
    });
  });
});

describe("one flipped byte", () => {
  it("is found in every file of the folder, which is named", async () => {
    const paths = filesOf(at("good")).map((path) => path.slice(at("good").length + 1));
    expect(paths).toEqual(
      expect.arrayContaining([
        "manifest.json",
        "manifest.json.sig",
        "report.html",
        "results.json",
        "rules/own.yaml",
        "setup.yaml",
      ]),
    );
    for (const path of paths) {
      for (const byte of [0, 40, 1e9]) {
        const copy = copied();
        flip(join(copy, path), byte);
        const { code, holds, faults } = await verified(copy);
        expect([path, byte, code, holds]).toEqual([path, byte, 1, false]);
        expect(faults.map(({ file }) => file)).toContain(path);
      }
    }
  });

  it("is found at any place of the manifest", async () => {
    const text = readFileSync(at("good/manifest.json"), "utf8");
    for (let i = 0; i < text.length; i += 7) {
      const other = `${text.slice(0, i)}${String.fromCharCode(text.charCodeAt(i) ^ 1)}${text.slice(i + 1)}`;
      expect([i, readManifest(other)]).toEqual([i, undefined]);
    }
    expect(readManifest(text)).toBeDefined();
  });

  it("is found in the log, given or beside the folder", async () => {
    const copy = copied();
    cpSync(at("day.csv"), at("elsewhere/deep/day.csv"));
    flip(at("elsewhere/deep/day.csv"), 300);
    for (const logs of [[], [at("elsewhere/deep/day.csv")]]) {
      const { code, out } = await cli("verify", copy, ...logs);
      expect(code).toBe(1);
      expect(out).toMatch(/log changed: day\.csv: expected SHA-256 [0-9a-f]{64}, found [0-9a-f]{64}\n/);
      expect(out).toContain("Re-run: not done");
    }
    rmSync(at("elsewhere/deep/day.csv"));
  });
});

describe("a report that was tampered with", () => {
  it("missing and extra files are named with their hashes", async () => {
    const copy = copied();
    renameSync(join(copy, "report.html"), join(copy, "report.htm"));
    const { code, out } = await cli("verify", copy);
    expect(code).toBe(1);
    expect(out).toMatch(/^2 files do not hold\./);
    expect(out).toMatch(/extra: report\.htm: .*found SHA-256 [0-9a-f]{64}/);
    expect(out).toMatch(/missing: report\.html: expected SHA-256 [0-9a-f]{64}/);
    expect(out).toMatch(/Folder: of the (\d+) files that manifest\.json lists, (?!\1)\d+ have/);
    const again = await verified(copy, at("day.csv"));
    expect(again.faults.map(({ kind, file }) => `${kind} ${file}`)).toEqual([
      "extra report.htm",
      "missing report.html",
    ]);
    expect(again.rerun).toMatchObject({ state: "different", same: again.manifest.files - 1 });
  });

  it("a changed result with a manifest made to fit is found by the re-run, with the byte", async () => {
    const copy = copied();
    const results = readFileSync(join(copy, "results.json"), "utf8");
    const byte = results.indexOf('"outside"');
    const changed = results.replace('"outside"', '"Outside"');
    writeFileSync(join(copy, "results.json"), changed);
    rewritten(copy, ({ files }) =>
      Object.assign(files.find((f) => f.path === "results.json") ?? {}, identify(changed)),
    );
    expect(await verified(copy)).toMatchObject({ code: 0, rerun: { state: "not-run", why: "logs" } });
    const { code, faults } = await verified(copy, at("day.csv"));
    expect([code, faults]).toEqual([1, [{ kind: "rerun", file: "results.json", byte: byte + 1 }]]);
  });

  it("a manifest that tells of other logs, limits or another program than the result is found", async () => {
    const details = async (change: Parameters<typeof rewritten>[1]) => {
      const copy = copied();
      rewritten(copy, change);
      return (await verified(copy)).faults.filter((f) => f.kind === "inconsistent").map((f) => f.detail);
    };
    expect(await details((m) => Object.assign(m.logs[0] ?? {}, { bytes: 1 }))).toEqual(["logs"]);
    expect(await details((m) => m.limitSets.pop())).toEqual(["limit sets"]);
    expect(await details((m) => Object.assign(m.tool, { version: "9.9.9" }))).toEqual(["program"]);
  });

  it("a manifest with other sizes or run options than those that give the report is found", async () => {
    const copy = copied();
    rewritten(copy, ({ files }) => Object.assign(files.find((f) => f.path === "report.html") ?? {}, { bytes: 1 }));
    const { faults } = await verified(copy);
    expect(faults.map(({ kind, file }) => `${kind} ${file}`)).toEqual(["changed report.html"]);
    const other = copied();
    rewritten(other, (m) => Object.assign(m.limitSets[1] ?? {}, { bytes: 1 }));
    expect((await verified(other, at("day.csv"))).faults).toEqual([
      { kind: "rerun", file: "manifest.json", detail: "other entries" },
    ]);
  });

  it("a link in place of a file ends the check, as what it leads to can change", async () => {
    const copy = copied();
    renameSync(join(copy, "report.html"), at("elsewhere/report.html"));
    symlinkSync(at("elsewhere/report.html"), join(copy, "report.html"));
    const { code, err } = await cli("verify", copy);
    expect([code, err]).toEqual([2, expect.stringMatching(/report\.html is a link or a device, not a file/)]);
  });

  it("without a signature that is checked nothing is called untouched", async () => {
    expect((await cli("verify", copied())).out).toMatch(/^The report folder fits its manifest\. It was not made again/);
    const signed = await cli("verify", copied(), "--key", at("public.pem"));
    expect(signed.out).toMatch(/^The report folder is untouched since it was signed\./);
  });

  it("a signature that is missing, of another key or not announced is found", async () => {
    const other = generateKeyPairSync("ed25519").publicKey.export({ format: "pem", type: "spki" });
    writeFileSync(at("other.pem"), other);
    const signature = async (copy: string, ...more: string[]) =>
      (await verified(copy, ...more)).faults.map(({ kind, detail }) => `${kind} ${detail}`);
    expect(await signature(copied(), "--key", at("other.pem"))).toEqual(["signature other key"]);
    const stripped = copied();
    rmSync(join(stripped, "manifest.json.sig"));
    expect(await signature(stripped)).toEqual(["signature missing"]);
    const unsigned = copied();
    rewritten(unsigned, () => {});
    expect(await signature(unsigned, "--key", at("public.pem"))).toEqual(["signature unsigned"]);
    cpSync(at("good/manifest.json.sig"), join(unsigned, "manifest.json.sig"));
    expect(await signature(unsigned)).toEqual(["signature not announced"]);
  });

  it("another version of the program is named, and the re-run is made all the same", async () => {
    const copy = copied();
    const bump = (path: string) => {
      const text = readFileSync(join(copy, path), "utf8").replace(/"version": "[^"]+"/, '"version": "0.0.1"');
      writeFileSync(join(copy, path), text);
      return text;
    };
    rewritten(copy, (m) => {
      Object.assign(m.tool, { version: "0.0.1" });
      Object.assign(m.files.find((f) => f.path === "results.json") ?? {}, identify(bump("results.json")));
    });
    const { out } = await cli("verify", copy, at("day.csv"));
    expect(out).toMatch(/written by mainswitness 0\.0\.1, this is mainswitness \d/);
    // report.html prints the version and was not adapted; results.json was and is made again alike.
    expect(out).toMatch(/re-run: report\.html differs from byte \d+ on/);
    expect(out).not.toContain("re-run: results.json");
  });
});

describe("wrong usage", () => {
  it.each([
    [["nowhere"], /no such folder/],
    [["elsewhere"], /holds no manifest\.json/],
  ])("%j ends with 2", async ([name = ""], sentence) => {
    const { code, out, err } = await cli("verify", at(name));
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(sentence);
  });

  it("signing with a public key writes nothing", async () => {
    const { code, err } = await cli("assess", at("day.csv"), "--out", at("never"), "--sign", at("public.pem"));
    expect([code, readdirSync(folder).includes("never")]).toEqual([2, false]);
    expect(err).toContain("public key");
  });
});
