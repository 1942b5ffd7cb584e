import type { Phase } from "../../recording/quantity.js";
import { say, type Text } from "../../sentence.js";
import { type Evidence, noteUnit } from "./recognise-columns-evidence.js";
import { countsOn, isOrdinal, isOrdinalSuffix, otherPhase } from "./recognise-columns-look-ahead.js";
import { letterPhase, phaseOf } from "./recognise-columns-phase-names.js";
import { type HasTwin, hasLetterTwin, symbolSense, type Token } from "./recognise-columns-tokens.js";
import { writtenUnit } from "./recognise-columns-units.js";
import { leftOutBecause, type Sense } from "./vocabulary.js";

/** What may stand between a word and the number that belongs to it: "H5", "H 5", "h=5", "phase #1". */
const JOINED = /^\s?[.=:#-]?\s?$/;
/** What may stand between two conductors: "L1-L2", "L1 L2", "L1/N". */
const BETWEEN = /^[\s\-/:.]{0,3}$/;
/** Of which quantity a lone letter at the end is the unit. */
const UNIT_LETTERS: Readonly<Record<string, readonly Sense[]>> = {
  V: ["voltage", "signalling"],
  A: ["current"],
  W: ["active", "power"],
};

const NUMBERED: ReadonlySet<Sense> = new Set<Sense>(["order", "harmonic", "interharmonic"]);

/** Goes through the pieces of one header in order and notes what each says. */
export class HeaderReader {
  private next = 0;

  constructor(
    private readonly evidence: Evidence,
    private readonly list: readonly Token[],
    private readonly hasTwin: HasTwin,
  ) {}

  read(): void {
    for (let token = this.list[this.next]; token; token = this.list[this.next]) {
      this.next++;
      this.take(token);
    }
  }

  private take(token: Token): void {
    if (token.kind === "left-out") this.leaveOut(token.text, token.text);
    else if (token.kind === "sign")
      this.evidence.leftOut ??= say`what the sign "${token.text}" means here is not known`;
    else if (token.kind === "percent" || token.kind === "unit") this.unit(token.text);
    else if (token.kind === "number") this.number(token);
    else if (token.kind === "symbol") this.symbol(token);
    else if (token.kind === "letters") this.letters(token);
    else if (token.kind === "sense") this.sense(token);
    else this.stranger(token);
  }

  private leaveOut(said: string, word: string): void {
    this.evidence.leftOut ??= say`"${said}": ${leftOutBecause(word.toLowerCase()) ?? ""}`;
  }

  private unit(text: string): void {
    const value = writtenUnit(text);
    if (value) noteUnit(this.evidence, value, text);
  }

  private sense(token: Token): void {
    const { senses } = this.evidence;
    const sense = token.sense as Sense;
    const following = this.peek();
    const number = following?.kind === "number" && !isOrdinal(this.list, this.next) ? following : undefined;
    if (sense === "phase") {
      this.phaseWord(token);
    } else if (sense === "channel") {
      if (number) this.next++;
    } else if (sense !== "noise") {
      if (!senses.has(sense)) senses.set(sense, `"${token.text}"`);
      if (number && NUMBERED.has(sense)) this.order(number, token);
      if (sense === "distortion" && following?.kind === "letters" && following.gap === "-")
        this.distortionKind(following);
    }
  }

  /** THD-F is relative to the fundamental; S and G are the subgroup and group of IEC 61000-4-7; R the whole r.m.s. */
  private distortionKind(letter: Token): void {
    if (/^[FSG]$/i.test(letter.text)) this.next++;
    else if (/^R$/i.test(letter.text) && !hasLetterTwin(letter.text, letter.at, this.hasTwin)) {
      this.leaveOut("THD-R", "thdr");
    }
  }

  private order(number: Token, first: Token): void {
    this.next++;
    this.evidence.orders.push({ value: Number(number.text), said: this.quote(first, number) });
  }

  /** "phase 1", "phase A", "phase 1-2", "line to line", "phase-neutral", "phase voltage", "line voltage". */
  private phaseWord(word: Token): void {
    let ahead = this.next;
    while (this.list[ahead]?.sense === "noise" || /^a$/.test(this.list[ahead]?.text ?? "")) ahead++;
    const other = this.list[ahead];
    const following = this.peek();
    if (other?.sense === "phase" || other?.sense === "neutral") {
      this.say(other.sense === "phase" ? "line-to-line" : "line-to-neutral", word, other);
      this.next = ahead + 1;
    } else if (following?.sense === "voltage") {
      const isPair = /^lin/i.test(word.text);
      this.say(isPair ? "line-to-line" : "line-to-neutral", word, following);
    } else if (following?.kind === "number" && JOINED.test(following.gap)) {
      this.phaseNumber(following, word);
    } else if (following?.kind === "letters") {
      const phase = letterPhase(following.text);
      if (phase === undefined) return;
      this.next++;
      this.phase(phase, word, following);
      this.secondConductor(word);
    }
  }

  private phaseNumber(number: Token, first: Token): void {
    const phase = phaseOf(number.text);
    if (phase === undefined) return;
    this.next++;
    this.phase(phase, first, number);
    this.secondConductor(first);
  }

  /** Behind a phase: "-L2", "L2", "-2", "-B" make it a pair; "N", "-N", "-PE" say against what it is measured. */
  private secondConductor(first: Token): void {
    const { phases } = this.evidence;
    const phase = phases.at(-1)?.value;
    const following = this.peek();
    if (phase?.length !== 2 || !following || !BETWEEN.test(following.gap)) return;
    if (following.sense === "neutral" || (following.kind === "letters" && /^n$/i.test(following.text))) {
      this.next++;
      this.say("line-to-neutral", first, following);
    } else if (following.sense === "earth" || (following.kind === "letters" && /^[EG]$/.test(following.text))) {
      this.next++;
      this.say("earth", first, following);
    } else {
      const second = otherPhase(this.list, this.next, first, this.hasTwin);
      const pair = second && phaseOf(phase.slice(1) + second.digits);
      if (!second || pair === undefined) return;
      phases.pop();
      this.next += second.length;
      this.phase(pair, first, this.list[this.next - 1] as Token);
    }
  }

  /** "U1", "U12", "U1N", "U1-U2", "U5", "U2/U1". */
  private symbol(symbol: Token): void {
    const { senses, phases, numbers } = this.evidence;
    if (!senses.has(symbol.sense as Sense)) senses.set(symbol.sense as Sense, say`the symbol ${symbol.text}`);
    const number = this.peek();
    if (number?.kind !== "number" || number.gap !== "") return;
    this.next++;
    if (this.sequenceRatio(symbol, number)) return;
    const phase = phaseOf(number.text);
    const before = this.next;
    if (phase !== undefined) {
      phases.push({ value: phase, said: this.quote(symbol, number) });
      this.secondConductor(symbol);
      if (this.next > before) return;
      phases.pop();
    }
    numbers.push({ digits: number.text, at: number.at, symbol: symbol.text });
  }

  /** "U2/U1" and "U0/U1" are the unbalances of IEC 61000-4-30, 5.7. */
  private sequenceRatio(symbol: Token, number: Token): boolean {
    const [other, one] = [this.list[this.next], this.list[this.next + 1]];
    if (symbol.sense !== "voltage" || other?.gap !== "/" || one?.text !== "1" || !/^[20]$/.test(number.text))
      return false;
    if (other.text.toLowerCase() !== symbol.text.toLowerCase()) return false;
    this.next += 2;
    this.say("unbalance", symbol, one);
    this.say(number.text === "2" ? "negative-sequence" : "zero-sequence", symbol, one);
    return true;
  }

  private letters(token: Token): void {
    const following = this.peek();
    const upper = token.text.toUpperCase();
    const number = following?.kind === "number" && JOINED.test(following.gap) ? following : undefined;
    if (upper === "L" && !/^['’]/.test(following?.gap ?? "")) {
      this.letterL(token, number);
    } else if (upper === "H" || upper === "IH") {
      this.say(upper === "H" ? "harmonic" : "interharmonic", token, token);
      if (number) this.order(number, token);
    } else if (upper === "N") {
      this.letterN(token, number);
    } else if (this.isPhaseLetter(token)) {
      this.phase(letterPhase(token.text) as Phase, token, token);
      if (/^.n$/i.test(token.text)) this.say("line-to-neutral", token, token);
      else this.secondConductor(token);
    } else {
      this.loneLetter(token);
    }
  }

  private letterL(token: Token, number: Token | undefined): void {
    const following = this.peek();
    if (number && phaseOf(number.text) !== undefined) {
      this.phaseNumber(number, token);
    } else if (following?.kind === "letters" && /^[nl]$/i.test(following.text)) {
      this.next++;
      this.say(/^n$/i.test(following.text) ? "line-to-neutral" : "line-to-line", token, following);
    } else {
      this.stranger(token);
    }
  }

  private letterN(token: Token, number: Token | undefined): void {
    const following = this.peek();
    if (number?.gap.trim() === "=") {
      this.order(number, token);
    } else if (following?.sense === "earth") {
      this.next++;
      this.say("neutral", token, token);
      this.say("earth", token, following);
    } else {
      this.say("neutral", token, token);
    }
  }

  /** A letter is a phase where a pair or the word "phase" says so, or where its neighbours count on: "IA" beside "IB". */
  private isPhaseLetter(token: Token): boolean {
    if (letterPhase(token.text) === undefined) return false;
    if (token.text.length > 1 || hasLetterTwin(token.text, token.at, this.hasTwin)) return true;
    const following = this.peek();
    const behind = this.list[this.next + 1];
    if (following?.sense === "phase" && behind?.kind !== "number" && behind?.kind !== "letters") return true;
    const isConductor = following?.kind === "letters" && /^[abcrstn]$/i.test(following.text);
    return isConductor && /^ ?[-/] ?$/.test(following.gap);
  }

  private loneLetter(token: Token): void {
    const { senses, phases, unit } = this.evidence;
    const upper = token.text.toUpperCase();
    const measured = UNIT_LETTERS[upper];
    const glued = token.gap === "" && this.next > 1;
    const fits = measured?.some((sense) => senses.has(sense)) || (senses.size === 0 && phases.length > 0);
    const sense = symbolSense(token.text);
    if (measured && fits && !unit && !glued && this.peek() === undefined) this.unit(token.text);
    else if (sense !== undefined && !glued) this.symbol({ ...token, kind: "symbol", sense });
    else if (/^[WA]$/.test(token.text)) this.unit(token.text);
    else if (!/^[aeydlo]$/.test(token.text)) this.stranger(token);
  }

  private number(token: Token): void {
    if (this.list[this.next]?.kind === "percent" && Number(token.text) > 50) {
      this.leaveOut(`${token.text}%`, "percentile");
    } else if (isOrdinal(this.list, this.next - 1)) {
      if (isOrdinalSuffix(this.list, this.next)) this.next++;
      this.evidence.orders.push({ value: Number(token.text), said: say`the ordinal ${token.text}` });
    } else if (!this.numberPair(token)) {
      this.evidence.numbers.push({ digits: token.text, at: token.at });
    }
  }

  /** "Line-to-line voltage 1-2", "V(2-3)". */
  private numberPair(token: Token): boolean {
    const following = this.peek();
    if (following?.kind !== "number" || !/^[-/]$/.test(following.gap) || countsOn(following, this.hasTwin))
      return false;
    const pair = phaseOf(token.text + following.text);
    const { senses } = this.evidence;
    if (pair === undefined || !senses.has("voltage") || senses.has("harmonic")) return false;
    this.next++;
    this.phase(pair, token, following);
    return true;
  }

  /** A number behind an unknown word belongs to it ("feeder 3"). */
  private stranger(token: Token): void {
    const following = this.peek();
    const last = following?.kind === "number" && JOINED.test(following.gap) ? following : token;
    if (last !== token) this.next++;
    this.evidence.strangers.push(this.evidence.text.slice(token.at, last.at + last.text.length));
  }

  private phase(value: Phase, first: Token, last: Token): void {
    this.evidence.phases.push({ value, said: this.quote(first, last) });
  }

  private say(sense: Sense, first: Token, last: Token): void {
    if (!this.evidence.senses.has(sense)) this.evidence.senses.set(sense, this.quote(first, last));
  }

  private peek(): Token | undefined {
    return this.list[this.next];
  }

  private quote(first: Token, last: Token): Text {
    return `"${this.evidence.text.slice(first.at, last.at + last.text.length)}"`;
  }
}
