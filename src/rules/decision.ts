import { allowedOutside } from "../decimal.js";
import type { DecisionRule } from "../recording/setup-evidence.js";
import { say } from "../sentence.js";
import type { Reason } from "./assessment.js";
import type { Zone } from "./assessment-evidence.js";
import { type Decision, decide, tooLittleData } from "./count.js";

/** What the counts of a period say under a decision rule. */
export interface Judgement extends Decision {
  readonly reason?: Reason;
  /** Of a count that decides, where the uncertainty is known. */
  readonly zone?: Zone;
}

export interface DecisiveCounts {
  /** Intervals that the period would hold were all there; without excluded ones, and without flagged ones where these are left out. */
  readonly expected: number;
  readonly n: number;
  readonly outside: number;
  readonly excluded: number;
  /** Intervals of the period that are not excluded, flagged or not. */
  readonly remaining: number;
  /** Outside the limits moved inwards and outwards by the uncertainty; absent where it is not known. */
  readonly guard?: { readonly narrowed: number; readonly widened: number };
}

/**
 * The verdict of a count under the rule, and its zone. ILAC-G8:09/2019 (4.1, 4.2) sets guard bands of w = U, k = 2, on both sides
 * of a limit for a single result; JCGM 106:2012 gives the reasons. A requirement that counts many results is put
 * into the same four zones by counting again with every limit moved by U, each value against its own limit:
 *
 * - conforms clearly (pass): it conforms also with the limits moved inwards, so that no error within ±U could make it fail;
 * - conforms within the uncertainty (conditional pass): it conforms only with the limits as they are;
 * - fails within the uncertainty (conditional fail): it fails only with the limits as they are;
 * - fails clearly (fail): it fails also with the limits moved outwards.
 *
 * Simple acceptance takes the count with the limits as they are. Guarded acceptance says that the supply
 * conforms, or that it does not, only in the clear zones; in between it leaves the requirement undecided (the standard's
 * non-binary statement). Missing intervals are bounded in every count alike, see `decide`.
 *
 * A period of which exclusions leave less than half is not assessed, whatever the rest shows: it is no longer the week
 * (day, year) that the standard speaks of. Common practice, no source. Only where more lies outside than the whole period
 * allows, it fails.
 */
export function judgeCounts(rule: DecisionRule, share: number, counts: DecisiveCounts): Judgement {
  const { expected, n, outside, excluded, remaining, guard } = counts;
  if (excluded > remaining && outside <= allowedOutside(share, remaining + excluded)) {
    return { verdict: "not-assessed", robust: false, reason: mostlyExcluded(excluded, remaining) };
  }
  const simple = decide(share, expected, n, outside);
  if (simple.verdict === "undecided") return { ...simple, reason: tooLittleData(share, expected, n, outside) };
  if (guard === undefined) {
    return rule === "simple" ? simple : { verdict: "undecided", robust: false, reason: uncertaintyUnknown() };
  }
  const moved = decide(share, expected, n, simple.verdict === "conforms" ? guard.narrowed : guard.widened);
  const isClear = moved.verdict === simple.verdict;
  const zone: Zone =
    simple.verdict === "conforms"
      ? isClear
        ? "conforms-clearly"
        : "conforms-within"
      : isClear
        ? "fails-clearly"
        : "fails-within";
  if (rule === "simple") return { ...simple, zone };
  return isClear
    ? { ...moved, zone }
    : { verdict: "undecided", robust: false, zone, reason: withinUncertainty(zone, counts) };
}

function mostlyExcluded(excluded: number, remaining: number): Reason {
  const all = excluded + remaining;
  return {
    id: "mostly-excluded",
    sentence: say`${excluded} of ${all} intervals overlap an excluded span; what remains is too little of the period to be judged.`,
    values: { excluded, expected: all },
  };
}

function uncertaintyUnknown(): Reason {
  return {
    id: "uncertainty-unknown",
    sentence: say`Guarded acceptance needs the uncertainty of the values, which neither the setup states nor the instrument's class gives.`,
    values: {},
  };
}

function withinUncertainty(zone: Zone, { outside, guard = { narrowed: 0, widened: 0 } }: DecisiveCounts): Reason {
  const { narrowed, widened } = guard;
  const values = { zone, outside, narrowed, widened };
  if (zone === "conforms-within") {
    return {
      id: "within-uncertainty",
      sentence: say`Guarded acceptance: it conforms with the limits as they are (${outside} outside), but not with the limits moved inwards by the uncertainty (${narrowed} outside): a conditional pass.`,
      values,
    };
  }
  return {
    id: "within-uncertainty",
    sentence: say`Guarded acceptance: it fails with the limits as they are (${outside} outside), but not with the limits moved outwards by the uncertainty (${widened} outside): a conditional fail.`,
    values,
  };
}
