import { type Sentence, say } from "../../sentence.js";
import { CHARACTERISTIC } from "./characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "./identifiers.js";

/** Words for the parts of the names that the headers abbreviate; other parts stand as they are, in lower case. */
const WORDS: Readonly<Record<string, string>> = {
  ABSORPTION: "absorption",
  ARITH: "arithmetic",
  AVG: "average",
  BINHIGH: "upper bound of bin",
  BINID: "number of bin",
  BINLOW: "lower bound of bin",
  CO: "coincident with",
  CPF: "cumulative probability",
  DAXIS: "d axis",
  DAXISFIELD: "field of d axis",
  DF: "displacement factor",
  DVV: "ΔU/U",
  FLKR: "flicker",
  FREQ: "frequency",
  FUND: "of the fundamental",
  HGROUP: "of harmonic groups",
  HISTOGRAM3D: "histogram of two quantities",
  HRMS: "r.m.s. of the harmonics",
  IEC: "IEC",
  IGROUP: "of interharmonic groups",
  IHRMS: "r.m.s. of the interharmonics",
  IMBAL: "unbalance",
  INST: "instantaneous value",
  INTG: "integrated",
  IT: "I·T product",
  IVL: "per interval",
  K: "K",
  MAG: "magnitude",
  MAGDUR: "magnitude and duration",
  MAGDURCOUNT: "magnitude, duration and count",
  MAGDURTIME: "magnitude, duration and time",
  MAX: "maximum",
  MIN: "minimum",
  NEG: "negative",
  P: "active power",
  P1: "1st percentile",
  P10: "10th percentile",
  P5: "5th percentile",
  P90: "90th percentile",
  P95: "95th percentile",
  P99: "99th percentile",
  PF: "power factor",
  PHASEANGLE: "phase angle",
  PILPF: "filtered instantaneous value",
  PIMAX: "largest instantaneous value",
  PINST: "Pinst",
  PIROOT: "root of the instantaneous value",
  PIROOTLPF: "filtered root of the instantaneous value",
  PLT: "Plt",
  PLTSLIDE: "sliding Plt",
  POS: "positive",
  PRED: "predicted",
  PROB: "probability",
  PST: "Pst",
  Q: "reactive power",
  QAXIS: "q axis",
  REL: "relative",
  RMS: "r.m.s.",
  RVC: "rapid voltage change",
  S: "apparent power",
  S0S1: "zero over positive sequence",
  S2S1: "negative over positive sequence",
  SNEG: "negative sequence",
  SPECTRA: "spectrum",
  SPOS: "positive sequence",
  SZERO: "zero sequence",
  TDD: "total demand distortion",
  TDF: "transformer derating factor",
  THD: "harmonic distortion",
  TID: "total interharmonic distortion",
  TIF: "telephone influence factor",
  TRANSFERFUNC: "transfer function",
  TRIPLEN: "of orders divisible by three",
  UMAX: "Umax",
  USS: "steady state",
  VAL: "value",
  VALUELOG: "value log",
  WGT: "weighted",
  XBINHIGH: "upper bound of bin in x",
  XBINLOW: "lower bound of bin in x",
  XY: "x and y",
  XYZ: "x, y and z",
  YBINHIGH: "upper bound of bin in y",
  YBINLOW: "lower bound of bin in y",
  ANSI: "ANSI",
};

/** Words for identifiers of the standard: names, which are the same in every language. */
export const quantityTypeName = namer(QUANTITY_TYPE);
export const valueTypeName = namer(VALUE_TYPE);
export const characteristicName = namer(CHARACTERISTIC);

/** @returns words by identifier, undefined for one that is not in the table */
function namer(table: Readonly<Record<string, string>>): (guid: string) => string | undefined {
  const names = new Map(Object.entries(table).map(([name, guid]) => [guid, words(name)]));
  return (guid) => names.get(guid);
}

function words(name: string): string {
  const parts = name.split("_").map((part) => WORDS[part] ?? part.toLowerCase());
  return parts.join(" ");
}

/** tagPhaseID. 10 to 12 are of versions before 1.5 and stand in no header seen; 36 to 40 came with 1.6 and 1.7. */
const PHASES: Readonly<Record<number, Sentence>> = {
  0: say`none`,
  1: say`A to neutral`,
  2: say`B to neutral`,
  3: say`C to neutral`,
  4: say`neutral to ground`,
  5: say`A to B`,
  6: say`B to C`,
  7: say`C to A`,
  8: say`residual`,
  9: say`net`,
  10: say`positive sequence`,
  11: say`negative sequence`,
  12: say`zero sequence`,
  13: say`total`,
  14: say`average of phase to neutral`,
  15: say`average of phase to phase`,
  16: say`worst`,
  17: say`plus`,
  18: say`minus`,
  36: say`largest of phase to neutral`,
  37: say`smallest of phase to neutral`,
  38: say`largest of phase to phase`,
  39: say`smallest of phase to phase`,
  40: say`ground`,
};

export function phaseName(phase: number): Sentence | undefined {
  return PHASES[phase] ?? (phase >= 19 && phase <= 34 ? say`general ${phase - 18}` : undefined);
}

/** tagQuantityUnitsID; 4 and 5 do not exist; from 40 on of version 1.6. */
const UNITS =
  "1|timestamp|s|cycles|||V|A|VA|W|var|Ω|S|V/A|J|Hz|°C|°|dB|%|per unit|samples|varh|Wh|VAh|m/s|mile/h|bar|Pa|N|Nm|rev/min|rad/s|m|Wb·turns|T|Wb|V/V|A/A|A/V|m/s²|m/s³|rad/s²|rad/s³|sabin".split(
    "|",
  );

/** The unit's symbol; "1" for a number without unit. */
export function unitName(unit: number): string | undefined {
  return UNITS[unit] || undefined;
}

/** tagQuantityMeasuredID; 18 and 19 of version 1.6. */
const QUANTITIES: readonly Sentence[] = [
  say`none`,
  say`voltage`,
  say`current`,
  say`power`,
  say`energy`,
  say`temperature`,
  say`pressure`,
  say`charge`,
  say`electric field`,
  say`magnetic field`,
  say`velocity`,
  say`bearing`,
  say`force`,
  say`torque`,
  say`position`,
  say`flux linkage`,
  say`flux density`,
  say`status`,
  say`humidity`,
  say`impedance`,
];

export function quantityMeasuredName(quantity: number): Sentence | undefined {
  return QUANTITIES[quantity];
}
