import { overlaps, type Span, unionOf } from "../../recording/excluded-span.js";
import { type IntervalSeries, isValid, type Measurements } from "../../recording/measurements.js";
import {
  PHASE_TO_NEUTRAL,
  PHASE_TO_PHASE,
  type Phase,
  QUANTITIES,
  type Quantity,
  type Unit,
} from "../../recording/quantity.js";
import { type Duration, HOUR, type Instant, SECOND } from "../../recording/time.js";
import type { Assessment, Row } from "../../rules/assessment.js";
import { instantOf, type LocalClock, localClock } from "../local-time.js";
import { byRequirement, decidingWeek, fullWeek } from "../rows.js";
import { type ChartMark, chartMarks } from "./marks.js";

/** What the charts of one quantity draw: its series per phase, the limits on it, and the values that lie outside. */
export interface Subject {
  readonly id: string;
  readonly quantity: Quantity;
  readonly order: number | undefined;
  /** Carrier frequency of mains signalling. */
  readonly hertz: number | undefined;
  readonly unit: Unit;
  readonly interval: Duration;
  readonly phases: readonly SubjectPhase[];
  /** One row per requirement on the quantity; the first is the one that titles speak of. Empty: nothing limits it. */
  readonly limits: readonly Row[];
  /** Limits on the quantity that hold for longer intervals than these: drawn, but nothing here is counted by them. */
  readonly orientation: readonly Row[];
  readonly clock: LocalClock;
  readonly start: Instant;
  readonly end: Instant;
  /** Spans in which nothing counts. */
  readonly excluded: readonly Span[];
  /** Whether the recording is longer than the period that the tables count. */
  readonly isLonger: boolean;
  /** Complaints and comments within the recording; of a quantity with phases only those on one of them. */
  readonly marks: readonly ChartMark[];
}

export interface SubjectPhase {
  readonly phase: Phase;
  readonly series: IntervalSeries;
  /** Valid intervals; flagged ones only where the requirement counts them. */
  readonly drawn: readonly number[];
  /** Those of them that count: all that no excluded span overlaps. */
  readonly counted: readonly number[];
  /** Those of them above, and below, the first limit. */
  readonly above: readonly number[];
  readonly below: readonly number[];
}

/** Quantities that get pictures, in the order of the report. */
const DRAWN: readonly Quantity[] = [
  "voltage",
  "current",
  "harmonic-voltage",
  "thd-voltage",
  "thd-current",
  "negative-sequence-unbalance",
  "pst",
  "plt",
  "mains-signalling",
  "frequency",
  "active-power",
  "reactive-power",
];

/** Drawn of a recording of waveforms also where nothing of them was judged; the frequency is drawn of every log. */
const ALWAYS_DRAWN: ReadonlySet<Quantity> = new Set([
  "voltage",
  "current",
  "thd-voltage",
  "thd-current",
  "negative-sequence-unbalance",
  "pst",
  "plt",
  "active-power",
  "reactive-power",
]);

/** Fewer values than these make no course where shorter intervals were measured, too. */
const FEWEST = 12;

/**
 * One subject per quantity: at the interval that was judged, of the harmonics the worst order; where hardly a value of
 * that length is valid (a recording of seconds or minutes), at the finest interval measured.
 */
export function subjectsOf(assessment: Assessment, measurements: Measurements): Subject[] {
  const clock = localClock(assessment.recording);
  const excluded = excludedIn(assessment, measurements);
  const week = decidingWeek(assessment);
  const length = week === undefined ? 0 : instantOf(week.end) - instantOf(week.start);
  const isLonger = week !== undefined && measurements.end - measurements.start > length;
  const marks = chartMarks(assessment);
  return DRAWN.flatMap((quantity) => {
    const limits = limitsOn(quantity, assessment);
    const judged = judgedSeries(quantity, limits, assessment, measurements);
    const finest = finestSeries(quantity, assessment, measurements);
    const fewJudged = Math.max(0, ...judged.map(countValid)) < Math.min(FEWEST, Math.max(1, ...finest.map(countValid)));
    const series = fewJudged ? finest : judged;
    const first = series[0];
    if (first === undefined) return [];
    const { order, hertz } = first;
    const kept = fewJudged ? [] : limits;
    return {
      id: order === undefined ? quantity : `${quantity}-${order}`,
      quantity,
      order,
      hertz,
      unit: QUANTITIES[quantity].unit,
      interval: first.interval,
      phases: series.map((s) => subjectPhase(s, kept[0], excluded)),
      limits: kept,
      orientation: fewJudged ? limits.filter((row) => row.order === order) : [],
      clock,
      start: measurements.start,
      end: measurements.end,
      excluded,
      isLonger,
      marks: marks.filter(({ phase }) => phase === undefined || series.some((s) => s.phase === phase)),
    };
  });
}

function judgedSeries(
  quantity: Quantity,
  limits: readonly Row[],
  assessment: Assessment,
  { series }: Measurements,
): IntervalSeries[] {
  const [row] = limits;
  if (row === undefined) return [];
  const interval = Math.round(row.intervalS * SECOND);
  return series.filter(
    (s) =>
      s.quantity === quantity &&
      s.order === row.order &&
      s.hertz === row.hertz &&
      s.interval === interval &&
      isJudged(s.phase, limits, assessment),
  );
}

