import type { Row } from "../../rules/assessment.js";
import { DATES, DAYS, offsetText } from "../local-time.js";
import { limitValue } from "../wording.js";
import { axisTitle, lineLabel, profileNote, profileTitle, timeAxisTitle } from "../wording-charts.js";
import type { Chart, Columns } from "./chart.js";
import { markColumns, markLayers } from "./marks.js";
import { type ProfileData, profileData } from "./profile-data.js";
import { BAND, EXCLUDED, FULL_WIDTH, INK, OUTSIDE, phaseStyle } from "./style.js";
import type { Subject } from "./subject.js";

const PROFILE_WIDTH = FULL_WIDTH - 230;
const PANEL_HEIGHT = 104;
const SINGLE_HEIGHT = 190;
/** Pixels for the name of a limit beside the plot, and the plot width below which only its number is written. */
const LABEL_WIDTH = 160;
const LABEL_HEIGHT = 12;
const NARROW = 420;
const FEW = 40;
/** Parts of the range of values: room at both ends, and how far extremes may widen it. */
const MARGIN = 0.09;
const MOST_WIDENING = 0.25;

/** Course over the recording, one panel per phase: line, band of extremes, limits, and a triangle at each value outside. */
export function profile(subject: Subject): Chart {
  const points = profileData(subject);
  const lines = subject.limits.length > 0 ? subject.limits : subject.orientation;
  const range = valueRange(lines, points);
  const height = subject.phases.length > 1 ? PANEL_HEIGHT : SINGLE_HEIGHT;
  return {
    id: `${subject.id}-profile`,
    title: profileTitle(subject),
    note: profileNote(subject, points, range),
    kind: "time",
    width: FULL_WIDTH,
    spec: specOf(subject, range, points.hasExtremes),
    data: {
      profile: points.columns,
      limits: limitLines(subject, lines, range, height),
      ...(subject.marks.length > 0 && { marks: markColumns(subject.marks, subject.clock, subject.start) }),
      ...(subject.excluded.length > 0 && { excluded: excludedColumns(subject) }),
    },
    extent: extentOf(subject),
    offset: offsetText(subject.clock, subject.start),
    unit: subject.unit,
    limit: subject.limits[0]?.limit ?? {},
  };
}

type Range = readonly [number, number];

/** Start and end of the recording in milliseconds on the chart's clock. */
function extentOf({ clock, start, end }: Subject): Range {
  const offset = clock.offsetAt(start);
  return [(start + offset) / 1000, (end + offset) / 1000];
}

/** Start and end of each excluded span on the chart's clock. */
function excludedColumns({ clock, start, excluded }: Subject): Columns {
  const offset = clock.offsetAt(start);
  return {
    from: excluded.map(({ from }) => (from + offset) / 1000),
    to: excluded.map(({ to }) => (to + offset) / 1000),
  };
}

/**
 * From the lowest to the highest value, widened to the narrowest limits so that the distance to them shows. Extremes
 * inside the intervals widen it by a quarter at most: a short dip must not press the course into a line.
 */
function valueRange(limits: readonly Row[], { values, extremes }: ProfileData): Range {
  const mins = limits.flatMap(({ limit }) => limit.min ?? []);
  const maxes = limits.flatMap(({ limit }) => limit.max ?? []);
  const floor = maxes.length > 0 && mins.length === 0 ? 0 : Number.POSITIVE_INFINITY;
  const low = Math.min(values[0], mins.length > 0 ? Math.max(...mins) : floor);
  const high = Math.max(values[1], maxes.length > 0 ? Math.min(...maxes) : values[1]);
  const size = high - low || 1;
  const from = Math.max(Math.min(low, extremes[0]), low - MOST_WIDENING * size);
  const to = Math.min(Math.max(high, extremes[1]), high + MOST_WIDENING * size);
  return [from === 0 ? 0 : from - MARGIN * size, to + MARGIN * size];
}

/** Limits inside the drawn range, each value once, with the clause of the requirement that is named first. */
function limitLines(subject: Subject, limits: readonly Row[], [low, high]: Range, height: number): Columns {
  const lines = new Map<number, Row>();
  for (const row of limits)
    for (const y of [row.limit.max, row.limit.min])
      if (y !== undefined && y >= low && y <= high && !lines.has(y)) lines.set(y, row);
  const all = [...lines].sort(([a], [b]) => b - a);
  return {
    y: all.map(([y]) => y),
    short: all.map(([y, row]) => limitValue(y, row.unit)),
    label: all.map(([y, row]) => lineLabel(y, row, subject)),
    shift: labelShifts(all.map(([y]) => ((high - y) / (high - low)) * height)),
  };
}

/** How far labels move down so that none covers the one above it; places in pixels from the top, ascending. */
function labelShifts(places: readonly number[]): number[] {
  let free = Number.NEGATIVE_INFINITY;
  return places.map((place) => {
    const at = Math.max(place, free);
    free = at + LABEL_HEIGHT;
    return at - place;
  });
}

