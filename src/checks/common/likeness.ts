import type { Instant } from "../../recording/time.js";

/** How alike two series of values on the same rows are. */
export interface Likeness {
  /** Rows in which both have a value. */
  readonly rows: number;
  readonly equal: number;
  /** Rows in stretches of at least 100 equal rows in which the common value changes at least 20 times. */
  readonly stretchRows: number;
  readonly stretchFrom: Instant;
  readonly correlation: number;
  /** Mean of |a − b| over mean of |a|. */
  readonly difference: number;
  /** Standard deviation of a. */
  readonly deviation: number;
}

const STRETCH = 100;
const CHANGES = 20;

/** One pass over both; rows in which either value is missing (NaN) are left out and do not end a stretch. */
export function likeness(a: Float64Array, b: Float64Array, starts: Float64Array): Likeness {
  let rows = 0;
  let equal = 0;
  let originA = 0;
  let originB = 0;
  let sa = 0;
  let sb = 0;
  let saa = 0;
  let sbb = 0;
  let sab = 0;
  let apart = 0;
  let size = 0;
  let run = 0;
  let changes = 0;
  let last = Number.NaN;
  let runFrom = Number.NaN;
  let stretchRows = 0;
  let stretchFrom = Number.NaN;
  const endRun = () => {
    if (run >= STRETCH && changes >= CHANGES) {
      if (stretchRows === 0) stretchFrom = runFrom;
      stretchRows += run;
    }
    run = 0;
    changes = 0;
  };
  for (let i = 0; i < a.length; i++) {
    const x = a[i] as number;
    const y = b[i] as number;
    if (Number.isNaN(x) || Number.isNaN(y)) continue;
    if (rows === 0) {
      originA = x;
      originB = y;
    }
    rows++;
    // Sums about the first value, so that a small spread about a large voltage keeps its digits.
    const dx = x - originA;
    const dy = y - originB;
    sa += dx;
    sb += dy;
    saa += dx * dx;
    sbb += dy * dy;
    sab += dx * dy;
    apart += Math.abs(x - y);
    size += Math.abs(x);
    if (x === y) {
      equal++;
      if (run === 0) runFrom = starts[i] as number;
      else if (x !== last) changes++;
      run++;
      last = x;
    } else if (run > 0) {
      endRun();
    }
  }
  endRun();
  const varianceA = (saa - (sa * sa) / rows) / rows;
  const varianceB = (sbb - (sb * sb) / rows) / rows;
  return {
    rows,
    equal,
    stretchRows,
    stretchFrom,
    correlation: (sab - (sa * sb) / rows) / rows / Math.sqrt(varianceA * varianceB),
    difference: apart / size,
    deviation: Math.sqrt(Math.max(0, varianceA)),
  };
}
