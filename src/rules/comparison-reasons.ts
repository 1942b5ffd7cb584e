import { ratio, times, toNumber } from "../decimal.js";
import { type Duration, durationText, SECOND } from "../recording/time.js";
import { say, type Text } from "../sentence.js";
import type { Reason, Row } from "./assessment.js";
import type { Judged } from "./comparison.js";
import type { RequirementPair } from "./pair-requirements.js";

/** One requirement on one phase by two limit sets; a row is absent where a set did not judge it. */
export interface Compared {
  readonly pair: RequirementPair;
  readonly first: Judged;
  readonly other: Judged;
  readonly a: Row | undefined;
  readonly b: Row | undefined;
}

/** In words why two sets give different verdicts: everything that they have otherwise and that can be the cause. */
export function reasonsOf(compared: Compared): Reason[] {
  const { first, other, a, b } = compared;
  if (a === undefined || b === undefined) return [missingSide(compared)];
  const [mine, theirs] = [first.ruleSet.id, other.ruleSet.id];
  const [flagged, flaggedThere] = [compared.pair.first?.flagged, compared.pair.other?.flagged];
  const found: (Reason | undefined)[] = [
    first.declaredVoltage !== other.declaredVoltage && a.quantity === "voltage"
      ? {
          id: "declared-voltage",
          sentence: say`Declared voltage: ${first.declaredVoltage} V for ${mine}, ${other.declaredVoltage} V for ${theirs}.`,
          values: { first: first.declaredVoltage, other: other.declaredVoltage },
        }
      : undefined,
    a.limit.min !== b.limit.min || a.limit.max !== b.limit.max
      ? {
          id: "limit",
          sentence: say`Limit: ${limitOf(a)} in ${mine}, ${limitOf(b)} in ${theirs}.`,
          values: { ...limitValues("first", a), ...limitValues("other", b) },
        }
      : undefined,
    a.share !== b.share
      ? {
          id: "share",
          sentence: say`Share that must lie within: ${percent(a.share)} % in ${mine}, ${percent(b.share)} % in ${theirs}.`,
          values: { first: a.share, other: b.share },
        }
      : undefined,
    a.intervalS !== b.intervalS
      ? {
          id: "interval",
          sentence: say`Values of ${intervalOf(a)} in ${mine}, of ${intervalOf(b)} in ${theirs}.`,
          values: { first: a.intervalS, other: b.intervalS },
        }
      : undefined,
    a.period !== b.period
      ? {
          id: "period",
          sentence: say`Period that is counted: ${PERIODS[a.period]} in ${mine}, ${PERIODS[b.period]} in ${theirs}.`,
          values: { first: a.period, other: b.period },
        }
      : undefined,
    flagged !== undefined && flaggedThere !== undefined && flagged !== flaggedThere
      ? {
          id: "flagged",
          sentence:
            flagged === "include"
              ? say`Flagged intervals count in ${mine} and are left out in ${theirs}.`
              : say`Flagged intervals are left out in ${mine} and count in ${theirs}.`,
          values: { first: flagged, other: flaggedThere },
        }
      : undefined,
    a.binding !== b.binding
      ? {
          id: "binding",
          sentence: say`For information only in ${a.binding ? theirs : mine}.`,
          values: { first: String(a.binding), other: String(b.binding) },
        }
      : undefined,
    a.reason,
    b.reason,
  ];
  return found.filter((why) => why !== undefined);
}

/** One of the sets does not have the requirement, or could not judge it here. */
function missingSide({ pair, first, other, a }: Compared): Reason {
  const [has, lacks] = a === undefined ? [other, first] : [first, other];
  const counterpart = a === undefined ? pair.first : pair.other;
  if (counterpart === undefined) {
    return {
      id: a === undefined ? "only-in-other" : "only-in-first",
      sentence: say`Only ${has.ruleSet.id} asks for it.`,
      values: {},
    };
  }
  const why = lacks.assessment.notAssessed.find(({ requirement }) => requirement === counterpart.id)?.reason;
  const sentence =
    why === undefined
      ? say`${lacks.ruleSet.id} sets no limit here.`
      : say`Not assessed by ${lacks.ruleSet.id}: ${why.sentence}`;
  return { id: why === undefined ? "no-limit" : "not-assessed", sentence, values: {} };
}

const PERIODS: Readonly<Record<Row["period"], Text>> = { day: say`day`, week: say`week`, year: say`year` };

/** "207 to 253 V", "at most 6 %". */
function limitOf({ limit: { min, max }, unit }: Row): Text {
  const name = unit === "1" ? "" : ` ${unit}`;
  if (min !== undefined && max !== undefined) return say`${min} to ${max}${name}`;
  return min === undefined ? say`at most ${max ?? ""}${name}` : say`at least ${min}${name}`;
}

function limitValues(of: string, { limit: { min, max } }: Row): Record<string, number> {
  return { ...(min !== undefined && { [`${of}Min`]: min }), ...(max !== undefined && { [`${of}Max`]: max }) };
}

function percent(share: number): number {
  return toNumber(times(ratio(share), ratio(100)));
}

function intervalOf({ intervalS }: Row): Text {
  const length: Duration = Math.round(intervalS * SECOND);
  return durationText(length);
}
