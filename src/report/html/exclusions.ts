import type { Assessment, Week } from "../../rules/assessment.js";
import type { LocalClock } from "../local-time.js";
import { byRequirement, fullWeek } from "../rows.js";
import { placeText } from "../wording.js";
import {
  bothVerdicts,
  EXCLUSION_COLUMNS as C,
  EXCLUDED_COUNTS_SUMMARY,
  EXCLUSIONS_HEADING,
  EXCLUSIONS_NOTE,
  fromText,
  EXCLUDED_COUNT_COLUMNS as N,
  outsideOf,
  reasonText,
  toText,
  YES_NO,
} from "../wording-exclusions.js";
import { type Html, html } from "./html.js";
import { badge, plainTable } from "./table.js";

/** The excluded spans, who asserts them, and both verdicts; nothing where none was stated. */
export function exclusionsSection(assessment: Assessment, clock: LocalClock): Html | undefined {
  const { exclusions } = assessment;
  if (exclusions.length === 0) return undefined;
  const lines = exclusions.map((exclusion) => [
    fromText(clock, exclusion),
    toText(clock, exclusion),
    reasonText(exclusion),
    exclusion.assertedBy,
    html`${exclusion.reference ?? "–"}${exclusion.comment !== undefined && html`<br><small>${exclusion.comment}</small>`}`,
    exclusion.intervals,
    exclusion.turnsVerdict ? html`<b>${YES_NO.yes}</b>` : YES_NO.no,
  ]);
  const week = fullWeek(assessment);
  return html`<section id="exclusions"><h2>${EXCLUSIONS_HEADING}</h2>
<p>${bothVerdicts(assessment)}</p>
${plainTable(Object.values(C), lines)}
<p class="note">${EXCLUSIONS_NOTE}</p>
${week !== undefined && countsOf(assessment, week)}</section>
`;
}

/** Of each requirement the row that stands for it, and all whose verdict the exclusions turn. */
function countsOf(assessment: Assessment, week: Week): Html | undefined {
  const lines = byRequirement(assessment, week).flatMap(({ title, worst, rows }) => {
    const turned = rows.filter(({ verdict, verdictWithoutExclusions: v }) => v !== undefined && v !== verdict);
    const shown = rows.filter((row) => row === worst || turned.includes(row));
    return shown.map((row) => {
      const { withExcluded, withoutExcluded } = row.counts;
      return [
        title,
        placeText(row),
        row.excluded,
        outsideOf(withoutExcluded ?? row),
        outsideOf(withExcluded ?? row),
        badge(row.verdict),
        badge(row.verdictWithoutExclusions ?? row.verdict),
      ];
    });
  });
  return html`<details><summary>${EXCLUDED_COUNTS_SUMMARY}</summary>
${plainTable(Object.values(N), lines)}</details>`;
}
