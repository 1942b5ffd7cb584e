import type { Text } from "../sentence.js";
import type { Phase, Quantity } from "./quantity.js";

/** What a check of the recording found. */
export interface Finding {
  readonly id: string;
  /** Effect on the verdict: none; note (stands in the report); blocks (the quantities named cannot be judged). */
  readonly severity: "none" | "note" | "blocks";
  /** One sentence with the numbers: what was seen, where, what it may mean, what to do. */
  readonly sentence: Text;
  readonly evidence: Readonly<Record<string, number | string | readonly string[]>>;
  /** Which quantities and phases it touches; empty phases: all. `blocks` needs at least one quantity. */
  readonly quantities: readonly Quantity[];
  readonly phases: readonly Phase[];
  /** A danger to people or equipment: shown first, with the usual cautions. */
  readonly danger?: "open-neutral" | "high-voltage";
}
