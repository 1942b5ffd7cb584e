import { compile, type TopLevelSpec } from "vega-lite";
import { describe, expect, it } from "vitest";
import { rowsOf } from "../../src/report/charts/chart.js";
import { compileChart, drawChart } from "../../src/report/charts/draw.js";
import { chartSections } from "../../src/report/charts/index.js";
import { profileData } from "../../src/report/charts/profile-data.js";
import { busiestHours, outsideOf, subjectsOf } from "../../src/report/charts/subject.js";
import { ENGLISH, translated } from "../../src/report/languages/language.js";
import { barLabel } from "../../src/report/wording-charts.js";
import type { Row } from "../../src/rules/assessment.js";
import { english, type Report, sampleReport } from "./support.js";

const sample = await sampleReport();
const chartsOf = ({ assessment, measurements }: Report) =>
  chartSections(assessment, measurements).flatMap(({ charts }) => charts);
const charts = chartsOf(sample);
const chart = (id: string, from = charts) => {
  const found = from.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`no chart ${id}`);
  return found;
};

describe("every chart", () => {
  it("is there once: course, hours and shares of what was judged, the harmonics by order, the course of the frequency", () => {
    const kinds = ["profile", "hours", "shares"];
    const judged = ["voltage", "harmonic-voltage-5", "thd-voltage", "negative-sequence-unbalance", "plt"];
    const expected = [
      ...judged.flatMap((id) => kinds.map((kind) => `${id}-${kind}`)),
      "harmonics-by-order",
      "frequency-profile",
    ];
    expect(charts.map(({ id }) => id).sort()).toEqual(expected.sort());
  });

  it.each(charts.map((c) => [c.id, c] as const))("%s compiles without a warning and draws", async (_, one) => {
    const heard: unknown[] = [];
    const hear = (...words: unknown[]) => {
      heard.push(words);
      return logger;
    };
    const logger = { level: () => logger, error: hear, warn: hear, info: () => logger, debug: () => logger };
    compile(translated(one.spec, ENGLISH) as unknown as TopLevelSpec, { logger } as never);
    expect(heard).toEqual([]);
    const svg = await drawChart(one, ENGLISH, await compileChart(one, ENGLISH, true));
    expect(svg).toMatch(/^<svg[^>]* viewBox=/);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    const words = svg.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
    expect(words).toContain(String(one.title).slice(0, 30).replaceAll("&", "&amp;"));
  });

  it("states data count, time base and the clause of its limit", () => {
    for (const { id, note } of charts) {
      expect(english(note), id).toMatch(/\d/);
      expect(english(note), id).toMatch(id === "frequency-profile" ? /No limit judged/ : /EN 50160, 4\.2\./);
    }
    expect(english(chart("voltage-profile").note)).toContain(
      "Values of 10 min, number of valid ones: L1 1008, L2 1008, L3 1008.",
    );
  });

  it("gives its SVG ids of its own, as several stand in one page", async () => {
    const drawn = await Promise.all(
      charts.map(async (one) => drawChart(one, ENGLISH, await compileChart(one, ENGLISH, false))),
    );
    const ids = drawn.flatMap((svg) => [...new Set([...svg.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]))]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(0);
  });
});

describe("findings in titles", () => {
  it("count what the judge counted", () => {
    const { assessment, measurements } = sample;
    for (const subject of subjectsOf(assessment, measurements)) {
      const [first] = subject.limits;
      for (const phase of subject.phases) {
        const row = assessment.weeks[0]?.requirements.find(
          (r) => r.id === first?.id && r.phase === phase.phase && r.order === subject.order,
        );
        if (row === undefined) continue;
        expect([outsideOf(phase), phase.counted.length], `${subject.id} ${phase.phase}`).toEqual([row.outside, row.n]);
      }
    }
    const row = assessment.weeks[0]?.requirements.find((r) => r.id === "supply-voltage" && r.phase === "L2");
    expect(english(chart("voltage-profile").title)).toBe(
      `L2 was above 253.0 V in ${row?.outside} of 1008 intervals, mostly between 12 h and 14 h`,
    );
  });

  it("say how near it came where nothing lay outside", () => {
    expect(english(chart("thd-voltage-profile").title)).toMatch(
      /every value lay within the limit \(at most 8 %\); found .* %$/,
    );
  });

  it("leave flagged intervals out where the requirement does, and count them where it does", async () => {
    const { assessment, measurements } = await sampleReport({ flagged: [100, 200] });
    const counted = Object.fromEntries(
      subjectsOf(assessment, measurements).map(({ id, phases }) => [id, phases[0]?.counted.length]),
    );
    expect(counted).toMatchObject({ voltage: 1008, "thd-voltage": 908 });
  });

  it.each([
    [{ 11: 7, 12: 9, 13: 9, 14: 7 }, [11, 15]],
    [{ 23: 10, 0: 10 }, [23, 1]],
    [{ 3: 1 }, [3, 4]],
    [Object.fromEntries(Array.from({ length: 24 }, (_, h) => [h, 1])), undefined],
    [{}, undefined],
  ])("the busiest hours of %j are %j", (counts, hours) => {
    const list = Array.from({ length: 24 }, (_, h) => (counts as Record<number, number>)[h] ?? 0);
    expect(busiestHours(list)).toEqual(hours);
  });
});

