import type { Finding } from "../recording/finding.js";
import type { Measurements } from "../recording/measurements.js";
import { type Instant, isoUtc, MINUTE, WEEK, YEAR } from "../recording/time.js";
import type { Row, Verdict, Week } from "./assessment.js";
import { isWorse, judgeRow, worstSlidingWindow, worstVerdict } from "./rows.js";
import type { CountedTest } from "./test-window.js";

/**
 * All periods that are judged: consecutive weeks of 7 × 24 h from the start of the recording, the rest of it counted
 * against a whole week; then the worst sliding 7-day windows, as far as they show more than the consecutive weeks; then
 * the year, where the recording is that long or already breaks a yearly rule.
 */
export function judgeWeeks(
  counted: readonly CountedTest[],
  measurements: Measurements,
  findings: readonly Finding[],
): Week[] {
  const { first, last } = judgedSpan(measurements);
  const weeks: Week[] = [];
  for (let start = first; start < last; start += WEEK) {
    const rows = counted.map((t) => judgeRow(t, start, start + WEEK, findings));
    weeks.push(week("consecutive", start, start + WEEK, start + WEEK <= last, rows));
  }
  return [
    ...weeks,
    ...slidingWeeks(counted, weeks, first, last, findings),
    ...years(counted, weeks, first, last, findings),
  ];
}

/**
 * The span that weeks are laid over: from the first ten-minute interval that lies wholly in the recording to the end of
 * the last one; where no ten-minute values exist, the recording.
 */
export function judgedSpan(measurements: Measurements): { first: Instant; last: Instant } {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const { interval, starts } of measurements.series) {
    if (interval !== 10 * MINUTE) continue;
    const whole = starts.find((s) => s >= measurements.start);
    if (whole === undefined) continue;
    first = Math.min(first, whole);
    last = Math.max(last, (starts[starts.length - 1] as number) + interval);
  }
  return first < last ? { first, last } : { first: measurements.start, last: measurements.end };
}

function slidingWeeks(
  tests: readonly CountedTest[],
  consecutive: readonly Week[],
  first: Instant,
  last: Instant,
  findings: readonly Finding[],
): Week[] {
  const byStart = new Map<Instant, Row[]>();
  tests.forEach((test, i) => {
    if (test.requirement.period !== "week") return;
    const start = worstSlidingWindow(test, first, last);
    if (start === undefined) return;
    const row = judgeRow(test, start, start + WEEK, findings);
    const shown = consecutive.filter((w) => w.complete).map((w) => w.requirements[i] as Row);
    if (shown.every((r) => isWorse(row, r))) byStart.set(start, [...(byStart.get(start) ?? []), row]);
  });
  return [...byStart]
    .sort(([a], [b]) => a - b)
    .map(([start, rows]) => week("worst-sliding", start, start + WEEK, true, rows));
}

function years(
  tests: readonly CountedTest[],
  weeks: readonly Week[],
  first: Instant,
  last: Instant,
  findings: readonly Finding[],
): Week[] {
  const yearly = tests.filter((t) => t.requirement.period === "year");
  const shownByWeek = (id: string) =>
    weeks.some((w) => w.requirements.some((r) => r.id === id && r.verdict === "does-not-conform"));
  const result: Week[] = [];
  for (let start = first; start < last; start += YEAR) {
    const complete = start + YEAR <= last;
    const rows = yearly
      .map((t) => judgeRow(t, start, complete ? start + YEAR : last, findings))
      .filter((r) => complete || (r.verdict === "does-not-conform" && !shownByWeek(r.id)));
    if (rows.length > 0) result.push(week("year", start, start + YEAR, complete, rows));
  }
  return result;
}

function week(kind: Week["kind"], start: Instant, end: Instant, complete: boolean, rows: Row[]): Week {
  const binding = rows.filter((r) => r.binding);
  const isTouched = rows.some((r) => r.verdictWithoutExclusions !== undefined);
  const coverage = Math.min(1, ...binding.map((r) => (r.n + r.missing === 0 ? 1 : r.n / (r.n + r.missing))));
  return {
    start: isoUtc(start),
    end: isoUtc(end),
    kind,
    complete,
    coverage,
    verdict: worstVerdict(binding),
    ...(isTouched && {
      verdictWithoutExclusions: worstVerdict(
        binding.map((r) => ({ verdict: r.verdictWithoutExclusions ?? r.verdict })),
      ),
    }),
    requirements: rows,
  };
}

/**
 * The verdict of the site: the worst of all periods that count.
 */
export function siteVerdict(weeks: readonly Week[]): Verdict {
  return worstVerdict(periodsThatCount(weeks));
}

/**
 * A rest shorter than a week after whole weeks cannot by itself be decided, so it counts only when it already fails; where
 * there is no whole week, everything counts.
 */
export function periodsThatCount(weeks: readonly Week[]): readonly Week[] {
  const whole = weeks.filter((w) => w.complete);
  if (whole.every((w) => w.kind === "year")) return weeks;
  return [...whole, ...weeks.filter((w) => !w.complete && w.verdict === "does-not-conform")];
}
