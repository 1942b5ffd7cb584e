import type { Measurements } from "../../recording/measurements.js";
import type { Assessment } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";
import type { Chart } from "../charts/chart.js";
import { pictureOf } from "../charts/draw.js";
import { chartSections } from "../charts/index.js";
import { drawPlot, type Plot } from "../charts/plot.js";
import { FULL_WIDTH } from "../charts/style.js";
import type { Language } from "../languages/language.js";
import { HEADINGS } from "../wording-page.js";
import { type Block, heading, type PictureBlock } from "./blocks.js";

/** The charts of the report, in the same order as on the page for screens. */
export async function pictures(
  assessment: Assessment,
  measurements: Measurements,
  language: Language,
): Promise<Block[]> {
  const sections = chartSections(assessment, measurements);
  if (sections.length === 0) return [];
  const blocks: Block[] = [heading(1, HEADINGS.charts)];
  for (const section of sections) {
    blocks.push(heading(2, section.heading));
    const [course, ...others] = section.charts;
    if (course !== undefined) blocks.push(await chartPicture(course, language));
    const drawn: PictureBlock[] = [];
    for (const chart of others) drawn.push(await chartPicture(chart, language));
    if (drawn.length > 0) blocks.push({ kind: "beside", pictures: drawn });
  }
  return blocks;
}

export async function chartPicture(chart: Chart, language: Language): Promise<PictureBlock> {
  const { svg } = await pictureOf(chart, language);
  const width = Math.min(1, chart.width / FULL_WIDTH);
  return { kind: "picture", svg, title: chart.title, alt: chart.title, note: chart.note, width };
}

export function plotPicture(plot: Plot, title: Text, note: Text, language: Language): PictureBlock {
  return { kind: "picture", svg: drawPlot(plot, language), title, alt: title, note, width: 1 };
}
