import type { Chart, ChartSection } from "../charts/chart.js";
import { pictureOf } from "../charts/draw.js";
import { FULL_WIDTH } from "../charts/style.js";
import { type Language, translated } from "../languages/language.js";
import { decimalsOf } from "../numbers.js";
import { HEADINGS } from "../wording-page.js";
import { type Html, html, jsonScript, raw, unbroken } from "./html.js";
import type { LiveChart } from "./live/tools.js";
import { SIDEWAYS } from "./table.js";

/** Every chart as a static picture, with what its live view needs beside it; nothing without any. */
export async function chartsSection(sections: readonly ChartSection[], language: Language): Promise<Html | undefined> {
  if (sections.length === 0) return undefined;
  const blocks: Html[] = [];
  for (const { id, heading, charts } of sections) {
    const figures: Html[] = [];
    for (const chart of charts) figures.push(await figure(chart, language));
    blocks.push(html`<section class="quantity" id="${id}"><h3>${heading}</h3>
<div class="figures">${figures}</div></section>\n`);
  }
  return html`<section id="charts"><h2>${HEADINGS.charts}</h2>
${blocks}</section>`;
}

/** One chart: picture, title, note and the data of its live view. */
export async function figure(chart: Chart, language: Language): Promise<Html> {
  const { spec, svg } = await pictureOf(chart, language);
  const { kind, data, extent, offset, unit, limit } = chart;
  const live: LiveChart = {
    kind,
    data: translated(data, language),
    spec,
    limit,
    decimals: decimalsOf(unit),
    unit,
    ...(extent !== undefined && { extent }),
    ...(offset !== undefined && { offset }),
  };
  return html`<figure class="chart ${kind}${chart.width === FULL_WIDTH && " full"}" id="chart-${chart.id}" data-width="${chart.width}" style="max-width:${chart.width}px">
<figcaption>${unbroken(chart.title)}</figcaption>
<div class="picture" role="group" aria-label="${chart.title}">${raw(svg)}</div>
${SIDEWAYS}
<p class="note">${unbroken(chart.note)}</p>
${jsonScript(live)}</figure>
`;
}
