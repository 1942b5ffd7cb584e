import type { Assessment } from "../rules/assessment.js";
import { type ColumnRun, rangeOf } from "./columns.js";
import { instantOf, localClock, localTime } from "./local-time.js";
import { capital } from "./wording.js";

/** English headings and prose of the report page and of its live charts. */

export const DANGER_WORDS = {
  title: "Danger",
  cautions: [
    "Unless this has been put right since the recording: keep away from live parts, do not open panels or terminals, and call the network operator or a licensed electrician at once.",
    "Local codes and the rules of safe work come before anything written here.",
  ],
  measured: "What was measured:",
} as const;

export const LIVE_WORK_NOTE =
  "Checking or changing anything at a panel, a terminal or a recorder's leads is work on or near live parts. Leave it to licensed electricians or the network operator, under the local codes.";

export const HEADINGS = {
  page: "Supply voltage conformance report",
  contents: "Contents",
  requirements: "Requirements",
  weeks: "Weeks",
  weeksAndYears: "Weeks and years",
  worstSliding: "Worst seven days at any start",
  everyRow: "Every phase and order",
  notAssessed: "Not assessed, and why",
  charts: "Charts",
  recording: "Recording",
  columns: "Columns of the log and how they were understood",
  unusedColumns: "Columns that were not used",
  remarks: "Remarks on reading and deriving",
  setup: "Setup",
  findings: "Findings on the recording",
  events: "Voltage events",
  summary: "Measured values",
  ruleSet: "Limits and their sources",
  counting: "How it was counted",
  files: "Files and program",
} as const;

export const REQUIREMENT_COLUMNS = {
  requirement: "Requirement",
  place: "Worst on",
  limit: "Limit",
  allowed: "May lie outside",
  found: "Found outside",
  worst: "Worst value",
  when: "When",
  verdict: "Verdict",
  robust: "Robust",
} as const;

export const DETAIL_COLUMNS = {
  place: "Where",
  limit: "Limit",
  allowed: "May lie outside",
  found: "Found outside",
  missing: "Missing",
  worst: "Worst value",
  when: "When",
  percentile: "Value at the required share",
  flagged: "With / without flagged",
  origin: "Values",
  verdict: "Verdict",
  robust: "Robust",
} as const;

export const SUMMARY_COLUMNS = {
  quantity: "Quantity",
  place: "Where",
  min: "Lowest",
  mean: "Mean",
  max: "Highest",
  p95: "95 % at or below",
  interval: "Values of",
  n: "Number",
} as const;

export const SUMMARY_NOTE =
  "Over the whole recording, valid intervals only. Values by harmonic order stand in the charts; results.json holds all.";

export function summaryFurther(entries: number): string {
  return `Further quantities and longer intervals (${entries})`;
}

export const ROBUST_NOTE = "“robust: yes”: no filling of the missing intervals could change the verdict.";

export function detailsSummary(rows: number): string {
  return rows === 1 ? "Details" : `Every phase and order (${rows})`;
}

export const WEEK_COLUMNS = {
  from: "From",
  to: "To",
  kind: "Kind",
  coverage: "Valid",
  verdict: "Verdict",
  failed: "Not met",
} as const;

export const WEEK_KINDS = {
  consecutive: "week",
  rest: "rest, less than a week",
  "worst-sliding": "worst seven days at any start (only what is worse than in every week above)",
  year: "365 days, requirements by the year only",
  "part-of-year": "less than 365 days, requirements by the year already broken only",
} as const;

/** Said where the rows of such seven days are listed. */
export const ONLY_WORSE_NOTE = "Of seven days at any start only what is worse than in every week is listed.";

export const WORST_SLIDING_NOTE =
  "The verdict of a week can depend on where it starts. These are the seven days, starting at any interval, that show more values outside than any week above.";

export const NONE = {
  failed: "none",
  notAssessed: "Everything the limit set asks for was assessed.",
  findings: "None.",
};

export const COUNTING: readonly string[] = [
  "Valid intervals are counted, nothing is interpolated. A requirement is met when no more than the stated number of values lie outside; a value exactly on the limit lies inside.",
  "Values too high and too low count together. Each phase is judged by itself.",
  "Missing intervals are never filled in. Where they could turn the verdict and the valid ones cover less than 95 % of the time, the verdict is “undecided”.",
  "Limits are compared directly with the values (simple acceptance): no margin is taken off for the uncertainty of the instrument.",
  "The value at the required share (nearest rank) is for information; the verdict comes from counting.",
  "A week is 7 × 24 hours, also where the clock is changed.",
];

export const INTERVALS: Readonly<Record<string, string>> = {
  expected: "expected",
  present: "present and valid",
  missing: "missing",
  duplicate: "duplicate rows",
  flagged: "flagged",
  excluded: "excluded",
};

export const SEVERITIES: Readonly<Record<string, string>> = {
  danger: "danger",
  none: "no effect on the verdict",
  note: "note",
  blocks: "kept values from being judged",
};

export const ORIGINS: Readonly<Record<string, string>> = {
  given: "given",
  inferred: "inferred from the data",
  assumed: "assumed",
};

