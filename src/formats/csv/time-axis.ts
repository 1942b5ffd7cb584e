import { LogError } from "../../errors.js";
import type { TimeAxis } from "../../recording/recording.js";
import { type Duration, durationText, type Instant } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { fromTick, intervalOf, JITTER, tickPhase } from "./interval.js";
import { columnsKey, type LoggedTable } from "./logged-table.js";

/** LoggedTables that share a time axis, and where their rows stand on it. */
export interface AxisGroup {
  readonly tables: readonly LoggedTable[];
  readonly axis: TimeAxis;
  /**
   * Per table, for each of its rows the place on the axis; `NOWHERE` for a row that could not be placed. Undefined where
   * row i stands at place i.
   */
  readonly places: readonly (Uint32Array | undefined)[];
  readonly clockSteps: readonly { readonly at: Instant; readonly by: Duration }[];
  readonly remarks: readonly Text[];
}

export const NOWHERE = 0xffff_ffff;

/** A table whose times are instants, and what its stamps mark. */
export interface Placed {
  readonly table: LoggedTable;
  readonly label: "start" | "end";
}

/**
 * Finds the interval of every table and the time axes they share: tables with the same interval whose ticks lie alike or
 * that hold a common column share one. Stamps within 1 % of the interval around their tick are put on it.
 * After this, `store.times` are interval starts.
 * @throws LogError if an interval cannot be told.
 */
export function timeAxes(placed: readonly Placed[]): AxisGroup[] {
  const intervals = findIntervals(placed);
  for (const { table, label } of placed) {
    if (label === "end") shift(table, -(intervals.get(table) as Duration));
  }
  return groups(
    placed.map((p) => p.table),
    intervals,
  ).map(({ tables, interval, phase }) => {
    const remarks = putOnTicks(tables, interval, phase);
    const starts = sortedStarts(tables);
    const flagged = new Uint8Array(starts.length);
    const places = tables.map((table) => placesOn(starts, table));
    tables.forEach(({ store }, t) => {
      const own = places[t];
      for (let i = 0; i < store.rows; i++) {
        const place = own === undefined ? i : (own[i] as number);
        if (place !== NOWHERE && store.flagged[i] === 1) flagged[place] = 1;
      }
    });
    const { steps, drift } = clockSteps(starts, interval);
    if (drift > 0)
      remarks.push(say`${names(tables)}: the distance of rows is off its interval by up to ${lengthText(drift)}`);
    return { tables, axis: { interval, starts, flagged }, places, clockSteps: steps, remarks };
  });
}

/**
 * Each file tells its own interval; files with the same columns tell it together where that makes them one denser log,
 * or where a file is too short to tell.
 */
function findIntervals(placed: readonly Placed[]): ReadonlyMap<LoggedTable, Duration> {
  const intervals = new Map<LoggedTable, Duration>();
  const keys = new Set(placed.map((p) => columnsKey(p.table)));
  for (const key of keys) {
    const tables = placed.map((p) => p.table).filter((table) => columnsKey(table) === key);
    const own = tables.map((table) => intervalOf(sortedStarts([table])));
    const known = new Set(own.filter((d) => d !== undefined));
    const [first] = known;
    const single = known.size === 1 ? first : undefined;
    const together = tables.length > 1 && known.size <= 1 ? intervalOf(sortedStarts(tables)) : undefined;
    const isDenser = together !== undefined && (single === undefined || single % together === 0);
    tables.forEach((table, t) => {
      const interval = isDenser ? together : (own[t] ?? single);
      if (interval === undefined) throw noInterval(table);
      intervals.set(table, interval);
    });
  }
  return intervals;
}

function noInterval(table: LoggedTable): LogError {
  const starts = sortedStarts([table]);
  const what =
    starts.length < 2
      ? "fewer than two different stamps, so the length of an interval cannot be told: take a longer part of the log"
      : "its rows follow one another at no common distance, so the length of an interval cannot be told: export one regular table";
  return new LogError(table.file, undefined, what);
}

function shift({ store }: LoggedTable, by: Duration): void {
  for (let i = 0; i < store.rows; i++) store.times[i] = (store.times[i] as number) + by;
}

interface Group {
  readonly tables: LoggedTable[];
  readonly interval: Duration;
  readonly phase: Duration | undefined;
}

