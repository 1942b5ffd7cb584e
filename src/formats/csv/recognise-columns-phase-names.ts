import type { Phase } from "../../recording/quantity.js";

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

const LETTERS: Readonly<Record<string, Phase>> = { A: "L1", R: "L1", B: "L2", S: "L2", C: "L3", T: "L3" };

/** The phase letters stand for: "A", "an", "R" are single phases, "AB", "st" pairs. */
export function letterPhase(text: string): Phase | undefined {
  const upper = text.toUpperCase().replace(/N$/, "");
  const first = LETTERS[upper[0] ?? ""];
  const second = LETTERS[upper[1] ?? ""];
  if (upper.length === 1) return first;
  return first && second ? phaseOf(first.slice(1) + second.slice(1)) : undefined;
}
