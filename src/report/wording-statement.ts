import { allowedOutside } from "../decimal.js";
import type { Quantity } from "../recording/quantity.js";
import { WEEK } from "../recording/time.js";
import type { Assessment, Week } from "../rules/assessment.js";
import { measured } from "./numbers.js";
import { byRequirement, decidingRow, decidingWeek, finestSummary } from "./rows.js";
import {
  capital,
  lengthText,
  limitText,
  outsideText,
  placeText,
  quantityName,
  recordedLength,
  rowSentence,
  valuesText,
  weekText,
  withUnit,
} from "./wording.js";
import { furtherOf } from "./wording-counts.js";
import { eventsFinding } from "./wording-events.js";

/** The English statement that a report begins with. */

/** "EN 50160:2010, low voltage" with the verbs that go with a standard, or with limits of a country or a contract. */
interface LimitSet {
  readonly name: string;
  /** The name where the sentence goes on after it. */
  readonly aside: string;
  readonly kept: string;
  readonly notKept: string;
  readonly keeps: string;
}

function limitSet({ title, standard }: Assessment["ruleSet"]): LimitSet {
  if (title.startsWith(standard))
    return {
      name: title,
      aside: title.includes(",") ? `${title},` : title,
      kept: "conformed to",
      notKept: "did not conform to",
      keeps: "conforms to",
    };
  const name = `“${title}”`;
  return {
    name,
    aside: name,
    kept: "kept the limits of",
    notKept: "did not keep the limits of",
    keeps: "keeps the limits of",
  };
}

/** The verdict in one plain sentence; in `further` what one must also know before relying on it. */
export function statement(assessment: Assessment): { readonly sentence: string; readonly further: readonly string[] } {
  const week = decidingWeek(assessment);
  const set = limitSet(assessment.ruleSet);
  if (week === undefined) {
    const events = eventsFinding(assessment);
    return {
      sentence: `The recording holds nothing that ${set.aside} sets a limit for, so nothing could be judged${because(assessment)}`,
      further: events === undefined ? [] : [`It shows ${events}.`],
    };
  }
  const isShort = isTooShort(assessment, week);
  const shows = isShort ? shown(assessment, week) : [eventsFinding(assessment)].filter((text) => text !== undefined);
  const lead = isShort ? shows.slice(1).map((text) => `It also shows ${text}.`) : [];
  const also = isShort ? [] : shows.map((text) => `Recorded as well: ${text}.`);
  return {
    sentence: isShort ? shortSentence(assessment, set, shows[0]) : sentenceOf(assessment, set, week),
    further: [...lead, ...also, ...furtherOf(assessment, week, isShort)].map(capital),
  };
}

/** ": The log holds no values of the supply voltage.": of all reasons that of the supply voltage first, then a binding one. */
function because({ notAssessed, ruleSet }: Assessment): string {
  const of = (wanted: (requirement: Assessment["ruleSet"]["requirements"][number]) => boolean) =>
    notAssessed.find(({ requirement }) => ruleSet.requirements.some((r) => r.id === requirement && wanted(r)));
  const chosen =
    of(({ binding, quantity }) => binding && quantity === "voltage") ?? of(({ binding }) => binding) ?? notAssessed[0];
  return chosen === undefined ? "." : `: ${chosen.reason.sentence}`;
}

/** Less than a week was recorded, and that alone keeps it from being judged. */
export function isTooShort(assessment: Assessment, week: Week): boolean {
  const isOpen = assessment.verdict !== "conforms" && assessment.verdict !== "does-not-conform";
  const unsound = week.requirements.some(({ reason }) => reason?.id === "recording-unsound");
  return isOpen && !unsound && recordedLength(assessment) < WEEK;
}

/** What a recording of less than a week cannot show, and what it does show. */
function shortSentence(assessment: Assessment, { keeps, name }: LimitSet, first: string | undefined): string {
  const length = lengthText(recordedLength(assessment));
  const but = first === undefined ? "" : `; it shows ${first}`;
  return `The recording of ${length} cannot show whether a week ${keeps} ${name}${but}.`;
}

/** What a recording of less than a week shows: its events, the values counted so far or else the voltages found. */
function shown(assessment: Assessment, week: Week): string[] {
  const values = soFar(assessment, week) ?? foundVoltages(assessment);
  return [eventsFinding(assessment), values].filter((text) => text !== undefined);
}

