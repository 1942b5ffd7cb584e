import { say, strung } from "../../sentence.js";
import { chartSections } from "../charts/index.js";
import { eventRecords } from "../events.js";
import { inLocalTime, localClock } from "../local-time.js";
import type { Renderer } from "../renderer.js";
import { decidingWeek } from "../rows.js";
import { verdictWord } from "../wording.js";
import { HEADINGS } from "../wording-page.js";
import { chartsSection } from "./charts.js";
import { comparisonSection } from "./comparison.js";
import { complaintsSection } from "./complaints.js";
import { daysSection } from "./days.js";
import { eventsSection } from "./events.js";
import { evidence } from "./evidence.js";
import { firstScreen, hasRequirements } from "./first-screen.js";
import { page } from "./page.js";
import { printedRows } from "./requirements.js";
import { shiftSection } from "./shift.js";
import { slidingSection } from "./sliding.js";
import { summarySection } from "./summary.js";

export const htmlReport: Renderer = {
  id: "html",
  title: "report.html: statement, tables, charts and evidence in one page that opens offline",
  render: async (result, measurements, { language, vega, resultsSha256 }) => {
    const assessment = inLocalTime(result);
    const clock = localClock(assessment.recording);
    const week = decidingWeek(assessment);
    const site = assessment.setup.site?.value;
    const verdict = verdictWord(assessment.verdict);
    const title = say`${HEADINGS.page}: ${site === undefined ? verdict : strung([String(site), verdict], ", ")}`;
    const content = await page({
      language,
      title,
      first: firstScreen(assessment, clock),
      hasRequirements: hasRequirements(week),
      charts: await chartsSection(chartSections(assessment, measurements), language),
      events: await eventsSection(assessment, clock, eventRecords(measurements), measurements.eventsSought, language),
      summary: summarySection(assessment),
      beside: {
        complaints: complaintsSection(assessment),
        comparison: comparisonSection(assessment),
        days: daysSection(assessment, clock),
        shift: await shiftSection(assessment, clock, language),
        sliding: slidingSection(assessment, clock),
      },
      evidence: evidence(assessment, resultsSha256),
      printed: hasRequirements(week) ? printedRows(assessment, week, clock) : undefined,
      vega: await vega(),
    });
    return [{ path: "report.html", content }];
  },
};
