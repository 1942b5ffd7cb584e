import type { LoggedQuantity, Unit } from "../../recording/quantity.js";
import { say, strung, type Text } from "../../sentence.js";
import { both, type Evidence, type OpenNumber } from "./recognise-columns-evidence.js";
import type { LogHeaders } from "./recognise-columns-log.js";
import { phaseOf } from "./recognise-columns-phase-names.js";
import type { Sense } from "./vocabulary.js";

/** What was decided, or why not; both in plain words. */
export type Decided<T> = { readonly value: T; readonly why: Text } | Missing;

export interface Missing {
  readonly missing: Text;
}

/** Words that say which quantity a column holds; the others say where, when and how. */
export const QUANTITY_SENSES: ReadonlySet<Sense> = new Set<Sense>([
  "voltage",
  "current",
  "frequency",
  "power",
  "active",
  "reactive",
  "apparent",
  "factor",
  "power-factor",
  "distortion",
  "harmonic",
  "interharmonic",
  "fundamental",
  "pst",
  "plt",
  "flicker",
  "short-term",
  "long-term",
  "unbalance",
  "negative-sequence",
  "zero-sequence",
  "positive-sequence",
  "signalling",
  "flag",
]);

interface Rule {
  readonly says: readonly Sense[];
  /** Words that may stand beside without changing the meaning; any other quantity word contradicts. */
  readonly beside?: readonly Sense[];
  readonly quantity?: LoggedQuantity | "flag";
  /** Why a column that says this is left out. */
  readonly leftOut?: Text;
}

/** In order: the first rule all of whose words stand in the header decides. */
const RULES: readonly Rule[] = [
  { says: ["flag"], beside: [...QUANTITY_SENSES], quantity: "flag" },
  { says: ["positive-sequence"], leftOut: say`positive-sequence values are not used` },
  { says: ["harmonic", "power"], leftOut: say`powers of single harmonics are not used` },
  { says: ["interharmonic", "current"], leftOut: say`interharmonic currents are not used` },
  { says: ["unbalance", "current"], leftOut: say`unbalance of the currents is not used` },
  { says: ["plt"], beside: ["voltage", "flicker", "long-term"], quantity: "plt" },
  { says: ["pst"], beside: ["voltage", "flicker", "short-term"], quantity: "pst" },
  { says: ["flicker", "long-term"], beside: ["voltage"], quantity: "plt" },
  { says: ["flicker", "short-term"], beside: ["voltage"], quantity: "pst" },
  { says: ["flicker"], leftOut: say`it does not say whether short-term (Pst) or long-term (Plt)` },
  { says: ["unbalance", "zero-sequence"], beside: ["voltage", "factor"], quantity: "zero-sequence-unbalance" },
  {
    says: ["unbalance"],
    beside: ["voltage", "factor", "negative-sequence"],
    quantity: "negative-sequence-unbalance",
  },
  { says: ["distortion", "voltage"], beside: ["harmonic", "fundamental", "factor"], quantity: "thd-voltage" },
  { says: ["distortion", "current"], beside: ["harmonic", "fundamental", "factor"], quantity: "thd-current" },
  { says: ["interharmonic", "voltage"], beside: ["harmonic"], quantity: "interharmonic-voltage" },
  { says: ["harmonic", "voltage"], beside: ["fundamental"], quantity: "harmonic-voltage" },
  { says: ["harmonic", "current"], beside: ["fundamental"], quantity: "harmonic-current" },
  { says: ["fundamental", "voltage"], quantity: "harmonic-voltage" },
  { says: ["fundamental", "current"], quantity: "harmonic-current" },
  { says: ["signalling"], beside: ["voltage"], quantity: "mains-signalling" },
  { says: ["power-factor"], beside: ["power", "factor"], quantity: "power-factor" },
  { says: ["power", "factor"], quantity: "power-factor" },
  { says: ["active"], beside: ["power"], quantity: "active-power" },
  { says: ["reactive"], beside: ["power"], quantity: "reactive-power" },
  { says: ["apparent"], beside: ["power"], quantity: "apparent-power" },
  { says: ["frequency"], beside: ["power", "voltage"], quantity: "frequency" },
  { says: ["voltage"], quantity: "voltage" },
  { says: ["current"], quantity: "current" },
];

