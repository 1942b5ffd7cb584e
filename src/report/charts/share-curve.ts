import { allowedPercent, percentOfShare } from "../numbers.js";
import { phaseName } from "../wording.js";
import { axisTitle, barLabel, SHARE_AXIS, shareNote, shareTitle } from "../wording-charts.js";
import type { Chart, Columns } from "./chart.js";
import { INK, phaseScale } from "./style.js";
import type { Subject, SubjectPhase } from "./subject.js";

const WIDTH = 330;
const HEIGHT = 235;
const MOST_STEPS = 240;
/** At both ends, where limits lie, every value stays. */
const TAIL = 0.1;
/** Percent between two marks of the axis whose numbers would touch. */
const CLOSE = 3;

/** Share of intervals at or below each value, one line per phase; black bars stand where the curve may not pass. */
export function shareCurve(subject: Subject): Chart {
  const curves = subject.phases.map(curve);
  const phases = subject.phases.map(({ phase }) => phase);
  const style = (key: "color" | "dash") => ({
    field: "phase",
    type: "nominal",
    scale: phaseScale(phases, key),
    legend: phases.length > 1 ? { title: null, orient: "top", symbolType: "stroke", symbolSize: 260 } : null,
  });
  const x = {
    type: "quantitative",
    title: axisTitle(subject),
    scale: { zero: false, nice: false, domain: valueDomain(subject, curves) },
    axis: { tickCount: 6 },
  };
  const required = subject.limits[0] === undefined ? 100 : percentOfShare(subject.limits[0].share);
  const y = {
    type: "quantitative",
    title: SHARE_AXIS,
    scale: { domain: [0, 100] },
    axis: { values: shareMarks(required), labelOverlap: false },
  };
  return {
    id: `${subject.id}-shares`,
    title: shareTitle(subject),
    note: shareNote(subject),
    kind: "curve",
    width: WIDTH + 70,
    unit: subject.unit,
    limit: subject.limits[0]?.limit ?? {},
    data: {
      shares: {
        phase: {
          runs: curves.map(({ value }, k) => [phaseName((subject.phases[k] as SubjectPhase).phase), value.length]),
        },
        x: curves.flatMap(({ value }) => value),
        share: curves.flatMap(({ share }) => share),
      },
      bars: bars(subject),
    },
    spec: {
      width: WIDTH,
      height: HEIGHT,
      data: { name: "shares", format: { parse: null } },
      layer: [
        {
          data: { name: "bars" },
          mark: { type: "rule", color: INK, strokeWidth: 4 },
          encoding: { x: { ...x, field: "x" }, y: { ...y, field: "from" }, y2: { field: "to" } },
        },
        {
          data: { name: "bars" },
          mark: {
            type: "text",
            align: { expr: "datum.side === 'max' ? 'right' : 'left'" },
            dx: { expr: "datum.side === 'max' ? -7 : 7" },
            lineBreak: "\n",
            baseline: "top",
          },
          encoding: { x: { ...x, field: "x" }, y: { ...y, field: "labelAt" }, text: { field: "label" } },
        },
        {
          mark: { type: "line", interpolate: "step-after", strokeWidth: 1.8, clip: true },
          encoding: {
            x: { ...x, field: "x" },
            y: { ...y, field: "share" },
            color: style("color"),
            strokeDash: style("dash"),
          },
        },
      ],
    },
  };
}

/** Tenths, the share required, and 100 % unless the two would cover each other. */
function shareMarks(required: number): number[] {
  const top = required > 100 - CLOSE && required < 100 ? [required] : [...new Set([required, 100])];
  return [0, 20, 40, 60, 80, ...top];
}

interface Curve {
  readonly value: number[];
  readonly share: number[];
}

/** Each value that occurs with the share of values up to it; the middle is thinned to what a picture can show. */
function curve({ series, counted }: SubjectPhase): Curve {
  const sorted = Float64Array.from(counted, (i) => series.values[i] as number).sort();
  const value: number[] = [];
  const share: number[] = [];
  const every = Math.ceil(sorted.length / MOST_STEPS);
  let lastKept = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < sorted.length; k++) {
    if (sorted[k + 1] === sorted[k]) continue;
    const isEnd = k < TAIL * sorted.length || k >= (1 - TAIL) * sorted.length;
    if (!isEnd && k < lastKept + every) continue;
    lastKept = k;
    value.push(Number((sorted[k] as number).toPrecision(9)));
    share.push(Number(((100 * (k + 1)) / sorted.length).toFixed(3)));
  }
  return sorted.length === 0 ? { value, share } : { value: [value[0] as number, ...value], share: [0, ...share] };
}

function valueDomain({ limits }: Subject, curves: readonly Curve[]): readonly [number, number] {
  const { min, max } = limits[0]?.limit ?? {};
  const ends = curves.flatMap(({ value }) => [value[0] ?? Number.NaN, value[value.length - 1] ?? Number.NaN]);
  const known = [
    ...ends.filter((v) => !Number.isNaN(v)),
    ...(min === undefined ? [] : [min]),
    ...(max === undefined ? [] : [max]),
  ];
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const margin = (high - low || 1) * 0.05;
  return [low - margin, high + margin];
}

/** Upper limit: from 0 to the share required; lower limit: from the share allowed to 100 %. */
function bars({ limits }: Subject): Columns {
  const [row] = limits;
  const sides = (["min", "max"] as const).filter((side) => row?.limit[side] !== undefined);
  const allowed = row === undefined ? 0 : allowedPercent(row.share);
  return {
    x: sides.map((side) => row?.limit[side] as number),
    from: sides.map((side) => (side === "max" ? 0 : allowed)),
    to: sides.map((side) => (side === "max" ? 100 - allowed : 100)),
    side: sides,
    // In the corners that the curves do not reach: low on the right, high on the left.
    labelAt: sides.map((side) => (side === "max" ? (sides.length === 2 ? 20 : 13) : 98)),
    label: row === undefined ? [] : sides.map((side) => barLabel(side, row)),
  };
}
