import type { Assessment, Week } from "../../rules/assessment.js";
import { capital, say, strung, type Text } from "../../sentence.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { byRequirement, decidingWeek, requirementTitle } from "../rows.js";
import { verdictWord, weekEnd, weekText } from "../wording.js";
import {
  DANGER_WORDS,
  filesText,
  HEADINGS,
  NONE,
  ONLY_WORSE_NOTE,
  recordedText,
  WEEK_COLUMNS,
  WORST_SLIDING_NOTE,
  weekKindText,
  zoneText,
} from "../wording-page.js";
import { statement } from "../wording-statement.js";
import { exclusionsSection } from "./exclusions.js";
import { type Html, html, unbroken } from "./html.js";
import { coverageText, requirementsTable } from "./requirements.js";
import { cell, head, verdictCell } from "./table.js";

const W = WEEK_COLUMNS;

/** Dangers, the statement, the table of requirements, the weeks, and what was not assessed. */
export function firstScreen(assessment: Assessment, clock: LocalClock): Html {
  const { sentence, further } = statement(assessment);
  const week = decidingWeek(assessment);
  const { setup, sources, verdict } = assessment;
  const place = [setup.site?.value, setup.measuringPoint?.value].filter((text) => text !== undefined).join(", ");
  const files = filesText(sources.map(({ name }) => name));
  return html`<header>
<p class="kind">${HEADINGS.page}</p>
<p class="place">${setup.site !== undefined ? place : place === "" ? files : strung([place, files], "; ")}</p>
<p class="note">${recordedText(assessment)}</p>
</header>
${dangers(assessment)}
<section id="statement" class="statement ${verdict}">
<p class="word">${verdictWord(verdict)}</p>
<h1>${unbroken(sentence)}</h1>
${further.length > 0 && html`<p>${strung(further, " ")}</p>`}
</section>
${
  hasRequirements(week) &&
  html`<section id="requirements"><h2>${HEADINGS.requirements}</h2>
<p class="note">${say`${capital(weekText(assessment, week))}; ${zoneText(assessment)}.`} ${week.kind === "worst-sliding" && ONLY_WORSE_NOTE}</p>
${requirementsTable(assessment, week, clock)}</section>`
}
${weeksSection(assessment, clock)}
${exclusionsSection(assessment, clock)}
${notAssessed(assessment)}`;
}

/** Whether there is a table of requirements to show. */
export function hasRequirements(week: Week | undefined): week is Week {
  return week !== undefined && week.requirements.length > 0;
}

function dangers({ recording }: Assessment): Html | undefined {
  const found = recording.findings.filter(({ danger }) => danger !== undefined);
  if (found.length === 0) return undefined;
  return html`<section class="danger" role="alert"><h2>${DANGER_WORDS.title}</h2>
${DANGER_WORDS.cautions.map((caution) => html`<p><b>${caution}</b></p>\n`)}
<p>${DANGER_WORDS.measured}</p><ul>${found.map(({ sentence }) => html`<li>${sentence}</li>\n`)}</ul></section>`;
}

/** Several weeks, and years, in one table, then each of the others with its own requirements. */
function weeksSection(assessment: Assessment, clock: LocalClock): Html | undefined {
  const { weeks } = assessment;
  if (weeks.length < 2) return undefined;
  const isAny = (kind: Week["kind"]) => weeks.some((week) => week.kind === kind);
  const shown = decidingWeek(assessment);
  const line = (week: Week) => html`<tr>${cell(W.from, localTime(clock, instantOf(week.start)))}
${cell(W.to, localTime(clock, instantOf(weekEnd(assessment.recording, week))))}${cell(W.kind, weekKindText(week))}
${cell(W.coverage, unbroken(coverageText(week.coverage)))}${cell(W.verdict, verdictCell(week))}
${cell(W.failed, failedText(assessment, week))}</tr>
`;
  return html`<section id="weeks"><h2>${isAny("year") ? HEADINGS.weeksAndYears : HEADINGS.weeks}</h2>
<table class="cards">${head(Object.values(W))}<tbody>
${weeks.map(line)}</tbody></table>
${isAny("worst-sliding") && html`<p class="note">${WORST_SLIDING_NOTE}</p>`}
${weeks
  .filter((week) => week !== shown)
  .map(
    (
      week,
    ) => html`<details class="week"><summary>${say`${capital(weekText(assessment, week))}: ${verdictWord(week.verdict)}`}</summary>
${week.kind === "worst-sliding" && html`<p class="note">${ONLY_WORSE_NOTE}</p>`}
${requirementsTable(assessment, week, clock)}</details>`,
  )}</section>`;
}

function failedText(assessment: Assessment, week: Week): Text {
  const failed = byRequirement(assessment, week).filter(
    ({ worst }) => worst.binding && worst.verdict === "does-not-conform",
  );
  return failed.length === 0
    ? NONE.failed
    : strung(
        failed.map(({ title }) => title),
        "; ",
      );
}

function notAssessed(assessment: Assessment): Html {
  const items = assessment.notAssessed.map(
    ({ requirement, reason }) =>
      html`<li><b>${requirementTitle(assessment, requirement)}</b>${say`: ${reason.sentence}`}</li>\n`,
  );
  return html`<section id="not-assessed"><h2>${HEADINGS.notAssessed}</h2>
${items.length === 0 ? html`<p>${NONE.notAssessed}</p>` : html`<ul>${items}</ul>`}</section>`;
}
