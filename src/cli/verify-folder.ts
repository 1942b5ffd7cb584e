import { UsageError } from "../errors.js";
import {
  checkConsistency,
  checkFiles,
  compareManifests,
  compareOutputs,
  type Fault,
} from "../evidence/check-folder.js";
import { identify, MANIFEST, type Manifest, readManifest, SETUP, SIGNATURE } from "../evidence/manifest.js";
import { sha256 } from "../evidence/sha256.js";
import { fits } from "../evidence/signature.js";
import type { Progress } from "../recording/log-file.js";
import { say } from "../sentence.js";
import { readBundledRule, readFolder, tool } from "./files.js";
import { findLogs } from "./find-logs.js";
import { makeReport } from "./make-report.js";
import { parseSetup } from "./read-setup.js";
import { findRuleSets } from "./rule-sets.js";

/** What `verify` checked and found; printed as it is with --json. */
export interface Verification {
  readonly schema: 1;
  readonly tool: Manifest["tool"];
  /** Program that wrote the report; absent where the manifest cannot be read. */
  readonly writtenBy?: Manifest["tool"];
  /** Nothing differs in what was checked. */
  readonly holds: boolean;
  readonly manifest: { readonly sha256: string; readonly files: number };
  /** SHA-256 of results.json as the report itself prints it; absent where the file is missing. */
  readonly results?: string;
  /** none: unsigned; own-key: fits the key the manifest names; given-key: fits the key given; faulty: see the faults. */
  readonly signature: "none" | "own-key" | "given-key" | "faulty";
  readonly rerun:
    | {
        readonly state: "same" | "different";
        /** Number of files made again, and of those that the folder holds with the same bytes. */
        readonly files: number;
        readonly same: number;
      }
    | { readonly state: "not-run"; readonly why: "manifest" | "inputs" | "logs"; readonly logs: readonly string[] }
    | { readonly state: "failed"; readonly why: string };
  readonly faults: readonly Fault[];
}

/**
 * Checks a report folder against its manifest and signature, then makes the report again from the logs and compares.
 * @param publicKey as `Signer.publicKey`
 * @throws UsageError where there is no report folder with a manifest; LogError for a given log that cannot be read
 */
export async function verifyFolder(
  path: string,
  logs: readonly string[],
  publicKey: string | undefined,
  progress: Progress,
): Promise<Verification> {
  const folder = await readFolder(path);
  const bytes = folder.get(MANIFEST);
  if (bytes === undefined) {
    throw new UsageError(
      String(say`${path} holds no manifest.json: it is not a report folder, or the manifest was taken away.`),
    );
  }
  const manifest = readManifest(Buffer.from(bytes).toString("utf8"));
  const results = folder.get("results.json");
  const head = {
    schema: 1,
    tool: await tool(),
    manifest: { sha256: sha256(bytes), files: manifest?.files.length ?? 0 },
    ...(results !== undefined && { results: sha256(results) }),
  } as const;
  if (manifest === undefined) {
    const faults: Fault[] = [{ kind: "manifest", file: MANIFEST, found: head.manifest.sha256 }];
    const rerun = { state: "not-run", why: "manifest", logs: [] } as const;
    return { ...head, holds: false, signature: "faulty", rerun, faults };
  }
  const signature = checkSignature(manifest, bytes, folder.get(SIGNATURE), publicKey);
  const fileFaults = checkFiles(manifest, folder);
  const setFaults = await checkLimitSets(manifest);
  const found = await findLogs(manifest, path, logs);
  try {
    const inputs = [SETUP, ...manifest.run.rules];
    const again = fileFaults.some(({ file }) => inputs.includes(file))
      ? notRun("inputs")
      : found.missing.length > 0
        ? notRun("logs", found.missing)
        : await runAgain(manifest, folder, found.logs, progress);
    const faults = [
      ...signature.faults,
      ...fileFaults,
      ...checkConsistency(manifest, results),
      ...setFaults,
      ...found.faults,
      ...again.faults.filter((fault) => !told(fault, fileFaults)),
    ];
    return {
      ...head,
      writtenBy: manifest.tool,
      holds: faults.length === 0 && again.rerun.state !== "failed",
      signature: signature.state,
      rerun: again.rerun,
      faults,
    };
  } finally {
    await found.close();
  }
}

/** A missing or extra file is so for the re-run as well. */
function told({ byte, file }: Fault, before: readonly Fault[]): boolean {
  return byte === undefined && before.some((fault) => fault.file === file);
}

interface Again {
  readonly rerun: Verification["rerun"];
  readonly faults: readonly Fault[];
}

function notRun(why: "inputs" | "logs", logs: readonly string[] = []): Again {
  return { rerun: { state: "not-run", why, logs }, faults: [] };
}

/**
 * The recorded name and version of the program stand in the outputs, also where this is another version: then what
 * differs is what this version computes or writes otherwise.
 */
async function runAgain(
  manifest: Manifest,
  folder: ReadonlyMap<string, Uint8Array>,
  logs: Parameters<typeof makeReport>[0],
  progress: Progress,
): Promise<Again> {
  const textOf = async (path: string) => Buffer.from(folder.get(path) ?? []).toString("utf8");
  const { rules, ...run } = manifest.run;
  try {
    const request = {
      tool: manifest.tool,
      setup: parseSetup(await textOf(SETUP), SETUP),
      ruleSets: await findRuleSets(rules, textOf),
      run,
    };
    const report = await makeReport(logs, request, progress);
    const outputs = report.files.filter(({ path }) => path !== MANIFEST);
    const made = readManifest(String(report.files.find(({ path }) => path === MANIFEST)?.content));
    if (made === undefined) throw new Error(`the re-run wrote no ${MANIFEST}`);
    const faults = [...compareOutputs(outputs, folder), ...compareManifests(made, manifest)];
    const differing = new Set(faults.map(({ file }) => file));
    return {
      rerun: {
        state: faults.length === 0 ? "same" : "different",
        files: outputs.length,
        same: outputs.filter(({ path }) => !differing.has(path)).length,
      },
      faults,
    };
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return { rerun: { state: "failed", why: error.message }, faults: [] };
  }
}

function checkSignature(
  manifest: Manifest,
  bytes: Uint8Array,
  signature: Uint8Array | undefined,
  given: string | undefined,
): { state: Verification["signature"]; faults: Fault[] } {
  const faulty = (detail: string) => ({
    state: "faulty" as const,
    faults: [{ kind: "signature" as const, file: SIGNATURE, detail }],
  });
  const { signer } = manifest;
  if (signer === undefined && signature !== undefined) return faulty("not announced");
  if (signer === undefined) return given === undefined ? { state: "none", faults: [] } : faulty("unsigned");
  if (signature === undefined) return faulty("missing");
  if (!fits(signature, bytes, given ?? signer))
    return faulty(given === undefined || given === signer ? "wrong" : "other key");
  return { state: given === undefined ? "own-key" : "given-key", faults: [] };
}

/** The limit sets that come with this program against those the report was made with. */
async function checkLimitSets(manifest: Manifest): Promise<Fault[]> {
  const faults: Fault[] = [];
  for (const { id, sha256: expected, file } of manifest.limitSets) {
    if (file !== undefined) continue;
    const text = (await readBundledRule(id))?.text.replace(/\r\n?/g, "\n");
    const found = text === undefined ? undefined : identify(text).sha256;
    if (found !== expected)
      faults.push({ kind: "limit-set", file: id, expected, ...(found !== undefined && { found }) });
  }
  return faults;
}
