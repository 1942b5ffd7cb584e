import type { Assessment } from "../../rules/assessment.js";
import { say, stated } from "../../sentence.js";
import { columnRuns } from "../columns.js";
import { exact } from "../numbers.js";
import { withUnit } from "../wording.js";
import { columnRunText, columnsSummary, setupName, setupValue } from "../wording-log.js";
import {
  BINDING_NOTE,
  CONFIRMED,
  COUNTING,
  HEADINGS,
  INTERVALS,
  LIVE_WORK_NOTE,
  NONE,
  ORIGINS,
  ordersSummary,
  programText,
  RELATES_NOTE,
  RESULTS_IDENTITY,
  requirementLimit,
  SEVERITIES,
  TABLE_WORDS as T,
} from "../wording-page.js";
import { type Html, html, unbroken } from "./html.js";
import { identitySection } from "./identity.js";
import { samplingSection } from "./sampling.js";
import { plainTable } from "./table.js";
import { uncertaintySection } from "./uncertainty.js";

/** What lets the other side check the verdict: findings, recording, setup, limits with sources, counting, hashes. */
export function evidence(assessment: Assessment, resultsSha256?: string): Html {
  return html`${findings(assessment)}${recording(assessment)}${setup(assessment)}
${identitySection(assessment)}${uncertaintySection(assessment)}${ruleSet(assessment)}
<section id="counting"><h2>${HEADINGS.counting}</h2><ul>${COUNTING.map((line) => html`<li>${line}</li>`)}</ul></section>
${samplingSection(assessment)}${files(assessment, resultsSha256)}`;
}

const ORDER = ["danger", "blocks", "note", "none"];

/** A danger is called one, whatever it does to the verdict. */
function severityOf({ danger, severity }: Assessment["recording"]["findings"][number]): string {
  return danger === undefined ? severity : "danger";
}

function findings({ recording }: Assessment): Html {
  const list = [...recording.findings].sort((a, b) => ORDER.indexOf(severityOf(a)) - ORDER.indexOf(severityOf(b)));
  return html`<section id="findings"><h2>${HEADINGS.findings}</h2>
${
  list.length === 0
    ? html`<p>${NONE.findings}</p>`
    : html`<ul>${list.map((finding) => html`<li data-finding="${finding.id}"><b>${SEVERITIES[severityOf(finding)]}</b>${say`: ${finding.sentence}`}</li>\n`)}</ul>
<p class="note">${LIVE_WORK_NOTE}</p>`
}</section>`;
}

function recording({ recording: r, sources }: Assessment): Html {
  const several = sources.length > 1;
  const line = (column: (typeof r.columns)[number]) => [
    ...(several ? [column.file] : []),
    column.position,
    column.header,
    column.takenFor ?? html`<b>${T.notUsed}</b>`,
    column.reason,
  ];
  const titles = [...(several ? [T.file] : []), T.position, T.header, T.takenFor, T.reason];
  const unused = r.columns.filter(({ takenFor }) => takenFor === undefined);
  const counts = Object.entries(r.intervals).map(([name, count]) => [INTERVALS[name] ?? name, count]);
  return html`<section id="recording"><h2>${HEADINGS.recording}</h2>
${plainTable([T.intervals, T.count], counts)}
${
  r.remarks.length > 0 &&
  html`<h3>${HEADINGS.remarks}</h3><ul>${r.remarks.map((remark) => html`<li>${remark}</li>\n`)}</ul>`
}
${unused.length > 0 && html`<h3>${HEADINGS.unusedColumns}</h3>${plainTable(titles, unused.map(line))}`}
<h3>${HEADINGS.columns}</h3>
<p class="paper">${say`${columnsSummary(r.columns.length - unused.length, r.columns.length)}:`}</p>
<ul class="paper">${columnRuns(r.columns).map((run) => html`<li>${several && `${run.file}, `}${columnRunText(run)}</li>\n`)}</ul>
<details class="screen"><summary>${columnsSummary(r.columns.length - unused.length, r.columns.length)}</summary>
${plainTable(titles, r.columns.map(line))}</details></section>`;
}

function setup({ setup: entries }: Assessment): Html {
  const rows = Object.entries(entries).map(([key, { value, origin, reason }]) => [
    setupName(key),
    setupValue(key, value),
    origin === "assumed" ? html`<b>${ORIGINS[origin]}</b>` : ORIGINS[origin],
    reason,
  ]);
  return html`<section id="setup"><h2>${HEADINGS.setup}</h2>
${plainTable([T.item, T.value, T.origin, T.reason], rows)}<p class="note">${RELATES_NOTE}</p></section>`;
}

function ruleSet({ ruleSet: set, weeks }: Assessment): Html {
  const confirmed = (yes: boolean) => (yes ? CONFIRMED.true : html`<b class="unconfirmed">${CONFIRMED.false}</b>`);
  const rows = set.requirements.map((requirement) => [
    html`${stated(requirement.title)}${!requirement.binding && html`<br><small>${BINDING_NOTE}</small>`}${requirement.note !== undefined && html`<br><small>${stated(requirement.note)}</small>`}`,
    unbroken(requirementLimit(requirement, weeks)),
    requirement.clause,
    requirement.source,
    confirmed(requirement.confirmed),
  ]);
  const orders = set.requirements.flatMap(({ title, orders: limits }) =>
    limits === undefined
      ? []
      : html`<details><summary>${say`${stated(title)}: ${ordersSummary(limits.length)}`}</summary>
${plainTable(
  [T.order, T.limit, T.source, T.confirmed],
  limits.map(({ order, max, source, confirmed: yes, note }) => [
    order,
    withUnit(exact(max, 0), "%"),
    html`${source}${note !== undefined && html`<br><small>${stated(note)}</small>`}`,
    confirmed(yes),
  ]),
)}</details>`,
  );
  const hashes = [{ id: set.id, sha256: set.sha256 }, ...set.inherits];
  return html`<section id="rule-set"><h2>${HEADINGS.ruleSet}</h2>
<p>${stated(set.title)}${say` (${set.id}): ${set.standard}, ${set.edition}.`}</p>
<ul>${set.notes.map((note) => html`<li>${stated(note)}</li>\n`)}</ul>
${plainTable([T.requirement, T.limit, T.clause, T.source, T.confirmed], rows)}${orders}
${plainTable(
  [T.file, T.sha256],
  hashes.map(({ id, sha256 }) => [id, html`<code>${sha256}</code>`]),
)}</section>`;
}

function files({ sources, tool }: Assessment, resultsSha256: string | undefined): Html {
  const rows = sources.map(({ name, bytes, format, sha256 }) => [name, bytes, format, html`<code>${sha256}</code>`]);
  return html`<section id="files"><h2>${HEADINGS.files}</h2>
${plainTable([T.file, T.size, T.format, T.sha256], rows)}
<p>${programText(tool.name, tool.version)}</p>
${resultsSha256 !== undefined && html`<p>${RESULTS_IDENTITY} <code>${resultsSha256}</code></p>`}</section>`;
}
