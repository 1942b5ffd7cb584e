/** A picture before it is drawn: plain data, so that the same chart can be a static picture, a file and a live view. */
export interface Chart {
  /** File name without extension, unique in the report. */
  readonly id: string;
  /** The finding, as a sentence without full stop. */
  readonly title: string;
  /** Data count, time base, limits with their clauses, how to read it. */
  readonly note: string;
  /** How a live view answers the pointer: time: zoom, pan and values at an instant; curve: shares at a value; marks: the mark's own text. */
  readonly kind: "time" | "curve" | "marks";
  /** Width of the picture in pixels, about; a live view may be narrower. */
  readonly width: number;
  /** Vega-Lite specification; its data sets are named and stand in `data`. */
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
  readonly heading: string;
  readonly charts: readonly Chart[];
}

/** Equally long columns; a column of times on a grid is stored as whole steps. */
export type Columns = Readonly<Record<string, Column>>;
export type Column = readonly (number | string | null)[] | Grid;

export interface Grid {
  readonly start: number;
  readonly step: number;
  readonly steps: readonly number[];
}

/** One object per row, as Vega wants its data. Self-contained: the report page carries this function as text. */
export function rowsOf(columns: Columns): Record<string, number | string | null>[] {
  const rows: Record<string, number | string | null>[] = [];
  for (const [name, column] of Object.entries(columns)) {
    const values = "steps" in column ? column.steps.map((k) => column.start + column.step * k) : column;
    for (const [i, value] of values.entries()) {
      rows[i] ??= {};
      (rows[i] as Record<string, number | string | null>)[name] = value;
    }
  }
  return rows;
}
