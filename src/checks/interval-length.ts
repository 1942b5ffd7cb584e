import type { Finding } from "../recording/finding.js";
import type { Quantity } from "../recording/quantity.js";
import type { TimeAxis } from "../recording/recording.js";
import { HOUR, MINUTE, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { list, nameOf, span } from "./common/wording.js";

const STANDARD = 10 * MINUTE;

/** Quantities logged at more than ten minutes (Plt: two hours), from which the standard's values cannot be made. */
export const intervalLength: Check = {
  id: "interval-length",
  title: "Intervals longer than the standard's: 10 min, for Plt 2 h",
  source: "EN 50160:2010, clause 4 and 5; IEC 61000-4-30, aggregation intervals",
  run({ recording }) {
    const byInterval = new Map<TimeAxis["interval"], Set<Quantity>>();
    for (const { quantity, axis } of recording.series) {
      if (axis.interval <= (quantity === "plt" ? 2 * HOUR : STANDARD)) continue;
      byInterval.set(axis.interval, (byInterval.get(axis.interval) ?? new Set()).add(quantity));
    }
    return [...byInterval].map(([interval, set]): Finding => {
      const quantities = [...set];
      return {
        id: "interval-length",
        severity: "note",
        sentence: say`The log holds ${list(quantities.map((q) => nameOf(q)))} every ${span(interval)}, but the standard counts values of 10 min (Plt: 2 h), and a longer mean hides short excesses; such values are shown and not judged, so set the recorder to 10 min or less and record again.`,
        evidence: { intervalS: interval / SECOND, standardS: STANDARD / SECOND, quantities },
        quantities,
        phases: [],
      };
    });
  },
};
