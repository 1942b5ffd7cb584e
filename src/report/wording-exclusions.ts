import type { Assessment, Row } from "../rules/assessment.js";
import type { Exclusion } from "../rules/assessment-evidence.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { instantOf, type LocalClock, localClock, localTime } from "./local-time.js";
import { verdictWord } from "./wording.js";

/** Words on the spans in which the standard is said not to apply. */

export const EXCLUSIONS_HEADING = say`Exclusions`;

export const EXCLUSION_COLUMNS = {
  from: say`From`,
  to: say`To`,
  reason: say`Reason`,
  assertedBy: say`Asserted by`,
  evidence: say`Evidence`,
  intervals: say`Intervals left out`,
  turns: say`Turns the verdict`,
} as const;

export const EXCLUDED_COUNT_COLUMNS = {
  requirement: say`Requirement`,
  place: say`Where`,
  excluded: say`Left out`,
  outsideWith: say`Outside, with`,
  outsideWithout: say`Outside, without`,
  verdictWith: say`Verdict with`,
  verdictWithout: say`Verdict without`,
} as const;

/** The list of the standard's scope, see EXCLUSION_REASONS. */
const REASONS: Readonly<Record<Exclusion["reason"], Sentence>> = {
  "temporary-supply": say`temporary supply during faults, maintenance or construction`,
  "non-compliant-installation": say`a user's installation or equipment that breaks its standards or connection rules`,
  "exceptional-weather": say`exceptional weather or another natural disaster`,
  "third-party-interference": say`interference by third parties`,
  "acts-of-authorities": say`acts of public authorities`,
  "industrial-action": say`industrial action`,
  "force-majeure": say`force majeure`,
  "power-shortage": say`power shortage from external events`,
};

export function reasonText({ reason }: Pick<Exclusion, "reason">): Sentence {
  return REASONS[reason];
}

export const EXCLUSIONS_NOTE = say`That a reason applied is asserted by the party named; it was not measured. An interval that overlaps an excluded span counts neither as present nor as missing. The reasons are the list in the scope of EN 50160, read in a public catalogue entry of the 2022 edition; that it is clause 1.1, and that older editions list the same, is from memory.`;

/** "41 of 998" */
export function outsideOf({ outside, n }: Pick<Row, "outside" | "n">): Sentence {
  return say`${outside} of ${n}`;
}

export const EXCLUDED_COUNTS_SUMMARY = say`Counts with and without the exclusions`;
export const YES_NO = { yes: say`yes`, no: say`no` } as const;
export const EXCLUDED_EVENT = say`in an excluded span`;

/** What the first screen and the terminal say of exclusions: by name where the verdict hangs on one. */
export function exclusionSentences(assessment: Assessment): Sentence[] {
  const { exclusions, verdict, verdictWithoutExclusions: without } = assessment;
  if (exclusions.length === 0 || without === undefined) return [];
  const clock = localClock(assessment.recording);
  const turning = exclusions.filter(({ turnsVerdict }) => turnsVerdict).map((one) => turningText(clock, one));
  if (without !== verdict) {
    return [...turning, say`Without exclusions the verdict would be “${verdictWord(without)}”.`];
  }
  if (exclusions.length === 1) return [say`One span was excluded; the verdict is the same without it.`];
  return [...turning, say`${exclusions.length} spans were excluded; the verdict is the same without them.`];
}

function turningText(clock: LocalClock, exclusion: Exclusion): Sentence {
  const { assertedBy, ...rest } = exclusion;
  return say`The verdict hangs on the exclusion from ${fromText(clock, rest)} to ${toText(clock, rest)} (${reasonText(rest)}; asserted by ${assertedBy}).`;
}

export function fromText(clock: LocalClock, { from }: Pick<Exclusion, "from">): Text {
  return localTime(clock, instantOf(from));
}

export function toText(clock: LocalClock, { to }: Pick<Exclusion, "to">): Text {
  return localTime(clock, instantOf(to));
}

/** "excluded: from … to …, exceptional weather, asserted by …: 15 intervals" */
export function excludedLine(clock: LocalClock, exclusion: Exclusion): Sentence {
  return say`excluded: from ${fromText(clock, exclusion)} to ${toText(clock, exclusion)}, ${reasonText(exclusion)}, asserted by ${exclusion.assertedBy}; intervals left out: ${exclusion.intervals}`;
}

export function bothVerdicts({ verdict, verdictWithoutExclusions: without = verdict }: Assessment): Sentence {
  return say`Verdict with the exclusions: ${verdictWord(verdict)}; without them: ${verdictWord(without)}.`;
}

/** "without exclusions: does not conform", where that differs. */
export function otherVerdict({
  verdict,
  verdictWithoutExclusions: without,
}: Pick<Row, "verdict" | "verdictWithoutExclusions">): Sentence | undefined {
  return without === undefined || without === verdict ? undefined : say`without exclusions: ${verdictWord(without)}`;
}
