import { SECOND } from "../recording/time.js";
import type { Assessment } from "../rules/assessment.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { exactLocalTime, instantOf, type LocalClock, localTime } from "./local-time.js";
import { formatAgainstLimit } from "./numbers.js";
import { joined, lengthText, limitValue, withUnit } from "./wording.js";
import { intervalText } from "./wording-interval.js";

/** The mean over any ten minutes beside the fixed intervals. */

type Sliding = NonNullable<Assessment["sliding"]>;
type OfPhase = Sliding["phases"][number];
type Bound = Sliding["bounds"][number];

export const SLIDING_WORDS = {
  heading: say`Any ten minutes beside the fixed ones`,
  note: say`Generators in low-voltage networks switch off when the mean over the last ten minutes, taken anew every few seconds, passes 110 % of the declared voltage (EN 50549-1, from memory). EN 50160 counts fixed intervals of the clock. So a plant can switch off at a voltage that no fixed value shows; no part of the verdict.`,
  passings: say`Each time above the limit`,
  yes: say`yes`,
  no: say`no`,
} as const;

export const SLIDING_COLUMNS = {
  phase: say`Phase`,
  interval: say`Moves on by`,
  lowest: say`Lowest`,
  highest: say`Highest`,
  when: say`Ten minutes to`,
  passed: say`Times above`,
  longest: say`Longest`,
  unseen: say`Not in fixed`,
} as const;

export const PASSING_COLUMNS = {
  phase: say`Phase`,
  start: say`Begins`,
  duration: say`Lasts`,
  peak: say`Highest`,
  inFixed: say`A fixed value above`,
} as const;

/** One sentence for each phase. */
export function slidingTexts({ phases, bounds, untold }: Sliding, clock: LocalClock): Sentence[] {
  return [
    ...phases.map(phaseText),
    ...bounds.map((bound) => boundText(bound, clock)),
    ...(untold.length === 0
      ? []
      : [
          say`${joined(untold)}: the log holds neither shorter intervals than ten minutes nor extremes inside them, so it cannot be told how high the mean over any other ten minutes was.`,
        ]),
  ];
}

function phaseText({ phase, limit, highest, passed, unseen }: OfPhase): Sentence {
  const [top, most] = [limitValue(limit, "V"), volts(highest.value, limit)];
  if (passed.length === 0) return say`${phase}: the mean over any ten minutes never passed ${top}; it reached ${most}.`;
  const times =
    passed.length === 1
      ? say`${phase}: the mean over any ten minutes passed ${top} once and reached ${most}`
      : say`${phase}: the mean over any ten minutes passed ${top} ${passed.length} times and reached ${most}`;
  if (unseen === 0) return say`${times}; a fixed value shows it each time.`;
  return unseen === 1
    ? say`${times}; one of these times no fixed value shows.`
    : say`${times}; ${unseen} of these times no fixed value shows.`;
}

function boundText({ phase, limit, highest, possible }: Bound, clock: LocalClock): Sentence {
  const [top, most] = [limitValue(limit, "V"), volts(highest.value, limit)];
  if (highest.value <= limit)
    return say`${phase}: by the extremes inside the fixed intervals the mean over any ten minutes was at most ${most}, so it cannot have passed ${top}.`;
  const when = localTime(clock, instantOf(highest.at));
  const reach = say`${phase}: by the extremes inside the fixed intervals the mean over any ten minutes was at most ${most} (around ${when})`;
  if (possible === 0) return say`${reach}; beyond what the fixed values show it cannot have passed ${top}.`;
  return possible === 1
    ? say`${reach}; once it can have passed ${top} between two fixed values that did not.`
    : say`${reach}; ${possible} times it can have passed ${top} between two fixed values that did not.`;
}

export function volts(value: number, limit: number): Text {
  return withUnit(formatAgainstLimit(value, limit, 1), "V");
}

/** "1 s", "10/12 cycles (0.2 s)". */
export function stepOf({ intervalS }: OfPhase): Text {
  return intervalText(Math.round(intervalS * SECOND));
}

/** The longest time above the limit; a dash where there is none. */
export function longestText({ passed }: OfPhase): Text {
  const [longest] = [...passed].sort((a, b) => b.durationS - a.durationS);
  return longest === undefined ? "–" : durationOf(longest);
}

/** To the second where the data are no finer. */
export function startText({ start }: OfPhase["passed"][number], clock: LocalClock): Text {
  const at = instantOf(start);
  return at % SECOND === 0 ? localTime(clock, at) : exactLocalTime(clock, at);
}

/** "3 min 12 s", "at least 3 min". */
export function durationOf({ durationS, complete }: OfPhase["passed"][number]): Text {
  const length = lengthText(Math.round(durationS * SECOND));
  return complete ? length : say`at least ${length}`;
}

/** For a terminal: only what a fixed value does not show. */
export function slidingLines({ phases, bounds }: Sliding, clock: LocalClock): Text[] {
  return [
    ...phases.filter(({ unseen }) => unseen > 0).map(phaseText),
    ...bounds.filter(({ possible }) => possible > 0).map((bound) => boundText(bound, clock)),
  ].map((text) => say`any ten minutes: ${text}`);
}
