import type { Phase } from "../../recording/quantity.js";
import type { Assessment, Row } from "../../rules/assessment.js";
import { Numeral } from "../../sentence.js";
import { formatAgainstLimits } from "../numbers.js";
import { fullWeek } from "../rows.js";
import { inWeekText, phaseName } from "../wording.js";
import { inUnit } from "../wording-charts.js";
import { HARMONIC_WORDS, harmonicsNote, harmonicsTitle, limitIn, ORDER_WORDS } from "../wording-harmonics.js";
import type { Chart } from "./chart.js";
import { FULL_WIDTH, INK, phaseScale } from "./style.js";

const HEIGHT = 230;

/** By order and phase: the value that the required share of intervals does not exceed, beside the order's limit. */
export function harmonicsByOrder(assessment: Assessment, rows: readonly Row[]): Chart {
  const week = fullWeek(assessment);
  const when = week === undefined ? "" : inWeekText(assessment, week);
  const drawn = rows.filter(({ percentile }) => percentile.high !== undefined);
  const phases = [...new Set(drawn.map(({ phase }) => phase))];
  const limits = new Map(rows.map((row) => [row.order as number, row.limit.max as number]));
  const orders = [...limits.keys()].sort((a, b) => a - b);
  const highest = Math.max(...limits.values(), ...drawn.map(({ percentile }) => percentile.high as number));
  const above = labelsAbove(drawn);
  const x = {
    field: "order",
    type: "ordinal",
    title: HARMONIC_WORDS.order,
    scale: { domain: orders },
    axis: { labelAngle: 0, ticks: false },
  };
  const y = {
    type: "quantitative",
    title: inUnit("Uh", "%"),
    scale: { domain: [0, 1.12 * highest], nice: false },
    axis: { tickCount: 6 },
  };
  return {
    id: HARMONIC_WORDS.id,
    title: harmonicsTitle(rows),
    note: harmonicsNote(rows, when),
    kind: "marks",
    width: FULL_WIDTH,
    unit: "%",
    limit: {},
    data: {
      levels: {
        order: drawn.map(({ order }) => order as number),
        phase: drawn.map(({ phase }) => phaseName(phase)),
        value: drawn.map(({ percentile }) => percentile.high as number),
      },
      above: { order: above.map(({ order }) => order as number), value: above.map(levelOf), text: above.map(labelOf) },
      limits: { order: orders, limit: orders.map((order) => limits.get(order) as number) },
    },
    spec: {
      width: FULL_WIDTH - 60,
      height: HEIGHT,
      data: { name: "levels", format: { parse: null } },
      layer: [
        {
          data: { name: "limits" },
          mark: { type: "tick", color: INK, thickness: 3, size: Math.min(30, (0.8 * FULL_WIDTH) / orders.length) },
          encoding: {
            x,
            y: { ...y, field: "limit" },
            tooltip: [
              { field: "order", title: ORDER_WORDS.order },
              { field: "limit", title: limitIn("%") },
            ],
          },
        },
        ...levelLayers(x, y, phases),
        {
          data: { name: "above" },
          mark: { type: "text", dy: -10, fontWeight: "bold" },
          encoding: { x, y: { ...y, field: "value" }, text: { field: "text" } },
        },
      ],
    },
  };
}

/** Where an order failed on some phase, its highest level is written out: the mark alone would not say that it is too high. */
function labelsAbove(rows: readonly Row[]): Row[] {
  const highest = new Map<number, Row>();
  for (const row of rows) {
    if (row.verdict !== "does-not-conform") continue;
    const known = highest.get(row.order as number);
    if (known === undefined || levelOf(row) > levelOf(known)) highest.set(row.order as number, row);
  }
  return [...highest.values()];
}

function levelOf(row: Row): number {
  return row.percentile.high as number;
}

function labelOf(row: Row): Numeral {
  return new Numeral(formatAgainstLimits(levelOf(row), row.limit, 1));
}

/** A stem and a symbol per phase, side by side: the symbol tells the phase without colour. */
export function levelLayers(
  x: Record<string, unknown>,
  y: Record<string, unknown>,
  phases: readonly Phase[],
): unknown[] {
  const style = (key: "color" | "shape") => ({
    field: "phase",
    type: "nominal",
    scale: phaseScale(phases, key),
    legend: phases.length > 1 ? { title: null, orient: "top" } : null,
  });
  const xOffset = { field: "phase", type: "nominal", scale: { domain: phases.map(phaseName), paddingOuter: 0.6 } };
  return [
    {
      mark: { type: "rule", strokeWidth: 1.5 },
      encoding: { x, xOffset, y: { ...y, field: "value" }, y2: { datum: 0 }, color: style("color") },
    },
    {
      mark: { type: "point", filled: true, size: 46, opacity: 1 },
      encoding: {
        x,
        xOffset,
        y: { ...y, field: "value" },
        color: style("color"),
        shape: style("shape"),
        tooltip: [
          { field: "order", title: ORDER_WORDS.order },
          { field: "phase", title: ORDER_WORDS.phase },
          { field: "value", title: inUnit("Uh", "%") },
        ],
      },
    },
  ];
}
