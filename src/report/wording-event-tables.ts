import type { Assessment } from "../rules/assessment.js";
import { capital, Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { countsIn, type EventTable, eventTables, type ReportEvent } from "./events.js";
import { exact } from "./numbers.js";
import { joined, paragraph } from "./wording.js";
import { type Bounds, eventLength, KIND_COUNTS, kindText, percentOf, phasesText } from "./wording-events.js";

/** Words on the tables that dips and swells are counted in, and on the picture of their cells. */

/** As many cells as a title names. */
const FEW_CELLS = 4;

/** In which cells of a table events lie. */
const CELLS = {
  dip: {
    most: (cell: string, count: number) => say`dips most often in cell ${cell} (${count})`,
    one: (cell: Text) => say`dips in cell ${cell}`,
    some: (cells: Text) => say`dips in cells ${cells}`,
    all: (counts: Text) => say`dips by cell: ${counts}`,
    none: (n: number) =>
      n === 1
        ? say`${n} dip is in no cell: longer or shorter than the columns, cut off, or without a known reference.`
        : say`${n} dips are in no cell: longer or shorter than the columns, cut off, or without a known reference.`,
    heading: (clause: Text) => say`Voltage dips by voltage u in % of the reference and duration t in ms (${clause})`,
    clause: (clause: string) => say`${clause} (dips)`,
  },
  swell: {
    most: (cell: string, count: number) => say`swells most often in cell ${cell} (${count})`,
    one: (cell: Text) => say`swells in cell ${cell}`,
    some: (cells: Text) => say`swells in cells ${cells}`,
    all: (counts: Text) => say`swells by cell: ${counts}`,
    none: (n: number) =>
      n === 1
        ? say`${n} swell is in no cell: longer or shorter than the columns, cut off, or without a known reference.`
        : say`${n} swells are in no cell: longer or shorter than the columns, cut off, or without a known reference.`,
    heading: (clause: Text) => say`Voltage swells by voltage u in % of the reference and duration t in ms (${clause})`,
    clause: (clause: string) => say`${clause} (swells)`,
  },
} as const;

/** "Dips in cells A4, B2 and D1; swells in cell T1", or of many cells the fullest. */
export function scatterTitle(assessment: Assessment): Text {
  const { events } = assessment;
  const parts = eventTables(assessment).flatMap(({ table }) => {
    const cells = [...countsIn(table, events).cells].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
    const words = CELLS[table.event];
    const [fullest] = cells;
    if (fullest === undefined) return [];
    if (cells.length > FEW_CELLS) return words.most(...fullest);
    const names = cells.map(([name]) => name).sort();
    return (names.length === 1 ? words.one : words.some)(joined(names));
  });
  return parts.length === 0 ? say`No event lies in a cell of the tables` : capital(strung(parts, "; "));
}

/** "EN 50160 … (dips)": the clause of a table. */
export function tableClause({ event }: EventTable, clause: string): Sentence {
  return CELLS[event].clause(clause);
}

export function scatterNote(shown: number, hidden: number, clauses: readonly Text[], merged: boolean): Sentence {
  return paragraph(
    shown === 1
      ? say`${shown} event by duration and residual or highest voltage.`
      : say`${shown} events by duration and residual or highest voltage.`,
    say`Triangle down: dip; triangle up: swell; cross: interruption; hollow: cut off, the true duration is longer.`,
    merged && say`A larger symbol stands for several events close together.`,
    say`Boxes: cells of ${joined(clauses)}, each with its name and the number of events in it.`,
    hidden > 0 && say`${hidden} without a voltage in % of the reference cannot be placed.`,
  );
}

/** "dip: 41.0 %, 120 ms, L1": an event under the pointer; or "3 × dip, such as …" where one symbol stands for several. */
export function spotText(event: ReportEvent, count: number, where: Bounds): Sentence {
  const what = strung([percentOf(event, where), eventLength(event, where), phasesText(event)], ", ");
  return count === 1 ? say`${kindText(event)}: ${what}` : say`${KIND_COUNTS[event.kind](count)}, such as ${what}`;
}

/** "90 > u ≥ 80": a row of the table in the standard's form; a swell lies above its threshold, not on it. */
export function rowBounds({ event, rows }: EventTable, { from, to }: EventTable["rows"][number]): Text {
  const lowest = Math.min(...rows.map((row) => row.to ?? Number.POSITIVE_INFINITY));
  const sign = event === "swell" && to === lowest ? ">" : "≥";
  const [high, low] = [new Numeral(exact(from ?? 0, 0)), new Numeral(exact(to ?? 0, 0))];
  if (from === null) return strung([`u ${sign} `, low]);
  return to === null ? strung([high, " > u"]) : strung([high, ` > u ${sign} `, low]);
}

/** "10 ≤ t ≤ 200": a column in milliseconds. */
export function columnBounds({ columns }: EventTable, { from, to }: EventTable["columns"][number]): Text {
  const first = Math.min(...columns.map((column) => column.from));
  const [shortest, longest] = [new Numeral(exact(1000 * from, 0)), new Numeral(exact(1000 * to, 0))];
  return strung([shortest, ` ${from === first ? "≤" : "<"} t ≤ `, longest]);
}

export function tableHeading({ event }: EventTable, clause: string): Sentence {
  return CELLS[event].heading(clause);
}

export function outsideTable({ event }: EventTable, outside: number): Sentence {
  return CELLS[event].none(outside);
}

/** "dips by cell: A1 3, B2 1"; undefined without any. */
export function cellCounts(table: EventTable, events: readonly ReportEvent[]): Sentence | undefined {
  const { cells, outside } = countsIn(table, events);
  const known = [...cells].sort(([a], [b]) => (a < b ? -1 : 1)).map(([cell, count]) => `${cell} ${count}`);
  const all = outside === 0 ? known : [...known, say`in none ${outside}`];
  return all.length === 0 ? undefined : CELLS[table.event].all(strung(all, ", "));
}