function finestSeries(
  quantity: Quantity,
  { recording, setup }: Assessment,
  { series }: Measurements,
): IntervalSeries[] {
  if (quantity !== "frequency" && !(recording.kind === "waveforms" && ALWAYS_DRAWN.has(quantity))) return [];
  const valid = series.filter((s) => s.quantity === quantity && s.order === undefined && countValid(s) > 0);
  const other: readonly Phase[] = setup.connection?.value === "delta" ? PHASE_TO_NEUTRAL : PHASE_TO_PHASE;
  const ofConnection = valid.filter(({ phase }) => !other.includes(phase));
  const kept = ofConnection.length > 0 ? ofConnection : valid;
  const finest = Math.min(...kept.map(({ interval }) => interval));
  return kept.filter(({ interval }) => interval === finest);
}

function countValid(series: IntervalSeries): number {
  let count = 0;
  for (let i = 0; i < series.values.length; i++) if (isValid(series, i)) count++;
  return count;
}

/** The worst row of each requirement on a quantity: failed ones first, and of the harmonics one order only, of signalling one carrier. */
function limitsOn(quantity: Quantity, assessment: Assessment): Row[] {
  const week = fullWeek(assessment);
  if (week === undefined) return [];
  const rows = byRequirement(assessment, week)
    .map(({ worst }) => worst)
    .filter((row) => row.quantity === quantity && (row.limit.min !== undefined || row.limit.max !== undefined));
  const failed = rows.filter(({ verdict }) => verdict === "does-not-conform");
  const sorted = [...failed, ...rows.filter((row) => !failed.includes(row))];
  return sorted.filter(({ order, hertz }) => order === sorted[0]?.order && hertz === sorted[0]?.hertz);
}

function isJudged(phase: Phase, limits: readonly Row[], assessment: Assessment): boolean {
  const [first] = limits;
  return assessment.weeks.some(({ requirements }) =>
    requirements.some(
      (row) => row.id === first?.id && row.phase === phase && row.order === first.order && row.hertz === first.hertz,
    ),
  );
}

/** The excluded spans, cut to the recording; one outside the part that was assessed drops out. */
function excludedIn({ exclusions }: Assessment, { start, end }: Measurements): Span[] {
  return unionOf(
    exclusions.map(({ from, to }) => ({ from: Math.max(start, instantOf(from)), to: Math.min(end, instantOf(to)) })),
  );
}

function subjectPhase(series: IntervalSeries, row: Row | undefined, excluded: readonly Span[]): SubjectPhase {
  const withoutFlagged = row !== undefined && row.n !== row.counts.withFlagged.n;
  const drawn: number[] = [];
  const counted: number[] = [];
  const above: number[] = [];
  const below: number[] = [];
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = row?.limit ?? {};
  for (let i = 0; i < series.values.length; i++) {
    if (!isValid(series, i) || (withoutFlagged && series.flagged[i] === 1)) continue;
    drawn.push(i);
    const start = series.starts[i] as number;
    if (overlaps(excluded, start, start + series.interval)) continue;
    counted.push(i);
    const value = series.values[i] as number;
    if (value > max) above.push(i);
    else if (value < min) below.push(i);
  }
  return { phase: series.phase, series, drawn, counted, above, below };
}

export function outsideOf({ above, below }: SubjectPhase): number {
  return above.length + below.length;
}

/** The phase with most values outside; without any, the one whose row is worst. */
export function worstPhase(subject: Subject): SubjectPhase {
  const most = [...subject.phases].sort((a, b) => outsideOf(b) - outsideOf(a))[0] as SubjectPhase;
  if (outsideOf(most) > 0) return most;
  return subject.phases.find(({ phase }) => phase === subject.limits[0]?.phase) ?? most;
}

/** How many of a phase's values outside fall into each local hour of the day. */
export function outsideByHour({ clock }: Subject, phase: SubjectPhase): number[] {
  const hours = new Array<number>(24).fill(0);
  for (const i of [...phase.above, ...phase.below]) {
    const t = phase.series.starts[i] as number;
    const hour = Math.floor((t + clock.offsetAt(t)) / HOUR) % 24;
    hours[hour] = (hours[hour] as number) + 1;
  }
  return hours;
}

/** The shortest run of hours, at most eight, that holds four fifths of the counts: [11, 15] for 11:00 to 15:00. */
export function busiestHours(hours: readonly number[]): readonly [number, number] | undefined {
  const total = hours.reduce((sum, n) => sum + n, 0);
  if (total === 0) return undefined;
  for (let length = 1; length <= 8; length++) {
    let best = { from: 0, count: -1 };
    for (let from = 0; from < 24; from++) {
      let count = 0;
      for (let k = 0; k < length; k++) count += hours[(from + k) % 24] as number;
      if (count > best.count) best = { from, count };
    }
    if (best.count >= 0.8 * total) return [best.from, (best.from + length) % 24];
  }
  return undefined;
}

/** Worst row of every phase and order of the harmonic requirement in the deciding week. */
export function harmonicRows(assessment: Assessment): Row[] {
  const week = fullWeek(assessment);
  return (week?.requirements ?? []).filter(
    ({ quantity, order }) => quantity === "harmonic-voltage" && order !== undefined,
  );
}
