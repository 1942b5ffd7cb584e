import { expect, it } from "vitest";
import { terminalText } from "../../src/report/terminal.js";
import { UNCONFIRMED_NOTE } from "../../src/report/wording.js";
import { sampleReport } from "./support.js";

const flat = (text: string) => text.replace(/\s+/g, " ");

it("fits 100 columns and has a line per requirement with counts and verdict", async () => {
  const { assessment } = await sampleReport();
  const text = terminalText(assessment);
  for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  expect(text).toMatch(/^The supply voltage did not conform/);
  expect(text).toMatch(/L2 +207\.0 to 253\.0 V +\d+ of 1008, 50 may +\d{3}\.\d V +does not conform/);
  expect(text).toMatch(/L1, order 5 +at most 6 % .* does not conform/);
  for (const { reason } of assessment.notAssessed) expect(flat(text)).toContain(reason.sentence);
});

it("marks unconfirmed limits and explains the mark", async () => {
  const confirmed = terminalText((await sampleReport({ orders: 4 })).assessment);
  expect(confirmed).not.toContain("*");
  const { assessment } = await sampleReport({ rules: "en50160-2022-lv" });
  expect(flat(terminalText(assessment))).toContain(`* ${UNCONFIRMED_NOTE}`);
  expect(terminalText(assessment)).toMatch(/ V\*/);
});

it("lists the weeks where there are several", async () => {
  const { assessment } = await sampleReport({ days: 14, middayRise: 10, orders: 2 });
  expect(terminalText(assessment)).toContain("the week from Mon 9 Mar 2026 00:00 to Mon 16 Mar 2026 00:00: conforms");
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
  const text = flat(terminalText(assessment));
  expect(text).toMatch(/^Danger: L1 rose while L2 fell\. Keep away from live parts/);
  expect(text).toContain("licensed electrician");
});

it("lets no control character out of a log's names", async () => {
  const { assessment } = await sampleReport();
  const [first, ...rest] = assessment.notAssessed;
  if (first === undefined) throw new RangeError("nothing was left unassessed");
  const reason = { ...first.reason, sentence: "column \u001b[31mred\u0007" };
  const text = terminalText({ ...assessment, notAssessed: [{ ...first, reason }, ...rest] });
  expect(text).toContain("column �[31mred�");
});
