import type { Assessment } from "../../rules/assessment.js";
import { capital, strung, type Text } from "../../sentence.js";
import { coverageText } from "../html/requirements.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { requirementTitle } from "../rows.js";
import { quantityName, verdictWord, weekEnd } from "../wording.js";
import { IDENTITY as I, IDENTITY_HEADING } from "../wording-identity.js";
import { setupValue } from "../wording-log.js";
import {
  CONFIRMED,
  COUNTING,
  HEADINGS,
  NONE,
  RESULTS_IDENTITY,
  recordedText,
  WEEK_COLUMNS,
  weekKindText,
} from "../wording-page.js";
import {
  ABOUT as A,
  COPY_NOTE,
  EXTERNAL_TEXT,
  REPORT_HEADINGS as H,
  itemText,
  MACHINE_NOTE,
  methodText,
  NOT_STATED,
  OPINION_NOTE,
} from "../wording-report.js";
import { statement } from "../wording-statement.js";
import {
  COMBINED_NOTE,
  CONTRIBUTORS,
  expandedText,
  lastDigits,
  RULE_ASSUMED,
  ruleText,
  UNCERTAINTY_COLUMNS as U,
  UNCERTAINTY_HEADING,
  UNCERTAINTY_NOT_STATED,
  UNCERTAINTY_ORIGINS,
  ZONES_NOTE,
} from "../wording-uncertainty.js";
import { type Block, type Cell, heading, note, paragraph, table } from "./blocks.js";

/** What ISO/IEC 17025:2017, 7.8.2, asks a report to say of itself; what was not given says so. */
export function aboutReport(assessment: Assessment, resultsSha256: string | undefined): Block[] {
  const { report, setup, ruleSet } = assessment;
  const said = (text: Text | undefined): Cell => text ?? NOT_STATED;
  const places = [setup.site?.value, setup.measuringPoint?.value].filter((text) => text !== undefined);
  const { laboratory } = report;
  const stated = (key: string): Text => {
    const entry = setup[key];
    return entry === undefined ? NOT_STATED : setupValue(key, entry.value);
  };
  return [
    heading(1, IDENTITY_HEADING),
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
        [A.place, places.length === 0 ? NOT_STATED : places.join(", ")],
        [I.customer, said(report.customer)],
        [I.requestedBy, said(report.requestedBy)],
        [I.performedBy, said(report.performedBy)],
        [A.item, itemText(stated("connection"), stated("declaredVoltage"))],
        [A.method, methodText(ruleSet)],
        [A.recorded, recordedText(assessment)],
        [I.issued, said(report.issued)],
        [I.samplingPlan, said(report.samplingPlan)],
        [I.deviations, said(report.deviations)],
        [A.external, EXTERNAL_TEXT],
        [I.authorisedBy, said(report.authorisedBy)],
      ],
    },
    note(COPY_NOTE),
    note(strung([OPINION_NOTE, MACHINE_NOTE], " ")),
    ...(resultsSha256 === undefined ? [] : [note(strung([RESULTS_IDENTITY, resultsSha256], " "))]),
  ];
}

/** Verdict, decision rule, uncertainty, weeks, counting and what was not assessed (ISO/IEC 17025:2017, 7.8.6). */
export function conformity(assessment: Assessment, clock: LocalClock): Block[] {
  const { sentence, further } = statement(assessment);
  const { verdict, notAssessed } = assessment;
  return [
    heading(1, H.statement),
    { kind: "lead", verdict, word: verdictWord(verdict), text: sentence },
    ...(further.length > 0 ? [paragraph(strung(further, " "))] : []),
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

/** The decision rule and what is known of the uncertainty of each quantity. */
function uncertainty(assessment: Assessment): Block[] {
  const { uncertainties, decision } = assessment;
  const rule = [ruleText(assessment), ...(decision.origin === "assumed" ? [RULE_ASSUMED] : [])];
  const start = [heading(2, UNCERTAINTY_HEADING), paragraph(strung(rule, " "))];
  if (uncertainties.length === 0) return [...start, paragraph(UNCERTAINTY_NOT_STATED)];
  const digits = lastDigits(uncertainties);
  return [
    ...start,
    table(
      [
        [U.quantity, 2],
        [U.from, 1.2],
        [U.expanded, 2],
        [U.origin, 1.2],
        [U.reason, 4],
      ],
      uncertainties
        .filter(({ from }) => from !== "resolution")
        .map((part) => [
          capital(quantityName(part.quantity)),
          CONTRIBUTORS[part.from],
          expandedText(part),
          part.confirmed
            ? UNCERTAINTY_ORIGINS[part.origin]
            : { text: UNCERTAINTY_ORIGINS[part.origin], note: CONFIRMED.false },
          part.reason,
        ]),
    ),
    note(strung([COMBINED_NOTE, ...(digits === undefined ? [] : [digits]), ZONES_NOTE], " ")),
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
