import type { Assessment } from "../rules/assessment.js";
import { type Sentence, say, stated, strung, type Text } from "../sentence.js";
import { joined, placeText, UNCONFIRMED_MARK, verdictWord } from "./wording.js";

/** What further limit sets say. */

export type Comparison = Assessment["comparison"][number];
export type ComparisonRow = Comparison["rows"][number];

export const COMPARISON_WORDS = {
  heading: say`Other limit sets`,
  note: say`The verdict of this report comes from the first limit set alone. The others judge the same values by their own limits.`,
  decides: say`decides`,
  absent: say`not judged`,
} as const;

export const COMPARISON_COLUMNS = {
  set: say`Limit set`,
  standard: say`Standard`,
  declared: say`Declared voltage`,
  verdict: say`Verdict`,
  differences: say`Other verdicts`,
} as const;

export const DIFFERENCE_COLUMNS = {
  requirement: say`Requirement`,
  place: say`Where`,
  first: say`First set`,
  other: say`This set`,
  why: say`Why`,
} as const;

export const ROW_COLUMNS = {
  requirement: say`Requirement`,
  place: say`Where`,
  firstFound: say`First: outside`,
  first: say`First: verdict`,
  otherFound: say`This: outside`,
  other: say`This: verdict`,
} as const;

export function differing({ rows }: Comparison): ComparisonRow[] {
  return rows.filter(({ why }) => why.length > 0);
}

/** "spain-lv: does not conform; on 3 places another verdict than the first set". */
export function comparisonText(comparison: Comparison): Sentence {
  const { ruleSet, verdict } = comparison;
  const count = differing(comparison).length;
  const said = verdictWord(verdict);
  if (count === 0)
    return say`${stated(ruleSet.title)} (${ruleSet.id}): ${said}, with the same verdict on every requirement.`;
  return count === 1
    ? say`${stated(ruleSet.title)} (${ruleSet.id}): ${said}; another verdict than the first set's in one place.`
    : say`${stated(ruleSet.title)} (${ruleSet.id}): ${said}; another verdict than the first set's in ${count} places.`;
}

/** "12 of 1008, 50 may". */
export function sideText(side: ComparisonRow["first"]): Text {
  return side === undefined ? "–" : say`${side.outside} of ${side.n}, ${side.allowed} may`;
}

/** Rows of one requirement that differ for the same reasons, as one. */
export interface Differences {
  readonly title: Text;
  readonly places: Text;
  readonly row: ComparisonRow;
  readonly why: Text;
}

/** The rows with another verdict, those of a requirement with the same verdicts and reasons together. */
export function grouped(comparison: Comparison): Differences[] {
  const groups = new Map<string, ComparisonRow[]>();
  for (const row of differing(comparison)) {
    const reasons = row.why.map(({ sentence }) => String(sentence)).join(" ");
    const key = [row.title, row.first?.verdict, row.other?.verdict, reasons].join("|");
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((rows) => {
    const [row] = rows as [ComparisonRow];
    return {
      title: stated(row.title),
      places: joined(rows.map(placeText)),
      row,
      why: strung(distinct(rows.flatMap(({ why }) => why.map(({ sentence }) => sentence))), " "),
    };
  });
}

function distinct(texts: readonly Text[]): Text[] {
  return [...new Map(texts.map((text) => [String(text), text])).values()];
}

/** One line for each group of differences, for a terminal. */
export function comparisonLines(comparison: Comparison): Text[] {
  return [
    say`compared: ${comparisonText(comparison)}`,
    ...grouped(comparison).map(({ title, places, row, why }) => {
      const [mine, theirs] = [verdictOf(row.first), verdictOf(row.other)];
      return say`- ${title}, ${places}: ${theirs}, by the first set ${mine}. ${why}`;
    }),
  ];
}

function verdictOf(side: ComparisonRow["first"]): Text {
  if (side === undefined) return COMPARISON_WORDS.absent;
  const word = verdictWord(side.verdict);
  return side.confirmed ? word : say`${word} (${UNCONFIRMED_MARK})`;
}
