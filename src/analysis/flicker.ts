import type { IntervalSeries } from "../recording/measurements.js";
import { HOUR, MINUTE } from "../recording/time.js";
import { aggregate, type SourceSeries } from "./aggregation.js";

const PLT_INTERVAL = 2 * HOUR;
const PST_INTERVAL = 10 * MINUTE;

/**
 * Plt from ten-minute Pst: (ΣPst³ / 12)^⅓ over the two-hour blocks of the UTC clock (IEC 61000-4-15, 5.7.3 in Ed 1.1
 * numbering, from memory; formula as printed in public documents). With Pst missing the mean is over those present and
 * the coverage falls below 1, so that the block does not count as valid.
 * @throws RangeError unless Pst is logged every 10 min
 */
export function pltFromPst(pst: SourceSeries): IntervalSeries {
  if (pst.axis.interval !== PST_INTERVAL) throw new RangeError("Pst must be given every 10 min");
  const { min: _min, max: _max, ...plt } = aggregate({ ...pst, quantity: "plt" }, PLT_INTERVAL, "cubic-mean");
  return plt;
}

/**
 * A Plt written in rows shorter than two hours (once per block, held, or sliding): the value of each two-hour block of
 * the UTC clock is the one in the block's last row, where a sliding Plt spans just that block, or the block's only one.
 * Other blocks are missing.
 */
export function pltOfBlocks(plt: SourceSeries): IntervalSeries {
  const { axis } = plt;
  const starts: number[] = [];
  const values: number[] = [];
  const flagged: number[] = [];
  for (let i = 0; i < plt.values.length; ) {
    const start = Math.floor((axis.starts[i] as number) / PLT_INTERVAL) * PLT_INTERVAL;
    const present: number[] = [];
    let atEnd = Number.NaN;
    let anyFlag = 0;
    for (; i < plt.values.length && (axis.starts[i] as number) < start + PLT_INTERVAL; i++) {
      const value = plt.values[i] as number;
      anyFlag |= axis.flagged[i] as number;
      if (!Number.isNaN(value)) present.push(value);
      if ((axis.starts[i] as number) >= start + PLT_INTERVAL - axis.interval) atEnd = value;
    }
    starts.push(start);
    values.push(Number.isNaN(atEnd) && present.length === 1 ? (present[0] as number) : atEnd);
    flagged.push(anyFlag);
  }
  return {
    quantity: "plt",
    phase: plt.phase,
    unit: plt.unit,
    interval: PLT_INTERVAL,
    origin: plt.origin,
    starts: Float64Array.from(starts),
    values: Float64Array.from(values),
    flagged: Uint8Array.from(flagged),
    coverage: Float64Array.from(values, (v) => (Number.isNaN(v) ? 0 : 1)),
    ...(plt.resolution !== undefined && { resolution: plt.resolution }),
  };
}
