import type { Columns, Grid, Value } from "../../charts/chart.js";
import type { LiveChart, Tools } from "./tools.js";

/** Lines of the tooltip at a place on the horizontal axis. */
export type Reader = (x: number) => string[];

/** The values of every phase in the interval at an instant (milliseconds on the chart's clock), with their extremes. */
export function timeReader(chart: LiveChart, { valuesOf, formatAgainstLimits, words }: Tools): Reader {
  const columns = chart.data.profile as Columns;
  const { step } = columns.t as Grid;
  const column = (name: string) => (columns[name] === undefined ? [] : valuesOf(columns[name])) as (number | null)[];
  const [v, low, high, out] = [column("v"), column("low"), column("high"), column("out")];
  const times = valuesOf(columns.t as Grid) as number[];
  const places = new Map<Value, number[]>();
  for (const [row, phase] of valuesOf(columns.phase as Columns[string]).entries()) {
    if (!places.has(phase)) places.set(phase, []);
    if ((v[row] ?? null) !== null) places.get(phase)?.push(row);
  }
  /** Of rows in time order the one nearest to an instant. */
  const nearest = (rows: readonly number[], time: number): number | undefined => {
    let [from, to] = [0, rows.length - 1];
    while (from < to) {
      const middle = (from + to) >> 1;
      const [here, next] = [times[rows[middle] as number] as number, times[rows[middle + 1] as number] as number];
      if (next - time <= time - here) from = middle + 1;
      else to = middle;
    }
    return rows[from];
  };
  const print = (value: number) =>
    formatAgainstLimits(value, chart.limit, chart.decimals).replace(".", words.decimalMark);
  const unit = chart.unit === "1" ? "" : ` ${chart.unit}`;
  const clock = new Intl.DateTimeFormat(words.locale, {
    timeZone: "UTC",
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    ...(step < 60_000 && { second: "2-digit" }),
    ...(step < 1000 && { fractionalSecondDigits: 2 as const }),
  });
  return (time) => {
    const found = [...places].flatMap(([phase, rows]) => {
      const row = nearest(rows, time);
      const isNear = row !== undefined && Math.abs((times[row] as number) - time) <= 0.75 * step;
      return isNear ? [{ phase, row }] : [];
    });
    const at = found.length > 0 ? (times[found[0]?.row as number] as number) : time;
    const lines = [`${clock.format(Math.round(at))} (${chart.offset})`];
    for (const { phase, row } of found) {
      const [lowest, highest] = [low[row] ?? null, high[row] ?? null];
      const range =
        lowest === null || highest === null
          ? ""
          : ` (${words.extremes.replace("#1", print(lowest)).replace("#2", print(highest))})`;
      const outside = (out[row] ?? null) === null ? "" : `, ${words.outside}`;
      lines.push(`${phase} ${print(v[row] as number)}${unit}${range}${outside}`);
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
  const inLanguage = (number: string) => number.replace(".", words.decimalMark);
  return (value) => {
    const below = new Map<Value, Value>(phases.map((phase) => [phase, 0]));
    for (const [row, phase] of phases.entries()) if ((xs[row] as number) <= value) below.set(phase, shares[row] ?? 0);
    return [
      `${inLanguage(formatAgainstLimits(value, chart.limit, chart.decimals))}${unit}`,
      ...[...below].map(([phase, share]) => `${phase}: ${words.atOrBelow.replace("#", inLanguage(String(share)))}`),
    ];
  };
}
