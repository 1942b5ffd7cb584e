import { randomBytes } from "node:crypto";
import { mkdir, open, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";

import { LogError, UsageError } from "../errors.js";
import { companionsOf } from "../formats/index.js";
import type { LogFile } from "../recording/log-file.js";

/** The only reader and writer of files. */

const PACKAGE_ROOT = new URL("../../", import.meta.url);
const TOOL_NAME = "mainswitness";

/** Name and version of this build, from its package.json. */
export async function tool(): Promise<{ name: string; version: string }> {
  const { version } = JSON.parse(await readFile(new URL("package.json", PACKAGE_ROOT), "utf8")) as { version: string };
  return { name: TOOL_NAME, version };
}

/**
 * Opens a log for reading in blocks. Its name is that of the file without folder, so that results do not depend on paths.
 * @throws LogError if there is no such file or it may not be read
 */
export async function openLogFile(path: string): Promise<LogFile & { close(): Promise<void> }> {
  const name = basename(path);
  try {
    const handle = await open(path, "r");
    const { size } = await handle.stat().catch(async (error: unknown) => {
      await handle.close();
      throw error;
    });
    return {
      name,
      size,
      async read(offset, length) {
        const buffer = new Uint8Array(Math.min(length, Math.max(0, size - offset)));
        let filled = 0;
        while (filled < buffer.length) {
          const { bytesRead } = await handle
            .read(buffer, filled, buffer.length - filled, offset + filled)
            .catch((error: unknown) =>
              Promise.reject(new LogError(name, undefined, `it cannot be read (${why(error)})`)),
            );
          if (bytesRead === 0) break;
          filled += bytesRead;
        }
        return buffer.subarray(0, filled);
      },
      close: () => handle.close(),
    };
  } catch (error) {
    throw new LogError(path, undefined, `it cannot be opened (${why(error)}); check the name and the rights`);
  }
}

/**
 * Opens all logs of one recording, and the files that belong to one of them and lie beside it (the data of a
 * configuration). None stays open if one cannot be opened.
 */
export async function openLogFiles(paths: readonly string[]): Promise<{ opened: LogFile[]; close(): Promise<void> }> {
  const opened: Awaited<ReturnType<typeof openLogFile>>[] = [];
  const close = async () => {
    for (const file of opened) await file.close();
  };
  try {
    for (const path of await withCompanions(paths)) opened.push(await openLogFile(path));
  } catch (error) {
    await close();
    throw error;
  }
  return { opened, close };
}

async function withCompanions(paths: readonly string[]): Promise<string[]> {
  const all = new Map(paths.map((path) => [resolve(path), path]));
  for (const path of paths) {
    const names = await readdir(dirname(path)).catch((): string[] => []);
    const found = companionsOf(basename(path)).find((name) => names.includes(name));
    if (found === undefined) continue;
    const companion = join(dirname(path), found);
    if (!all.has(resolve(companion))) all.set(resolve(companion), companion);
  }
  return [...all.values()];
}

const KNOWN_EXTENSIONS = /\.(csv|txt|tsv|cfg|dat|cff|pqd|pqdif|yaml|yml)(\.gz)?$|\.gz$/i;

/** reports/<name of the log without the extension of its format> */
export function defaultReportFolder(log: string): string {
  return join("reports", nameOf(log) || "report");
}

/** The name of a log or scenario without its folder and the extensions of its format. */
export function nameOf(path: string): string {
  return basename(path).replace(KNOWN_EXTENSIONS, "");
}

/** @throws UsageError if the file cannot be read */
export async function readText(path: string): Promise<string> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    throw new UsageError(`${path} cannot be read (${why(error)}).`);
  }
}

/** Text of a file that ships with the program, by its path in the package. */
export async function packagedText(path: string): Promise<string> {
  return readFile(new URL(path, PACKAGE_ROOT), "utf8");
}

/**
 * Every file in a folder and the folders in it, by its path with slashes.
 * @throws UsageError if it is no folder, cannot be read, or holds what is no file (a link may lead to another one tomorrow, a
 * pipe never ends)
 */
export async function readFolder(folder: string): Promise<Map<string, Uint8Array>> {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    const inner = entries.filter((e) => !e.isDirectory());
    const odd = inner.find((e) => !e.isFile());
    if (odd !== undefined) {
      const path = join(odd.parentPath, odd.name);
      throw new UsageError(`${path} is a link or a device, not a file; a report folder holds files only.`);
    }
    const paths = inner.map((e) => join(e.parentPath, e.name));
    const content = new Map<string, Uint8Array>();
    for (const path of paths.sort()) {
      content.set(relative(folder, path).split(sep).join("/"), await readFile(path));
    }
    return content;
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`${folder} cannot be read (${why(error, "there is no such folder")}); name a report folder.`);
  }
}

/** Where logs of a report are looked for: beside its folder, one above that, and where the program was started. */
export async function filesNamed(name: string, folder: string): Promise<string[]> {
  const places = [join(folder, ".."), join(folder, "../.."), "."].map((place) => join(resolve(place), name));
  const found: string[] = [];
  for (const path of new Set(places)) {
    if ((await stat(path).catch(() => undefined))?.isFile() === true) found.push(path);
  }
  return found;
}

/** Ids of the limit sets that come with the program, sorted. */
export async function bundledRuleIds(): Promise<string[]> {
  const names = await readdir(new URL("rules/", PACKAGE_ROOT));
  return names
    .filter((n) => n.endsWith(".yaml"))
    .map((n) => basename(n, ".yaml"))
    .sort();
}

