import type { Quantity } from "./quantity.js";
import type { LoggedSeries, Recording } from "./recording.js";

/** Quantities that cannot be below zero: magnitudes and severities. Loggers write such values for "missing". */
const NEVER_NEGATIVE: ReadonlySet<Quantity> = new Set([
  "voltage",
  "current",
  "frequency",
  "thd-voltage",
  "thd-current",
  "harmonic-voltage",
  "harmonic-current",
  "interharmonic-voltage",
  "mains-signalling",
  "pst",
  "plt",
  "negative-sequence-unbalance",
  "zero-sequence-unbalance",
  "apparent-power",
]);

/**
 * The recording with its impossible values left out: a negative magnitude is no value, and counts as missing. The ledger
 * says of each series how many there were, and a check reports them.
 */
export function withoutImpossibleValues(recording: Recording): Recording {
  const impossible: { series: LoggedSeries; count: number; lowest: number }[] = [];
  const series = recording.series.map((s): LoggedSeries => {
    if (!NEVER_NEGATIVE.has(s.quantity)) return s;
    let count = 0;
    let lowest = 0;
    for (const v of s.values) {
      if (!(v < 0)) continue;
      count++;
      lowest = Math.min(lowest, v);
    }
    if (count === 0) return s;
    impossible.push({ series: s, count, lowest });
    return { ...s, values: s.values.map((v) => (v < 0 ? Number.NaN : v)) };
  });
  if (impossible.length === 0) return recording;
  const negatives = impossible.map(({ series: { quantity, phase, order }, count, lowest }) => ({
    quantity,
    phase,
    ...(order !== undefined && { order }),
    count,
    lowest,
  }));
  return { ...recording, series, ledger: { ...recording.ledger, negatives } };
}
