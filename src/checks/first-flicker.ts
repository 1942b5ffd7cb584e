import type { Finding } from "../recording/finding.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import { nearestRank, sortedFinite } from "../signal/order-statistics.js";
import type { Check } from "./check.js";
import { figure, nameOf } from "./common/wording.js";

/** Common practice, no source: a first Pst from 1.0 that is three times the median of the next twelve and above each. */
const FROM = 1;
const TIMES = 3;
const NEXT = 12;

/** A first Pst after the start that is out of line, as the filters of a flickermeter take time to settle. Noted only. */
export const firstFlicker: Check = {
  id: "first-flicker",
  title: "First Pst after the start: 1.0 or more, three times the median of the next twelve and above each of them",
  source: "common practice, no source (settling of the filters of IEC 61000-4-15)",
  run({ recording }) {
    return recording.series.flatMap((series): Finding[] => {
      if (series.quantity !== "pst") return [];
      const present: number[] = [];
      for (let i = 0; i < series.values.length && present.length <= NEXT; i++) {
        if (!Number.isNaN(series.values[i] as number)) present.push(i);
      }
      if (present.length <= NEXT) return [];
      const [first, ...rest] = present as [number, ...number[]];
      const value = series.values[first] as number;
      const next = sortedFinite(rest.map((i) => series.values[i] as number));
      const median = nearestRank(next, 0.5);
      if (value < FROM || value < TIMES * median || value <= nearestRank(next, 1)) return [];
      const at = isoUtc(series.axis.starts[first] as number);
      return [
        {
          id: "first-flicker",
          severity: "note",
          sentence: say`The first ${nameOf("pst", series.phase)} is ${figure(value)} at ${at}, the median of the next ${NEXT} only ${figure(median)}; a flickermeter that had not settled reads too high at its start, but switching when the recorder was connected looks the same; it counts as logged, so name it if Plt of the first two hours decides.`,
          evidence: { phase: series.phase, value, at, median, next: NEXT },
          quantities: ["pst", "plt"],
          phases: [series.phase],
        },
      ];
    });
  },
};
