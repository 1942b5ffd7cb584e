import { QUANTITIES, type Quantity } from "../recording/quantity.js";
import type { GivenSetup } from "../recording/setup.js";
import { say, type Text } from "../sentence.js";
import type { Uncertainty } from "./assessment-evidence.js";
import type { Test } from "./tests.js";

/** Every uncertainty here is expanded with this coverage factor, about 95 % for a normal distribution (JCGM 100). */
const K = 2;

type Accuracy = Pick<Uncertainty, "expanded" | "of" | "least" | "confirmed"> & { readonly note?: Text };

const MEMORY = { confirmed: false } as const;
const RELATIVE = (expanded: number, least?: number): Accuracy => ({
  expanded,
  of: "reading",
  ...(least !== undefined && { least }),
  ...MEMORY,
});
const ABSOLUTE = (expanded: number): Accuracy => ({ expanded, of: "absolute", ...MEMORY });
const DISTORTION = (accuracy: Accuracy): Accuracy => ({
  ...accuracy,
  note: say`the standard gives none for the total; derived: as for one harmonic, all of them off by the same share`,
});

/**
 * Measuring uncertainty that IEC 61000-4-30:2015 allows an instrument of a class; harmonics after IEC 61000-4-7, class I or II
 * (the "least" there is in % of the nominal voltage). The 0.1 % of class A was read in a trade article
 * about class A, everything else is from memory. No figure is known here for the flicker and
 * signalling of class S. The figures are taken as expanded uncertainties (k = 2): common practice, no source.
 */
export const CLASS_ACCURACY: Readonly<Record<"A" | "S", Partial<Record<Quantity, Accuracy>>>> = {
  A: {
    voltage: { expanded: 0.1, of: "declared", confirmed: true },
    frequency: ABSOLUTE(0.01),
    "negative-sequence-unbalance": ABSOLUTE(0.15),
    "zero-sequence-unbalance": ABSOLUTE(0.15),
    "harmonic-voltage": RELATIVE(5, 0.05),
    "interharmonic-voltage": RELATIVE(5, 0.05),
    "thd-voltage": DISTORTION(RELATIVE(5, 0.05)),
    "mains-signalling": RELATIVE(5, 0.15),
    pst: RELATIVE(5),
    plt: RELATIVE(5),
  },
  S: {
    voltage: { expanded: 0.5, of: "declared", ...MEMORY },
    frequency: ABSOLUTE(0.05),
    "negative-sequence-unbalance": ABSOLUTE(0.3),
    "zero-sequence-unbalance": ABSOLUTE(0.3),
    "harmonic-voltage": RELATIVE(5, 0.15),
    "interharmonic-voltage": RELATIVE(5, 0.15),
    "thd-voltage": DISTORTION(RELATIVE(5, 0.15)),
  },
};

/**
 * What is known of the uncertainty of a quantity: the stated value, else that of the instrument's class, and what the
 * sensors add. Empty where neither is known; sensors alone say nothing of the instrument behind them.
 */
function contributions(quantity: Quantity, { instrument = {} }: Pick<GivenSetup, "instrument">): Uncertainty[] {
  const own = ofInstrument(quantity, instrument);
  if (own === undefined) return [];
  const sensors = (instrument.sensors ?? []).flatMap(({ what, measures, class: accuracy }): Uncertainty[] => {
    if (accuracy === undefined || measures !== quantity) return [];
    const reason = say`class ${accuracy} of ${what}: its largest error in % of the reading, taken as the expanded uncertainty`;
    const of = { expanded: accuracy, unit: "%", of: "reading" } as const;
    return [{ quantity, from: "sensor", ...of, k: K, origin: "inferred", confirmed: false, reason }];
  });
  // The largest of the sensors' classes holds for the phase that is worst off.
  const worst = sensors.sort((a, b) => b.expanded - a.expanded)[0];
  return worst === undefined ? [own] : [own, worst];
}

function ofInstrument(quantity: Quantity, instrument: NonNullable<GivenSetup["instrument"]>): Uncertainty | undefined {
  const unit = (of: Uncertainty["of"]) => (of === "absolute" ? QUANTITIES[quantity].unit : "%");
  const stated = instrument.uncertainty?.find((u) => u.quantity === quantity);
  if (stated !== undefined) {
    const { expanded, of, k = K, source } = stated;
    return {
      quantity,
      from: "instrument",
      expanded: (expanded * K) / k,
      unit: unit(of),
      of,
      k: K,
      origin: "given",
      confirmed: true,
      reason: statedReason(expanded, k, source),
    };
  }
  if (instrument.class !== "A" && instrument.class !== "S") return undefined;
  const accuracy = CLASS_ACCURACY[instrument.class][quantity];
  if (accuracy === undefined) return undefined;
  const { expanded, of, least, confirmed, note } = accuracy;
  return {
    quantity,
    from: "instrument",
    expanded,
    unit: unit(of),
    of,
    ...(least !== undefined && { least }),
    k: K,
    origin: "inferred",
    confirmed,
    reason: classReason(instrument.class, confirmed, note),
  };
}

function statedReason(expanded: number, k: number, source: string | undefined): Text {
  const from = source ?? say`stated in the setup`;
  return k === K ? from : say`${from}; stated as ${expanded} with k = ${k}, here converted to k = ${K}`;
}

function classReason(name: "A" | "S", confirmed: boolean, note: Text | undefined): Text {
  const from = confirmed
    ? say`class ${name} of IEC 61000-4-30, as quoted in a public article`
    : say`class ${name} of IEC 61000-4-30, from memory; check it in the standard`;
  return note === undefined ? from : say`${from}; ${note}`;
}

/**
 * What the logger's last digit hides: a value written in steps of q is anywhere within ±q/2 of it, a rectangular
 * distribution of standard uncertainty q/(2√3) (JCGM 100:2008, 4.3.7), expanded q/√3.
 */
function ofResolution(quantity: Quantity, step: number): Uncertainty {
  const { unit } = QUANTITIES[quantity];
  const withUnit = unit === "1" ? say`${step}` : say`${step} ${unit}`;
  return {
    quantity,
    from: "resolution",
    expanded: (K * step) / (2 * Math.sqrt(3)),
    unit,
    of: "absolute",
    k: K,
    origin: "inferred",
    confirmed: true,
    reason: say`the log writes steps of ${withUnit}: half a step either way, all values in it alike`,
  };
}

/** All that adds to the uncertainty of a test's values; empty where nothing is known of the instrument. */
export function uncertaintyOf({ series }: Pick<Test, "series">, given: Pick<GivenSetup, "instrument">): Uncertainty[] {
  const known = contributions(series.quantity, given);
  if (known.length === 0 || series.resolution === undefined) return known;
  return [...known, ofResolution(series.quantity, series.resolution)];
}

/** The expanded uncertainty of a value: the root of the sum of the squares of its contributions (JCGM 100, independent ones). */
export function expandedAt(parts: readonly Uncertainty[], declaredVoltage: number, value: number): number {
  return Math.sqrt(parts.reduce((sum, part) => sum + sizeAt(part, declaredVoltage, value) ** 2, 0));
}

function sizeAt({ of, expanded, least = 0 }: Uncertainty, declaredVoltage: number, value: number): number {
  if (of === "absolute") return expanded;
  return Math.max(least, (expanded / 100) * (of === "declared" ? declaredVoltage : Math.abs(value)));
}
