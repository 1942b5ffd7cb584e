import { Numeral, type Text } from "../../sentence.js";
import { inLanguage, type Language } from "../languages/language.js";
import { fixed } from "../numbers.js";
import { FAINT, FONT, INK, type PhaseStyle } from "./style.js";

/**
 * Small static pictures of lines over time, written as SVG without a chart library: a page holds dozens of them, each
 * made in about a millisecond. Lengths are pixels.
 */
export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly panels: readonly Panel[];
  readonly legend: readonly { readonly name: Text; readonly style: PhaseStyle }[];
}

type Range = readonly [number, number];

export interface Panel {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly x: Range;
  readonly y: Range;
  /** Without a title an axis has no numbers either. */
  readonly xTitle?: Text;
  readonly yTitle?: Text;
  readonly lines: readonly PlotLine[];
  readonly levels: readonly Level[];
  /** A stretch of x to set off. */
  readonly field: Range;
}

/** A horizontal line with its name above or below it. */
export interface Level {
  readonly y: number;
  readonly name: Text;
  readonly isNamedBelow: boolean;
}

export interface PlotLine {
  readonly style: PhaseStyle;
  /** Rising. */
  readonly x: ArrayLike<number>;
  /** Equally long; NaN breaks the line. */
  readonly y: ArrayLike<number>;
}

const FONT_SIZE = 13;
const LINE_HEIGHT = 15;
/** Nearer to the end of an axis than this no number is written: it would run into that of the next panel. */
const EDGE = 9;
const FIELD = "#ecefe4";

/** @param heading lines of text above the picture, which then stands by itself and gets a white ground */
export function drawPlot(
  { width, height, panels, legend }: Plot,
  language: Language,
  heading: readonly string[] = [],
): string {
  const text = textIn(language);
  const above = heading.length * LINE_HEIGHT;
  const texts = heading.map((line, i) =>
    text(8, (i + 1) * LINE_HEIGHT - 3, line, i === 0 ? ' font-weight="bold"' : ""),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height + above}" width="${width}" height="${height + above}" font-family="${FONT}" font-size="${FONT_SIZE}" fill="${INK}">${above > 0 ? '<rect width="100%" height="100%" fill="#ffffff"/>' : ""}${texts.join("")}<g transform="translate(0,${above})">${drawLegend(legend, text)}${panels.map((panel) => drawPanel(panel, text)).join("")}</g></svg>`;
}

function drawLegend(legend: Plot["legend"], text: DrawText): string {
  return legend
    .map(({ name, style }, i) => {
      const x = 8 + i * 72;
      return `<path d="M${x},9h26" ${stroke(style, 2, 1)}/>${text(x + 31, 13, name)}`;
    })
    .join("");
}

function drawPanel(panel: Panel, text: DrawText): string {
  const { left, top, width, height, field } = panel;
  const x = scale(panel.x, left, left + width);
  const y = scale(panel.y, top + height, top);
  const clamped = (value: number) => Math.min(Math.max(x(value), left), left + width);
  const [from, to] = [clamped(field[0]), clamped(field[1])];
  return [
    `<rect x="${short(from)}" y="${top}" width="${short(to - from)}" height="${height}" fill="${FIELD}"/>`,
    panel.yTitle === undefined ? "" : drawYAxis(panel, y, panel.yTitle, text),
    panel.xTitle === undefined ? "" : drawXAxis(panel, x, panel.xTitle, text),
    `<rect x="${left}" y="${top}" width="${width}" height="${height}" fill="none" stroke="#bbbbbb"/>`,
    ...panel.levels.map(
      (level) =>
        `<path d="M${left},${short(y(level.y))}h${width}" stroke="${INK}" stroke-dasharray="6 3"/>${text(left + 4, short(y(level.y) + (level.isNamedBelow ? 14 : -4)), level.name)}`,
    ),
    ...panel.lines.map((line) => drawLine(line, x, y)),
  ].join("");
}

