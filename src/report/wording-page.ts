import type { Assessment } from "../rules/assessment.js";
import { capital, type Sentence, say, strung, type Text } from "../sentence.js";
import { type Language, type Translated, translated } from "./languages/language.js";
import { instantOf, localClock, localTime } from "./local-time.js";
import { limitText, paragraph, shareText } from "./wording.js";

/** Headings and prose of the report page and of its live charts. */

export const DANGER_WORDS = {
  title: say`Danger`,
  cautions: [
    say`Unless this has been put right since the recording: keep away from live parts, do not open panels or terminals, and call the network operator or a licensed electrician at once.`,
    say`Local codes and the rules of safe work come before anything written here.`,
  ],
  measured: say`What was measured:`,
} as const;

export const LIVE_WORK_NOTE = say`Checking or changing anything at a panel, a terminal or a recorder's leads is work on or near live parts. Leave it to licensed electricians or the network operator, under the local codes.`;

export const HEADINGS = {
  page: say`Supply voltage conformance report`,
  contents: say`Contents`,
  requirements: say`Requirements`,
  weeks: say`Weeks`,
  weeksAndYears: say`Weeks and years`,
  worstSliding: say`Worst seven days at any start`,
  everyRow: say`Every phase and order`,
  notAssessed: say`Not assessed, and why`,
  charts: say`Charts`,
  recording: say`Recording`,
  columns: say`Columns of the log and how they were understood`,
  unusedColumns: say`Columns that were not used`,
  remarks: say`Remarks on reading and deriving`,
  setup: say`Setup`,
  findings: say`Findings on the recording`,
  events: say`Voltage events`,
  summary: say`Measured values`,
  ruleSet: say`Limits and their sources`,
  counting: say`How it was counted`,
  files: say`Files and program`,
} as const;

export const REQUIREMENT_COLUMNS = {
  requirement: say`Requirement`,
  place: say`Worst on`,
  limit: say`Limit`,
  allowed: say`May lie outside`,
  found: say`Found outside`,
  worst: say`Worst value`,
  when: say`When`,
  verdict: say`Verdict`,
  robust: say`Robust`,
} as const;

export const DETAIL_COLUMNS = {
  place: say`Where`,
  limit: say`Limit`,
  allowed: say`May lie outside`,
  found: say`Found outside`,
  missing: say`Missing`,
  worst: say`Worst value`,
  when: say`When`,
  percentile: say`Value at the required share`,
  flagged: say`With / without flagged`,
  origin: say`Values`,
  verdict: say`Verdict`,
  robust: say`Robust`,
} as const;

export const SUMMARY_COLUMNS = {
  quantity: say`Quantity`,
  place: say`Where`,
  min: say`Lowest`,
  mean: say`Mean`,
  max: say`Highest`,
  p95: say`95 % at or below`,
  interval: say`Values of`,
  n: say`Number`,
} as const;

export const SUMMARY_NOTE = say`Over the whole recording, valid intervals only. Values by harmonic order stand in the charts; results.json holds all.`;

export function summaryFurther(entries: number): Sentence {
  return say`Further quantities and longer intervals (${entries})`;
}

export const ROBUST_NOTE = say`“robust: yes”: no filling of the missing intervals could change the verdict.`;

export function detailsSummary(rows: number): Sentence {
  return rows === 1 ? say`Details` : say`Every phase and order (${rows})`;
}

/** Whether the values of a row were logged or computed here. */
export const VALUE_ORIGINS = { logged: say`logged`, computed: say`computed` } as const;

export const WEEK_COLUMNS = {
  from: say`From`,
  to: say`To`,
  kind: say`Kind`,
  coverage: say`Valid`,
  verdict: say`Verdict`,
  failed: say`Not met`,
} as const;

const WEEK_KINDS = {
  consecutive: say`week`,
  rest: say`rest, less than a week`,
  "worst-sliding": say`worst seven days at any start (only what is worse than in every week above)`,
  year: say`365 days, requirements by the year only`,
  "part-of-year": say`less than 365 days, requirements by the year already broken only`,
} as const;

export function weekKindText({ kind, complete }: Assessment["weeks"][number]): Sentence {
  if (kind === "worst-sliding") return WEEK_KINDS[kind];
  if (kind === "year") return complete ? WEEK_KINDS.year : WEEK_KINDS["part-of-year"];
  return complete ? WEEK_KINDS.consecutive : WEEK_KINDS.rest;
}

/** Said where the rows of such seven days are listed. */
export const ONLY_WORSE_NOTE = say`Of seven days at any start only what is worse than in every week is listed.`;

export const WORST_SLIDING_NOTE = say`The verdict of a week can depend on where it starts. These are the seven days, starting at any interval, that show more values outside than any week above.`;

export const NONE = {
  failed: say`none`,
  notAssessed: say`Everything the limit set asks for was assessed.`,
  findings: say`None.`,
};

export const COUNTING: readonly Sentence[] = [
  say`Valid intervals are counted, nothing is interpolated. A requirement is met when no more than the stated number of values lie outside; a value exactly on the limit lies inside.`,
  say`Values too high and too low count together. Each phase is judged by itself.`,
  say`Missing intervals are never filled in. Where they could turn the verdict and the valid ones cover less than 95 % of the time, the verdict is “undecided”.`,
  say`Limits are compared with the values by the decision rule stated above.`,
  say`The value at the required share (nearest rank) is for information; the verdict comes from counting.`,
  say`A week is 7 × 24 hours, also where the clock is changed.`,
];

export const INTERVALS: Readonly<Record<string, Sentence>> = {
  expected: say`expected`,
  present: say`present and valid`,
  missing: say`missing`,
  duplicate: say`duplicate rows`,
  flagged: say`flagged`,
  excluded: say`excluded`,
};

