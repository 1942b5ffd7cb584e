import { QUANTITIES } from "../../recording/quantity.js";
import type { Assessment, Row } from "../../rules/assessment.js";
import { finestSummary, type Summary } from "../rows.js";
import { phaseName } from "../wording.js";
import { inUnit } from "../wording-charts.js";
import { limitIn, ORDER_WORDS } from "../wording-harmonics.js";
import { SPECTRUM_WORDS, spectrumNote, spectrumTitle } from "../wording-spectrum.js";
import type { Chart } from "./chart.js";
import { levelLayers } from "./harmonics.js";
import { FULL_WIDTH, INK } from "./style.js";

const HEIGHT = 230;

/** What is shown by order. */
export type SpectrumQuantity = keyof typeof SPECTRUM_WORDS;

/** Mean and highest value of each order over the whole recording, beside the limits that longer recordings are judged by. */
export function spectrum(
  assessment: Assessment,
  quantity: SpectrumQuantity,
  limits: readonly Row[],
): Chart | undefined {
  const levels = spectrumLevels(assessment, quantity);
  if (levels.length === 0) return undefined;
  const limitOf = new Map(limits.map((row) => [row.order as number, row.limit.max as number]));
  const orders = [...new Set([...levels.map(({ order }) => order as number), ...limitOf.keys()])].sort((a, b) => a - b);
  const limited = [...limitOf.keys()];
  const phases = [...new Set(levels.map(({ phase }) => phase))];
  const { symbol, unit } = QUANTITIES[quantity];
  const { order: orderTitle, id } = SPECTRUM_WORDS[quantity];
  const highest = Math.max(...levels.map(({ max }) => max), ...limitOf.values());
  const x = {
    field: "order",
    type: "ordinal",
    title: orderTitle,
    scale: { domain: orders },
    axis: { labelAngle: 0, ticks: false },
  };
  const y = {
    type: "quantitative",
    title: inUnit(symbol, unit),
    scale: { domain: [0, 1.08 * (highest || 1)], nice: false },
    axis: { tickCount: 6 },
  };
  const xOffset = { field: "phase", type: "nominal", scale: { domain: phases.map(phaseName), paddingOuter: 0.6 } };
  return {
    id,
    title: spectrumTitle(quantity, levels, limits),
    note: spectrumNote(assessment, levels, limits),
    kind: "marks",
    width: FULL_WIDTH,
    unit,
    limit: {},
    data: {
      levels: {
        order: levels.map(({ order }) => order as number),
        phase: levels.map(({ phase }) => phaseName(phase)),
        value: levels.map(({ mean }) => fourDigits(mean)),
        highest: levels.map(({ max }) => fourDigits(max)),
      },
      limits: { order: limited, limit: limited.map((order) => limitOf.get(order) as number) },
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
              { field: "limit", title: limitIn(unit) },
            ],
          },
        },
        {
          mark: { type: "rule", strokeWidth: 1, color: "#777777" },
          encoding: { x, xOffset, y: { ...y, field: "value" }, y2: { field: "highest" } },
        },
        {
          mark: { type: "tick", thickness: 1.5, size: 5, color: "#777777" },
          encoding: { x, xOffset, y: { ...y, field: "highest" } },
        },
        ...levelLayers(x, y, phases),
      ],
    },
  };
}

/** Every order and phase at the finest interval; of the currents without the fundamental, which would dwarf the rest. */
function spectrumLevels(assessment: Assessment, quantity: SpectrumQuantity): Summary[] {
  return finestSummary(assessment).filter(
    (s) => s.quantity === quantity && s.order !== undefined && !(quantity === "harmonic-current" && s.order === 1),
  );
}

function fourDigits(value: number): number {
  return Number(value.toPrecision(4));
}
