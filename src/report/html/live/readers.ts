import type { Columns, Grid, Value } from "../../charts/chart.js";
import type { LiveChart, Tools } from "./tools.js";

/** Lines of the tooltip at a place on the horizontal axis. */
export type Reader = (x: number) => string[];

/** The values of every phase in the interval at an instant (milliseconds on the chart's clock), with their extremes. */
export function timeReader(chart: LiveChart, { valuesOf, formatAgainstLimits, words }: Tools): Reader {
  const columns = chart.data.profile as Columns;
  const grid = columns.t as Grid;
  const column = (name: string) => (columns[name] === undefined ? [] : valuesOf(columns[name])) as (number | null)[];
  const [v, low, high, out] = [column("v"), column("low"), column("high"), column("out")];
  const places = new Map<Value, Map<number, number>>();
  for (const [row, phase] of valuesOf(columns.phase as Columns[string]).entries()) {
    if (!places.has(phase)) places.set(phase, new Map());
    places.get(phase)?.set(grid.steps[row] as number, row);
  }
  const print = (value: number) => formatAgainstLimits(value, chart.limit, chart.decimals);
  const unit = chart.unit === "1" ? "" : ` ${chart.unit}`;
  const clock = new Intl.DateTimeFormat("en-GB", {
    timeZone: "UTC",
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
  });
  return (time) => {
    const slot = Math.round((time - grid.start) / grid.step);
    const lines = [`${clock.format(grid.start + slot * grid.step)} (${chart.offset})`];
    for (const [phase, rows] of places) {
      const row = rows.get(slot) ?? -1;
      const value = v[row] ?? null;
      if (value === null) continue;
      const [lowest, highest] = [low[row] ?? null, high[row] ?? null];
      const range =
        lowest === null || highest === null ? "" : ` (${print(lowest)} ${words.extremes} ${print(highest)})`;
      const outside = (out[row] ?? null) === null ? "" : `, ${words.outside}`;
      lines.push(`${phase} ${print(value)}${unit}${range}${outside}`);
    }
    return lines;
  };
}

/** The share of each phase's intervals at or below a value. */
export function curveReader(chart: LiveChart, { valuesOf, formatAgainstLimits, words }: Tools): Reader {
  const columns = chart.data.shares as Columns;
  const [phases = [], xs = [], shares = []] = ["phase", "x", "share"].map((name) =>
    valuesOf(columns[name] as Columns[string]),
  );
  const unit = chart.unit === "1" ? "" : ` ${chart.unit}`;
  return (value) => {
    const below = new Map<Value, Value>(phases.map((phase) => [phase, 0]));
    for (const [row, phase] of phases.entries()) if ((xs[row] as number) <= value) below.set(phase, shares[row] ?? 0);
    return [
      `${formatAgainstLimits(value, chart.limit, chart.decimals)}${unit}`,
      ...[...below].map(([phase, share]) => `${phase}: ${share} ${words.atOrBelow}`),
    ];
  };
}
