import type { Phase } from "../../recording/quantity.js";
import { type HasTwin, hasLetterTwin, symbolSense, type Token, tokens } from "./recognise-columns-tokens.js";
import { type WrittenUnit, writtenUnit } from "./recognise-columns-units.js";
import { leftOutBecause, plain, type Sense } from "./vocabulary.js";

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
  return plain(header).replaceAll("_", " ").replace(/\s+/g, " ").trim();
}

/** Reads one header (already through `headerText`). `hasTwin` tells which neighbours the log has. */
export function readHeader(text: string, unitsRow: string | undefined, hasTwin: HasTwin): Evidence {
  const evidence: Evidence = { text, senses: new Map(), phases: [], orders: [], numbers: [], strangers: [] };
  const rest = withoutInterval(withoutUnit(evidence, hasTwin));
  new Reader(evidence, tokens(rest, hasTwin), hasTwin).read();
  const row = unitsRow?.trim() ?? "";
  if (row !== "") {
    const unit = writtenUnit(row) ?? {
      kind: "unusable" as const,
      text: row,
      reason: `the unit "${row}" is not known here`,
    };
    evidence.unit = { value: unit, said: `"${row}" in the units row` };
  }
  return evidence;
}

function blank(text: string, at: number, length: number): string {
  return text.slice(0, at) + " ".repeat(length) + text.slice(at + length);
}

/** Takes the unit out of brackets ("[kV]", "(% of Un)") or from behind "in" or "/" at the end. */
function withoutUnit(evidence: Evidence, hasTwin: HasTwin): string {
  let { text } = evidence;
  const candidates = [
    ...text.matchAll(/[([{<](?<unit>[^()[\]{}<>]*)[)\]}>]/g),
    ...text.matchAll(/(?:(?<=[^/]) ?\/ ?|\s[Ii][Nn] )(?<unit>[^/()[\]]+)$/g),
  ];
  for (const match of candidates) {
    const written = match.groups?.["unit"] ?? "";
    const unit = writtenUnit(written);
    if (!unit || hasLetterTwin(written, match.index + match[0].indexOf(written), hasTwin)) continue;
    evidence.unit ??= { value: unit, said: `"${match[0].trim()}" in the header` };
    text = blank(text, match.index, match[0].length);
  }
  return text;
}

const SPAN =
  /(?<![\p{L}\d])(?:10\/12|150\/180|\d+)[\s-]*(?:ms|s|sec|sek|sekunden|seconds?|segundos?|secondi|secondes?|mn|minutes?|minuten|minuti|minutos|hours?|stunden|heures?|horas|ore|cycles?|perioden|periodes?|ciclos|cicli)(?!\p{L})/gu;
const MINUTES = /(?<![\p{L}\d])(\d+)[\s-]*min(?!\p{L})/giu;

/** Takes out the length of the interval ("10 min", "3 s", "2 h"), which the stamps say better. */
function withoutInterval(text: string): string {
  let rest = text.replace(SPAN, (span) => " ".repeat(span.length));
  if (/plt|long|lang/i.test(rest))
    rest = rest.replace(/(?<![\p{L}\d])2[\s-]*h(?!\p{L})/giu, (span) => " ".repeat(span.length));
  return rest.replace(MINUTES, (span, number: string, at: number) => {
    const others = tokens(blank(rest, at, span.length), () => false).map((token) => token.sense);
    const harmonic =
      others.some((sense) => sense === "harmonic" || sense === "interharmonic") || /h ?$/i.test(rest.slice(0, at));
    const statistic = others.some((sense) => sense === "mean" || sense === "max" || sense === "min");
    // "U 1 min" is the minimum of phase 1; "U L1 1 min mean" and "U L1 10 min" name the interval.
    return statistic || (Number(number) > 3 && !harmonic) ? " ".repeat(span.length) : span;
  });
}

const ORDINAL = /^(?:st|nd|rd|th|e|eme|er|re|nde|a|o|te|ter|ta|to|da|do|ra|ma|va|na)$/i;
const LETTER_PHASE: Readonly<Record<string, Phase>> = { A: "L1", R: "L1", B: "L2", S: "L2", C: "L3", T: "L3" };

class Reader {
  private next = 0;

  constructor(
    private readonly evidence: Evidence,
    private readonly list: readonly Token[],
    private readonly hasTwin: HasTwin,
  ) {}

  read(): void {
    while (this.next < this.list.length) {
      const token = this.list[this.next] as Token;
      this.next++;
      this.take(token);
    }
  }

  private take(token: Token): void {
    const { evidence } = this;
    switch (token.kind) {
      case "left-out":
        evidence.leftOut ??= `"${token.text}": ${leftOutBecause(token.text.toLowerCase())}`;
        return;
      case "percent":
        if (!evidence.unit) this.unit("%", token.text);
        return;
      case "unit":
        if (!evidence.unit) this.unit(token.text, token.text);
        return;
      case "number":
        return this.number(token);
      case "symbol":
        evidence.senses.set(token.sense as Sense, `the symbol ${token.text}`);
        return this.afterSymbol(token);
      case "letters":
        return this.letters(token);
      case "word":
        return this.stranger(token);
      case "sense":
        return this.sense(token);
    }
  }

