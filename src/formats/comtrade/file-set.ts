import { LogError } from "../../errors.js";
import type { LogFile } from "../../recording/log-file.js";
import { isSingleFile, openSingleFile } from "./cff.js";
import type { ConfigurationText } from "./configuration-lines.js";
import type { FileRemark } from "./file-remark.js";
import { decodeText, linesOf } from "./text.js";

/** The bytes of a file that hold the rows. */
export interface DataSection {
  readonly file: LogFile;
  readonly offset: number;
  readonly size: number;
}

/** One record: a configuration and its data, from a pair of files or from a single one. */
export interface RecordFiles {
  readonly configuration: ConfigurationText;
  readonly data: DataSection;
  readonly remarks: readonly FileRemark[];
}

/** More than a configuration of a hundred thousand channels takes. */
const CONFIGURATION_LIMIT = 32 * 1024 * 1024;

/** Base name and extension in lower case: files of one record share the base name in any letter case. */
function partsOf(name: string): { base: string; extension: string } {
  const dot = name.lastIndexOf(".");
  return dot < 0
    ? { base: name.toLowerCase(), extension: "" }
    : { base: name.slice(0, dot).toLowerCase(), extension: name.slice(dot).toLowerCase() };
}

/**
 * The names under which the file that completes a pair may be found beside a named one: the data for a configuration,
 * the configuration for data. In the letter case of the named file first; one of them is enough. Empty for a file that
 * stands alone (.cff) or belongs to no pair.
 */
export function companions(name: string): string[] {
  const { extension } = partsOf(name);
  const other = extension === ".cfg" ? "dat" : extension === ".dat" ? "cfg" : undefined;
  if (other === undefined) return [];
  const base = name.slice(0, -3);
  const [upper, capital] = [other.toUpperCase(), `${other.charAt(0).toUpperCase()}${other.slice(1)}`];
  const forms = /[A-Z]{3}$/.test(name) ? [upper, other, capital] : [other, upper, capital];
  return forms.map((form) => base + form);
}

/**
 * Puts the named files together to records, in the order in which their configurations were named. Free text (.hdr,
 * .inf) is left aside.
 * @throws LogError if half of a pair is missing, if two files have one name, or if a file is no part of a record.
 */
export async function recordsOf(files: readonly LogFile[]): Promise<RecordFiles[]> {
  const named = new Map<string, LogFile>();
  for (const file of files) {
    const { base, extension } = partsOf(file.name);
    if (![".cfg", ".dat", ".cff", ".hdr", ".inf"].includes(extension)) {
      throw new LogError(file.name, undefined, "it is no COMTRADE file (.cfg with .dat, or .cff); read it by itself");
    }
    if (named.has(base + extension)) {
      throw new LogError(
        file.name,
        undefined,
        "two files of this name were given, so pairs cannot be told apart; rename one pair",
      );
    }
    named.set(base + extension, file);
  }
  const records: RecordFiles[] = [];
  for (const [key, file] of named) {
    const { base, extension } = partsOf(key);
    if (extension === ".cff") records.push(await openSingleFile(file));
    if (extension === ".cfg") records.push(await openPair(file, named.get(`${base}.dat`)));
    if (extension === ".dat" && !named.has(`${base}.cfg`)) throw missing(file, "configuration");
  }
  if (records.length === 0)
    throw new LogError(files[0]?.name ?? "", undefined, "a configuration (.cfg) is needed with it");
  return records;
}

async function openPair(file: LogFile, data: LogFile | undefined): Promise<RecordFiles> {
  if (isSingleFile(await file.read(0, 200))) return openSingleFile(file);
  if (data === undefined) throw missing(file, "data");
  if (file.size > CONFIGURATION_LIMIT) {
    throw new LogError(file.name, `byte ${CONFIGURATION_LIMIT}`, "it is too long for a configuration");
  }
  return {
    configuration: { file: file.name, lines: linesOf(decodeText(await file.read(0, file.size))), firstLine: 1 },
    data: { file: data, offset: 0, size: data.size },
    remarks: [],
  };
}

function missing(file: LogFile, what: string): LogError {
  const [other] = companions(file.name);
  return new LogError(file.name, undefined, `its ${what} ${other} is missing; name both files`);
}
