import { chartSections } from "../charts/index.js";
import { eventRecords } from "../events.js";
import { localClock } from "../local-time.js";
import type { Renderer } from "../renderer.js";
import { decidingWeek } from "../rows.js";
import { verdictWord } from "../wording.js";
import { HEADINGS } from "../wording-page.js";
import { chartsSection } from "./charts.js";
import { eventsSection } from "./events.js";
import { evidence } from "./evidence.js";
import { firstScreen } from "./first-screen.js";
import { page } from "./page.js";
import { printedRows } from "./requirements.js";
import { summarySection } from "./summary.js";

export const htmlReport: Renderer = {
  id: "html",
  title: "report.html: statement, tables, charts and evidence in one page that opens offline",
  render: async (assessment, measurements, assets) => {
    const clock = localClock(assessment.recording);
    const week = decidingWeek(assessment);
    const site = assessment.setup.site?.value;
    const title = `${HEADINGS.page}: ${site === undefined ? "" : `${site}, `}${verdictWord(assessment.verdict)}`;
    const content = await page({
      title,
      first: firstScreen(assessment, clock),
      charts: await chartsSection(chartSections(assessment, measurements)),
      events: await eventsSection(assessment, clock, eventRecords(measurements), measurements.eventsSought),
      summary: summarySection(assessment),
      evidence: evidence(assessment),
      printed: week === undefined ? undefined : printedRows(assessment, week, clock),
      vega: await assets.vega(),
    });
    return [{ path: "report.html", content }];
  },
};
