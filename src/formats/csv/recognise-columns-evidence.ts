import type { Phase } from "../../recording/quantity.js";
import { HeaderReader } from "./recognise-columns-reader.js";
import { type HasTwin, hasLetterTwin, tokens } from "./recognise-columns-tokens.js";
import { type WrittenUnit, writtenUnit } from "./recognise-columns-units.js";
import { plain, type Sense } from "./vocabulary.js";

/** Something the header says, with the words that say it. */
export interface Said<T> {
  readonly value: T;
  readonly said: string;
}

/** A number whose role (phase or order) the header alone may leave open. */
export interface OpenNumber {
  readonly digits: string;
  readonly at: number;
  /** The quantity symbol it is glued to ("U5"); undefined for a number standing alone. */
  readonly symbol?: string;
}

/** What one header says, part by part. */
export interface Evidence {
  /** Header in plain letters: positions refer to it. */
  readonly text: string;
  readonly senses: Map<Sense, string>;
  readonly phases: Said<Phase>[];
  /** Order named as such: "h5", "order 5", "5th harmonic". */
  readonly orders: Said<number>[];
  readonly numbers: OpenNumber[];
  readonly strangers: string[];
  unit?: Said<WrittenUnit>;
  leftOut?: string;
}

/** Header text as all positions and comparisons use it. */
export function headerText(header: string): string {
  return plain(header)
    .replace(/\bP\.\s?F\.?(?!\p{L})/giu, "PF")
    .replace(/\br\.\s?m\.\s?s\.?/gi, "rms")
    .replaceAll("_", " ")
    .replace(/\s+/g, " ")
    .trim();
}

/** Reads one header (already through `headerText`). `hasTwin` tells which neighbours the log has. */
export function readHeader(text: string, unitsRow: string | undefined, hasTwin: HasTwin): Evidence {
  const evidence: Evidence = { text, senses: new Map(), phases: [], orders: [], numbers: [], strangers: [] };
  const rest = withoutInterval(withoutUnit(evidence, hasTwin));
  new HeaderReader(evidence, tokens(rest, hasTwin), hasTwin).read();
  const row = unitsRow?.trim() ?? "";
  if (row !== "") joinUnitsRow(evidence, row);
  return evidence;
}

function joinUnitsRow(evidence: Evidence, row: string): void {
  const unusable = (reason: string): WrittenUnit => ({ kind: "unusable", text: row, reason });
  const unit = writtenUnit(row) ?? unusable(`the unit "${row}" in the units row is not known here`);
  const header = evidence.unit;
  const differs = header !== undefined && header.value.text !== unit.text && !relatedPercent(header.value, unit);
  evidence.unit = {
    value: differs ? unusable(`the header says ${header.value.text}, but the units row ${row}`) : unit,
    said: `"${row}" in the units row`,
  };
}

/** "% of declared" in one place and plain "%" in the other do not contradict each other. */
function relatedPercent(a: WrittenUnit, b: WrittenUnit): boolean {
  return a.text.startsWith("%") && b.text.startsWith("%");
}

function blank(text: string, at: number, length: number): string {
  return text.slice(0, at) + " ".repeat(length) + text.slice(at + length);
}

/** Takes the unit out of brackets ("[kV]", "(% of Un)"), from behind "in" or "/" at the end, and "p.u." from anywhere. */
function withoutUnit(evidence: Evidence, hasTwin: HasTwin): string {
  let { text } = evidence;
  const candidates = [
    ...text.matchAll(/[([{<](?<unit>[^()[\]{}<>]*)[)\]}>]/g),
    ...text.matchAll(/\s[Ii][Nn] (?<unit>[^()[\]]+)$/g),
    ...text.matchAll(/ ?\/ ?(?<unit>[^/()[\]]+)$/g),
    ...text.matchAll(/(?<![\p{L}\d])(?<unit>p\.\s?u\.?)(?!\p{L})/giu),
  ];
  for (const match of candidates) {
    const written = match.groups?.unit ?? "";
    const unit = writtenUnit(written);
    if (!unit || isPartOfName(written, match.index + match[0].indexOf(written), evidence.text, hasTwin)) continue;
    evidence.unit ??= { value: unit, said: `"${match[0].trim()}" in the header` };
    text = blank(text, match.index, match[0].length);
  }
  return text;
}

/** "I (A)" beside "I (B)", "U (1)" beside "U (2)", "Current(s)": no unit, though it reads like one. */
function isPartOfName(written: string, at: number, text: string, hasTwin: HasTwin): boolean {
  if (written === "1") return ["2", "3"].some((other) => hasTwin(at, 1, other));
  if (written === "s") return /\p{L}/u.test(text[at - 2] ?? "");
  return hasLetterTwin(written, at, hasTwin);
}

const SPAN =
  /(?<![\p{L}\d])(?:10\/12|150\/180|\d+)[\s-]*(?:ms|s|sec|sek|sekunden|seconds?|segundos?|secondi|secondes?|mn|minutes?|minuten|minuti|minutos|hours?|stunden|heures?|horas|ore|cycles?|perioden|periodes?|ciclos|cicli)(?!\p{L})/gu;
const TWO_HOURS = /(?<![\p{L}\d])2[\s-]*h(?!\p{L})/giu;
const MINUTES = /(?<![\p{L}\d])(\d+)[\s-]*min(?!\p{L})/giu;

/** Takes out the length of the interval ("10 min", "3 s", "2 h"), which the stamps say better. */
function withoutInterval(text: string): string {
  const spaces = (span: string): string => " ".repeat(span.length);
  let rest = text.replace(SPAN, spaces);
  if (/plt|long|lang/i.test(rest)) rest = rest.replace(TWO_HOURS, spaces);
  return rest.replace(MINUTES, (span, number: string, at: number) => {
    const others = tokens(blank(rest, at, span.length), () => false).map(({ sense }) => sense);
    const harmonic =
      others.some((sense) => sense === "harmonic" || sense === "interharmonic") || /h ?$/i.test(rest.slice(0, at));
    const statistic = others.some((sense) => sense === "mean" || sense === "max" || sense === "min");
    // "U 1 min" is the minimum of phase 1; "U L1 1 min mean" and "U L1 10 min" name the interval.
    return statistic || (Number(number) > 3 && !harmonic) ? spaces(span) : span;
  });
}
