import { describe, expect, it } from "vitest";
import type { GivenSetup } from "../../src/recording/setup.js";
import { HOUR } from "../../src/recording/time.js";
import { profile } from "../../src/report/charts/profile.js";
import { subjectsOf } from "../../src/report/charts/subject.js";
import { htmlReport } from "../../src/report/html/index.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { localClock } from "../../src/report/local-time.js";
import { plainPage } from "../../src/report/pdf/plain-page.js";
import { byRequirement } from "../../src/report/rows.js";
import { terminalText } from "../../src/report/terminal.js";
import { statement } from "../../src/report/wording-statement.js";
import { CONTEXT, english, type Report, START, sampleReport } from "./support.js";

/** A calm week in which L2 is 260 V in the ten minutes from Monday 16:40 local time on. */
async function withPeak(given: GivenSetup): Promise<Report> {
  const { measurements } = await sampleReport({ middayRise: 10, orders: 2 });
  const series = measurements.series.find(({ quantity, phase }) => quantity === "voltage" && phase === "L2");
  if (series === undefined) throw new Error("the sample has no voltage on L2");
  series.values[100] = 260;
  return sampleReport({ measurements, given });
}

async function textOf(report: Report): Promise<string> {
  const [file] = await htmlReport.render(report.assessment, report.measurements, CONTEXT);
  return plain(String(file?.content));
}

const pageInPlainWords = ({ assessment, measurements }: Report) =>
  JSON.stringify(english(plainPage(assessment, measurements, localClock(assessment.recording)))).replaceAll(
    "\u00a0",
    " ",
  );

