import { SECOND } from "../recording/time.js";
import type { Assessment } from "../rules/assessment.js";
import { type Sentence, say, strung, type Text } from "../sentence.js";
import {
  EVENT_KINDS,
  type EventRecord,
  type EventTable,
  eventTables,
  isThinned,
  type ReportEvent,
  worstFirst,
} from "./events.js";
import { decimalsOf, fixed, formatAgainstLimits } from "./numbers.js";
import { joined, lengthText, paragraph, placeText, withUnit } from "./wording.js";

/** Words and sentences about voltage events. */

type Kind = ReportEvent["kind"];

const KIND_NAMES: Readonly<Record<Kind, Sentence>> = {
  interruption: say`supply interruption`,
  dip: say`voltage dip`,
  swell: say`voltage swell`,
  "rapid-voltage-change": say`rapid voltage change`,
  transient: say`transient`,
  "inrush-current": say`inrush current`,
};

/** As short as sentences want them, one and several. */
export const KIND_COUNTS: Readonly<Record<Kind, (n: number) => Sentence>> = {
  interruption: (n) => (n === 1 ? say`${n} interruption` : say`${n} interruptions`),
  dip: (n) => (n === 1 ? say`${n} dip` : say`${n} dips`),
  swell: (n) => (n === 1 ? say`${n} swell` : say`${n} swells`),
  "rapid-voltage-change": (n) => (n === 1 ? say`${n} rapid voltage change` : say`${n} rapid voltage changes`),
  transient: (n) => (n === 1 ? say`${n} transient` : say`${n} transients`),
  "inrush-current": (n) => (n === 1 ? say`${n} inrush current` : say`${n} inrush currents`),
};

/** What a phase did, and for how long where that is known. */
const COURSES: Readonly<Record<Kind, (phase: Text, value: Text, length?: Text) => Sentence>> = {
  interruption: fell,
  dip: fell,
  swell: rose,
  "inrush-current": rose,
  "rapid-voltage-change": (phase, value, length) =>
    length === undefined
      ? say`${phase} changed by up to ${value}`
      : say`${phase} changed by up to ${value} for ${length}`,
  transient: (phase, value, length) =>
    length === undefined
      ? say`${phase} deviated by up to ${value}`
      : say`${phase} deviated by up to ${value} for ${length}`,
};

function fell(phase: Text, value: Text, length?: Text): Sentence {
  return length === undefined ? say`${phase} fell to ${value}` : say`${phase} fell to ${value} for ${length}`;
}

function rose(phase: Text, value: Text, length?: Text): Sentence {
  return length === undefined ? say`${phase} rose to ${value}` : say`${phase} rose to ${value} for ${length}`;
}

/** "voltage dip", "short interruption", "voltage dip (around an interruption)". */
export function kindText(event: ReportEvent): Sentence {
  return event.origin === "logged" ? say`${ownKindText(event)} (as the recorder listed it)` : ownKindText(event);
}

function ownKindText({ kind, interruption, interrupted }: ReportEvent): Sentence {
  if (interruption !== undefined) return interruption === "short" ? say`short interruption` : say`long interruption`;
  return interrupted === true ? say`${KIND_NAMES[kind]} (around an interruption)` : KIND_NAMES[kind];
}

/** "L1", "L1 and L3", "L1, L2 and L3". */
export function phasesText({ phases }: Pick<ReportEvent, "phases">): Text {
  return joined(phases.map((phase) => placeText({ phase })));
}

