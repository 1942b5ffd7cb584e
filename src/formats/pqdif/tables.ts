import { ratio } from "../../decimal.js";
import { keyText, PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase } from "../../recording/quantity.js";
import type { Duration } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { intervalOf } from "../csv/interval.js";
import { columnsKey, type LoggedTable } from "../csv/logged-table.js";
import type { LogReader, Piece, Rows } from "./log-reader.js";
import type { Recognised } from "./recognise.js";

/** A table whose `store.times` are still as stored, and what its rows tell of the stamps. */
export interface RawTable extends LoggedTable {
  readonly interval: Duration;
  /** Of each observation: its start as stored, and its first row. */
  readonly firsts: readonly { readonly start: number; readonly stamp: number }[];
}

/** R.m.s. values every few cycles are the course of an event, not a log of intervals (IEC 61000-4-30: 10/12 cycles). */
const SHORTEST: Duration = 100_000;

/**
 * The fields of a file as tables of intervals: those that share all their rows stand in one. A field with rows of several
 * intervals stands in one table per interval.
 * @returns the tables, and the fields that are left out after all with the reason
 */
export function tablesOf(
  file: string,
  recognised: readonly Recognised[],
  read: LogReader,
): { tables: RawTable[]; leftOut: Map<Recognised, Text>; remarks: Text[] } {
  const leftOut = notConnected(recognised, read);
  const remarks = withoutSameExtremes(recognised, read, leftOut);
  const groups = new Map<string, { rows: Rows[]; columns: { one: Recognised; pieces: Piece[] }[] }>();
  const ids = new Map<Rows, number>();
  const idOf = (rows: Rows) => ids.get(rows) ?? (ids.set(rows, ids.size).get(rows) as number);
  for (const one of recognised) {
    if ((one.meaning === undefined && one.flag === undefined) || leftOut.has(one)) continue;
    for (const pieces of byInterval(read.pieces.get(one.field) ?? [])) {
      const key = pieces.map(({ rows }) => idOf(rows)).join();
      const group = groups.get(key) ?? { rows: pieces.map(({ rows }) => rows), columns: [] };
      groups.set(key, group);
      group.columns.push({ one, pieces });
    }
  }
  const raw = [...groups.values()].map(({ rows, columns }) => ({ table: tableOf(file, rows, columns), columns }));
  const tables: RawTable[] = [];
  for (const { table, columns } of raw) {
    const kin = raw.filter((other) => columnsKey(other.table) === columnsKey(table)).map((other) => other.table);
    const interval = intervalIn([table]) ?? intervalIn(kin);
    if (interval !== undefined && interval >= SHORTEST) {
      tables.push({ ...table, interval });
      continue;
    }
    const reason =
      interval === undefined
        ? say`its rows follow one another at no common distance, so the length of an interval cannot be told`
        : say`its values every ${interval / 1e6} s are the course of an event, no log of intervals`;
    for (const { one } of columns) if (!leftOut.has(one)) leftOut.set(one, reason);
  }
  for (const one of leftOut.keys()) {
    if (tables.some(({ columns }) => columns.some(({ position }) => position === one.field.position)))
      leftOut.delete(one);
  }
  return { tables, leftOut, remarks };
}

/** Pieces by the interval of their rows; single rows go with the others, where these have one interval. */
function byInterval(pieces: readonly Piece[]): Piece[][] {
  const intervals = [...new Set(pieces.flatMap(({ rows }) => rows.interval ?? []))];
  const [only] = intervals;
  if (only === undefined) return [[...pieces]];
  const groups = intervals.map((interval) =>
    pieces.filter(({ rows }) => rows.interval === interval || (rows.interval === undefined && intervals.length === 1)),
  );
  const rest = intervals.length === 1 ? [] : pieces.filter(({ rows }) => rows.interval === undefined);
  return [...groups, rest].filter((group) => group.length > 0);
}

