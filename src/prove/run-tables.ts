import type { Progress } from "../recording/log-file.js";
import type { ProofRow, ProofTable } from "./proof-table.js";

export interface JudgedRow extends ProofRow {
  /** Computed less expected. */
  readonly deviation: number;
  readonly within: boolean;
}

export interface Proof {
  readonly quick: boolean;
  readonly passed: boolean;
  readonly rows: number;
  readonly out: number;
  readonly tables: readonly (Pick<ProofTable, "id" | "title" | "source" | "confirmed"> & {
    readonly rows: readonly JudgedRow[];
  })[];
}

/** Runs all tables. A value that is no number is out, and a table without rows is a fault of the program. */
export async function runTables(tables: readonly ProofTable[], quick: boolean, progress: Progress): Promise<Proof> {
  const done: Proof["tables"][number][] = [];
  for (const [i, { id, title, source, confirmed, ...table }] of tables.entries()) {
    progress(title, i / tables.length);
    const rows: JudgedRow[] = [];
    for await (const row of table.rows(quick)) rows.push(judged(row));
    if (rows.length === 0) throw new RangeError(`the table "${id}" has no rows`);
    done.push({ id, title, source, confirmed, rows });
  }
  const all = done.flatMap(({ rows }) => rows);
  const out = all.filter(({ within }) => !within).length;
  return { quick, passed: out === 0, rows: all.length, out, tables: done };
}

function judged(row: ProofRow): JudgedRow {
  const deviation = row.computed - row.expected;
  return { ...row, deviation, within: Math.abs(deviation) <= row.tolerance };
}
