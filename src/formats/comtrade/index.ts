import { LogError } from "../../errors.js";
import type { LogFormat } from "../log-format.js";
import { isSingleFile } from "./cff.js";
import { openComtrade } from "./open-comtrade.js";
import { decodeText, linesOf } from "./text.js";

export { companions } from "./file-set.js";
export { type ComtradeWaveforms, openComtrade } from "./open-comtrade.js";

/** Sampled waveforms of transient recorders, protection relays and recorders of the power quality. */
export const comtrade: LogFormat = {
  id: "comtrade",
  title: "COMTRADE",
  source: "IEEE C37.111-1991, -1999, -2013 (IEC 60255-24)",
  extensions: [".cfg", ".dat", ".cff"],
  recognises(head, name) {
    const extension = /\.[a-z]+$/i.exec(name)?.[0].toLowerCase();
    if (isSingleFile(head)) return extension === ".cff" || extension === ".cfg";
    if (extension === ".cfg") {
      const counts = linesOf(decodeText(head))[1] ?? "";
      return /^\s*\d+\s*,\s*\d+\s*A\s*,\s*\d+\s*D/i.test(counts);
    }
    return (
      extension === ".dat" && (head.includes(0) || /^\s*\d+\s*,\s*\d*\s*,[\s\d.,+eE-]*\r?$/m.test(firstLine(head)))
    );
  },
  async open(files, setup, progress) {
    const { sources } = await openComtrade(files, setup, progress);
    throw new LogError(
      files[0]?.name ?? "",
      undefined,
      `it holds sampled waveforms (${sources.length} ${sources.length === 1 ? "series" : "series"}), which this version cannot measure yet`,
    );
  },
};

function firstLine(head: Uint8Array): string {
  return linesOf(decodeText(head))[0] ?? "";
}
