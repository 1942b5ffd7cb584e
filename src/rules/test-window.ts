import { allowedOutside } from "../decimal.js";
import type { Finding } from "../recording/finding.js";
import type { DecisionRule } from "../recording/setup-evidence.js";
import { type Duration, type Instant, YEAR } from "../recording/time.js";
import { say } from "../sentence.js";
import { countWindow, type RunningCounts, type WindowCounts } from "./count.js";
import { type DecisiveCounts, type Judgement, judgeCounts } from "./decision.js";
import type { Test } from "./tests.js";

/** A test with its running counts, made once and used for every window. */
export interface CountableTest extends Test {
  readonly counts: RunningCounts;
}

/** What is judged of it as well. */
export interface CountedTest extends CountableTest {
  /** The same with nothing excluded; the same object where there are no exclusions. */
  readonly unexcluded: RunningCounts;
  readonly rule: DecisionRule;
  /** Expanded uncertainty of a value; absent where it is not known. */
  readonly uncertainty?: (value: number) => number;
}

export interface WindowOfTest extends DecisiveCounts {
  readonly window: WindowCounts;
  readonly missing: number;
}

/** The counts of [start, end) that decide: with flagged intervals or without them, as the requirement says. */
export function decisive(test: Test, counts: RunningCounts, start: Instant, end: Instant): WindowOfTest {
  const window = countWindow(counts, test.series, start, end);
  const { excluded, guard, expected: remaining } = window;
  const isIncluding = test.requirement.flagged === "include";
  const { n, outside } = isIncluding ? window.all : window.unflagged;
  const expected = isIncluding ? remaining : Math.max(0, remaining - window.flagged);
  const missing = Math.max(0, expected - n);
  return { window, expected, n, outside, excluded, remaining, missing, ...(guard !== undefined && { guard }) };
}

/** The verdict of the counts, of the period and of the findings about the recording, in this order. */
export function judgeWindow(
  test: CountedTest,
  counts: DecisiveCounts,
  start: Instant,
  end: Instant,
  findings: readonly Finding[],
): Judgement {
  return withFinding(test, withPeriod(test, counts, end - start), findings);
}

function withPeriod(test: CountedTest, counts: DecisiveCounts, length: Duration): Judgement {
  const { requirement, rule, share, series } = test;
  const { outside, excluded } = counts;
  const judgement = judgeCounts(rule, share, counts);
  if (!requirement.binding) return { verdict: "for-information", robust: judgement.robust };
  if (requirement.period !== "year" || length >= YEAR || judgement.verdict === "not-assessed") return judgement;
  const remaining = YEAR / series.interval - excluded;
  const allowed = allowedOutside(share, remaining);
  if (outside > allowed) return judgeCounts(rule, share, { ...counts, expected: remaining, remaining });
  return {
    verdict: "for-information",
    robust: false,
    reason: {
      id: "needs-a-year",
      sentence: say`The rule counts over a year, in which ${allowed} intervals may lie outside; this period alone cannot show that it is kept.`,
      values: { allowed, outside },
    },
  };
}

function withFinding(test: Test, judgement: Judgement, findings: readonly Finding[]): Judgement {
  const blocking = findings.find(
    (f) =>
      f.severity === "blocks" &&
      f.quantities.includes(test.requirement.quantity) &&
      (f.phases.length === 0 || f.phases.includes(test.phase)),
  );
  const { verdict } = judgement;
  if (blocking === undefined || verdict === "for-information" || verdict === "not-assessed") return judgement;
  return {
    verdict: "undecided",
    robust: false,
    reason: { id: "recording-unsound", sentence: blocking.sentence, values: { finding: blocking.id } },
  };
}
