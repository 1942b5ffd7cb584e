import { writtenUnit } from "./recognise-columns-units.js";
import { compoundParts, leftOutBecause, type Sense, senseOf } from "./vocabulary.js";

/** A piece of a header. `gap` is what stands between it and the piece before: "" where they are glued together. */
export interface Token {
  readonly kind: "sense" | "left-out" | "symbol" | "letters" | "unit" | "number" | "percent" | "sign" | "word";
  /** As written, in its own case. */
  readonly text: string;
  readonly gap: string;
  /** Position in the header text. */
  readonly at: number;
  readonly sense?: Sense;
}

/** True if the log has a header that differs from this one only in that `length` characters at `at` read `instead`. */
export type HasTwin = (at: number, length: number, instead: string) => boolean;

/** Quantity symbols of the standards and what they stand for. */
const SYMBOLS: Readonly<Record<string, Sense>> = {
  u: "voltage",
  v: "voltage",
  i: "current",
  p: "active",
  q: "reactive",
  s: "apparent",
  f: "frequency",
  pf: "power-factor",
};

const STATISTIC = "avg|mean|min|max|moy|med|mittel|average|minimum|maximum";
/** Symbols written as one run of letters: THDU, UL, Uan, Vrms, Urmsmin, IN, Ptot, PFa, Uavg, Uh. */
const COMPACT = new RegExp(
  `^(?<before>thd[fgs]?|h)?(?<symbol>pf|[uvipqs])?(?<after>thd[fgs]?|i?h)?(?<rms>rms|eff)?` +
    `(?<early>${STATISTIC})?(?<phase>ll|ln|l|[abc]n?|[rst]n?|n|ab|bc|ca|ac|rs|st|tr)?(?<rmsToo>rms|eff)?(?<total>tot|ges|sum)?` +
    `(?<harmonic>i?h)?(?<statistic>${STATISTIC})?$`,
  "i",
);
const FREQUENCY = new RegExp(`^(?<symbol>f)(?<statistic>${STATISTIC})$`, "i");
const LETTER_PHASES = /^(?:[abcrst]n|ab|bc|ca|ac|rs|st|tr)$/i;