function drawYAxis({ left, top, width, height, y: range }: Panel, y: Scale, title: Text, text: DrawText): string {
  const { values, decimals } = ticks(range, height / 38);
  const marks = values.map(
    (value) =>
      `<path d="M${left},${short(y(value))}h${width}" stroke="${FAINT}"/>${text(left - 5, short(y(value) + 4), new Numeral(fixed(value, decimals)), ' text-anchor="end"')}`,
  );
  const middle = top + height / 2;
  return `${marks.join("")}${text(0, 0, title, ` text-anchor="middle" transform="translate(12,${short(middle)}) rotate(-90)"`)}`;
}

function drawXAxis({ left, top, width, height, x: range }: Panel, x: Scale, title: Text, text: DrawText): string {
  const { values, decimals } = ticks(range, width / 70);
  const bottom = top + height;
  const isInside = (value: number) => x(value) > left + EDGE && x(value) < left + width - EDGE;
  const marks = values
    .filter(isInside)
    .map(
      (value) =>
        `<path d="M${short(x(value))},${bottom}v4" stroke="${INK}"/>${text(short(x(value)), bottom + 16, new Numeral(fixed(value, decimals)), ' text-anchor="middle"')}`,
    );
  return `${marks.join("")}${text(left + width / 2, bottom + 32, title, ' text-anchor="middle"')}`;
}

/** The line in half pixels, so that its path needs no decimals. */
function drawLine({ style, x: xs, y: ys }: PlotLine, x: Scale, y: Scale): string {
  return `<path transform="scale(.5)" d="${linePath(xs, ys, x, y)}" ${stroke(style, 1.4, 2)}/>`;
}

/** Of the points that share a column of pixels the first, the lowest, the highest and the last, so that no extreme is lost. */
export function linePath(xs: ArrayLike<number>, ys: ArrayLike<number>, x: Scale, y: Scale): string {
  let path = "";
  let pen: readonly [number, number] | undefined;
  const go = (px: number, py: number) => {
    if (pen === undefined) path += `M${px} ${py}`;
    else if (pen[0] !== px || pen[1] !== py) path += `l${px - pen[0]} ${py - pen[1]}`;
    pen = [px, py];
  };
  let [column, low, high, last] = [Number.NaN, 0, 0, 0];
  const flush = () => {
    if (Number.isNaN(column)) return;
    if (low !== last) go(column, low);
    if (high !== last && high !== low) go(column, high);
    go(column, last);
    column = Number.NaN;
  };
  for (let i = 0; i < xs.length; i++) {
    const value = ys[i] as number;
    if (Number.isNaN(value)) {
      flush();
      pen = undefined;
      continue;
    }
    const [px, py] = [Math.round(2 * x(xs[i] as number)), Math.round(2 * y(value))];
    if (px !== column) {
      flush();
      go(px, py);
      [column, low, high] = [px, py, py];
    }
    [low, high, last] = [Math.min(low, py), Math.max(high, py), py];
  }
  flush();
  return path;
}

export type Scale = (value: number) => number;

export function scale([from, to]: Range, start: number, end: number): Scale {
  const perUnit = (end - start) / (to - from || 1);
  return (value) => start + (value - from) * perUnit;
}

/** Round numbers, in steps of 1, 2 or 5 times a power of ten, about `count` of them. */
export function ticks([from, to]: Range, count: number): { readonly values: number[]; readonly decimals: number } {
  const rough = (to - from || 1) / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const values: number[] = [];
  for (let k = first; k * step <= to + 1e-9 * step; k++) values.push(k * step);
  return { values, decimals: Math.max(0, -Math.floor(Math.log10(step) + 1e-9)) };
}

function stroke({ color, dash }: PhaseStyle, width: number, zoom: number): string {
  const dashes = dash[1] === 0 ? "" : ` stroke-dasharray="${dash.map((length) => length * zoom).join(" ")}"`;
  return `fill="none" stroke="${color}" stroke-width="${width * zoom}"${dashes}`;
}

type DrawText = (x: number, y: number, content: Text, more?: string) => string;

function textIn(language: Language): DrawText {
  return (x, y, content, more = "") =>
    `<text x="${x}" y="${y}"${more}>${escapeXml(inLanguage(content, language))}</text>`;
}

function escapeXml(content: string): string {
  return content.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}

function short(value: number): number {
  return Number(value.toFixed(1));
}
