import { measure, measureLogged } from "./analysis/index.js";
import { measuringPoint } from "./assess.js";
import { runChecks } from "./checks/index.js";
import { UsageError } from "./errors.js";
import type { Finding } from "./recording/finding.js";
import type { LoggedEvent } from "./recording/logged-event.js";
import { isValid } from "./recording/measurements.js";
import type { ColumnReading, ObservationReading, Recording, TimeBase } from "./recording/recording.js";
import { resolveSetup } from "./recording/resolve-setup.js";
import type { GivenSetup, Setup } from "./recording/setup.js";
import { isoUtc, SECOND, WEEK } from "./recording/time.js";
import { voltageLevels } from "./recording/voltage-level.js";
import type { RuleSet } from "./rules/rule-set.js";
import { planTests, wantedIntervals } from "./rules/tests.js";
import type { Text } from "./sentence.js";

/** What is in a log, how it was understood, and whether it can carry a verdict. */
export interface Inspection {
  readonly files: readonly { readonly name: string; readonly bytes: number; readonly format: string }[];
  /** Sampled waveforms, not values that were logged. */
  readonly sampled: boolean;
  readonly start: string;
  readonly end: string;
  /** Length in weeks of 7 × 24 h. */
  readonly weeks: number;
  readonly timeBase: TimeBase;
  /** The parts that the log consists of, where it says so. */
  readonly observations?: readonly ObservationReading[];
  readonly columns: readonly ColumnReading[];
  /** What the recorder itself listed as events. */
  readonly loggedEvents?: readonly LoggedEvent[];
  readonly series: readonly SeriesSummary[];
  readonly remarks: readonly Text[];
  readonly ruleSet: { readonly id: string; readonly title: string };
  /** The setup as it was given. */
  readonly given: GivenSetup;
  /** Absent where a fact is missing: `question` asks for it. */
  readonly setup?: Setup;
  readonly question?: string;
  readonly findings: readonly Finding[];
  /** Requirements of the limit set that the log holds data for, and the others with the reason. */
  readonly assessable: readonly string[];
  readonly notAssessable: readonly { readonly requirement: string; readonly reason: string }[];
}

export interface SeriesSummary {
  readonly quantity: string;
  readonly phase: string;
  readonly order?: number;
  readonly unit: string;
  readonly intervalS: number;
  readonly origin: "logged" | "computed";
  readonly valid: number;
  readonly min: number;
  readonly max: number;
}

/** Looks at a recording without judging it; never throws for a missing fact but asks for it in the result. */
export async function inspect(
  recording: Recording,
  given: GivenSetup,
  ruleSet: RuleSet,
  ruleSetGiven: boolean,
): Promise<Inspection> {
  const levels = await voltageLevels(recording);
  const { setup, question } = tryResolve(() => resolveSetup(given, ruleSetGiven, recording, levels, ruleSet));
  const wanted = wantedIntervals(ruleSet);
  const measurements =
    setup === undefined
      ? {
          ...measureLogged(recording, wanted),
          start: recording.start,
          end: recording.end,
          events: [],
          eventsSought: false,
        }
      : await measure(recording, measuringPoint(setup), wanted, given.measurement);
  const plan = setup && planTests(ruleSet, measurements, setup);
  return {
    files: recording.sources.map(({ name, bytes, format }) => ({ name, bytes, format })),
    sampled: recording.kind === "waveforms",
    start: isoUtc(recording.start),
    end: isoUtc(recording.end),
    weeks: (recording.end - recording.start) / WEEK,
    timeBase: recording.ledger.timeBase,
    ...(recording.ledger.observations !== undefined && { observations: recording.ledger.observations }),
    columns: recording.ledger.columns,
    ...(recording.events !== undefined && { loggedEvents: recording.events }),
    series: measurements.series.map((s) => {
      const valid = s.values.filter((_, i) => isValid(s, i));
      return {
        quantity: s.quantity,
        phase: s.phase,
        ...(s.order !== undefined && { order: s.order }),
        unit: s.unit,
        intervalS: s.interval / SECOND,
        origin: s.origin,
        valid: valid.length,
        min: valid.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
        max: valid.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
      };
    }),
    remarks: [...recording.ledger.remarks, ...measurements.remarks],
    ruleSet: { id: ruleSet.id, title: ruleSet.title },
    given,
    ...(setup !== undefined && { setup }),
    ...(question !== undefined && { question }),
    findings: setup === undefined ? [] : runChecks({ recording, measurements, setup, instrument: given.instrument }),
    assessable: [...new Set(plan?.tests.map((t) => t.requirement.title))],
    notAssessable: (plan?.notAssessed ?? []).map(({ requirement, reason }) => ({
      requirement: ruleSet.requirements.find((r) => r.id === requirement)?.title ?? requirement,
      reason: String(reason.sentence),
    })),
  };
}

function tryResolve(resolve: () => Setup): { setup?: Setup; question?: string } {
  try {
    return { setup: resolve() };
  } catch (error) {
    if (error instanceof UsageError) return { question: error.message };
    throw error;
  }
}
