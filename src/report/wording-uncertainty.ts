import type { Assessment, Row, Week } from "../rules/assessment.js";
import type { Uncertainty, Zone } from "../rules/assessment-evidence.js";
import { Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { byRequirement } from "./rows.js";
import { quantityName, withUnit } from "./wording.js";

/** Words on the uncertainty of the measurement and on the decision rule. */

export const UNCERTAINTY_HEADING = say`Uncertainty and decision rule`;

export const UNCERTAINTY_COLUMNS = {
  quantity: say`Quantity`,
  from: say`Comes from`,
  expanded: say`±, with k = 2`,
  origin: say`Origin`,
  reason: say`Reason`,
} as const;

export const UNCERTAINTY_COLUMN = say`Uncertainty`;

export const CONTRIBUTORS: Readonly<Record<Uncertainty["from"], Sentence>> = {
  instrument: say`instrument`,
  sensor: say`sensor`,
  resolution: say`last digit`,
};

export const UNCERTAINTY_ORIGINS: Readonly<Record<Uncertainty["origin"], Sentence>> = {
  given: say`given`,
  inferred: say`from the class`,
};

/** "The last digit of the log adds: supply voltage ±0.0577 V; voltage unbalance ±0.00577 %." */
export function lastDigits(uncertainties: readonly Uncertainty[]): Sentence | undefined {
  const parts = uncertainties
    .filter(({ from }) => from === "resolution")
    .map((part) => say`${quantityName(part.quantity)} ${expandedText(part)}`);
  return parts.length === 0
    ? undefined
    : say`Included is what the last digit of the log hides, half a step either way, all values in it alike: ${strung(parts, "; ")}.`;
}

export const COMBINED_NOTE = say`Contributions to one quantity combine as the root of the sum of their squares. With k = 2 about 95 % of errors are smaller. The class of a sensor counts for the quantity it measures only.`;

export const UNCERTAINTY_NOT_STATED = say`The uncertainty of the measurement was not stated: the setup gives neither the instrument's class (A or S of IEC 61000-4-30) nor a value. Whether a verdict would hold within it is not known.`;

const RULES = {
  simple: say`Decision rule: simple acceptance. Values are compared with the limits as they are, and no margin is taken off for the uncertainty; a value exactly on its limit is accepted, wrongly so with a probability of up to 50 % (ILAC-G8:09/2019).`,
  guarded: say`Decision rule: guarded acceptance with a guard band of the expanded uncertainty (ILAC-G8:09/2019, w = U). A requirement conforms only if it does so with every limit moved inwards by the uncertainty, and fails only if it does so with every limit moved outwards; in between it is undecided. A single value is wrongly accepted with a probability below 2.5 %.`,
} as const;

export const RULE_ASSUMED = say`None was stated; EN 50160 prescribes no guard band, so the values are taken as they are.`;

export const ZONES_NOTE = say`“conditional pass”, “conditional fail”: within the uncertainty; with every limit moved by it, inwards or outwards, the verdict would be another. “near a limit”: values no further from a limit than the uncertainty.`;

export function ruleText({ decision }: Assessment): Sentence {
  return RULES[decision.rule];
}

const OF = {
  reading: say`of the reading`,
  declared: say`of the declared voltage`,
} as const;

/** "±0.1 % of the declared voltage", "±5 % of the reading, at least 0.05 %", "±0.01 Hz". */
export function expandedText({ expanded, unit, of, least }: Uncertainty): Sentence {
  const size = plusMinus(expanded, unit);
  if (of === "absolute") return size;
  return least === undefined
    ? say`${size} ${OF[of]}`
    : say`${size} ${OF[of]}, at least ${withUnit(shortNumber(least), unit)}`;
}

function plusMinus(size: number, unit: string): Sentence {
  return strung(["±", withUnit(shortNumber(size), unit)]);
}

/** Three digits that count: more would pretend to know the uncertainty better than it is known. */
function shortNumber(value: number): Numeral {
  return new Numeral(String(Number(value.toPrecision(3))));
}

const ZONES: Readonly<Record<Zone, Sentence>> = {
  "conforms-clearly": say`clear`,
  "conforms-within": say`conditional pass`,
  "fails-within": say`conditional fail`,
  "fails-clearly": say`clear`,
};

/** "±0.23 V; near a limit: 3; conditional pass": near are the values within it of a limit, on either side. */
export function surenessText({ uncertainty, near, zone, unit }: Row): Text {
  if (uncertainty === undefined || near === undefined) return say`not known`;
  const size = plusMinus(uncertainty, unit);
  return zone === undefined ? say`${size}; near a limit: ${near}` : say`${size}; near a limit: ${near}; ${ZONES[zone]}`;
}

/** Shown below a verdict that the uncertainty could turn. */
export function conditionText({ zone, clear }: Pick<Row, "zone" | "clear">): Sentence | undefined {
  return zone === undefined || clear !== false ? undefined : ZONES[zone];
}

/** The decision rule in a sentence of the statement, and how many requirements the uncertainty could turn. */
export function decisionSentences(assessment: Assessment, week: Week): Sentence[] {
  const { decision, uncertainties } = assessment;
  const groups = byRequirement(assessment, week).filter(({ worst }) => worst.binding);
  const decided = groups.filter(({ rows }) => rows.some(isDecided));
  if (decided.length === 0 && decision.rule === "simple") return [];
  if (uncertainties.length === 0) {
    return [say`Decision rule: simple acceptance; the uncertainty of the measurement was not stated.`];
  }
  const unclear = groups.filter(({ rows }) => rows.some(({ clear }) => clear === false)).length;
  const unknown = decided.filter(({ rows }) => rows.some((row) => isDecided(row) && row.clear === undefined)).length;
  return [decision.rule === "simple" ? simpleText(unclear) : guardedText(unclear), ...unknownText(unknown)];
}

function isDecided({ verdict }: Row): boolean {
  return verdict === "conforms" || verdict === "does-not-conform";
}

function simpleText(unclear: number): Sentence {
  if (unclear === 0)
    return say`Decision rule: simple acceptance; the uncertainty of the measurement could not turn a verdict.`;
  return unclear === 1
    ? say`Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on one requirement.`
    : say`Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on ${unclear} requirements.`;
}

function guardedText(unclear: number): Sentence {
  if (unclear === 0)
    return say`Decision rule: guarded acceptance; no requirement lies within the uncertainty of the measurement.`;
  return unclear === 1
    ? say`Decision rule: guarded acceptance; one requirement lies within the uncertainty of the measurement, at least in part.`
    : say`Decision rule: guarded acceptance; ${unclear} requirements lie within the uncertainty of the measurement, at least in part.`;
}

function unknownText(unknown: number): Sentence[] {
  if (unknown === 0) return [];
  return [
    unknown === 1
      ? say`For one requirement the uncertainty is not known.`
      : say`For ${unknown} requirements the uncertainty is not known.`,
  ];
}
