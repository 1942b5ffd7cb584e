import type { LogFile, Progress } from "../recording/log-file.js";
import type { Recording } from "../recording/recording.js";
import type { GivenSetup } from "../recording/setup.js";

/** A way of storing a log. `recognises` looks at the first bytes and the name only; `open` throws LogError only. */
export interface LogFormat {
  readonly id: string;
  readonly title: string;
  /** The standard, or "common practice, no source". */
  readonly source: string;
  readonly extensions: readonly string[];
  recognises(head: Uint8Array, name: string): boolean;
  /** Names under which a file that belongs to a named one may lie beside it; one of them is enough. */
  companions?(name: string): readonly string[];
  /** All files of one recording together. `sources` of the result are in the order of `files`, without hash (`sha256: ""`). */
  open(files: readonly LogFile[], setup: GivenSetup, progress?: Progress): Promise<Recording>;
}
