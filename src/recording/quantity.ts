import { type Sentence, say } from "../sentence.js";

/** The quantities a log can carry: one table, used by every stage. */

export type Phase = "L1" | "L2" | "L3" | "N" | "L12" | "L23" | "L31" | "system";

export const PHASE_TO_NEUTRAL = ["L1", "L2", "L3"] as const satisfies readonly Phase[];
export const PHASE_TO_PHASE = ["L12", "L23", "L31"] as const satisfies readonly Phase[];

/** The phases whose voltages are judged for a connection (EN 50160: between phase and neutral, or between phases). */
export function supplyPhases(connection: "star" | "delta" | "single"): readonly Phase[] {
  if (connection === "single") return ["L1"];
  return connection === "star" ? PHASE_TO_NEUTRAL : PHASE_TO_PHASE;
}

/** V, A, W, var, VA, Wh, Hz, % (of the fundamental or of the positive sequence), 1 (no unit). */
export type Unit = "V" | "A" | "W" | "var" | "VA" | "Wh" | "Hz" | "%" | "1";

/**
 * How shorter intervals become a longer one. `rms`: root of the mean square (IEC 61000-4-30, aggregation of
 * r.m.s. quantities); `mean`: arithmetic mean; `none`: shorter values cannot be combined.
 */
export type AggregationRule = "rms" | "mean" | "none";

export interface QuantityInfo {
  readonly symbol: string;
  /** Plain name as the standards use it, lower case, for sentences and axis titles. */
  readonly name: Sentence;
  readonly unit: Unit;
  readonly aggregation: AggregationRule;
}

/** What a logger may have written. */
export const LOGGED_QUANTITIES = {
  voltage: { symbol: "U", name: say`supply voltage`, unit: "V", aggregation: "rms" },
  current: { symbol: "I", name: say`current`, unit: "A", aggregation: "rms" },
  frequency: { symbol: "f", name: say`power frequency`, unit: "Hz", aggregation: "mean" },
  "thd-voltage": {
    symbol: "THD-U",
    name: say`total harmonic distortion of the voltage`,
    unit: "%",
    aggregation: "rms",
  },
  "thd-current": {
    symbol: "THD-I",
    name: say`total harmonic distortion of the current`,
    unit: "%",
    aggregation: "rms",
  },
  "harmonic-voltage": { symbol: "Uh", name: say`harmonic voltage`, unit: "%", aggregation: "rms" },
  "harmonic-current": { symbol: "Ih", name: say`harmonic current`, unit: "A", aggregation: "rms" },
  "interharmonic-voltage": { symbol: "Uih", name: say`interharmonic voltage`, unit: "%", aggregation: "rms" },
  "mains-signalling": { symbol: "Us", name: say`mains signalling voltage`, unit: "%", aggregation: "none" },
  pst: { symbol: "Pst", name: say`short-term flicker severity`, unit: "1", aggregation: "none" },
  plt: { symbol: "Plt", name: say`long-term flicker severity`, unit: "1", aggregation: "none" },
  "negative-sequence-unbalance": { symbol: "u2", name: say`voltage unbalance`, unit: "%", aggregation: "rms" },
  "zero-sequence-unbalance": { symbol: "u0", name: say`zero-sequence unbalance`, unit: "%", aggregation: "rms" },
  "active-power": { symbol: "P", name: say`active power`, unit: "W", aggregation: "mean" },
  "reactive-power": { symbol: "Q", name: say`reactive power`, unit: "var", aggregation: "mean" },
  "apparent-power": { symbol: "S", name: say`apparent power`, unit: "VA", aggregation: "mean" },
  "power-factor": { symbol: "PF", name: say`power factor`, unit: "1", aggregation: "none" },
} as const satisfies Record<string, QuantityInfo>;

/** What is measured from waveforms only. */
const WAVEFORM_QUANTITIES = {
  underdeviation: { symbol: "Uunder", name: say`voltage underdeviation`, unit: "%", aggregation: "none" },
  overdeviation: { symbol: "Uover", name: say`voltage overdeviation`, unit: "%", aggregation: "none" },
  "crest-factor-voltage": { symbol: "CF-U", name: say`crest factor of the voltage`, unit: "1", aggregation: "rms" },
  "crest-factor-current": { symbol: "CF-I", name: say`crest factor of the current`, unit: "1", aggregation: "rms" },
  "interharmonic-current": { symbol: "Iih", name: say`interharmonic current`, unit: "A", aggregation: "rms" },
  "displacement-factor": { symbol: "PF1", name: say`displacement power factor`, unit: "1", aggregation: "none" },
  "fundamental-active-power": { symbol: "P1", name: say`fundamental active power`, unit: "W", aggregation: "mean" },
  "fundamental-apparent-power": {
    symbol: "S1",
    name: say`fundamental apparent power`,
    unit: "VA",
    aggregation: "mean",
  },
  "nonactive-power": { symbol: "N", name: say`nonactive power`, unit: "var", aggregation: "mean" },
  "current-distortion-power": { symbol: "DI", name: say`current distortion power`, unit: "var", aggregation: "mean" },
  "voltage-distortion-power": { symbol: "DV", name: say`voltage distortion power`, unit: "var", aggregation: "mean" },
  "harmonic-apparent-power": { symbol: "SH", name: say`harmonic apparent power`, unit: "VA", aggregation: "mean" },
  "energy-import": { symbol: "E+", name: say`active energy, import`, unit: "Wh", aggregation: "none" },
  "energy-export": { symbol: "E−", name: say`active energy, export`, unit: "Wh", aggregation: "none" },
} as const satisfies Record<string, QuantityInfo>;

export const QUANTITIES = { ...LOGGED_QUANTITIES, ...WAVEFORM_QUANTITIES };

export type LoggedQuantity = keyof typeof LOGGED_QUANTITIES;
export type Quantity = keyof typeof QUANTITIES;

/** One place in the table of measured values: a quantity on a phase, with a harmonic order where there is one. */
export interface SeriesKey {
  readonly quantity: Quantity;
  readonly phase: Phase;
  /** Harmonic order 1…50; for interharmonics the order below the group. */
  readonly order?: number;
  /** Carrier frequency of mains signalling, in Hz, where several are measured. */
  readonly hertz?: number;
}

/** A stable text for a key, for maps and messages: "harmonic-voltage L1 order 5". */
export function keyText(key: SeriesKey): string {
  const where = key.phase === "system" ? "" : ` ${key.phase}`;
  const order = key.order === undefined ? "" : ` order ${key.order}`;
  return `${key.quantity}${where}${order}${key.hertz === undefined ? "" : ` at ${key.hertz} Hz`}`;
}
