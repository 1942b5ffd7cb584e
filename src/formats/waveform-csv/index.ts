import { instantOfSample } from "../../recording/waveform.js";
import type { LogFormat } from "../log-format.js";
import { looksSampled } from "./looks-sampled.js";
import { openSamples } from "./open-samples.js";

/** Tables of samples as text: one row per sampling instant, one column per channel; also compressed with gzip. */
export const waveformCsv: LogFormat = {
  id: "waveform-csv",
  title: "a table of samples (CSV)",
  source: "common practice, no source",
  extensions: [".csv", ".txt", ".tsv", ".gz"],
  recognises: looksSampled,
  async open(files, setup, progress) {
    const { sources: waveforms, ledger } = await openSamples(files, setup, progress);
    return {
      kind: "waveforms",
      sources: files.map(({ name, size }) => ({ name, bytes: size, sha256: "", format: waveformCsv.id })),
      start: Math.min(...waveforms.map((w) => w.start)),
      end: Math.max(...waveforms.map((w) => instantOfSample(w, w.length))),
      series: [],
      waveforms,
      ledger,
    };
  },
};
