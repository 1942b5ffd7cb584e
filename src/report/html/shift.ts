import type { Assessment } from "../../rules/assessment.js";
import { shiftChart } from "../charts/shift-ranges.js";
import type { Language } from "../languages/language.js";
import type { LocalClock } from "../local-time.js";
import { requirementTitle } from "../rows.js";
import {
  allowedOf,
  RANGE_COLUMNS as C,
  mainPeriod,
  rangesText,
  SHIFT_COLUMNS as S,
  type Shift,
  type ShiftPeriod,
  shiftText,
  stepHeading,
  SHIFT_WORDS as W,
} from "../wording-shift.js";
import { figure } from "./charts.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** What tap steps would change: which shifts keep the limits, and the counts after each step; other weeks unfold. */
export async function shiftSection(
  assessment: Assessment,
  clock: LocalClock,
  language: Language,
): Promise<Html | undefined> {
  const { shift } = assessment;
  const main = shift && mainPeriod(shift);
  if (shift === undefined || main === undefined) return undefined;
  const others = shift.periods.filter((period) => period !== main);
  const isDrawn = main.phases.some(({ ranges }) => ranges.length > 0);
  return html`<section id="shift"><h2>${W.heading}</h2>
<p>${unbroken(shiftText(shift, main, clock))}</p>
${isDrawn && html`<div class="figures">${await figure(shiftChart(shift, main), language)}</div>`}
${tables(assessment, shift, main)}
${others.map(
  (period) => html`<details><summary>${unbroken(shiftText(shift, period, clock))}</summary>
${tables(assessment, shift, period)}</details>`,
)}
<p class="note">${W.note} ${shift.stepsOrigin === "assumed" && W.assumedSteps}</p></section>
`;
}

function tables(assessment: Assessment, shift: Shift, period: ShiftPeriod): Html {
  const hasAllowed = period.rows.some(({ allowed }) => allowed !== undefined);
  const titles = [S.phase, S.requirement, ...(hasAllowed ? [S.allowed] : []), ...shift.steps.map(stepHeading)];
  const rows = period.rows.map(({ phase, requirement, n, allowed, outside }) => [
    phase,
    requirementTitle(assessment, requirement),
    ...(hasAllowed ? [allowed === undefined ? "–" : allowedOf(allowed, n)] : []),
    ...outside.map((count) => (allowed !== undefined && count > allowed ? html`<b>${count}</b>` : count)),
  ]);
  const ranges = [
    ...period.phases.map(({ phase, ranges: of }) => [phase, unbroken(rangesText(of))]),
    ...(period.phases.length > 1 ? [[W.all, unbroken(rangesText(period.all))]] : []),
  ];
  return html`${plainTable(Object.values(C), ranges)}${plainTable(titles, rows)}`;
}
