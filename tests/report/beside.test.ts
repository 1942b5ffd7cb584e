import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SlidingVoltage, SupplyDetail } from "../../src/recording/supply-detail.js";
import { HOUR, MINUTE, SECOND } from "../../src/recording/time.js";
import { compileChart, drawChart } from "../../src/report/charts/draw.js";
import { chartSections } from "../../src/report/charts/index.js";
import { shiftChart } from "../../src/report/charts/shift-ranges.js";
import { comparisonSection } from "../../src/report/html/comparison.js";
import { complaintsSection } from "../../src/report/html/complaints.js";
import { daysSection } from "../../src/report/html/days.js";
import type { Html } from "../../src/report/html/html.js";
import { shiftSection } from "../../src/report/html/shift.js";
import { slidingSection } from "../../src/report/html/sliding.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { localClock } from "../../src/report/local-time.js";
import { terminalText } from "../../src/report/terminal.js";
import { type Range, rangesText, shiftText } from "../../src/report/wording-shift.js";
import { type Report, START, sampleReport } from "./support.js";

const text = (html: Html | undefined) =>
  (html?.markup(ENGLISH) ?? "")
    .replace(/<script.*?<\/script>/gs, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&#39;/g, "'")
    .replace(/[\s\u00a0]+/g, " ");
const flat = (words: string) => words.replace(/\s+/g, " ");

/** L2 lies above 253 V around 13 h on each day of the sample. */
const given = {
  complaints: [
    { at: "2026-03-04T13:05", what: "inverter <b>off</b>" },
    { at: "2026-03-05T12:00", to: "2026-03-05T14:00", what: "lamps bright" },
    { at: "2025-06-07T13:00", what: "the same last summer" },
  ],
  comments: [{ at: "2026-03-06T08:00", phase: "L2" as const, text: "neighbour's heat pump" }],
};

describe("complaints", () => {
  it("stand with what was recorded, in local time and with the user's words escaped", async () => {
    const { assessment } = await sampleReport({ given });
    const section = complaintsSection(assessment);
    expect(section?.markup(ENGLISH)).toContain("inverter &lt;b&gt;off&lt;/b&gt;");
    const words = text(section);
    expect(words).toContain("C2, Wed 4 Mar 2026 13:05: inverter");
    const covering = assessment.complaints[1]?.phases[1]?.intervals[0];
    expect(covering).toMatchObject({ start: "2026-03-04T12:00:00Z", outside: 1 });
    expect(words).toContain(`Covered by valid data. Outside the limit: L2 ${covering?.highest?.toFixed(1)} V.`);
    expect(words).toContain("C3, Thu 5 Mar 2026 12:00 to 14:00: lamps bright");
    const span = assessment.complaints[2]?.phases[1]?.intervals[0];
    expect(words).toContain(`Outside the limit: L2 in ${span?.outside} of 12 intervals`);
    expect(words).toContain("C1, Sat 7 Jun 2025 13:00: the same last summer This time lies outside the recording.");
    expect(words).toContain("Of Saturdays between 12:00 and 14:00 the recording holds 12 valid intervals.");
    expect(words).toContain("N1 Fri 6 Mar 2026 08:00 L2 neighbour's heat pump");
    expect(complaintsSection((await sampleReport({ orders: 2 })).assessment)).toBeUndefined();
  });

  it("are marked on the charts: a complaint on every panel, a comment on its phase's only", async () => {
    const { assessment, measurements } = await sampleReport({ given, orders: 2 });
    const charts = chartSections(assessment, measurements).flatMap((section) => section.charts);
    const chart = charts.find(({ id }) => id === "voltage-profile");
    if (chart === undefined) throw new Error("no profile");
    expect(String(chart.note)).toContain(
      "Dotted: complaints (C) and comments (N). C2: Wed 4 Mar 13:05, inverter <b>off</b>; C3: Thu 5 Mar 12:00, lamps bright; N1: Fri 6 Mar 08:00 (L2), neighbour's heat pump.",
    );
    const svg = await drawChart(chart, ENGLISH, await compileChart(chart, ENGLISH, false));
    const drawn = (name: string) => [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].filter((m) => m[2] === name);
    const shown = (name: string) => drawn(name).filter(([, attributes]) => !/opacity="0"/.test(attributes ?? ""));
    expect(shown("C2")).toHaveLength(3);
    expect(drawn("N1").length).toBeGreaterThan(0);
    expect(shown("N1")).toHaveLength(1);
    expect(drawn("C1")).toHaveLength(0);
    const unbalance = charts.find(({ id }) => id === "negative-sequence-unbalance-profile");
    expect(String(unbalance?.note)).not.toContain("N1");
  });
});

describe("other limit sets", () => {
  it("show each set's verdict, and where and why it is another", async () => {
    const { assessment } = await sampleReport({ compared: ["spain-lv", "en50160-2022-lv"], middayRise: 18 });
    const words = text(comparisonSection(assessment));
    expect(words).toMatch(/EN 50160:2010, low voltage \(en50160-2010-lv; decides\) EN 50160, 2010 230 V/);
    expect(words).toContain("Limit: 207 to 253 V in en50160-2010-lv, 213.9 to 246.1 V in spain-lv.");
    expect(comparisonSection(assessment)?.markup(ENGLISH)).toContain(
      'does not conform</span> <span class="unconfirmed">unconfirmed</span>',
    );
    expect(assessment.comparison[0]?.ruleSet.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(words).toContain(assessment.comparison[0]?.ruleSet.sha256 ?? "-");
    const lines = terminalText(assessment, ENGLISH);
    expect(flat(lines)).toMatch(/compared: Spain, low voltage .* \(spain-lv\): does not conform; another verdict/);
    expect(flat(lines)).toMatch(
      /- Supply voltage, most of the week, L2: does not conform, by the first set conforms\. Limit:/,
    );
    for (const line of lines.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
    expect(comparisonSection((await sampleReport({ orders: 2 })).assessment)).toBeUndefined();
  });
});

describe("days", () => {
  it("give counts and ends of each, and in words how far the days differ", async () => {
    const { assessment } = await sampleReport({ orders: 2 });
    const words = text(daysSection(assessment, localClock(assessment.recording)));
    const tuesday = assessment.days[1]?.rows.find(({ phase }) => phase === "L2");
    expect(tuesday?.outside).toBeGreaterThan(0);
    expect(words).toContain(`${tuesday?.outside} of 144 outside`);
    expect(words).toContain("L1: on no whole day did a value lie outside 207.0 to 253.0 V");
    expect(words).toMatch(
      /L2: values lay outside 207\.0 to 253\.0 V on 7 of 7 whole days, from \d+ \(\w+ \d Mar\) to \d+ \(/,
    );
    const short = (await sampleReport({ days: 1, orders: 2 })).assessment;
    expect(daysSection(short, localClock(short.recording))).toBeUndefined();
  });
});

describe("a shift of the voltage", () => {
  it("is told with the steps that fit and the counts after each, and drawn", async () => {
    const { assessment } = await sampleReport({ orders: 2 });
    const clock = localClock(assessment.recording);
    const section = await shiftSection(assessment, clock, ENGLISH);
    const words = text(section);
    const { shift } = assessment;
    const period = shift?.periods[0];
    if (shift === undefined || period === undefined) throw new Error("no shift");
    expect(words).toMatch(
      /would have been kept with all phases shifted by −\d+\.\d\d V \(−\d+\.\d\d %\) to −\d+\.\d\d V/,
    );
    expect(words).toContain("An estimate, no part of the verdict");
    for (const { outside, phase } of period.rows.slice(0, 3)) {
      expect(words).toContain(`${phase} Supply voltage, most of the week 50 of 1008 ${outside.join(" ")}`);
    }
    expect(section?.markup(ENGLISH)).toContain('id="chart-voltage-shift"');
    const chart = shiftChart(shift, period);
    const svg = await drawChart(chart, ENGLISH, await compileChart(chart, ENGLISH, false));
    expect(svg).not.toMatch(/NaN|undefined/);
    expect(svg).toContain("all phases");
    expect(flat(terminalText(assessment, ENGLISH))).toContain(
      "what a shift would change: The limits of the supply voltage",
    );
    const calm = (await sampleReport({ orders: 2, middayRise: 5 })).assessment;
    expect(terminalText(calm, ENGLISH)).not.toContain("what a shift would change");
    expect(text(await shiftSection(calm, clock, ENGLISH))).toContain("kept its limits as recorded");
  });

  it("prints ends that still lie in the range", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 0.02, max: 20, noNaN: true }),
        (from, width) => {
          const to = from + width;
          const range: Range = { from, to, fromPercent: (100 * from) / 230, toPercent: (100 * to) / 230 };
          const printed = String(rangesText([range])).replaceAll("−", "-");
          const [low = Number.NaN, , high = Number.NaN] = [...printed.matchAll(/[-+]?\d+\.\d\d/g)].map(Number);
          expect(low).toBeGreaterThanOrEqual(from);
          expect(high).toBeLessThanOrEqual(to);
          expect(low - from).toBeLessThan(0.010001);
          expect(to - high).toBeLessThan(0.010001);
        },
      ),
      { seed: 2 },
    );
    expect(String(rangesText([{ to: -2.9, toPercent: -1.2608 }]))).toBe("up to −2.90 V (−1.27 %)");
    expect(String(rangesText([]))).toBe("none");
    expect(String(rangesText(undefined))).toBe("too little is valid");
  });

  it("says that none fits all phases, and what fits each", async () => {
    const { assessment } = await sampleReport({ orders: 2 });
    const { shift } = assessment;
    const period = shift?.periods[0];
    if (shift === undefined || period === undefined) throw new Error("no shift");
    const clock = localClock(assessment.recording);
    const none = String(shiftText(shift, { ...period, all: [] }, clock));
    expect(none).toMatch(/^No shift of all phases together would have kept/);
    expect(none).toContain("Each phase by itself: L1: ");
    const { all: _, ...unknown } = period;
    expect(String(shiftText(shift, unknown, clock))).toMatch(/^Too little of the voltage/);
  });
});