const SETUP_NAMES: Readonly<Record<string, string>> = {
  site: "Site",
  measuringPoint: "Measuring point",
  instrument: "Instrument",
  network: "Network",
  connection: "Connection",
  declaredVoltage: "Declared voltage",
  nominalFrequency: "Nominal frequency",
  zone: "Time zone of the log",
  intervalLabel: "A stamp marks the interval's",
  ruleSet: "Limit set",
  measurement: "Measured with",
  voltageRatio: "Voltage transformer ratio",
  currentRatio: "Current transformer ratio",
};

const SETUP_UNITS: Readonly<Record<string, string>> = { declaredVoltage: " V", nominalFrequency: " Hz" };

/** "Declared voltage": the name of a setup entry; one unknown here keeps its key. */
export function setupName(key: string): string {
  return SETUP_NAMES[key] ?? key;
}

export function setupUnit(key: string): string {
  return SETUP_UNITS[key] ?? "";
}

const ZONE_SOURCES: Readonly<Record<string, string>> = {
  inferred: " (as the log states)",
  assumed: " (assumed; the log names no zone)",
};

/** "times: Europe/Vienna", "times: UTC (assumed; the log names no zone)". */
export function zoneText({ recording, setup }: Assessment): string {
  return `times: ${recording.zone}${ZONE_SOURCES[setup.zone?.origin ?? ""] ?? ""}`;
}

/** From when to when was recorded, or which part of the recording was assessed; with the zone of all times. */
export function recordedText(assessment: Assessment): string {
  const { recording } = assessment;
  const { start, end, cropped } = recording;
  const clock = localClock(recording);
  const time = (iso: string) => localTime(clock, instantOf(iso));
  const zone = capital(zoneText(assessment));
  return cropped === undefined
    ? `Recorded from ${time(start)} to ${time(end)}. ${zone}.`
    : `Only ${time(start)} to ${time(end)} of a recording from ${time(cropped.start)} to ${time(cropped.end)} was assessed, on request. ${zone}.`;
}

const CLAUSES_FROM_MEMORY = /clause numbers are from memory/i;
const STANDARD_NOT_READ = /text of the standard was not read/i;

/** Where clause numbers and limits come from, as far as the notes of the limit set say so; undefined where they do not. */
export function originNote({ notes }: Assessment["ruleSet"]): string | undefined {
  const parts = [
    ...(notes.some((note) => CLAUSES_FROM_MEMORY.test(note)) ? ["clause numbers are from memory"] : []),
    ...(notes.some((note) => STANDARD_NOT_READ.test(note))
      ? [
          `the standard's own text was not read: limits come from public documents that quote it (see ${HEADINGS.ruleSet})`,
        ]
      : []),
  ];
  return parts.length === 0 ? undefined : `${capital(parts.join("; "))}.`;
}

/** "Log files: a.csv, b.csv": what the report is about where no site was named. */
export function filesText(names: readonly string[]): string {
  return `${names.length === 1 ? "Log file" : "Log files"}: ${names.join(", ")}`;
}

export function columnsSummary(used: number, total: number): string {
  return `${used} of ${total} columns used`;
}

/** "harmonic-voltage L1, orders 2 to 40, mean, %: columns 60 to 98". */
export function columnRunText({ before, after, orders, positions }: ColumnRun): string {
  const of = orders.length === 0 ? "" : `, ${orders.length === 1 ? "order" : "orders"} ${rangeOf(orders)}`;
  return `${before}${of}${after}: ${positions.length === 1 ? "column" : "columns"} ${rangeOf(positions)}`;
}

export function ordersSummary(orders: number): string {
  return `Limits of ${orders} orders`;
}

export const TABLE_WORDS = {
  file: "File",
  size: "Bytes",
  format: "Format",
  sha256: "SHA-256",
  position: "Column",
  header: "Header",
  takenFor: "Taken for",
  reason: "Reason",
  notUsed: "not used",
  item: "Item",
  value: "Value",
  origin: "Origin",
  finding: "Finding",
  effect: "Effect",
  requirement: "Requirement",
  clause: "Clause",
  source: "Source",
  confirmed: "Confirmed",
  order: "Order",
  limit: "Limit",
  intervals: "Intervals",
  count: "Number",
} as const;

export const CONFIRMED = { true: "read in a public document", false: "not confirmed" } as const;
export const NO_LIMIT = {
  events: "none, counted by cell",
  orders: "by order, see below",
  other: "not judged here",
} as const;
export const SIDEWAYS_NOTE = "Wider than this screen: scroll it sideways.";
export const BINDING_NOTE = "for information only";

export function programText(name: string, version: string): string {
  return `Made by ${name} ${version}. The same files, setup and limit set give the same report, byte for byte.`;
}

export const RELATES_NOTE =
  "The results relate only to the place and time recorded. Entries marked “given” were stated by whoever set up the recording and were not checked here.";

/** Words the live charts need in the browser. */
export const CHART_WORDS = {
  zoomIn: "Zoom in",
  zoomOut: "Zoom out",
  earlier: "Earlier",
  later: "Later",
  reset: "Whole recording",
  hint: "Or: click, then wheel (or Ctrl + wheel) and drag; keys + − ← → 0.",
  outside: "outside",
  extremes: "to",
  atOrBelow: "% at or below",
} as const;
export type ChartWords = typeof CHART_WORDS;
