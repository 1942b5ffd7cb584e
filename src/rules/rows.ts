import { allowedOutside } from "../decimal.js";
import { overlaps } from "../recording/excluded-span.js";
import type { Finding } from "../recording/finding.js";
import { isValid } from "../recording/measurements.js";
import { QUANTITIES } from "../recording/quantity.js";
import { DAY, type Instant, isoUtc, SECOND, WEEK } from "../recording/time.js";
import type { Row } from "./assessment.js";
import { beyond, type WindowCounts } from "./count.js";
import { judgeCounts } from "./decision.js";
import { samplingOf } from "./sampling.js";
import { type CountableTest, type CountedTest, decisive, judgeWindow } from "./test-window.js";
import type { Test } from "./tests.js";

/**
 * One requirement on one phase in [start, end). A daily requirement is judged day by day, as
 * far as the series goes, and the worst day is the row.
 * A yearly one cannot be met in less than a year: it is for information unless the count already breaks the year.
 * A finding that blocks the quantity makes the row undecided.
 */
export function judgeRow(test: CountedTest, start: Instant, end: Instant, findings: readonly Finding[]): Row {
  if (test.requirement.period === "day" && end - start > DAY) return worstDay(test, start, end, findings);
  const { requirement, series, share, limit } = test;
  const counted = decisive(test, test.counts, start, end);
  const { window, n, outside, excluded, missing } = counted;
  const { verdict, reason, robust, zone } = judgeWindow(test, counted, start, end, findings);
  const beside = besideExclusions(test, excluded, start, end, findings);
  const { indices, sorted } = decisiveValues(test, window);
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
    allowed: allowedOutside(share, verdict === "undecided" ? counted.expected : Math.min(n, counted.expected)),
    missing,
    excluded,
    worst: worstOf(test, indices),
    percentile: percentiles(sorted, share, limit),
    verdict,
    ...(reason !== undefined && { reason }),
    robust,
    ...(beside !== undefined && { verdictWithoutExclusions: beside.verdict }),
    ...sureness(test, window, zone),
    ...(n > 0 && { sampling: samplingOf(sorted, outside, share, limit) }),
    counts: {
      withFlagged: window.all,
      withoutFlagged: window.unflagged,
      ...(beside !== undefined && { withExcluded: beside.counts, withoutExcluded: { n, outside } }),
      ...(window.guard !== undefined && {
        narrowed: { n, outside: window.guard.narrowed },
        widened: { n, outside: window.guard.widened },
      }),
    },
  };
}

function worstDay(test: CountedTest, start: Instant, end: Instant, findings: readonly Finding[]): Row {
  const days: Row[] = [];
  const { starts } = test.counts;
  const recorded = starts[starts.length - 1] as number;
  for (let day = start; day === start || (day <= recorded && day + DAY <= end); day += DAY) {
    days.push(judgeRow(test, day, day + DAY, findings));
  }
  const worst = days.reduce((found, row) => (isWorse(row, found) ? row : found));
  if (days.every(({ verdictWithoutExclusions }) => verdictWithoutExclusions === undefined)) return worst;
  // Without exclusions another day may be the worst.
  const verdicts = days.map((day) => day.verdictWithoutExclusions ?? day.verdict);
  return { ...worst, verdictWithoutExclusions: verdicts.reduce((a, b) => (severity(b) > severity(a) ? b : a)) };
}

/** Verdict and counts of the same window with nothing excluded; undefined where nothing is. */
function besideExclusions(
  test: CountedTest,
  excluded: number,
  start: Instant,
  end: Instant,
  findings: readonly Finding[],
) {
  if (excluded === 0) return undefined;
  const counted = decisive(test, test.unexcluded, start, end);
  const { verdict } = judgeWindow(test, counted, start, end, findings);
  return { verdict, counts: { n: counted.n, outside: counted.outside } };
}

/** What the uncertainty says of a row: how large it is, how many values it touches, and whether it could turn the verdict. */
function sureness(
  { limit, uncertainty }: CountedTest,
  { guard }: WindowCounts,
  zone: Row["zone"],
): Pick<Row, "uncertainty" | "near" | "zone" | "clear"> {
  if (uncertainty === undefined || guard === undefined) return {};
  const atLimits = [limit.min, limit.max].flatMap((value) => (value === undefined ? [] : [uncertainty(value)]));
  return {
    uncertainty: Math.max(...atLimits),
    near: guard.near,
    ...(zone !== undefined && { zone, clear: zone === "conforms-clearly" || zone === "fails-clearly" }),
  };
}

/** The valid intervals of an index range that decide, and their values in rising order. */
export function decisiveValues(
  { series, requirement, counts }: CountableTest,
  { from, to }: Pick<WindowCounts, "from" | "to">,
): { indices: Uint32Array; sorted: Float64Array } {
  const indices = new Uint32Array(Math.max(0, to - from));
  const sorted = new Float64Array(indices.length);
  const { excluded } = counts;
  let n = 0;
  for (let i = from; i < to; i++) {
    const start = series.starts[i] as number;
    if (!isValid(series, i) || (requirement.flagged === "exclude" && series.flagged[i] === 1)) continue;
    if (excluded.length > 0 && overlaps(excluded, start, start + series.interval)) continue;
    indices[n] = i;
    sorted[n] = series.values[i] as number;
    n++;
  }
  return { indices: indices.subarray(0, n), sorted: sorted.subarray(0, n).sort() };
}

/** The value furthest beyond a limit, or nearest to one where none lies outside; the first of equals. */
function worstOf({ series, limit }: Test, indices: Uint32Array): Row["worst"] {
  let worst: number | undefined;
  let excess = Number.NEGATIVE_INFINITY;
  for (const i of indices) {
    const past = beyond(series.values[i] as number, limit);
    if (past > excess) {
      excess = past;
      worst = i;
    }
  }
  return worst === undefined
    ? null
    : { value: series.values[worst] as number, at: isoUtc(series.starts[worst] as number) };
}

/** Nearest-rank values that all but the allowed number of intervals do not exceed, or do not undercut. */
export function percentiles(sorted: Float64Array, share: number, { min, max }: Test["limit"]): Row["percentile"] {
  const n = sorted.length;
  if (n === 0) return {};
  const rank = n - allowedOutside(share, n);
  return {
    ...(min !== undefined && { low: sorted[n - rank] as number }),
    ...(max !== undefined && { high: sorted[rank - 1] as number }),
  };
}

const SEVERITY = { "not-assessed": 0, "for-information": 1, conforms: 2, undecided: 3, "does-not-conform": 4 } as const;

export function severity(verdict: Row["verdict"]): number {
  return SEVERITY[verdict];
}

/** does-not-conform > undecided > conforms; not-assessed where nothing binding was judged. */
export function worstVerdict(rows: readonly { verdict: Row["verdict"] }[]): Row["verdict"] {
  const judged = rows.filter((r) => severity(r.verdict) >= severity("conforms"));
  return judged.reduce<Row["verdict"]>(
    (worst, r) => (severity(r.verdict) > severity(worst) ? r.verdict : worst),
    "not-assessed",
  );
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
    const counts = decisive(test, test.counts, start, start + WEEK);
    const found = { start, outside: counts.outside, verdict: judgeCounts(test.rule, test.share, counts).verdict };
    if (worst === undefined || isWorse(found, worst)) worst = found;
  }
  return worst?.start;
}
