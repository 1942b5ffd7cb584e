import { allowedOutside } from "../decimal.js";
import type { Quantity } from "../recording/quantity.js";
import { SECOND, WEEK } from "../recording/time.js";
import type { Assessment, Verdict, Week } from "../rules/assessment.js";
import { capital, Numeral, type Sentence, say, stated, strung, type Text } from "../sentence.js";
import { measured } from "./numbers.js";
import { byRequirement, decidingRow, decidingWeek, finestSummary } from "./rows.js";
import {
  inWeekText,
  lengthText,
  limitText,
  outsideText,
  placeText,
  quantityName,
  recordedLength,
  rowSentence,
  valuesText,
  withUnit,
} from "./wording.js";
import { furtherOf } from "./wording-counts.js";
import { eventsFinding } from "./wording-events.js";
import { intervalText } from "./wording-interval.js";

/** The statement that a report begins with. */

/** A standard is conformed to; limits of a country or a contract are kept. */
interface LimitSet {
  readonly name: Text;
  /** The name where the sentence goes on after it. */
  readonly aside: Text;
  readonly isStandard: boolean;
}

function limitSet({ title, standard }: Assessment["ruleSet"]): LimitSet {
  const name = stated(title);
  if (title.startsWith(standard))
    return { name, aside: title.includes(",") ? strung([name, ","]) : name, isStandard: true };
  const quoted = say`“${name}”`;
  return { name: quoted, aside: quoted, isStandard: false };
}

/** The verdict in one plain sentence; in `further` what one must also know before relying on it. */
export function statement(assessment: Assessment): { readonly sentence: Text; readonly further: readonly Text[] } {
  const week = decidingWeek(assessment);
  const set = limitSet(assessment.ruleSet);
  if (week === undefined) {
    const events = eventsFinding(assessment);
    const nothing = say`The recording holds nothing that ${set.aside} sets a limit for, so nothing could be judged`;
    return {
      sentence: closed(nothing, because(assessment)),
      further: events === undefined ? [] : [say`It shows ${events}.`],
    };
  }
  const isShort = isTooShort(assessment, week);
  const shows = isShort ? shown(assessment, week) : [eventsFinding(assessment)].filter((text) => text !== undefined);
  const lead = isShort ? shows.slice(1).map((text) => say`It also shows ${text}.`) : [];
  const also = isShort ? [] : shows.map((text) => say`Recorded as well: ${text}.`);
  return {
    sentence: capital(isShort ? shortSentence(assessment, set, shows[0]) : sentenceOf(assessment, set, week)),
    further: [...lead, ...also, ...furtherOf(assessment, week, isShort)].map(capital),
  };
}

/** The sentence with its reason, itself a sentence, after a colon; or closed by a full stop. */
function closed(sentence: Text, reason: Text | undefined): Sentence {
  return reason === undefined ? say`${sentence}.` : say`${sentence}: ${reason}`;
}

/** Of all reasons why something was not judged that of the supply voltage first, then a binding one. */
function because({ notAssessed, ruleSet }: Assessment): Text | undefined {
  const of = (wanted: (requirement: Assessment["ruleSet"]["requirements"][number]) => boolean) =>
    notAssessed.find(({ requirement }) => ruleSet.requirements.some((r) => r.id === requirement && wanted(r)));
  const chosen =
    of(({ binding, quantity }) => binding && quantity === "voltage") ?? of(({ binding }) => binding) ?? notAssessed[0];
  return chosen?.reason.sentence;
}

/** Why a row that has values is not assessed: exclusions leave too little of the week. */
function leftOut({ requirements }: Week): Text | undefined {
  return requirements.find(({ binding, verdict }) => binding && verdict === "not-assessed")?.reason?.sentence;
}

/** Less than a week was recorded, and that alone keeps it from being judged. */
export function isTooShort(assessment: Assessment, week: Week): boolean {
  const isOpen = assessment.verdict !== "conforms" && assessment.verdict !== "does-not-conform";
  const unsound = week.requirements.some(({ reason }) => reason?.id === "recording-unsound");
  return isOpen && !unsound && recordedLength(assessment) < WEEK;
}