/** What the unit alone says where no word does. */
const BY_UNIT: Partial<Record<Unit, LoggedQuantity>> = {
  V: "voltage",
  A: "current",
  Hz: "frequency",
  W: "active-power",
  var: "reactive-power",
  VA: "apparent-power",
};

/** Which quantity a header speaks of. */
export function decideQuantity(evidence: Evidence, log: LogHeaders): Decided<LoggedQuantity | "flag"> {
  const said = new Map([...evidence.senses].filter(([sense]) => QUANTITY_SENSES.has(sense)));
  const unit = evidence.unit?.value.kind === "unit" ? evidence.unit.value.unit : undefined;
  if (said.has("unbalance")) noteSequence(evidence, said);
  const decided =
    quantityByNumber(evidence, said, log) ??
    quantityByUnit(evidence, said, unit) ??
    addCarrier(said, unit, log) ??
    addUnbalance(said, unit);
  return decided ?? quantityByRule(said);
}

/** Where no word says it, or "power" alone, the unit does. */
function quantityByUnit(
  evidence: Evidence,
  said: ReadonlyMap<Sense, Text>,
  unit: Unit | undefined,
): Decided<LoggedQuantity> | undefined {
  const quantity = unit === undefined ? undefined : BY_UNIT[unit];
  if (quantity === undefined || evidence.unit === undefined) return undefined;
  const powerAlone = said.size === 1 && said.has("power") && quantity.endsWith("-power");
  return said.size === 0 || powerAlone ? { value: quantity, why: say`by its unit ${evidence.unit.said}` } : undefined;
}

/** Harmonics and distortion of what: the unit tells, or the lack of any current in the log. */
function addCarrier(said: Map<Sense, Text>, unit: Unit | undefined, log: LogHeaders): Missing | undefined {
  const overtone = said.has("distortion") || said.has("harmonic") || said.has("interharmonic");
  if (!overtone || said.has("voltage") || said.has("current") || said.has("power")) return undefined;
  const carrier = unit === "V" ? "voltage" : unit === "A" ? "current" : undefined;
  if (carrier !== undefined) said.set(carrier, say`its unit ${unit ?? ""}`);
  else if (log.speaksOfCurrent) return { missing: say`it does not say whether of the voltage or of the current` };
  else said.set("voltage", say`a log in which no column speaks of a current`);
  return undefined;
}

function addUnbalance(said: Map<Sense, Text>, unit: Unit | undefined): Missing | undefined {
  const sequence = said.has("negative-sequence") || said.has("zero-sequence");
  if (!sequence || said.has("unbalance")) return undefined;
  if (unit !== "%") return { missing: say`a sequence component is used only as unbalance in %` };
  said.set("unbalance", say`the unit %`);
  return undefined;
}

function quantityByRule(said: ReadonlyMap<Sense, Text>): Decided<LoggedQuantity | "flag"> {
  const rule = RULES.find(({ says }) => says.every((sense) => said.has(sense)));
  if (!rule) {
    if (said.has("power")) return { missing: say`it does not say whether active, reactive or apparent power` };
    return { missing: say`it does not say which quantity it holds` };
  }
  const words = both(rule.says.map((sense) => said.get(sense) ?? ""));
  if (rule.leftOut !== undefined) return { missing: say`${words}: ${rule.leftOut}` };
  const against = [...said].find(([sense]) => !rule.says.includes(sense) && !rule.beside?.includes(sense));
  if (against) return { missing: say`${words} and ${against[1]} contradict each other` };
  const unsaid = rule.quantity === "negative-sequence-unbalance" && !said.has("negative-sequence");
  const note = say`the voltage unbalance of the standards is that of the negative sequence`;
  return { value: rule.quantity as LoggedQuantity | "flag", why: unsaid ? strung([words, note], "; ") : words };
}

