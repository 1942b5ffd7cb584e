import { allowedOutside } from "../decimal.js";
import type { Finding } from "../recording/finding.js";
import { isValid } from "../recording/measurements.js";
import { QUANTITIES } from "../recording/quantity.js";
import { DAY, type Instant, isoUtc, SECOND, WEEK, YEAR } from "../recording/time.js";
import type { Reason, Row } from "./assessment.js";
import { countWindow, type Decision, decide, type RunningCounts, tooLittleData, type WindowCounts } from "./count.js";
import type { Test } from "./tests.js";

/** A test with its running counts, made once and used for every window. */
export interface CountedTest extends Test {
  readonly counts: RunningCounts;
}

type Reasoned = Decision & { readonly reason?: Reason };

/** Whether flagged intervals are left out of the count that decides. */
function decisive(test: Test, window: WindowCounts): { n: number; outside: number; expected: number } {
  if (test.requirement.flagged === "include") return { ...window.all, expected: window.expected };
  return { ...window.unflagged, expected: Math.max(0, window.expected - window.flagged) };
}

/** The counts that decide and their verdict in [start, end), before any finding about the recording. */
export function decideWindow(
  test: CountedTest,
  start: Instant,
  end: Instant,
): Decision & { n: number; outside: number; missing: number } {
  const { n, outside, expected } = decisive(test, countWindow(test.counts, test.series, start, end));
  return { ...decide(test.share, expected, n, outside), n, outside, missing: Math.max(0, expected - n) };
}

/**
 * One requirement on one phase in [start, end). A daily requirement is judged day by day, as
 * far as the series goes, and the worst day is the row.
 * A yearly one cannot be met in less than a year: it is for information unless the count already breaks the year.
 * A finding that blocks the quantity makes the row undecided.
 */
export function judgeRow(test: CountedTest, start: Instant, end: Instant, findings: readonly Finding[]): Row {
  if (test.requirement.period === "day" && end - start > DAY) {
    const days: Row[] = [];
    const { starts } = test.counts;
    const recorded = starts[starts.length - 1] as number;
    for (let day = start; day === start || (day <= recorded && day + DAY <= end); day += DAY) {
      days.push(judgeRow(test, day, day + DAY, findings));
    }
    return days.reduce((worst, row) => (isWorse(row, worst) ? row : worst));
  }
  const { requirement, series, share, limit } = test;
  const window = countWindow(test.counts, series, start, end);
  const { n, outside, expected } = decisive(test, window);
  const missing = Math.max(0, expected - n);
  const counted = decide(share, expected, n, outside);
  const reasoned =
    counted.verdict === "undecided" ? { ...counted, reason: tooLittleData(share, expected, n, outside) } : counted;
  const decision = withFinding(test, withPeriod(test, start, end, reasoned, outside), findings);
  const { indices, sorted } = decisiveValues(test, window);
  const rank = n - allowedOutside(share, n);
  return {
    id: requirement.id,
    clause: requirement.clause,
    quantity: requirement.quantity,
    phase: test.phase,
    ...(test.order !== undefined && { order: test.order }),
    ...(test.hertz !== undefined && { hertz: test.hertz }),
    unit: QUANTITIES[requirement.quantity].unit,
    limit,
    intervalS: series.interval / SECOND,
    share,
    period: requirement.period,
    binding: requirement.binding,
    confirmed: test.confirmed,
    origin: series.origin,
    n,
    outside,
    allowed: allowedOutside(share, decision.verdict === "undecided" ? expected : Math.min(n, expected)),
    missing,
    excluded: 0,
    worst: worstOf(test, indices),
    percentile:
      n === 0
        ? {}
        : {
            ...(limit.min !== undefined && { low: sorted[n - rank] as number }),
            ...(limit.max !== undefined && { high: sorted[rank - 1] as number }),
          },
    verdict: decision.verdict,
    ...(decision.reason !== undefined && { reason: decision.reason }),
    robust: decision.robust,
    counts: { withFlagged: window.all, withoutFlagged: window.unflagged },
  };
}