const PIECE = /\p{L}+|\d+(?:[.,]\d+)?|%|[^\s\p{L}\d%_\-/.,:;()[\]{}<>'"’*#&=|\\!?~`´^·•]|[-+]$/gu;

/**
 * Splits a header into words, symbols and numbers. Unknown words are kept as such, and so are signs that may change
 * the meaning ("U+", "°", "√"); other punctuation only parts the pieces.
 */
export function tokens(header: string, hasTwin: HasTwin): readonly Token[] {
  const found: Token[] = [];
  let end = 0;
  for (const match of header.matchAll(PIECE)) {
    const gap = header.slice(end, match.index);
    const text = match[0];
    end = match.index + text.length;
    if (/^\p{L}/u.test(text)) found.push(...lettersRun(text, gap, match.index, hasTwin));
    else found.push({ kind: kindOf(text), text, gap, at: match.index });
  }
  return found;
}

function kindOf(text: string): Token["kind"] {
  if (text === "%") return "percent";
  if (/^\d+$/.test(text)) return "number";
  return /^\d/.test(text) ? "word" : "sign";
}

function lettersRun(text: string, gap: string, at: number, hasTwin: HasTwin): readonly Token[] {
  const known = oneWord(text, gap, at);
  const unit = text.length > 1 ? writtenUnit(text) : undefined;
  // "mV" is a unit, "MV" a voltage level.
  const isWord = known && !(known.sense === "noise" && unit?.kind === "unit");
  if (isWord && !namesPhase(text, at, hasTwin)) return [known];
  if (isPairST(text, at, hasTwin)) return [{ kind: "letters", text, gap, at }];
  const compact = compactRun(text, gap, at);
  const apparent = text === "VA" && !hasLetterTwin("A", at + 1, hasTwin);
  if (unit && (!compact || apparent)) return [{ kind: "unit", text, gap, at }];
  if (compact) return compact;
  const pieces = text.match(/\p{Lu}+(?!\p{Ll})|\p{Lu}?\p{Ll}+|\p{Lu}|\p{L}/gu) ?? [text];
  if (pieces.length > 1 && pieces.some((piece) => piece.length > 1 && senseOf(piece.toLowerCase()) !== undefined)) {
    return place(pieces, gap, at).flatMap((part) => lettersRun(part.text, part.gap, part.at, hasTwin));
  }
  const compound = compoundParts(text.toLowerCase());
  if (!compound) return [{ kind: "word", text, gap, at }];
  let from = 0;
  return compound.flatMap((part, index) => {
    const start = text.toLowerCase().indexOf(part, from);
    from = start + part.length;
    return oneWord(text.slice(start, from), index === 0 ? gap : "", at + start) ?? [];
  });
}

/** Whether what looks like a word ("in", "uc", "ac") is the neutral current or a phase, by its neighbours in the log. */
function namesPhase(text: string, at: number, hasTwin: HasTwin): boolean {
  if (/^in$/i.test(text)) return ["1", "L1", "A", "a", "R"].some((phase) => hasTwin(at + 1, 1, phase));
  if (/^uc$/i.test(text)) return hasLetterTwin(text.slice(1), at + 1, hasTwin);
  return LETTER_PHASES.test(text) && hasLetterTwin(text, at, hasTwin);
}

/** "ST" is the pair of phases, unless "SR" or "SS" shows that it is the apparent power of phase T. */
function isPairST(text: string, at: number, hasTwin: HasTwin): boolean {
  return /^st$/i.test(text) && !["SR", "SS", "sr", "ss"].some((other) => hasTwin(at, 2, other));
}

const SCHEMES = ["ABC", "RST", "abc", "rst"];

/** Whether the other letters of a scheme stand in the same place elsewhere: "I A" beside "I B" speaks of phases. */
export function hasLetterTwin(text: string, at: number, hasTwin: HasTwin): boolean {
  const scheme = SCHEMES.find((letters) => letters.includes(text[0] ?? ""));
  if (scheme === undefined) return false;
  const [a, b, c] = [...scheme] as [string, string, string];
  const others = /^.n?$/i.test(text)
    ? [a, b, c].map((letter) => letter + text.slice(1))
    : [a + b, b + c, c + a, a + c].filter((pair) => pair !== `${text[1]}${text[0]}`);
  return others.some((other) => other !== text && hasTwin(at, text.length, other));
}

/** A lone letter or a word of the table. */
function oneWord(text: string, gap: string, at: number): Token | undefined {
  const lower = text.toLowerCase();
  if (lower.length === 1) return { kind: "letters", text, gap, at };
  if (leftOutBecause(lower) !== undefined) return { kind: "left-out", text, gap, at };
  const sense = senseOf(lower);
  return sense === undefined ? undefined : { kind: "sense", text, gap, at, sense };
}

function compactRun(text: string, gap: string, at: number): readonly Token[] | undefined {
  const groups = (COMPACT.exec(text) ?? FREQUENCY.exec(text))?.groups;
  if (!groups) return undefined;
  if (groups.symbol === undefined && groups.before === undefined && !LETTER_PHASES.test(text)) return undefined;
  const parts = Object.entries(groups).filter(([, part]) => part !== undefined) as [string, string][];
  return place(
    parts.map(([, part]) => part),
    gap,
    at,
  ).map((token, index) => {
    const role = parts[index]?.[0];
    const lower = token.text.toLowerCase();
    const sense = role === "symbol" ? SYMBOLS[lower] : undefined;
    if (sense !== undefined) return { ...token, kind: "symbol", sense };
    if (role === "phase" && !/^l[ln]$/.test(lower)) return { ...token, kind: "letters" };
    return /^i?h$/.test(lower) ? { ...token, kind: "letters" } : (oneWord(token.text, token.gap, token.at) ?? token);
  });
}

function place(parts: readonly string[], gap: string, at: number): Token[] {
  let from = at;
  return parts.map((text, index) => {
    const token: Token = { kind: "word", text, gap: index === 0 ? gap : "", at: from };
    from += text.length;
    return token;
  });
}

/** The quantity that a lone letter may stand for. */
export function symbolSense(text: string): Sense | undefined {
  return SYMBOLS[text.toLowerCase()];
}
