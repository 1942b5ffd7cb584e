import type { LoggedQuantity, Phase } from "../../recording/quantity.js";
import { say, strung, type Text } from "../../sentence.js";
import { both, type Evidence, type OpenNumber } from "./recognise-columns-evidence.js";
import type { LogHeaders } from "./recognise-columns-log.js";
import { phaseOf } from "./recognise-columns-phase-names.js";
import type { Decided, Missing } from "./recognise-columns-quantity.js";

const SINGLE: readonly Phase[] = ["L1", "L2", "L3"];
const PAIRS: readonly Phase[] = ["L12", "L23", "L31"];
const VOLTAGES: readonly Phase[] = [...SINGLE, ...PAIRS];
const CURRENTS: readonly Phase[] = [...SINGLE, "N"];
const POWERS: readonly Phase[] = [...SINGLE, "system"];

/** The phases a quantity can stand on. Those with "system" need no phase named. */
export const PHASES: Readonly<Record<LoggedQuantity, readonly Phase[]>> = {
  voltage: [...VOLTAGES, "N"],
  current: CURRENTS,
  frequency: ["system"],
  "thd-voltage": VOLTAGES,
  "thd-current": CURRENTS,
  "harmonic-voltage": VOLTAGES,
  "harmonic-current": CURRENTS,
  "interharmonic-voltage": VOLTAGES,
  "mains-signalling": VOLTAGES,
  pst: VOLTAGES,
  plt: VOLTAGES,
  "negative-sequence-unbalance": ["system"],
  "zero-sequence-unbalance": ["system"],
  "active-power": POWERS,
  "reactive-power": POWERS,
  "apparent-power": POWERS,
  "power-factor": POWERS,
};

export const HAS_ORDER: ReadonlySet<LoggedQuantity> = new Set<LoggedQuantity>([
  "harmonic-voltage",
  "harmonic-current",
  "interharmonic-voltage",
]);

export interface Place {
  /** Undefined: the header names no phase, which a single-phase log need not do. */
  readonly phase: Phase | undefined;
  readonly order: number | undefined;
  readonly why: readonly Text[];
}

export type Statistic = "mean" | "min" | "max";

export const STATISTICS = { mean: say`mean`, min: say`min`, max: say`max` } as const;

/** Parts the setup gives; the header is then not asked for them. */
export interface GivenPlace {
  readonly phase?: Phase | undefined;
  readonly order?: number | undefined;
}

/** On which phase, and of which order, a header says its quantity is. */
export function decidePlace(
  quantity: LoggedQuantity,
  evidence: Evidence,
  log: LogHeaders,
  given: GivenPlace,
): Place | Missing {
  const open = [...evidence.numbers];
  const why: Text[] = [];
  let order: number | undefined = given.order;
  if (HAS_ORDER.has(quantity) && order === undefined) {
    const found = decideOrder(evidence, open, log, given.phase !== undefined);
    if ("missing" in found) return found;
    order = found.value;
    why.push(say`order ${order}: ${found.why}`);
    const lowest = quantity === "interharmonic-voltage" ? 0 : 1;
    if (order < lowest || order > 50) return { missing: say`orders ${lowest} to 50 are used, not ${order}` };
  }
  const [unasked] = evidence.orders;
  if (!HAS_ORDER.has(quantity) && unasked) {
    const overtone = quantity === "voltage" || quantity === "current";
    return {
      missing: overtone
        ? say`${unasked.said} names an order, but neither a harmonic nor % is named with it`
        : say`${unasked.said} names an order, which this quantity has not`,
    };
  }
  if (given.phase !== undefined) return { phase: given.phase, order, why };
  const phase = decidePhase(quantity, evidence, open);
  if ("missing" in phase) return phase;
  if (phase.why !== undefined) why.push(phase.why);
  return { phase: phase.value, order, why };
}

/** Takes the number it uses out of `open`. */
function decideOrder(evidence: Evidence, open: OpenNumber[], log: LogHeaders, phaseGiven: boolean): Decided<number> {
  const named = new Set(evidence.orders.map(({ value }) => value));
  if (named.size > 1) return { missing: say`it names more than one order: ${[...named].join(", ")}` };
  const [first] = evidence.orders;
  if (first) return { value: first.value, why: first.said };
  const fundamental = evidence.senses.get("fundamental");
  if (open.length === 0 && fundamental !== undefined) return { value: 1, why: fundamental };
  const phaseNamed = phaseGiven || evidence.phases.length > 0;
  const isRun = (number: OpenNumber) =>
    log.numbersInPlaceOf(evidence.text, number).filter((digits) => phaseOf(digits) === undefined).length >= 2;
  const runs = open.filter(isRun);
  const rest = open.filter((number) => !runs.includes(number));
  let number: OpenNumber | undefined;
  if (open.length === 1 && (phaseNamed || runs.length === 1 || phaseOf(open[0]?.digits ?? "") === undefined))
    [number] = open;
  else if (open.length === 2 && !phaseNamed && runs.length === 1 && phaseOf(rest[0]?.digits ?? "")) [number] = runs;
  else if (open.length === 2 && !phaseNamed) {
    const [glued, loose] = [open.filter((n) => n.symbol !== undefined), open.filter((n) => n.symbol === undefined)];
    if (glued.length === 1 && phaseOf(glued[0]?.digits ?? "") !== undefined) [number] = loose;
  }
  if (!number) {
    const missing =
      open.length === 0 ? say`it does not say which order` : say`it does not say which number is the order`;
    return { missing };
  }
  open.splice(open.indexOf(number), 1);
  const shown = `${number.symbol ?? ""}${number.digits}`;
  return {
    value: Number(number.digits),
    why: runs.includes(number) ? say`the columns count up at "${shown}"` : `"${shown}"`,
  };
}

