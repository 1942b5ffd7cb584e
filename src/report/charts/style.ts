import type { Phase } from "../../recording/quantity.js";
import { phaseName } from "../wording.js";

/**
 * Colours by Okabe and Ito ("Color Universal Design", 2008), told apart with the common forms of colour blindness.
 * Colour never stands alone: phases also differ by dash, symbol and name, values outside by a triangle.
 */
export const INK = "#222222";
export const FAINT = "#e4e4e4";
export const BAND = "#f1f3ee";
export const EXCLUDED = "#d5d2ca";
export const OUTSIDE = "#b3261e";
const BLUE = "#0072b2";
const VERMILLION = "#d55e00";
const GREEN = "#009e73";
const PURPLE = "#7b3294";

/** PDF and PNG have the first one from the program's own files; a reader's browser takes what it has. */
export const FONT = "'Noto Sans', 'Liberation Sans', 'DejaVu Sans', Arial, Helvetica, sans-serif";

export interface PhaseStyle {
  readonly color: string;
  readonly dash: readonly number[];
  readonly shape: string;
}

const FIRST: PhaseStyle = { color: BLUE, dash: [1, 0], shape: "circle" };
const SECOND: PhaseStyle = { color: VERMILLION, dash: [7, 3], shape: "square" };
const THIRD: PhaseStyle = { color: GREEN, dash: [2, 2], shape: "triangle-up" };
const OTHER: PhaseStyle = { color: PURPLE, dash: [1, 0], shape: "diamond" };

const STYLES: Readonly<Record<Phase, PhaseStyle>> = {
  L1: FIRST,
  L2: SECOND,
  L3: THIRD,
  L12: FIRST,
  L23: SECOND,
  L31: THIRD,
  N: OTHER,
  system: OTHER,
};

export function phaseStyle(phase: Phase): PhaseStyle {
  return STYLES[phase];
}

/** A Vega-Lite scale that gives each phase its own value of a style. */
export function phaseScale(phases: readonly Phase[], key: keyof PhaseStyle): Record<string, unknown> {
  return { domain: phases.map(phaseName), range: phases.map((phase) => STYLES[phase][key]) };
}

export const CONFIG = {
  background: "transparent",
  font: FONT,
  aria: false,
  axis: {
    labelFontSize: 11,
    titleFontSize: 11,
    titleFontWeight: "normal",
    labelColor: INK,
    titleColor: INK,
    domainColor: INK,
    tickColor: INK,
    gridColor: FAINT,
  },
  legend: { labelFontSize: 11, titleFontSize: 11, symbolStrokeWidth: 2, symbolSize: 90, labelColor: INK },
  header: { labelFontSize: 12, labelFontWeight: "bold", labelColor: INK },
  text: { fontSize: 11, color: INK, font: FONT },
  title: { fontSize: 14, subtitleFontSize: 11, anchor: "start", color: INK, subtitleColor: INK, offset: 12 },
  view: { stroke: "#bbbbbb" },
} as const;

/** Width in pixels of a picture that takes the whole page, axis labels included. */
export const FULL_WIDTH = 960;
