import type { Instant } from "../../recording/time.js";
import type { TimeZone } from "../../recording/time-zone.js";
import { columnsKey, type LoggedTable } from "./logged-table.js";

/**
 * Rows of one table that fall into one repeated hour in autumn, in file order, by their index. Their `store.times` are
 * still local.
 */
export interface RepeatedRows {
  readonly table: LoggedTable;
  readonly zone: TimeZone;
  readonly rows: number[];
}

/** By the instant of the clock change, then by table. */
export type RepeatedHours = Map<Instant, Map<LoggedTable, RepeatedRows>>;

/**
 * Places the rows of repeated hours by file order: the first pass through the hour lasts until time steps back, what
 * follows is the second. Files with the same columns of which one ends and another begins in the hour count as one.
 * Where the step cannot be found, or time steps back more than once, the rows cannot be placed: their time becomes NaN.
 * @returns by table, how many rows could not be placed.
 */
export function placeRepeatedHours(hours: RepeatedHours): ReadonlyMap<LoggedTable, number> {
  const unplaced = new Map<LoggedTable, number>();
  for (const parts of hours.values()) {
    for (const sequence of sequences([...parts.values()])) {
      const locals = sequence.flatMap(({ table, rows }) => rows.map((i) => table.store.times[i] as number));
      const second = secondPass(locals);
      let position = 0;
      for (const { table, zone, rows } of sequence) {
        for (const i of rows) {
          const local = table.store.times[i] as number;
          const first = position++ < (second ?? 0);
          if (second === undefined) {
            table.store.times[i] = Number.NaN;
            unplaced.set(table, (unplaced.get(table) ?? 0) + 1);
          } else table.store.times[i] = first ? zone.earlierInstant(local) : zone.laterInstant(local);
        }
      }
    }
  }
  return unplaced;
}

/** Where the second pass begins: at the only step back. Of an hourly log, two rows with one stamp are one pass each. */
function secondPass(locals: readonly number[]): number | undefined {
  const back = locals.flatMap((t, i) => (i > 0 && t < (locals[i - 1] as number) ? [i] : []));
  if (back.length === 1) return back[0];
  return locals.length === 2 && locals[0] === locals[1] ? 1 : undefined;
}

/** Files that follow one another inside the hour are put together; any other file stands for itself. */
function sequences(parts: readonly RepeatedRows[]): RepeatedRows[][] {
  const begins = ({ rows }: RepeatedRows) => rows[0] === 0;
  const ends = ({ table, rows }: RepeatedRows) => rows.at(-1) === table.store.rows - 1;
  const result: RepeatedRows[][] = [];
  const chains = new Map<string, RepeatedRows[]>();
  for (const part of parts) {
    if (!begins(part) && !ends(part)) result.push([part]);
    else chains.set(columnsKey(part.table), [...(chains.get(columnsKey(part.table)) ?? []), part]);
  }
  for (const chain of chains.values()) {
    const place = (part: RepeatedRows) => (begins(part) ? (ends(part) ? 1 : 2) : 0);
    result.push(chain.toSorted((a, b) => place(a) - place(b)));
  }
  return result;
}