function tableOf(
  file: string,
  rows: readonly Rows[],
  columns: readonly { one: Recognised; pieces: readonly Piece[] }[],
) {
  const length = rows.reduce((n, { stamps }) => n + stamps.length, 0);
  const times = new Float64Array(length);
  let at = 0;
  for (const { stamps } of rows) {
    times.set(stamps, at);
    at += stamps.length;
  }
  const flagged = new Uint8Array(length);
  const used = columns.filter(({ one }) => one.meaning !== undefined);
  for (const { one, pieces } of columns) {
    if (one.flag !== true) continue;
    joined(pieces, 1).forEach((v, i) => {
      if (v !== 0 && !Number.isNaN(v)) flagged[i] = 1;
    });
  }
  const steps = used.map(({ one }) => stepOf(one));
  return {
    file,
    columns: used.map(({ one: { field, meaning, unit } }) => ({
      position: field.position,
      ...(meaning !== undefined && { meaning }),
      ...(unit !== undefined && { unit }),
      scale: ratio(1),
    })),
    store: {
      rows: length,
      times,
      flagged,
      values: used.map(({ one, pieces }) => joined(pieces, one.factor)),
      resolution: (column: number) => steps[column],
    },
    firsts: rows.flatMap(({ start, stamps }) => (stamps.length > 0 ? [{ start, stamp: stamps[0] as number }] : [])),
  };
}

/** The resolution that the definition states, in the unit of the series. */
function stepOf({ field, factor }: Recognised): number | undefined {
  const { resolution } = field.series;
  return resolution !== undefined && resolution > 0 ? resolution * factor : undefined;
}

function joined(pieces: readonly Piece[], factor: number): Float64Array {
  const all = new Float64Array(pieces.reduce((n, { values }) => n + values.length, 0));
  let at = 0;
  for (const { values } of pieces) {
    // Sixteen digits of a product are one too many: 0.07 × 100 is 7.
    all.set(factor === 1 ? values : values.map((v) => Number((v * factor).toPrecision(15))), at);
    at += values.length;
  }
  return all;
}

function intervalIn(tables: readonly Pick<LoggedTable, "store">[]): Duration | undefined {
  const all = new Set(tables.flatMap(({ store }) => [...store.times]).filter((t) => !Number.isNaN(t)));
  return intervalOf(Float64Array.from(all).sort());
}

/**
 * Voltages that are nothing but zeros on all phases to neutral (or all between phases), while others are not: the recorder
 * has no such inputs. A single phase of zeros stays, and the checks report it.
 */
function notConnected(recognised: readonly Recognised[], read: LogReader): Map<Recognised, Text> {
  const voltages = recognised.filter(({ meaning }) => meaning?.quantity === "voltage");
  const isZero = ({ field }: Recognised) =>
    (read.pieces.get(field) ?? []).every(({ values }) => values.every((v) => v === 0));
  const leftOut = new Map<Recognised, Text>();
  if (voltages.every(isZero)) return leftOut;
  for (const group of [PHASE_TO_NEUTRAL, PHASE_TO_PHASE, ["N"]] as readonly (readonly Phase[])[]) {
    const own = voltages.filter(({ meaning }) => group.includes(meaning?.phase as Phase));
    if (!own.every(isZero)) continue;
    for (const one of own) leftOut.set(one, say`all its values are 0: its input was not connected`);
  }
  return leftOut;
}

/** Minimum and maximum that repeat the mean row by row are no extremes: the writer kept one value only. */
function withoutSameExtremes(
  recognised: readonly Recognised[],
  read: LogReader,
  leftOut: Map<Recognised, Text>,
): Text[] {
  const valuesOf = ({ field }: Recognised) => (read.pieces.get(field) ?? []).flatMap(({ values }) => [...values]);
  const same = (a: Recognised, b: Recognised) => {
    const [x, y] = [valuesOf(a), valuesOf(b)];
    return x.length > 1 && x.length === y.length && x.every((v, i) => Object.is(v, y[i]));
  };
  const groups = new Map<string, Recognised[]>();
  for (const one of recognised) {
    if (one.meaning === undefined || leftOut.has(one)) continue;
    const key = `${keyText(one.meaning)} ${JSON.stringify(one.field.definition)}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const names = new Set<string>();
  for (const group of groups.values()) {
    const mean = group.find(({ meaning }) => meaning?.statistic === "mean");
    const extremes = group.filter(({ meaning }) => meaning?.statistic !== "mean");
    if (mean === undefined || extremes.length === 0 || !extremes.every((one) => same(one, mean))) continue;
    if (new Set(valuesOf(mean)).size < 2) continue;
    for (const one of extremes) leftOut.set(one, say`it repeats the mean row by row, so it is no extreme`);
    names.add(mean.field.channel);
  }
  return names.size === 0
    ? []
    : [
        say`Minimum and maximum repeat the mean on ${[...names].join(", ")}: the recorder kept one value only, so these are not used as extremes.`,
      ];
}
