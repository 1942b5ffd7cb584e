import { LogError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import type { Recording } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { spanOf } from "../../recording/snippets.js";
import type { LogFormat } from "../log-format.js";
import { guidText } from "./guid.js";
import { SIGNATURE } from "./identifiers.js";
import { mapRecording } from "./map-recording.js";
import type { PqdifFile } from "./model.js";
import { openPqdif } from "./read-file.js";

/** Logs, waveforms and events of recorders of the power quality, in one file or several. */
export const pqdif: LogFormat = {
  id: "pqdif",
  title: "PQDIF",
  source: "IEEE 1159.3",
  extensions: [".pqd", ".pqdif"],
  recognises: (head) => head.length >= 16 && guidText(head, 0) === SIGNATURE,
  open,
};

async function open(files: readonly LogFile[], setup: GivenSetup, progress?: Progress): Promise<Recording> {
  const read: PqdifFile[] = [];
  for (const file of files) read.push(await openPqdif(file, progress));
  const mapped = await mapRecording(read, setup, (done, of) => progress?.("reading observations", done / of));
  const { series, waveforms, events, ledger } = mapped;
  if (series.length === 0 && waveforms.length === 0) {
    const reasons = ledger.columns.slice(0, SHOWN).map(({ header, reason }) => `"${header}": ${reason}`);
    const others = ledger.columns.length > SHOWN ? `; and ${ledger.columns.length - SHOWN} more` : "";
    throw new LogError(
      files.map(({ name }) => name).join(", "),
      undefined,
      ledger.columns.length === 0
        ? "its observations hold no series of values"
        : `none of its channels is a log of intervals or a waveform that is used (${reasons.join("; ")}${others}); say what they are in the setup under columns: or channels:`,
    );
  }
  return {
    kind: series.length > 0 ? "logged-series" : "waveforms",
    sources: files.map(({ name, size }) => ({ name, bytes: size, sha256: "", format: pqdif.id })),
    ...spanOf(series, waveforms),
    series,
    waveforms,
    ...(events.length > 0 && { events }),
    ledger,
  };
}

/** Channels that a message names. */
const SHOWN = 4;
