import type { Spec } from "vega";
import type { TopLevelSpec } from "vega-lite";
import { inLanguage, type Language, type Translated, translated } from "../languages/language.js";
import { type Chart, rowsOf } from "./chart.js";
import { CONFIG } from "./style.js";

/** Pixels that a character of the title and of the note takes, about. */
const TITLE_CHARACTER = 7.8;
const NOTE_CHARACTER = 5.8;

/** Vega's own specification of a chart; the named data sets are still empty. */
export async function compileChart(chart: Chart, language: Language, withText: boolean): Promise<Spec> {
  const { compile } = await import("vega-lite");
  const title = withText
    ? {
        title: {
          text: lines(inLanguage(chart.title, language), chart.width / TITLE_CHARACTER),
          subtitle: lines(inLanguage(chart.note, language), chart.width / NOTE_CHARACTER),
        },
        padding: 12,
      }
    : { padding: 4 };
  const look = { ...CONFIG, ...localeOf(language) };
  const config = withText ? { ...look, background: "white" } : look;
  // The specifications are built here as plain data; Vega-Lite's own check of them runs in the tests.
  const spec = { ...translated(chart.spec, language), ...title, config, autosize: "pad" } as unknown as TopLevelSpec;
  return compile(spec, { logger: silent }).spec;
}

/** Numbers on axes and under the pointer as the language writes them; without separators of thousands, as everywhere. */
function localeOf({ decimalMark }: Language): Record<string, unknown> {
  if (decimalMark === ".") return {};
  return { locale: { number: { decimal: decimalMark, thousands: "", grouping: [3], currency: ["", ""] } } };
}

/**
 * Width of a text in pixels, for placing things beside it where there is no browser to measure it. Widths per
 * character in parts of the font size, about those of common sans-serif fonts.
 */
function textWidth(text: string, fontSize: number): number {
  let width = 0;
  for (const character of text)
    width += /[ .,:;|!'ijltf()]/.test(character) ? 0.29 : /[A-Zmw%+−]/.test(character) ? 0.72 : 0.55;
  return width * fontSize;
}

/** Vega asks this in place of its own guess, which is half as wide again; its type definitions do not list it. */
function useTextWidth(vega: object): void {
  const { textMetrics } = vega as {
    textMetrics: { width: (item: { text?: unknown; fontSize?: number }, text?: unknown) => number };
  };
  textMetrics.width = (item, text) => textWidth(String(text ?? item.text), item.fontSize ?? 11);
}

interface Picture {
  readonly spec: Spec;
  readonly svg: string;
}

/** Each chart is drawn once for all outputs; kept in the last language asked for. */
const drawn = new WeakMap<Chart, { readonly language: Language; readonly picture: Promise<Picture> }>();

/** A chart without title and note, for a page that prints these itself. */
export function pictureOf(chart: Chart, language: Language): Promise<Picture> {
  const known = drawn.get(chart);
  if (known?.language === language) return known.picture;
  const picture = compileChart(chart, language, false).then(async (spec) => ({
    spec,
    svg: await drawChart(chart, language, spec),
  }));
  drawn.set(chart, { language, picture });
  return picture;
}

/** The chart as a static SVG picture. Ids inside it carry the chart's id, so that several can share a page. */
export async function drawChart(chart: Chart, language: Language, spec: Spec): Promise<string> {
  const vega = await import("vega");
  useTextWidth(vega);
  vega.resetSVGDefIds();
  const view = new vega.View(vega.parse(withData(spec, translated(chart.data, language))), { renderer: "none" });
  const svg = await view.toSVG();
  view.finalize();
  return unique(shortPaths(withoutRoles(svg)), chart.id);
}

export function withData(spec: Spec, columnSets: Translated<Chart["data"]>): Spec {
  const data = (spec.data ?? []).map((set) => {
    const columns = columnSets[set.name];
    return columns === undefined ? set : { ...set, values: rowsOf(columns) };
  });
  return { ...spec, data } as Spec;
}

/** Titles come with English labels for assistive technology, which say no more than their own text. */
function withoutRoles(svg: string): string {
  return svg.replace(/ role="graphics-symbol" aria-roledescription="(?:sub)?title" aria-label="[^"]*"/g, "");
}

/** A tenth of a pixel is finer than any screen or printer shows. */
function shortPaths(svg: string): string {
  return svg.replace(/ d="[^"]*"/g, (path) => path.replace(/(\.\d)\d+/g, "$1"));
}

function unique(svg: string, id: string): string {
  return svg.replace(/(id="|url\(#)(clip|gradient)/g, `$1${id}-$2`);
}

/** A text in lines of at most so many characters. */
export function lines(text: string, columns: number): string[] {
  const broken: string[] = [];
  let current = "";
  for (const word of text.split(" ")) {
    if (current !== "" && current.length + 1 + word.length > columns) {
      broken.push(current);
      current = word;
    } else current = current === "" ? word : `${current} ${word}`;
  }
  return [...broken, current];
}

const silent = {
  level: () => silent,
  error: () => silent,
  warn: () => silent,
  info: () => silent,
  debug: () => silent,
};