  private unit(text: string, said: string): void {
    const value = writtenUnit(text);
    if (value) this.evidence.unit = { value, said: `"${said}" in the header` };
  }

  private sense(token: Token): void {
    const sense = token.sense as Sense;
    if (sense === "channel") {
      if (this.peek()?.kind === "number") this.next++;
      return;
    }
    if (sense === "noise") return;
    if (sense === "phase" && this.afterPhaseWord(token)) return;
    if (sense === "line-to-line" || sense === "line-to-neutral" || !this.evidence.senses.has(sense)) {
      this.evidence.senses.set(sense, `"${token.text}"`);
    }
    const following = this.peek();
    const named = sense === "order" || sense === "harmonic" || sense === "interharmonic";
    if (named && following?.kind === "number" && !this.ordinalAt(this.next)) this.order(following, token);
  }

  private order(number: Token, before: Token): void {
    this.next++;
    this.evidence.orders.push({ value: Number(number.text), said: this.span(before, number) });
  }

  /** "phase 1", "phase A", "phase 1-2", "line to line", "phase-neutral", "phase voltage", "line voltage". */
  private afterPhaseWord(word: Token): boolean {
    let ahead = this.next;
    while (this.list[ahead]?.sense === "noise") ahead++;
    const following = this.list[ahead];
    if (following === undefined) return true;
    if (following.sense === "phase") {
      this.evidence.senses.set("line-to-line", this.quoted(word, following));
      this.next = ahead + 1;
    } else if (following.sense === "neutral") {
      this.evidence.senses.set("line-to-neutral", this.quoted(word, following));
      this.next = ahead + 1;
    } else if (following.sense === "voltage" && ahead === this.next) {
      const pair = /^l/i.test(word.text) && word.text.toLowerCase() !== "leiter";
      this.evidence.senses.set(pair ? "line-to-line" : "line-to-neutral", this.quoted(word, following));
    } else if (following.kind === "number" && ahead === this.next) {
      this.phaseNumber(following, word);
    } else if (following.kind === "letters" && ahead === this.next && this.letterPhase(following.text) !== undefined) {
      this.next++;
      this.phase(this.letterPhase(following.text) as Phase, this.span(word, following));
      this.pairAfter(word);
    }
    return true;
  }

  private phaseNumber(number: Token, first: Token): void {
    const phase = phaseOf(number.text);
    if (phase === undefined) return;
    this.next++;
    this.phase(phase, this.span(first, number));
    this.pairAfter(first);
  }

  /** Behind a phase: "-L2", "L2", "-2", "N", "-N", "-PE" make it a voltage against that. */
  private pairAfter(first: Token): void {
    const { phases } = this.evidence;
    const phase = phases.at(-1)?.value;
    const following = this.peek();
    if (phase === undefined || following === undefined || !/^[\s\-/:.]{0,3}$/.test(following.gap)) return;
    if (following.kind === "letters" && /^n$/i.test(following.text)) {
      this.next++;
      this.evidence.senses.set("line-to-neutral", this.quoted(first, following));
      return;
    }
    if (following.sense === "earth" || (following.kind === "letters" && /^[EG]$/.test(following.text))) {
      this.next++;
      this.evidence.senses.set("earth", this.quoted(first, following));
      return;
    }
    const number = this.secondOfPair(following);
    if (number === undefined) return;
    const pair = phaseOf(phase.slice(1) + number.text);
    if (pair === undefined || phase.length !== 2) return;
    phases.pop();
    this.next = this.list.indexOf(number) + 1;
    this.phase(pair, this.span(first, number));
  }

  private secondOfPair(following: Token): Token | undefined {
    if (following.kind === "number") return /[-/]/.test(following.gap) ? following : undefined;
    const number = this.list[this.next + 1];
    const prefix = /^[LUV]$/i.test(following.text) && following.kind !== "word";
    return prefix && number?.kind === "number" && number.gap === "" ? number : undefined;
  }

  /** Behind a quantity symbol: "U1", "U12", "U1N", "U1-U2", "U5". */
  private afterSymbol(symbol: Token): void {
    const following = this.peek();
    if (following?.kind !== "number" || following.gap !== "") return;
    this.next++;
    const { phases, numbers } = this.evidence;
    const phase = phaseOf(following.text);
    if (phase !== undefined && phase.length === 2) {
      const before = this.next;
      phases.push({ value: phase, said: "" });
      this.pairAfter(symbol);
      const [last] = phases.splice(-1);
      if (this.next > before) {
        phases.push(
          last?.said === ""
            ? { value: phase, said: this.quoted(symbol, this.list[this.next - 1] as Token) }
            : (last as Said<Phase>),
        );
        return;
      }
    }
    numbers.push({ digits: following.text, at: following.at, symbol: symbol.text });
  }