/** What a recording of less than a week cannot show, and what it does show. */
function shortSentence(assessment: Assessment, { name, isStandard }: LimitSet, first: Text | undefined): Sentence {
  const length = lengthText(recordedLength(assessment));
  const cannot = isStandard
    ? say`The recording of ${length} cannot show whether a week conforms to ${name}`
    : say`The recording of ${length} cannot show whether a week keeps the limits of ${name}`;
  return first === undefined ? say`${cannot}.` : say`${cannot}; it shows ${first}.`;
}

/** What a recording of less than a week shows: its events, the values counted so far or else the voltages found. */
function shown(assessment: Assessment, week: Week): Text[] {
  const values = soFar(assessment, week) ?? foundVoltages(assessment);
  return [eventsFinding(assessment), values].filter((text) => text !== undefined);
}

/** "on phase L2 20 of 288 ten-minute values that lay above 253.0 V (of the 1008 of a week, 50 may)". */
function soFar(assessment: Assessment, week: Week): Text | undefined {
  const row = byRequirement(assessment, week).find(({ worst }) => worst.quantity === "voltage" && worst.n > 0)?.worst;
  if (row === undefined) return undefined;
  const values = valuesText(row);
  const { phase, outside, n, missing, period, share } = row;
  if (outside === 0)
    return n === 1
      ? say`one of the ${values} per phase, within ${limitText(row)}`
      : say`${n} ${values} per phase, none outside ${limitText(row)}`;
  const lay = say`on phase ${phase} ${outside} of ${n} ${values} that lay ${outsideText(row, assessment.summary)}`;
  return say`${lay} (${MAY_OF[period](n + missing, allowedOutside(share, n + missing))})`;
}

const MAY_OF = {
  day: (all: number, may: number) => say`of the ${all} of a day, ${may} may`,
  week: (all: number, may: number) => say`of the ${all} of a week, ${may} may`,
  year: (all: number, may: number) => say`of the ${all} of a year, ${may} may`,
} as const;

/** "voltages of 228.1 to 231.4 V on L1, L2, L3 (10/12-cycle values)": of the shortest interval that was measured. */
function foundVoltages(assessment: Assessment): Text | undefined {
  const voltages = finestSummary(assessment).filter(({ quantity }) => quantity === "voltage");
  const [first] = voltages;
  if (first === undefined) return undefined;
  const low = new Numeral(measured(Math.min(...voltages.map(({ min }) => min)), first.unit));
  const high = new Numeral(measured(Math.max(...voltages.map(({ max }) => max)), first.unit));
  const phases = strung(
    voltages.map(({ phase }) => placeText({ phase })),
    ", ",
  );
  const interval = intervalText(Math.round(first.intervalS * SECOND));
  return say`voltages of ${withUnit(say`${low} to ${high}`, first.unit)} on ${phases} (values of ${interval})`;
}

function sentenceOf(assessment: Assessment, set: LimitSet, week: Week): Sentence {
  const { verdict, summary } = assessment;
  const when = inWeekText(assessment, week, true);
  const row = decidingRow(assessment, week)?.worst;
  const { judged, missing } = judgedParts(assessment, week);
  const isVoltage = judged.some(({ quantity }) => quantity === "voltage");
  const words = (set.isStandard ? OF_STANDARD : OF_LIMITS)[isVoltage ? "voltage" : "supply"];
  switch (verdict) {
    case "does-not-conform":
      return closed(words.failed(set.aside, when), row === undefined ? undefined : rowSentence(row, summary));
    case "undecided":
      return closed(words.open(set.aside, when), row?.reason?.sentence ?? say`too much of it is missing.`);
    case "conforms": {
      const isWhole = missing.every(({ quantity, isPart }) => quantity === "frequency" && !isPart);
      const partly = set.isStandard ? OF_STANDARD.partly : OF_LIMITS.partly;
      const kept = isWhole ? words.kept(set.aside, when) : partly(names(judged), set.aside, when);
      return missing.length === 0 ? say`${kept}.` : say`${kept}; not judged: ${names(missing)}.`;
    }
    case "for-information":
      return say`The values recorded ${when} give information on ${set.aside} but hold nothing that decides conformance.`;
    case "not-assessed":
      return closed(say`The supply ${when} could not be judged by ${set.name}`, leftOut(week) ?? because(assessment));
  }
}

