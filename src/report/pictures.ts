import type { ResvgRenderOptions } from "@resvg/resvg-js";
import { UsageError } from "../errors.js";
import type { Measurements } from "../recording/measurements.js";
import type { Assessment } from "../rules/assessment.js";
import { compileChart, drawChart } from "./charts/draw.js";
import { chartSections } from "./charts/index.js";
import { FONT } from "./charts/style.js";
import type { Renderer } from "./renderer.js";

/** Pixels of a PNG per pixel of the drawing: sharp in print. */
const ZOOM = 2;

/** charts/*.svg: each chart of the report with its title and note. */
export const svg: Renderer = {
  id: "svg",
  title: "charts/*.svg: the charts of the report as drawings",
  render: async (assessment, measurements) => {
    const pictures = await draw(assessment, measurements);
    return pictures.map(({ id, picture }) => ({ path: `charts/${id}.svg`, content: `${picture}\n` }));
  },
};

/**
 * charts/*.png: the same as pixels. Needs a font on the machine.
 * @throws UsageError where none is found: pictures without their words would mislead
 */
export const png: Renderer = {
  id: "png",
  title: "charts/*.png: the charts of the report as pictures",
  render: async (assessment, measurements) => {
    if (!(await drawsText(true)))
      throw new UsageError(
        "PNG charts need a font and this machine has none; install one (such as the package fonts-dejavu-core) or ask for svg instead.",
      );
    const { Resvg } = await import("@resvg/resvg-js");
    const pictures = await draw(assessment, measurements);
    return pictures.map(({ id, picture }) => ({
      path: `charts/${id}.png`,
      content: new Uint8Array(new Resvg(picture, options(true)).render().asPng()),
    }));
  },
};

const options = (loadSystemFonts: boolean): ResvgRenderOptions => ({
  font: { loadSystemFonts },
  fitTo: { mode: "zoom", value: ZOOM },
});

/** Whether a letter leaves any mark: without a font it vanishes without a word. */
export async function drawsText(loadSystemFonts: boolean): Promise<boolean> {
  const { Resvg } = await import("@resvg/resvg-js");
  const probe = `<svg xmlns="http://www.w3.org/2000/svg" width="50" height="20"><text y="15" font-family="${FONT}">m</text></svg>`;
  return new Resvg(probe, options(loadSystemFonts)).getBBox() !== undefined;
}

interface Picture {
  readonly id: string;
  readonly picture: string;
}

/** Drawn once for both outputs. */
const drawn = new WeakMap<Assessment, Promise<Picture[]>>();

function draw(assessment: Assessment, measurements: Measurements): Promise<Picture[]> {
  let pictures = drawn.get(assessment);
  if (pictures === undefined) {
    pictures = drawAll(assessment, measurements);
    drawn.set(assessment, pictures);
  }
  return pictures;
}

async function drawAll(assessment: Assessment, measurements: Measurements): Promise<Picture[]> {
  const pictures: Picture[] = [];
  for (const { charts } of chartSections(assessment, measurements))
    for (const chart of charts)
      pictures.push({ id: chart.id, picture: await drawChart(chart, await compileChart(chart, true)) });
  return pictures;
}