/** "on phase L2 20 of 288 ten-minute values that lay above 253.0 V (of the 1008 of a week, 50 may)". */
function soFar(assessment: Assessment, week: Week): string | undefined {
  const row = byRequirement(assessment, week).find(({ worst }) => worst.quantity === "voltage" && worst.n > 0)?.worst;
  if (row === undefined) return undefined;
  const values = valuesText(row);
  if (row.outside === 0)
    return row.n === 1
      ? `one of the ${values} per phase, within ${limitText(row)}`
      : `${row.n} ${values} per phase, none outside ${limitText(row)}`;
  const expected = row.n + row.missing;
  const may = `of the ${expected} of a ${row.period}, ${allowedOutside(row.share, expected)} may`;
  return `on phase ${row.phase} ${row.outside} of ${row.n} ${values} that lay ${outsideText(row, assessment.summary)} (${may})`;
}

/** "voltages of 228.1 to 231.4 V on L1, L2, L3 (10/12-cycle values)": of the shortest interval that was measured. */
function foundVoltages(assessment: Assessment): string | undefined {
  const voltages = finestSummary(assessment).filter(({ quantity }) => quantity === "voltage");
  const [first] = voltages;
  if (first === undefined) return undefined;
  const low = measured(Math.min(...voltages.map(({ min }) => min)), first.unit);
  const high = measured(Math.max(...voltages.map(({ max }) => max)), first.unit);
  const phases = voltages.map(({ phase }) => placeText({ phase })).join(", ");
  return `voltages of ${low} to ${withUnit(high, first.unit)} on ${phases} (${first.interval} values)`;
}

function sentenceOf(assessment: Assessment, set: LimitSet, week: Week): string {
  const { verdict, summary, recording } = assessment;
  const when = weekText(assessment, week, ` (${recording.zone})`);
  const row = decidingRow(assessment, week)?.worst;
  const { judged, missing } = judgedParts(assessment, week);
  const supply = judged.includes(partName("voltage")) ? "the supply voltage" : "the supply";
  const open = missing.length === 0 ? "" : `; not judged: ${missing.join(", ")}`;
  switch (verdict) {
    case "does-not-conform":
      return `${capital(supply)} ${set.notKept} ${set.aside} in ${when}${row === undefined ? "." : `: ${rowSentence(row, summary)}`}`;
    case "undecided":
      return `Whether ${supply} ${set.kept} ${set.aside} in ${when} is undecided: ${row?.reason?.sentence ?? "too much of it is missing."}`;
    case "conforms":
      return missing.every((name) => name === partName("frequency"))
        ? `${capital(supply)} ${set.kept} ${set.aside} in ${when}${open}.`
        : `In what could be judged (${judged.join(", ")}) the supply ${set.kept} ${set.aside} in ${when}${open}.`;
    case "for-information":
      return `The recording of ${when} gives information on ${set.aside} but holds nothing that decides conformance.`;
    case "not-assessed":
      return `The supply in ${when} could not be judged by ${set.name}${because(assessment)}`;
  }
}

const PART_NAMES: Partial<Readonly<Record<Quantity, string>>> = {
  "harmonic-voltage": "harmonic voltages",
  "thd-voltage": "total harmonic distortion",
  "mains-signalling": "mains signalling",
  plt: "flicker severity",
};

function partName(quantity: Quantity): string {
  return PART_NAMES[quantity] ?? quantityName(quantity);
}

/** What of the binding requirements was judged in a week and what was not, by name, each in the order of the limit set. */
function judgedParts(assessment: Assessment, week: Week): { readonly judged: string[]; readonly missing: string[] } {
  const binding = assessment.ruleSet.requirements.filter((requirement) => requirement.binding);
  const groups = byRequirement(assessment, week);
  const isJudged = (id: string) => groups.some((group) => group.id === id && group.worst.verdict !== "for-information");
  const isOpen = (id: string) => assessment.notAssessed.some(({ requirement }) => requirement === id) || !isJudged(id);
  const judged = new Set(binding.filter(({ id }) => isJudged(id)).map(({ quantity }) => partName(quantity)));
  const missing = binding
    .filter(({ id }) => isOpen(id))
    .map(({ quantity }) => partName(quantity))
    .map((name) => (judged.has(name) ? `part of the ${name}` : name));
  return { judged: [...judged], missing: [...new Set(missing)] };
}
