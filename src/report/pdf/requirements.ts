import type { Assessment, Row, Week } from "../../rules/assessment.js";
import { capital, say, strung, type Text } from "../../sentence.js";
import type { LocalClock } from "../local-time.js";
import { byRequirement, decidingWeek, type RequirementRows } from "../rows.js";
import {
  allowedText,
  foundText,
  limitText,
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
        [R.requirement, 2.6],
        [R.place, 1.2],
        [R.limit, 1.45],
        [R.allowed, 1.05],
        [R.found, 1.35],
        [R.worst, 1.2],
        [R.when, 1.5],
        [R.verdict, 0],
        [R.robust, 0],
      ],
      groups.map((group) => requirementLine(group, clock)),
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

/** Every phase and order of the deciding week; each reason once under its table. */
export function everyRow(assessment: Assessment, clock: LocalClock): Block[] {
  const week = decidingWeek(assessment);
  if (week === undefined || week.requirements.length === 0) return [];
  return [
    heading(1, REPORT_HEADINGS.everyRow),
    ...when(assessment, week),
    ...byRequirement(assessment, week).flatMap(({ title, rows }) => {
      const known = rows.some(({ uncertainty }) => uncertainty !== undefined);
      return [
        heading(2, title),
        table(
          [
            [D.place, 1.3],
            [D.limit, 1.6],
            [D.allowed, 1],
            [D.found, 1.9],
            [D.missing, 0, "right"],
            [D.worst, 1.1],
            [D.when, 2.2],
            ...(known ? [[UNCERTAINTY_COLUMN, 2] as const] : []),
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
            ...(known ? [surenessText(row)] : []),
            verdictCell(row),
            robustText(row),
          ]),
          7.8,
        ),
        ...reasons(rows),
      ];
    }),
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
