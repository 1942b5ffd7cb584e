import type { Assessment } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";
import { eventPlots } from "../charts/event-pictures.js";
import { eventScatter } from "../charts/event-scatter.js";
import { drawPlot, type Plot } from "../charts/plot.js";
import {
  cellOf,
  countsIn,
  type EventRecord,
  type EventTable,
  eventTables,
  type ReportEvent,
  SHOWN,
  tableEdges,
  worstFirst,
} from "../events.js";
import type { Language } from "../languages/language.js";
import { exactLocalTime, instantOf, type LocalClock } from "../local-time.js";
import { columnBounds, outsideTable, rowBounds, tableHeading } from "../wording-event-tables.js";
import {
  boundsBy,
  EVENT_COLUMNS as C,
  courseNote,
  courseTitle,
  eventLength,
  eventsTitle,
  extremeText,
  kindText,
  percentOf,
  phasesText,
  restText,
  EVENT_WORDS as W,
  waveformNote,
  wholeText,
} from "../wording-events.js";
import { EXCLUDED_EVENT } from "../wording-exclusions.js";
import { HEADINGS } from "../wording-page.js";
import { figure } from "./charts.js";
import { Html, html, unbroken } from "./html.js";
import { cell, head } from "./table.js";

/** Events whose course is on paper as well. */
const ON_PAPER = 6;

/**
 * Events: the finding, how many lie in which cell, where each lies, and the worst ones with their course and waveform.
 * Nothing where the log could not show events.
 */
export async function eventsSection(
  assessment: Assessment,
  clock: LocalClock,
  recordOf: (event: ReportEvent) => EventRecord,
  sought: boolean,
  language: Language,
): Promise<Html | undefined> {
  const { events } = assessment;
  if (events.length === 0 && !sought) return undefined;
  const tables = eventTables(assessment);
  const scatter = eventScatter(assessment);
  const list = worstFirst(events);
  const rest = list.slice(SHOWN);
  return html`<section id="events"><h2>${HEADINGS.events}</h2>
<p class="finding">${unbroken(eventsTitle(assessment))}.</p>
${events.length > 0 && html`<div class="tables">${tables.map(({ clause, table }) => countsTable(table, clause, events))}</div>`}
${scatter !== undefined && html`<div class="figures">${await figure(scatter, language)}</div>`}
${
  events.length > 0 &&
  html`<h3>${W.list}</h3><p class="note">${W.order} ${list.length > ON_PAPER && html`<span class="paper">${W.onPaper}</span>`}</p>
${eventTable(list.slice(0, SHOWN), tables, clock, recordOf)}
${rest.length > 0 && html`<p>${restText(rest)}</p>`}`
}</section>
`;
}

/** The counts in the form of the standard's table. */
function countsTable(table: EventTable, clause: string, events: readonly ReportEvent[]): Html {
  const { cells, outside } = countsIn(table, events);
  const line = (row: EventTable["rows"][number]) => html`<tr><th scope="row">${rowBounds(table, row)}</th>
${table.columns.map((column) => {
  const name = `${row.id}${column.id}`;
  const count = cells.get(name) ?? 0;
  return html`<td data-cell="${name}"${count > 0 && html` class="some"`}><small>${name}</small> ${count}</td>`;
})}</tr>
`;
  return html`<div class="wide"><table class="counts" data-table="${table.event}"><caption>${tableHeading(table, clause)}</caption>
${head(["u", ...table.columns.map((column) => columnBounds(table, column))])}<tbody>
${table.rows.map(line)}</tbody></table>
${outside > 0 && html`<p class="note">${outsideTable(table, outside)}</p>`}</div>`;
}

function eventTable(
  list: readonly ReportEvent[],
  tables: ReturnType<typeof eventTables>,
  clock: LocalClock,
  recordOf: (event: ReportEvent) => EventRecord,
): Html {
  const boundsOf = boundsBy(tables);
  const limits = tableEdges(tables);
  const line = (event: ReportEvent, i: number) => {
    const bounds = boundsOf(event);
    return html`<tr class="event"><th scope="row">${i + 1}. ${kindText(event)}${event.excluded === true && html`<br><small>${EXCLUDED_EVENT}</small>`}</th>
${cell(C.phases, phasesText(event))}${cell(C.start, exactLocalTime(clock, instantOf(event.start)))}
${cell(C.duration, unbroken(eventLength(event, bounds)))}${cell(C.extreme, unbroken(extremeText(event)))}
${cell(C.percent, unbroken(percentOf(event, bounds)))}${cell(C.cell, cellOf(event) ?? "–")}${cell(C.whole, wholeText(event))}</tr>
<tr class="more${i < ON_PAPER && " on-paper"}"><td colspan="8"><details><summary>${W.open}</summary>
${pictures(event, recordOf(event), limits, courseTitle(event, bounds))}</details></td></tr>
`;
  };
  return html`<table class="cards events">${head(Object.values(C))}<tbody>
${list.map(line)}</tbody></table>`;
}

function pictures(event: ReportEvent, record: EventRecord, limits: ReturnType<typeof tableEdges>, title: Text): Html {
  const { course, waveform } = eventPlots(event, record, limits);
  if (course === undefined && waveform === undefined) return html`<p class="note">${W.noRecord}</p>`;
  return html`<div class="figures">
${course !== undefined && picture(course, title, courseNote(event, record))}
${waveform !== undefined && picture(waveform, W.waveformTitle, waveformNote(record))}</div>`;
}

function picture(plot: Plot, title: Text, note: Text): Html {
  return html`<figure class="event"><figcaption>${unbroken(title)}</figcaption>
<div class="picture" role="img" aria-label="${title}">${new Html((language) => drawPlot(plot, language))}</div>
<p class="note">${note}</p></figure>`;
}
