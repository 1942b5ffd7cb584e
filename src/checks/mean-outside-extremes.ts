import type { Finding } from "../recording/finding.js";
import type { Phase, Quantity } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { resolutionOf, smallestStep } from "./common/series.js";
import { list, nameOf, percent, withUnit } from "./common/wording.js";

/** Share of rows above which the columns cannot be what they are taken for (common practice, no source). */
const BLOCKING_SHARE = 0.01;
/** Fewer rows than this never block, whatever their share. */
const BLOCKING_ROWS = 10;
/** Bound of the rounding allowed for a column whose step is estimated from few rows. */
const LARGEST_ROUNDING = 0.005;
/** A difference of two decimals may exceed one written digit by its binary rounding. */
const BINARY = 1 + 1e-6;
/** Their extremes may be logged by magnitude, so that the mean of a changing sign need not lie between them. */
const SIGNED: readonly Quantity[] = ["active-power", "reactive-power", "power-factor"];

interface Outside {
  rows: number;
  of: number;
  worstBy: number;
  value: number;
  min: number;
  max: number;
  at: number;
}

/**
 * min ≤ mean ≤ max holds for every interval by definition, so a logged mean beyond the written digits outside its own
 * extremes shows that a column is not what it was taken for. That is why more than 1 % of the rows (and at least ten)
 * blocks the quantity on that phase; single rows are reported. All orders of a harmonic count together.
 */
export const meanOutsideExtremes: Check = {
  id: "mean-outside-extremes",
  title: "Means outside the minimum and maximum logged for the same interval",
  source: "identity min ≤ mean ≤ max; the blocking share of 1 % is common practice, no source",
  run({ recording }) {
    const groups = new Map<string, { quantity: Quantity; phase: Phase; outside: Outside }>();
    for (const series of recording.series) {
      const { quantity, phase, min, max } = series;
      if ((min === undefined && max === undefined) || SIGNED.includes(quantity)) continue;
      const key = `${quantity} ${phase}`;
      const group = groups.get(key) ?? { quantity, phase, outside: none() };
      count(series, group.outside);
      groups.set(key, group);
    }
    return [...groups.values()].filter((g) => g.outside.rows > 0).map(finding);
  },
};

function none(): Outside {
  return { rows: 0, of: 0, worstBy: 0, value: Number.NaN, min: Number.NaN, max: Number.NaN, at: Number.NaN };
}

function count(series: LoggedSeries, outside: Outside): void {
  const { values, axis } = series;
  const low = series.min;
  const high = series.max;
  const own = resolutionOf(series);
  const coarsest = Math.max(low ? smallestStep(low) : 0, high ? smallestStep(high) : 0);
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    const min = low === undefined ? Number.NaN : (low[i] as number);
    const max = high === undefined ? Number.NaN : (high[i] as number);
    if (Number.isNaN(value) || (Number.isNaN(min) && Number.isNaN(max))) continue;
    outside.of++;
    const below = min - value;
    const by = below > value - max || Number.isNaN(max) ? below : value - max;
    const rounding = Math.max(own, Math.min(coarsest, LARGEST_ROUNDING * Math.abs(value)));
    if (!(by > rounding * BINARY)) continue;
    outside.rows++;
    if (by > outside.worstBy) Object.assign(outside, { worstBy: by, value, min, max, at: axis.starts[i] });
  }
}

function finding({ quantity, phase, outside }: { quantity: Quantity; phase: Phase; outside: Outside }): Finding {
  const { rows, of, value, min, max, at } = outside;
  const blocks = rows >= BLOCKING_ROWS && rows > BLOCKING_SHARE * of;
  const sides = [
    ...(Number.isNaN(min) ? [] : [say`minimum ${withUnit(quantity, min)}`]),
    ...(Number.isNaN(max) ? [] : [say`maximum ${withUnit(quantity, max)}`]),
  ];
  const advice = blocks
    ? say`the columns of mean, minimum and maximum seem to be mixed up, so name them in the setup (columns: statistic)`
    : say`so few rows may come from a fault in the recorder or from editing, so compare them with the recorder`;
  return {
    id: "mean-outside-extremes",
    severity: blocks ? "blocks" : "note",
    sentence: say`In ${rows} of ${of} rows (${percent(rows / of)}) the mean of ${nameOf(quantity, phase)} lies outside its own extremes, farthest at ${isoUtc(at)} with ${withUnit(quantity, value)} against ${list(sides)}; ${advice}.`,
    evidence: {
      quantity,
      phase,
      rows,
      of,
      share: rows / of,
      at: isoUtc(at),
      value,
      ...(!Number.isNaN(min) && { min }),
      ...(!Number.isNaN(max) && { max }),
    },
    quantities: [quantity],
    phases: [phase],
  };
}
