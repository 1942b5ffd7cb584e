import { say } from "../sentence.js";
import type { Check } from "./check.js";

/** Rows that stand before an earlier one in their file. They are sorted by their stamps; no value is lost. */
export const rowOrder: Check = {
  id: "row-order",
  title: "Rows that do not stand in the order of time",
  source: "common practice, no source",
  run({ recording }) {
    const rows = recording.ledger.outOfOrder;
    if (rows === 0) return [];
    return [
      {
        id: "row-order",
        severity: "note",
        sentence:
          rows === 1
            ? say`1 row does not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.`
            : say`${rows} rows do not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.`,
        evidence: { rows },
        quantities: [],
        phases: [],
      },
    ];
  },
};
