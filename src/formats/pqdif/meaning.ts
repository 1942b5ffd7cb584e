import type { LoggedQuantity, Phase } from "../../recording/quantity.js";
import type { ColumnMeaning } from "../../recording/recording.js";
import { say, type Text } from "../../sentence.js";
import { CHARACTERISTIC as C } from "./characteristics.js";
import type { Field } from "./fields.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "./identifiers.js";
import { characteristicName, phaseName, quantityMeasuredName, quantityTypeName } from "./names.js";
import { HERTZ, unitText, VOLTS } from "./units.js";

/** What the identifiers of a field say it is. Parts that they do not say are absent, and `unclear` says why. */
export interface Guess {
  readonly quantity?: LoggedQuantity | "flag";
  readonly phase?: Phase;
  readonly order?: number;
  readonly statistic?: ColumnMeaning["statistic"];
  readonly unclear?: Text;
}

/** Numbers of what is measured (IEEE 1159.3, tagQuantityMeasuredID). */
export const [VOLTAGE, CURRENT, POWER] = [1, 2, 3] as const;

/** Numbers of the phases (tagPhaseID); those that this program has no phase for are not in the table. */
export const PHASES: Readonly<Record<number, Phase>> = {
  1: "L1",
  2: "L2",
  3: "L3",
  4: "N",
  5: "L12",
  6: "L23",
  7: "L31",
};
const [NO_PHASE, NET, TOTAL] = [0, 9, 13] as const;

type Of = Partial<Record<number, LoggedQuantity>>;

/** By characteristic and what is measured. */
const QUANTITY: Readonly<Record<string, Of>> = {
  [C.RMS]: { [VOLTAGE]: "voltage", [CURRENT]: "current" },
  [C.TOTAL_THD]: { [VOLTAGE]: "thd-voltage", [CURRENT]: "thd-current" },
  [C.SPECTRA]: { [VOLTAGE]: "harmonic-voltage", [CURRENT]: "harmonic-current" },
  [C.SPECTRA_HGROUP]: { [VOLTAGE]: "harmonic-voltage", [CURRENT]: "harmonic-current" },
  [C.SPECTRA_IGROUP]: { [VOLTAGE]: "interharmonic-voltage" },
  [C.S2S1]: { [VOLTAGE]: "negative-sequence-unbalance" },
  [C.S0S1]: { [VOLTAGE]: "zero-sequence-unbalance" },
  [C.FLKR_PST]: { [VOLTAGE]: "pst" },
  [C.FLKR_PLT]: { [VOLTAGE]: "plt" },
  [C.P]: { [POWER]: "active-power" },
  [C.Q]: { [POWER]: "reactive-power" },
  [C.S]: { [POWER]: "apparent-power" },
  [C.PF]: { [POWER]: "power-factor", [VOLTAGE]: "power-factor", [CURRENT]: "power-factor" },
};

/** Characteristics that come near to one that is used, and must not stand in for it. */
const OTHER: Readonly<Record<string, Text>> = {
  [C.AVG_IMBAL]: say`it is the largest deviation from the average of the phases, another definition than the negative sequence u2`,
  [C.TOTAL_THD_RMS]: say`it is in relation to the whole r.m.s. value; total harmonic distortion is judged in relation to the fundamental`,
  [C.FLKR_PLTSLIDE]: say`it is a sliding Plt, one value every Pst interval; Plt is counted in blocks of two hours`,
  [C.HRMS]: say`it is the r.m.s. value of all harmonics together`,
  [C.IHRMS]: say`it is the r.m.s. value of all interharmonics together`,
};

/** Quantities that belong to all phases together, whatever phase a file gives them. */
const OF_SYSTEM: ReadonlySet<string> = new Set(["frequency", "negative-sequence-unbalance", "zero-sequence-unbalance"]);
const POWERS: ReadonlySet<string> = new Set(["active-power", "reactive-power", "apparent-power", "power-factor"]);
const SPECTRA: ReadonlySet<string> = new Set(["harmonic-voltage", "harmonic-current", "interharmonic-voltage"]);
const HIGHEST_ORDER = 50;

/**
 * What a field of logged values is, by its identifiers alone: quantity type, characteristic, value type, what is
 * measured and phase. Neither its name nor its position counts (IEEE 1159.3).
 * @param nominalFrequency in Hz, for orders that are given as a frequency
 */
export function meaningOf(field: Field, nominalFrequency: number): Guess {
  const statistic = statisticOf(field);
  const quantity = quantityOf(field);
  if (typeof quantity !== "string") return { ...(statistic !== undefined && { statistic }), unclear: quantity };
  if (quantity === "flag") return { quantity };
  if (field.series.percentile !== undefined) {
    return { unclear: say`it is the value that ${field.series.percentile} % do not exceed, no mean or extreme` };
  }
  if (statistic === undefined) return { quantity, unclear: say`it holds no mean, value, minimum or maximum` };
  return { statistic, ...placeOf(field, quantity, nominalFrequency) };
}

