import type { Assessment, Week } from "../rules/assessment.js";
import { byRequirement, consecutiveWeeks } from "./rows.js";
import { joined } from "./wording.js";

/** English sentences of the statement that count requirements, weeks and findings. */

/** What one must know beside the verdict; of a recording that is too short nothing on what is missing from it. */
export function furtherOf(assessment: Assessment, week: Week, isShort: boolean): string[] {
  const judged = byRequirement(assessment, week).filter(({ worst }) => worst.binding && isVerdict(worst.verdict));
  const decided = judged.filter(({ worst }) => worst.verdict !== "undecided");
  const shaky = decided.filter(({ worst }) => !worst.robust).length;
  const unconfirmed = judged.filter(({ rows }) => rows.some(({ confirmed }) => !confirmed)).length;
  const missed = assessment.notAssessed.length;
  const blocks = assessment.recording.findings.filter(({ severity }) => severity === "blocks").length;
  const sentences = [
    week.kind === "consecutive"
      ? metText(judged.map(({ worst }) => worst.verdict))
      : partText(week.kind, decided.length),
    weeksText(assessment),
    missed > 0 && `${missed} ${missed === 1 ? "requirement was" : "requirements were"} not assessed; see below why.`,
    shaky > 0 &&
      !isShort &&
      `Missing intervals could change the verdict on ${shaky === 1 ? "one requirement" : `${shaky} requirements`} (“robust: no”).`,
    unconfirmed > 0 && unconfirmedText(unconfirmed, judged.length),
    blocks > 0 &&
      `${blocks} ${blocks === 1 ? "finding" : "findings"} on the recording itself kept values from being judged.`,
  ];
  return sentences.filter((text) => typeof text === "string");
}

function isVerdict(verdict: Week["verdict"]): boolean {
  return verdict === "conforms" || verdict === "does-not-conform" || verdict === "undecided";
}

/** "3 of the 6 requirements judged were not met.", "The one requirement judged was met." */
function metText(verdicts: readonly Week["verdict"][]): string | undefined {
  const total = verdicts.length;
  const count = (wanted: Week["verdict"]) => verdicts.filter((verdict) => verdict === wanted).length;
  const [failed, open] = [count("does-not-conform"), count("undecided")];
  if (total === 0) return undefined;
  if (total === 1) {
    if (open === 1) return "The one requirement with values could not be decided.";
    return `The one requirement judged was ${failed === 1 ? "not met" : "met"}.`;
  }
  if (open === total) return `None of the ${total} requirements with values could be decided.`;
  if (failed + open === 0) return `All ${total} requirements judged were met.`;
  const were = (n: number) => (n === 1 ? "was" : "were");
  const parts = [
    ...(failed > 0 ? [`${failed} of the ${total} requirements judged ${were(failed)} not met`] : []),
    ...(open > 0 ? [`${open}${failed > 0 ? "" : ` of the ${total} requirements judged`} could not be decided`] : []),
  ];
  return `${joined(parts)}.`;
}

/** Periods other than consecutive weeks hold only some of the requirements. */
function partText(kind: Week["kind"], decided: number): string {
  const which = kind === "year" ? "what is judged by the year" : "what is worse than in every consecutive week";
  return `Of this period only ${which} is counted: ${decided} ${decided === 1 ? "requirement" : "requirements"}.`;
}

function unconfirmedText(unconfirmed: number, judged: number): string {
  const rests = unconfirmed === 1 ? "rests" : "rest";
  const who =
    judged === 1
      ? "The one requirement judged"
      : unconfirmed === judged
        ? `All ${judged} requirements judged`
        : `${unconfirmed} of the ${judged} requirements judged`;
  return `${who} ${rests}, at least in part, on limits that no public document at hand confirms.`;
}

/** "Of 26 consecutive weeks 3 did not conform and 23 are undecided; see the table of weeks." */
function weeksText(assessment: Assessment): string | undefined {
  const weeks = consecutiveWeeks(assessment).filter(({ complete }) => complete);
  if (weeks.length < 2) return undefined;
  const words = {
    conforms: "conformed",
    "does-not-conform": "did not conform",
    undecided: "could not be decided",
    "not-assessed": "could not be judged",
  } as const;
  const parts = (Object.keys(words) as (keyof typeof words)[]).flatMap((verdict) => {
    const count = weeks.filter((week) => week.verdict === verdict).length;
    return count === 0 ? [] : [`${count} ${words[verdict]}`];
  });
  return `Of ${weeks.length} consecutive weeks ${joined(parts)}; see the table of weeks.`;
}