const plain = (markup: string) =>
  markup
    .replace(/<(style|script)[\s\S]*?<\/\1>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&#39;", "'")
    .replaceAll("\u00a0", " ")
    .replace(/\s+/g, " ");
const flat = (text: string) => text.replace(/\s+/g, " ");

const STORM = {
  from: "2026-03-02T16:00",
  to: "2026-03-02T17:30",
  reason: "exceptional-weather",
  assertedBy: "network operator <north>",
  reference: "storm report 12",
} as const;

describe("an exclusion on which the verdict hangs", async () => {
  const report = await withPeak({ exclusions: [STORM] });
  const named =
    "The verdict hangs on the exclusion from Mon 2 Mar 2026 16:00 to Mon 2 Mar 2026 17:30 (exceptional weather or another natural disaster; asserted by network operator <north>). Without exclusions the verdict would be “does not conform”.";

  it("is named in the statement, on the first screen and on the terminal", async () => {
    expect(report.assessment).toMatchObject({ verdict: "conforms", verdictWithoutExclusions: "does-not-conform" });
    expect(statement(report.assessment).further.map(String).join(" ")).toContain(named);
    const terminal = flat(terminalText(report.assessment, ENGLISH));
    expect(terminal).toContain(named);
    expect(terminal).toContain("asserted by network operator <north>; intervals left out: 9");
    const page = await textOf(report);
    expect(page.indexOf("The verdict hangs on the exclusion")).toBeLessThan(page.indexOf("Worst on"));
    expect(page.indexOf("The verdict hangs on the exclusion")).toBeGreaterThan(0);
  });

  it("stands in a table with both verdicts, and below the verdict of the requirement that it turns", async () => {
    const page = await textOf(report);
    expect(page).toContain("Verdict with the exclusions: conforms; without them: does not conform.");
    expect(page).toMatch(/storm report 12 9 yes/);
    expect(page).toMatch(/Supply voltage, all of the time L2 9 0 of 999 1 of 1008 conforms does not conform/);
    expect(page).toMatch(/conforms without exclusions: does not conform/);
  });

  it("is told on the page in plain words, with the other answer and what to do about it", async () => {
    const page = pageInPlainWords(report);
    expect(page).toContain(
      "No. In all that could be judged, the supply kept to the rules of “EN 50160:2010, low voltage”. This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: does not conform.",
    );
    expect(page).toContain("Have the stated reasons for leaving out spans of time proven");
    expect(page).not.toContain("Nothing has to be mended");
    expect(page).toContain("It has 1008 ten-minute intervals: 9 were left out, and of the others 999 are valid.");
    const calm = await sampleReport({ middayRise: 10, orders: 2, given: { exclusions: [STORM] } });
    expect(pageInPlainWords(calm)).not.toContain("This holds only");
    expect(pageInPlainWords(calm)).toContain("Nothing has to be mended");
  });

  it("is told at the requirement on whichever phase it lies", async () => {
    const { measurements } = await sampleReport({ middayRise: 10, orders: 2 });
    const series = measurements.series.find(({ quantity, phase }) => quantity === "voltage" && phase === "L1");
    if (series === undefined) throw new Error("the sample has no voltage on L1");
    const rowsOf = ({ assessment }: Report) =>
      byRequirement(assessment, assessment.weeks[0] as (typeof assessment.weeks)[number]).filter(
        ({ id }) => id === "supply-voltage-always",
      );
    const given = { exclusions: [STORM] };
    expect(rowsOf(await sampleReport({ measurements, given }))[0]?.worst.phase).not.toBe("L1");
    series.values[100] = 260;
    expect(rowsOf(await sampleReport({ measurements, given }))[0]?.worst).toMatchObject({
      phase: "L1",
      verdict: "conforms",
      verdictWithoutExclusions: "does-not-conform",
    });
  });

  it("is the reason where it leaves too little of the week, and of single requirements", async () => {
    const most = { ...STORM, from: "2026-03-02T16:00", to: "2026-03-08T20:00" };
    const none = await withPeak({ exclusions: [most] });
    expect(none.assessment.verdict).toBe("not-assessed");
    expect(String(statement(none.assessment).sentence)).toMatch(
      /could not be judged by EN 50160:2010, low voltage: 888 of 1008 intervals overlap an excluded span/,
    );
    // Ten minutes out of every block of two hours: nearly all of the flicker severity, little of the voltage.
    const blocks = Array.from({ length: 84 }, (_, i) => Date.UTC(2026, 2, 1, 23 + 2 * i, 40));
    const iso = (ms: number) => `${new Date(ms).toISOString().slice(0, 19)}Z`;
    const scattered = blocks.map((at) => ({ ...STORM, from: iso(at), to: iso(at + 600_000) }));
    const some = await withPeak({ exclusions: scattered });
    expect(some.assessment.verdict).toBe("conforms");
    expect(String(statement(some.assessment).sentence)).toContain("; not judged: ");
    expect(String(statement(some.assessment).sentence)).toMatch(/not judged: .*flicker severity/);
  });

  it("is a field in the course of the values; the charts count as the table does", () => {
    const { assessment, measurements } = report;
    const row = assessment.weeks[0]?.requirements.find(
      ({ id, phase }) => id === "supply-voltage-always" && phase === "L2",
    );
    const subject = subjectsOf(assessment, measurements).find(({ quantity }) => quantity === "voltage");
    const phase = subject?.phases.find((p) => p.phase === "L2");
    expect(phase?.drawn).toHaveLength(1008);
    expect(phase?.counted).toHaveLength(row?.n ?? 0);
    expect(phase?.above).toEqual([]);
    const chart = profile(subject as NonNullable<typeof subject>);
    // Local time of the log as if it were UTC, in milliseconds.
    expect(chart.data.excluded).toEqual({ from: [Date.UTC(2026, 2, 2, 16)], to: [Date.UTC(2026, 2, 2, 17, 30)] });
    expect(String(chart.note)).toContain("Grey fields: excluded spans");
  });

  it("marks an event that lies in it, and no other", async () => {
    const dip = (hour: number) => ({
      kind: "dip" as const,
      origin: "computed" as const,
      phases: ["L1" as const],
      unit: "V" as const,
      start: START + hour * HOUR,
      durationS: 0.2,
      extreme: 150,
    });
    const report = await sampleReport({ orders: 2, given: { exclusions: [STORM] }, events: [dip(17), dip(18)] });
    expect((await textOf(report)).match(/in an excluded span/g)).toHaveLength(1);
  });

  it("is said not to turn a verdict that stays", async () => {
    const calm = await sampleReport({ middayRise: 10, orders: 2, given: { exclusions: [STORM, STORM] } });
    const text = statement(calm.assessment).further.map(String).join(" ");
    expect(text).toContain("2 spans were excluded; the verdict is the same without them.");
    expect(text).not.toContain("hangs on");
  });
});

describe("the uncertainty of the measurement", () => {
  it("is said not to be stated where it was not", async () => {
    const report = await withPeak({});
    expect(statement(report.assessment).further.map(String)).toContain(
      "Decision rule: simple acceptance; the uncertainty of the measurement was not stated.",
    );
    const page = await textOf(report);
    expect(page).toContain("gives neither the instrument's class");
    expect(page).toContain("None was stated; EN 50160 prescribes no guard band");
    expect(page).not.toContain("near a limit: ");
  });

  it("is listed with its origin; what is from memory is marked", async () => {
    const instrument = {
      class: "S" as const,
      sensors: [{ what: "divider 3", measures: "voltage" as const, class: 0.5 }],
    };
    const page = await textOf(await withPeak({ instrument }));
    expect(page).toContain(
      "instrument ±0.5 % of the declared voltage from the class not confirmed class S of IEC 61000-4-30",
    );
    expect(page).toContain("class 0.5 of divider 3");
    // √((0.5 % · 230)² + (0.5 % · 253)²) = 1.709…
    expect(page).toContain("±1.71 V; near a limit: 0; clear");
    expect(page).toContain("For one requirement the uncertainty is not known.");
  });

  it("marks the verdict that it could turn, and leaves it undecided by guarded acceptance", async () => {
    const instrument = { uncertainty: [{ quantity: "voltage" as const, expanded: 8, of: "absolute" as const }] };
    const simple = await withPeak({ instrument });
    expect(simple.assessment.verdict).toBe("does-not-conform");
    expect(statement(simple.assessment).further.map(String).join(" ")).toMatch(
      /simple acceptance; the uncertainty of the measurement could turn the verdict on (one|2) requirement/,
    );
    expect(await textOf(simple)).toContain("does not conform conditional fail");
    const guarded = await withPeak({ instrument, decisionRule: "guarded" });
    expect(guarded.assessment.verdict).toBe("undecided");
    const text = flat(terminalText(guarded.assessment, ENGLISH));
    expect(text).toContain("Decision rule: guarded acceptance;");
    expect(text).toContain("a conditional fail.");
    expect(await textOf(guarded)).toContain("in between it is undecided");
  });
});

it("gives sampling intervals with their warning", async () => {
  const report = await withPeak({});
  const page = await textOf(report);
  expect(page).toContain("Successive intervals are not, so the truth spreads wider.");
  // 1 of 1008: exact binomial interval 0.0025 to 0.55 % (SciPy: 2.5e-5, 0.005515).
  expect(page).toMatch(/Supply voltage, all of the time L2 – – 0\.00 to 0\.55 %/);
});

it("prints the identity of the report as stated, and names what was not", async () => {
  const laboratory = { name: "Hill & Dale measuring", address: "1 Mill Lane" };
  const page = await textOf(await withPeak({ report: { number: "2026-014", laboratory, issued: "2026-03-20" } }));
  expect(page).toContain("Report number 2026-014 Laboratory Hill &amp; Dale measuring 1 Mill Lane");
  expect(page).toContain("Date of issue 2026-03-20");
  expect(page).toContain("Not stated in the setup: Customer; Requested by; Measured by; Sampling plan;");
});

it("the page in plain words does not call missing values harmless where they leave the verdict open", async () => {
  const page = pageInPlainWords(await sampleReport({ middayRise: 10, orders: 2, gap: [100, 300] }));
  expect(page).toContain("That cannot be said.");
  expect(page).toContain("Missing values could turn the result in part");
  expect(page).not.toContain("No missing value could turn the result");
});
