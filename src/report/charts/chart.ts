import type { Text } from "../../sentence.js";

/** A picture before it is drawn: plain data, so that the same chart can be a static picture, a file and a live view. */
export interface Chart {
  /** File name without extension, unique in the report. */
  readonly id: string;
  /** The finding, as a sentence without full stop. */
  readonly title: Text;
  /** Data count, time base, limits with their clauses, how to read it. */
  readonly note: Text;
  /** How a live view answers the pointer: time: zoom, pan and values at an instant; curve: shares at a value; marks: the mark's own text. */
  readonly kind: "time" | "curve" | "marks";
  /** Width of the picture in pixels, about; a live view may be narrower. */
  readonly width: number;
  /** Vega-Lite specification; its data sets are named and stand in `data`. Both hold texts, which are translated before drawing. */
  readonly spec: Readonly<Record<string, unknown>>;
  readonly data: Readonly<Record<string, Columns>>;
  /** time: start and end in milliseconds, on the chart's own clock (see `offsetText`). */
  readonly extent?: readonly [number, number];
  /** time: the fixed offset from UTC of the whole axis, "UTC+01:00". */
  readonly offset?: string;
  readonly unit: string;
  /** What tooltips must not round across. */
  readonly limit: { readonly min?: number | undefined; readonly max?: number | undefined };
}

/** The charts of one quantity, under one heading. */
export interface ChartSection {
  readonly id: string;
  readonly heading: Text;
  readonly charts: readonly Chart[];
}

export type Value = number | Text | null;

/** Equally long columns, each in the form that takes least room in the page. */
export type Columns = Readonly<Record<string, Column>>;
export type Column = readonly Value[] | Grid | Runs;

/** Numbers on a grid: start + step × k. */
export interface Grid {
  readonly start: number;
  readonly step: number;
  readonly steps: readonly number[];
}

/** Values that stay the same for a while, with how often each repeats. */
export interface Runs {
  readonly runs: readonly (readonly [Value, number])[];
}

export function runsOf(values: readonly Value[]): Runs {
  const runs: [Value, number][] = [];
  for (const value of values) {
    const last = runs[runs.length - 1];
    if (last !== undefined && last[0] === value) last[1]++;
    else runs.push([value, 1]);
  }
  return { runs };
}

/** A column written out. Self-contained, as is the next one: the report page carries the text of both. */
export function valuesOf(column: Column): readonly Value[] {
  if ("steps" in column) return column.steps.map((k) => column.start + column.step * k);
  if ("runs" in column) return column.runs.flatMap(([value, count]) => new Array<Value>(count).fill(value));
  return column;
}

/** One object per row, as Vega wants its data. */
export function rowsOf(columns: Columns): Record<string, Value>[] {
  const rows: Record<string, Value>[] = [];
  for (const [name, column] of Object.entries(columns))
    for (const [i, value] of valuesOf(column).entries()) {
      rows[i] ??= {};
      (rows[i] as Record<string, Value>)[name] = value;
    }
  return rows;
}
