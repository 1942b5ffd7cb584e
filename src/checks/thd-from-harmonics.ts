import type { Finding } from "../recording/finding.js";
import type { Quantity } from "../recording/quantity.js";
import type { LoggedSeries, Recording } from "../recording/recording.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import { nearestRank, sortedFinite } from "../signal/order-statistics.js";
import type { Check } from "./check.js";
import { alignedValues, resolutionOf } from "./common/series.js";
import { figure, nameOf, percent } from "./common/wording.js";

const LOWEST = 2;
/** THD of EN 50160 ends at order 40; recorders that go on to 50 may count those orders too. */
const HIGHEST = 40;
/** Groups or single lines of IEC 61000-4-7 make up to this difference (common practice, no source). */
const TOLERANCE = 0.03;
/** Single rows disagree around events; more than these are reported. */
const FEWEST_ROWS = 6;
const SHARE = 0.01;
/** A ratio this near to 100 or 1/100 is a mistaken unit: no choice of orders or groups comes near. */
const UNIT_FACTOR = 1.25;
/** Distortion of a supply in service, %: the median outside is the one in the wrong unit. */
const USUAL = [0.2, 40] as const;

interface Sums {
  /** Root sum of squares of the orders to 40, and of all orders logged. */
  readonly to40: Float64Array;
  readonly all: Float64Array;
  /** What rounding of the written digits can add to or take from it. */
  readonly rounding: Float64Array;
  /** All orders from 2 to 40 are there; else the sum only bounds THD from below. */
  readonly complete: boolean;
}

/**
 * Logged THD of the voltage against the root sum of squares of the logged harmonics 2 to 40, both in % of the
 * fundamental; intervals flagged by the logger are left out. With orders missing the sum must only not exceed THD.
 * A disagreement is noted. Where sum and THD differ by a factor of 100 within 25 % one of them is in the wrong unit, as
 * nothing else explains that: blocks the one whose median no supply has, or both where that cannot be told.
 */
export const thdFromHarmonics: Check = {
  id: "thd-from-harmonics",
  title: "Logged THD against the root sum of squares of the harmonics 2 to 40 (3 % of the value or rounding)",
  source: "EN 50160:2010, 4.2.5: THD = √Σuh² for h = 2…40; the tolerance of 3 % is common practice, no source",
  run({ recording }) {
    return recording.series.flatMap((thd): Finding[] => {
      if (thd.quantity !== "thd-voltage") return [];
      const sums = sumsOf(thd, recording);
      if (sums === undefined) return [];
      const thdMedian = median(thd.values);
      const sumMedian = median(sums.to40);
      if (!(thdMedian > 0) || !(sumMedian > 0)) return [];
      return wrongUnit(thd, thdMedian, sumMedian, sums.complete) ?? disagreement(thd, sums);
    });
  },
};

function median(values: Float64Array): number {
  const sorted = sortedFinite(values);
  return sorted.length === 0 ? Number.NaN : nearestRank(sorted, 0.5);
}

function sumsOf(thd: LoggedSeries, { series }: Recording): Sums | undefined {
  const rows = thd.values.length;
  const to40 = new Float64Array(rows);
  const all = new Float64Array(rows);
  const rounding = new Float64Array(rows);
  let orders = 0;
  for (const harmonic of series) {
    const { quantity, phase, order, unit } = harmonic;
    if (quantity !== "harmonic-voltage" || phase !== thd.phase || order === undefined || order < LOWEST || unit !== "%")
      continue;
    const values = alignedValues(harmonic, thd.axis);
    if (values === undefined) continue;
    if (order <= HIGHEST) orders++;
    const half = resolutionOf(harmonic) / 2;
    for (let i = 0; i < rows; i++) {
      const square = (values[i] as number) ** 2;
      if (order <= HIGHEST) to40[i] = (to40[i] as number) + square;
      all[i] = (all[i] as number) + square;
      rounding[i] = (rounding[i] as number) + half * half;
    }
  }
  if (orders === 0) return undefined;
  // |√Σa² − √Σb²| ≤ √Σ(a − b)²: the triangle inequality bounds what rounding each order can do.
  for (const sums of [to40, all, rounding]) for (let i = 0; i < rows; i++) sums[i] = Math.sqrt(sums[i] as number);
  return { to40, all, rounding, complete: orders === HIGHEST - LOWEST + 1 };
}

/** A sum far below the THD shows a wrong unit only where it holds all orders. */
function wrongUnit({ phase }: LoggedSeries, thd: number, sum: number, complete: boolean): Finding[] | undefined {
  const ratio = sum / thd;
  const near = (factor: number) => ratio > factor / UNIT_FACTOR && ratio < factor * UNIT_FACTOR;
  if (!near(100) && !(complete && near(0.01))) return undefined;
  const unusual = (m: number) => m < USUAL[0] || m > USUAL[1];
  const wrong: Quantity[] =
    unusual(thd) === unusual(sum)
      ? ["thd-voltage", "harmonic-voltage"]
      : [unusual(thd) ? "thd-voltage" : "harmonic-voltage"];
  const which = wrong.length === 2 ? say`one of them` : nameOf(wrong[0] as Quantity);
  return [
    {
      id: "distortion-unit",
      severity: "blocks",
      sentence: say`The median of ${nameOf("thd-voltage", phase)} is ${figure(thd)} % but that of the root sum of the harmonics is ${figure(sum)} %, ${figure(ratio)} times as much; ${which} seems to be logged as a share of one instead of percent or the reverse; until that is settled it is not judged, so state the unit of these columns in the setup.`,
      evidence: { phase, thd, sum, ratio, wrong },
      quantities: wrong,
      phases: [phase],
    },
  ];
}

function disagreement(series: LoggedSeries, sums: Sums): Finding[] {
  const { phase, values, axis } = series;
  const half = resolutionOf(series) / 2;
  let rows = 0;
  let of = 0;
  let worst = 0;
  let row = 0;
  for (let i = 0; i < values.length; i++) {
    const thd = values[i] as number;
    const low = sums.to40[i] as number;
    const high = sums.complete ? (sums.all[i] as number) : Number.POSITIVE_INFINITY;
    if (Number.isNaN(thd) || Number.isNaN(low) || Number.isNaN(high) || axis.flagged[i] === 1) continue;
    of++;
    const off = Math.max(low - thd, thd - high);
    if (off <= Math.max(TOLERANCE * thd, half + (sums.rounding[i] as number) + 1e-9)) continue;
    rows++;
    if (off > worst) [worst, row] = [off, i];
  }
  if (rows < FEWEST_ROWS || rows <= SHARE * of) return [];
  const at = isoUtc(axis.starts[row] as number);
  const thd = values[row] as number;
  const sum = sums.to40[row] as number;
  return [
    {
      id: "thd-from-harmonics",
      severity: "note",
      sentence: say`The logged ${nameOf("thd-voltage", phase)} disagrees with the root sum of its harmonics${sums.complete ? "" : say` (not all orders are logged, so THD may only be higher)`} in ${rows} of ${of} rows (${percent(rows / of)}), most at ${at} with ${figure(thd)} % logged and ${figure(sum)} % from the harmonics; the recorder may refer one to the declared voltage and the other to the fundamental, count other orders, or a column is not what it was taken for; check both columns in the setup before you rely on either.`,
      evidence: { phase, rows, of, share: rows / of, at, thd, sum, complete: sums.complete ? "yes" : "no" },
      quantities: ["thd-voltage", "harmonic-voltage"],
      phases: [phase],
    },
  ];
}
