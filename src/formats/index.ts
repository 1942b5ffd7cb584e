import { LogError } from "../errors.js";
import type { LogFile, Progress } from "../recording/log-file.js";
import type { Recording } from "../recording/recording.js";
import type { GivenSetup } from "../recording/setup.js";
import { comtrade } from "./comtrade/index.js";
import { csvFormat } from "./csv/csv.js";
import { foreignFile } from "./foreign-file.js";
import type { LogFormat } from "./log-format.js";
import { pqdif } from "./pqdif/index.js";
import { waveformCsv } from "./waveform-csv/index.js";

/** Every format a log can have; the first that recognises a file reads it. */
export const formats: readonly LogFormat[] = [comtrade, pqdif, waveformCsv, csvFormat];

/** Names under which files that belong to a named one may lie beside it, by any format. */
export function companionsOf(name: string): readonly string[] {
  return formats.flatMap((f) => f.companions?.(name) ?? []);
}

const HEAD = 64 * 1024;

/**
 * Opens the files of one recording, in any order; their format is told by their content.
 * @throws LogError if a file is empty, fits no format, or cannot be read, or if the files have different formats.
 * @throws UsageError if the setup does not fit the logs.
 */
export async function openLogs(files: readonly LogFile[], setup: GivenSetup, progress?: Progress): Promise<Recording> {
  const [first] = files;
  if (first === undefined) throw new LogError("no log", undefined, "name at least one file to read");
  const format = await formatOf(first);
  for (const file of files.slice(1)) {
    const other = await formatOf(file);
    if (other !== format) {
      throw new LogError(
        file.name,
        undefined,
        `is ${other.title} while ${first.name} is ${format.title}: assess files of different formats apart`,
      );
    }
  }
  return format.open(files, setup, progress);
}

async function formatOf(file: LogFile): Promise<LogFormat> {
  const head = await file.read(0, HEAD);
  if (head.length === 0) throw new LogError(file.name, undefined, "the file is empty: copy it from the logger again");
  const foreign = foreignFile(head);
  if (foreign !== undefined) throw new LogError(file.name, "byte 0", foreign);
  const format = formats.find((f) => f.recognises(head, file.name));
  if (format !== undefined) return format;
  const known = formats.map((f) => f.title).join(", ");
  throw new LogError(
    file.name,
    "byte 0",
    `is in no form that can be read here (${known}): export the log as one of them`,
  );
}
