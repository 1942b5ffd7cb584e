import { type Sentence, say } from "../../sentence.js";
export interface ChannelUnit {
  readonly quantity: "voltage" | "current";
  /** Volts or amperes per written unit. */
  readonly scale: number;
}

const UNITS: Readonly<Record<string, ChannelUnit>> = {
  v: { quantity: "voltage", scale: 1 },
  kv: { quantity: "voltage", scale: 1000 },
  mv: { quantity: "voltage", scale: 0.001 },
  a: { quantity: "current", scale: 1 },
  ka: { quantity: "current", scale: 1000 },
  ma: { quantity: "current", scale: 0.001 },
};
const WORDS: Readonly<Record<string, string>> = {
  volt: "v",
  volts: "v",
  amp: "a",
  amps: "a",
  ampere: "a",
  amperes: "a",
};

/** What a unit of the configuration stands for, whatever its letter case; a text says why it cannot be used. */
export function readUnit(written: string): ChannelUnit | Sentence {
  const text = written.replaceAll(/[\s.]/g, "");
  if (text === "") return say`no unit is stated`;
  if (text === "MV" || text === "MA") return say`the unit "${text}" may be milli or mega`;
  const plain = text.toLowerCase();
  const unit = UNITS[WORDS[plain] ?? plain];
  if (unit !== undefined) return unit;
  if (/^[km]?[va](rms|eff)$/.test(plain)) return say`an r.m.s. value is no waveform`;
  if (/^[km]?[va](dc|=)$/.test(plain)) return say`direct voltage and current are not used`;
  if (plain === "hz" || plain === "mhz") return say`a frequency is no waveform`;
  return say`the unit "${written}" is none of voltage or current`;
}
