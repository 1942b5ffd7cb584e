import { type Columns, runsOf } from "./chart.js";
import { phaseName } from "./style.js";
import type { Subject, SubjectPhase } from "./subject.js";

/** Above so many intervals, neighbours share one point: its line is their mean, its band their extremes. */
const MOST_POINTS = 2100;

export interface ProfileData {
  readonly columns: Columns;
  /** Intervals that share one point. */
  readonly step: number;
  readonly hasExtremes: boolean;
  /** Lowest and highest value drawn. */
  readonly low: number;
  readonly high: number;
}

/** Points of all phases: line `v`, band `low`…`high`, `out` where a value lies outside; an empty point breaks the line at a gap. */
export function profileData(subject: Subject): ProfileData {
  const step = Math.max(1, Math.ceil((subject.end - subject.start) / subject.interval / MOST_POINTS));
  const points: Points = { phase: [], at: [], v: [], low: [], high: [], out: [] };
  for (const phase of subject.phases) addPhase(points, phase, subject, step);
  const hasExtremes = points.low.some((value) => value !== null);
  const offset = subject.clock.offset(subject.start);
  return {
    step,
    hasExtremes,
    columns: {
      phase: runsOf(points.phase),
      t: { start: (subject.start + offset) / 1000, step: (subject.interval * step) / 1000, steps: points.at },
      v: points.v,
      ...(hasExtremes && { low: points.low, high: points.high }),
      out: runsOf(points.out),
    },
    low: extreme(points, Math.min, Number.POSITIVE_INFINITY),
    high: extreme(points, Math.max, Number.NEGATIVE_INFINITY),
  };
}

interface Points {
  readonly phase: string[];
  readonly at: number[];
  readonly v: (number | null)[];
  readonly low: (number | null)[];
  readonly high: (number | null)[];
  readonly out: (number | null)[];
}

function addPhase(
  points: Points,
  { phase, series, counted, above, below }: SubjectPhase,
  subject: Subject,
  step: number,
) {
  const name = phaseName(phase);
  const isOut = new Set([...above, ...below]);
  const slotOf = (i: number) => {
    const place = ((series.starts[i] as number) - subject.start) / subject.interval;
    return step === 1 ? place : Math.floor(place / step);
  };
  const add = (at: number, v: number | null, low: number | null, high: number | null, out: number | null) => {
    points.phase.push(name);
    points.at.push(at);
    points.v.push(v);
    points.low.push(low);
    points.high.push(high);
    points.out.push(out);
  };
  let previous: number | undefined;
  for (let k = 0; k < counted.length; ) {
    const slot = slotOf(counted[k] as number);
    if (previous !== undefined && slot > previous + 1) add(previous + 1, null, null, null, null);
    const bin: number[] = [];
    while (k < counted.length && slotOf(counted[k] as number) === slot) bin.push(counted[k++] as number);
    const values = bin.map((i) => series.values[i] as number);
    const lows = extremesOf(bin, series.min, step > 1 ? values : []);
    const highs = extremesOf(bin, series.max, step > 1 ? values : []);
    const out = bin.filter((i) => isOut.has(i)).map((i) => series.values[i] as number);
    add(
      slot,
      short(values.reduce((sum, value) => sum + value, 0) / values.length),
      lows.length === 0 ? null : Math.min(...lows),
      highs.length === 0 ? null : Math.max(...highs),
      out.length === 0 ? null : (out[0] as number),
    );
    previous = slot;
  }
}

function extremesOf(bin: readonly number[], column: Float64Array | undefined, values: readonly number[]): number[] {
  const known = column === undefined ? [] : bin.map((i) => column[i] as number).filter((value) => !Number.isNaN(value));
  return [...known, ...values].map(short);
}

/** Nine significant digits tell a value from its limit as any log would and keep the page small. */
function short(value: number): number {
  return Number(value.toPrecision(9));
}

function extreme(points: Points, pick: (a: number, b: number) => number, start: number): number {
  let found = start;
  for (const column of [points.v, points.low, points.high])
    for (const value of column) if (value !== null) found = pick(found, value);
  return found;
}
