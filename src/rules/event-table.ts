import type { VoltageEvent } from "../recording/measurements.js";
import { isoUtc } from "../recording/time.js";
import type { Assessment } from "./assessment.js";
import type { Criterion, RuleSet } from "./rule-set.js";

export type EventTable = Extract<Criterion, { kind: "event-table" }>;

export interface Cell {
  readonly row: string;
  readonly column: string;
}

/**
 * The cell of a table of dips or swells (EN 50160, 4.3.2) that an event belongs to: by its residual or
 * highest voltage in % of the reference, from > u ≥ to, and its duration in s, from < t ≤ to, the first column with its
 * lower end. Undefined for an event of another kind, for one longer or shorter than the columns, and for one whose
 * voltage in % or whole duration is not known.
 */
export function classify(event: VoltageEvent, { event: kind, rows, columns }: EventTable): Cell | undefined {
  const { percent, durationS } = event;
  if (event.kind !== kind || event.complete === false || percent === undefined) return undefined;
  const row = rows.find(({ from, to }) => (from === null || from > percent) && (to === null || percent >= to));
  const shortest = Math.min(...columns.map((c) => c.from));
  const column = columns.find(
    ({ from, to }) => (from < durationS || (from === shortest && durationS === from)) && durationS <= to,
  );
  return row && column && { row: row.id, column: column.id };
}

export interface TableCounts {
  /** Every cell of the table, row by row. */
  readonly cells: readonly (Cell & { readonly count: number })[];
  /** Events of the table's kind that belong to no cell. */
  readonly outside: number;
}

/** Counts the events in each cell. A polyphase event is one; events that follow one another closely stay apart. */
export function countCells(events: readonly VoltageEvent[], table: EventTable): TableCounts {
  const counts = new Map<string, number>();
  const key = ({ row, column }: Cell) => JSON.stringify([row, column]);
  let outside = 0;
  for (const event of events) {
    if (event.kind !== table.event) continue;
    const cell = classify(event, table);
    if (cell === undefined) outside++;
    else counts.set(key(cell), (counts.get(key(cell)) ?? 0) + 1);
  }
  const cells = table.rows.flatMap(({ id: row }) => table.columns.map(({ id: column }) => ({ row, column })));
  return { cells: cells.map((cell) => ({ ...cell, count: counts.get(key(cell)) ?? 0 })), outside };
}

/** EN 50160: a short interruption lasts up to 3 min, a long one more (quoted second-hand in a revenue-meter manual). */
const SHORT_INTERRUPTION_S = 180;

/** Undefined for other events, and for an interruption that is not complete and may have been either. */
export function interruptionLength({ kind, durationS, complete }: VoltageEvent): "short" | "long" | undefined {
  if (kind !== "interruption") return undefined;
  if (durationS > SHORT_INTERRUPTION_S) return "long";
  return complete === false ? undefined : "short";
}

/** Events as the result document lists them: numbers only, with the cell of the rule set's tables. */
export function listEvents(events: readonly VoltageEvent[], { requirements }: RuleSet): Assessment["events"] {
  const tables = requirements.map((r) => r.criterion).filter((c) => c.kind === "event-table");
  return events.map((event) => {
    const { origin: _origin, trace: _trace, waveform: _waveform, perPhase, cutOff, phases, start, ...numbers } = event;
    const interruption = interruptionLength(event);
    return {
      ...numbers,
      phases: [...phases],
      start: isoUtc(start),
      ...(perPhase !== undefined && { perPhase: perPhase.map((p) => ({ ...p, start: isoUtc(p.start) })) }),
      ...(cutOff !== undefined && { cutOff: { ...cutOff } }),
      ...(interruption !== undefined && { interruption }),
      ...tables.map((table) => classify(event, table)).find((cell) => cell !== undefined),
    };
  });
}
