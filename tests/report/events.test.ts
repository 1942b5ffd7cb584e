import { describe, expect, it } from "vitest";
import { rowsOf } from "../../src/report/charts/chart.js";
import { compileChart, drawChart } from "../../src/report/charts/draw.js";
import { eventScatter } from "../../src/report/charts/event-scatter.js";
import { countsIn, eventTables, SHOWN, worstFirst } from "../../src/report/events.js";
import { htmlReport } from "../../src/report/html/index.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { svg } from "../../src/report/pictures.js";
import { terminalText } from "../../src/report/terminal.js";
import { scatterTitle } from "../../src/report/wording-event-tables.js";
import { eventsFinding, eventsTitle } from "../../src/report/wording-events.js";
import { statement } from "../../src/report/wording-statement.js";
import { madeEvent, madeRecord, manyEvents } from "./event-support.js";
import { CONTEXT, english, sampleReport } from "./support.js";

const deep = madeEvent({ atS: 3600, durationS: 0.12, percent: 41, phases: ["L1", "L3"] });
const recorded = { ...deep, ...madeRecord(deep) };
const EVENTS = [
  madeEvent({ atS: 60.25, durationS: 0.08, percent: 85 }),
  madeEvent({ atS: 120, durationS: 0.09, percent: 88.96 }),
  recorded,
  madeEvent({ kind: "swell", atS: 7200, durationS: 0.2, percent: 115, phases: ["L2"] }),
  madeEvent({
    atS: 9000,
    durationS: 0.2,
    percent: 72,
    more: { complete: false, cutOff: { end: "recording" } },
  }),
  madeEvent({ kind: "rapid-voltage-change", atS: 9100, durationS: 0.3, percent: 4.2 }),
];

const { assessment, measurements } = await sampleReport({ events: EVENTS });
const titleOf = async (...events: Parameters<typeof madeEvent>[0][]) =>
  eventsTitle((await sampleReport({ events: events.map(madeEvent), days: 1, orders: 2 })).assessment);

describe("the finding", () => {
  it("counts the kinds and names the deepest dip", () => {
    expect(english(eventsTitle(assessment))).toBe(
      "4 dips, 1 swell and 1 rapid voltage change; the deepest left 41 % for 120 ms on L1 and L3",
    );
    expect(english(statement(assessment).further)).toContain(`Recorded as well: ${eventsFinding(assessment)}.`);
  });

  it("names the longest interruption, the highest swell, the one event there is", async () => {
    const dip = { atS: 1, durationS: 1, percent: 0.5, more: { interrupted: true } } as const;
    const gone = { kind: "interruption", percent: 0.5, atS: 1.01 } as const;
    expect(english(await titleOf(dip, { ...gone, durationS: 0.98 }, { ...gone, atS: 90, durationS: 200 }))).toBe(
      "2 interruptions and 1 dip (1 around an interruption); the longest interruption lasted 3 min 20 s",
    );
    const swell = { kind: "swell", atS: 1, durationS: 2.5, percent: 118 } as const;
    expect(english(await titleOf(swell, { ...swell, percent: 112 }))).toBe(
      "2 swells; the highest reached 118 % for 2.50 s on L1",
    );
    expect(english(await titleOf({ atS: 1, durationS: 0.05, percent: 60 }))).toBe(
      "1 dip; it left 60 % for 50 ms on L1",
    );
    expect(english(await titleOf({ kind: "rapid-voltage-change", atS: 1, durationS: 0.05, percent: 4 }))).toBe(
      "1 rapid voltage change; it was 9.2 V (4 %) on L1",
    );
  });

  it("never rounds a voltage out of its cell, nor a duration", async () => {
    expect(english(await titleOf({ atS: 1, durationS: 0.20004, percent: 89.96 }))).toBe(
      "1 dip; it left 89.96 % for 200.04 ms on L1",
    );
  });
});

it("the worst event comes first: by deviation, an interruption before its dip, other kinds last", () => {
  expect(worstFirst(assessment.events).map(({ kind, percent }) => `${kind} ${percent}`)).toEqual([
    "dip 41",
    "dip 72",
    "dip 85",
    "swell 115",
    "dip 88.96",
    "rapid-voltage-change 4.2",
  ]);
  const like = { ...(assessment.events[0] as (typeof assessment.events)[number]), percent: 0 };
  expect(worstFirst([like, { ...like, kind: "interruption" }]).map(({ kind }) => kind)).toEqual([
    "interruption",
    "dip",
  ]);
  const { percent: _, ...unknown } = like;
  expect(worstFirst([unknown, ...assessment.events]).at(-2)).toBe(unknown);
});

