import { isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { counted, figure } from "./common/wording.js";

const LISTED = 50;

/** Steps of the clock: the distance between two rows is no whole number of intervals. */
export const clockSteps: Check = {
  id: "clock-steps",
  title: "Steps of the clock: rows whose distance is no whole number of intervals",
  source: "IEC 61000-4-30 bounds the clock's uncertainty; that any step is listed is common practice, no source",
  run({ recording }) {
    const steps = recording.ledger.clockSteps;
    const first = steps[0];
    if (first === undefined) return [];
    const largest = steps.reduce((a, b) => (Math.abs(b.by) > Math.abs(a.by) ? b : a));
    return [
      {
        id: "clock-steps",
        severity: "note",
        sentence: say`The clock of the log steps ${counted(steps.length, "time")}, first at ${isoUtc(first.at)}, farthest by ${figure(largest.by / SECOND)} s at ${isoUtc(largest.at)}; a recorder that restarts or whose clock is set does that; the interval at a step is not of full length and all times on one side of it may be off by as much, so compare the clock with a reference before you rely on times.`,
        evidence: {
          steps: steps.length,
          first: isoUtc(first.at),
          largestS: largest.by / SECOND,
          largestAt: isoUtc(largest.at),
          at: steps.slice(0, LISTED).map((s) => `${isoUtc(s.at)} ${s.by / SECOND} s`),
        },
        quantities: [],
        phases: [],
      },
    ];
  },
};
