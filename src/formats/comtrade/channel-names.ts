import { type Sentence, say, type Text } from "../../sentence.js";

/** What the name or the phase field of a channel says, before it is known how the file names its conductors. */
export type Designation =
  | { readonly kind: "conductors"; readonly first: string; readonly second?: string; readonly quantity?: Letter }
  | { readonly kind: "left-out"; readonly reason: Sentence }
  | { readonly kind: "ambiguous" }
  | { readonly kind: "open" };

export type Letter = "voltage" | "current";
type Conductors = Extract<Designation, { kind: "conductors" }>;

/** Words by which a channel is no phase voltage or current sampled as a waveform. */
const LEFT_OUT: readonly (readonly [RegExp, Text])[] = [
  [
    /(RMS|EFF|MAG)$|^(RMS|EFF|MAGNITUDE|MEAN|AVG|AVERAGE|MITTEL|MITTELWERT|MOYEN|MEDIA|PROM)$/,
    say`an r.m.s. value or mean is no waveform`,
  ],
  [/^[UVI]?DC$|^[UV]?BAT|^[UV]?AUX/, say`direct and auxiliary voltages are not used`],
  [/^(FREQ|FREQUENCY|FREQUENZ|FREQUENCE|FREQUENZA|FRECUENCIA|HZ|ROCOF)$/, say`a frequency is no waveform`],
  [/^(ANG|ANGLE|WINKEL|PHI)$/, say`an angle is no waveform`],
  [/^(DIFF|DIFFERENTIAL|RESTRAINT|BIAS|PEAK|THD|SETPOINT)$/, say`it is computed from other values`],
  [
    /^(POS|NEG|ZERO|SEQ|SEQUENCE|NULLSYSTEM|GEGENSYSTEM|MITSYSTEM|HOMOPOLAR|HOMOPOLAIRE)$/,
    say`a symmetrical component is no phase quantity`,
  ],
  [
    /^3?[UVI]0$|^3[UVI][012O]$|^3I0N$|^(RES|RESIDUAL|SUM)$/,
    say`a residual quantity (sum of the phases) is no phase quantity`,
  ],
  [
    /^[UVI](E|G|EN|GND|NEUT)$|^(EARTH|ERDE|GROUND|GND|TERRE|TERRA|TIERRA|SEF)$/,
    say`an earth quantity is no phase quantity`,
  ],
];
const DESIGNATION = /^(U|V|I)?(L?[123]|[ABCRSTYN])(?:(L?[123]|[ABCRSTY])|NE|NG|N|PE|E|G)?\d*$/;
const QUANTITY_WORD =
  /^(VOLTAGE|SPANNUNG|TENSION|TENSIONE|CURRENT|STROM|COURANT|CORRENTE|CORRIENTE|PHASE|PH|LEITER|FASE)$/;
/** Short for transformers and breakers, where the name says more. */
const EQUIPMENT = /^(VT|CT|PT|CB|TR|BR)\d*$/;

/** The phase field: "A", "L1", "AB", "A-N", "phase 1". */
export function readPhaseField(text: string): Designation {
  const compact = plain(text)
    .replace(/^(PHASE|PH|LEITER|FASE)(?=[\s\d])/, "")
    .replaceAll(/[^A-Z0-9]/g, "");
  return conductors(compact) ?? { kind: "open" };
}

/**
 * The name of a channel: "VA", "UL1", "U L1-L2", "IN", "Bus 1 V A-N", "Spannung L1". Letters and digits of a phase
 * count only behind a quantity letter or with a word that says so; elsewhere they number buses and feeders.
 */
export function readName(text: string, unit: string): Designation {
  const bare = plain(text.replace(/\b(in)\b/g, " ")) === "" ? text : text.replace(/\b(in)\b/g, " ");
  const words = plain(bare)
    .replaceAll(`(${unit.toUpperCase()})`, " ")
    .replaceAll(`[${unit.toUpperCase()}]`, " ")
    .split(/[\s_:;,()[\]{}|=#*']+/)
    .filter((word) => word !== "");
  const parts = words.flatMap((word) => word.split(/[^A-Z0-9]+/)).filter((part) => part !== "");
  for (const part of parts) {
    const reason = LEFT_OUT.find(([pattern]) => pattern.test(part))?.[1];
    if (reason !== undefined) return { kind: "left-out", reason: say`"${part}": ${reason}` };
  }
  const whole = words.map((word) => word.replaceAll(/[^A-Z0-9]/g, ""));
  const named = (list: readonly string[]) => list.map(conductors).filter((c) => c?.quantity !== undefined);
  const line = (list: readonly string[]) => list.map(conductors).filter((c) => /^L\d/.test(c?.first ?? ""));
  const hasWord = parts.some((part) => QUANTITY_WORD.test(part));
  const withoutEquipment = (list: readonly string[]) => list.filter((word) => !EQUIPMENT.test(word));
  const single = hasWord || parts.length === 1 ? withoutEquipment([...whole, ...parts]) : [];
  const tiers = [
    () => named(withoutEquipment(whole)),
    () => named(withoutEquipment(parts)),
    () => named(joined(parts, 3)),
    () => named(joined(parts, 2)),
    () => named(parts),
    () => line(whole),
    () => line(joined(parts, 2)),
    () => line(parts),
    () => single.map(conductors),
  ];
  for (const tier of tiers) {
    const found = tier().filter((c) => c !== undefined);
    const distinct = new Map(found.map((c) => [`${c.first}${c.second ?? ""}`, c]));
    const [one] = distinct.values();
    if (one !== undefined) return distinct.size === 1 ? one : { kind: "ambiguous" };
  }
  return { kind: "open" };
}

function conductors(word: string): Conductors | undefined {
  const match = DESIGNATION.exec(word);
  if (!match || word === "AC" || word === "VAC" || word === "IAC") return undefined;
  const [, letter, first = "", next] = match;
  const isDigit = (text: string) => /\d$/.test(text);
  if (isDigit(first) && next !== undefined && !isDigit(next)) return undefined;
  const second = next !== undefined && isDigit(next) === isDigit(first) ? next.replace("L", "") : undefined;
  if (second !== undefined && second === first.replace("L", "")) return undefined;
  if (first === "N" && second !== undefined) return undefined;
  return {
    kind: "conductors",
    first,
    ...(second !== undefined && { second }),
    ...(letter !== undefined && { quantity: letter === "I" ? "current" : "voltage" }),
  };
}

function joined(parts: readonly string[], count: number): string[] {
  return parts.slice(0, Math.max(0, parts.length - count + 1)).map((_, i) => parts.slice(i, i + count).join(""));
}

function plain(text: string): string {
  return text.normalize("NFKD").replaceAll(/\p{M}/gu, "").toUpperCase().trim();
}
