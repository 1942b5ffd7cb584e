import type { Assessment } from "../../rules/assessment.js";
import { strung, type Text } from "../../sentence.js";
import { coverageText } from "../html/requirements.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { measured } from "../numbers.js";
import { requirementTitle } from "../rows.js";
import { quantityName, verdictWord, weekEnd } from "../wording.js";
import { setupValue } from "../wording-log.js";
import { COUNTING, HEADINGS, NONE, recordedText, WEEK_COLUMNS, weekKindText } from "../wording-page.js";
import {
  COPY_NOTE,
  DECISION_ORIGINS,
  DECISION_TEXTS,
  DECISION_TITLE,
  EXTERNAL_TEXT,
  expandedText,
  REPORT_HEADINGS as H,
  IDENTITY as I,
  itemText,
  MACHINE_NOTE,
  methodText,
  NOT_STATED,
  OPINION_NOTE,
  UNCERTAINTY_WORDS as U,
} from "../wording-report.js";
import { statement } from "../wording-statement.js";
import { type Block, type Cell, heading, note, paragraph, table } from "./blocks.js";

/** What ISO/IEC 17025:2017, 7.8.2, asks a report to say of itself; what was not given says so. */
export function aboutReport(assessment: Assessment): Block[] {
  const { report, setup, ruleSet } = assessment;
  const said = (text: Text | undefined): Cell => text ?? NOT_STATED;
  const places = [setup.site?.value, setup.measuringPoint?.value].filter((text) => text !== undefined);
  const { laboratory } = report;
  const stated = (key: string): Text => {
    const entry = setup[key];
    return entry === undefined ? NOT_STATED : setupValue(key, entry.value);
  };
  return [
    heading(1, H.about),
    {
      kind: "pairs",
      rows: [
        [I.number, said(report.number)],
        [
          I.laboratory,
          laboratory === undefined
            ? NOT_STATED
            : { text: laboratory.name, note: laboratory.address ?? strung(["(", NOT_STATED, ")"]) },
        ],
        [I.place, places.length === 0 ? NOT_STATED : places.join(", ")],
        [I.customer, said(report.customer)],
        [I.requestedBy, said(report.requestedBy)],
        [I.performedBy, said(report.performedBy)],
        [I.item, itemText(stated("connection"), stated("declaredVoltage"))],
        [I.method, methodText(ruleSet)],
        [I.recorded, recordedText(assessment)],
        [I.issued, said(report.issued)],
        [I.samplingPlan, said(report.samplingPlan)],
        [I.deviations, said(report.deviations)],
        [I.external, EXTERNAL_TEXT],
        [I.authorisedBy, said(report.authorisedBy)],
      ],
    },
    note(COPY_NOTE),
    note(strung([OPINION_NOTE, MACHINE_NOTE], " ")),
  ];
}

/** Verdict, decision rule, uncertainty, weeks, counting and what was not assessed (ISO/IEC 17025:2017, 7.8.6). */
export function conformity(assessment: Assessment, clock: LocalClock): Block[] {
  const { sentence, further } = statement(assessment);
  const { verdict, decision, notAssessed } = assessment;
  return [
    heading(1, H.statement),
    { kind: "lead", verdict, word: verdictWord(verdict), text: sentence },
    ...(further.length > 0 ? [paragraph(strung(further, " "))] : []),
    heading(2, DECISION_TITLE),
    paragraph(strung([DECISION_TEXTS[decision.rule], DECISION_ORIGINS[decision.origin]], " ")),
    ...uncertainty(assessment),
    ...weeks(assessment, clock),
    heading(2, HEADINGS.counting),
    { kind: "list", items: [...COUNTING] },
    heading(2, HEADINGS.notAssessed),
    notAssessed.length === 0
      ? paragraph(NONE.notAssessed)
      : {
          kind: "list",
          items: notAssessed.map(({ requirement, reason }) =>
            strung([requirementTitle(assessment, requirement), reason.sentence], ": "),
          ),
        },
  ];
}

function uncertainty({ uncertainties }: Assessment): Block[] {
  if (uncertainties.length === 0) return [heading(2, H.uncertainty), paragraph(U.none)];
  const from = { instrument: U.fromInstrument, sensor: U.fromSensor, resolution: U.fromResolution };
  return [
    heading(2, H.uncertainty),
    table(
      [
        [U.quantity, 2],
        [U.from, 1.5],
        [U.expanded, 2.4],
        [U.reason, 4],
      ],
      uncertainties.map((entry) => [
        quantityName(entry.quantity),
        from[entry.from],
        expandedText(entry, measured(entry.expanded, entry.unit)),
        entry.confirmed ? entry.reason : { text: entry.reason, note: U.memory },
      ]),
    ),
  ];
}

function weeks({ weeks: list, recording }: Assessment, clock: LocalClock): Block[] {
  if (list.length < 2) return [];
  const W = WEEK_COLUMNS;
  return [
    heading(2, H.weeks),
    table(
      [
        [W.from, 2],
        [W.to, 2],
        [W.kind, 3],
        [W.coverage, 0],
        [W.verdict, 0],
      ],
      list.map((week) => [
        localTime(clock, instantOf(week.start)),
        localTime(clock, instantOf(weekEnd(recording, week))),
        weekKindText(week),
        coverageText(week.coverage),
        { text: verdictWord(week.verdict), verdict: week.verdict },
      ]),
    ),
  ];
}
