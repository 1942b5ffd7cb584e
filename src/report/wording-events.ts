import { SECOND } from "../recording/time.js";
import type { Assessment } from "../rules/assessment.js";
import {
  countsIn,
  EVENT_KINDS,
  type EventRecord,
  type EventTable,
  eventTables,
  isThinned,
  type ReportEvent,
  worstFirst,
} from "./events.js";
import { decimalsOf, exact, fixed, formatAgainstLimits } from "./numbers.js";
import { capital, joined, lengthText, placeText, withUnit } from "./wording.js";

/** English words and sentences about voltage events. */

const KIND_NAMES: Readonly<Record<ReportEvent["kind"], string>> = {
  interruption: "supply interruption",
  dip: "voltage dip",
  swell: "voltage swell",
  "rapid-voltage-change": "rapid voltage change",
  transient: "transient",
  "inrush-current": "inrush current",
};

/** As many cells as a title names. */
const FEW_CELLS = 4;

/** As short as sentences want them, one and several. */
const KIND_COUNTS: Readonly<Record<ReportEvent["kind"], readonly [string, string]>> = {
  interruption: ["interruption", "interruptions"],
  dip: ["dip", "dips"],
  swell: ["swell", "swells"],
  "rapid-voltage-change": ["rapid voltage change", "rapid voltage changes"],
  transient: ["transient", "transients"],
  "inrush-current": ["inrush current", "inrush currents"],
};

/** What a phase did. */
const VERBS: Readonly<Record<ReportEvent["kind"], string>> = {
  interruption: "fell to",
  dip: "fell to",
  swell: "rose to",
  "rapid-voltage-change": "changed by up to",
  transient: "deviated by up to",
  "inrush-current": "rose to",
};

/** "voltage dip", "short interruption", "voltage dip (around an interruption)". */
export function kindText({ kind, interruption, interrupted }: ReportEvent): string {
  if (interruption !== undefined) return `${interruption} interruption`;
  return `${KIND_NAMES[kind]}${interrupted === true ? " (around an interruption)" : ""}`;
}

/** "L1", "L1 and L3", "L1, L2 and L3". */
export function phasesText({ phases }: Pick<ReportEvent, "phases">): string {
  return joined(phases.map((phase) => placeText({ phase })));
}

/** The bounds of the event's own cell: printed numbers must not cross them. */
interface Bounds {
  readonly percent: { readonly min?: number; readonly max?: number };
  readonly seconds: { readonly min?: number; readonly max?: number };
}

/** The cell bounds of every event, by the tables of the rule set. */
export function boundsBy(tables: readonly { readonly table: EventTable }[]): (event: ReportEvent) => Bounds {
  return (event) => {
    const table = tables.find(({ table: { event: kind } }) => kind === event.kind)?.table;
    const row = table?.rows.find(({ id }) => id === event.row);
    const column = table?.columns.find(({ id }) => id === event.column);
    return {
      percent: { ...(row?.to != null && { min: row.to }), ...(row?.from != null && { max: row.from }) },
      seconds: column === undefined ? {} : { min: column.from, max: column.to },
    };
  };
}

/** "120 ms", "1.25 s", "3 min 12 s"; "at least 120 ms" for an event that was cut off. */
export function eventLength({ durationS, complete }: ReportEvent, { seconds }: Bounds): string {
  const { min, max } = seconds;
  const inMs = { ...(min !== undefined && { min: 1000 * min }), ...(max !== undefined && { max: 1000 * max }) };
  const text =
    durationS < 1
      ? `${formatAgainstLimits(1000 * durationS, inMs, 0)} ms`
      : durationS < 60
        ? `${formatAgainstLimits(durationS, seconds, 2)} s`
        : lengthText(durationS * SECOND);
  return complete === false ? `at least ${text}` : text;
}

/** "41.0 %" of the reference; a dash where that is not known. */
export function percentOf({ percent }: ReportEvent, bounds: Bounds, decimals = 1): string {
  return percent === undefined ? "–" : `${formatAgainstLimits(percent, bounds.percent, decimals)} %`;
}

/** "94.3 V". */
export function extremeText({ extreme, unit }: Pick<ReportEvent, "extreme" | "unit">): string {
  return withUnit(fixed(extreme, decimalsOf(unit)), unit);
}

/** "1 interruption, 7 dips (1 around an interruption) and 1 swell"; undefined without any event. */
export function countsText(events: readonly ReportEvent[]): string | undefined {
  const counts = EVENT_KINDS.flatMap((kind) => {
    const all = events.filter((event) => event.kind === kind);
    if (all.length === 0) return [];
    const around = all.filter(({ interrupted }) => interrupted === true).length;
    const note = around === 0 ? "" : ` (${around} around an interruption)`;
    return `${all.length} ${KIND_COUNTS[kind][all.length === 1 ? 0 : 1]}${note}`;
  });
  return counts.length === 0 ? undefined : joined(counts);
}