describe("profile data", () => {
  it("break the line at a gap and draw no value there", async () => {
    const { assessment, measurements } = await sampleReport({ gap: [300, 400] });
    const subject = subjectsOf(assessment, measurements).find(({ id }) => id === "voltage");
    const { columns } = profileData(subject as never);
    const l1 = rowsOf(columns).filter(({ phase }) => phase === "L1");
    expect(l1).toHaveLength(908 + 1);
    expect(l1.filter(({ v }) => v === null)).toHaveLength(1);
  });

  it("of a long recording keep every extreme and mark each stretch with a value outside", async () => {
    const { assessment, measurements } = await sampleReport({ days: 56 });
    const subject = subjectsOf(assessment, measurements).find(({ id }) => id === "voltage");
    const data = profileData(subject as never);
    expect(data.step).toBe(4);
    const highest = Math.max(...(subject?.phases.flatMap(({ series }) => [...(series.max as Float64Array)]) ?? []));
    expect(data.extremes[1]).toBe(highest);
    const rows = rowsOf(data.columns).filter(({ phase }) => phase === "L2");
    const l2 = subject?.phases.find(({ phase }) => phase === "L2");
    const stretches = new Set(l2?.above.map((i) => Math.floor(i / 4)));
    expect(rows.filter(({ out }) => out !== null)).toHaveLength(stretches.size);
    expect(rows.length).toBe(8064 / 4);
  });
});

it("the shares end at 100 % and cross the limit at the share found", () => {
  const rows = rowsOf(chart("voltage-shares").data.shares as never).filter(({ phase }) => phase === "L2");
  const row = sample.assessment.weeks[0]?.requirements.find((r) => r.id === "supply-voltage" && r.phase === "L2");
  const within = rows.filter(({ x }) => (x as number) <= 253).at(-1)?.share as number;
  expect(within).toBeCloseTo(100 * (1 - (row?.outside as number) / 1008), 2);
  expect(rows.at(-1)?.share).toBe(100);
});

it("the day × hour map holds every value outside once", () => {
  const cells = rowsOf(chart("voltage-hours").data.cells as never);
  const row = sample.assessment.weeks[0]?.requirements.find((r) => r.id === "supply-voltage" && r.phase === "L2");
  expect(cells).toHaveLength(7 * 24);
  expect(cells.reduce((sum, { value }) => sum + (value as number), 0)).toBe(row?.outside);
});

it("the harmonics show the counted requirement's value beside each order's limit", () => {
  const { data, title } = chart("harmonics-by-order");
  const levels = rowsOf(data.levels as never);
  const row = sample.assessment.weeks[0]?.requirements.find(
    (r) => r.quantity === "harmonic-voltage" && r.order === 5 && r.phase === "L1",
  );
  expect(levels).toHaveLength(24 * 3);
  expect(levels.find(({ order, phase }) => order === 5 && phase === "L1")?.value).toBe(row?.percentile.high);
  expect(rowsOf(data.limits as never).find(({ order }) => order === 5)).toEqual({ order: 5, limit: 6 });
  expect(english(title)).toBe("Harmonic order 5 above the limit on L1");
});

it("counts of a recording longer than the week of the tables say that they are of the whole recording", async () => {
  const longer = chartsOf(await sampleReport({ days: 7.25 }));
  for (const id of [
    "voltage-profile",
    "voltage-hours",
    "voltage-shares",
    "thd-voltage-profile",
    "thd-voltage-shares",
  ]) {
    expect(english(chart(id, longer).title), id).toContain("of the whole recording");
    expect(english(chart(id).title), id).not.toContain("whole recording");
  }
  expect(english(chart("voltage-shares", longer).title)).toMatch(/lay above 253\.0 V; of a week 5 % may$/);
});

describe("what may lie outside", () => {
  const label = (id: string) => rowsOf(chart(id).data.bars as never).map((row) => row.label);

  it("stands once where both sides share it", () => {
    expect(english(label("voltage-shares"))).toEqual(["", "together at most\n5 % outside\n207.0 to 253.0 V"]);
    expect(english(label("thd-voltage-shares"))).toEqual(["at most 5 %\nabove 8 %"]);
  });

  it("is none for a limit that always holds", () => {
    const row = sample.assessment.weeks[0]?.requirements.find(({ id }) => id === "supply-voltage-always");
    expect(english(barLabel("max", row as Row))).toBe("none outside\n195.5 to 253.0 V");
  });
});

describe("the day × hour map", () => {
  it("names the zone, and says how many hours a cell has", () => {
    const axes = (id: string) => JSON.stringify(chart(id).spec);
    expect(axes("voltage-hours")).toContain("hour of the day (Europe/Vienna)");
    expect(english(chart("voltage-hours").note)).toMatch(
      /^Each cell is one hour of one day on L2 .* Empty cells: no valid data\. /,
    );
    expect(english(chart("plt-hours").note)).toMatch(/^Each cell is 2 hours of one day on /);
  });

  it("says that the change of the clock leaves an hour out, and that weeks share rows", async () => {
    const spring = chartsOf(await sampleReport({ days: 40, orders: 2 }));
    expect(english(chart("voltage-hours", spring).note)).toContain("no valid data, or no such hour (clock change).");
    expect(english(chart("voltage-hours", spring).note)).toMatch(/^Each cell is one hour of one day of the week on /);
  });
});

it("seven days at any start, which list only what is worse, take no limit from the charts", () => {
  const { assessment, measurements } = sample;
  const [week] = assessment.weeks;
  if (week === undefined) throw new RangeError("a week expected");
  const requirements = week.requirements.filter(({ id }) => id === "flicker");
  const weeks = [
    { ...week, verdict: "conforms" as const },
    { ...week, kind: "worst-sliding" as const, requirements },
  ];
  const ids = chartsOf({ assessment: { ...assessment, weeks }, measurements }).map(({ id }) => id);
  expect(ids.sort()).toEqual(charts.map(({ id }) => id).sort());
});
