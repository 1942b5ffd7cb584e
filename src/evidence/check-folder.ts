import { z } from "zod";
import { identify, MANIFEST, type Manifest, SIGNATURE } from "./manifest.js";

/** One thing that does not hold. `expected` and `found` are SHA-256 where they apply. */
export interface Fault {
  readonly kind:
    | "changed"
    | "missing"
    | "extra"
    | "manifest"
    | "inconsistent"
    | "signature"
    | "log"
    | "limit-set"
    | "rerun";
  readonly file: string;
  readonly expected?: string;
  readonly found?: string;
  /** Of the first difference between the file and what the re-run gives. */
  readonly byte?: number;
  readonly detail?: string;
}

/** Each file against the manifest: changed, missing and extra ones, in order of their paths. */
export function checkFiles(manifest: Manifest, folder: ReadonlyMap<string, Uint8Array>): Fault[] {
  const known = new Set([MANIFEST, SIGNATURE, ...manifest.files.map(({ path }) => path)]);
  const faults = manifest.files.flatMap(({ path, bytes: size, sha256: expected }): Fault[] => {
    const content = folder.get(path);
    if (content === undefined) return [{ kind: "missing", file: path, expected }];
    const { bytes, sha256: found } = identify(content);
    return found === expected && bytes === size ? [] : [{ kind: "changed", file: path, expected, found }];
  });
  for (const [path, content] of folder) {
    if (!known.has(path)) faults.push({ kind: "extra", file: path, found: identify(content).sha256 });
  }
  return faults.sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
}

const hashed = z.object({ id: z.string(), sha256: z.string() });
const setSchema = hashed.extend({ inherits: z.array(hashed) });
const resultSchema = z.object({
  tool: z.object({ name: z.string(), version: z.string() }),
  sources: z.array(z.object({ name: z.string(), bytes: z.number(), sha256: z.string() })),
  ruleSet: setSchema,
  comparison: z.array(z.object({ ruleSet: setSchema })),
});

/** Whether results.json tells of the same program, logs and limit sets as the manifest. */
export function checkConsistency(manifest: Manifest, results: Uint8Array | undefined): Fault[] {
  if (results === undefined) return [];
  const fault = (detail: "unreadable" | "program" | "logs" | "limit sets"): Fault => ({
    kind: "inconsistent",
    file: "results.json",
    detail,
  });
  let result: z.infer<typeof resultSchema>;
  try {
    result = resultSchema.parse(JSON.parse(Buffer.from(results).toString("utf8")));
  } catch {
    return [fault("unreadable")];
  }
  const sets = [result.ruleSet, ...result.comparison.map(({ ruleSet }) => ruleSet)];
  const lines = (all: readonly { id: string; sha256: string }[]) =>
    [...new Set(all.map(({ id, sha256 }) => `${id} ${sha256}`))].sort().join("\n");
  const logs = (all: readonly { name: string; bytes: number; sha256: string }[]) =>
    all.map(({ name, bytes, sha256 }) => `${name} ${bytes} ${sha256}`).join("\n");
  const { tool } = manifest;
  return [
    ...(tool.name === result.tool.name && tool.version === result.tool.version ? [] : [fault("program")]),
    ...(logs(manifest.logs) === logs(result.sources) ? [] : [fault("logs")]),
    ...(lines(manifest.limitSets) === lines(sets.flatMap((set) => [set, ...set.inherits]))
      ? []
      : [fault("limit sets")]),
  ];
}

/** Re-run outputs against the folder: the first differing byte (from 0) of each file that is not the same. */
export function compareOutputs(
  outputs: readonly { readonly path: string; readonly content: string | Uint8Array }[],
  folder: ReadonlyMap<string, Uint8Array>,
): Fault[] {
  const made = new Map(outputs.map(({ path, content }) => [path, Buffer.from(content)]));
  const paths = [...new Set([...made.keys(), ...folder.keys()])]
    .filter((p) => p !== MANIFEST && p !== SIGNATURE)
    .sort();
  return paths.flatMap((file): Fault[] => {
    const [again, there] = [made.get(file), folder.get(file)];
    if (again === undefined) return [{ kind: "rerun", file, detail: "not made" }];
    if (there === undefined) return [{ kind: "rerun", file, detail: "not there" }];
    if (again.equals(there)) return [];
    const shorter = Math.min(again.length, there.length);
    let byte = 0;
    while (byte < shorter && again[byte] === there[byte]) byte++;
    return [{ kind: "rerun", file, byte }];
  });
}

/**
 * Whether the manifest says of logs, options, limit sets and files what the re-run's says; the contents of the
 * files are compared by themselves, and the re-run signs nothing.
 */
export function compareManifests(again: Manifest, there: Manifest): Fault[] {
  const told = ({ files, signer: _, ...rest }: Manifest) => ({
    ...rest,
    files: files.map(({ path }) => path),
  });
  return JSON.stringify(told(again)) === JSON.stringify(told(there))
    ? []
    : [{ kind: "rerun", file: MANIFEST, detail: "other entries" }];
}
