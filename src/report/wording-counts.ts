import type { Assessment, Week } from "../rules/assessment.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { byRequirement, consecutiveWeeks } from "./rows.js";
import { joined } from "./wording.js";
import { exclusionSentences } from "./wording-exclusions.js";
import { decisionSentences } from "./wording-uncertainty.js";

/** Sentences of the statement that count requirements, weeks and findings. */

/** What one must know beside the verdict; of a recording that is too short nothing on what is missing from it. */
export function furtherOf(assessment: Assessment, week: Week, isShort: boolean): Text[] {
  const judged = byRequirement(assessment, week).filter(({ worst }) => worst.binding && isVerdict(worst.verdict));
  const decided = judged.filter(({ worst }) => worst.verdict !== "undecided");
  const shaky = decided.filter(({ worst }) => !worst.robust).length;
  const unconfirmed = judged.filter(({ rows }) => rows.some(({ confirmed }) => !confirmed)).length;
  const blocks = assessment.recording.findings.filter(({ severity }) => severity === "blocks").length;
  const sentences = [
    ...exclusionSentences(assessment),
    week.kind === "consecutive"
      ? metText(judged.map(({ worst }) => worst.verdict))
      : partText(week.kind, decided.length),
    weeksText(assessment),
    missedText(assessment.notAssessed.length),
    isShort ? undefined : shakyText(shaky),
    unconfirmedText(unconfirmed, judged.length),
    blocksText(blocks),
    ...(isShort ? [] : decisionSentences(assessment, week)),
  ];
  return sentences.filter((text) => text !== undefined);
}

function isVerdict(verdict: Week["verdict"]): boolean {
  return verdict === "conforms" || verdict === "does-not-conform" || verdict === "undecided";
}

/** "3 of the 6 requirements judged were not met.", "The one requirement judged was met." */
function metText(verdicts: readonly Week["verdict"][]): Sentence | undefined {
  const total = verdicts.length;
  const count = (wanted: Week["verdict"]) => verdicts.filter((verdict) => verdict === wanted).length;
  const [failed, open] = [count("does-not-conform"), count("undecided")];
  if (total === 0) return undefined;
  if (total === 1) {
    if (open === 1) return say`The one requirement with values could not be decided.`;
    return failed === 1 ? say`The one requirement judged was not met.` : say`The one requirement judged was met.`;
  }
  if (open === total) return say`None of the ${total} requirements with values could be decided.`;
  if (failed + open === 0) return say`All ${total} requirements judged were met.`;
  if (failed === 0) return say`${open} of the ${total} requirements judged could not be decided.`;
  const missed =
    failed === 1
      ? say`${failed} of the ${total} requirements judged was not met`
      : say`${failed} of the ${total} requirements judged were not met`;
  return open === 0 ? say`${missed}.` : say`${missed} and ${open} could not be decided.`;
}

/** Periods other than consecutive weeks hold only some of the requirements. */
function partText(kind: Week["kind"], decided: number): Sentence {
  if (kind === "year")
    return decided === 1
      ? say`Of this period only what is judged by the year is counted: ${decided} requirement.`
      : say`Of this period only what is judged by the year is counted: ${decided} requirements.`;
  return decided === 1
    ? say`Of this period only what is worse than in every consecutive week is counted: ${decided} requirement.`
    : say`Of this period only what is worse than in every consecutive week is counted: ${decided} requirements.`;
}

function missedText(missed: number): Sentence | undefined {
  if (missed === 0) return undefined;
  return missed === 1
    ? say`${missed} requirement was not assessed; see below why.`
    : say`${missed} requirements were not assessed; see below why.`;
}

function shakyText(shaky: number): Sentence | undefined {
  if (shaky === 0) return undefined;
  return shaky === 1
    ? say`Missing intervals could change the verdict on one requirement (“robust: no”).`
    : say`Missing intervals could change the verdict on ${shaky} requirements (“robust: no”).`;
}

function unconfirmedText(unconfirmed: number, judged: number): Sentence | undefined {
  if (unconfirmed === 0) return undefined;
  if (judged === 1)
    return say`The one requirement judged rests, at least in part, on limits that no public document at hand confirms.`;
  if (unconfirmed === judged)
    return say`All ${judged} requirements judged rest, at least in part, on limits that no public document at hand confirms.`;
  return unconfirmed === 1
    ? say`${unconfirmed} of the ${judged} requirements judged rests, at least in part, on limits that no public document at hand confirms.`
    : say`${unconfirmed} of the ${judged} requirements judged rest, at least in part, on limits that no public document at hand confirms.`;
}

function blocksText(blocks: number): Sentence | undefined {
  if (blocks === 0) return undefined;
  return blocks === 1
    ? say`${blocks} finding on the recording itself kept values from being judged.`
    : say`${blocks} findings on the recording itself kept values from being judged.`;
}

const WEEK_COUNTS = {
  conforms: (weeks: number) => say`${weeks} conformed`,
  "does-not-conform": (weeks: number) => say`${weeks} did not conform`,
  undecided: (weeks: number) => say`${weeks} could not be decided`,
  "not-assessed": (weeks: number) => say`${weeks} could not be judged`,
} as const;

/** "Of 26 consecutive weeks 3 did not conform and 23 could not be decided; see the table of weeks." */
function weeksText(assessment: Assessment): Sentence | undefined {
  const weeks = consecutiveWeeks(assessment).filter(({ complete }) => complete);
  if (weeks.length < 2) return undefined;
  const parts = (Object.keys(WEEK_COUNTS) as (keyof typeof WEEK_COUNTS)[]).flatMap((verdict) => {
    const count = weeks.filter((week) => week.verdict === verdict).length;
    return count === 0 ? [] : [WEEK_COUNTS[verdict](count)];
  });
  return say`Of ${weeks.length} consecutive weeks ${joined(parts)}; see the table of weeks.`;
}
