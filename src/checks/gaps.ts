import type { Finding } from "../recording/finding.js";
import type { Phase, Quantity } from "../recording/quantity.js";
import type { LoggedSeries, Recording } from "../recording/recording.js";
import { type Duration, HOUR, type Instant, isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { counted, list, nameOf, percent, span } from "./common/wording.js";

/** How many gaps are listed one by one; the count and the total always cover all. */
const LISTED = 50;
/** Distances looked at to learn how often a series has a value. */
const DISTANCES = 200;

interface Gaps {
  count: number;
  total: Duration;
  longest: Duration;
  longestFrom: Instant;
  readonly spans: string[];
}

/**
 * Time of the recording for which a quantity has no value: rows that are not there and rows without a value.
 * A quantity that comes less often than the rows (Plt every two hours) is measured by its own interval. The first two
 * hours of Plt, which needs twelve Pst, are no gap. Per quantity the phase or order that lacks most time is reported;
 * quantities with the same gaps share one finding. Never blocks: judging counts missing intervals by itself.
 */
export const gaps: Check = {
  id: "gaps",
  title: "Gaps: time without values, per quantity",
  source:
    "EN 50160 counts valid intervals only; that missing time is listed and never filled is common practice, no source",
  run({ recording }) {
    const groups = new Map<
      string,
      { quantities: Quantity[]; phases: Set<Phase>; affected: number; of: number; worst: Gaps }
    >();
    for (const [quantity, all] of byQuantity(recording)) {
      const found = all.map((s) => ({ phase: s.phase, gaps: gapsOf(s, recording) })).filter((f) => f.gaps.count > 0);
      if (found.length === 0) continue;
      const worst = found.reduce((a, b) => (b.gaps.total > a.gaps.total ? b : a)).gaps;
      const key = JSON.stringify(worst);
      const group = groups.get(key) ?? { quantities: [], phases: new Set<Phase>(), affected: 0, of: 0, worst };
      group.quantities.push(quantity);
      for (const { phase } of found) group.phases.add(phase);
      group.affected += found.length;
      group.of += all.length;
      groups.set(key, group);
    }
    return [...groups.values()].map(({ quantities, phases, affected, of, worst }): Finding => {
      const length = recording.end - recording.start;
      const share = worst.total / length;
      const where = affected === of ? "" : say` (${affected} of ${of} series)`;
      const names = list(quantities.map((q) => nameOf(q)));
      return {
        id: "gaps",
        severity: "note",
        sentence: say`The log has ${counted(worst.count, "gap")} in ${names}${where}: ${span(worst.total)} of ${span(length)} without values (${percent(share)}), the longest ${span(worst.longest)} from ${isoUtc(worst.longestFrom)}; the recorder may have been without supply, switched off or read out with parts left out; nothing was filled in, so look for the missing part in the recorder or record again if the verdict is undecided.`,
        evidence: {
          quantities,
          series: affected,
          of,
          count: worst.count,
          totalS: worst.total / SECOND,
          lengthS: length / SECOND,
          share,
          longestS: worst.longest / SECOND,
          longestFrom: isoUtc(worst.longestFrom),
          spans: worst.spans,
        },
        quantities,
        phases: affected === of ? [] : [...phases],
      };
    });
  },
};

function byQuantity({ series }: Recording): Map<Quantity, LoggedSeries[]> {
  const groups = new Map<Quantity, LoggedSeries[]>();
  for (const s of series) {
    const group = groups.get(s.quantity);
    if (group) group.push(s);
    else groups.set(s.quantity, [s]);
  }
  return groups;
}

function gapsOf(series: LoggedSeries, { start, end }: Recording): Gaps {
  const { starts } = series.axis;
  const step = ownInterval(series);
  const edge = series.quantity === "plt" ? Math.max(step, 2 * HOUR) : step;
  const gaps: Gaps = { count: 0, total: 0, longest: 0, longestFrom: start, spans: [] };
  const add = (from: Instant, to: Instant) => {
    gaps.count++;
    gaps.total += to - from;
    if (to - from > gaps.longest) {
      gaps.longest = to - from;
      gaps.longestFrom = from;
    }
    if (gaps.spans.length < LISTED) gaps.spans.push(`${isoUtc(from)}/${isoUtc(to)}`);
  };
  let due = start;
  let before = true;
  for (let i = 0; i < starts.length; i++) {
    if (Number.isNaN(series.values[i] as number)) continue;
    const at = starts[i] as number;
    // Half an interval and less is a step of the clock, which has its own check.
    if (at - due >= (before ? edge : step / 2)) add(due, at);
    due = at + step;
    before = false;
  }
  if (end - due >= edge) add(due, end);
  return gaps;
}

/** The commonest distance between two values of the series, if most are of that length; else the interval of its rows. */
function ownInterval({ axis, values }: LoggedSeries): Duration {
  const distances = new Map<Duration, number>();
  let seen = 0;
  let last = Number.NaN;
  for (let i = 0; i < values.length && seen < DISTANCES; i++) {
    if (Number.isNaN(values[i] as number)) continue;
    const at = axis.starts[i] as number;
    if (!Number.isNaN(last)) {
      distances.set(at - last, (distances.get(at - last) ?? 0) + 1);
      seen++;
    }
    last = at;
  }
  for (const [distance, count] of distances) if (count > seen / 2) return distance;
  return axis.interval;
}
