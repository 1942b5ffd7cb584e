import { letterPhase } from "./recognise-columns-phase-names.js";
import type { HasTwin, Token } from "./recognise-columns-tokens.js";

const ORDINAL = /^(?:st|nd|rd|th|e|eme|er|re|nde|a|o|te|ter|ta|to|da|do|ra|ma|va|na)$/i;
const CONNECTING = /^(?:to|zu|gegen|and|und|et|e|y|a)$/i;

/**
 * The second phase of a pair whose first one `first` began: "-L2", "L2", "-2", "-B", "-U2", "and L2" at `index`.
 * @returns its digit and how many tokens it takes.
 */
export function otherPhase(
  list: readonly Token[],
  index: number,
  first: Token,
  hasTwin: HasTwin,
  byWord = false,
): { readonly digits: string; readonly length: number } | undefined {
  const following = list[index];
  const behind = list[index + 1];
  if (!following) return undefined;
  const joined = byWord || /[-/]/.test(following.gap);
  if (!joined && CONNECTING.test(following.text)) {
    const further = otherPhase(list, index + 1, first, hasTwin, true);
    return further && { digits: further.digits, length: further.length + 1 };
  }
  if (following.kind === "number") {
    return joined && !countsOn(following, hasTwin) ? { digits: following.text, length: 1 } : undefined;
  }
  // "U S L1" names two phases in two ways, not a pair.
  const byLetter = first.kind === "letters" && letterPhase(first.text) !== undefined;
  const prefix = first.kind === "symbol" ? first.text : byLetter ? "" : "L";
  const isPrefix = following.kind !== "word" && following.text.toUpperCase() === prefix.toUpperCase();
  if (isPrefix && behind?.kind === "number" && behind.gap === "") return { digits: behind.text, length: 2 };
  const letter = isPrefix && behind?.gap === "" ? behind : following;
  const phase = letter.kind === "letters" && joined ? letterPhase(letter.text) : undefined;
  return phase && { digits: phase.slice(1), length: letter === following ? 1 : 2 };
}

/** Whether the same header stands in the log with numbers in this place that are no phases. */
export function countsOn(number: Token, hasTwin: HasTwin): boolean {
  return ["4", "5", "7"].some((order) => hasTwin(number.at, number.text.length, order));
}

/** Whether the number at `index` is an ordinal: "5th", "5º", "5. Oberschwingung". */
export function isOrdinal(list: readonly Token[], index: number): boolean {
  const following = list[index + 1];
  return isOrdinalSuffix(list, index + 1) || (following?.kind === "sense" && /^\. ?$/.test(following.gap));
}

export function isOrdinalSuffix(list: readonly Token[], index: number): boolean {
  const token = list[index];
  return token !== undefined && token.gap === "" && ORDINAL.test(token.text);
}
