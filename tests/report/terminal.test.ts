import { expect, it } from "vitest";
import { GERMAN } from "../../src/report/languages/de.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { terminalText } from "../../src/report/terminal.js";
import { UNCONFIRMED_NOTE } from "../../src/report/wording.js";
import { sampleReport } from "./support.js";

const flat = (text: string) => text.replace(/\s+/g, " ");

it("fits 100 columns and has a line per requirement with counts and verdict", async () => {
  const { assessment } = await sampleReport();
  const text = terminalText(assessment, ENGLISH);
  for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  expect(text).toMatch(/^The supply voltage did not conform/);
  expect(text).toMatch(/L2 +207\.0 to 253\.0 V +\d+ of 1008, 50 may +\d{3}\.\d V +does not conform/);
  expect(text).toMatch(/L1, order 5 +at most 6 % .* does not conform/);
  for (const { reason } of assessment.notAssessed) expect(flat(text)).toContain(reason.sentence);
});

it("keeps the columns of its table in line where a word is longer than the first of them", async () => {
  const { assessment } = await sampleReport();
  const lines = terminalText(assessment, GERMAN).split("\n");
  const head = lines.find((line) => line.startsWith("Anforderung ")) ?? "";
  const rows = lines.filter((line) => /^(Versorgungsspannung|Oberschwingungsspannungen).* V|% {2,}\d/.test(line));
  expect(rows.length).toBeGreaterThan(2);
  for (const row of rows) expect(row.indexOf(" von "), row).toBeGreaterThan(head.indexOf("außerhalb"));
  for (const row of rows) expect(row.slice(0, head.indexOf("ungünstigst an")), row).toMatch(/ $/);
});

it("marks unconfirmed limits and explains the mark", async () => {
  const confirmed = terminalText((await sampleReport({ orders: 4 })).assessment, ENGLISH);
  expect(confirmed).not.toContain("*");
  const { assessment } = await sampleReport({ rules: "en50160-2022-lv" });
  expect(flat(terminalText(assessment, ENGLISH))).toContain(`* ${UNCONFIRMED_NOTE}`);
  expect(terminalText(assessment, ENGLISH)).toMatch(/ V\*/);
});

it("lists the weeks where there are several", async () => {
  const { assessment } = await sampleReport({ days: 14, middayRise: 10, orders: 2 });
  expect(terminalText(assessment, ENGLISH)).toContain(
    "the week from Mon 9 Mar 2026 00:00 to Mon 16 Mar 2026 00:00: conforms",
  );
});

it("puts a danger first, with the cautions", async () => {
  const { assessment } = await sampleReport({
    findings: [
      {
        id: "open-neutral",
        severity: "note",
        sentence: "L1 rose while L2 fell.",
        evidence: {},
        quantities: ["voltage"],
        phases: [],
        danger: "open-neutral",
      },
    ],
  });
  const text = flat(terminalText(assessment, ENGLISH));
  expect(text).toMatch(/^Danger: Unless this has been put right since the recording: keep away from live parts/);
  expect(text.indexOf("What was measured: L1 rose while L2 fell.")).toBeGreaterThan(text.indexOf("Local codes"));
  expect(text).toContain("licensed electrician");
});

it("counts the notes and remarks that stand in the report, without dangers and what blocks, which it prints", async () => {
  const { assessment } = await sampleReport();
  type Found = (typeof assessment.recording.findings)[number];
  const note: Found = {
    id: "gaps",
    severity: "note",
    sentence: "Some are missing.",
    evidence: {},
    quantities: [],
    phases: [],
  };
  const findings: Found[] = [note, note, { ...note, severity: "blocks" }, { ...note, danger: "open-neutral" }];
  const recording = { ...assessment.recording, findings, remarks: ["the file is cut off"] };
  const text = (r: typeof recording) => flat(terminalText({ ...assessment, recording: r }, ENGLISH));
  expect(text(recording)).toContain("in the report: notes on the recording: 2; remarks on reading the log: 1");
  expect(text({ ...recording, findings: [], remarks: [] })).not.toContain("in the report:");
});

it("lets no control character out of a log's names", async () => {
  const { assessment } = await sampleReport();
  const [first, ...rest] = assessment.notAssessed;
  if (first === undefined) throw new RangeError("nothing was left unassessed");
  const reason = { ...first.reason, sentence: "column \u001b[31mred\u0007" };
  const text = terminalText({ ...assessment, notAssessed: [{ ...first, reason }, ...rest] }, ENGLISH);
  expect(text).toContain("column �[31mred�");
});

it("names the zone once, and the part of a recording that was asked for", async () => {
  const { assessment } = await sampleReport();
  expect(terminalText(assessment, ENGLISH)).toContain(
    "Recorded from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00. Times: Europe/Vienna.",
  );
  const cropped = { start: "2024-02-01T00:00:00Z", end: "2026-03-20T00:00:00Z" };
  const zone = { value: "UTC", origin: "assumed" as const };
  const part = {
    ...assessment,
    setup: { ...assessment.setup, zone },
    recording: { ...assessment.recording, zone: "UTC", cropped },
  };
  expect(flat(terminalText(part, ENGLISH))).toContain(
    "Only Sun 1 Mar 2026 23:00 to Sun 8 Mar 2026 23:00 of a recording from Thu 1 Feb 2024 00:00 to Fri 20 Mar 2026 00:00 was assessed, on request. Times: UTC (assumed; the log names no zone).",
  );
});

it("gives the reason of undecided rows and the finding that blocks, in local time", async () => {
  const blocking = {
    id: "x",
    severity: "blocks" as const,
    sentence: "Nothing fits from 2026-03-02T12:00:00Z on.",
    evidence: {},
    quantities: ["plt" as const],
    phases: [],
  };
  const { assessment } = await sampleReport({ days: 2, middayRise: 10, orders: 2 });
  const { assessment: longer } = await sampleReport({ days: 14, gap: [400, 1008], findings: [blocking] });
  const text = terminalText(longer, ENGLISH);
  for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  expect(text).toContain("kept values from being judged: Nothing fits from Mon 2 Mar 2026 13:00 (Europe/Vienna) on.");
  expect(flat(text)).toMatch(/undecided: [^:]*[Ff]licker[^:]*: see what kept values from being judged, above\./);
  expect(flat(text)).toMatch(/undecided: Supply voltage[^:]*: \d+ of 1008 intervals are valid; .* either way\./);
  expect(terminalText(assessment, ENGLISH)).toMatch(/^The recording of 2 d cannot show/);
  expect(terminalText(assessment, ENGLISH)).not.toContain("undecided: ");
});

it("does not call a year a week", async () => {
  const { assessment } = await sampleReport({ middayRise: 10, orders: 2 });
  const [week] = assessment.weeks;
  if (week === undefined) throw new RangeError("a week expected");
  const year = { ...week, kind: "year" as const, end: "2027-03-01T23:00:00Z", complete: false };
  expect(terminalText({ ...assessment, weeks: [week, year] }, ENGLISH)).toContain(
    "the time from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00, less than 365 days: conforms",
  );
});
