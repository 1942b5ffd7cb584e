import type { Measurements } from "../../recording/measurements.js";
import type { Assessment } from "../../rules/assessment.js";
import { resultsText } from "../json.js";
import { inLocalTime, instantOf, localClock } from "../local-time.js";
import type { RenderContext, Renderer } from "../renderer.js";
import { HEADINGS } from "../wording-page.js";
import { endText, headHash, headNumber, MACHINE_NOTE, PAGE_OF, SETUP_NOTE } from "../wording-report.js";
import { glossary, proof } from "./annex.js";
import { beside } from "./beside.js";
import { compilePdf, type Document } from "./compile.js";
import { events } from "./events.js";
import { findings, recordingLedger, ruleSet, setupAndInstrument } from "./evidence.js";
import { exclusions } from "./exclusions.js";
import { pictures } from "./pictures.js";
import { plainPage } from "./plain-page.js";
import { everyRow, requirementsTable } from "./requirements.js";
import { aboutReport, conformity } from "./statement.js";
import { summary } from "./summary.js";

/**
 * report.pdf: one page for everybody, then the whole result for engineers and lawyers; PDF/A-3, tagged, with results.json
 * inside. Its date is the end of the recording.
 */
export const pdfReport: Renderer = {
  id: "pdf",
  title: "report.pdf: the report on paper, with a first page in plain words and results.json attached",
  render: async (result, measurements, context) => {
    const document = await reportDocument(result, measurements, context);
    const template = await context.packaged("assets/report.typ");
    return [{ path: "report.pdf", content: await compilePdf(document, template, context) }];
  },
};

export async function reportDocument(
  result: Assessment,
  measurements: Measurements,
  { language, packaged, setup, resultsSha256 }: RenderContext,
): Promise<Document> {
  const assessment = inLocalTime(result);
  const { report, recording, sources } = assessment;
  const clock = localClock(recording);
  return {
    title: HEADINGS.page,
    head: { left: headNumber(report.number), right: headHash(sources) },
    page: PAGE_OF,
    date: instantOf(recording.end),
    first: plainPage(assessment, measurements, clock),
    blocks: [
      ...aboutReport(assessment, resultsSha256),
      { kind: "contents", text: HEADINGS.contents },
      { kind: "page" },
      ...conformity(assessment, clock),
      ...requirementsTable(assessment, clock),
      ...(await pictures(assessment, measurements, language)),
      ...(await events(assessment, measurements, clock, language)),
      ...summary(assessment),
      ...(await beside(assessment, clock, language)),
      ...recordingLedger(assessment),
      ...findings(assessment),
      ...exclusions(assessment, clock),
      ...setupAndInstrument(assessment),
      ...ruleSet(assessment),
      ...everyRow(assessment, clock),
      ...proof(JSON.parse(await packaged("assets/proof.json"))),
      ...glossary(),
      { kind: "end", text: endText(report.number) },
    ],
    attached: [
      ...(setup === undefined
        ? []
        : [
            {
              name: "setup.yaml",
              content: setup,
              type: "application/yaml",
              relationship: "source" as const,
              description: SETUP_NOTE,
            },
          ]),
      {
        name: "results.json",
        content: resultsText(result),
        type: "application/json",
        relationship: "data",
        description: MACHINE_NOTE,
      },
    ],
  };
}
