import type { EventTrace, Measurements, VoltageEvent } from "../recording/measurements.js";
import { isoUtc } from "../recording/time.js";
import type { Assessment } from "../rules/assessment.js";

/** Choosing and ordering the events that the result lists; nothing is classified or counted anew here. */

export type ReportEvent = Assessment["events"][number];
export type EventTable = NonNullable<Assessment["ruleSet"]["requirements"][number]["table"]>;

/** How many of the worst events are listed one by one; the rest is counted. */
export const SHOWN = 24;

/** Kinds in the order of their weight. */
export const EVENT_KINDS = [
  "interruption",
  "dip",
  "swell",
  "rapid-voltage-change",
  "transient",
  "inrush-current",
] as const satisfies readonly ReportEvent["kind"][];

/** Whether the voltage itself is what is measured of it, in % of the reference. */
export function isVoltageEvent({ kind }: Pick<ReportEvent, "kind">): boolean {
  return kind === "interruption" || kind === "dip" || kind === "swell";
}

/** How far an event lies from what is usual, in %: the distance to the reference, or the size of a change. */
function deviation(event: ReportEvent): number {
  const { percent } = event;
  if (percent === undefined) return Number.NEGATIVE_INFINITY;
  return isVoltageEvent(event) ? Math.abs(percent - 100) : percent;
}

/** Worse first: dips, swells and interruptions before other kinds; then by deviation, kind, duration and time. */
export function worstFirst(events: readonly ReportEvent[]): ReportEvent[] {
  const group = (event: ReportEvent) => (isVoltageEvent(event) ? 0 : EVENT_KINDS.indexOf(event.kind));
  return [...events].sort(
    (a, b) =>
      group(a) - group(b) ||
      compare(deviation(b), deviation(a)) ||
      EVENT_KINDS.indexOf(a.kind) - EVENT_KINDS.indexOf(b.kind) ||
      b.durationS - a.durationS ||
      compare(a.start, b.start),
  );
}

/** Also right for infinities, whose difference is no number. */
function compare<T extends number | string>(a: T, b: T): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

/** "A1" for row A, column 1; undefined for an event that belongs to no cell of its table. */
export function cellOf({ row, column }: Pick<ReportEvent, "row" | "column">): string | undefined {
  return row === undefined || column === undefined ? undefined : `${row}${column}`;
}

/** The tables of dips and swells that the rule set counts events in, with the clause of each. */
export function eventTables({ ruleSet }: Assessment): { readonly clause: string; readonly table: EventTable }[] {
  return ruleSet.requirements.flatMap(({ clause, table }) => (table === undefined ? [] : { clause, table }));
}

/** Events per cell, by `cellOf`, and those of the table's kind in no cell. */
export function countsIn(
  { event: kind }: EventTable,
  events: readonly ReportEvent[],
): { readonly cells: ReadonlyMap<string, number>; readonly outside: number } {
  const cells = new Map<string, number>();
  let outside = 0;
  for (const event of events) {
    if (event.kind !== kind) continue;
    const cell = cellOf(event);
    if (cell === undefined) outside++;
    else cells.set(cell, (cells.get(cell) ?? 0) + 1);
  }
  return { cells, outside };
}

/** Where the tables of the rule set begin, in % of the reference: dips below, swells above. */
export function tableEdges(tables: readonly { readonly table: EventTable }[]): { dip?: number; swell?: number } {
  const bounds = (kind: EventTable["event"], side: "from" | "to") =>
    tables.flatMap(({ table }) => (table.event === kind ? table.rows.flatMap((row) => row[side] ?? []) : []));
  const [dips, swells] = [bounds("dip", "from"), bounds("swell", "to")];
  return {
    ...(dips.length > 0 && { dip: Math.max(...dips) }),
    ...(swells.length > 0 && { swell: Math.min(...swells) }),
  };
}

/** What was recorded around an event. */
export type EventRecord = Pick<VoltageEvent, "trace" | "waveform">;

/** Finds the record of an event that the result lists. */
export function eventRecords({ events }: Measurements): (event: ReportEvent) => EventRecord {
  const byKey = new Map(events.map((event) => [keyOf({ ...event, start: isoUtc(event.start) }), event]));
  return (event) => byKey.get(keyOf(event)) ?? {};
}

function keyOf({ kind, start, phases }: Pick<VoltageEvent, "kind" | "phases"> & { readonly start: string }): string {
  return `${kind} ${start} ${phases.join()}`;
}

/** Whether some values of a trace stand for several half cycles. */
export function isThinned({ times }: EventTrace): boolean {
  const steps = Array.from(times.subarray(1), (t, i) => t - (times[i] as number));
  return steps.length > 0 && Math.max(...steps) > 1.8 * Math.min(...steps);
}
