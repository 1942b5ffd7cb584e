import type { Finding } from "../recording/finding.js";
import type { Measurements } from "../recording/measurements.js";
import type { Recording } from "../recording/recording.js";
import type { Setup } from "../recording/setup.js";
import type { Instrument } from "../recording/setup-evidence.js";

/** What every check sees. */
export interface CheckInput {
  readonly recording: Recording;
  readonly measurements: Measurements;
  readonly setup: Setup;
  /** As stated; what is absent was not. */
  readonly instrument?: Instrument | undefined;
}

/** One check of the recording itself. It reports, it never changes data; no findings where its data are not there. */
export interface Check {
  readonly id: string;
  /** What it looks at and with which threshold, for the list of checks in the report. */
  readonly title: string;
  /** Where the rule or threshold comes from; "common practice, no source" where nobody published it. */
  readonly source: string;
  run(input: CheckInput): readonly Finding[];
}
