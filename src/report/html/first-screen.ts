import type { Assessment, Week } from "../../rules/assessment.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { byRequirement, consecutiveWeeks, decidingWeek, requirementTitle } from "../rows.js";
import { capital, verdictWord, weekEnd, weekText } from "../wording.js";
import {
  DANGER_WORDS,
  HEADINGS,
  NONE,
  recordedText,
  WEEK_COLUMNS,
  WEEK_KINDS,
  WORST_SLIDING_NOTE,
} from "../wording-page.js";
import { statement } from "../wording-statement.js";
import { type Html, html, unbroken } from "./html.js";
import { coverageText, requirementsTable } from "./requirements.js";
import { badge, cell, head } from "./table.js";

const W = WEEK_COLUMNS;

/** Dangers, the statement, the table of requirements, the weeks, and what was not assessed. */
export function firstScreen(assessment: Assessment, clock: LocalClock): Html {
  const { sentence, further } = statement(assessment);
  const week = decidingWeek(assessment);
  const { recording, setup, verdict } = assessment;
  const place = [setup.site?.value, setup.measuringPoint?.value].filter((text) => text !== undefined).join(", ");
  const time = (iso: string) => localTime(clock, instantOf(iso));
  return html`<header>
<p class="kind">${HEADINGS.page}</p>
${place !== "" && html`<p class="place">${place}</p>`}
<p class="note">${recordedText(time(recording.start), time(recording.end), recording.zone)}</p>
</header>
${dangers(assessment)}
<section id="statement" class="statement ${verdict}">
<p class="word">${verdictWord(verdict)}</p>
<h1>${unbroken(sentence)}</h1>
${further.length > 0 && html`<p>${further.join(" ")}</p>`}
</section>
${
  week !== undefined &&
  html`<section id="requirements"><h2>${HEADINGS.requirements}</h2>
<p class="note">${capital(weekText(assessment, week))}.</p>
${requirementsTable(assessment, week, clock)}</section>`
}
${weeksSection(assessment, clock)}
${notAssessed(assessment)}`;
}

function dangers({ recording }: Assessment): Html | undefined {
  const found = recording.findings.filter(({ danger }) => danger !== undefined);
  if (found.length === 0) return undefined;
  return html`<section class="danger" role="alert"><h2>${DANGER_WORDS.title}</h2>
${found.map(({ sentence }) => html`<p>${sentence}</p>\n`)}
<ul>${DANGER_WORDS.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>`;
}

/** Several weeks in one table, then each of the other weeks with its own requirements. */
function weeksSection(assessment: Assessment, clock: LocalClock): Html | undefined {
  const sliding = assessment.weeks.filter(({ kind }) => kind === "worst-sliding");
  const weeks = [...consecutiveWeeks(assessment), ...sliding];
  if (weeks.length < 2) return undefined;
  const shown = decidingWeek(assessment);
  const line = (week: Week) => html`<tr>${cell(W.from, localTime(clock, instantOf(week.start)))}
${cell(W.to, localTime(clock, instantOf(weekEnd(assessment.recording, week))))}${cell(W.kind, kindText(week))}
${cell(W.coverage, unbroken(coverageText(week.coverage)))}${cell(W.verdict, badge(week.verdict))}
${cell(W.failed, failedText(assessment, week))}</tr>
`;
  return html`<section id="weeks"><h2>${HEADINGS.weeks}</h2>
<table class="cards">${head(Object.values(W))}<tbody>
${weeks.map(line)}</tbody></table>
${sliding.length > 0 && html`<p class="note">${WORST_SLIDING_NOTE}</p>`}
${weeks
  .filter((week) => week !== shown)
  .map(
    (
      week,
    ) => html`<details class="week"><summary>${capital(weekText(assessment, week))}: ${verdictWord(week.verdict)}</summary>
${requirementsTable(assessment, week, clock)}</details>`,
  )}</section>`;
}

function kindText({ kind, complete }: Week): string {
  if (kind === "worst-sliding") return WEEK_KINDS[kind];
  return complete ? WEEK_KINDS.consecutive : WEEK_KINDS.rest;
}

function failedText(assessment: Assessment, week: Week): string {
  const failed = byRequirement(assessment, week).filter(
    ({ worst }) => worst.binding && worst.verdict === "does-not-conform",
  );
  return failed.length === 0 ? NONE.failed : failed.map(({ title }) => title).join("; ");
}

function notAssessed(assessment: Assessment): Html {
  const items = assessment.notAssessed.map(
    ({ requirement, reason }) =>
      html`<li><b>${requirementTitle(assessment, requirement)}</b>: ${reason.sentence}</li>\n`,
  );
  return html`<section id="not-assessed"><h2>${HEADINGS.notAssessed}</h2>
${items.length === 0 ? html`<p>${NONE.notAssessed}</p>` : html`<ul>${items}</ul>`}</section>`;
}
