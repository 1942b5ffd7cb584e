import type { Assessment, Row, Week } from "../../rules/assessment.js";
import type { LocalClock } from "../local-time.js";
import { decimalsOf, exact, fixed, formatAgainstLimits, percentOfShare } from "../numbers.js";
import { byRequirement, type RequirementRows } from "../rows.js";
import {
  allowedText,
  capital,
  foundText,
  limitText,
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
} from "../wording-page.js";
import { type Html, html, unbroken } from "./html.js";
import { badge, cell, head, SIDEWAYS } from "./table.js";

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
<th scope="row">${title}<br><small>${worst.clause}, ${unbroken(shareText(worst))}${!worst.binding && `; ${BINDING_NOTE}`}</small></th>
${cell(R.place, placeText(worst))}
${cell(R.limit, html`${unbroken(limitText(worst))}${someUnconfirmed && mark(worst.confirmed)}`)}
${cell(R.allowed, unbroken(allowedText(worst)))}${cell(R.found, unbroken(foundText(worst)))}
${cell(R.worst, unbroken(worstText(worst)))}${cell(R.when, worstTimeText(worst, clock))}
${cell(R.verdict, badge(worst.verdict))}${cell(R.robust, robustText(worst))}
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
  const places = new Map<string, string[]>();
  for (const row of rows)
    if (row.reason !== undefined)
      places.set(String(row.reason.sentence), [...(places.get(String(row.reason.sentence)) ?? []), placeText(row)]);
  return [...places].map(([sentence, where]) => html`<p class="note">${where.join("; ")}: ${sentence}</p>`);
}

function detailTable(rows: readonly Row[], clock: LocalClock): Html {
  return html`<table class="details">${head(Object.values(D))}<tbody>
${rows.map((row) => detailLine(row, clock))}</tbody></table>`;
}

/** The shown row may be confirmed while other orders of the requirement are not. */
function mark(confirmed: boolean): Html {
  return html` <span class="unconfirmed">${confirmed ? `some orders ${UNCONFIRMED_MARK}` : UNCONFIRMED_MARK}</span>`;
}

function detailLine(row: Row, clock: LocalClock): Html {
  const { withFlagged, withoutFlagged } = row.counts;
  const flagged = `${withFlagged.outside} of ${withFlagged.n} / ${withoutFlagged.outside} of ${withoutFlagged.n}`;
  return html`<tr data-row="${row.id} ${placeText(row)}"><th scope="row">${placeText(row)}</th>
<td>${unbroken(limitText(row))}${!row.confirmed && mark(false)}</td><td>${unbroken(allowedText(row))}</td><td>${unbroken(foundText(row))}</td><td>${row.missing}</td>
<td>${unbroken(worstText(row))}</td><td>${worstTimeText(row, clock)}</td><td>${unbroken(percentileText(row))}</td><td>${flagged}</td><td>${row.origin}</td>
<td>${badge(row.verdict)}${row.reason !== undefined && html`<br><small>${row.reason.sentence}</small>`}</td><td>${robustText(row)}</td></tr>
`;
}

function percentileText({ percentile, limit, unit }: Row): string {
  const ends = [percentile.low, percentile.high].filter((value) => value !== undefined);
  const texts = ends.map((value) => formatAgainstLimits(value, limit, decimalsOf(unit)));
  return texts.length === 0 ? "–" : withUnit(texts.join(" to "), unit);
}

/** "99.8 %", cut downwards, so that 100 % means all. */
export function coverageText(coverage: number): string {
  const percent = percentOfShare(coverage);
  return `${Number.isInteger(percent) ? exact(percent, 0) : fixed(Math.floor(percent * 10) / 10, 1)} %`;
}
