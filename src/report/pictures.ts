import type { ResvgRenderOptions } from "@resvg/resvg-js";
import type { Measurements } from "../recording/measurements.js";
import type { Assessment } from "../rules/assessment.js";
import { say, strung, type Text } from "../sentence.js";
import { compileChart, drawChart, lines } from "./charts/draw.js";
import { eventPlots } from "./charts/event-pictures.js";
import { eventScatter } from "./charts/event-scatter.js";
import { chartSections } from "./charts/index.js";
import { drawPlot, type Plot } from "./charts/plot.js";
import { eventRecords, eventTables, SHOWN, tableEdges, worstFirst } from "./events.js";
import { shown } from "./glyphs.js";
import { inLanguage, type Language } from "./languages/language.js";
import { exactLocalTime, instantOf, localClock } from "./local-time.js";
import type { Renderer } from "./renderer.js";
import { boundsBy, courseNote, courseTitle, EVENT_WORDS, kindText, waveformNote } from "./wording-events.js";

/** Pixels of a PNG per pixel of the drawing: sharp in print. */
const ZOOM = 2;
/** Pixels that a character above a picture of an event takes, about. */
const HEADING_CHARACTER = 6.6;

/** charts/*.svg: each chart of the report with its title and note. */
export const svg: Renderer = {
  id: "svg",
  title: "charts/*.svg: the charts of the report as drawings",
  render: async (assessment, measurements, { language }) => {
    const pictures = await draw(assessment, measurements, language);
    return pictures.map(({ id, picture }) => ({ path: `charts/${id}.svg`, content: `${picture}\n` }));
  },
};

/** charts/*.png: the same as pixels. */
export const png: Renderer = {
  id: "png",
  title: "charts/*.png: the charts of the report as pictures",
  render: async (assessment, measurements, { language, fontFiles }) => {
    const { Resvg } = await import("@resvg/resvg-js");
    const pictures = await draw(assessment, measurements, language);
    return pictures.map(({ id, picture }) => ({
      path: `charts/${id}.png`,
      content: new Uint8Array(new Resvg(shown(picture, new Set()), options(fontFiles)).render().asPng()),
    }));
  },
};

const options = (fontFiles: readonly string[]): ResvgRenderOptions => ({
  font: { loadSystemFonts: false, fontFiles: [...fontFiles] },
  fitTo: { mode: "zoom", value: ZOOM },
});

interface Picture {
  readonly id: string;
  readonly picture: string;
}

/** Drawn once for both outputs; kept in the last language asked for. */
const drawn = new WeakMap<Assessment, { readonly language: Language; readonly pictures: Promise<Picture[]> }>();

function draw(assessment: Assessment, measurements: Measurements, language: Language): Promise<Picture[]> {
  const known = drawn.get(assessment);
  if (known?.language === language) return known.pictures;
  const pictures = drawAll(assessment, measurements, language);
  drawn.set(assessment, { language, pictures });
  return pictures;
}

async function drawAll(assessment: Assessment, measurements: Measurements, language: Language): Promise<Picture[]> {
  const scatter = eventScatter(assessment);
  const charts = [
    ...(scatter === undefined ? [] : [scatter]),
    ...chartSections(assessment, measurements).flatMap((section) => section.charts),
  ];
  const pictures: Picture[] = [];
  for (const chart of charts)
    pictures.push({
      id: chart.id,
      picture: await drawChart(chart, language, await compileChart(chart, language, true)),
    });
  return [...pictures, ...eventPictures(assessment, measurements, language)];
}

/** The course and the waveform of the worst events. */
function eventPictures(assessment: Assessment, measurements: Measurements, language: Language): Picture[] {
  const tables = eventTables(assessment);
  const recordOf = eventRecords(measurements);
  const boundsOf = boundsBy(tables);
  const clock = localClock(assessment.recording);
  return worstFirst(assessment.events)
    .slice(0, SHOWN)
    .flatMap((event, i) => {
      const record = recordOf(event);
      const { course, waveform } = eventPlots(event, record, tableEdges(tables));
      const when = strung([kindText(event), exactLocalTime(clock, instantOf(event.start))], ", ");
      const heading = (plot: Plot, ...texts: readonly Text[]) =>
        texts.flatMap((text) => lines(inLanguage(text, language), plot.width / HEADING_CHARACTER));
      const draw = (name: string, plot: Plot | undefined, title: Text, note: Text): Picture[] => {
        if (plot === undefined) return [];
        const id = `event-${String(i + 1).padStart(2, "0")}-${name}`;
        return [{ id, picture: drawPlot(plot, language, heading(plot, say`${title}: ${when}`, note)) }];
      };
      return [
        ...draw("course", course, courseTitle(event, boundsOf(event)), courseNote(event, record)),
        ...draw("waveform", waveform, EVENT_WORDS.waveformTitle, waveformNote(record)),
      ];
    });
}