function withPeriod(test: Test, start: Instant, end: Instant, decision: Reasoned, outside: number): Reasoned {
  if (!test.requirement.binding) return { verdict: "for-information", robust: decision.robust };
  if (test.requirement.period !== "year" || end - start >= YEAR) return decision;
  const allowed = allowedOutside(test.share, YEAR / test.series.interval);
  if (outside > allowed) return { verdict: "does-not-conform", robust: true };
  return {
    verdict: "for-information",
    robust: false,
    reason: {
      id: "needs-a-year",
      sentence: `The rule counts over a year, in which ${allowed} intervals may lie outside; this period alone cannot show that it is kept.`,
      values: { allowed, outside },
    },
  };
}

function withFinding(test: Test, decision: Reasoned, findings: readonly Finding[]): Reasoned {
  const blocking = findings.find(
    (f) =>
      f.severity === "blocks" &&
      f.quantities.includes(test.requirement.quantity) &&
      (f.phases.length === 0 || f.phases.includes(test.phase)),
  );
  if (blocking === undefined || decision.verdict === "for-information") return decision;
  return {
    verdict: "undecided",
    robust: false,
    reason: { id: "recording-unsound", sentence: blocking.sentence, values: { finding: blocking.id } },
  };
}

function decisiveValues(test: CountedTest, { from, to }: WindowCounts): { indices: number[]; sorted: Float64Array } {
  const { series, requirement } = test;
  const indices: number[] = [];
  for (let i = from; i < to; i++) {
    if (isValid(series, i) && (requirement.flagged === "include" || series.flagged[i] === 0)) indices.push(i);
  }
  return { indices, sorted: Float64Array.from(indices, (i) => series.values[i] as number).sort() };
}

/** The value furthest beyond a limit, or nearest to one where none lies outside; the first of equals. */
function worstOf({ series, limit }: Test, indices: readonly number[]): Row["worst"] {
  let worst: number | undefined;
  let excess = Number.NEGATIVE_INFINITY;
  for (const i of indices) {
    const value = series.values[i] as number;
    const beyond = Math.max(
      (limit.min ?? Number.NEGATIVE_INFINITY) - value,
      value - (limit.max ?? Number.POSITIVE_INFINITY),
    );
    if (beyond > excess) {
      excess = beyond;
      worst = i;
    }
  }
  return worst === undefined
    ? null
    : { value: series.values[worst] as number, at: isoUtc(series.starts[worst] as number) };
}

const SEVERITY = { "not-assessed": 0, "for-information": 1, conforms: 2, undecided: 3, "does-not-conform": 4 } as const;

export function severity(verdict: Row["verdict"]): number {
  return SEVERITY[verdict];
}

/** Worse verdict, then more intervals outside. */
export function isWorse(a: Pick<Row, "verdict" | "outside">, b: Pick<Row, "verdict" | "outside">): boolean {
  return severity(a.verdict) - severity(b.verdict) > 0 || (a.verdict === b.verdict && a.outside > b.outside);
}

/**
 * Start of the 7-day window inside [first, last) that shows the worst; a window may begin at every interval of the
 * series, also at one that is missing. Undefined where no whole week fits.
 */
export function worstSlidingWindow(test: CountedTest, first: Instant, last: Instant): Instant | undefined {
  const { interval, starts } = test.series;
  const phase = (starts[0] as number) % interval;
  let worst: { start: Instant; verdict: Row["verdict"]; outside: number } | undefined;
  for (let start = Math.ceil((first - phase) / interval) * interval + phase; start + WEEK <= last; start += interval) {
    const found = { start, ...decideWindow(test, start, start + WEEK) };
    if (worst === undefined || isWorse(found, worst)) worst = found;
  }
  return worst?.start;
}
