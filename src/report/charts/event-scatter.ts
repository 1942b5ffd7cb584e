import type { Assessment } from "../../rules/assessment.js";
import { say, type Text } from "../../sentence.js";
import { cellOf, countsIn, type EventTable, eventTables, isVoltageEvent, type ReportEvent } from "../events.js";
import { oncePer } from "../once.js";
import { scatterNote, scatterTitle, spotText, tableClause } from "../wording-event-tables.js";
import { boundsBy, EVENT_WORDS } from "../wording-events.js";
import type { Chart, Columns } from "./chart.js";
import { FULL_WIDTH, INK } from "./style.js";

const WIDTH = FULL_WIDTH - 90;
const HEIGHT = 330;
/** Shortest and longest duration drawn, in s; ends of the voltage axis, in %. Events widen them upwards. */
const SHORTEST = 0.008;
const LONGEST = 240;
/** Below zero, so that interruptions do not lie on the frame. */
const LOWEST = -6;
const HIGHEST = 140;
/** Events whose symbols would lie within so many pixels share one. */
const GRID = 8;
/** Duration marks of the axis in s. */
const MARKS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60, 180, 600, 3600, 86400];
const MARK_LABEL =
  "datum.value < 1 ? format(1000 * datum.value, '') + ' ms' : datum.value < 60 ? format(datum.value, '') + ' s' : datum.value < 3600 ? format(datum.value / 60, '') + ' min' : format(datum.value / 3600, '') + ' h'";
const CELL_NAME = {
  type: "text",
  align: "left",
  baseline: "top",
  dx: 3,
  dy: 3,
  fontWeight: "bold",
  tooltip: null,
} as const;
/** Area of a symbol in square pixels; smaller where there are many. */
const SIZE = 80;
const SMALL_SIZE = 34;
const MANY = 200;
const SHAPES = { dip: "triangle-down", swell: "triangle-up", interruption: "cross" } as const;

/** Duration and voltage of each dip, swell and interruption over the cells of the tables that they are counted in. */
export const eventScatter = oncePer((assessment: Assessment): Chart | undefined => {
  const voltageEvents = assessment.events.filter(isVoltageEvent);
  if (voltageEvents.length === 0) return undefined;
  const placed = voltageEvents.filter(({ percent }) => percent !== undefined);
  const tables = eventTables(assessment);
  const durations = placed.map(({ durationS }) => durationS);
  const domain = {
    x: [SHORTEST, durations.reduce((a, b) => Math.max(a, 1.2 * b), LONGEST)] as const,
    y: [LOWEST, placed.reduce((top, { percent }) => Math.max(top, 1.05 * (percent as number)), HIGHEST)] as const,
  };
  const spots = spotsOf(placed, tables, domain);
  const cells = tables.flatMap(({ table }) => cellsOf(table, assessment.events, domain.y[1]));
  const x = {
    type: "quantitative",
    title: EVENT_WORDS.durationAxis,
    scale: { type: "log", domain: domain.x, nice: false },
    axis: {
      values: MARKS.filter((mark) => mark <= domain.x[1]),
      labelExpr: MARK_LABEL,
      grid: false,
      labelOverlap: true,
    },
  };
  const y = {
    type: "quantitative",
    title: EVENT_WORDS.percentAxis,
    scale: { domain: domain.y, nice: false },
    axis: { values: axisValues(tables, domain.y[1]), labelOverlap: "greedy", grid: false },
  };
  return {
    id: "events",
    title: scatterTitle(assessment),
    note: scatterNote(
      placed.length,
      voltageEvents.length - placed.length,
      tables.map(({ clause, table }) => tableClause(table, clause)),
      spots.some(({ count }) => count > 1),
    ),
    kind: "marks",
    width: FULL_WIDTH,
    unit: "%",
    limit: {},
    data: {
      cells: columnsOf(cells),
      spots: columnsOf(spots),
    },
    spec: {
      width: WIDTH,
      height: HEIGHT,
      data: { name: "spots", format: { parse: null } },
      layer: [
        {
          data: { name: "cells" },
          mark: { type: "rect", stroke: "#9a978f", strokeWidth: 0.8, tooltip: null, clip: true },
          encoding: {
            x: { ...x, field: "from" },
            x2: { field: "to" },
            y: { ...y, field: "low" },
            y2: { field: "high" },
            fill: { condition: { test: "datum.count > 0", value: "#eef1e8" }, value: "#ffffff" },
          },
        },
        {
          mark: { type: "point", filled: true, opacity: 0.85, stroke: INK, strokeWidth: 1, clip: true },
          encoding: {
            x: { ...x, field: "duration" },
            y: { ...y, field: "percent" },
            shape: { field: "shape", type: "nominal", scale: null },
            size: { field: "size", type: "quantitative", scale: null },
            fill: { condition: { test: "datum.whole", value: "#4f7fa8" }, value: "transparent" },
            tooltip: [{ field: "text", title: say`event` }],
          },
        },
        // Twice: the white edge of the first keeps the second readable over the symbols.
        ...[{ stroke: "#ffffff", strokeWidth: 4 }, {}].map((edge) => ({
          data: { name: "cells" },
          mark: { ...CELL_NAME, ...edge },
          encoding: { x: { ...x, field: "from" }, y: { ...y, field: "high" }, text: { field: "name" } },
        })),
      ],
    },
  };
});

