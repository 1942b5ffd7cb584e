import { describe, expect, it } from "vitest";
import { SHOWN } from "../../src/report/events.js";
import { coveredCharacters } from "../../src/report/glyphs.js";
import { resultsText } from "../../src/report/json.js";
import { ENGLISH, inLanguage } from "../../src/report/languages/language.js";
import { inLocalTime, localClock } from "../../src/report/local-time.js";
import { compilePdf } from "../../src/report/pdf/compile.js";
import { LISTED } from "../../src/report/pdf/events.js";
import { pdfReport, reportDocument } from "../../src/report/pdf/index.js";
import { decidingWeek } from "../../src/report/rows.js";
import {
  allowedText,
  foundText,
  limitText,
  percentileText,
  worstText,
  worstTimeText,
} from "../../src/report/wording.js";
import { complaintText } from "../../src/report/wording-complaints.js";
import { samplingRows } from "../../src/report/wording-sampling.js";
import { statement } from "../../src/report/wording-statement.js";
import type { Text } from "../../src/sentence.js";
import { describeWithPoppler, plain, type ReadPdf, readPdf } from "../support/poppler.js";
import { madeEvent, madeRecord } from "./event-support.js";
import { CONTEXT, type Report, type SampleOptions, sampleReport } from "./support.js";

async function rendered({ assessment, measurements }: Report): Promise<Uint8Array> {
  const [file] = await pdfReport.render(assessment, measurements, CONTEXT);
  return file?.content as Uint8Array;
}

const told = (text: Text) => plain(inLanguage(text, ENGLISH));
const unspaced = (text: string) => text.replaceAll(" ", "");
const whole = ({ pages }: ReadPdf) => pages.join(" ");
const read = async (options: SampleOptions) => readPdf(await rendered(await sampleReport(options)));