export const SEVERITIES: Readonly<Record<string, Sentence>> = {
  danger: say`danger`,
  none: say`no effect on the verdict`,
  note: say`note`,
  blocks: say`kept values from being judged`,
};

export const ORIGINS: Readonly<Record<string, Sentence>> = {
  given: say`given`,
  inferred: say`inferred from the data`,
  assumed: say`assumed`,
};

/** "times: Europe/Vienna", "times: UTC (assumed; the log names no zone)". */
export function zoneText({ recording, setup }: Assessment): Sentence {
  const { zone } = recording;
  if (setup.zone?.origin === "inferred") return say`times: ${zone} (as the log states)`;
  if (setup.zone?.origin === "assumed") return say`times: ${zone} (assumed; the log names no zone)`;
  return say`times: ${zone}`;
}

/** From when to when was recorded, or which part of the recording was assessed; with the zone of all times. */
export function recordedText(assessment: Assessment): Sentence {
  const { recording } = assessment;
  const { start, end, cropped } = recording;
  const clock = localClock(recording);
  const time = (iso: string) => localTime(clock, instantOf(iso));
  return paragraph(
    cropped === undefined
      ? say`Recorded from ${time(start)} to ${time(end)}.`
      : say`Only ${time(start)} to ${time(end)} of a recording from ${time(cropped.start)} to ${time(cropped.end)} was assessed, on request.`,
    say`${capital(zoneText(assessment))}.`,
  );
}

const CLAUSES_FROM_MEMORY = /clause numbers are from memory/i;
const STANDARD_NOT_READ = /text of the standard was not read/i;

/** Where clause numbers and limits come from, as far as the notes of the limit set say so; undefined where they do not. */
export function originNote({ notes }: Assessment["ruleSet"]): Sentence | undefined {
  const parts = [
    ...(notes.some((note) => CLAUSES_FROM_MEMORY.test(note)) ? [say`Clause numbers are from memory.`] : []),
    ...(notes.some((note) => STANDARD_NOT_READ.test(note))
      ? [
          say`The standard's own text was not read: limits come from public documents that quote it (see ${HEADINGS.ruleSet}).`,
        ]
      : []),
  ];
  return parts.length === 0 ? undefined : paragraph(...parts);
}

/** "Log files: a.csv, b.csv": what the report is about where no site was named. */
export function filesText(names: readonly string[]): Sentence {
  return names.length === 1 ? say`Log file: ${strung(names)}` : say`Log files: ${strung(names, ", ")}`;
}

export function ordersSummary(orders: number): Sentence {
  return say`Limits of ${orders} orders`;
}

export const TABLE_WORDS = {
  file: say`File`,
  size: say`Bytes`,
  format: say`Format`,
  sha256: say`SHA-256`,
  position: say`Column`,
  header: say`Header`,
  takenFor: say`Taken for`,
  reason: say`Reason`,
  notUsed: say`not used`,
  item: say`Item`,
  value: say`Value`,
  origin: say`Origin`,
  finding: say`Finding`,
  effect: say`Effect`,
  requirement: say`Requirement`,
  clause: say`Clause`,
  source: say`Source`,
  confirmed: say`Confirmed`,
  order: say`Order`,
  limit: say`Limit`,
  intervals: say`Intervals`,
  count: say`Number`,
} as const;

export const CONFIRMED = { true: say`read in a public document`, false: say`not confirmed` } as const;
export const NO_LIMIT = {
  events: say`none, counted by cell`,
  orders: say`by order, see below`,
  other: say`not judged here`,
} as const;
export const SIDEWAYS_NOTE = say`Wider than this screen: scroll it sideways.`;
export const BINDING_NOTE = say`for information only`;

/** Before the hash. */
export const RESULTS_IDENTITY = say`This report rests on the file results.json with the SHA-256`;

export function programText(name: string, version: string): Sentence {
  return say`Made by ${name} ${version}. The same files, setup and limit set give the same report, byte for byte.`;
}

export const RELATES_NOTE = say`The results relate only to the place and time recorded. Entries marked “given” were stated by whoever set up the recording and were not checked here.`;

/** Words that the live charts need in the browser, which puts numbers in the place of marks: #, #1, #2. */
const CHART_WORDS = {
  zoomIn: say`Zoom in`,
  zoomOut: say`Zoom out`,
  earlier: say`Earlier`,
  later: say`Later`,
  reset: say`Whole recording`,
  hint: say`Or: click, then wheel (or Ctrl + wheel) and drag; keys + − ← → 0.`,
  outside: say`outside`,
  extremes: say`${"#1"} to ${"#2"}`,
  atOrBelow: say`${"#"} % at or below`,
} as const;

export interface ChartWords extends Translated<typeof CHART_WORDS> {
  readonly decimalMark: string;
  /** For the dates under the pointer. */
  readonly locale: string;
}

export function chartWords(language: Language): ChartWords {
  const { decimalMark, id } = language;
  return { ...translated(CHART_WORDS, language), decimalMark, locale: id === "en" ? "en-GB" : id };
}

/** The limit of a requirement as judged; its number stands in the rows that were judged by it. */
export function requirementLimit(
  requirement: Assessment["ruleSet"]["requirements"][number],
  weeks: Assessment["weeks"],
): Text {
  if (requirement.table !== undefined) return NO_LIMIT.events;
  if (requirement.orders !== undefined) return NO_LIMIT.orders;
  const rows = weeks.flatMap(({ requirements }) => requirements).filter(({ id }) => id === requirement.id);
  const limits = rows.map((row) => say`${limitText(row)} for ${shareText(row)}`);
  const different = new Map(limits.map((limit) => [String(limit), limit]));
  return different.size === 0 ? NO_LIMIT.other : strung([...different.values()], "; ");
}
