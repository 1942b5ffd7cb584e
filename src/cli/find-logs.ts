import { resolve } from "node:path";
import type { Fault } from "../evidence/check-folder.js";
import type { Manifest } from "../evidence/manifest.js";
import { sha256OfFile } from "../evidence/sha256.js";
import type { LogFile } from "../recording/log-file.js";
import { filesNamed, openLogFile, openLogFiles } from "./files.js";

export interface FoundLogs {
  /** In the manifest's order and under its names; fewer than there are logs where some were not found. */
  readonly logs: readonly LogFile[];
  /** Names of those that were not found. */
  readonly missing: readonly string[];
  readonly faults: readonly Fault[];
  close(): Promise<void>;
}

/**
 * The logs of a manifest, by name and hash: among the files given, or else beside the folder, above it and where the
 * program was started. A file of the right name but another hash is a fault unless the right one is found too.
 * @throws LogError for a given file that cannot be read
 */
export async function findLogs(manifest: Manifest, folder: string, given: readonly string[]): Promise<FoundLogs> {
  const candidates = given.length > 0 ? await openLogFiles(given) : await openNamed(manifest, folder);
  const hashed: { file: LogFile; sha256: string }[] = [];
  try {
    for (const file of candidates.opened) hashed.push({ file, sha256: await sha256OfFile(file) });
  } catch (error) {
    await candidates.close();
    throw error;
  }
  const logs: LogFile[] = [];
  const missing: string[] = [];
  const faults: Fault[] = [];
  const used = new Set<LogFile>();
  for (const { name, sha256: expected } of manifest.logs) {
    const right = hashed.filter((h) => h.sha256 === expected && !used.has(h.file));
    const found = right.find(({ file }) => file.name === name) ?? right[0];
    if (found !== undefined) {
      used.add(found.file);
      logs.push(renamed(found.file, name));
      continue;
    }
    missing.push(name);
    const wrong = hashed.find(({ file }) => file.name === name);
    if (wrong !== undefined) {
      used.add(wrong.file);
      faults.push({ kind: "log", file: name, expected, found: wrong.sha256 });
    }
  }
  if (given.length > 0) {
    for (const { file, sha256: found } of hashed) {
      if (!used.has(file)) faults.push({ kind: "log", file: file.name, found });
    }
  }
  return { logs, missing, faults, close: candidates.close };
}

/** A log keeps the name that the report knows it by. */
function renamed(file: LogFile, name: string): LogFile {
  return { name, size: file.size, read: (offset, length) => file.read(offset, length) };
}

async function openNamed(manifest: Manifest, folder: string) {
  const opened: Awaited<ReturnType<typeof openLogFile>>[] = [];
  const names = new Set(manifest.logs.map(({ name }) => name));
  for (const name of names) {
    for (const path of await filesNamed(name, resolve(folder))) opened.push(await openLogFile(path));
  }
  return {
    opened,
    close: async () => {
      for (const file of opened) await file.close();
    },
  };
}
