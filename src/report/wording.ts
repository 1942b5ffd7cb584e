import { type Phase, QUANTITIES, type Quantity } from "../recording/quantity.js";
import type { Assessment, Row, Verdict, Week } from "../rules/assessment.js";
import { instantOf, type LocalClock, localClock, localTime } from "./local-time.js";
import { allowedPercent, decimalsOf, exact, formatAgainstLimits, foundPercent, percentOfShare } from "./numbers.js";
import { byRequirement, consecutiveWeeks, decidingRow, decidingWeek } from "./rows.js";

/**
 * English words and sentences about the result. With wording-charts.ts and wording-page.ts these are all the sentences
 * of the outputs: another language is another set of files with the same exports.
 */

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  conforms: "conforms",
  "does-not-conform": "does not conform",
  undecided: "undecided",
  "not-assessed": "not assessed",
  "for-information": "for information",
};

export function verdictWord(verdict: Verdict): string {
  return VERDICT_WORDS[verdict];
}

/** "253.0 V", "6 %", "1": a value already formatted, with its unit. */
export function withUnit(text: string, unit: string): string {
  return unit === "1" ? text : `${text} ${unit}`;
}

export function limitNumber(value: number, unit: string): string {
  return exact(value, unit === "V" && value < 1000 ? 1 : 0);
}

/** "207.0 to 253.0 V", "at most 6 %". */
export function limitText({ limit, unit }: Pick<Row, "limit" | "unit">): string {
  const { min, max } = limit;
  if (min !== undefined && max !== undefined)
    return withUnit(`${limitNumber(min, unit)} to ${limitNumber(max, unit)}`, unit);
  if (max !== undefined) return `at most ${withUnit(limitNumber(max, unit), unit)}`;
  if (min !== undefined) return `at least ${withUnit(limitNumber(min, unit), unit)}`;
  return "none";
}

/** "L2", "L2, order 5", "supply" for a value that the supply has as a whole. */
export function placeText({ phase, order }: { readonly phase: Phase; readonly order?: number | undefined }): string {
  const where = phase === "system" ? "supply" : phase;
  return order === undefined ? where : `${where}, order ${order}`;
}

/** "50 (5 %)": how many values may lie outside. */
export function allowedText(row: Row): string {
  return `${row.allowed} (${exact(allowedPercent(row.share), 0)} %)`;
}

/** "73 of 1008 (7.2 %)": how many values lay outside. */
export function foundText(row: Row): string {
  return row.n === 0 ? "no values" : `${row.outside} of ${row.n} (${foundPercent(row)} %)`;
}

/** The worst value with enough digits to lie on its side of the limit. */
export function worstText(row: Row): string {
  if (row.worst === null) return "–";
  return withUnit(formatAgainstLimits(row.worst.value, row.limit, decimalsOf(row.unit)), row.unit);
}

export function worstTimeText(row: Row, clock: LocalClock): string {
  return row.worst === null ? "" : localTime(clock, instantOf(row.worst.at));
}

/** "95 % of the week". */
export function shareText({ share, period }: Pick<Row, "share" | "period">): string {
  return `${exact(percentOfShare(share), 0)} % of the ${period}`;
}

/** Whether missing intervals could change the verdict; a dash where there is none to change. */
export function robustText({ robust, verdict }: Pick<Row, "robust" | "verdict">): string {
  if (verdict === "for-information") return "–";
  return robust ? "yes" : "no";
}

export const UNCONFIRMED_MARK = "unconfirmed";
export const UNCONFIRMED_NOTE =
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.";

const INTERVAL_WORDS: Readonly<Record<number, string>> = {
  3: "three-second",
  10: "ten-second",
  60: "one-minute",
  600: "ten-minute",
  7200: "two-hour",
};

/** "ten-minute". */
export function intervalWord(seconds: number): string {
  return INTERVAL_WORDS[seconds] ?? `${seconds}-second`;
}

export function quantityName(quantity: Quantity, order?: number): string {
  return `${QUANTITIES[quantity].name}${order === undefined ? "" : ` of order ${order}`}`;
}

