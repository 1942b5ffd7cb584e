import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { counted, nameOf, withUnit } from "./common/wording.js";

/** Negative values of magnitudes, which the reader left out as missing: often a logger's mark for "no value". */
export const impossibleValues: Check = {
  id: "impossible-values",
  title: "Negative values of quantities that cannot be negative",
  source: "identity: an r.m.s. value, a ratio of such values and a severity are never below zero",
  run({ recording }) {
    return (recording.ledger.negatives ?? []).map(({ quantity, phase, order, count, lowest }) => ({
      id: "impossible-values",
      severity: "note" as const,
      sentence: say`The ${nameOf(quantity, phase)}${order === undefined ? "" : say` of order ${order}`} is negative in ${counted(count, "row")}, at lowest ${withUnit(quantity, lowest)}, which it cannot be; the logger may mark missing values so; these rows count as missing.`,
      evidence: { quantity, phase, ...(order !== undefined && { order }), count, lowest },
      quantities: [quantity],
      phases: [phase],
    }));
  },
};
