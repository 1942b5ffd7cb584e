import type { Assessment } from "../../rules/assessment.js";
import { stated, strung, type Text } from "../../sentence.js";
import { commentName, complaintName } from "../charts/marks.js";
import { shiftChart } from "../charts/shift-ranges.js";
import type { Language } from "../languages/language.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { exact } from "../numbers.js";
import { consecutiveWeeks, requirementTitle } from "../rows.js";
import { verdictWord, withUnit } from "../wording.js";
import {
  COMPARISON_COLUMNS as C,
  type ComparisonRow,
  comparisonText,
  DIFFERENCE_COLUMNS as D,
  differing,
  grouped,
  COMPARISON_WORDS as W,
} from "../wording-comparison.js";
import {
  againstLimitText,
  aroundTexts,
  COMMENT_COLUMNS,
  COMPLAINT_COLUMNS,
  COMPLAINT_WORDS,
  clockOfMarks,
  complaintText,
  coveringText,
  markTime,
  validText,
} from "../wording-complaints.js";
import { DAY_WORDS, dayCell, daysNote, dayText, spreadText } from "../wording-days.js";
import {
  allowedOf,
  mainPeriod,
  RANGE_COLUMNS,
  rangesText,
  SHIFT_COLUMNS,
  SHIFT_WORDS,
  shiftText,
  stepHeading,
} from "../wording-shift.js";
import { longestText, SLIDING_COLUMNS, SLIDING_WORDS, slidingTexts, stepOf, volts } from "../wording-sliding.js";
import { type Block, type Cell, heading, note, paragraph, table } from "./blocks.js";
import { chartPicture } from "./pictures.js";

/** What stands beside the verdict: complaints, further limit sets, the spread by day, tap steps, sliding means. */
export async function beside(assessment: Assessment, clock: LocalClock, language: Language): Promise<Block[]> {
  return [
    ...complaints(assessment),
    ...comparison(assessment),
    ...days(assessment, clock),
    ...(await shift(assessment, clock, language)),
    ...sliding(assessment, clock),
  ];
}

/** Equal columns but for one, which is twice as wide. */
const wideAt = (wide: number, titles: readonly Text[]) =>
  titles.map((title, i) => [title, i === wide ? 2 : 1] as const);
const even = (titles: readonly Text[]) => titles.map((title) => [title, 1] as const);

function complaints(assessment: Assessment): Block[] {
  const { complaints: list, comments } = assessment;
  if (list.length + comments.length === 0) return [];
  const clock = clockOfMarks(assessment);
  const isUncovered = list.some(({ alike }) => alike !== undefined);
  return [
    heading(1, list.length > 0 ? COMPLAINT_WORDS.heading : COMPLAINT_WORDS.comments),
    ...list.flatMap((complaint, i) => {
      const rows = complaint.phases
        .filter(({ intervals, around }) => around !== undefined || intervals.some(({ valid }) => valid > 0))
        .map((phase) => [
          phase.phase,
          validText(phase),
          coveringText(assessment, phase),
          againstLimitText(assessment, phase),
          ...aroundTexts(phase),
        ]);
      return [
        heading(2, strung([strung([complaintName(i), markTime(clock, complaint)], ", "), complaint.what], ": ")),
        paragraph(complaintText(assessment, complaint, clock)),
        ...(rows.length > 0 ? [table(even(Object.values(COMPLAINT_COLUMNS)), rows)] : []),
      ];
    }),
    ...(comments.length > 0
      ? [
          ...(list.length > 0 ? [heading(2, COMPLAINT_WORDS.comments)] : []),
          table(
            wideAt(3, Object.values(COMMENT_COLUMNS)),
            comments.map((comment, i) => [commentName(i), markTime(clock, comment), comment.phase ?? "", comment.text]),
          ),
        ]
      : []),
    note(strung([COMPLAINT_WORDS.note, ...(isUncovered ? [COMPLAINT_WORDS.alikeNote] : [])], " ")),
  ];
}