/** The bounds of the event's own cell: printed numbers must not cross them. */
export interface Bounds {
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
export function eventLength({ durationS, complete }: ReportEvent, { seconds }: Bounds): Text {
  const { min, max } = seconds;
  const inMs = { ...(min !== undefined && { min: 1000 * min }), ...(max !== undefined && { max: 1000 * max }) };
  const length =
    durationS < 1
      ? withUnit(formatAgainstLimits(1000 * durationS, inMs, 0), "ms")
      : durationS < 60
        ? withUnit(formatAgainstLimits(durationS, seconds, 2), "s")
        : lengthText(durationS * SECOND);
  return complete === false ? say`at least ${length}` : length;
}

/** "41.0 %" of the reference; a dash where that is not known. */
export function percentOf({ percent }: ReportEvent, bounds: Bounds, decimals = 1): Text {
  return percent === undefined ? "–" : withUnit(formatAgainstLimits(percent, bounds.percent, decimals), "%");
}

/** "94.3 V". */
export function extremeText({ extreme, unit }: Pick<ReportEvent, "extreme" | "unit">): Text {
  return withUnit(fixed(extreme, decimalsOf(unit)), unit);
}

/** "1 interruption, 7 dips (1 around an interruption) and 1 swell"; undefined without any event. */
export function countsText(events: readonly ReportEvent[]): Text | undefined {
  const counts = EVENT_KINDS.flatMap((kind) => {
    const all = events.filter((event) => event.kind === kind);
    if (all.length === 0) return [];
    const around = all.filter(({ interrupted }) => interrupted === true).length;
    const count = KIND_COUNTS[kind](all.length);
    return around === 0 ? count : say`${count} (${around} around an interruption)`;
  });
  return counts.length === 0 ? undefined : joined(counts);
}

/** "the deepest left 41 % for 120 ms on L1 and L3"; "it left 41 %" where it is the only event. */
function worstText(assessment: Assessment): Text | undefined {
  const sorted = worstFirst(assessment.events);
  const interruptions = sorted.filter(({ kind }) => kind === "interruption");
  const [longest] = [...interruptions].sort((a, b) => b.durationS - a.durationS);
  const worst = longest ?? sorted[0];
  if (worst === undefined) return undefined;
  const bounds = boundsBy(eventTables(assessment))(worst);
  const length = eventLength(worst, bounds);
  const size = worst.percent === undefined ? extremeText(worst) : percentOf(worst, bounds, 0);
  const phases = phasesText(worst);
  const isOnly = sorted.length === 1;
  switch (worst.kind) {
    case "interruption":
      return interruptions.length > 1
        ? say`the longest interruption lasted ${length}`
        : say`the interruption lasted ${length}`;
    case "dip":
      return isOnly
        ? say`it left ${size} for ${length} on ${phases}`
        : say`the deepest left ${size} for ${length} on ${phases}`;
    case "swell":
      return isOnly
        ? say`it reached ${size} for ${length} on ${phases}`
        : say`the highest reached ${size} for ${length} on ${phases}`;
    default: {
      const value = worst.percent === undefined ? size : say`${extremeText(worst)} (${size})`;
      return isOnly ? say`it was ${value} on ${phases}` : say`the largest was ${value} on ${phases}`;
    }
  }
}

/** "7 dips and 1 swell (the deepest left 41 % for 120 ms on L1 and L3)", for use inside a sentence. */
export function eventsFinding(assessment: Assessment): Text | undefined {
  const [counts, worst] = [countsText(assessment.events), worstText(assessment)];
  return counts === undefined || worst === undefined ? undefined : say`${counts} (${worst})`;
}

/** "7 dips and 1 swell; the deepest left 41 % for 120 ms on L1 and L3". */
export function eventsTitle(assessment: Assessment): Text {
  const [counts, worst] = [countsText(assessment.events), worstText(assessment)];
  if (counts === undefined || worst === undefined) return EVENT_WORDS.none;
  const triggered = assessment.notAssessed.some(({ reason }) => reason.id === "events-triggered");
  return triggered ? say`${counts} that the recorder was triggered by; ${worst}` : say`${counts}; ${worst}`;
}

const CUT_BY = {
  recording: { start: say`began before the recording`, end: say`went on after the recording` },
  gap: { start: say`began in missing samples`, end: say`missing samples end it` },
} as const;

/** Whether all of the event was recorded. */
export function wholeText({ complete, cutOff }: ReportEvent): Text {
  if (complete === undefined) return EVENT_WORDS.notStated;
  if (complete) return EVENT_WORDS.whole;
  const sides = (["start", "end"] as const).flatMap((side) => {
    const cause = cutOff?.[side];
    return cause === undefined ? [] : CUT_BY[cause][side];
  });
  return sides.length === 0 ? EVENT_WORDS.cutOff : say`${EVENT_WORDS.cutOff}: ${strung(sides, ", ")}`;
}

/** "L1 fell to 94.3 V (41.0 %) for 120 ms; L3 …": each phase by itself. */
export function courseTitle(event: ReportEvent, bounds: Bounds): Text {
  const { kind, unit, perPhase = [] } = event;
  const course = COURSES[kind];
  const parts = perPhase.map(({ phase, extreme, percent, durationS }) => {
    const value = extremeText({ extreme, unit });
    const withShare = percent === undefined ? value : say`${value} (${withUnit(fixed(percent, 1), "%")})`;
    const length = eventLength({ ...event, durationS }, { ...bounds, seconds: {} });
    return course(placeText({ phase }), withShare, length);
  });
  return parts.length > 0 ? strung(parts, "; ") : course(phasesText(event), extremeText(event));
}

export function moreEvents(count: number): Sentence {
  return say`${count} more in results.json.`;
}

/** "Not listed here: 970 dips and 6 swells, less severe than these; results.json holds all." */
export function restText(rest: readonly ReportEvent[]): Sentence {
  return say`Not listed here: ${countsText(rest) ?? ""}, less severe than these; results.json holds all.`;
}

export const EVENT_WORDS = {
  none: say`No dip, swell or interruption was found`,
  whole: say`whole`,
  cutOff: say`cut off`,
  notStated: say`not stated`,
  list: say`The worst events`,
  order: say`Worst first: by the distance to the reference voltage, then by duration.`,
  open: say`Course and waveform`,
  noRecord: say`No course was kept of this event.`,
  onPaper: say`On paper the course of the first ones only is shown; the page on a screen has it for each.`,
  courseNote: say`R.m.s. voltage over one cycle, refreshed each half cycle (Urms(1/2)). Pale field: the event; dashed: where the table of dips or swells begins.`,
  thinned: say`In the middle of a long event one value stands for several half cycles, the one farthest out.`,
  inrushNote: say`R.m.s. current of each half cycle. Pale field: the event.`,
  waveformTitle: say`Waveform around start and end`,
  durationAxis: say`duration`,
  percentAxis: say`voltage in % of the reference`,
  timeAxis: say`time from the start of the event in s`,
  threshold: say`threshold`,
  voltage: say`voltage in V`,
  current: say`current in A`,
} as const;

export function courseNote({ kind }: ReportEvent, { trace }: EventRecord): Text {
  const what = kind === "inrush-current" ? EVENT_WORDS.inrushNote : EVENT_WORDS.courseNote;
  return trace !== undefined && isThinned(trace) ? paragraph(what, EVENT_WORDS.thinned) : what;
}

export function waveformNote({ waveform = [] }: EventRecord): Sentence {
  const rate = waveform[0]?.samplesPerSecond ?? 0;
  return say`As sampled, ${Math.round(rate)} values per second; the pale field is the event.`;
}

export const EVENT_COLUMNS = {
  kind: say`Event`,
  phases: say`Phases`,
  start: say`Start`,
  duration: say`Duration`,
  extreme: say`Voltage`,
  percent: say`Of reference`,
  cell: say`Cell`,
  whole: say`Recorded`,
} as const;
