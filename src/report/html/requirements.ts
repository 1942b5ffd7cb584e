import type { Assessment, Row, Week } from "../../rules/assessment.js";
import { capital, say, strung, type Text } from "../../sentence.js";
import type { LocalClock } from "../local-time.js";
import { exact, fixed, percentOfShare } from "../numbers.js";
import { byRequirement, type RequirementRows } from "../rows.js";
import {
  allowedText,
  countOf,
  foundText,
  limitText,
  percentileText,
  placeText,
  robustText,
  shareText,
  UNCONFIRMED_MARK,
  UNCONFIRMED_NOTE,
  weekText,
  withUnit,
  worstText,
  worstTimeText,
} from "../wording.js";
import {
  BINDING_NOTE,
  DETAIL_COLUMNS,
  detailsSummary,
  HEADINGS,
  originNote,
  REQUIREMENT_COLUMNS,
  ROBUST_NOTE,
  VALUE_ORIGINS,
} from "../wording-page.js";
import { surenessText, UNCERTAINTY_COLUMN } from "../wording-uncertainty.js";
import { type Html, html, unbroken } from "./html.js";
import { cell, head, SIDEWAYS, verdictCell } from "./table.js";

const R = REQUIREMENT_COLUMNS;
const D = DETAIL_COLUMNS;

/** One line per requirement for its worst phase and order; each opens to every phase and order. */
export function requirementsTable(assessment: Assessment, week: Week, clock: LocalClock): Html {
  const groups = byRequirement(assessment, week);
  const unconfirmed = groups.some(({ rows }) => rows.some(({ confirmed }) => !confirmed));
  return html`<table class="cards requirements">${head(Object.values(R))}<tbody>
${groups.map((group) => requirementLines(group, clock))}</tbody></table>
<p class="note">${ROBUST_NOTE} ${unconfirmed && UNCONFIRMED_NOTE} ${originNote(assessment.ruleSet)}</p>`;
}

function requirementLines({ id, title, worst, rows }: RequirementRows, clock: LocalClock): Html {
  const someUnconfirmed = rows.some(({ confirmed }) => !confirmed);
  return html`<tr class="requirement" data-requirement="${id}">
<th scope="row">${title}<br><small>${worst.clause}, ${unbroken(shareText(worst))}${!worst.binding && html`; ${BINDING_NOTE}`}</small></th>
${cell(R.place, placeText(worst))}
${cell(R.limit, html`${unbroken(limitText(worst))}${someUnconfirmed && mark(worst.confirmed)}`)}
${cell(R.allowed, unbroken(allowedText(worst)))}${cell(R.found, unbroken(foundText(worst)))}
${cell(R.worst, unbroken(worstText(worst)))}${cell(R.when, worstTimeText(worst, clock))}
${cell(R.verdict, verdictCell(worst))}${cell(R.robust, robustText(worst))}
</tr>
<tr class="more"><td colspan="9"><details><summary>${detailsSummary(rows.length)}</summary>
${SIDEWAYS}<div class="wide">${detailTable(rows, clock)}</div></details></td></tr>
`;
}

/** Every phase and order of a week once more, for paper, where nothing can be unfolded. */
export function printedRows(assessment: Assessment, week: Week, clock: LocalClock): Html {
  return html`<section class="printed"><h2>${HEADINGS.everyRow}</h2>
<p class="note">${capital(weekText(assessment, week))}.</p>
${byRequirement(assessment, week).map(({ title, rows }) => html`<h3>${title}</h3>${detailTable(rows.map(withoutReason), clock)}${reasons(rows)}\n`)}</section>`;
}

function withoutReason({ reason: _, ...row }: Row): Row {
  return row;
}

/** Each reason once, with the places it holds for: many rows share a long one. */
function reasons(rows: readonly Row[]): Html[] {
  const places = new Map<string, { readonly sentence: Text; readonly where: Text[] }>();
  for (const { reason, ...row } of rows) {
    if (reason === undefined) continue;
    const key = String(reason.sentence);
    const known = places.get(key);
    if (known === undefined) places.set(key, { sentence: reason.sentence, where: [placeText(row)] });
    else known.where.push(placeText(row));
  }
  return [...places.values()].map(
    ({ sentence, where }) => html`<p class="note">${say`${strung(where, "; ")}: ${sentence}`}</p>`,
  );
}

function detailTable(rows: readonly Row[], clock: LocalClock): Html {
  const isSure = rows.some(({ uncertainty }) => uncertainty !== undefined);
  return html`<table class="details">${head([...Object.values(D), ...(isSure ? [UNCERTAINTY_COLUMN] : [])])}<tbody>
${rows.map((row) => detailLine(row, clock, isSure))}</tbody></table>`;
}

/** The shown row may be confirmed while other orders of the requirement are not. */
function mark(confirmed: boolean): Html {
  return html` <span class="unconfirmed">${confirmed ? say`some orders unconfirmed` : UNCONFIRMED_MARK}</span>`;
}

function detailLine(row: Row, clock: LocalClock, isSure: boolean): Html {
  const { withFlagged, withoutFlagged } = row.counts;
  const flagged = strung([countOf(withFlagged), countOf(withoutFlagged)], " / ");
  return html`<tr data-row="${row.id} ${String(placeText(row))}"><th scope="row">${placeText(row)}</th>
<td>${unbroken(limitText(row))}${!row.confirmed && mark(false)}</td><td>${unbroken(allowedText(row))}</td><td>${unbroken(foundText(row))}</td><td>${row.missing}</td>
<td>${unbroken(worstText(row))}</td><td>${worstTimeText(row, clock)}</td><td>${unbroken(percentileText(row))}</td><td>${flagged}</td><td>${VALUE_ORIGINS[row.origin]}</td>
<td>${verdictCell(row)}${row.reason !== undefined && html`<br><small>${row.reason.sentence}</small>`}</td><td>${robustText(row)}</td>${isSure && html`<td>${unbroken(surenessText(row))}</td>`}</tr>
`;
}

/** "99.8 %", cut downwards, so that 100 % means all. */
export function coverageText(coverage: number): Text {
  const percent = percentOfShare(coverage);
  return withUnit(Number.isInteger(percent) ? exact(percent, 0) : fixed(Math.floor(percent * 10) / 10, 1), "%");
}
