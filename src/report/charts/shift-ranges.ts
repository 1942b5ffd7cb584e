import type { Text } from "../../sentence.js";
import { oncePer } from "../once.js";
import {
  SHIFT_CHART_NOTE,
  SHIFT_WORDS,
  type Shift,
  type ShiftPeriod,
  shiftChartTitle,
  stepText,
} from "../wording-shift.js";
import type { Chart } from "./chart.js";
import { INK } from "./style.js";

const WIDTH = 420;
const ROW_HEIGHT = 26;
/** Room beside the outermost step. */
const MARGIN = 1.5;

/** Of each phase and of all together the shifts that keep every voltage limit, with the tap steps. */
export const shiftChart = oncePer(({ steps }: Shift, period: ShiftPeriod): Chart => {
  const edge = MARGIN * Math.max(...steps.map(({ volts }) => Math.abs(volts)));
  const rows: [Text, ShiftPeriod["all"]][] = [
    ...period.phases.map(({ phase, ranges }): [Text, ShiftPeriod["all"]] => [phase, ranges]),
    ...(period.phases.length > 1 ? [[SHIFT_WORDS.all, period.all] as [Text, ShiftPeriod["all"]]] : []),
  ];
  const bars = rows.flatMap(([name, ranges], row) =>
    (ranges ?? []).flatMap(({ from = -edge, to = edge }) =>
      from <= edge && to >= -edge ? [{ name, row, from: Math.max(from, -edge), to: Math.min(to, edge) }] : [],
    ),
  );
  const names = rows.map(([name]) => name);
  const y = { type: "nominal", scale: { domain: names }, title: null, sort: null };
  const x = { type: "quantitative", scale: { domain: [-edge, edge], nice: false } };
  return {
    id: "voltage-shift",
    title: shiftChartTitle(period),
    note: SHIFT_CHART_NOTE,
    kind: "marks",
    width: WIDTH + 90,
    unit: "V",
    limit: {},
    data: {
      bars: {
        name: bars.map(({ name }) => name),
        from: bars.map(({ from }) => from),
        to: bars.map(({ to }) => to),
      },
      steps: { at: steps.map(({ volts }) => volts), label: steps.map(({ percent }) => stepText(percent)) },
    },
    spec: {
      width: WIDTH,
      height: ROW_HEIGHT * rows.length,
      layer: [
        {
          data: { name: "bars" },
          mark: { type: "bar", height: 12, color: "#8f8f8f", stroke: INK },
          encoding: {
            y: { ...y, field: "name" },
            x: { ...x, field: "from", title: SHIFT_WORDS.axis, axis: { tickCount: 6 } },
            x2: { field: "to" },
          },
        },
        {
          data: { name: "steps" },
          mark: { type: "rule", color: INK, strokeDash: [5, 3] },
          encoding: { x: { ...x, field: "at" } },
        },
        {
          data: { name: "steps" },
          mark: { type: "text", baseline: "bottom", dy: -4 },
          encoding: { x: { ...x, field: "at" }, y: { value: 0 }, text: { field: "label" } },
        },
      ],
    },
  };
});
