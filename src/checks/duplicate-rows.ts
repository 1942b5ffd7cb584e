import type { Finding } from "../recording/finding.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { counted } from "./common/wording.js";

const LISTED = 50;

/** Rows that repeat an interval: with the same values they change nothing, with others the interval counts as missing. */
export const duplicateRows: Check = {
  id: "duplicate-rows",
  title: "Rows for an interval that was already logged, with the same or with other values",
  source: "common practice, no source",
  run({ recording: { ledger } }) {
    const found: Finding[] = [];
    const { duplicates, conflicts } = ledger;
    if (duplicates > 0) {
      found.push({
        id: "duplicate-rows",
        severity: "none",
        sentence:
          duplicates === 1
            ? say`1 row repeats an interval already logged, with the same values; overlapping read-outs do that, and each interval was counted once.`
            : say`${duplicates} rows repeat intervals already logged, with the same values; overlapping read-outs do that, and each interval was counted once.`,
        evidence: { duplicates },
        quantities: [],
        phases: [],
      });
    }
    const first = conflicts[0];
    if (first !== undefined) {
      found.push({
        id: "conflicting-rows",
        severity: "note",
        sentence: say`For ${counted(conflicts.length, "interval")}, the first at ${isoUtc(first)}, the log holds rows with different values; the clock may have been set back, an hour of a clock change repeated, or files of two recorders mixed; the disagreeing values count as missing, so find out which rows are right and leave the others out.`,
        evidence: { conflicts: conflicts.length, first: isoUtc(first), at: conflicts.slice(0, LISTED).map(isoUtc) },
        quantities: [],
        phases: [],
      });
    }
    return found;
  },
};