/** "the deepest left 41 % for 120 ms on L1 and L3". */
function worstText(assessment: Assessment): string | undefined {
  const sorted = worstFirst(assessment.events);
  const interruptions = sorted.filter(({ kind }) => kind === "interruption");
  const [longest] = [...interruptions].sort((a, b) => b.durationS - a.durationS);
  const worst = longest ?? sorted[0];
  if (worst === undefined) return undefined;
  const bounds = boundsBy(eventTables(assessment))(worst);
  const lasting = eventLength(worst, bounds);
  const size = worst.percent === undefined ? extremeText(worst) : percentOf(worst, bounds, 0);
  const on = `on ${phasesText(worst)}`;
  const isOnly = sorted.length === 1;
  const which = (superlative: string) => (isOnly ? "it" : `the ${superlative}`);
  switch (worst.kind) {
    case "interruption":
      return `the ${interruptions.length > 1 ? "longest " : ""}interruption lasted ${lasting}`;
    case "dip":
      return `${which("deepest")} left ${size} for ${lasting} ${on}`;
    case "swell":
      return `${which("highest")} reached ${size} for ${lasting} ${on}`;
    default:
      return `${which("largest")} was ${extremeText(worst)}${worst.percent === undefined ? "" : ` (${size})`} ${on}`;
  }
}

/** "7 dips and 1 swell (the deepest left 41 % for 120 ms on L1 and L3)", for use inside a sentence. */
export function eventsFinding(assessment: Assessment): string | undefined {
  const counts = countsText(assessment.events);
  return counts === undefined ? undefined : `${counts} (${worstText(assessment)})`;
}

/** "7 dips and 1 swell; the deepest left 41 % for 120 ms on L1 and L3". */
export function eventsTitle(assessment: Assessment): string {
  const counts = countsText(assessment.events);
  return counts === undefined ? EVENT_WORDS.none : `${counts}; ${worstText(assessment)}`;
}

const CUT_BY: Readonly<Record<"recording" | "gap", Readonly<Record<"start" | "end", string>>>> = {
  recording: { start: "began before the recording", end: "went on after the recording" },
  gap: { start: "began in missing samples", end: "missing samples end it" },
};

/** Whether all of the event was recorded. */
export function wholeText({ complete, cutOff }: ReportEvent): string {
  if (complete === undefined) return EVENT_WORDS.notStated;
  if (complete) return EVENT_WORDS.whole;
  const sides = (["start", "end"] as const).flatMap((side) => {
    const cause = cutOff?.[side];
    return cause === undefined ? [] : CUT_BY[cause][side];
  });
  return sides.length === 0 ? EVENT_WORDS.cutOff : `${EVENT_WORDS.cutOff}: ${sides.join(", ")}`;
}

/** "L1 fell to 94.3 V (41.0 %) for 120 ms; L3 …": each phase by itself. */
export function courseTitle(event: ReportEvent, bounds: Bounds): string {
  const { kind, unit, perPhase = [] } = event;
  const verb = VERBS[kind];
  const parts = perPhase.map(({ phase, extreme, percent, durationS }) => {
    const share = percent === undefined ? "" : ` (${fixed(percent, 1)} %)`;
    const length = eventLength({ ...event, durationS }, { ...bounds, seconds: {} });
    return `${placeText({ phase })} ${verb} ${extremeText({ extreme, unit })}${share} for ${length}`;
  });
  return parts.length > 0 ? parts.join("; ") : `${phasesText(event)} ${verb} ${extremeText(event)}`;
}

/** "Dips lie in cells A4, B2 and D1; swells in cell T1", or of many cells the fullest. */
export function scatterTitle(assessment: Assessment): string {
  const { events } = assessment;
  const parts = eventTables(assessment).flatMap(({ table }) => {
    const cells = [...countsIn(table, events).cells].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
    const [, several] = KIND_COUNTS[table.event];
    const [fullest] = cells;
    if (fullest === undefined) return [];
    if (cells.length > FEW_CELLS) return `${several} most often in cell ${fullest[0]} (${fullest[1]})`;
    const names = cells.map(([name]) => name).sort();
    return `${several} in ${names.length === 1 ? "cell" : "cells"} ${joined(names)}`;
  });
  return parts.length === 0 ? "No event lies in a cell of the tables" : capital(parts.join("; "));
}

