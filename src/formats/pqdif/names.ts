import { CHARACTERISTIC } from "./characteristics.js";
import { DISTURBANCE } from "./disturbances.js";
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
  DCOFFSET: "direct component",
  DF: "displacement factor",
  DVV: "ΔU/U",
  FLKR: "flicker",
  FREQ: "frequency",
  FUND: "of the fundamental",
  HGROUP: "of harmonic groups",
  HIGHFREQ: "of high frequency",
  HISTOGRAM3D: "histogram of two quantities",
  HRMS: "r.m.s. of the harmonics",
  IEC: "IEC",
  IGROUP: "of interharmonic groups",
  IHRMS: "r.m.s. of the interharmonics",
  IMBAL: "unbalance",
  IMBALANCE: "unbalance",
  INST: "instantaneous value",
  INSTANT: "instantaneous",
  INTERRUPT: "interruption",
  INTG: "integrated",
  IT: "I·T product",
  IVL: "per interval",
  K: "K",
  LONGDUR: "long duration",
  LOWFREQ: "of low frequency",
  MAG: "magnitude",
  MAGDUR: "magnitude and duration",
  MAGDURCOUNT: "magnitude, duration and count",
  MAGDURTIME: "magnitude, duration and time",
  MAX: "maximum",
  MEDFREQ: "of medium frequency",
  MICRO: "of microseconds",
  MILLI: "of milliseconds",
  MIN: "minimum",
  MOMENT: "momentary",
  NANO: "of nanoseconds",
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
  POWERFREQVARIATION: "variation of the power frequency",
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
  SAG: "dip",
  SHORTDUR: "short duration",
  SNEG: "negative sequence",
  SPECTRA: "spectrum",
  SPOS: "positive sequence",
  SZERO: "zero sequence",
  TDD: "total demand distortion",
  TDF: "transformer derating factor",
  TEMP: "temporary",
  THD: "harmonic distortion",
  TID: "total interharmonic distortion",
  TIF: "telephone influence factor",
  TRANSFERFUNC: "transfer function",
  TRIPLEN: "of orders divisible by three",
  UMAX: "Umax",
  USS: "steady state",
  VAL: "value",
  VALUELOG: "value log",
  VOLTAGEFLUCTUATION: "voltage fluctuation",
  WAVEDISTORT: "distortion of the waveform",
  WGT: "weighted",
  XBINHIGH: "upper bound of bin in x",
  XBINLOW: "lower bound of bin in x",
  XY: "x and y",
  XYZ: "x, y and z",
  YBINHIGH: "upper bound of bin in y",
  YBINLOW: "lower bound of bin in y",
  ANSI: "ANSI",
};

/** Plain words for every identifier known here: what inspection shows of a quantity type, value type … */
export const quantityTypeName = namer(QUANTITY_TYPE);
export const valueTypeName = namer(VALUE_TYPE);
export const characteristicName = namer(CHARACTERISTIC);
export const disturbanceName = namer(DISTURBANCE);

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
const PHASES: Readonly<Record<number, string>> = {
  0: "none",
  1: "A to neutral",
  2: "B to neutral",
  3: "C to neutral",
  4: "neutral to ground",
  5: "A to B",
  6: "B to C",
  7: "C to A",
  8: "residual",
  9: "net",
  10: "positive sequence",
  11: "negative sequence",
  12: "zero sequence",
  13: "total",
  14: "average of phase to neutral",
  15: "average of phase to phase",
  16: "worst",
  17: "plus",
  18: "minus",
  36: "largest of phase to neutral",
  37: "smallest of phase to neutral",
  38: "largest of phase to phase",
  39: "smallest of phase to phase",
  40: "ground",
};

export function phaseName(phase: number): string | undefined {
  return PHASES[phase] ?? (phase >= 19 && phase <= 34 ? `general ${phase - 18}` : undefined);
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
const QUANTITIES =
  "none|voltage|current|power|energy|temperature|pressure|charge|electric field|magnetic field|velocity|bearing|force|torque|position|flux linkage|flux density|status|humidity|impedance".split(
    "|",
  );

export function quantityMeasuredName(quantity: number): string | undefined {
  return QUANTITIES[quantity];
}