function specOf(subject: Subject, range: Range, hasExtremes: boolean): Record<string, unknown> {
  const several = subject.phases.length > 1;
  const widthSignal = several ? "child_width" : "width";
  const x = timeAxis(subject, widthSignal);
  const y = {
    type: "quantitative",
    title: axisTitle(subject),
    scale: { domain: range, nice: false, zero: false },
    axis: { tickCount: 5, ...(isPower(subject) && { format: "~f" }) },
  };
  // Conditions, not a colour scale: a scale would make Vega split each panel's line by phase once more.
  const color = {
    condition: subject.phases
      .filter(({ phase }) => phase !== "system")
      .map(({ phase }) => ({ test: `datum.phase === '${phase}'`, value: phaseStyle(phase).color })),
    value: phaseStyle("system").color,
  };
  const layer = [
    ...bandLayer(subject.limits[0], range),
    ...excludedLayer(subject, x),
    ...(hasExtremes
      ? [
          {
            mark: { type: "area", opacity: 0.3, clip: true },
            encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" }, color },
          },
        ]
      : []),
    { mark: { type: "line", strokeWidth: 1.3, clip: true }, encoding: { x, y: { ...y, field: "v" }, color } },
    ...pointLayer(subject, x, y, color, hasExtremes),
    ...limitLayers(y, widthSignal),
    outsideLayer(subject.limits[0], x, y),
    ...(subject.marks.length > 0 ? markLayers(x, several) : []),
  ];
  return {
    params: [
      { name: "span", value: null },
      { name: "days", value: [DAYS[6], ...DAYS.slice(0, 6)] },
      { name: "dates", value: DATES.map((date) => date("#")) },
    ],
    data: { name: "profile", format: { parse: null } },
    ...(several
      ? {
          facet: { row: { field: "phase", type: "nominal", title: null, header: { labelAngle: 0 } } },
          spec: { width: PROFILE_WIDTH, height: PANEL_HEIGHT, layer },
          spacing: 10,
        }
      : { width: PROFILE_WIDTH, height: SINGLE_HEIGHT, layer }),
  };
}

/** Days at midnight, named by the parameters of the chart; else the time of day, as fine as the ticks are. */
const TIME_LABEL = [
  "utcmilliseconds(datum.value) !== 0 ? utcFormat(datum.value, '%H:%M:%S.%L')",
  "utcseconds(datum.value) !== 0 ? utcFormat(datum.value, '%H:%M:%S')",
  "utchours(datum.value) + utcminutes(datum.value) !== 0 ? utcFormat(datum.value, '%H:%M')",
  "days[utcday(datum.value)] + ' ' + replace(dates[utcmonth(datum.value)], '#', utcdate(datum.value))",
].join(" : ");

/** Powers run to five figures and more, which would get separators. */
function isPower({ unit }: Subject): boolean {
  return unit === "W" || unit === "var" || unit === "VA";
}

/** Time on one fixed offset from UTC: the scale reads the shifted instants as UTC, whatever zone the reader's machine has. */
function timeAxis(subject: Subject, widthSignal: string): Record<string, unknown> {
  return {
    field: "t",
    type: "temporal",
    title: timeAxisTitle(subject),
    scale: { type: "utc", domain: extentOf(subject), domainRaw: { expr: "span" }, nice: false },
    axis: {
      tickCount: { expr: `max(2, floor(${widthSignal} / 105))` },
      labelExpr: TIME_LABEL,
    },
  };
}

/** The values that the first limit allows, as a pale field behind everything. */
function bandLayer(row: Row | undefined, [low, high]: Range): Record<string, unknown>[] {
  if (row === undefined) return [];
  const { min = low, max = high } = row.limit;
  return [
    {
      data: { values: [{}] },
      mark: { type: "rect", color: BAND },
      encoding: { y: { datum: min, type: "quantitative" }, y2: { datum: max } },
    },
  ];
}

/** Excluded spans as fields over the whole height; the course stays visible on them. */
function excludedLayer({ excluded }: Subject, x: Record<string, unknown>): Record<string, unknown>[] {
  if (excluded.length === 0) return [];
  return [
    {
      data: { name: "excluded" },
      mark: { type: "rect", color: EXCLUDED, clip: true },
      encoding: { x: { ...x, field: "from" }, x2: { field: "to" } },
    },
  ];
}

/** Few values are points as well, with their extremes: a line or a band needs two neighbours to show. */
function pointLayer(
  { phases }: Subject,
  x: unknown,
  y: Record<string, unknown>,
  color: unknown,
  hasExtremes: boolean,
): Record<string, unknown>[] {
  if (Math.max(...phases.map(({ counted }) => counted.length)) > FEW) return [];
  const transform = [{ filter: "datum.v !== null" }];
  const extremes = {
    transform,
    mark: { type: "rule", opacity: 0.5, clip: true },
    encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" }, color },
  };
  return [
    ...(hasExtremes ? [extremes] : []),
    {
      transform,
      mark: { type: "point", filled: true, size: 18, opacity: 1, clip: true },
      encoding: { x, y: { ...y, field: "v" }, color },
    },
  ];
}

/** Limits as dashed lines, named to the right of the plot; on a narrow screen without the clause. */
function limitLayers(y: Record<string, unknown>, widthSignal: string): Record<string, unknown>[] {
  const data = { name: "limits" };
  return [
    {
      data,
      mark: { type: "rule", color: INK, strokeDash: [6, 3], strokeWidth: 1.2 },
      encoding: { y: { ...y, field: "y" } },
    },
    {
      data,
      mark: {
        type: "text",
        align: "left",
        dx: 5,
        dy: { expr: "datum.shift" },
        limit: LABEL_WIDTH,
        text: { expr: `${widthSignal} < ${NARROW} ? datum.short : datum.label` },
      },
      encoding: { y: { ...y, field: "y" }, x: { value: "width" } },
    },
  ];
}

/** A triangle at each value outside: pointing up above the upper limit, down below the lower one. */
function outsideLayer(row: Row | undefined, x: unknown, y: Record<string, unknown>): Record<string, unknown> {
  const isAbove = row?.limit.max === undefined ? "false" : `datum.out > ${row.limit.max}`;
  return {
    transform: [{ filter: "datum.out !== null" }],
    mark: { type: "point", filled: true, size: 26, color: OUTSIDE, opacity: 0.9, clip: true },
    encoding: {
      x,
      y: { ...y, field: "out" },
      shape: { condition: { test: isAbove, value: "triangle-up" }, value: "triangle-down" },
    },
  };
}
