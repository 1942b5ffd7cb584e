import type { TimeAxis } from "../recording/recording.js";
import { isoUtc, MINUTE, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { figure } from "./common/wording.js";

const TICK = 10 * MINUTE;

/** Ten-minute intervals that do not begin on a full ten minutes of the UTC clock. */
export const tenMinuteTick: Check = {
  id: "ten-minute-tick",
  title: "Ten-minute intervals that do not begin on the ten-minute tick",
  source: "IEC 61000-4-30: a ten-minute interval begins on a ten-minute tick of the clock",
  run({ recording }) {
    const axes = new Set<TimeAxis>(recording.series.map((s) => s.axis));
    let rows = 0;
    let off = 0;
    let first: number | undefined;
    for (const { interval, starts } of axes) {
      if (interval !== TICK) continue;
      rows += starts.length;
      for (const start of starts) {
        if (start % TICK === 0) continue;
        off++;
        if (first === undefined || start < first) first = start;
      }
    }
    if (first === undefined) return [];
    const by = (first % TICK) / SECOND;
    return [
      {
        id: "ten-minute-tick",
        severity: "note",
        sentence: say`${off} of ${rows} ten-minute intervals do not begin on a full ten minutes, the first at ${isoUtc(first)} (${figure(by)} s after the tick); the recorder counts from its own start or its clock is off, or the zone is not a multiple of ten minutes from UTC; values of two recorders then cover different times, so say so when you compare them.`,
        evidence: { off, rows, first: isoUtc(first), offsetS: by },
        quantities: [],
        phases: [],
      },
    ];
  },
};