/** "Unbalance u2", "unbalance u0": the symbol says which sequence. */
function noteSequence(evidence: Evidence, said: Map<Sense, Text>): void {
  for (const { symbol, digits } of evidence.numbers) {
    if (symbol === undefined || !/^[uv]$/i.test(symbol)) continue;
    const shown = `${symbol}${digits}`;
    if (digits === "2") said.set("negative-sequence", say`the symbol ${shown}`);
    if (digits === "0") said.set("zero-sequence", say`the symbol ${shown}`);
  }
}

/**
 * "U5 L1 %", "U2 %", "u0": a number behind a bare voltage or current that is an order or a sequence. Numbers
 * that count on are orders where those stand among them that supplies show most (5, 7, 11, 13; common practice, no
 * source), as feeders are numbered too.
 */
function quantityByNumber(
  evidence: Evidence,
  said: ReadonlyMap<Sense, Text>,
  log: LogHeaders,
): Decided<LoggedQuantity> | undefined {
  const carrier = said.size === 1 ? [...said.keys()][0] : undefined;
  if (carrier !== "voltage" && carrier !== "current") return undefined;
  const harmonic = carrier === "voltage" ? "harmonic-voltage" : "harmonic-current";
  const percent = isPercent(evidence);
  const [order] = evidence.orders;
  if (order !== undefined && percent) return { value: harmonic, why: say`${order.said} beside the unit %` };
  const alone = evidence.phases.length + evidence.numbers.length === 1;
  for (const number of evidence.numbers) {
    const shown = `${number.symbol ?? ""}${number.digits}`;
    const others = evidence.numbers.filter((other) => other !== number && phaseOf(other.digits) !== undefined);
    const phaseElsewhere = evidence.phases.length + others.length > 0;
    const run = log.numbersInPlaceOf(evidence.text, number).map(Number);
    const orders = percent ? [5, 7] : [5, 7, 11, 13];
    if ((phaseElsewhere || percent) && orders.every((order) => run.includes(order))) {
      return { value: harmonic, why: say`the columns ${shown} … count up like harmonic orders` };
    }
    if (phaseElsewhere && percent && number.symbol !== undefined && evidence.numbers.length === 1) {
      return { value: harmonic, why: say`the number ${shown} beside the phase and the unit %` };
    }
    if (alone && carrier === "voltage" && number.symbol !== undefined) {
      return sequenceByNumber(number, number.symbol, evidence, log);
    }
  }
  return undefined;
}

function isPercent({ unit }: Evidence): boolean {
  return unit?.value.kind === "unit" && unit.value.unit === "%";
}

/** u2 and u0 as IEC 61000-4-30, 5.7, writes the unbalances; U1, U2, U3 in one unit are phases. */
function sequenceByNumber(
  { digits, at }: OpenNumber,
  symbol: string,
  evidence: Evidence,
  log: LogHeaders,
): Decided<LoggedQuantity> | undefined {
  const percent = isPercent(evidence);
  const bare = symbol === "u" && evidence.unit === undefined;
  const shown = `${symbol}${digits}`;
  if (digits === "0") {
    if (!percent && !bare) return { missing: say`${shown} is used only as zero-sequence unbalance in %` };
    const why = percent ? say`the symbol ${shown} with the unit %` : say`the symbol ${shown}`;
    return { value: "zero-sequence-unbalance", why };
  }
  const phaseBeside = ["1", "3"].some((other) => log.hasTwinInUnit(evidence, at, other));
  if (digits !== "2" || phaseBeside || (!percent && !bare)) return undefined;
  const [first, third] = [`${symbol}1`, `${symbol}3`];
  const why = percent
    ? say`the symbol ${shown} in %, and no ${first} or ${third} in % beside it`
    : say`the symbol ${shown}, and no ${first} or ${third} beside it`;
  return { value: "negative-sequence-unbalance", why };
}
