import { type ExcludedSpan, overlappedIntervals, overlaps, type Span, unionOf } from "../recording/excluded-span.js";
import type { Finding } from "../recording/finding.js";
import { type IntervalSeries, isValid, type Measurements } from "../recording/measurements.js";
import { QUANTITIES, supplyPhases } from "../recording/quantity.js";
import type { ColumnReading, Recording } from "../recording/recording.js";
import type { GivenSetup, Setup } from "../recording/setup.js";
import { isoUtc, MINUTE } from "../recording/time.js";
import { Numeral, say, strung, type Text } from "../sentence.js";
import { type Assessment, RESULT_SCHEMA_VERSION } from "./assessment.js";
import { besideVerdict } from "./beside-verdict.js";
import { listEvents } from "./event-table.js";
import type { RuleSet } from "./rule-set.js";
import { summarise } from "./summary.js";
import { planTests } from "./tests.js";
import { judgeAll } from "./verdicts.js";

export interface JudgeInput {
  readonly tool: { readonly name: string; readonly version: string };
  readonly ruleSet: RuleSet;
  readonly recording: Recording;
  readonly measurements: Measurements;
  readonly findings: readonly Finding[];
  readonly setup: Setup;
  /** Statements of the user that the result repeats or judges by. */
  readonly given: GivenSetup;
  readonly exclusions: readonly ExcludedSpan[];
}

/** Rule set × measurements × setup → the result document. Pure: same inputs, same bytes. */
export function judge(input: JudgeInput): Assessment {
  const { tool, ruleSet, recording, measurements, findings, setup, given, exclusions } = input;
  const { tests, notAssessed } = planTests(ruleSet, measurements, setup);
  const verdicts = judgeAll({ tests, measurements, findings, setup, given, exclusions });
  const reference = referenceSeries(measurements, setup);
  return {
    schema: RESULT_SCHEMA_VERSION,
    tool,
    sources: [...recording.sources],
    setup: Object.fromEntries(Object.entries(setup).filter(([, stated]) => stated !== undefined)),
    report: { ...given.report },
    instrument: { ...given.instrument },
    recording: {
      kind: recording.kind,
      start: isoUtc(recording.start),
      end: isoUtc(recording.end),
      zone: setup.zone.value,
      ...(recording.cropped !== undefined && {
        cropped: { start: isoUtc(recording.cropped.start), end: isoUtc(recording.cropped.end) },
      }),
      intervals: intervalCounts(recording, reference, exclusions),
      findings: findings.map((f) => ({
        ...f,
        evidence: copy(f.evidence),
        quantities: [...f.quantities],
        phases: [...f.phases],
      })),
      columns: [...recording.ledger.columns].sort(byPlace).map(({ file, position, header, meaning, use, reason }) => ({
        file,
        position,
        header,
        ...(use !== undefined && { takenFor: USES[use] }),
        ...(meaning !== undefined && { takenFor: meaningText(meaning) }),
        reason,
      })),
      remarks: [...recording.ledger.remarks, ...measurements.remarks],
    },
    ruleSet: describe(ruleSet),
    decision: verdicts.decision,
    uncertainties: verdicts.uncertainties,
    exclusions: verdicts.exclusions.map((exclusion, i) => ({
      ...exclusion,
      intervals: reference === undefined ? 0 : excludedIntervals(reference, exclusions.slice(i, i + 1)),
    })),
    verdict: verdicts.verdict,
    ...(verdicts.verdictWithoutExclusions !== undefined && {
      verdictWithoutExclusions: verdicts.verdictWithoutExclusions,
    }),
    notAssessed,
    weeks: verdicts.weeks,
    events: listEvents(measurements.events, ruleSet, exclusions),
    ...besideVerdict(tests, measurements, findings, setup, given, exclusions),
    comparison: [],
    summary: summarise(measurements),
  };
}

const USES = { time: say`time`, flag: say`flag`, events: say`events` } as const;
const STATISTICS = { mean: say`mean`, min: say`lowest value`, max: say`highest value`, samples: say`samples` } as const;