/** A phase, without a reason where nothing else could be meant. */
type DecidedPhase = { readonly value: Phase | undefined; readonly why?: Text } | Missing;

function decidePhase(quantity: LoggedQuantity, evidence: Evidence, open: readonly OpenNumber[]): DecidedPhase {
  const allowed = PHASES[quantity];
  const { senses } = evidence;
  const phases = [...evidence.phases];
  for (const number of open) {
    const phase = phaseOf(number.digits);
    const shown = `${number.symbol ?? ""}${number.digits}`;
    const unbalance = quantity.endsWith("sequence-unbalance");
    if (unbalance && /^[uv][02]$/i.test(shown)) continue;
    if (unbalance || phase === undefined || phases.length > 0)
      return { missing: say`the number in "${shown}" is not explained` };
    phases.push({ value: phase, said: `"${shown}"` });
  }
  if (new Set(phases.map(({ value }) => value)).size > 1) {
    return {
      missing: say`it names more than one phase: ${strung(
        phases.map(({ said }) => said),
        ", ",
      )}`,
    };
  }
  const [phase] = phases;
  if (allowed.length === 1)
    return { value: "system", ...(phase && { why: say`one value for all phases, named at ${phase.said}` }) };
  const earthSaid = senses.get("earth");
  if (earthSaid !== undefined) {
    if (phase) return { missing: say`${earthSaid} is a voltage to earth, not to neutral` };
    if (senses.has("neutral")) return { value: "N", why: say`neutral to earth: ${earthSaid}` };
  }
  if (!phase) return withoutPhase(quantity, evidence);
  if (!allowed.includes(phase.value))
    return { missing: say`this quantity is not used on ${phase.value} (${phase.said})` };
  const isPair = PAIRS.includes(phase.value);
  const pairSaid = senses.get("line-to-line");
  if (!isPair && pairSaid !== undefined)
    return { missing: say`${pairSaid} asks for a pair of phases, but ${phase.said} names one` };
  const neutralSaid = senses.get("line-to-neutral") ?? senses.get("neutral");
  if (isPair && neutralSaid !== undefined)
    return { missing: say`${neutralSaid} and the pair ${phase.said} contradict each other` };
  const totalSaid = senses.get("total");
  if (totalSaid !== undefined && !quantity.startsWith("thd")) {
    return { missing: say`${totalSaid} and the phase ${phase.said} contradict each other` };
  }
  return { value: phase.value, why: say`${phase.value}: ${phase.said}` };
}

function withoutPhase(quantity: LoggedQuantity, evidence: Evidence): DecidedPhase {
  const allowed = PHASES[quantity];
  const { senses } = evidence;
  const total = senses.get("total");
  if (allowed.includes("system")) {
    return {
      value: "system",
      why: total === undefined ? say`all phases together, since none is named` : say`all phases together: ${total}`,
    };
  }
  const neutral = senses.get("neutral");
  if (neutral !== undefined && allowed === CURRENTS) return { value: "N", why: say`neutral: ${neutral}` };
  if (neutral !== undefined) return { missing: say`${neutral}: it does not say between which conductors` };
  const pair = senses.get("line-to-line");
  if (pair !== undefined) return { missing: say`${pair}: it does not say between which two phases` };
  if (total !== undefined && !quantity.startsWith("thd"))
    return { missing: say`${total}: a value over all phases is not that of one phase` };
  return { value: undefined };
}

/** Mean, minimum or maximum over the interval; without a word, the mean. */
export function decideStatistic(evidence: Evidence): Decided<Statistic> {
  const said = (["mean", "min", "max"] as const).filter((statistic) => evidence.senses.has(statistic));
  const [statistic] = said;
  if (statistic === undefined) return { value: "mean", why: say`no minimum or maximum is named` };
  if (said.length > 1) {
    return { missing: say`${both(said.map((one) => evidence.senses.get(one) ?? ""))} contradict each other` };
  }
  return { value: statistic, why: evidence.senses.get(statistic) ?? "" };
}
