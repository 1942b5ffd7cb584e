import { measure } from "./analysis/index.js";
import type { MeasuringPoint } from "./analysis/waveform/chain.js";
import { runChecks } from "./checks/index.js";
import { sha256OfFile } from "./evidence/sha256.js";
import { openLogs } from "./formats/index.js";
import { crop } from "./recording/crop.js";
import { excludedSpans } from "./recording/excluded-span.js";
import { withoutImpossibleValues } from "./recording/impossible-values.js";
import type { LogFile, Progress } from "./recording/log-file.js";
import type { Measurements } from "./recording/measurements.js";
import type { Recording, SourceFile } from "./recording/recording.js";
import { resolveSetup } from "./recording/resolve-setup.js";
import type { GivenSetup, Setup } from "./recording/setup.js";
import { marksOf } from "./recording/setup-marks.js";
import type { Instant } from "./recording/time.js";
import { voltageLevels } from "./recording/voltage-level.js";
import type { Assessment } from "./rules/assessment.js";
import { type Judged, withComparison } from "./rules/comparison.js";
import { spansAround } from "./rules/complaints.js";
import { type JudgeInput, judge } from "./rules/judge.js";
import type { RuleSet } from "./rules/rule-set.js";
import { wantedIntervals } from "./rules/tests.js";

export interface AssessOptions {
  readonly tool: { readonly name: string; readonly version: string };
  readonly setup: GivenSetup;
  readonly ruleSet: RuleSet;
  /** Whether the user named the rule set; the default is marked as assumed. */
  readonly ruleSetGiven: boolean;
  /** Further sets whose verdicts stand beside that of the first, which alone decides. */
  readonly comparedWith?: readonly RuleSet[];
  /** Only intervals wholly in this span count; asked once the log's time zone is known. */
  readonly span?: (recording: Recording) => Span;
  readonly progress?: Progress;
}

export interface Span {
  readonly from: Instant | undefined;
  readonly to: Instant | undefined;
}

export interface Assessed {
  readonly recording: Recording;
  readonly measurements: Measurements;
  readonly assessment: Assessment;
}

/**
 * The main job, as far as the result:
 *
 *     log files ──open──▶ Recording ──measure──▶ Measurements ──judge──▶ Assessment ──render──▶ (report/, called by cli/)
 *                  │                                │
 *                  └────────────── check ───────────┴─▶ findings ─▶ judge
 *
 * @throws LogError for a log that cannot be read, UsageError for a fact that is missing
 */
export async function assess(files: readonly LogFile[], options: AssessOptions): Promise<Assessed> {
  const { tool, ruleSet, progress, comparedWith = [] } = options;
  const opened = withoutImpossibleValues(await openLogs(files, options.setup, progress));
  const hashed = await withHashes(opened, files);
  const span = options.span?.(hashed);
  const recording = crop(hashed, span?.from, span?.to);
  const exclusions = excludedSpans(options.setup.exclusions ?? [], recording);
  const levels = await voltageLevels(recording);
  const setup = resolveSetup(options.setup, options.ruleSetGiven, recording, levels, ruleSet);
  const wanted = [ruleSet, ...comparedWith].flatMap(wantedIntervals);
  const spans = spansAround(marksOf(options.setup, setup.zone.value));
  const measurements = await measure(recording, measuringPoint(setup), wanted, options.setup.measurement, spans);
  const findings = runChecks({ recording, measurements, setup, instrument: options.setup.instrument });
  const input = { tool, ruleSet, recording, measurements, findings, setup, given: options.setup, exclusions };
  const judged = (of: JudgeInput): Judged => ({
    ruleSet: of.ruleSet,
    declaredVoltage: of.setup.declaredVoltage.value,
    assessment: judge(of),
  });
  const others = comparedWith.map((set) => {
    const itsSetup = resolveSetup(options.setup, true, recording, levels, set);
    // What the recording shows of itself can depend on the declared voltage and the connection.
    const itsFindings = runChecks({ recording, measurements, setup: itsSetup, instrument: options.setup.instrument });
    return judged({ ...input, ruleSet: set, setup: itsSetup, findings: itsFindings });
  });
  return { recording, measurements, assessment: withComparison(judged(input), others) };
}

/** What of the setup the measurement of waveforms needs. */
export function measuringPoint({ connection, declaredVoltage, nominalFrequency }: Setup): MeasuringPoint {
  return {
    connection: connection.value,
    declaredVoltage: declaredVoltage.value,
    nominalFrequency: nominalFrequency.value,
  };
}

/** Sources with their hashes, in an order that does not depend on the order the files were named in. */
async function withHashes(recording: Recording, files: readonly LogFile[]): Promise<Recording> {
  const sources: SourceFile[] = [];
  for (const [i, source] of recording.sources.entries()) {
    sources.push({ ...source, sha256: await sha256OfFile(files[i] as LogFile) });
  }
  const key = (s: SourceFile) => `${s.name} ${s.sha256}`;
  return { ...recording, sources: sources.sort((a, b) => (key(a) < key(b) ? -1 : 1)) };
}
