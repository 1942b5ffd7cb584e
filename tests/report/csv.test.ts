import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { csv } from "../../src/report/csv.js";
import { madeEvent } from "./event-support.js";
import { CONTEXT, sampleReport } from "./support.js";

/** Read back by csv-parse, which had no part in writing them. */
async function tables(
  report: Awaited<ReturnType<typeof sampleReport>>,
): Promise<Record<string, Record<string, string>[]>> {
  const files = await csv.render(report.assessment, report.measurements, CONTEXT);
  return Object.fromEntries(files.map(({ path, content }) => [path, parse(String(content), { columns: true })]));
}

describe("csv", async () => {
  const events = [
    madeEvent({ atS: 3600, durationS: 0.12, percent: 41.25, phases: ["L1", "L3"] }),
    madeEvent({
      kind: "swell",
      atS: 7200.5,
      durationS: 2,
      percent: 115,
      more: { complete: false, cutOff: { end: "gap" } },
    }),
  ];
  const report = await sampleReport({ orders: 3, events });
  const { "events.csv": eventRows = [], "requirements.csv": rows = [] } = await tables(report);

  it("holds every event with its full numbers, in UTC and in local time", () => {
    expect(eventRows.length).toBe(2);
    expect(eventRows[0]).toMatchObject({
      kind: "dip",
      phases: "L1 L3",
      start_utc: "2026-03-02T00:00:00Z",
      start_local: "2026-03-02T01:00:00.000",
      duration_s: "0.12",
      percent: "41.25",
      reference: "230",
      whole: "true",
      excluded: "false",
    });
    expect(eventRows[0]?.cell).toBe(`${report.assessment.events[0]?.row}${report.assessment.events[0]?.column}`);
    expect(eventRows[1]).toMatchObject({ kind: "swell", whole: "false", cut_off_start: "", cut_off_end: "gap" });
  });

  it("holds every counted row with the numbers of results.json", () => {
    const counted = report.assessment.weeks.flatMap((week) => week.requirements);
    expect(counted.length).toBeGreaterThan(10);
    expect(rows.length).toBe(counted.length);
    counted.forEach((row, i) => {
      expect(rows[i]).toMatchObject({ requirement: row.id, phase: row.phase, verdict: row.verdict, unit: row.unit });
      expect(Number(rows[i]?.outside)).toBe(row.outside);
      expect(Number(rows[i]?.valid)).toBe(row.n);
      expect(Number(rows[i]?.worst)).toBe(row.worst?.value);
      expect(rows[i]?.limit_max === "" ? undefined : Number(rows[i]?.limit_max)).toBe(row.limit.max);
    });
  });

  it("says beside a verdict what it would be without exclusions, where a row has any", async () => {
    const storm = { reason: "exceptional-weather", assertedBy: "network operator" } as const;
    const exclusions = [{ ...storm, from: "2026-03-03T11:00", to: "2026-03-03T14:00" }];
    const excluded = await sampleReport({ orders: 2, given: { exclusions } });
    const { "requirements.csv": told = [] } = await tables(excluded);
    const counted = excluded.assessment.weeks.flatMap((week) => week.requirements);
    const column = told.map((row) => row.verdict_without_exclusions);
    expect(column).toEqual(counted.map((row) => row.verdictWithoutExclusions ?? ""));
    expect(new Set(column)).toContain("does-not-conform");
    expect(new Set(rows.map((row) => row.verdict_without_exclusions))).toEqual(new Set([""]));
  });

  it("ends lines as RFC 4180 has it, and lets no text run as a formula", async () => {
    const clause = '=HYPERLINK("x"), 1';
    const weeks = report.assessment.weeks.map((week) => ({
      ...week,
      requirements: week.requirements.map((row) => ({ ...row, clause })),
    }));
    const odd = { ...report, assessment: { ...report.assessment, weeks } };
    const [, file] = await csv.render(odd.assessment, odd.measurements, CONTEXT);
    expect(String(file?.content)).toMatch(/\r\n$/);
    expect((await tables(odd))["requirements.csv"]?.[0]?.clause).toBe(`'${clause}`);
  });
});