interface Domain {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

interface Spot {
  readonly [column: string]: Text | number | boolean;
  readonly duration: number;
  readonly percent: number;
  readonly shape: string;
  readonly whole: boolean;
  readonly text: Text;
  readonly count: number;
  readonly size: number;
}

/** One spot per event, or per handful of events of a kind that would cover one another. */
function spotsOf(events: readonly ReportEvent[], tables: ReturnType<typeof eventTables>, { x, y }: Domain): Spot[] {
  const bounds = boundsBy(tables);
  const size = events.length > MANY ? SMALL_SIZE : SIZE;
  const perDecade = WIDTH / Math.log10(x[1] / x[0]);
  const groups = new Map<string, ReportEvent[]>();
  for (const event of events) {
    const duration = Math.max(event.durationS, x[0]);
    const column = Math.floor((Math.log10(duration / x[0]) * perDecade) / GRID);
    const row = Math.floor(((event.percent as number) / (y[1] - y[0])) * (HEIGHT / GRID));
    const key = `${event.kind} ${event.complete !== false} ${cellOf(event) ?? ""} ${column} ${row}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [event]);
    else group.push(event);
  }
  return [...groups.values()].map((group) => {
    const first = group[0] as ReportEvent;
    const where = bounds(first);
    return {
      duration: Number(Math.max(first.durationS, x[0]).toPrecision(5)),
      percent: Number((first.percent as number).toFixed(2)),
      shape: SHAPES[first.kind as keyof typeof SHAPES],
      whole: first.complete !== false,
      text: spotText(first, group.length, where),
      count: group.length,
      size: Math.round(size * (1 + 0.5 * Math.log2(group.length))),
    };
  });
}

interface CellBox {
  readonly [column: string]: Text | number | boolean;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
  readonly name: string;
}

function cellsOf(table: EventTable, events: readonly ReportEvent[], top: number): CellBox[] {
  const { cells } = countsIn(table, events);
  return table.rows.flatMap((row) =>
    table.columns.map((column) => {
      const name = `${row.id}${column.id}`;
      const count = cells.get(name) ?? 0;
      return {
        from: column.from,
        to: column.to,
        low: row.to ?? LOWEST,
        high: row.from ?? top,
        count,
        name: `${name}: ${count}`,
      };
    }),
  );
}

/** The bounds of the rows, 0 and 100 %, and above the tables every 20 %. */
function axisValues(tables: ReturnType<typeof eventTables>, top: number): number[] {
  const bounds = tables.flatMap(({ table }) => table.rows.flatMap(({ from, to }) => [from ?? 0, to ?? 0]));
  const above = Array.from({ length: Math.floor((top - 120) / 20) }, (_, k) => 140 + 20 * k);
  return [...new Set([0, 100, ...bounds, ...above])].filter((value) => value <= top).sort((a, b) => a - b);
}

function columnsOf(rows: readonly Readonly<Record<string, Text | number | boolean>>[]): Columns {
  const names = Object.keys(rows[0] ?? {});
  return Object.fromEntries(
    names.map((name) => [
      name,
      rows.map((row) => (typeof row[name] === "boolean" ? Number(row[name]) : (row[name] ?? null))),
    ]),
  ) as Columns;
}
