import { overlaps, type Span } from "../recording/excluded-span.js";
import type { VoltageEvent } from "../recording/measurements.js";
import { isoUtc, SECOND } from "../recording/time.js";
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

/** EN 50160: a short interruption lasts up to 3 min, a long one more (quoted second-hand in a revenue-meter manual). */
const SHORT_INTERRUPTION_S = 180;

/** Undefined for other events, and for an interruption that is not complete and may have been either. */
export function interruptionLength({ kind, durationS, complete }: VoltageEvent): "short" | "long" | undefined {
  if (kind !== "interruption") return undefined;
  if (durationS > SHORT_INTERRUPTION_S) return "long";
  return complete === false ? undefined : "short";
}

/** Events as the result document lists them: numbers only, with the cell of the rule set's tables; those in an excluded span are marked. */
export function listEvents(
  events: readonly VoltageEvent[],
  { requirements }: RuleSet,
  exclusions: readonly Span[] = [],
): Assessment["events"] {
  const tables = requirements.map((r) => r.criterion).filter((c) => c.kind === "event-table");
  return events.map((event) => {
    const { origin, trace: _trace, waveform: _waveform, perPhase, cutOff, phases, start, ...numbers } = event;
    const interruption = interruptionLength(event);
    const isExcluded = overlaps(exclusions, start, start + numbers.durationS * SECOND);
    return {
      ...numbers,
      ...(origin === "logged" && { origin }),
      phases: [...phases],
      start: isoUtc(start),
      ...(perPhase !== undefined && { perPhase: perPhase.map((p) => ({ ...p, start: isoUtc(p.start) })) }),
      ...(cutOff !== undefined && { cutOff: { ...cutOff } }),
      ...(isExcluded && { excluded: true as const }),
      ...(interruption !== undefined && { interruption }),
      ...tables.map((table) => classify(event, table)).find((cell) => cell !== undefined),
    };
  });
}