/** Phase and order of a field, of which the quantity is known. */
export function placeOf(field: Field, quantity: LoggedQuantity, nominalFrequency: number): Guess {
  const phase = phaseOf(quantity, field.definition.phase);
  const order = SPECTRA.has(quantity) ? orderOf(field, quantity, nominalFrequency) : undefined;
  const unclear = typeof phase === "string" ? (typeof order === "object" ? order : undefined) : phase;
  return {
    quantity,
    ...(typeof phase === "string" && { phase: phase as Phase }),
    ...(typeof order === "number" && { order }),
    ...(unclear !== undefined && { unclear }),
  };
}

function quantityOf({ definition, series, group, frequency }: Field): LoggedQuantity | "flag" | (Text & object) {
  const { quantityType, quantityMeasured: measured } = definition;
  if (quantityType !== QUANTITY_TYPE.VALUELOG && quantityType !== QUANTITY_TYPE.PHASOR) {
    const name = quantityTypeName(quantityType) ?? quantityType;
    return say`its quantity type (${name}) is no log of values over time`;
  }
  const { characteristic, units, valueType } = series;
  if (characteristic === C.FLAGGING || characteristic === C.FLAGGING_IEC_61000_4_30) return "flag";
  if (characteristic === C.FREQUENCY) return "frequency";
  if (characteristic === undefined) {
    // Definitions before 1.5 have no characteristic; what is measured and the unit then say enough for these two only.
    if (valueType === VALUE_TYPE.FREQUENCY || units === HERTZ) return "frequency";
    const isSpectrum = group !== undefined || frequency !== undefined;
    if (!isSpectrum && units === VOLTS && (measured ?? VOLTAGE) === VOLTAGE) return "voltage";
    return say`it has no characteristic, so what it holds is not said; say it in the setup under columns:`;
  }
  const other = OTHER[characteristic];
  if (other !== undefined) return other as Text & object;
  const name = characteristicName(characteristic);
  if (name === undefined) {
    return say`its characteristic ${characteristic} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:`;
  }
  const found = QUANTITY[characteristic];
  if (found === undefined) return say`its characteristic (${name}) is not used here`;
  // Without what is measured (before 1.5) the unit stands in.
  const of = measured ?? (units === VOLTS ? VOLTAGE : units === 7 ? CURRENT : units >= 8 && units <= 10 ? POWER : 0);
  const quantity = found[of] ?? (of === 0 ? only(found) : undefined);
  if (quantity === undefined) {
    return say`its characteristic (${name}) of a ${quantityMeasuredName(of) ?? of} in ${unitText(units)} is not used here`;
  }
  return quantity;
}

/** The quantity of a characteristic that only one thing can have. */
function only(found: Of): LoggedQuantity | undefined {
  const all = new Set(Object.values(found));
  return all.size === 1 ? [...all][0] : undefined;
}

function statisticOf({ definition, series }: Field): ColumnMeaning["statistic"] | undefined {
  switch (series.valueType) {
    case VALUE_TYPE.MIN:
      return "min";
    case VALUE_TYPE.MAX:
      return "max";
    case VALUE_TYPE.AVG:
      return "mean";
    case VALUE_TYPE.VAL:
    case VALUE_TYPE.INST:
    case VALUE_TYPE.RMS:
    case VALUE_TYPE.FREQUENCY: {
      const hasMean = definition.series.some(
        (s) => s.valueType === VALUE_TYPE.AVG && s.characteristic === series.characteristic,
      );
      return hasMean ? undefined : "mean";
    }
    default:
      return undefined;
  }
}

/** A phase, or why there is none. */
function phaseOf(quantity: string, number: number): Phase | (Text & object) {
  if (OF_SYSTEM.has(quantity)) return "system";
  if (POWERS.has(quantity) && (number === TOTAL || number === NET || number === NO_PHASE)) return "system";
  const phase = PHASES[number];
  if (phase === undefined)
    return say`its phase (${phaseName(number) ?? number}) is no conductor that is judged; say the phase in the setup under columns:`;
  if (quantity.endsWith("current") && phase.length === 3) return say`a current between phases is not used`;
  return phase;
}

/** How far a frequency may lie from a multiple of the nominal one to be a harmonic, as a share of the nominal one. */
const OFF = 0.05;

function orderOf({ group, frequency }: Field, quantity: string, nominalFrequency: number): number | (Text & object) {
  const between = quantity === "interharmonic-voltage";
  let order = group;
  if (order === undefined && frequency !== undefined) {
    const multiple = frequency / nominalFrequency;
    const nearest = Math.round(multiple);
    if (between) order = Math.floor(multiple + OFF);
    else if (Math.abs(multiple - nearest) <= OFF) order = nearest;
    else
      return say`${frequency} Hz is no multiple of ${nominalFrequency} Hz, and single lines of a spectrum are no group of interharmonics`;
  }
  if (order === undefined)
    return say`neither a group nor a frequency says its order; say it in the setup under columns: order`;
  if (order < (between ? 0 : 1)) return say`order ${order} is no harmonic`;
  return order > HIGHEST_ORDER ? say`order ${order} lies beyond ${HIGHEST_ORDER}` : order;
}