describe("the page", async () => {
  const [file] = await htmlReport.render(assessment, measurements, CONTEXT);
  const page = String(file?.content);
  const section = /<section id="events">[\s\S]*?<\/section>/.exec(page)?.[0] ?? "";
  const rows = (section.match(/<tr class="event">[\s\S]*?<\/tr>/g) ?? []).map((row) =>
    row
      .replace(/<[^>]*>/g, "|")
      .replace(/\u00a0/g, " ")
      .replace(/[|\s]*\|[|\s]*/g, "|"),
  );

  it("lists each event in the standard's words, in local time with milliseconds, with its cell and what cut it off", () => {
    expect(rows).toHaveLength(6);
    expect(rows[0]).toBe("|1. voltage dip|L1 and L3|Mon 2 Mar 2026 01:00:00.000|120 ms|94.3 V|41.0 %|C1|whole|");
    expect(rows[1]).toBe(
      "|2. voltage dip|L1|Mon 2 Mar 2026 02:30:00.000|at least 200 ms|165.6 V|72.0 %|–|cut off: went on after the recording|",
    );
    expect(rows[2]).toContain("|Mon 2 Mar 2026 00:01:00.250|80 ms|195.5 V|85.0 %|A1|whole|");
    expect(rows[5]).toContain("|6. rapid voltage change|L1|");
  });

  it("counts the cells in the form of the standard's tables", () => {
    const counts = (kind: string) => {
      const table = new RegExp(`data-table="${kind}"[\\s\\S]*?</table>`).exec(section)?.[0] ?? "";
      const cells = [...table.matchAll(/data-cell="(\w+)"[^>]*><small>\w+<\/small> (\d+)/g)];
      const counted = cells.map(([, name = "", count]): [string, number] => [name, Number(count)]);
      return { table, cells: Object.fromEntries(counted) };
    };
    const dips = counts("dip");
    expect(Object.keys(dips.cells)).toHaveLength(25);
    expect(Object.entries(dips.cells).filter(([, count]) => count > 0)).toEqual([
      ["A1", 2],
      ["C1", 1],
    ]);
    for (const bounds of ["90 &gt; u ≥ 80", "5 &gt; u", "10 ≤ t ≤ 200", "5000 &lt; t ≤ 60000"])
      expect(dips.table).toContain(bounds);
    const swells = counts("swell");
    expect(Object.keys(swells.cells)).toHaveLength(6);
    expect(swells.cells.T1).toBe(1);
    expect(swells.table).toContain("120 &gt; u &gt; 110");
    expect(section).toContain("1 dip is in no cell");
  });

  it("opens the event with a record to its course, with the edge of the table, and its waveform; the others say that there is none", () => {
    expect(section.match(/<figure class="event">/g)).toHaveLength(2);
    expect(section.match(/No course was kept/g)).toHaveLength(5);
    expect(section).toContain("L1 fell to 94.3\u00a0V (41.0\u00a0%) for 120\u00a0ms; L3");
    expect(section).toContain(">90 % of 230 V</text>");
    expect(section).toContain("As sampled, 3200 values per second");
    expect(section.match(/<details>/g)).toHaveLength(6);
  });

  it("has no section where the log could not show events, and says so where there were none", async () => {
    const pageOf = async (report: Awaited<ReturnType<typeof sampleReport>>) =>
      String((await htmlReport.render(report.assessment, report.measurements, CONTEXT))[0]?.content);
    expect(await pageOf(await sampleReport({ days: 1, orders: 2 }))).not.toContain('id="events"');
    const none = await pageOf(await sampleReport({ days: 1, orders: 2, events: [] }));
    expect(none).toContain("No dip, swell or interruption was found.");
    expect(none).not.toContain("data-cell");
  });
});

