import { describe, expect, it } from "vitest";
import type { Finding } from "../../src/recording/finding.js";
import { chartSections } from "../../src/report/charts/index.js";
import { escapeHtml, type Html, unbroken } from "../../src/report/html/html.js";
import { htmlReport } from "../../src/report/html/index.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { placeText } from "../../src/report/wording.js";
import { DANGER_WORDS } from "../../src/report/wording-page.js";
import { statement } from "../../src/report/wording-statement.js";
import { CONTEXT, type Report, type SampleOptions, sampleReport } from "./support.js";

const FINDINGS: readonly Finding[] = [
  {
    id: "gaps",
    severity: "note",
    sentence: "Twelve intervals are missing on <Tuesday>.",
    evidence: {},
    quantities: [],
    phases: [],
  },
  {
    id: "open-neutral",
    severity: "note",
    sentence: "L1 rose to 271.3 V while L2 fell to 187.0 V.",
    evidence: {},
    quantities: ["voltage"],
    phases: [],
    danger: "open-neutral",
  },
];

async function pageOf(options: SampleOptions = {}): Promise<Report & { page: string }> {
  const report = await sampleReport(options);
  const files = await htmlReport.render(report.assessment, report.measurements, CONTEXT);
  expect(files.map(({ path }) => path)).toEqual(["report.html"]);
  return { ...report, page: String(files[0]?.content) };
}

