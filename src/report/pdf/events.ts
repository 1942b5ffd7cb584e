import type { Measurements } from "../../recording/measurements.js";
import type { Assessment } from "../../rules/assessment.js";
import { capital, strung } from "../../sentence.js";
import { eventPlots } from "../charts/event-pictures.js";
import { eventScatter } from "../charts/event-scatter.js";
import {
  cellOf,
  countsIn,
  type EventTable,
  eventRecords,
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
  EVENT_WORDS as W,
  waveformNote,
  wholeText,
} from "../wording-events.js";
import { HEADINGS } from "../wording-page.js";
import { REPORT_HEADINGS, shownEvents } from "../wording-report.js";
import { type Block, type Cell, heading, note, paragraph, table } from "./blocks.js";
import { chartPicture, plotPicture } from "./pictures.js";

/** As many events as the paper lists at all; more than that nobody reads on paper. */
export const LISTED = 200;

/** Events: how many lie in which cell, the worst with their pictures, further ones in a table; nothing where none were sought. */
export async function events(
  assessment: Assessment,
  measurements: Measurements,
  clock: LocalClock,
  language: Language,
): Promise<Block[]> {
  const all = worstFirst(assessment.events);
  if (all.length === 0 && !measurements.eventsSought) return [];
  const intro = [heading(1, HEADINGS.events), paragraph(strung([capital(eventsTitle(assessment)), "."]))];
  if (all.length === 0) return intro;
  const tables = eventTables(assessment);
  const scatter = eventScatter(assessment);
  const line = lineOf(assessment, clock);
  const rest = all.slice(SHOWN, LISTED);
  return [
    ...intro,
    ...tables.flatMap(({ table: counted, clause }) => countsTable(counted, clause, all)),
    ...(scatter === undefined ? [] : [await chartPicture(scatter, language)]),
    heading(2, W.list),
    note(W.order),
    table(columns(), all.slice(0, SHOWN).map(line), 8),
    ...all.slice(0, SHOWN).flatMap((event, i) => course(event, i, assessment, measurements, clock, language)),
    ...(rest.length > 0
      ? [
          heading(2, REPORT_HEADINGS.otherEvents),
          table(
            columns(),
            rest.map((event, i) => line(event, i + SHOWN)),
            7.5,
          ),
        ]
      : []),
    note(shownEvents(Math.min(all.length, LISTED), all.length)),
  ];
}

function columns(): Parameters<typeof table>[0] {
  return [
    [C.kind, 2.2],
    [C.phases, 1.3],
    [C.start, 2.9],
    [C.duration, 1.1],
    [C.extreme, 1],
    [C.percent, 1.1],
    [C.cell, 0],
    [C.whole, 1.3],
  ];
}

function lineOf(assessment: Assessment, clock: LocalClock): (event: ReportEvent, i: number) => Cell[] {
  const boundsOf = boundsBy(eventTables(assessment));
  return (event, i) => {
    const bounds = boundsOf(event);
    return [
      strung([`${i + 1}. `, kindText(event)]),
      phasesText(event),
      exactLocalTime(clock, instantOf(event.start)),
      eventLength(event, bounds),
      extremeText(event),
      percentOf(event, bounds),
      cellOf(event) ?? "–",
      wholeText(event),
    ];
  };
}

/** Course and waveform of one event, as far as they were kept. */
function course(
  event: ReportEvent,
  i: number,
  assessment: Assessment,
  measurements: Measurements,
  clock: LocalClock,
  language: Language,
): Block[] {
  const tables = eventTables(assessment);
  const record = eventRecords(measurements)(event);
  const plots = eventPlots(event, record, tableEdges(tables));
  if (plots.course === undefined && plots.waveform === undefined) return [];
  const title = strung([`${i + 1}. `, kindText(event), ", ", exactLocalTime(clock, instantOf(event.start))]);
  const told = courseTitle(event, boundsBy(tables)(event));
  const shown = [
    ...(plots.course === undefined ? [] : [plotPicture(plots.course, told, courseNote(event, record), language)]),
    ...(plots.waveform === undefined
      ? []
      : [plotPicture(plots.waveform, W.waveformTitle, waveformNote(record), language)]),
  ];
  return [heading(3, title), { kind: "beside", pictures: shown }];
}

function countsTable(counted: EventTable, clause: string, all: readonly ReportEvent[]): Block[] {
  const { cells, outside } = countsIn(counted, all);
  const cell = (row: string, column: string): Cell => {
    const name = `${row}${column}`;
    const count = cells.get(name) ?? 0;
    return count === 0 ? `${name}: 0` : { text: `${name}: ${count}`, bold: true };
  };
  return [
    heading(2, tableHeading(counted, clause)),
    table(
      [["u", 1.3], ...counted.columns.map((column) => [columnBounds(counted, column), 1] as const)],
      counted.rows.map((row) => [rowBounds(counted, row), ...counted.columns.map(({ id }) => cell(row.id, id))]),
    ),
    ...(outside > 0 ? [note(outsideTable(counted, outside))] : []),
  ];
}