describeWithPoppler("report.pdf", async () => {
  const report = await sampleReport({ orders: 6 });
  const bytes = await rendered(report);
  const pdf = readPdf(bytes);
  const result = inLocalTime(report.assessment);

  it("is a tagged PDF/A-3a of A4 pages, titled, dated at the end of the recording, in the name of nobody", () => {
    expect(pdf.info.get("Title")).toBe("Supply voltage conformance report");
    expect(pdf.info.get("Tagged")).toBe("yes");
    expect(pdf.info.get("Page size")).toContain("A4");
    expect(pdf.info.get("PDF version")).toBe("1.7");
    expect(pdf.info.get("CreationDate")).toBe("2026-03-08T23:00:00Z");
    expect(pdf.info.get("ModDate")).toBe("2026-03-08T23:00:00Z");
    expect(pdf.info.has("Author")).toBe(false);
    const raw = Buffer.from(bytes).toString("latin1");
    expect(raw).toContain("<pdfaid:part>3</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>");
    expect(raw).toContain("/Lang (en)");
    expect(raw).toContain("/AFRelationship /Data");
    expect(raw.match(/\/Alt [(<]/g)?.length).toBeGreaterThan(10);
  });

  it("keeps the rules of PDF/UA-1 as well: headings in order, every picture with a text", async () => {
    const document = await reportDocument(report.assessment, report.measurements, CONTEXT);
    const template = await CONTEXT.packaged("assets/report.typ");
    expect((await compilePdf(document, template, CONTEXT, "ua-1")).length).toBeGreaterThan(10_000);
    const silent = {
      ...document,
      blocks: document.blocks.map((block) => (block.kind === "picture" ? { ...block, alt: "" } : block)),
    };
    await expect(compilePdf(silent, template, CONTEXT, "ua-1")).rejects.toThrow(/alt/);
  });

  it("carries results.json, and the setup of a report folder, byte for byte", async () => {
    expect([...pdf.attached.keys()]).toEqual(["results.json"]);
    expect(pdf.attached.get("results.json")?.toString("utf8")).toBe(resultsText(report.assessment));
    const setup = "site: Bäckerei # first\n";
    const context = { ...CONTEXT, setup, resultsSha256: "cd".repeat(32) };
    const [file] = await pdfReport.render(report.assessment, report.measurements, context);
    const inFolder = readPdf(file?.content as Uint8Array);
    expect(inFolder.attached.get("setup.yaml")?.toString("utf8")).toBe(setup);
    expect(inFolder.attached.get("results.json")?.toString("utf8")).toBe(resultsText(report.assessment));
    expect(inFolder.pages[1]?.replaceAll(" ", "")).toContain("cd".repeat(32));
  });

  it("prints the statement and every counted row with the numbers of the result", () => {
    const text = whole(pdf);
    // A line may end within "ten-minute".
    expect(unspaced(text)).toContain(unspaced(told(statement(result).sentence)));
    const rows = decidingWeek(result)?.requirements ?? [];
    expect(rows.length).toBeGreaterThan(20);
    const clock = localClock(result.recording);
    for (const row of rows)
      for (const part of [limitText(row), allowedText(row), foundText(row), worstText(row), worstTimeText(row, clock)])
        expect(text).toContain(told(part));
  });

  it("prints in its annex the values at the required share and the sampling intervals, as the page for screens does", () => {
    const text = whole(pdf);
    const rows = decidingWeek(result)?.requirements ?? [];
    for (const row of rows) expect(text).toContain(told(percentileText(row)));
    const lines = samplingRows(result);
    expect(lines.length).toBeGreaterThan(4);
    for (const line of lines) expect(text).toContain(line.map(told).join(" "));
    expect(text).not.toContain("With / without flagged");
  });

  it("numbers its pages, with the report's number and the log's hash on each, and says where it ends", () => {
    expect(pdf.pages.length).toBe(Number(pdf.info.get("Pages")));
    pdf.pages.forEach((page, i) => {
      expect(page).toContain(`Page ${i + 1} of ${pdf.pages.length}`);
      expect(page).toContain("Report number: not stated");
      expect(page).toContain("abababababababab");
    });
    expect(pdf.pages.at(-1)).toContain("End of the report");
  });

  it("begins with one page in plain words: units spelled out, no symbols and abbreviations", () => {
    const [first = "", second = ""] = pdf.pages;
    expect(second).toContain("1 About this report");
    for (const question of [
      "What was promised?",
      "What was measured?",
      "Was the measuring sound?",
      "Was a rule broken?",
    ])
      expect(first).toContain(question);
    expect(first).toContain("What happens next?");
    const words = first.replace(/^.*?plain words/, "").replace(/Supply voltage conformance report.*$/, "");
    expect(words).toMatch(
      /Voltage on phase L2: \d+ of 1008 ten-minute averages were above 253\.0 volts; allowed are 50\./,
    );
    expect(words).not.toMatch(/r\.m\.s|\brms\b|THD|\bU[nc]\b|Pst|Plt|\bu2\b|\d ?(V|Hz|%)(?!\w)/);
  });

  it("says “not stated” for whatever a report must name and the setup does not", () => {
    const about = pdf.pages[1] ?? "";
    for (const name of ["Laboratory", "Customer", "Measured by", "Date of issue", "Sampling plan", "Authorised by"])
      expect(about).toContain(`${name} not stated`);
    expect(about).toContain("Where it was measured Mill Lane 4, Aldersfield, main distribution board");
    expect(about).toContain("may be passed on only as a whole");
  });

  it("prints the identity that the setup states, on every page where it must stand there", async () => {
    const stated = await read({
      orders: 2,
      given: {
        report: {
          number: "R-2026-17",
          customer: "Miller's bakery",
          laboratory: { name: "Laboratory Hill", address: "Hill 1" },
          authorisedBy: "head of the laboratory",
          issued: "2026-04-01",
        },
        instrument: { class: "A", serialNumber: "0042" },
      },
    });
    for (const page of stated.pages) expect(page).toContain("Report number: R-2026-17");
    expect(stated.pages[1]).toContain("Customer Miller's bakery");
    expect(stated.pages[1]).toContain("Laboratory Laboratory Hill Hill 1");
    expect(stated.pages[1]).toContain("Date of issue 2026-04-01");
    expect(stated.pages.at(-1)).toContain("End of report R-2026-17");
    expect(whole(stated)).toContain("Serial number 0042");
    expect(whole(stated)).toMatch(/±.?0\.1/);
  });

  it("reads nothing in a name as markup", async () => {
    const site = '#panic("x") *bold* _under_ $x^2$ @ref <label> = Heading // note \\ `raw` ~ [a] {b}';
    expect((await read({ orders: 2, site })).pages[1]).toContain(site);
  });

  it("breaks a name without spaces, prints Greek and Cyrillic, and says which characters its font lacks", async () => {
    const site = `${"x".repeat(300)} Жар Ωμέγα 漢字 \u202Eevil`;
    const odd = await read({ orders: 2, site, unknownHeader: "مرحبا" });
    const about = (odd.pages[1] ?? "").replaceAll(" ", "");
    expect(about).toContain("x".repeat(300));
    expect(about).toContain("ЖарΩμέγα\ufffd\ufffd\ufffdevil");
    expect(odd.pages[1]).toContain(
      "\ufffd stands for a character that the font of this document lacks (U+0627, U+0628, U+062D",
    );
    expect(odd.pages[1]).toContain("U+202E, U+5B57, U+6F22)");
  });

  it("lists the worst events with their pictures, further ones in a table, and says how many there are", async () => {
    const made = (count: number) =>
      Array.from({ length: count }, (_, i) => {
        const event = madeEvent({ atS: 3600 + 300 * i, durationS: 0.1 + 0.001 * i, percent: 40 + (i % 45) });
        return { ...event, ...madeRecord(event) };
      });
    const none = whole(await read({ orders: 2, events: [] }));
    expect(none).toContain("No dip, swell or interruption was found.");
    const few = whole(await read({ orders: 2, events: made(3) }));
    expect(few).toContain("3 of 3 events, worst first");
    expect(few.match(/Waveform around start and end/g)?.length).toBe(3);
    const many = whole(await read({ orders: 2, events: made(LISTED + 60) }));
    expect(many.match(/Waveform around start and end/g)?.length).toBe(SHOWN);
    expect(many).toContain(`${LISTED} of ${LISTED + 60} events, worst first`);
    expect(many).toContain(` ${LISTED}. voltage dip`);
    expect(many).not.toContain(` ${LISTED + 1}. voltage dip`);
  });

  it("answers complaints and shows the days and the measured values beside the verdict", async () => {
    const given = {
      complaints: [{ at: "2026-03-04T13:00", what: "lights flicker in the barn" }],
      comments: [{ at: "2026-03-05T10:00", phase: "L2" as const, text: "cover opened" }],
    };
    const more = await sampleReport({ orders: 2, given });
    const local = inLocalTime(more.assessment);
    const text = whole(readPdf(await rendered(more)));
    const [complaint] = local.complaints;
    expect(text).toContain("Wed 4 Mar 2026 13:00: lights flicker in the barn");
    expect(text).toContain(told(complaintText(local, complaint as never, localClock(local.recording))));
    expect(text).toContain("cover opened");
    for (const { rows } of local.days)
      for (const { outside, n } of rows.slice(0, 3)) expect(text).toContain(`${outside} of ${n} outside`);
    const voltage = local.summary.find(({ quantity, phase }) => quantity === "voltage" && phase === "L2");
    expect(text).toContain(`${voltage?.max.toFixed(1)} V`);
    expect(text).toContain("Measured values");
  });

  it("warns of dangers before anything else", async () => {
    const danger = {
      id: "open-neutral",
      severity: "note" as const,
      sentence: "The star point moved by 40 V.",
      evidence: {},
      quantities: [],
      phases: [],
      danger: "open-neutral" as const,
    };
    const [first = ""] = (await read({ orders: 2, findings: [danger] })).pages;
    expect(first.indexOf("keep away from live parts")).toBeGreaterThan(0);
    expect(first.indexOf("keep away from live parts")).toBeLessThan(first.indexOf("What was promised?"));
  });
});

describe("report.pdf by itself", () => {
  it("has the same bytes in another time zone and language of the machine", async () => {
    const report = await sampleReport({ orders: 2 });
    const before = { ...process.env };
    const first = await rendered(report);
    try {
      Object.assign(process.env, { TZ: "America/St_Johns", LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8" });
      expect(Buffer.compare(await rendered(await sampleReport({ orders: 2 })), first)).toBe(0);
    } finally {
      for (const name of ["TZ", "LANG", "LC_ALL"])
        if (before[name] === undefined) delete process.env[name];
        else process.env[name] = before[name];
    }
  });

  it("has a glyph for every character it calls covered, in regular and bold", async () => {
    const characters = coveredCharacters();
    expect(characters.length).toBeGreaterThan(2500);
    const document = {
      ...(await reportDocument(...documentOf(await sampleReport({ orders: 2 })))),
      first: [],
      blocks: characters.flatMap((text) => [
        { kind: "text" as const, text },
        { kind: "question" as const, text },
      ]),
    };
    const template = await CONTEXT.packaged("assets/report.typ");
    await compilePdf(document, template, CONTEXT);
  });
});

function documentOf({ assessment, measurements }: Report): Parameters<typeof reportDocument> {
  return [assessment, measurements, CONTEXT];
}