const markup = (html: Html) => html.markup(ENGLISH);
/** The text of one section, without markup. */
const textOf = (page: string, id: string) =>
  (new RegExp(`<section id="${id}"[\\s\\S]*?</section>`).exec(page)?.[0] ?? "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("\u00a0", " ")
    .replace(/\s+/g, " ");
/** The page without what it repeats for paper. */
const screenOf = (page: string) => page.split('<section class="printed">')[0] as string;

const { page, assessment, measurements } = await pageOf({ findings: FINDINGS, rules: "en50160-2022-lv" });

describe("report.html", () => {
  it("has the statement before the requirements, those before what was not assessed, and that before the charts", () => {
    const order = [
      'id="statement"',
      'id="requirements"',
      'id="not-assessed"',
      'id="charts"',
      'id="recording"',
      'id="files"',
    ];
    const places = order.map((id) => page.indexOf(id));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(page).toContain(`<h1>${markup(unbroken(statement(assessment).sentence))}</h1>`);
  });

  it("puts a danger before everything else, with the cautions", () => {
    const danger = page.indexOf('class="danger"');
    expect(danger).toBeGreaterThan(0);
    expect(danger).toBeLessThan(page.indexOf('id="statement"'));
    const measured = page.indexOf("L1 rose to 271.3 V");
    for (const caution of DANGER_WORDS.cautions) {
      expect(page.indexOf(String(caution))).toBeGreaterThan(danger);
      expect(page.indexOf(String(caution))).toBeLessThan(measured);
    }
    expect(page).toMatch(/data-finding="open-neutral"><b>danger<\/b>/);
  });

  it("holds every row, every finding, every reason and every source", () => {
    const rows = assessment.weeks.flatMap(({ requirements }) => requirements);
    expect(rows.length).toBeGreaterThan(80);
    for (const row of rows) expect(page).toContain(`data-row="${row.id} ${placeText(row)}"`);
    const printed = page.split('<section class="printed">')[1] ?? "";
    for (const row of rows) expect(printed).toContain(`data-row="${row.id} ${placeText(row)}"`);
    for (const { sentence } of FINDINGS) expect(page).toContain(escapeHtml(String(sentence)));
    for (const { reason } of assessment.notAssessed) expect(page).toContain(escapeHtml(String(reason.sentence)));
    for (const { source, clause } of assessment.ruleSet.requirements) {
      expect(page).toContain(escapeHtml(source));
      expect(page).toContain(escapeHtml(clause));
    }
  });

  it("holds every hash, the setup with its origins, the columns, and the program", () => {
    const { ruleSet, sources, tool } = assessment;
    for (const hash of [ruleSet.sha256, ...ruleSet.inherits.map((f) => f.sha256), ...sources.map((f) => f.sha256)])
      expect(page).toContain(hash);
    expect(page).toMatch(
      /Nominal frequency<\/td><td data-title="Value">50 Hz<\/td><td data-title="Origin"><b>assumed<\/b>/,
    );
    expect(page).toMatch(
      /Battery<\/td><td data-title="Taken for"><b>not used<\/b><\/td><td data-title="Reason">it does not say which quantity it holds/,
    );
    expect(page).toContain(`Made by ${tool.name} ${tool.version}.`);
  });

  it("marks every unconfirmed value where it is used and where its source stands, and says what that means", () => {
    const unconfirmed = assessment.weeks
      .flatMap(({ requirements }) => requirements)
      .filter(({ confirmed }) => !confirmed);
    expect(unconfirmed.length).toBeGreaterThan(0);
    const marked =
      screenOf(page)
        .match(/<tr data-row[\s\S]*?<\/tr>/g)
        ?.filter((row) => row.includes('class="unconfirmed"')) ?? [];
    expect(marked).toHaveLength(unconfirmed.length);
    expect(page).toContain("no public document at hand confirms this limit");
  });

  it("says in the table of sources what the limit is and how it is known, and under the requirements where it comes from", async () => {
    const sources = textOf((await pageOf()).page, "rule-set");
    expect(sources).toContain("207.0 to 253.0 V for 95 % of the week");
    expect(sources).toContain("read in a public document");
    expect(sources).toContain("not confirmed");
    expect(textOf(page, "requirements")).toContain(
      "Clause numbers are from memory. The standard's own text was not read: limits come from public documents that quote it (see Limits and their sources).".replace(
        "'",
        "&#39;",
      ),
    );
  });

  it("names the zone of its times, and the log file where no site is known", async () => {
    expect(page).toContain("Recorded from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00. Times: Europe/Vienna.");
    expect(textOf(page, "requirements")).toContain("to Mon 9 Mar 2026 00:00; times: Europe/Vienna.");
    const { site, ...setup } = assessment.setup;
    expect(page).toContain(`<p class="place">${site?.value}, main distribution board</p>`);
    const [file] = await htmlReport.render({ ...assessment, setup }, measurements, CONTEXT);
    expect(String(file?.content)).toContain('<p class="place">main distribution board; Log file: feeder.csv</p>');
  });

  it("has each chart as a static picture, its title and note, before any script runs", () => {
    const charts = chartSections(assessment, measurements).flatMap((section) => section.charts);
    for (const { id, title, note } of charts) {
      const figure = page.slice(page.indexOf(`id="chart-${id}"`)).split("</figure>")[0] as string;
      expect(figure).toContain("<svg");
      expect(figure).toContain(markup(unbroken(title)));
      expect(figure).toContain(markup(unbroken(note)));
    }
    // Beside these the ranges of shifts.
    expect(page).toContain('id="chart-voltage-shift"');
    expect(page.match(/<figure/g)).toHaveLength(charts.length + 1);
  });

  it("lets nothing be fetched and runs only its own script, named by hash", () => {
    const policy = /Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1] ?? "";
    expect(policy).toMatch(/^default-src &#39;none&#39;/);
    expect(policy).toMatch(/script-src &#39;sha256-[A-Za-z0-9+/]{43}=&#39; &#39;unsafe-eval&#39;;/);
    expect(page.match(/<script>/g)).toHaveLength(1);
    expect(page).not.toMatch(/ (src|href)="(?!#)/);
  });

  it("is the same, byte for byte, when made again", async () => {
    const again = await pageOf({ findings: FINDINGS, rules: "en50160-2022-lv" });
    expect(again.page === page).toBe(true);
  });
});

it("several weeks stand in one table with a verdict each, and each with its own requirements", async () => {
  const weeks = await pageOf({ days: 15 });
  const table = /id="weeks"[\s\S]*?<\/table>/.exec(weeks.page)?.[0] ?? "";
  expect(table.match(/class="verdict/g)?.length).toBe(weeks.assessment.weeks.length);
  expect(weeks.assessment.weeks.length).toBeGreaterThan(2);
  expect(table).toContain("rest, less than a week");
  const rows = weeks.assessment.weeks.flatMap(({ requirements }) => requirements);
  expect(screenOf(weeks.page).match(/data-row="/g)).toHaveLength(rows.length);
});

it("a recording with nothing to judge still gives a page that says so", async () => {
  const { assessment: a, measurements: m } = await sampleReport();
  const empty = { ...a, verdict: "not-assessed" as const, weeks: [], summary: [] };
  const [file] = await htmlReport.render(empty, { ...m, series: [] }, CONTEXT);
  const text = String(file?.content);
  expect(text).toContain("nothing could be judged");
  for (const id of ["requirements", "charts"]) expect(text).not.toMatch(new RegExp(`(id="|href="#)${id}"`));
});

it("a year is no week, and seven days at any start say that they list only what is worse", async () => {
  const { assessment: a, measurements: m } = await sampleReport({ days: 8 });
  const [week] = a.weeks;
  if (week === undefined) throw new RangeError("a week expected");
  const year = { ...week, kind: "year" as const, complete: true, end: "2027-03-01T23:00:00Z" };
  const sliding = { ...week, kind: "worst-sliding" as const };
  const [file] = await htmlReport.render({ ...a, weeks: [week, sliding, year] }, m, CONTEXT);
  const text = textOf(String(file?.content), "weeks");
  expect(text).toMatch(/^ Weeks and years /);
  expect(text).toContain("The 365 days from Mon 2 Mar 2026 00:00 to Tue 2 Mar 2027 00:00: does not conform");
  expect(text).toContain("worst seven days at any start (only what is worse than in every week above)");
});

it("on paper gives a reason that rows share once, with their places, and columns by quantity", async () => {
  const sentence = "All leads were off.";
  const blocking = { id: "x", severity: "blocks", sentence, evidence: {}, quantities: ["plt"], phases: [] } as const;
  const { page: text } = await pageOf({ findings: [blocking] });
  const printed = text.split('<section class="printed">')[1] ?? "";
  expect(printed.split(sentence)).toHaveLength(2);
  expect(printed).toContain(`L1; L2; L3: ${sentence}`);
  expect(text).toMatch(/<ul class="paper"><li>supply voltage L1, mean, V: column 2<\/li>/);
});
