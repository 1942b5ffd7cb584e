import { LogError } from "../../errors.js";
import { instantOfSample } from "../../recording/waveform.js";
import type { LogFormat } from "../log-format.js";
import { isSingleFile } from "./cff.js";
import { companions } from "./file-set.js";
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
  companions,
  async open(files, setup, progress) {
    const { sources: waveforms, columns, timeBase, remarks } = await openComtrade(files, setup, progress);
    const [first] = waveforms;
    if (first === undefined) {
      const why = columns.map(({ header, reason }) => `"${header}": ${reason}`).join("; ");
      throw new LogError(
        files[0]?.name ?? "",
        undefined,
        `none of its channels is a phase voltage or current (${why}); say what they are in the setup under channels:`,
      );
    }
    return {
      kind: "waveforms",
      sources: files.map(({ name, size }) => ({ name, bytes: size, sha256: "", format: comtrade.id })),
      start: Math.min(...waveforms.map((w) => w.start)),
      end: Math.max(...waveforms.map((w) => instantOfSample(w, w.length))),
      series: [],
      waveforms,
      ledger: {
        columns,
        timeBase,
        remarks,
        duplicates: 0,
        conflicts: [],
        outOfOrder: 0,
        unplaced: 0,
        clockSteps: [],
        clockChanges: [],
      },
    };
  },
};

function firstLine(head: Uint8Array): string {
  return linesOf(decodeText(head))[0] ?? "";
}
