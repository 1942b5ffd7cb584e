import type { Assessment } from "../../rules/assessment.js";
import { say, stated } from "../../sentence.js";
import { exact } from "../numbers.js";
import { paragraph, placeText, UNCONFIRMED_MARK, UNCONFIRMED_NOTE, withUnit } from "../wording.js";
import {
  COMPARISON_COLUMNS as C,
  type Comparison,
  type ComparisonRow,
  comparisonText,
  DIFFERENCE_COLUMNS as D,
  differing,
  grouped,
  ROW_COLUMNS as R,
  sideText,
  COMPARISON_WORDS as W,
} from "../wording-comparison.js";
import { detailsSummary, TABLE_WORDS } from "../wording-page.js";
import { type Content, type Html, html, unbroken } from "./html.js";
import { badge, plainTable } from "./table.js";

/** The verdicts of further limit sets beside the first, where they differ and why; nothing without any. */
export function comparisonSection(assessment: Assessment): Html | undefined {
  const { comparison, ruleSet, verdict, setup } = assessment;
  if (comparison.length === 0) return undefined;
  const declared = setup.declaredVoltage?.value;
  const volts = (value: number) => unbroken(withUnit(exact(value, 0), "V"));
  const isUnconfirmed = comparison.some(({ rows }) =>
    rows.some(({ first, other }) => first?.confirmed === false || other?.confirmed === false),
  );
  const lines: Content[][] = [
    [
      html`${stated(ruleSet.title)} <small>(${say`${ruleSet.id}; ${W.decides}`})</small>`,
      `${ruleSet.standard}, ${ruleSet.edition}`,
      declared === undefined ? "" : volts(Number(declared)),
      badge(verdict),
      "",
    ],
    ...comparison.map((other) => [
      html`${stated(other.ruleSet.title)} <small>(${other.ruleSet.id})</small>`,
      `${other.ruleSet.standard}, ${other.ruleSet.edition}`,
      volts(other.declaredVoltage),
      badge(other.verdict),
      differing(other).length,
    ]),
  ];
  return html`<section id="comparison"><h2>${W.heading}</h2>
<p class="note">${W.note} ${isUnconfirmed && UNCONFIRMED_NOTE}</p>
${plainTable(Object.values(C), lines)}
${comparison.map(comparedPart)}</section>
`;
}

function comparedPart(comparison: Comparison): Html {
  const groups = grouped(comparison);
  const { ruleSet, rows } = comparison;
  return html`<h3>${comparisonText(comparison)}</h3>
${
  groups.length > 0 &&
  plainTable(
    Object.values(D),
    groups.map(({ title, places, row, why }) => [
      title,
      places,
      verdictCell(row.first),
      verdictCell(row.other),
      unbroken(why),
    ]),
  )
}
<details class="screen"><summary>${detailsSummary(rows.length)}</summary>
${plainTable(
  Object.values(R),
  rows.map((row) => [
    stated(row.title),
    placeText(row),
    sideText(row.first),
    verdictCell(row.first),
    sideText(row.other),
    verdictCell(row.other),
  ]),
)}</details>
<p class="note">${paragraph(...ruleSet.notes.map(stated))} ${say`${TABLE_WORDS.sha256}:`} <code>${ruleSet.sha256}</code></p>`;
}

function verdictCell(side: ComparisonRow["first"]): Html {
  if (side === undefined) return html`${W.absent}`;
  return html`${badge(side.verdict)}${!side.confirmed && html` <span class="unconfirmed">${UNCONFIRMED_MARK}</span>`}`;
}