export function scatterNote(shown: number, hidden: number, clauses: readonly string[], merged: boolean): string {
  return [
    `${shown} ${shown === 1 ? "event" : "events"} by duration and residual or highest voltage.`,
    "Triangle down: dip; triangle up: swell; cross: interruption; hollow: cut off, the true duration is longer.",
    merged ? "A larger symbol stands for several events close together." : "",
    `Boxes: cells of ${joined(clauses)}, each with its name and the number of events in it.`,
    hidden > 0 ? `${hidden} without a voltage in % of the reference cannot be placed.` : "",
  ]
    .filter((text) => text !== "")
    .join(" ");
}

/** "90 > u ≥ 80": a row of the table in the standard's form; a swell lies above its threshold, not on it. */
export function rowBounds({ event, rows }: EventTable, { from, to }: EventTable["rows"][number]): string {
  const lowest = Math.min(...rows.map((row) => row.to ?? Number.POSITIVE_INFINITY));
  const sign = event === "swell" && to === lowest ? ">" : "≥";
  if (from === null) return `u ${sign} ${exact(to ?? 0, 0)}`;
  return to === null ? `${exact(from, 0)} > u` : `${exact(from, 0)} > u ${sign} ${exact(to, 0)}`;
}

/** "10 ≤ t ≤ 200": a column in milliseconds. */
export function columnBounds({ columns }: EventTable, { from, to }: EventTable["columns"][number]): string {
  const first = Math.min(...columns.map((column) => column.from));
  return `${exact(1000 * from, 0)} ${from === first ? "≤" : "<"} t ≤ ${exact(1000 * to, 0)}`;
}

export function tableHeading({ event }: EventTable, clause: string): string {
  return `${event === "dip" ? "Voltage dips" : "Voltage swells"} by voltage u in % of the reference and duration t in ms (${clause})`;
}

export function outsideTable({ event }: EventTable, outside: number): string {
  const [one, several] = KIND_COUNTS[event];
  return `${outside} ${outside === 1 ? `${one} is` : `${several} are`} in no cell: longer or shorter than the columns, cut off, or without a known reference.`;
}

/** "dips in cells: A1 3, B2 1"; undefined without any. */
export function cellCounts(table: EventTable, events: readonly ReportEvent[]): string | undefined {
  const { cells, outside } = countsIn(table, events);
  const known = [...cells].sort(([a], [b]) => (a < b ? -1 : 1)).map(([cell, count]) => `${cell} ${count}`);
  const all = outside === 0 ? known : [...known, `none ${outside}`];
  return all.length === 0 ? undefined : `${KIND_COUNTS[table.event][1]} by cell: ${all.join(", ")}`;
}

export function moreEvents(count: number): string {
  return `${count} more in results.json.`;
}

/** "Not listed here: 970 dips and 6 swells; all are in results.json." */
export function restText(rest: readonly ReportEvent[]): string {
  return `Not listed here: ${countsText(rest)}, less severe than these; results.json holds all.`;
}

export const EVENT_WORDS = {
  none: "No dip, swell or interruption was found",
  whole: "whole",
  cutOff: "cut off",
  notStated: "not stated",
  list: "The worst events",
  order: "Worst first: by the distance to the reference voltage, then by duration.",
  open: "Course and waveform",
  noRecord: "No course was kept of this event.",
  onPaper: "On paper the course of the first ones only is shown; the page on a screen has it for each.",
  courseNote:
    "R.m.s. voltage over one cycle, refreshed each half cycle (Urms(1/2)). Pale field: the event; dashed: where the table of dips or swells begins.",
  thinned: "In the middle of a long event one value stands for several half cycles, the one farthest out.",
  inrushNote: "R.m.s. current of each half cycle. Pale field: the event.",
  waveformTitle: "Waveform around start and end",
  durationAxis: "duration",
  percentAxis: "voltage in % of the reference",
  timeAxis: "time from the start of the event in s",
  threshold: "threshold",
  voltage: "voltage in V",
  current: "current in A",
} as const;

export function courseNote({ kind }: ReportEvent, { trace }: EventRecord): string {
  const what = kind === "inrush-current" ? EVENT_WORDS.inrushNote : EVENT_WORDS.courseNote;
  return trace !== undefined && isThinned(trace) ? `${what} ${EVENT_WORDS.thinned}` : what;
}

export function waveformNote({ waveform = [] }: EventRecord): string {
  const rate = waveform[0]?.samplesPerSecond ?? 0;
  return `As sampled, ${exact(Math.round(rate), 0)} values per second; the pale field is the event.`;
}

export const EVENT_COLUMNS = {
  kind: "Event",
  phases: "Phases",
  start: "Start",
  duration: "Duration",
  extreme: "Voltage",
  percent: "Of reference",
  cell: "Cell",
  whole: "Recorded",
} as const;
