import { LogError } from "../../errors.js";
import type { LogFile } from "../../recording/log-file.js";
import { say } from "../../sentence.js";
import { DATA_KINDS, type DataKind } from "./configuration.js";
import type { FileRemark } from "./file-remark.js";
import type { DataSection, RecordFiles } from "./file-set.js";
import { decodeBytewise, decodeText, linesOf } from "./text.js";

const SEPARATOR =
  /^(?:ï»¿)?[ \t]{0,20}-{3}[ \t]{0,20}file[ \t]{0,20}type[ \t]{0,20}:?[ \t]{0,20}(CFG|INF|HDR|DAT)[ \t]{0,20}(ASCII|BINARY32|BINARY|FLOAT32)?[ \t]{0,20}(?::[ \t]{0,20}(\d+))?[ \t]{0,20}-{3}[ \t]{0,20}\r?\n/gim;
const STEP = 64 * 1024;
const LIMIT = 32 * 1024 * 1024;

/** Whether a file begins like a COMTRADE file that holds configuration and data together. */
export function isSingleFile(head: Uint8Array): boolean {
  return decodeBytewise(head.subarray(0, 200)).search(SEPARATOR) === 0;
}

/**
 * Finds configuration and data in a single file (edition 2013, annex on the .cff form). Its sections stand behind
 * lines such as "--- file type: CFG ---"; binary data are counted in bytes, never searched for text.
 * @throws LogError if a section is missing.
 */
export async function openSingleFile(file: LogFile): Promise<RecordFiles> {
  let bytes: Uint8Array = new Uint8Array(0);
  for (let size = STEP; ; size *= 8) {
    bytes = await file.read(0, Math.min(size, LIMIT));
    const sections = [...decodeBytewise(bytes).matchAll(SEPARATOR)];
    const dataAt = sections.findIndex(([, type]) => type?.toUpperCase() === "DAT");
    if (dataAt >= 0) return divide(file, bytes, sections.slice(0, dataAt + 1));
    if (bytes.length >= file.size || size >= LIMIT) break;
  }
  throw new LogError(
    file.name,
    `byte ${bytes.length}`,
    'no line such as "--- file type: DAT BINARY: 702 ---" begins the data up to here; the file is cut off',
  );
}

function divide(file: LogFile, bytes: Uint8Array, sections: readonly RegExpMatchArray[]): RecordFiles {
  const beginOf = (section: RegExpMatchArray) => (section.index ?? 0) + section[0].length;
  const at = sections.findIndex(([, type]) => type?.toUpperCase() === "CFG");
  const [own, next, last] = [sections[at], sections[at + 1], sections.at(-1)];
  if (own === undefined || next === undefined || last === undefined) {
    throw new LogError(file.name, "byte 0", 'the line "--- file type: CFG ---" is missing before the data');
  }
  const begin = beginOf(own);
  const kind = DATA_KINDS.find((known) => known === last[2]?.toUpperCase());
  const configuration = {
    file: file.name,
    lines: linesOf(decodeText(bytes.subarray(begin, next.index))),
    firstLine: decodeBytewise(bytes.subarray(0, begin)).split("\n").length,
    ...(kind !== undefined && { kind }),
  };
  return { configuration, ...dataOf(file, beginOf(last), last[3], kind) };
}

function dataOf(
  file: LogFile,
  offset: number,
  length: string | undefined,
  kind: DataKind | undefined,
): { data: DataSection; remarks: FileRemark[] } {
  const left = Math.max(0, file.size - offset);
  const promised = length === undefined || kind === "ASCII" ? left : Number(length);
  const missing = promised - left;
  return {
    data: { file, offset, size: Math.min(promised, left) },
    remarks:
      missing > 0
        ? [{ file: file.name, text: say`${missing} of the ${promised} bytes of data are missing at its end.` }]
        : [],
  };
}
