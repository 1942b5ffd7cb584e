import { type Ratio, ratio } from "../../decimal.js";
import type { Unit } from "../../recording/quantity.js";
import { type Sentence, say } from "../../sentence.js";
import { plain } from "./vocabulary.js";

/** A unit as a log or the setup writes it. */
export type WrittenUnit =
  | { readonly kind: "unit"; readonly unit: Unit; readonly factor: Ratio; readonly text: string }
  /** Of the declared voltage; `factor` is 1 for per unit and 1/100 for per cent. */
  | { readonly kind: "of-declared"; readonly factor: Ratio; readonly text: string }
  /** "p.u.": of what is told by the quantity. */
  | { readonly kind: "per-unit"; readonly text: string }
  /** A unit that no quantity used here has, or whose prefix cannot be told. */
  | { readonly kind: "unusable"; readonly text: string; readonly reason: Sentence };

const PREFIX: Readonly<Record<string, string>> = { "": "1", k: "1000", m: "0.001", M: "1000000", G: "1000000000" };

const units = new Map<string, WrittenUnit>();

function define(unit: Unit, prefixes: string, names: string): void {
  for (const prefix of ["", ...prefixes]) {
    const written: WrittenUnit = { kind: "unit", unit, factor: ratio(PREFIX[prefix] ?? "1"), text: prefix + unit };
    for (const name of names.split(" ")) {
      units.set(prefix + name, written);
      // A capital K means kilo too: no other prefix has that letter.
      if (prefix === "k") units.set(`K${name}`, written);
    }
  }
}

define("V", "km", "V v Vrms Veff Vac VAC");
define("A", "km", "A Arms Aeff Aac AAC");
define("Hz", "m", "Hz");
define("W", "kmMG", "W");
define("var", "kM", "var VAr Var VAR vAr");
define("VA", "kM", "VA");
for (const word of ["%", "pct", "percent", "prozent", "pourcent", "pour cent", "por ciento", "per cento", "per cent"]) {
  units.set(word, { kind: "unit", unit: "%", factor: ratio(1), text: "%" });
}
for (const word of ["volt", "volts", "voltios", "voltio"]) units.set(word, get("V"));
for (const word of ["ampere", "amperes", "amp", "amps", "amperios", "amperio"]) units.set(word, get("A"));
for (const word of ["hertz", "HZ", "hz"]) units.set(word, get("Hz"));
for (const word of ["watt", "watts", "vatios"]) units.set(word, get("W"));
for (const [small, text] of ["a A", "w W", "kv kV", "ka kA", "kw kW", "kva kVA"].map((pair) => pair.split(" "))) {
  units.set(small as string, get(text as string));
}
for (const word of ["p.u.", "pu", "p.u", "PU", "P.U."]) units.set(word, { kind: "per-unit", text: "p.u." });
for (const word of ["1", "-", "--", "none", "ohne"]) {
  units.set(word, { kind: "unit", unit: "1", factor: ratio(1), text: "1" });
}

for (const text of ["mv", "MV", "ma", "MA", "mw", "mvar", "mva", "mhz", "MHz", "MHZ"]) {
  units.set(text, {
    kind: "unusable",
    text,
    reason: say`the unit "${text}" does not tell milli from mega (the case of the prefix decides)`,
  });
}
const FOREIGN =
  "Wh kWh MWh varh kvarh Mvarh VAh kVAh MVAh VArh kVArh Ah kAh °C °F °K deg ° rad grad Grad s ms ohm Ohm kOhm dB dBm bar hPa mbar VDC Vdc ADC Adc Vpk Vp Vpp Apk".split(
    " ",
  );
for (const text of FOREIGN) {
  units.set(text, { kind: "unusable", text, reason: say`no quantity used here has the unit "${text}"` });
}

function get(text: string): WrittenUnit {
  const unit = units.get(text);
  if (!unit) throw new RangeError(text);
  return unit;
}

const OF_WHAT =
  /^(%|pct|p\.?\s?u\.?|percent|prozent)\s*(?:\/\s*)?(?:(?:of|de|del|di|von|vom|der|du)\s+)?(?:(?:the|la|le|l')\s*)?(.+)$/i;
const DECLARED =
  /^(?:u_?n|u_?c|v_?n|unom|vnom|udin|u_?din|(?:voltage )?(?:declared|nominal|rated|nenn)[a-z]*(?: (?:voltage|spannung))?|nennspannung|tension (?:nominale|nominal|declaree|declarada)|tensione (?:nominale|dichiarata))$/i;
const OF_FUNDAMENTAL = /^(?:f|h0?1|u_?1|i_?1|fund|fundamental|grundschwingung|(?:du |le )?fondamental[e]?)$/i;
const OF_RMS = /^(?:r|rms|r\.m\.s\.|eff)$/i;

/** The unit that a whole text stands for ("kV", "%", "% of declared", "p.u."); undefined if it is none. */
export function writtenUnit(raw: string): WrittenUnit | undefined {
  const text = plain(raw).replace(/\s+/g, " ").trim();
  const exact = units.get(text) ?? units.get(text.replace(/ (?:rms|r\.m\.s\.|eff|ac|AC|RMS)$/, ""));
  if (exact) return exact;
  if (/^[a-z. ]{3,}$/i.test(text)) {
    const word = units.get(text.toLowerCase());
    if (word && text.length > 3) return word;
  }
  const [, share, what] = OF_WHAT.exec(text) ?? [];
  if (share === undefined || what === undefined) return undefined;
  const percent = !/^p\.?\s?u/i.test(share);
  if (DECLARED.test(what)) {
    const written = percent ? "% of declared" : "p.u. of declared";
    return { kind: "of-declared", factor: ratio(percent ? "0.01" : "1"), text: written };
  }
  if (OF_FUNDAMENTAL.test(what)) {
    return {
      kind: "unit",
      unit: "%",
      factor: ratio(percent ? 1 : 100),
      text: percent ? "% of fundamental" : "p.u. of fundamental",
    };
  }
  if (OF_RMS.test(what)) {
    return {
      kind: "unusable",
      text: `% ${what}`,
      reason: say`a share of the whole r.m.s. value is not a share of the fundamental`,
    };
  }
  return undefined;
}

/** The units a setup may name, for messages. */
export const KNOWN_UNITS =
  'V, kV, mV, A, kA, mA, Hz, mHz, %, p.u., "% of declared", W, kW, MW, var, kvar, Mvar, VA, kVA, MVA, 1';