describe("the scatter", () => {
  const chart = eventScatter(assessment);
  const data = (name: string) => rowsOf(chart?.data[name] as never);

  it("shows every dip and swell once, its kind by the symbol and a cut-off one hollow", () => {
    expect(data("spots").map(({ percent, duration, shape, whole }) => [percent, duration, shape, whole])).toEqual([
      [85, 0.08, "triangle-down", 1],
      [88.96, 0.09, "triangle-down", 1],
      [41, 0.12, "triangle-down", 1],
      [115, 0.2, "triangle-up", 1],
      [72, 0.2, "triangle-down", 0],
    ]);
    expect(english(scatterTitle(assessment))).toBe("Dips in cells A1 and C1; swells in cell T1");
  });

  it("has a box for each cell at the bounds of the rule set, with the count in it", () => {
    const cells = data("cells");
    expect(cells).toHaveLength(31);
    expect(cells.find(({ name }) => name === "C1: 1")).toMatchObject({ from: 0.01, to: 0.2, low: 40, high: 70 });
    expect(cells.find(({ name }) => name === "A5: 0")).toMatchObject({ from: 5, to: 60, low: 80, high: 90 });
  });

  it("reaches from 10 ms beyond 3 min and draws without a fault", async () => {
    if (chart === undefined) throw new RangeError("no scatter");
    const drawn = await drawChart(chart, ENGLISH, await compileChart(chart, ENGLISH, true));
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    for (const mark of ["10 ms", "200 ms", "5 s", "3 min"]) expect(drawn).toContain(`>${mark}</text>`);
  });
});

describe("a thousand events", async () => {
  const many = await sampleReport({ events: manyEvents(1000) });
  const [file] = await htmlReport.render(many.assessment, many.measurements, CONTEXT);
  const page = String(file?.content);

  it("are counted to the last one, the worst listed and the rest said", () => {
    expect(page.match(/<tr class="event">/g)).toHaveLength(SHOWN);
    expect(page).toContain("Not listed here: 876 dips and 100 swells, less severe than these; results.json holds all.");
    for (const { table } of eventTables(many.assessment)) {
      const { cells, outside } = countsIn(table, many.assessment.events);
      const inCells = [...cells.values()].reduce((sum, count) => sum + count, 0);
      expect(inCells + outside).toBe(table.event === "dip" ? 900 : 100);
    }
    const spots = rowsOf(eventScatter(many.assessment)?.data.spots as never);
    expect(spots.reduce((sum, { count }) => sum + (count as number), 0)).toBe(1000);
  });

  it("take less than 1.5 s of processor time with everything else on the page, and ten thousand less than 1 s in the scatter", async () => {
    const secondsOf = async (work: () => Promise<unknown>) => {
      const before = process.cpuUsage().user;
      await work();
      return (process.cpuUsage().user - before) / 1e6;
    };
    expect(await secondsOf(() => htmlReport.render(many.assessment, many.measurements, CONTEXT))).toBeLessThan(1.5);
    const { assessment: most } = await sampleReport({ events: manyEvents(10_000), days: 1, orders: 2 });
    const draw = async () => {
      const chart = eventScatter(most);
      if (chart !== undefined) await drawChart(chart, ENGLISH, await compileChart(chart, ENGLISH, false));
    };
    expect(await secondsOf(draw)).toBeLessThan(1);
  });

  it("keep the page below 5 MB without the chart library", () => {
    expect(page.length).toBeLessThan(5e6);
  });
});

it("the terminal lists the worst five, the cells and how many more there are, in 100 columns", async () => {
  const text = terminalText(assessment, ENGLISH);
  for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  expect(text).toMatch(/voltage dip +L1 L3 +Mon 2 Mar 2026 01:00:00\.000 +120 ms +94\.3 V +41\.0 % +C1\n/);
  expect(text).toContain("1 more in results.json.");
  expect(text).not.toContain("rapid voltage change  ");
  expect(text).toContain("dips by cell: A1 2, C1 1, in none 1\nswells by cell: T1 1\n");
  const wide = madeEvent({
    atS: 1,
    durationS: 0.6,
    percent: 0,
    phases: ["L12", "L23", "L31"],
    more: { interrupted: true, complete: false, cutOff: { start: "gap", end: "recording" } },
  });
  const { assessment: broad } = await sampleReport({ days: 1, orders: 2, events: [wide] });
  for (const line of terminalText(broad, ENGLISH).split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
});

it("the scatter, and course and waveform of the worst events, are files", async () => {
  const files = await svg.render(assessment, measurements, CONTEXT);
  const paths = files.map(({ path }) => path);
  expect(paths).toEqual(
    expect.arrayContaining(["charts/events.svg", "charts/event-01-course.svg", "charts/event-01-waveform.svg"]),
  );
  expect(paths.filter((path) => path.startsWith("charts/event-"))).toHaveLength(2);
  const course = String(files.find(({ path }) => path === "charts/event-01-course.svg")?.content);
  expect(course).toMatch(/^<svg[^>]* viewBox=/);
  expect(course).toContain("L1 fell to 94.3 V (41.0 %)");
});