/** The supply voltage, harmonic 5 …: "of the supply voltage" is left out where the sentence has it as its subject. */
function valuesOf(row: Row): string {
  const values = `${intervalWord(row.intervalS)} values`;
  return row.quantity === "voltage" ? values : `${values} of the ${quantityName(row.quantity, row.order)}`;
}

/** "above 253.0 V" where the extremes of the recording show that none lay below; else both limits. */
export function outsideText(row: Row, summary: Assessment["summary"]): string {
  const { min, max } = row.limit;
  const all = summary.find(
    (s) =>
      s.quantity === row.quantity && s.phase === row.phase && s.order === row.order && s.intervalS === row.intervalS,
  );
  const noneBelow = min === undefined || (all !== undefined && all.min >= min);
  const noneAbove = max === undefined || (all !== undefined && all.max <= max);
  if (max !== undefined && noneBelow) return `above ${withUnit(limitNumber(max, row.unit), row.unit)}`;
  if (min !== undefined && noneAbove) return `below ${withUnit(limitNumber(min, row.unit), row.unit)}`;
  return `outside ${limitText(row)}`;
}

/** "on phase L2, 73 of 1008 ten-minute values lay above 253.0 V; 50 may." */
export function rowSentence(row: Row, summary: Assessment["summary"]): string {
  const where = row.phase === "system" ? "" : `on phase ${row.phase}, `;
  const may = row.allowed === 0 ? "none may" : `${row.allowed} may`;
  return `${where}${row.outside} of ${row.n} ${valuesOf(row)} lay ${outsideText(row, summary)}; ${may}.`;
}

/** "the week from Mon 3 Mar 2025 00:00 to Mon 10 Mar 2025 00:00"; a rest ends where the recording does. */
export function weekText({ recording }: Assessment, week: Week): string {
  const clock = localClock(recording);
  const time = (iso: string) => localTime(clock, instantOf(iso));
  const from = time(week.start);
  if (week.kind === "worst-sliding") return `the seven days from ${from} to ${time(week.end)}`;
  if (week.complete) return `the week from ${from} to ${time(week.end)}`;
  return `the time from ${from} to ${time(weekEnd(recording, week))}, less than a week`;
}

/** The end of a week, or of the recording where it ends within the week. */
export function weekEnd(recording: Assessment["recording"], week: Week): string {
  return instantOf(week.end) > instantOf(recording.end) ? recording.end : week.end;
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** The verdict in one plain sentence; in `further` what one must also know before relying on it. */
export function statement(assessment: Assessment): { readonly sentence: string; readonly further: readonly string[] } {
  const week = decidingWeek(assessment);
  const { title } = assessment.ruleSet;
  const rules = title.includes(",") ? `${title},` : title;
  if (week === undefined)
    return {
      sentence: `The recording holds nothing that ${rules} sets a limit for, so nothing could be judged.`,
      further: [],
    };
  const when = weekText(assessment, week);
  const deciding = decidingRow(assessment, week);
  return { sentence: sentenceOf(assessment, rules, when, deciding?.worst), further: furtherOf(assessment, week) };
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

function furtherOf(assessment: Assessment, week: Week): string[] {
  const further: string[] = [];
  const judged = byRequirement(assessment, week).filter(({ worst }) => worst.binding);
  const failed = judged.filter(({ worst }) => worst.verdict === "does-not-conform");
  const open = judged.filter(({ worst }) => worst.verdict === "undecided");
  if (failed.length > 0) further.push(`${failed.length} of ${judged.length} requirements judged were not met.`);
  else if (judged.length > 0 && open.length === 0) further.push(`All ${judged.length} requirements judged were met.`);
  if (open.length > 0) further.push(`${open.length} of ${judged.length} could not be decided.`);
  const weeks = consecutiveWeeks(assessment).filter(({ complete }) => complete);
  const bad = weeks.filter(({ verdict }) => verdict === "does-not-conform");
  if (weeks.length > 1)
    further.push(`${bad.length} of ${weeks.length} consecutive weeks did not conform; see the table of weeks.`);
  const missed = assessment.notAssessed.length;
  if (missed > 0)
    further.push(`${missed} ${missed === 1 ? "requirement was" : "requirements were"} not assessed; see below why.`);
  const shaky = judged.filter(({ rows }) => rows.some((row) => robustText(row) === "no"));
  if (shaky.length > 0)
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