/** The verdict on a standard, and on other limits. */
const OF_STANDARD = {
  voltage: {
    failed: (set: Text, when: Text) => say`The supply voltage did not conform to ${set} ${when}`,
    open: (set: Text, when: Text) => say`Whether the supply voltage conformed to ${set} ${when} is undecided`,
    kept: (set: Text, when: Text) => say`The supply voltage conformed to ${set} ${when}`,
  },
  supply: {
    failed: (set: Text, when: Text) => say`The supply did not conform to ${set} ${when}`,
    open: (set: Text, when: Text) => say`Whether the supply conformed to ${set} ${when} is undecided`,
    kept: (set: Text, when: Text) => say`The supply conformed to ${set} ${when}`,
  },
  partly: (judged: Text, set: Text, when: Text) =>
    say`In what could be judged (${judged}) the supply conformed to ${set} ${when}`,
} as const;

const OF_LIMITS = {
  voltage: {
    failed: (set: Text, when: Text) => say`The supply voltage did not keep the limits of ${set} ${when}`,
    open: (set: Text, when: Text) => say`Whether the supply voltage kept the limits of ${set} ${when} is undecided`,
    kept: (set: Text, when: Text) => say`The supply voltage kept the limits of ${set} ${when}`,
  },
  supply: {
    failed: (set: Text, when: Text) => say`The supply did not keep the limits of ${set} ${when}`,
    open: (set: Text, when: Text) => say`Whether the supply kept the limits of ${set} ${when} is undecided`,
    kept: (set: Text, when: Text) => say`The supply kept the limits of ${set} ${when}`,
  },
  partly: (judged: Text, set: Text, when: Text) =>
    say`In what could be judged (${judged}) the supply kept the limits of ${set} ${when}`,
} as const;

const PART_NAMES: Partial<Readonly<Record<Quantity, Sentence>>> = {
  "harmonic-voltage": say`harmonic voltages`,
  "thd-voltage": say`total harmonic distortion`,
  "mains-signalling": say`mains signalling`,
  plt: say`flicker severity`,
};

/** A quantity of the binding requirements; or, where others of its requirements were judged, a part of it. */
interface Part {
  readonly quantity: Quantity;
  readonly isPart: boolean;
}

function names(parts: readonly Part[]): Sentence {
  return strung(
    parts.map(({ quantity, isPart }) => {
      const name = PART_NAMES[quantity] ?? quantityName(quantity);
      return isPart ? say`part of the ${name}` : name;
    }),
    ", ",
  );
}

const NOT_JUDGED: readonly Verdict[] = ["for-information", "not-assessed"];

/** What of the binding requirements was judged in a week and what was not, each in the order of the limit set. */
function judgedParts(assessment: Assessment, week: Week): { readonly judged: Part[]; readonly missing: Part[] } {
  const binding = assessment.ruleSet.requirements.filter((requirement) => requirement.binding);
  const groups = byRequirement(assessment, week);
  const isJudged = (id: string) =>
    groups.some(({ id: own, worst }) => own === id && !NOT_JUDGED.includes(worst.verdict));
  const isOpen = (id: string) => assessment.notAssessed.some(({ requirement }) => requirement === id) || !isJudged(id);
  const judged = new Set(binding.filter(({ id }) => isJudged(id)).map(({ quantity }) => quantity));
  const missing = new Set(binding.filter(({ id }) => isOpen(id)).map(({ quantity }) => quantity));
  return {
    judged: [...judged].map((quantity) => ({ quantity, isPart: false })),
    missing: [...missing].map((quantity) => ({ quantity, isPart: judged.has(quantity) })),
  };
}
