import { type ExcludedSpan, type Span, unionOf } from "../recording/excluded-span.js";
import type { Finding } from "../recording/finding.js";
import type { Measurements } from "../recording/measurements.js";
import type { GivenSetup, Setup } from "../recording/setup.js";
import { isoUtc } from "../recording/time.js";
import type { Assessment, Week } from "./assessment.js";
import { runningCounts } from "./count.js";
import type { CountedTest } from "./test-window.js";
import type { Test } from "./tests.js";
import { expandedAt, uncertaintyOf } from "./uncertainty.js";
import { judgeWeeks, siteVerdict } from "./weeks.js";

export interface VerdictInput {
  readonly tests: readonly Test[];
  readonly measurements: Measurements;
  readonly findings: readonly Finding[];
  readonly setup: Setup;
  readonly given: GivenSetup;
  readonly exclusions: readonly ExcludedSpan[];
}

export type Verdicts = Pick<
  Assessment,
  "decision" | "uncertainties" | "verdict" | "verdictWithoutExclusions" | "weeks"
> & { readonly exclusions: Omit<Assessment["exclusions"][number], "intervals">[] };

/**
 * The verdict with the exclusions applied and, beside it, the one without; and of each exclusion whether the verdict hangs on it:
 * whether it would be another if this one alone were not made.
 */
export function judgeAll(input: VerdictInput): Verdicts {
  const { tests, given, exclusions } = input;
  const weeks = weeksWithout(input, exclusions);
  const verdict = siteVerdict(weeks);
  const without = (left: readonly ExcludedSpan[]) => siteVerdict(weeksWithout(input, left));
  return {
    decision: { rule: given.decisionRule ?? "simple", origin: given.decisionRule === undefined ? "assumed" : "given" },
    uncertainties: distinct(tests.flatMap((test) => uncertaintyOf(test, given))),
    exclusions: exclusions.map((exclusion) => {
      const { reason, assertedBy, reference, comment } = exclusion.given;
      return {
        from: isoUtc(exclusion.stated.from),
        to: isoUtc(exclusion.stated.to),
        reason,
        assertedBy,
        ...(reference !== undefined && { reference }),
        ...(comment !== undefined && { comment }),
        turnsVerdict: without(exclusions.filter((other) => other !== exclusion)) !== verdict,
      };
    }),
    verdict,
    ...(exclusions.length > 0 && { verdictWithoutExclusions: without([]) }),
    weeks,
  };
}

function weeksWithout(input: VerdictInput, exclusions: readonly Span[]): Week[] {
  const union = unionOf(exclusions);
  const counted = input.tests.map((test) => countedTest(test, union, input));
  return judgeWeeks(counted, input.measurements, input.findings);
}

function countedTest(test: Test, excluded: readonly Span[], { given, setup }: VerdictInput): CountedTest {
  const parts = uncertaintyOf(test, given);
  const declared = setup.declaredVoltage.value;
  const uncertainty = parts.length === 0 ? undefined : (value: number) => expandedAt(parts, declared, value);
  const counts = runningCounts(test, excluded, uncertainty);
  return {
    ...test,
    rule: given.decisionRule ?? "simple",
    counts,
    unexcluded: excluded.length === 0 ? counts : runningCounts(test, [], uncertainty),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}

function distinct<T>(list: readonly T[]): T[] {
  const known = new Map(list.map((entry) => [JSON.stringify(entry), entry]));
  return [...known.values()];
}
