import { LogError } from "../../errors.js";
import { keyText, QUANTITIES, type SeriesKey, type Unit } from "../../recording/quantity.js";
import type { ColumnMeaning, LoggedSeries } from "../../recording/recording.js";
import type { Instant } from "../../recording/time.js";
import { say, strung, type Text } from "../../sentence.js";
import type { LoggedTable } from "./logged-table.js";
import { type AxisGroup, NOWHERE } from "./time-axis.js";

export interface Joined {
  readonly series: readonly LoggedSeries[];
  readonly duplicates: number;
  readonly conflicts: readonly Instant[];
  readonly remarks: readonly Text[];
}

/** The columns of one or more tables that say the same thing. */
interface Column {
  readonly meaning: ColumnMeaning;
  readonly unit: Unit;
  /** `table` by its index in the group, `place` in its store. */
  readonly parts: { readonly table: number; readonly place: number; readonly resolution: number | undefined }[];
}

/**
 * Brings the columns of a group of tables onto its axis. Rows with the same start: a value beside a missing one stands;
 * equal values are kept once; values that differ become missing, whatever the order of rows and files.
 * Mean, minimum and maximum of one quantity become one series; extremes without a mean, and columns without any value,
 * are left out with a remark.
 * @throws LogError if files log one quantity in different units.
 */
export function joinColumns(group: AxisGroup): Joined {
  const columns = findColumns(group);
  const conflicting = new Set<number>();
  const filled = new Map<string, { column: Column; values: Float64Array }>();
  const remarks: Text[] = [];
  for (const [name, column] of columns) {
    const values = valuesOnAxis(group, column, conflicting);
    if (values.some((value) => !Number.isNaN(value))) filled.set(name, { column, values });
    else remarks.push(say`${plainName(column.meaning)}: its column holds no value and was left out`);
  }
  const series: LoggedSeries[] = [];
  for (const { column, values } of filled.values()) {
    const { meaning } = column;
    const [mean, min, max] = (["mean", "min", "max"] as const).map((s) => filled.get(columnName(meaning, s)));
    if (meaning.statistic === "mean") series.push(loggedSeries(group, column, values, min?.values, max?.values));
    else if (mean === undefined) remarks.push(say`${plainName(meaning)}: logged without its mean, so it was left out`);
  }
  const starts = group.axis.starts;
  return {
    series: series.sort(byKey),
    duplicates: countDuplicates(group, conflicting),
    conflicts: [...conflicting].sort((a, b) => a - b).map((place) => starts[place] as number),
    remarks,
  };
}

function columnName(key: SeriesKey, statistic: ColumnMeaning["statistic"]): string {
  return `${keyText(key)} ${statistic}`;
}

const STATISTICS = { mean: say`mean`, min: say`minimum`, max: say`maximum` } as const;

/** "harmonic voltage L1, order 5, maximum" */
function plainName({ quantity, phase, order, statistic }: ColumnMeaning): Text {
  const { name } = QUANTITIES[quantity];
  const where = phase === "system" ? name : strung([name, phase], " ");
  return strung([where, ...(order === undefined ? [] : [say`order ${order}`]), STATISTICS[statistic]], ", ");
}

function findColumns({ tables }: AxisGroup): Map<string, Column> {
  const columns = new Map<string, Column>();
  tables.forEach((table, t) => {
    table.columns.forEach(({ meaning, unit, scale, position }, place) => {
      if (meaning === undefined || unit === undefined || scale === undefined) return;
      const name = columnName(meaning, meaning.statistic);
      const column = columns.get(name) ?? { meaning, unit, parts: [] };
      if (column.unit !== unit) {
        const other = (tables[column.parts[0]?.table ?? 0] as LoggedTable).file;
        throw new LogError(
          table.file,
          `column ${position}`,
          `${keyText(meaning)} is logged in ${unit} here and in ${column.unit} in ${other}: assess these files apart`,
        );
      }
      columns.set(name, column);
      column.parts.push({ table: t, place, resolution: table.store.resolution(place, scale) });
    });
  });
  return columns;
}