/** "harmonic voltage L1, order 5, mean, %": what a column was taken for. */
function meaningText(meaning: NonNullable<ColumnReading["meaning"]>): Text {
  const { quantity, phase, order, hertz, statistic, writtenUnit } = meaning;
  const { name } = QUANTITIES[quantity];
  return strung(
    [
      phase === "system" ? name : strung([name, phase], " "),
      ...(order === undefined ? [] : [say`order ${order}`]),
      ...(hertz === undefined ? [] : [strung([new Numeral(String(hertz)), "Hz"], " ")]),
      STATISTICS[statistic],
      writtenUnit,
    ],
    ", ",
  );
}

/** By file and position, whatever the order in which the files were named. */
function byPlace(a: ColumnReading, b: ColumnReading): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.position - b.position;
}

function copy(evidence: Finding["evidence"]): Assessment["recording"]["findings"][number]["evidence"] {
  return Object.fromEntries(Object.entries(evidence).map(([k, v]) => [k, typeof v === "object" ? [...v] : v]));
}

/** The supply voltage's ten-minute intervals; without them the series that has the most intervals. */
function referenceSeries({ series }: Measurements, setup: Setup): IntervalSeries | undefined {
  const phases = supplyPhases(setup.connection.value);
  const measured = series.filter((s) => s.starts.length > 0);
  return (
    measured.find((s) => s.quantity === "voltage" && s.interval === 10 * MINUTE && phases.includes(s.phase)) ??
    measured.reduce<IntervalSeries | undefined>((a, b) => (a && a.starts.length >= b.starts.length ? a : b), undefined)
  );
}

/** An interval that overlaps an excluded span is excluded, and neither present nor missing. */
function intervalCounts(
  { ledger }: Recording,
  reference: IntervalSeries | undefined,
  exclusions: readonly Span[],
): Assessment["recording"]["intervals"] {
  const { duplicates: duplicate } = ledger;
  if (reference === undefined) return { expected: 0, present: 0, missing: 0, duplicate, flagged: 0, excluded: 0 };
  const { starts, interval, flagged } = reference;
  const valid = starts.filter((_, i) => isValid(reference, i));
  const expected = Math.max(valid.length, gridLength(reference));
  const excluded = excludedIntervals(reference, exclusions);
  const present = valid.filter((start) => !overlaps(exclusions, start, start + interval)).length;
  return {
    expected,
    present,
    missing: Math.max(0, expected - present - excluded),
    duplicate,
    flagged: flagged.reduce((sum, f) => sum + f, 0),
    excluded,
  };
}

/** Intervals from the first to the last, those that are missing included. */
function gridLength({ starts, interval }: IntervalSeries): number {
  const [first, last] = [starts[0] as number, starts[starts.length - 1] as number];
  return Math.round((last - first) / interval) + 1;
}

function excludedIntervals(series: IntervalSeries, exclusions: readonly Span[]): number {
  const first = series.starts[0] as number;
  return overlappedIntervals(unionOf(exclusions), first, series.interval, gridLength(series));
}

function describe(ruleSet: RuleSet): Assessment["ruleSet"] {
  const [own, ...inherited] = ruleSet.files;
  return {
    id: ruleSet.id,
    title: ruleSet.title,
    standard: ruleSet.standard,
    edition: ruleSet.edition,
    sha256: own?.sha256 ?? "",
    inherits: inherited.map((f) => ({ ...f })),
    notes: [...ruleSet.notes],
    requirements: ruleSet.requirements.map((r) => ({
      id: r.id,
      title: r.title,
      clause: r.clause,
      quantity: r.quantity,
      binding: r.binding,
      source: r.source,
      confirmed: r.confirmed,
      ...(r.note !== undefined && { note: r.note }),
      ...(r.criterion.kind === "event-table" && { table: { ...r.criterion } }),
      ...(r.criterion.kind === "share-within-by-order" && {
        orders: Object.entries(r.criterion.orders).map(([order, o]) => ({
          order: Number(order),
          max: o.max,
          confirmed: o.confirmed ?? r.confirmed,
          source: o.source ?? r.source,
          ...(o.note !== undefined && { note: o.note }),
        })),
      }),
    })),
  };
}