describe("any ten minutes", () => {
  const sliding = (passed: SlidingVoltage["passed"]): SlidingVoltage => ({
    phase: "L1",
    interval: SECOND,
    n: 600_000,
    lowest: { value: 224, at: START + HOUR },
    highest: { value: 253.04, at: START + 13 * HOUR },
    limit: 253,
    passed,
  });
  const bound = (phase: "L2" | "L3", value: number, possible: number) => ({
    phase,
    limit: 253,
    pairs: 1007,
    highest: { value, at: START + 13 * HOUR },
    possible,
  });
  const report = (supply: Partial<SupplyDetail>): Promise<Report> =>
    sampleReport({ orders: 2, supply: { sliding: [], bounds: [], spans: [], ...supply } });

  it("tells what passed the limit unseen, what the extremes rule out, and what cannot be told", async () => {
    const passed = [
      { start: START + 13 * HOUR - 2 * MINUTE, durationS: 192, peak: 253.04, complete: true },
      { start: START + 37 * HOUR, durationS: 60, peak: 253.01, complete: false },
    ];
    const { assessment } = await report({ sliding: [sliding(passed)], bounds: [bound("L2", 257.61, 3)] });
    const clock = localClock(assessment.recording);
    const words = text(slidingSection(assessment, clock));
    expect(words).toContain(
      "L1: the mean over any ten minutes passed 253.0 V 2 times and reached 253.04 V; 2 of these times no fixed value shows.",
    );
    expect(words).toContain("L1 1 s 224.0 V 253.04 V Mon 2 Mar 2026 13:00 2 3 min 12 s 2");
    expect(words).toContain("Mon 2 Mar 2026 12:58 3 min 12 s 253.04 V no");
    expect(words).toContain("at least 1 min");
    expect(words).toContain(
      "was at most 257.6 V (around Mon 2 Mar 2026 13:00); 3 times it can have passed 253.0 V between two",
    );
    expect(words).toContain("L3: the log holds neither shorter intervals than ten minutes nor extremes");
    expect(words).toContain("EN 50549-1, from memory");
    const lines = flat(terminalText(assessment, ENGLISH));
    expect(lines).toContain("any ten minutes: L1: the mean over any ten minutes passed 253.0 V 2 times");
    const calm = await report({ bounds: [bound("L3", 252.96, 0)] });
    expect(text(slidingSection(calm.assessment, clock))).toContain(
      "was at most 252.96 V, so it cannot have passed 253.0 V.",
    );
    expect(terminalText(calm.assessment, ENGLISH)).not.toContain("any ten minutes");
  });
});
