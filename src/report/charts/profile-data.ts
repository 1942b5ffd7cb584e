import type { Duration, Instant } from "../../recording/time.js";
import type { Text } from "../../sentence.js";
import { phaseName } from "../wording.js";
import { type Columns, runsOf } from "./chart.js";
import type { Subject, SubjectPhase } from "./subject.js";

/** Above so many intervals, neighbours share one point: its line is their mean, its band their extremes. */
const MOST_POINTS = 2100;
/** Intervals from one value to the next beyond which something is missing: those of 10 cycles last a little more or less than 0.2 s. */
const NEXT = 1.5;

export interface ProfileData {
  readonly columns: Columns;
  /** Intervals that share one point. */
  readonly step: number;
  readonly hasExtremes: boolean;
  /** Lowest and highest point of the line or of a value outside. */
  readonly values: readonly [number, number];
  /** Lowest and highest end of the band; of the line where there is no band. */
  readonly extremes: readonly [number, number];
}

/** Points of all phases: line `v`, band `low`…`high`, `out` where a value lies outside; an empty point breaks the line at a gap. */
export function profileData(subject: Subject): ProfileData {
  const step = Math.max(1, Math.ceil((subject.end - subject.start) / subject.interval / MOST_POINTS));
  const origin = gridOrigin(subject);
  const points: Points = { phase: [], at: [], v: [], low: [], high: [], out: [] };
  for (const phase of subject.phases) addPhase(points, phase, subject.interval, origin, step);
  const hasExtremes = points.low.some((value) => value !== null);
  const offset = subject.clock.offsetAt(subject.start);
  return {
    step,
    hasExtremes,
    columns: {
      phase: runsOf(points.phase),
      t: { start: (origin + offset) / 1000, step: (subject.interval * step) / 1000, steps: points.at },
      v: points.v,
      ...(hasExtremes && { low: points.low, high: points.high }),
      out: runsOf(points.out),
    },
    values: ends([points.v, points.out]),
    extremes: ends([points.v, points.low, points.high]),
  };
}

interface Points {
  readonly phase: Text[];
  readonly at: number[];
  readonly v: (number | null)[];
  readonly low: (number | null)[];
  readonly high: (number | null)[];
  readonly out: (number | null)[];
}

/** The point that is gathered from the intervals of one slot; NaN where there is nothing. */
interface Bin {
  count: number;
  sum: number;
  low: number;
  high: number;
  /** One of the values outside: the highest where some are too high, else the first that is too low. */
  out: number;
}

const emptyBin = (): Bin => ({ count: 0, sum: 0, low: Number.NaN, high: Number.NaN, out: Number.NaN });

function addPhase(
  points: Points,
  { phase, series, drawn, above, below }: SubjectPhase,
  interval: Duration,
  origin: Instant,
  step: number,
) {
  const name = phaseName(phase);
  const side = new Int8Array(series.values.length);
  for (const i of above) side[i] = 1;
  for (const i of below) side[i] = -1;
  const short = series.origin === "logged" && step === 1 ? (value: number) => value : nineDigits;
  const known = (value: number) => (Number.isNaN(value) ? null : short(value));
  const add = (at: number, { count, sum, low, high, out }: Bin) => {
    points.phase.push(name);
    points.at.push(at);
    points.v.push(known(sum / count));
    points.low.push(known(low));
    points.high.push(known(high));
    points.out.push(known(out));
  };
  let bin = emptyBin();
  let slot = Number.NaN;
  for (const i of drawn) {
    const place = ((series.starts[i] as number) - origin) / interval;
    const next = step === 1 ? shortPlace(place) : Math.floor(place / step);
    if (next !== slot) {
      if (bin.count > 0) add(slot, bin);
      if (next > slot + NEXT) add(slot + 1, emptyBin());
      bin = emptyBin();
      slot = next;
    }
    const value = series.values[i] as number;
    bin.count++;
    bin.sum += value;
    const inner = step > 1 ? value : Number.NaN;
    bin.low = least(bin.low, least(series.min?.[i] ?? Number.NaN, inner));
    bin.high = -least(-bin.high, least(-(series.max?.[i] ?? Number.NaN), -inner));
    if (side[i] === 1) bin.out = -least(-bin.out, -value);
    else if (side[i] === -1 && Number.isNaN(bin.out)) bin.out = value;
  }
  if (bin.count > 0) add(slot, bin);
}

/** Where intervals are counted from: the first of them, so that those of the clock lie on whole numbers. */
function gridOrigin({ phases, start }: Subject): Instant {
  return Math.min(...phases.map(({ series }) => series.starts[0] ?? start));
}

/** A ten-thousandth of an interval is finer than any screen shows. */
function shortPlace(place: number): number {
  return Number.isInteger(place) ? place : Number(place.toFixed(4));
}

/** The lesser of two; of a number and NaN the number. */
function least(a: number, b: number): number {
  return Number.isNaN(a) || b < a ? b : a;
}

/** Enough to tell a value from its limit as any log would; keeps the page small. */
function nineDigits(value: number): number {
  return Number(value.toPrecision(9));
}

function ends(columns: readonly (readonly (number | null)[])[]): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const column of columns)
    for (const value of column)
      if (value !== null) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
  return [low, high];
}
