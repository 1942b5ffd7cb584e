import { type LoggedQuantity, QUANTITIES, type Unit } from "../../recording/quantity.js";
import { type Sentence, say, type Text } from "../../sentence.js";
import { unitName } from "./names.js";

/** Numbers of units (IEEE 1159.3, tagQuantityUnitsID) that decide something here. */
export const [NONE, TIMESTAMP, SECONDS, CYCLES, VOLTS, AMPS, HERTZ, PERCENT, PER_UNIT, VOLTS_PER_VOLT] = [
  0, 1, 2, 3, 6, 7, 15, 19, 20, 37,
] as const;

export function unitText(units: number): Text {
  return units === NONE ? say`no unit` : (unitName(units) ?? say`unit ${units}`);
}

/** What a share in % must lie below to be taken for a fraction of 1 rather than for %. As in tables: CSV asks below 0.2. */
const FRACTION = 0.2;

export interface Scale {
  readonly unit: Unit;
  readonly factor: number;
  readonly why: Text;
}

/** What the unit of a series may depend on. */
export interface Values {
  /** Of the values that are there; undefined without any. */
  readonly median: number | undefined;
  /** tagSeriesBaseQuantity of its instances, where all state the same positive one. */
  readonly base: number | undefined;
  /** Declared voltage given in the setup, of the phases that this series is of. */
  readonly declared: number | undefined;
}

const SHARES: ReadonlySet<LoggedQuantity> = new Set([
  "thd-voltage",
  "thd-current",
  "negative-sequence-unbalance",
  "zero-sequence-unbalance",
]);

const OWN: Partial<Record<LoggedQuantity, readonly [number: number, unit: Unit]>> = {
  voltage: [VOLTS, "V"],
  current: [AMPS, "A"],
  frequency: [HERTZ, "Hz"],
  "active-power": [9, "W"],
  "reactive-power": [10, "var"],
  "apparent-power": [8, "VA"],
};

/** What is measured, as sentences name it. */
export const MEASURED = {
  voltage: say`a voltage`,
  current: say`a current`,
  frequency: say`a frequency`,
  "active-power": say`an active power`,
  "reactive-power": say`a reactive power`,
  "apparent-power": say`an apparent power`,
} as const satisfies Partial<Record<LoggedQuantity, Sentence>>;

function measuredText(quantity: LoggedQuantity): Text {
  return quantity in MEASURED ? MEASURED[quantity as keyof typeof MEASURED] : QUANTITIES[quantity].name;
}

/**
 * Unit and factor of a series by its unit number; the unit goes before any look at the values. A unit of electricity that
 * does not fit is one that the writer got wrong: the quantity measured is the better witness. A text says why the series
 * cannot be used. Harmonics: see harmonicScale.
 */
export function scaleOf(quantity: LoggedQuantity, units: number, values: Values): Scale | Text {
  if (quantity === "pst" || quantity === "plt") return { unit: "1", factor: 1, why: say`the quantity has no unit` };
  if (quantity === "power-factor") {
    return { unit: "1", factor: units === PERCENT ? 0.01 : 1, why: say`the unit is ${unitText(units)}` };
  }
  if (SHARES.has(quantity)) return shareScale(units, values);
  const [number, unit] = OWN[quantity] ?? [PERCENT, "%"];
  if (units === number) return { unit, factor: 1, why: say`the unit is ${unit}` };
  if (units === PER_UNIT) return perUnit(quantity, unit, values);
  if (units === PERCENT) return say`${measuredText(quantity)} in % does not say of what`;
  if (units === NONE) return withoutUnit(quantity, unit, values);
  return {
    unit,
    factor: 1,
    why: say`its unit says ${unitText(units)}, but what is measured is ${measuredText(quantity)}, so it is taken as ${unit}`,
  };
}

function shareScale(units: number, { median }: Values): Scale | Text {
  if (units === PERCENT) return { unit: "%", factor: 1, why: say`the unit is %` };
  if (units === PER_UNIT || units === VOLTS_PER_VOLT) {
    return { unit: "%", factor: 100, why: say`the unit is ${unitText(units)}, a fraction of 1` };
  }
  if (median === undefined) return say`it holds no values`;
  if (units !== NONE) return say`the unit ${unitText(units)} does not fit a share in %`;
  if (median < FRACTION) {
    return say`it has no unit, and its values (median ${median}) may be % or a fraction of 1; say the unit in the setup under columns:, "%" or "p.u."`;
  }
  return { unit: "%", factor: 1, why: say`it has no unit; the median ${median} is one in %` };
}

function perUnit(quantity: LoggedQuantity, unit: Unit, { base, declared }: Values): Scale | Text {
  if (base !== undefined) return { unit, factor: base, why: say`per unit of ${base} ${unit}, the base that it states` };
  if (quantity === "voltage" && declared !== undefined) {
    return { unit, factor: declared, why: say`per unit of the declared voltage ${declared} V` };
  }
  return say`it is in p.u. and states no base; give the declared voltage with --declared`;
}

function withoutUnit(quantity: LoggedQuantity, unit: Unit, { median }: Values): Scale | Text {
  if (median === undefined) return say`it holds no values`;
  const [low, high] = quantity === "voltage" ? [80, 1000] : quantity === "frequency" ? [40, 70] : [0, -1];
  if (median >= low && median <= high) {
    return { unit, factor: 1, why: say`it has no unit; the median ${median} is one in ${unit}` };
  }
  return say`it has no unit, and the median ${median} does not tell it; say the unit in the setup under columns:`;
}

/** How near order 1 must come to 100 % (or 1), and to the r.m.s. value, to show what harmonics are of. */
const NEAR = 0.05;

export interface Fundamental {
  /** Medians of order 1 of the same spectrum, and of the r.m.s. value on the phase in V or A. */
  readonly first: number | undefined;
  readonly rms: number | undefined;
}

/**
 * Harmonics stand in % of the fundamental or in V (A): by the unit, unless order 1 shows that it is the other.
 * @param own V for voltages, A for currents
 */
export function harmonicScale(own: "V" | "A", units: number, { first, rms }: Fundamental): Scale | Text {
  const near = (value: number) => first !== undefined && Math.abs(first - value) <= NEAR * value;
  const seen =
    rms !== undefined && near(rms) && !near(100)
      ? own
      : near(100) && !(rms !== undefined && near(rms))
        ? "%"
        : undefined;
  const said = units === PERCENT ? "%" : units === (own === "V" ? VOLTS : AMPS) ? own : undefined;
  if (said !== undefined && (seen === undefined || seen === said)) {
    return {
      unit: said,
      factor: 1,
      why: said === "%" ? say`in % of the fundamental by its unit` : say`the unit is ${said}`,
    };
  }
  if (seen !== undefined) {
    const median = first ?? 0;
    return {
      unit: seen,
      factor: 1,
      why: say`its unit says ${unitText(units)}, but order 1 has the median ${median}, so it is taken as ${seen === "%" ? say`% of the fundamental` : seen}`,
    };
  }
  if (near(1) && (units === NONE || units === PER_UNIT || units === VOLTS_PER_VOLT)) {
    return { unit: "%", factor: 100, why: say`order 1 is 1, so it is a fraction of the fundamental` };
  }
  if (own === "V" && (units === AMPS || units === 9)) {
    return {
      unit: own,
      factor: 1,
      why: say`its unit says ${unitText(units)}, but what is measured is ${MEASURED.voltage}, so it is taken as ${own}`,
    };
  }
  return say`its unit is ${unitText(units)} and no order 1 shows whether it is % of the fundamental or ${own}; say the unit in the setup under columns:`;
}
