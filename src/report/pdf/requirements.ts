import type { Assessment, Row, Week } from "../../rules/assessment.js";
import { capital, say, strung, type Text } from "../../sentence.js";
import type { LocalClock } from "../local-time.js";
import { byRequirement, decidingWeek, type RequirementRows } from "../rows.js";
import {
  allowedText,
  countOf,
  foundText,
  limitText,
  percentileText,
  placeText,
  robustText,
  shareText,
  UNCONFIRMED_MARK,
  UNCONFIRMED_NOTE,
  verdictWord,
  weekText,
  worstText,
  worstTimeText,
} from "../wording.js";
import { otherVerdict } from "../wording-exclusions.js";
import {
  BINDING_NOTE,
  DETAIL_COLUMNS,
  HEADINGS,
  ONLY_WORSE_NOTE,
  originNote,
  REQUIREMENT_COLUMNS,
  ROBUST_NOTE,
  zoneText,
} from "../wording-page.js";
import { REPORT_HEADINGS } from "../wording-report.js";
import { SAMPLING_COLUMNS, SAMPLING_HEADING, SAMPLING_NOTE, samplingRows } from "../wording-sampling.js";
import { conditionText, surenessText, UNCERTAINTY_COLUMN } from "../wording-uncertainty.js";
import { type Block, type Cell, heading, intro, note, table } from "./blocks.js";

const R = REQUIREMENT_COLUMNS;
const D = DETAIL_COLUMNS;

/** One line per requirement for its worst phase and order. */
export function requirementsTable(assessment: Assessment, clock: LocalClock): Block[] {
  const week = decidingWeek(assessment);
  if (week === undefined || week.requirements.length === 0) return [];
  const groups = byRequirement(assessment, week);
  const unconfirmed = groups.some(({ rows }) => rows.some(({ confirmed }) => !confirmed));
  const notes: Text[] = [
    ROBUST_NOTE,
    ...(unconfirmed ? [UNCONFIRMED_NOTE] : []),
    ...[originNote(assessment.ruleSet)].filter((text) => text !== undefined),
  ];
  return [
    heading(1, HEADINGS.requirements),
    ...when(assessment, week),
    table(
      [
        [R.requirement, 2.9],
        [R.place, 1.1],
        [R.limit, 1.35],
        [R.allowed, 1.25],
        [R.found, 1.55],
        [R.worst, 1.3],
        [R.when, 1.65],
        [R.verdict, 0],
        [R.robust, 0],
      ],
      groups.map((group) => requirementLine(group, clock)),
      8,
    ),
    note(strung(notes, " ")),
  ];
}

function when(assessment: Assessment, week: Week): Block[] {
  const span = say`${capital(weekText(assessment, week))}; ${zoneText(assessment)}.`;
  return [intro(week.kind === "worst-sliding" ? strung([span, ONLY_WORSE_NOTE], " ") : span)];
}

function requirementLine({ title, worst, rows }: RequirementRows, clock: LocalClock): Cell[] {
  const some = rows.some(({ confirmed }) => !confirmed);
  const mark: Text = worst.confirmed ? say`some orders ${UNCONFIRMED_MARK}` : UNCONFIRMED_MARK;
  const under = [
    strung([worst.clause, shareText(worst)], ", "),
    ...(worst.binding ? [] : [BINDING_NOTE]),
    ...(worst.uncertainty === undefined ? [] : [strung([UNCERTAINTY_COLUMN, surenessText(worst)], ": ")]),
  ];
  return [
    { text: title, bold: true, note: strung(under, "; ") },
    placeText(worst),
    some ? { text: limitText(worst), note: mark } : limitText(worst),
    allowedText(worst),
    foundText(worst),
    worstText(worst),
    worstTimeText(worst, clock),
    verdictCell(worst),
    robustText(worst),
  ];
}

/** Under the verdict what could turn it: the uncertainty, the exclusions. */
function verdictCell(row: Row): Cell {
  const turns = [conditionText(row), otherVerdict(row)].filter((text) => text !== undefined);
  const cell = { text: verdictWord(row.verdict), verdict: row.verdict };
  return turns.length === 0 ? cell : { ...cell, note: strung(turns, "; ") };
}

/** Every phase and order of the deciding week on pages in landscape; each reason once under its table. */
export function everyRow(assessment: Assessment, clock: LocalClock): Block[] {
  const week = decidingWeek(assessment);
  if (week === undefined || week.requirements.length === 0) return [];
  const groups = byRequirement(assessment, week).flatMap(({ title, rows }) => [
    heading(2, title),
    rowsTable(rows, clock),
    ...reasons(rows),
  ]);
  const blocks = [heading(1, REPORT_HEADINGS.everyRow), ...when(assessment, week), ...groups, ...sampling(assessment)];
  return [{ kind: "wide", blocks }];
}

/** The counts with and without flagged intervals have a column where they differ, the uncertainty where it is known. */
function rowsTable(rows: readonly Row[], clock: LocalClock): Block {
  const known = rows.some(({ uncertainty }) => uncertainty !== undefined);
  const flags = ({ counts }: Row) => strung([countOf(counts.withFlagged), countOf(counts.withoutFlagged)], " / ");
  const flagged = rows.some(
    ({ counts }) => String(countOf(counts.withFlagged)) !== String(countOf(counts.withoutFlagged)),
  );
  return table(
    [
      [D.place, 0],
      [D.limit, 1.3],
      [D.allowed, 0.9],
      [D.found, 1.4],
      [D.missing, 0, "right"],
      [D.worst, 0.9],
      [D.when, 1.9],
      [D.percentile, 1.2],
      ...(flagged ? [[D.flagged, 1.7] as const] : []),
      ...(known ? [[UNCERTAINTY_COLUMN, 1.8] as const] : []),
      [D.verdict, 0],
      [D.robust, 0],
    ],
    rows.map((row) => [
      placeText(row),
      row.confirmed ? limitText(row) : { text: limitText(row), note: UNCONFIRMED_MARK },
      allowedText(row),
      foundText(row),
      String(row.missing),
      worstText(row),
      worstTimeText(row, clock),
      percentileText(row),
      ...(flagged ? [flags(row)] : []),
      ...(known ? [surenessText(row)] : []),
      verdictCell(row),
      robustText(row),
    ]),
    8,
  );
}

/** What the week says about a longer time, for the row that stands for each requirement. */
function sampling(assessment: Assessment): Block[] {
  const rows = samplingRows(assessment);
  if (rows.length === 0) return [];
  return [
    heading(2, SAMPLING_HEADING),
    note(SAMPLING_NOTE),
    table(
      Object.values(SAMPLING_COLUMNS).map((title, i) => [title, i === 0 ? 2 : 1] as const),
      rows,
      8,
    ),
  ];
}

/** Each reason once, with the places it holds for. */
function reasons(rows: readonly Row[]): Block[] {
  const places = new Map<string, { readonly sentence: Text; readonly where: Text[] }>();
  for (const row of rows) {
    if (row.reason === undefined) continue;
    const key = String(row.reason.sentence);
    const known = places.get(key) ?? { sentence: row.reason.sentence, where: [] };
    known.where.push(placeText(row));
    places.set(key, known);
  }
  return [...places.values()].map(({ sentence, where }) => note(strung([strung(where, "; "), sentence], ": ")));
}
