import { letterPhase } from "./recognise-columns-phase-names.js";
import type { HasTwin, Token } from "./recognise-columns-tokens.js";

const ORDINAL = /^(?:st|nd|rd|th|e|eme|er|re|nde|a|o|te|ter|ta|to|da|do|ra|ma|va|na)$/i;

/**
 * The second phase of a pair whose first one `first` began: "-L2", "L2", "-2", "-B", "-U2" at `index`.
 * @returns its digit and how many tokens it takes.
 */
export function otherPhase(
  list: readonly Token[],
  index: number,
  first: Token,
  hasTwin: HasTwin,
): { readonly digits: string; readonly length: number } | undefined {
  const following = list[index];
  const behind = list[index + 1];
  if (!following) return undefined;
  if (following.kind === "number") {
    const joined = /[-/]/.test(following.gap) && !countsOn(following, hasTwin);
    return joined ? { digits: following.text, length: 1 } : undefined;
  }
  const prefix = first.kind === "symbol" ? first.text : "L";
  const isPrefix = following.kind !== "word" && following.text.toUpperCase() === prefix.toUpperCase();
  if (isPrefix && behind?.kind === "number" && behind.gap === "") return { digits: behind.text, length: 2 };
  const letter = isPrefix && behind?.gap === "" ? behind : following;
  const phase = letter.kind === "letters" && /[-/]/.test(following.gap) ? letterPhase(letter.text) : undefined;
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
