import { type Sentence, say } from "../../sentence.js";
import { differ, type Evidence, noteUnit } from "./recognise-columns-evidence.js";
import { HeaderReader } from "./recognise-columns-reader.js";
import { type HasTwin, hasLetterTwin, type Token, tokens } from "./recognise-columns-tokens.js";
import { type WrittenUnit, writtenUnit } from "./recognise-columns-units.js";
import { plain } from "./vocabulary.js";

/** Header text as all positions and comparisons use it. */
export function headerText(header: string): string {
  return plain(header)
    .replace(/\bP\.\s?F\.?(?!\p{L})/giu, "PF")
    .replace(/\bP_(?=[sl]t(?!\p{L}))/giu, "P")
    .replace(/\br\.\s?m\.\s?s\.?/gi, "rms")
    .replaceAll("_", " ")
    .replace(/\s+/g, " ")
    .trim();
}

/** Far beyond any header; keeps a hostile file from making the reading slow. */
const LONGEST = 300;

/** Reads one header (already through `headerText`). `hasTwin` tells which neighbours the log has. */
export function readHeader(text: string, unitsRow: string | undefined, hasTwin: HasTwin): Evidence {
  const evidence: Evidence = { text, senses: new Map(), phases: [], orders: [], numbers: [], strangers: [] };
  if (text.length > LONGEST) {
    evidence.leftOut = say`a header of more than ${LONGEST} characters is not read`;
    return evidence;
  }
  const rest = withoutInterval(withoutUnit(evidence, hasTwin));
  const row = unitsRow?.trim() ?? "";
  const stated = evidence.unit?.value ?? writtenUnit(row);
  new HeaderReader(evidence, meanOrMegawatt(tokens(rest, hasTwin), stated), hasTwin).read();
  if (row !== "") joinUnitsRow(evidence, row);
  return evidence;
}

/** "MW" is German short for the mean (Mittelwert) where brackets or the units row state a unit other than of active power. */
function meanOrMegawatt(list: readonly Token[], stated: WrittenUnit | undefined): readonly Token[] {
  if (stated === undefined || (stated.kind === "unit" && stated.unit === "W")) return list;
  return list.map((token) => (/^mw$/i.test(token.text) ? { ...token, kind: "sense", sense: "mean" } : token));
}

function joinUnitsRow(evidence: Evidence, row: string): void {
  const unusable = (reason: Sentence): WrittenUnit => ({ kind: "unusable", text: row, reason });
  const unit = writtenUnit(row) ?? unusable(say`the unit "${row}" in the units row is not known here`);
  const header = evidence.unit?.value;
  const value =
    header && differ(header, unit) ? unusable(say`the header says ${header.text}, but the units row ${row}`) : unit;
  evidence.unit = { value, said: say`"${row}" in the units row` };
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
    noteUnit(evidence, unit, match[0].trim());
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

/** The number of a standard ("IEC 61000-4-30"), and the frequency of a signal on the mains ("175 Hz"). */
const STANDARD = /\b(?:IEC|CEI|EN|UNE|IEEE|DIN|NF)(?: EN)?[ -]?\d{4,}(?:-\d+)*/gi;
const SIGNAL_FREQUENCY =
  /\d+(?:[.,]\d+)? ?Hz(?=.*(?:signal|segnal|senal|rundsteuer))|(?<=(?:signal|segnal|senal|rundsteuer).*)\d+(?:[.,]\d+)? ?Hz/gi;

/** Takes out the length of the interval ("10 min", "3 s", "2 h"), which the stamps say better, and other numbers. */
function withoutInterval(text: string): string {
  const spaces = (span: string): string => " ".repeat(span.length);
  let rest = text.replace(STANDARD, spaces).replace(SPAN, spaces).replace(SIGNAL_FREQUENCY, spaces);
  if (/plt|long|lang/i.test(rest)) rest = rest.replace(TWO_HOURS, spaces);
  return rest.replace(MINUTES, (span, number: string, at: number) => {
    const others = tokens(blank(rest, at, span.length), () => false).map(({ sense }) => sense);
    const harmonic =
      others.some((sense) => sense === "harmonic" || sense === "interharmonic") || /h ?$/i.test(rest.slice(0, at));
    const statistic = others.some((sense) => sense === "mean" || sense === "max" || sense === "min");
    const phase = /L ?[123]/i.test(blank(rest, at, span.length));
    // "U 1 min" is the minimum of phase 1; "U L1 1 min" and "U 1 10 min" name the interval.
    return statistic || phase || (Number(number) > 3 && !harmonic) ? spaces(span) : span;
  });
}