function groups(tables: readonly LoggedTable[], intervals: ReadonlyMap<LoggedTable, Duration>): Group[] {
  let all: Group[] = tables.map((table) => {
    const interval = intervals.get(table) as Duration;
    return { tables: [table], interval, phase: tickPhase(sortedStarts([table]), interval) };
  });
  for (let i = 0; i < all.length; i++) {
    for (let j = i + 1; j < all.length; ) {
      const [a, b] = [all[i] as Group, all[j] as Group];
      if (!belongTogether(a, b)) {
        j++;
        continue;
      }
      const joined = [...a.tables, ...b.tables];
      all = all.with(i, { ...a, tables: joined, phase: tickPhase(sortedStarts(joined), a.interval) });
      all.splice(j, 1);
      j = i + 1;
    }
  }
  return all;
}

function belongTogether(a: Group, b: Group): boolean {
  if (a.interval !== b.interval) return false;
  if (a.phase !== undefined && a.phase === b.phase) return true;
  const columns = new Set(a.tables.flatMap((table) => columnsKey(table).split("\n")));
  return b.tables.some((table) =>
    columnsKey(table)
      .split("\n")
      .some((column) => columns.has(column)),
  );
}

function putOnTicks(tables: readonly LoggedTable[], interval: Duration, phase: Duration | undefined): Text[] {
  if (phase === undefined) return [];
  let [most, moved] = [0, 0];
  for (const { store } of tables) {
    for (let i = 0; i < store.rows; i++) {
      const start = store.times[i] as number;
      const off = fromTick(start, phase, interval);
      if (off === 0 || !(Math.abs(off) <= JITTER * interval)) continue;
      store.times[i] = start - off;
      most = Math.max(most, Math.abs(off));
      moved++;
    }
  }
  if (moved === 0) return [];
  return [
    say`${names(tables)}: ${moved} stamps beside their tick were put on it; the farthest was ${lengthText(most)} away`,
  ];
}

function names(tables: readonly LoggedTable[]): string {
  return [...new Set(tables.map((table) => table.file))].toSorted().join(", ");
}

function lengthText(d: Duration): Text {
  return d < 1_000_000 ? say`${d / 1000} ms` : durationText(d);
}

/** The different starts of all placed rows, in time order. Where one table is already so, its own array. */
function sortedStarts(tables: readonly LoggedTable[]): Float64Array {
  const [only] = tables;
  if (only !== undefined && tables.length === 1 && isIncreasing(only))
    return only.store.times.subarray(0, only.store.rows);
  const all = new Float64Array(tables.reduce((n, { store }) => n + store.rows, 0));
  let n = 0;
  for (const { store } of tables) {
    for (let i = 0; i < store.rows; i++) {
      const t = store.times[i] as number;
      if (!Number.isNaN(t)) all[n++] = t;
    }
  }
  const sorted = all.subarray(0, n).sort();
  let kept = 0;
  for (let i = 0; i < n; i++) if (i === 0 || sorted[i] !== sorted[kept - 1]) sorted[kept++] = sorted[i] as number;
  return sorted.subarray(0, kept);
}

function isIncreasing({ store }: LoggedTable): boolean {
  for (let i = 0; i < store.rows; i++) {
    // Negated, so that NaN counts as not increasing.
    if (!((store.times[i] as number) > (i === 0 ? Number.NEGATIVE_INFINITY : (store.times[i - 1] as number))))
      return false;
  }
  return true;
}

function placesOn(starts: Float64Array, { store }: LoggedTable): Uint32Array | undefined {
  if (starts.length === store.rows && starts.every((t, i) => t === store.times[i])) return undefined;
  const places = new Uint32Array(store.rows);
  let guess = 0;
  for (let i = 0; i < store.rows; i++) {
    const t = store.times[i] as number;
    if (starts[guess] !== t) guess = Number.isNaN(t) ? NOWHERE : find(starts, t);
    places[i] = guess;
    guess = guess === NOWHERE ? 0 : guess + 1;
  }
  return places;
}

function find(starts: Float64Array, t: Instant): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((starts[middle] as number) < t) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Distances that are no whole number of intervals; those within the jitter are no steps, the largest is the drift. */
function clockSteps(starts: Float64Array, interval: Duration) {
  const steps: { at: Instant; by: Duration }[] = [];
  let drift = 0;
  for (let i = 1; i < starts.length; i++) {
    const at = starts[i] as number;
    const distance = at - (starts[i - 1] as number);
    if (distance % interval === 0) continue;
    const by = distance - Math.max(1, Math.round(distance / interval)) * interval;
    if (Math.abs(by) > JITTER * interval) steps.push({ at, by });
    else drift = Math.max(drift, Math.abs(by));
  }
  return { steps, drift };
}