function comparison({ comparison: others, ruleSet, verdict, setup }: Assessment): Block[] {
  if (others.length === 0) return [];
  const declared = setup.declaredVoltage?.value;
  const voltage = (value: number) => withUnit(exact(value, 0), "V");
  const side = (of: ComparisonRow["first"]): Cell =>
    of === undefined ? W.absent : { text: verdictWord(of.verdict), verdict: of.verdict };
  const set = ({ title, id }: { readonly title: string; readonly id: string }, more: readonly Text[] = []): Cell => ({
    text: stated(title),
    note: strung([id, ...more], "; "),
  });
  return [
    heading(1, W.heading),
    note(W.note),
    table(even(Object.values(C)), [
      [
        set(ruleSet, [W.decides]),
        `${ruleSet.standard}, ${ruleSet.edition}`,
        declared === undefined ? "" : voltage(Number(declared)),
        { text: verdictWord(verdict), verdict },
        "",
      ],
      ...others.map((other) => [
        set(other.ruleSet),
        `${other.ruleSet.standard}, ${other.ruleSet.edition}`,
        voltage(other.declaredVoltage),
        { text: verdictWord(other.verdict), verdict: other.verdict },
        String(differing(other).length),
      ]),
    ]),
    ...others.flatMap((other) => {
      const groups = grouped(other);
      return [
        heading(2, comparisonText(other)),
        ...(groups.length === 0
          ? []
          : [
              table(
                even(Object.values(D)),
                groups.map(({ title, places, row, why }) => [title, places, side(row.first), side(row.other), why]),
              ),
            ]),
      ];
    }),
  ];
}

/** The first voltage requirement of the days, a column for each phase. */
function days(assessment: Assessment, clock: LocalClock): Block[] {
  const list = assessment.days;
  const id = list[0]?.rows[0]?.requirement;
  const judged = (consecutiveWeeks(assessment)[0]?.requirements ?? []).filter((row) => row.id === id);
  const [first] = judged;
  if (first === undefined || list.length < 2) return [];
  return [
    heading(1, DAY_WORDS.heading),
    { kind: "list", items: judged.flatMap((row) => spreadText(list, row, clock) ?? []) },
    table(
      even([DAY_WORDS.day, ...judged.map(({ phase }) => phase)]),
      list.map((day) => [
        dayText(day, clock),
        ...judged.map((row) => {
          const found = day.rows.find(({ requirement, phase }) => requirement === row.id && phase === row.phase);
          return strung(dayCell(found, row), "; ");
        }),
      ]),
    ),
    note(daysNote(list, first, clock)),
  ];
}

async function shift(assessment: Assessment, clock: LocalClock, language: Language): Promise<Block[]> {
  const found = assessment.shift;
  const main = found && mainPeriod(found);
  if (found === undefined || main === undefined) return [];
  const hasAllowed = main.rows.some(({ allowed }) => allowed !== undefined);
  const S = SHIFT_COLUMNS;
  return [
    heading(1, SHIFT_WORDS.heading),
    paragraph(shiftText(found, main, clock)),
    ...(main.phases.some(({ ranges }) => ranges.length > 0)
      ? [await chartPicture(shiftChart(found, main), language)]
      : []),
    table(even(Object.values(RANGE_COLUMNS)), [
      ...main.phases.map(({ phase, ranges }) => [phase, rangesText(ranges)]),
      ...(main.phases.length > 1 ? [[SHIFT_WORDS.all, rangesText(main.all)]] : []),
    ]),
    table(
      wideAt(1, [S.phase, S.requirement, ...(hasAllowed ? [S.allowed] : []), ...found.steps.map(stepHeading)]),
      main.rows.map(({ phase, requirement, n, allowed, outside }) => [
        phase,
        requirementTitle(assessment, requirement),
        ...(hasAllowed ? [allowed === undefined ? "–" : allowedOf(allowed, n)] : []),
        ...outside.map(
          (count): Cell =>
            allowed !== undefined && count > allowed ? { text: String(count), bold: true } : String(count),
        ),
      ]),
    ),
    note(strung([SHIFT_WORDS.note, ...(found.stepsOrigin === "assumed" ? [SHIFT_WORDS.assumedSteps] : [])], " ")),
  ];
}

function sliding({ sliding: found }: Assessment, clock: LocalClock): Block[] {
  if (found === undefined) return [];
  return [
    heading(1, SLIDING_WORDS.heading),
    { kind: "list", items: slidingTexts(found, clock) },
    ...(found.phases.length === 0
      ? []
      : [
          table(
            even(Object.values(SLIDING_COLUMNS)),
            found.phases.map((of) => [
              of.phase,
              stepOf(of),
              volts(of.lowest.value, of.limit),
              volts(of.highest.value, of.limit),
              localTime(clock, instantOf(of.highest.at)),
              String(of.passed.length),
              longestText(of),
              String(of.unseen),
            ]),
          ),
        ]),
    note(SLIDING_WORDS.note),
  ];
}