/** The text of a limit set that comes with the program, or undefined if there is none of that id. */
export async function readBundledRule(id: string): Promise<{ name: string; text: string } | undefined> {
  if (!(await bundledRuleIds()).includes(id)) return undefined;
  const name = `${id}.yaml`;
  return { name, text: await readFile(new URL(`rules/${name}`, PACKAGE_ROOT), "utf8") };
}

/** Vega for browsers, from the installed package. */
export async function vegaScript(): Promise<string> {
  return readFile(new URL("vega.min.js", import.meta.resolve("vega")), "utf8");
}

/** Noto Sans, regular and bold, from the installed package. */
export function fontFiles(): string[] {
  return ["400Regular/NotoSans_400Regular.ttf", "700Bold/NotoSans_700Bold.ttf"].map((path) =>
    fileURLToPath(import.meta.resolve(`@expo-google-fonts/noto-sans/${path}`)),
  );
}

/** What a file is to hold; in pieces where it is too long for the memory. */
export interface FolderFile {
  readonly path: string;
  readonly content: string | Uint8Array | Iterable<string> | AsyncIterable<string | Uint8Array>;
}

/** Writes a report folder; see `writeFolder`. */
export async function writeReportFolder(folder: string, files: readonly FolderFile[]): Promise<void> {
  await writeFolder(folder, files, REPORT_FOLDER);
}

/** Writes the folder of a made log; see `writeFolder`. */
export async function writeMadeLogFolder(folder: string, files: readonly FolderFile[]): Promise<void> {
  await writeFolder(folder, files, { name: "folder of a made log", mark: "truth.json" });
}

/** A kind of folder, and the file in it by which it is known. */
interface FolderKind {
  readonly name: string;
  readonly mark: "results.json" | "truth.json";
  /** All that such a folder holds; others' files in it keep it from being replaced. */
  readonly holds?: ReadonlySet<string>;
}

const REPORT_FOLDER: FolderKind = {
  name: "report folder",
  mark: "results.json",
  holds: new Set([
    "results.json",
    "report.html",
    "report.pdf",
    "events.csv",
    "requirements.csv",
    "charts",
    "rules",
    "setup.yaml",
    "manifest.json",
    "manifest.json.sig",
  ]),
};

/**
 * Writes a folder whole or not at all: into a temporary folder beside it, then renamed. An existing folder is replaced
 * only if it is empty or a folder of the same kind made by this program.
 * @throws UsageError if something else stands there or the place cannot be written
 */
async function writeFolder(folder: string, files: readonly FolderFile[], kind: FolderKind): Promise<void> {
  const target = resolve(folder);
  await refuseForeignFolder(target, folder, kind);
  const mark = randomBytes(4).toString("hex");
  const temporary = join(dirname(target), `.${basename(target)}.${mark}.new`);
  const replaced = join(dirname(target), `.${basename(target)}.${mark}.old`);
  try {
    for (const { path, content } of files) {
      const place = join(temporary, path);
      await mkdir(dirname(place), { recursive: true });
      await writeFile(place, content);
    }
    const existed = await rename(target, replaced).then(
      () => true,
      () => false,
    );
    try {
      await rename(temporary, target);
    } catch (error) {
      if (existed) await rename(replaced, target);
      throw error;
    }
    await rm(replaced, { recursive: true, force: true });
  } catch (error) {
    await rm(temporary, { recursive: true, force: true });
    if ((error as NodeJS.ErrnoException).code === undefined) throw error;
    throw new UsageError(`The ${kind.name} cannot be written to ${folder} (${why(error)}); name another with --out.`);
  }
}

async function refuseForeignFolder(target: string, folder: string, { name, mark, holds }: FolderKind): Promise<void> {
  const found = await stat(target).catch(() => undefined);
  if (found === undefined) return;
  const names = found.isDirectory() ? await readdir(target) : undefined;
  if (names?.length === 0) return;
  const text = names?.includes(mark) ? await readFile(join(target, mark), "utf8") : "";
  if (!isOwn(text)) {
    throw new UsageError(`${folder} exists and is not a ${name}, so it is left alone; name another with --out.`);
  }
  const foreign = names?.find((entry) => holds !== undefined && !holds.has(entry));
  if (foreign !== undefined) {
    throw new UsageError(
      `${folder} also holds "${foreign}", which a new ${name} would delete; move it, or name another folder with --out.`,
    );
  }
}

function isOwn(text: string): boolean {
  try {
    return (JSON.parse(text) as { tool?: { name?: string } }).tool?.name === TOOL_NAME;
  } catch {
    return false;
  }
}

/** Writes one new text file; an existing one is never overwritten. */
export async function writeNewText(path: string, text: string): Promise<void> {
  try {
    await writeFile(path, text, { flag: "wx" });
  } catch (error) {
    const exists = (error as NodeJS.ErrnoException).code === "EEXIST";
    throw new UsageError(
      `${path} ${exists ? "exists already and is left alone; name another file" : `cannot be written (${why(error, "its folder does not exist")})`}.`,
    );
  }
}

function why(error: unknown, missing = "there is no such file"): string {
  const { code, message } = error as NodeJS.ErrnoException;
  const known: Record<string, string> = {
    ENOENT: missing,
    EACCES: "the rights do not allow it",
    EISDIR: "it is a folder",
    ENOTDIR: "part of the path is not a folder",
    ENOSPC: "the disk is full",
    EROFS: "the disk is read-only",
  };
  return known[code ?? ""] ?? message;
}
