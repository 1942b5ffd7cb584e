import type { Finding } from "../recording/finding.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase, type Quantity } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import { DAY, isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { declaredOn } from "./common/voltage.js";
import { counted, nameOf, percent, span, withUnit } from "./common/wording.js";

/** Runs up to this length never count (common practice, no source). */
const ORDINARY = 6;
/** All but 1 % of a log's runs are ordinary; four times the longest of those is out of the ordinary. */
const ORDINARY_SHARE = 0.99;
const FACTOR = 4;
/** A day without a change in the last digit, where that digit is at most 0.1 % of the value, is no accident. */
const FINE_DIGIT = 0.001;
/** Share of repeated rows from which no verdict is left: EN 50160 allows 5 % of the values to lie outside. */
const BLOCKING_SHARE = 0.05;
/** A phase below this share of declared is dead, which has its own check. */
const DEAD = 0.05;
const FEWEST_ROWS = 100;
const WATCHED: readonly Quantity[] = ["voltage", "thd-voltage"];
const PHASES: readonly Phase[] = [...PHASE_TO_NEUTRAL, ...PHASE_TO_PHASE];

/**
 * The same value to the last digit in many rows on end, as from a recorder that holds its last value or a log with
 * filled gaps. A coarse or calm log repeats itself honestly, so a log is measured by its own habit: a run counts if it
 * is longer than six rows and than four times the 99th percentile of all its runs. With chance p of an equal
 * neighbour that percentile is ln 0.01 / ln p, so the longer run has chance 1e-8 whatever p is. Blocks the phase only
 * where such runs take more than 5 % of the rows: the log then holds less than the 95 % valid values a verdict needs.
 */
export const repeatedValues: Check = {
  id: "repeated-values",
  title: "Runs of equal values: longer than six rows and than four times the log's ordinary runs, or a day and longer",
  source: "common practice, no source",
  run({ recording, setup }) {
    return recording.series.flatMap((series): Finding[] => {
      if (!WATCHED.includes(series.quantity) || !PHASES.includes(series.phase)) return [];
      const floor = series.quantity === "voltage" ? DEAD * (declaredOn(series.phase, setup) as number) : 0;
      const runs = runsOf(series);
      if (runs.rows < FEWEST_ROWS) return [];
      const suspects = suspiciousRuns(runs, series, floor);
      return suspects.runs === 0 ? [] : [finding(series, suspects, runs.rows)];
    });
  },
};

interface Runs {
  /** Rows with a value. */
  readonly rows: number;
  /** How many runs are n rows long, by n. */
  readonly counts: ReadonlyMap<number, number>;
}

interface Suspects {
  runs: number;
  rows: number;
  longest: number;
  from: number;
  value: number;
}

/** Calls `run` for each run of equal values: the row it begins in and how many rows it holds. Missing values end a run. */
function eachRun(values: Float64Array, run: (first: number, length: number) => void): void {
  let first = 0;
  for (let i = 1; i <= values.length; i++) {
    if (i < values.length && values[i] === values[first]) continue;
    if (!Number.isNaN(values[first] as number)) run(first, i - first);
    first = i;
  }
}

function runsOf({ values }: LoggedSeries): Runs {
  const counts = new Map<number, number>();
  let rows = 0;
  eachRun(values, (_, length) => {
    counts.set(length, (counts.get(length) ?? 0) + 1);
    rows += length;
  });
  return { rows, counts };
}

/** The length that all but 1 % of the runs do not exceed. */
function ordinaryRun({ counts }: Runs): number {
  const lengths = [...counts].sort(([a], [b]) => a - b);
  const total = lengths.reduce((sum, [, n]) => sum + n, 0);
  let seen = 0;
  for (const [length, n] of lengths) {
    seen += n;
    if (seen >= ORDINARY_SHARE * total) return length;
  }
  return 0;
}

function suspiciousRuns(runs: Runs, { values, axis, resolution }: LoggedSeries, floor: number): Suspects {
  const threshold = Math.max(ORDINARY, FACTOR * ordinaryRun(runs));
  const suspects: Suspects = { runs: 0, rows: 0, longest: 0, from: Number.NaN, value: Number.NaN };
  eachRun(values, (first, length) => {
    const value = values[first] as number;
    const aDay = length * axis.interval >= DAY && length >= FEWEST_ROWS;
    const fine = resolution !== undefined && resolution <= FINE_DIGIT * value;
    if (value <= floor || !(length > threshold || (aDay && fine))) return;
    suspects.runs++;
    suspects.rows += length;
    if (length > suspects.longest) {
      Object.assign(suspects, { longest: length, from: axis.starts[first], value });
    }
  });
  return suspects;
}

function finding(
  { quantity, phase, axis }: LoggedSeries,
  { runs, rows, longest, from, value }: Suspects,
  of: number,
): Finding {
  const share = rows / of;
  const blocks = share > BLOCKING_SHARE;
  const consequence = blocks
    ? say`so many rows are not measured that the phase is not judged; compare with the recorder and record again`
    : say`these rows count as logged; compare them with the recorder`;
  return {
    id: "repeated-values",
    severity: blocks ? "blocks" : "note",
    sentence: say`The ${nameOf(quantity, phase)} repeats one value to the last digit in ${counted(runs, "run")} of rows (${rows} of ${of} rows, ${percent(share)}), the longest ${longest} rows (${span(longest * axis.interval)}) of ${withUnit(quantity, value)} from ${isoUtc(from)}; the recorder may have held its last value or gaps were filled, unless a regulated supply feeds the point; ${consequence}.`,
    evidence: {
      quantity,
      phase,
      runs,
      rows,
      of,
      share,
      longest,
      longestS: (longest * axis.interval) / SECOND,
      from: isoUtc(from),
      value,
    },
    quantities: [quantity],
    phases: [phase],
  };
}
