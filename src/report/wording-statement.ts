import { allowedOutside } from "../decimal.js";
import { WEEK } from "../recording/time.js";
import type { Assessment, Row, Week } from "../rules/assessment.js";
import { measured } from "./numbers.js";
import { byRequirement, consecutiveWeeks, decidingRow, decidingWeek, finestSummary } from "./rows.js";
import {
  capital,
  lengthText,
  limitText,
  outsideText,
  placeText,
  recordedLength,
  robustText,
  rowSentence,
  valuesText,
  weekText,
  withUnit,
} from "./wording.js";
import { eventsFinding } from "./wording-events.js";

/** The English statement that a report begins with. */

/** The verdict in one plain sentence; in `further` what one must also know before relying on it. */
export function statement(assessment: Assessment): { readonly sentence: string; readonly further: readonly string[] } {
  const week = decidingWeek(assessment);
  const { title } = assessment.ruleSet;
  const rules = title.includes(",") ? `${title},` : title;
  if (week === undefined)
    return {
      sentence: `The recording holds nothing that ${rules} sets a limit for, so nothing could be judged.`,
      further: [eventsFinding(assessment)].flatMap((text) => (text === undefined ? [] : `It shows ${text}.`)),
    };
  if (isTooShort(assessment, week))
    return { sentence: shortSentence(assessment, rules, week), further: furtherOf(assessment, week, true) };
  const when = weekText(assessment, week);
  const deciding = decidingRow(assessment, week);
  return {
    sentence: sentenceOf(assessment, rules, when, deciding?.worst),
    further: furtherOf(assessment, week, false),
  };
}

/** Less than a week was recorded, and that alone keeps it from being judged. */
function isTooShort(assessment: Assessment, week: Week): boolean {
  const isOpen = assessment.verdict !== "conforms" && assessment.verdict !== "does-not-conform";
  const unsound = week.requirements.some(({ reason }) => reason?.id === "recording-unsound");
  return isOpen && !unsound && recordedLength(assessment) < WEEK;
}

/** What a recording of less than a week cannot show, and what it does show. */
function shortSentence(assessment: Assessment, rules: string, week: Week): string {
  const [first] = shown(assessment, week);
  const length = lengthText(recordedLength(assessment));
  const but = first === undefined ? "" : `; it shows ${first}`;
  return `The recording of ${length} cannot show whether a week conforms to ${rules.replace(/,$/, "")}${but}.`;
}

/** What a recording of less than a week shows: its events, the values counted so far or else the voltages found. */
function shown(assessment: Assessment, week: Week): string[] {
  const values = soFar(assessment, week) ?? foundVoltages(assessment);
  return [eventsFinding(assessment), values].filter((text) => text !== undefined);
}

/** "on phase L2 20 of 288 ten-minute values that lay above 253.0 V (of the 1008 of a week, 50 may)". */
function soFar(assessment: Assessment, week: Week): string | undefined {
  const row = byRequirement(assessment, week).find(({ worst }) => worst.quantity === "voltage" && worst.n > 0)?.worst;
  if (row === undefined) return undefined;
  const values = valuesText(row);
  if (row.outside === 0)
    return row.n === 1
      ? `one of the ${values} per phase, within ${limitText(row)}`
      : `${row.n} ${values} per phase, none outside ${limitText(row)}`;
  const expected = row.n + row.missing;
  const may = `of the ${expected} of a ${row.period}, ${allowedOutside(row.share, expected)} may`;
  return `on phase ${row.phase} ${row.outside} of ${row.n} ${values} that lay ${outsideText(row, assessment.summary)} (${may})`;
}

/** "voltages of 228.1 to 231.4 V on L1, L2, L3 (10/12-cycle values)": of the shortest interval that was measured. */
function foundVoltages(assessment: Assessment): string | undefined {
  const voltages = finestSummary(assessment).filter(({ quantity }) => quantity === "voltage");
  const [first] = voltages;
  if (first === undefined) return undefined;
  const low = measured(Math.min(...voltages.map(({ min }) => min)), first.unit);
  const high = measured(Math.max(...voltages.map(({ max }) => max)), first.unit);
  const phases = voltages.map(({ phase }) => placeText({ phase })).join(", ");
  return `voltages of ${low} to ${withUnit(high, first.unit)} on ${phases} (${first.interval} values)`;
}

function sentenceOf(assessment: Assessment, rules: string, when: string, row: Row | undefined): string {
  const { verdict, summary } = assessment;
  const because = row === undefined ? "" : `: ${rowSentence(row, summary)}`;
  switch (verdict) {
    case "does-not-conform":
      return `The supply voltage did not conform to ${rules} in ${when}${because || "."}`;
    case "undecided":
      return `Whether the supply voltage conformed to ${rules} in ${when} is undecided: ${row?.reason?.sentence ?? "too much of it is missing."}`;
    case "conforms":
      return assessment.notAssessed.length === 0
        ? `The supply voltage conformed to ${rules} in ${when}.`
        : `The supply voltage conformed to ${rules} in ${when}, in everything that was measured.`;
    case "for-information":
      return `The recording of ${when} gives information on ${rules} but holds nothing that decides conformance.`;
    case "not-assessed":
      return `The supply voltage in ${when} could not be judged by ${rules}${assessment.notAssessed[0] === undefined ? "." : `: ${assessment.notAssessed[0].reason.sentence}`}`;
  }
}

function furtherOf(assessment: Assessment, week: Week, isShort: boolean): string[] {
  const further: string[] = [];
  const events = eventsFinding(assessment);
  if (isShort)
    further.push(
      ...shown(assessment, week)
        .slice(1)
        .map((text) => `It also shows ${text}.`),
    );
  else if (events !== undefined) further.push(`Recorded as well: ${events}.`);
  const judged = byRequirement(assessment, week).filter(
    ({ worst }) => worst.binding && worst.verdict !== "for-information",
  );
  const failed = judged.filter(({ worst }) => worst.verdict === "does-not-conform");
  const open = judged.filter(({ worst }) => worst.verdict === "undecided");
  if (failed.length > 0) further.push(`${failed.length} of ${judged.length} requirements judged were not met.`);
  else if (judged.length > 0 && open.length === 0) further.push(`All ${judged.length} requirements judged were met.`);
  if (open.length > 0) further.push(`${open.length} of ${judged.length} requirements could not be decided.`);
  const weeks = consecutiveWeeks(assessment).filter(({ complete }) => complete);
  const bad = weeks.filter(({ verdict }) => verdict === "does-not-conform");
  if (weeks.length > 1)
    further.push(`${bad.length} of ${weeks.length} consecutive weeks did not conform; see the table of weeks.`);
  const missed = assessment.notAssessed.length;
  if (missed > 0)
    further.push(`${missed} ${missed === 1 ? "requirement was" : "requirements were"} not assessed; see below why.`);
  const shaky = judged.filter(({ rows }) => rows.some((row) => robustText(row) === "no"));
  if (shaky.length > 0 && !isShort)
    further.push(`The missing intervals could change ${shaky.length} of these verdicts (“robust: no”).`);
  const unconfirmed = judged.filter(({ rows }) => rows.some(({ confirmed }) => !confirmed));
  if (unconfirmed.length > 0)
    further.push(`${unconfirmed.length} of them rest on limits that no public document at hand confirms.`);
  const blocks = assessment.recording.findings.filter(({ severity }) => severity === "blocks").length;
  if (blocks > 0)
    further.push(
      `${blocks} ${blocks === 1 ? "finding" : "findings"} on the recording itself kept values from being judged.`,
    );
  return further.map(capital);
}
