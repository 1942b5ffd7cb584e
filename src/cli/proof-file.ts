import { PROOF_TABLES } from "../prove/index.js";
import { type JudgedRow, runTables } from "../prove/run-tables.js";
import type { ProofSummary } from "../report/pdf/annex.js";
import { tool } from "./files.js";

/** Content of assets/proof.json: every published table run by this version, with the row of each that came nearest to its tolerance. */
export async function proofFile(): Promise<string> {
  const { rows, out, tables } = await runTables(PROOF_TABLES, false, () => {});
  const summary: ProofSummary = {
    version: (await tool()).version,
    rows,
    out,
    tables: tables.map(({ title, source, confirmed, rows: judged }) => {
      const { what, unit, expected, computed, tolerance } = nearest(judged);
      return {
        title: String(title),
        source: String(source),
        confirmed,
        rows: judged.length,
        nearest: { what: String(what), unit, expected, computed, tolerance },
      };
    }),
  };
  return `${JSON.stringify(summary, undefined, 2)}\n`;
}

function nearest(rows: readonly JudgedRow[]): JudgedRow {
  const share = ({ deviation, tolerance }: JudgedRow) => Math.abs(deviation) / tolerance;
  return rows.reduce((worst, row) => (share(row) > share(worst) ? row : worst));
}
