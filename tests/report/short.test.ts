import { describe, expect, it } from "vitest";
import { SECOND } from "../../src/recording/time.js";
import { rowsOf } from "../../src/report/charts/chart.js";
import { compileChart, drawChart } from "../../src/report/charts/draw.js";
import { chartSections } from "../../src/report/charts/index.js";
import { profileData } from "../../src/report/charts/profile-data.js";
import { subjectsOf } from "../../src/report/charts/subject.js";
import { htmlReport } from "../../src/report/html/index.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { terminalText } from "../../src/report/terminal.js";
import { lengthText } from "../../src/report/wording.js";
import { statement } from "../../src/report/wording-statement.js";
import { intervals } from "../support/series.js";
import { shortReport } from "./event-support.js";
import { CONTEXT, english, START, sampleReport } from "./support.js";

const { assessment, measurements } = await shortReport();
const charts = chartSections(assessment, measurements).flatMap((section) => section.charts);
const chart = (id: string) => {
  const found = charts.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`no chart ${id}`);
  return found;
};

describe("the statement on less than a week", () => {
  it("of seconds says that they show no week, and what they show", () => {
    expect(assessment.verdict).toBe("undecided");
    const { sentence, further } = statement(assessment);
    expect(english(sentence)).toMatch(
      /^The recording of 12\.4 s cannot show whether a week conforms to EN 50160:2010, low voltage; it shows 2 dips and 1 swell \(the deepest left 41 % for 12\d ms on L1 and L3\)\.$/,
    );
    expect(english(further[0])).toMatch(
      /^It also shows voltages of \d+\.\d to \d+\.\d V on L1, L2, L3 \(values of 10\/12 cycles \(0\.2 s\)\)\.$/,
    );
    expect(english(further.join(" "))).not.toContain("robust");
  });

  it("of two days says what was counted so far", async () => {
    const { assessment: good } = await sampleReport({ days: 2, middayRise: 10, orders: 4 });
    expect(english(statement(good).sentence)).toBe(
      "The recording of 2 d cannot show whether a week conforms to EN 50160:2010, low voltage; it shows 288 ten-minute values per phase, none outside 207.0 to 253.0 V.",
    );
    const { assessment: bad } = await sampleReport({ days: 2, middayRise: 19.5, orders: 4 });
    const row = bad.weeks[0]?.requirements.find(({ id, phase }) => id === "supply-voltage" && phase === "L2");
    expect(row?.verdict).toBe("undecided");
    expect(row?.outside).toBeGreaterThan(0);
    const open = { ...bad, verdict: "undecided" as const };
    expect(english(statement(open).sentence)).toContain(
      `it shows on phase L2 ${row?.outside} of 288 ten-minute values that lay above 253.0 V (of the 1008 of a week, 50 may).`,
    );
  });

  it("does not count as met what is for information only, and names events where nothing else was measured", () => {
    const week = assessment.weeks[0] as (typeof assessment.weeks)[number];
    const information = week.requirements.filter(({ verdict }) => verdict === "for-information");
    expect(information.some(({ binding }) => binding)).toBe(true);
    const bare = { ...assessment, verdict: "not-assessed" as const, weeks: [{ ...week, requirements: information }] };
    expect(english(statement(bare).further.join(" "))).not.toContain("met");
    expect(english(statement({ ...bare, weeks: [] }).further[0])).toMatch(
      /^It shows 2 dips and 1 swell \(the deepest left 41 %/,
    );
  });

  it("leaves it to the verdict where the count already decides, and to the finding where that is why", async () => {
    const { assessment: failed } = await sampleReport({ days: 2, middayRise: 30, orders: 4 });
    expect(english(statement(failed).sentence)).toMatch(
      /^The supply voltage did not conform .* \(Europe\/Vienna\), less than a week: on phase L2/,
    );
    const unsound = await sampleReport({
      days: 2,
      middayRise: 10,
      orders: 4,
      findings: [
        {
          id: "dead-phase",
          severity: "blocks",
          sentence: "L3 was dead.",
          evidence: {},
          quantities: ["voltage"],
          phases: ["L3"],
        },
      ],
    });
    expect(english(statement(unsound.assessment).sentence)).not.toContain("cannot show");
  });

  it.each([
    [12.4, "12.4 s"],
    [0.164, "0.164 s"],
    [60, "1 min"],
    [754, "12 min 34 s"],
    [7384, "2 h 3 min"],
    [183_600, "2 d 3 h"],
  ])("%d s are %s", (seconds, text) => expect(english(lengthText(seconds * 1e6))).toBe(text));
});

describe("charts of a recording of seconds", () => {
  it("show voltage, current, distortion, unbalance and power at 10/12 cycles, and what was measured by order", () => {
    expect(charts.map(({ id }) => id)).toEqual([
      "voltage-profile",
      "current-profile",
      "thd-voltage-profile",
      "thd-current-profile",
      "negative-sequence-unbalance-profile",
      "active-power-profile",
      "reactive-power-profile",
      "harmonics-measured",
      "interharmonics-measured",
      "harmonic-currents-measured",
    ]);
    expect(english(chart("voltage-profile").note)).toContain(
      "Values of 10/12 cycles (0.2 s), number of valid ones: L1 61",
    );
    const values = rowsOf(chart("voltage-profile").data.profile as never).filter(({ phase }) => phase === "L1");
    expect(values).toHaveLength(61);
    expect(values[0]?.v).toBeCloseTo(230 * Math.hypot(1, 0.03, 0.02), 1);
  });

  it("draw the limits for orientation, count nothing by them and say so", () => {
    const { title, note, data } = chart("voltage-profile");
    expect(english(title)).toMatch(/^Supply voltage: \d+\.\d to \d+\.\d V$/);
    expect(english(note)).toContain(
      "Dashed, for orientation: 207.0 to 253.0 V for 95 % of the week (EN 50160, 4.2.2), set for values of 10 min",
    );
    expect(english(note)).toContain("Values of 0.2 s are not judged by it.");
    const lines = rowsOf(data.limits as never);
    expect(english(lines.map(({ y, label }) => [y, label]))).toEqual([
      [253, "253.0 V for values of 10 min"],
      [207, "207.0 V for values of 10 min"],
      [195.5, "195.5 V for values of 10 min"],
    ]);
    expect(rowsOf(data.profile as never).every(({ out }) => out === null)).toBe(true);
  });

  it("name times to the second and millisecond", async () => {
    const one = chart("voltage-profile");
    expect(english(one.note)).toContain("Mon 2 Mar 2026 00:00:00.250 to Mon 2 Mar 2026 00:00:12.650");
    const drawn = await drawChart(one, ENGLISH, await compileChart(one, ENGLISH, false));
    expect(drawn).toContain(">00:00:05</text>");
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("are whole lines although a window is not exactly 0.2 s, and break at a gap", () => {
    const subject = subjectsOf(assessment, measurements).find(({ id }) => id === "voltage");
    if (subject === undefined) throw new RangeError("no voltage");
    const stretched = subject.phases.map((phase) => {
      const starts = phase.series.starts.map((t) => subject.start + (t - subject.start) * 1.004);
      return { ...phase, series: { ...phase.series, starts } };
    });
    const empty = (phases: typeof stretched) =>
      rowsOf(profileData({ ...subject, phases }).columns).filter(({ v }) => v === null).length;
    expect(empty(stretched)).toBe(0);
    expect(empty(stretched.map((p) => ({ ...p, drawn: p.drawn.filter((i) => i !== 30) })))).toBe(3);
  });

  it("show mean and highest value of each harmonic beside its limit, and speak of no verdict", async () => {
    const { title, note, data } = chart("harmonics-measured");
    const fifth = rowsOf(data.levels as never).find(({ order, phase }) => order === 5 && phase === "L1");
    const entry = assessment.summary.find(
      (s) => s.quantity === "harmonic-voltage" && s.order === 5 && s.phase === "L1" && s.intervalS === 0.2,
    );
    expect(fifth?.value).toBeCloseTo(3, 1);
    expect(fifth?.value).toBeCloseTo(entry?.mean as number, 3);
    expect(fifth?.highest).toBeCloseTo(entry?.max as number, 3);
    expect(rowsOf(data.limits as never)).toContainEqual({ order: 5, limit: 6 });
    expect(english(title)).toMatch(/ order 5 on L\d: \d\.\d\d %, with a limit of 6 %; no verdict on a week is meant$/);
    expect(english(note)).toContain("nothing is counted by them here");
    for (const one of charts)
      expect(await drawChart(one, ENGLISH, await compileChart(one, ENGLISH, true)), one.id).not.toMatch(
        /NaN|undefined/,
      );
  });

  it("show the interharmonic that was there, and the currents without the fundamental", () => {
    expect(english(chart("interharmonics-measured").title)).toMatch(
      /^The highest mean interharmonic voltage was that between orders 3 and 4 on L\d: \d\.\d+ %$/,
    );
    expect(rowsOf(chart("interharmonics-measured").data.limits as never)).toEqual([]);
    expect(rowsOf(chart("harmonic-currents-measured").data.levels as never).some(({ order }) => order === 1)).toBe(
      false,
    );
    expect(english(chart("harmonic-currents-measured").title)).toMatch(/of order 5 on L\d: 1\.2 A$/);
  });
});

it("a recording of days keeps the charts of what was judged", async () => {
  const { assessment: a, measurements: m } = await sampleReport({ days: 2, orders: 4 });
  const ids = chartSections(a, m).flatMap((section) => section.charts.map(({ id }) => id));
  expect(ids).toEqual(expect.arrayContaining(["voltage-profile", "voltage-hours", "voltage-shares"]));
});

describe("flicker and frequency", async () => {
  const day = await sampleReport({ days: 1, orders: 2 });
  const pst = intervals(
    "pst",
    "L1",
    Array.from({ length: 144 }, (_, i) => 0.4 + (i % 12) / 100),
    { start: START },
  );
  const hertz = Array.from({ length: 8640 }, (_, i) => 50 + 0.02 * Math.sin(i / 300));
  const frequency = intervals("frequency", "system", hertz, { start: START, interval: 10 * SECOND });
  const series = [...day.measurements.series.filter(({ quantity }) => quantity !== "frequency"), pst, frequency];
  const profiles = async (kind: "waveforms" | "logged-series") => {
    const report = await sampleReport({ kind, measurements: { ...day.measurements, series } });
    const sections = chartSections(report.assessment, report.measurements);
    return new Map(sections.flatMap((section) => section.charts).map((one) => [one.id, one]));
  };

  it("have profiles: Pst beside Plt of waveforms, the frequency at 10 s", async () => {
    const found = await profiles("waveforms");
    expect(english(found.get("pst-profile")?.title)).toBe("Short-term flicker severity: 0.40 to 0.51");
    expect(english(found.get("plt-profile")?.note)).toContain("Values of 2 h, number of valid ones: L1 12");
    expect(english(found.get("frequency-profile")?.title)).toBe(
      "Power frequency: every value lay within the limit (49.5 to 50.5 Hz); found 49.980 to 50.020 Hz",
    );
    expect(english(found.get("frequency-profile")?.note)).toContain(
      "Values of 10 s, number of valid ones: supply 8640",
    );
  });

  it("of a log of intervals show what its rules judge", async () => {
    const found = await profiles("logged-series");
    expect(found.has("pst-profile")).toBe(false);
    expect(found.has("plt-profile")).toBe(true);
  });
});

describe("measured values", async () => {
  const [file] = await htmlReport.render(assessment, measurements, CONTEXT);
  const section = /<section id="summary">[\s\S]*?<\/section>/.exec(String(file?.content))?.[0] ?? "";
  const text = section
    .replace(/<[^>]*>/g, "|")
    .replaceAll("\u00a0", " ")
    .replace(/[|\s]*\|[|\s]*/g, "|");

  it("give lowest, mean, highest value and 95th percentile of each phase from the result", () => {
    const entry = assessment.summary.find((s) => s.quantity === "voltage" && s.phase === "L1" && s.intervalS === 0.2);
    const { min, mean, max, p95 } = entry as NonNullable<typeof entry>;
    const numbers = [min, mean, max, p95].map((v) => `${v.toFixed(1)} V`).join("|");
    expect(text).toContain(`|Supply voltage|L1|${numbers}|10/12 cycles (0.2 s)|61|L2|`);
    expect(text).toMatch(/\|Active power\|L1\|[\d|W ]+\|10\/12 cycles \(0\.2 s\)\|61\|/);
  });

  it("fold longer intervals away and leave orders to the charts", () => {
    const [main = "", folded = ""] = section.split("<details>");
    expect(main).not.toContain("3 s");
    expect(folded).toContain('<td data-title="Values of">3\u00a0s</td>');
    expect(section).not.toContain("order 5");
  });
});

it("the terminal says the same in 100 columns", () => {
  const lines = terminalText(assessment, ENGLISH).split("\n");
  for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(100);
  expect(lines[0]).toMatch(/^The recording of 12\.4 s cannot show whether a week conforms/);
  expect(lines.some((line) => /voltage dip +L1 L3 /.test(line))).toBe(true);
});