  private letters(token: Token): void {
    const { senses } = this.evidence;
    const following = this.peek();
    const upper = token.text.toUpperCase();
    const number = following?.kind === "number" && /^[\s.-]?$/.test(following.gap) ? following : undefined;
    if (upper === "L" && !/^['’]/.test(following?.gap ?? "")) {
      if (number && phaseOf(number.text) !== undefined) return this.phaseNumber(number, token);
      if (following?.kind === "letters" && /^[nl]$/i.test(following.text)) {
        this.next++;
        senses.set(/^n$/i.test(following.text) ? "line-to-neutral" : "line-to-line", this.quoted(token, following));
        return;
      }
      return;
    }
    if (upper === "H" || upper === "IH") {
      senses.set(upper === "H" ? "harmonic" : "interharmonic", `"${token.text}"`);
      if (number) return this.order(number, token);
      return;
    }
    if (upper === "N" && following && /^ ?= ?$/.test(following.gap) && number) return this.order(number, token);
    if (upper === "N") {
      senses.set("neutral", `"${token.text}"`);
      if (following?.sense === "earth") this.next++, senses.set("earth", this.quoted(token, following));
      return;
    }
    const phase = this.letterPhase(token.text);
    const glued = token.gap === "" && this.next > 1;
    if (phase !== undefined && (glued || token.text.length > 1 || hasLetterTwin(token.text, token.at, this.hasTwin))) {
      const said = `"${token.text}"`;
      if (/^.n$/i.test(token.text)) senses.set("line-to-neutral", said);
      this.phase(phase, said);
      return;
    }
    return this.loneLetter(token, glued);
  }

  private loneLetter(token: Token, glued: boolean): void {
    const { evidence } = this;
    const sense = symbolSense(token.text);
    const speaksAlready = evidence.senses.size > 0 || evidence.phases.length > 0;
    if (/^[VAW]$/.test(token.text) && !evidence.unit && speaksAlready && this.peek() === undefined) {
      return this.unit(token.text, token.text);
    }
    if (sense !== undefined && !glued) {
      evidence.senses.set(sense, `the symbol ${token.text}`);
      return this.afterSymbol(token);
    }
    if (token.text === "W" || token.text === "A") return this.unit(token.text, token.text);
    if (/^[aeydlo]$/.test(token.text)) return;
    this.stranger(token);
  }

  private number(token: Token): void {
    if (this.ordinalAt(this.next - 1)) {
      if (this.list[this.next]?.kind !== "percent") this.next += this.suffixAt(this.next) ? 1 : 0;
      this.evidence.orders.push({ value: Number(token.text), said: `"${token.text}." as an ordinal` });
      return;
    }
    this.evidence.numbers.push({ digits: token.text, at: token.at });
  }

  private ordinalAt(index: number): boolean {
    const following = this.list[index + 1];
    if (this.suffixAt(index + 1)) return true;
    return following?.kind === "sense" && /^\. ?$/.test(following.gap) && this.list[index]?.kind === "number";
  }

  private suffixAt(index: number): boolean {
    const token = this.list[index];
    return (
      token !== undefined && token.gap === "" && ORDINAL.test(token.text) && this.list[index - 1]?.kind === "number"
    );
  }

  /** A number behind an unknown word belongs to it ("feeder 3"). */
  private stranger(token: Token): void {
    const following = this.peek();
    if (following?.kind === "number" && /^[\s.-]?$/.test(following.gap)) {
      this.next++;
      this.evidence.strangers.push(this.evidence.text.slice(token.at, following.at + following.text.length));
    } else {
      this.evidence.strangers.push(token.text);
    }
  }

  private letterPhase(text: string): Phase | undefined {
    const upper = text.toUpperCase().replace(/N$/, "");
    const first = LETTER_PHASE[upper[0] ?? ""];
    const second = LETTER_PHASE[upper[1] ?? ""];
    if (upper.length === 1) return first;
    return first && second ? phaseOf(first.slice(1) + second.slice(1)) : undefined;
  }

  private phase(value: Phase, said: string): void {
    if (!this.evidence.phases.some((phase) => phase.value === value)) this.evidence.phases.push({ value, said });
  }

  private peek(): Token | undefined {
    return this.list[this.next];
  }

  private span(first: Token, last: Token): string {
    return this.quoted(first, last);
  }

  private quoted(first: Token, last: Token): string {
    return `"${this.evidence.text.slice(first.at, last.at + last.text.length)}"`;
  }
}

/** The phase a number stands for: 1, 2, 3, or a pair of different ones in either order. */
export function phaseOf(digits: string): Phase | undefined {
  switch (digits.replace(/^0(?=\d$)/, "")) {
    case "1":
      return "L1";
    case "2":
      return "L2";
    case "3":
      return "L3";
    case "12":
    case "21":
      return "L12";
    case "23":
    case "32":
      return "L23";
    case "31":
    case "13":
      return "L31";
    default:
      return undefined;
  }
}