/** The values of a column on the axis. The store's own array is used where possible and given up otherwise. */
function valuesOnAxis(group: AxisGroup, { parts }: Column, conflicting: Set<number>): Float64Array {
  const take = ({ table, place }: Column["parts"][number]) => {
    const { store } = group.tables[table] as LoggedTable;
    const values = (store.values[place] as Float64Array).subarray(0, store.rows);
    store.values[place] = new Float64Array(0);
    return values;
  };
  const [only] = parts;
  if (only !== undefined && parts.length === 1 && group.places[only.table] === undefined) return take(only);

  const joined = new Float64Array(group.axis.starts.length).fill(Number.NaN);
  const disputed: number[] = [];
  for (const part of parts) {
    const own = take(part);
    const places = group.places[part.table];
    for (let i = 0; i < own.length; i++) {
      const place = places === undefined ? i : (places[i] as number);
      const value = own[i] as number;
      if (place === NOWHERE || Number.isNaN(value)) continue;
      const before = joined[place] as number;
      if (Number.isNaN(before)) joined[place] = value;
      else if (before !== value) disputed.push(place);
    }
  }
  for (const place of disputed) {
    joined[place] = Number.NaN;
    conflicting.add(place);
  }
  return joined;
}

function loggedSeries(
  { axis }: AxisGroup,
  { meaning, unit, parts }: Column,
  values: Float64Array,
  min: Float64Array | undefined,
  max: Float64Array | undefined,
): LoggedSeries {
  const resolutions = parts.flatMap(({ resolution }) => (resolution === undefined ? [] : [resolution]));
  return {
    quantity: meaning.quantity,
    phase: meaning.phase,
    ...(meaning.order === undefined ? {} : { order: meaning.order }),
    axis,
    unit,
    values,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(resolutions.length === 0 ? {} : { resolution: Math.min(...resolutions) }),
  };
}

const PHASES = ["L1", "L2", "L3", "N", "L12", "L23", "L31", "system"] as const;

/** A fixed order of series, so that the order of columns and files does not matter. */
export function byKey(a: LoggedSeries, b: LoggedSeries): number {
  const quantities = Object.keys(QUANTITIES);
  return (
    quantities.indexOf(a.quantity) - quantities.indexOf(b.quantity) ||
    PHASES.indexOf(a.phase) - PHASES.indexOf(b.phase) ||
    (a.order ?? -1) - (b.order ?? -1) ||
    a.axis.interval - b.axis.interval ||
    (a.axis.starts[0] ?? 0) - (b.axis.starts[0] ?? 0)
  );
}

/** Rows that repeat an interval already logged by tables with a column in common, where nothing contradicts. */
function countDuplicates({ tables, places, axis }: AxisGroup, conflicting: ReadonlySet<number>): number {
  let duplicates = 0;
  for (const kin of relatedTables(tables)) {
    const seen = new Uint8Array(axis.starts.length);
    for (const table of kin) {
      const own = places[tables.indexOf(table)];
      for (let i = 0; i < table.store.rows; i++) {
        const place = own === undefined ? i : (own[i] as number);
        if (place === NOWHERE) continue;
        if (seen[place] === 1 && !conflicting.has(place)) duplicates++;
        seen[place] = 1;
      }
    }
  }
  return duplicates;
}

/** Sets of tables that are linked by common columns. */
function relatedTables(tables: readonly LoggedTable[]): LoggedTable[][] {
  const names = (table: LoggedTable) =>
    table.columns.flatMap(({ meaning }) => (meaning === undefined ? [] : [columnName(meaning, meaning.statistic)]));
  let sets: { tables: LoggedTable[]; columns: Set<string> }[] = [];
  for (const table of tables) {
    const own = names(table);
    const [linked, apart] = [
      sets.filter((s) => own.some((n) => s.columns.has(n))),
      sets.filter((s) => !own.some((n) => s.columns.has(n))),
    ];
    sets = [
      ...apart,
      {
        tables: [...linked.flatMap((s) => s.tables), table],
        columns: new Set([...linked.flatMap((s) => [...s.columns]), ...own]),
      },
    ];
  }
  return sets.map((s) => s.tables);
}
