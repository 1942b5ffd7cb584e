import type { Measurements } from "../../recording/measurements.js";
import type { Assessment, Verdict } from "../../rules/assessment.js";
import { capital, say, stated, strung, type Text } from "../../sentence.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import { byBadness, byRequirement, decidingWeek } from "../rows.js";
import { verdictWord } from "../wording.js";
import { DANGER_WORDS } from "../wording-page.js";
import {
  alsoPromised,
  brokenText,
  DANGER_SENTENCES,
  eventCounts,
  eventsSentence,
  excludedSentence,
  findingsSentence,
  hangsOnExclusions,
  instrumentSentence,
  KEEP_LOGS,
  NEXT_STEPS,
  notJudgedText,
  PROVE_EXCLUSIONS,
  placeSentence,
  plainName,
  promiseText,
  spanSentence,
  validSentence,
  verdictAnswer,
  PLAIN_WORDS as W,
} from "../wording-plain.js";
import { INSTRUMENT_WORDS } from "../wording-report.js";
import { type Block, paragraph } from "./blocks.js";

/** As many broken rules as the page tells one by one. */
const MOST_BROKEN = 4;

/** One page for people who are no engineers: dangers first, then what was promised, measured, found, and what happens next. */
export function plainPage(assessment: Assessment, measurements: Measurements, clock: LocalClock): Block[] {
  const question = (text: Text): Block => ({ kind: "question", text });
  return [
    { kind: "title", text: W.title },
    ...dangers(assessment),
    question(W.promised),
    ...promised(assessment),
    question(W.measured),
    ...measured(assessment, clock),
    question(W.sound),
    paragraph(strung(soundness(assessment), " ")),
    question(W.broken),
    ...broken(assessment, measurements, clock),
    question(W.next),
    { kind: "list", items: [...nextSteps(assessment), KEEP_LOGS] },
    paragraph(W.rest),
  ];
}

function dangers({ recording }: Assessment): Block[] {
  const kinds = new Set(recording.findings.flatMap(({ danger }) => danger ?? []));
  if (kinds.size === 0) return [];
  const found = [...kinds].map((kind) => DANGER_SENTENCES[kind]);
  return [{ kind: "danger", title: DANGER_WORDS.title, cautions: [...DANGER_WORDS.cautions], found }];
}

function promised(assessment: Assessment): Block[] {
  const week = decidingWeek(assessment);
  const { title } = assessment.ruleSet;
  const groups = week === undefined ? [] : byRequirement(assessment, week).filter(({ worst }) => worst.binding);
  if (groups.length === 0) return [paragraph(strung([stated(title), W.promisedNothing], ". "))];
  const voltage = groups.filter(({ worst }) => worst.quantity === "voltage");
  const others = new Map(
    groups.flatMap(({ worst: { quantity } }) => (quantity === "voltage" ? [] : [[quantity, plainName(quantity)]])),
  );
  return [
    paragraph(say`The rules applied are “${stated(title)}”. They say:`),
    {
      kind: "list",
      items: [
        ...voltage.map(({ worst }) => promiseText(worst)),
        ...(others.size > 0 ? [alsoPromised(strung([...others.values()], ", "))] : []),
      ],
    },
  ];
}

function measured({ setup, recording }: Assessment, clock: LocalClock): Block[] {
  const place = [setup.site?.value, setup.measuringPoint?.value].filter((text) => text !== undefined).join(", ");
  const time = (iso: string) => localTime(clock, instantOf(iso));
  return [
    paragraph(
      strung(
        [
          place === "" ? W.notStated : placeSentence(place),
          spanSentence(time(recording.start), time(recording.end), recording.zone),
          ...(recording.intervals.expected > 0 ? [validSentence(recording.intervals)] : []),
        ],
        " ",
      ),
    ),
  ];
}

function soundness(assessment: Assessment): Text[] {
  const { recording, exclusions, instrument } = assessment;
  const count = (severity: string) => recording.findings.filter((finding) => finding.severity === severity).length;
  const stated = [
    instrument.type,
    instrument.class === undefined ? undefined : strung([INSTRUMENT_WORDS.class, instrument.class], ": "),
    instrument.calibrationDate === undefined
      ? undefined
      : strung([INSTRUMENT_WORDS.calibrationDate, instrument.calibrationDate], " "),
  ].filter((text) => text !== undefined);
  const decided = (decidingWeek(assessment)?.requirements ?? []).filter(
    ({ verdict, reason }) =>
      verdict === "conforms" || verdict === "does-not-conform" || reason?.id === "too-little-data",
  );
  return [
    findingsSentence(count("blocks"), count("note")),
    ...(decided.length > 0 ? [decided.every(({ robust }) => robust) ? W.noMissing : W.someMissing] : []),
    stated.length === 0 ? W.instrumentNotStated : instrumentSentence(strung(stated, ", ")),
    ...(exclusions.length > 0 ? [excludedSentence(exclusions.length)] : []),
  ];
}

function broken(assessment: Assessment, { eventsSought }: Measurements, clock: LocalClock): Block[] {
  const { verdict, ruleSet, notAssessed, events, summary } = assessment;
  const week = decidingWeek(assessment);
  const groups = week === undefined ? [] : byRequirement(assessment, week);
  const failed = groups.filter(({ worst }) => worst.binding && worst.verdict === "does-not-conform");
  const worst = failed.map((group) => group.worst).sort(byBadness);
  const rows = failed.map((group) => group.worst).slice(0, MOST_BROKEN);
  const counts = eventCounts(events);
  const more = worst.length - rows.length;
  const answer = verdictAnswer(verdict, stated(ruleSet.title));
  const other = verdictWithout(assessment);
  const hanging = other === undefined ? [] : [hangsOnExclusions(verdictWord(other))];
  const further = [
    ...(notAssessed.length > 0 ? [notJudgedText(notAssessed.length)] : []),
    counts.length > 0 ? eventsSentence(strung(counts, ", ")) : eventsSought ? W.noEvents : W.noEventsSought,
  ];
  return [
    { kind: "lead", verdict, word: verdictWord(verdict), text: strung([answer, ...hanging], " ") },
    ...(rows.length > 0
      ? [{ kind: "list" as const, items: rows.map((row) => capital(brokenText(row, summary, clock))) }]
      : []),
    ...(more > 0 ? [paragraph(say`Further rules that were broken: ${more}.`)] : []),
    paragraph(strung(further, " ")),
  ];
}

/** The verdict with nothing excluded, where that is another one. */
function verdictWithout({ verdict, verdictWithoutExclusions: without }: Assessment): Verdict | undefined {
  return without === verdict ? undefined : without;
}

function nextSteps(assessment: Assessment): Text[] {
  const [first, ...others] = NEXT_STEPS[assessment.verdict];
  if (assessment.verdict === "conforms" && verdictWithout(assessment) !== undefined)
    return [PROVE_EXCLUSIONS, ...others];
  return first === undefined ? [] : [first, ...others];
}
