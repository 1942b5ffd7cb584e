import type { Assessment } from "../../rules/assessment.js";
import { strung } from "../../sentence.js";
import type { LocalClock } from "../local-time.js";
import { byRequirement, fullWeek } from "../rows.js";
import { placeText, verdictWord } from "../wording.js";
import {
  bothVerdicts,
  EXCLUSION_COLUMNS as C,
  EXCLUDED_COUNTS_SUMMARY,
  EXCLUSIONS_HEADING,
  EXCLUSIONS_NOTE,
  fromText,
  EXCLUDED_COUNT_COLUMNS as N,
  outsideOf,
  reasonText,
  toText,
  YES_NO,
} from "../wording-exclusions.js";
import { NO_EXCLUSIONS } from "../wording-report.js";
import { type Block, heading, note, paragraph, table } from "./blocks.js";

/** The excluded spans, who asserts them, and the counts and verdicts with and without them. */
export function exclusions(assessment: Assessment, clock: LocalClock): Block[] {
  const list = assessment.exclusions;
  if (list.length === 0) return [heading(1, EXCLUSIONS_HEADING), paragraph(NO_EXCLUSIONS)];
  return [
    heading(1, EXCLUSIONS_HEADING),
    paragraph(bothVerdicts(assessment)),
    table(
      [
        [C.from, 1.6],
        [C.to, 1.6],
        [C.reason, 2],
        [C.assertedBy, 1.6],
        [C.evidence, 2],
        [C.intervals, 0.9, "right"],
        [C.turns, 0.9],
      ],
      list.map((exclusion) => [
        fromText(clock, exclusion),
        toText(clock, exclusion),
        reasonText(exclusion),
        exclusion.assertedBy,
        strung([exclusion.reference ?? "–", ...(exclusion.comment === undefined ? [] : [exclusion.comment])], "; "),
        String(exclusion.intervals),
        exclusion.turnsVerdict ? { text: YES_NO.yes, bold: true } : YES_NO.no,
      ]),
    ),
    note(EXCLUSIONS_NOTE),
    ...counts(assessment),
  ];
}

/** Of each requirement the row that stands for it, and all whose verdict the exclusions turn. */
function counts(assessment: Assessment): Block[] {
  const week = fullWeek(assessment);
  if (week === undefined) return [];
  const rows = byRequirement(assessment, week).flatMap(({ title, worst, rows: all }) =>
    all
      .filter((row) => row === worst || (row.verdictWithoutExclusions ?? row.verdict) !== row.verdict)
      .map((row) => {
        const without = row.verdictWithoutExclusions ?? row.verdict;
        return [
          title,
          placeText(row),
          String(row.excluded),
          outsideOf(row.counts.withoutExcluded ?? row),
          outsideOf(row.counts.withExcluded ?? row),
          { text: verdictWord(row.verdict), verdict: row.verdict },
          { text: verdictWord(without), verdict: without },
        ];
      }),
  );
  return [
    heading(2, EXCLUDED_COUNTS_SUMMARY),
    table(
      [
        [N.requirement, 2.4],
        [N.place, 1.2],
        [N.excluded, 0.9, "right"],
        [N.outsideWith, 1.1],
        [N.outsideWithout, 1.1],
        [N.verdictWith, 0],
        [N.verdictWithout, 0],
      ],
      rows,
    ),
  ];
}
