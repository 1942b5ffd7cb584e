import { describe, expect, it } from "vitest";
import { coverageText } from "../../src/report/html/requirements.js";
import { decidingWeek } from "../../src/report/rows.js";
import { allowedText, foundText, limitText, outsideText, placeText, worstText } from "../../src/report/wording.js";
import { statement } from "../../src/report/wording-statement.js";
import type { Assessment, Row } from "../../src/rules/assessment.js";
import { sampleReport } from "./support.js";

const { assessment } = await sampleReport();
const rowOf = (a: Assessment, id: string, phase: string): Row =>
  a.weeks[0]?.requirements.find((row) => row.id === id && row.phase === phase) as Row;

describe("the statement", () => {
  it("says in one sentence what failed, where, when, by how many, and how many may", () => {
    const row = rowOf(assessment, "supply-voltage", "L2");
    expect(row.outside).toBeGreaterThan(50);
    expect(statement(assessment).sentence).toBe(
      `The supply voltage did not conform to EN 50160:2010, low voltage, in the week from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00: on phase L2, ${row.outside} of 1008 ten-minute values lay above 253.0 V; 50 may.`,
    );
  });

  it("says what else was not met and what was not assessed", () => {
    const { further } = statement(assessment);
    expect(further).toContain("3 of 6 requirements judged were not met.");
    expect(further).toContain(`${assessment.notAssessed.length} requirements were not assessed; see below why.`);
  });

  it("does not call what was not measured good", async () => {
    const good = await sampleReport({ middayRise: 10, orders: 4 });
    expect(good.assessment.verdict).toBe("conforms");
    expect(statement(good.assessment).sentence).toMatch(/conformed to .*, in everything that was measured\.$/);
  });

  it("says undecided with the reason", async () => {
    const half = await sampleReport({ middayRise: 10, orders: 4, gap: [500, 1008] });
    expect(half.assessment.verdict).toBe("undecided");
    expect(statement(half.assessment).sentence).toMatch(/is undecided: .*missing/);
  });

  it("counts the weeks where there are several", async () => {
    const { assessment: weeks } = await sampleReport({ days: 21 });
    expect(statement(weeks).further.join(" ")).toContain("3 of 3 consecutive weeks did not conform");
    expect(decidingWeek(weeks)).toBe(weeks.weeks[0]);
  });

  it("speaks of the week that has the verdict, not of an undecided rest nor of a better week before it", async () => {
    const { assessment: rest } = await sampleReport({ days: 7.25, middayRise: 10, orders: 4 });
    expect(rest.weeks.map(({ verdict }) => verdict)).toEqual(["conforms", "undecided"]);
    expect(rest.verdict).toBe("conforms");
    expect(statement(rest).sentence).toMatch(/^The supply voltage conformed .* to Mon 9 Mar 2026 00:00/);
    expect(statement(rest).further[0]).toBe("All 6 requirements judged were met.");

    const { assessment: two } = await sampleReport({ days: 14 });
    const [first, second] = two.weeks;
    if (first === undefined || second === undefined) throw new RangeError("two weeks expected");
    const better = { ...two, weeks: [{ ...first, verdict: "conforms" as const }, second] };
    expect(statement(better).sentence).toContain("in the week from Mon 9 Mar 2026 00:00");
  });
});

describe("cells", () => {
  const row = rowOf(assessment, "supply-voltage", "L2");

  it("name limit, counts and the worst value with its unit", () => {
    expect(limitText(row)).toBe("207.0 to 253.0 V");
    expect(allowedText(row)).toBe("50 (5 %)");
    expect(foundText({ ...row, outside: 50, n: 1008 })).toBe("50 of 1008 (4.96 %)");
    expect(worstText({ ...row, worst: { value: 253.04, at: row.worst?.at ?? "" } })).toBe("253.04 V");
    expect(placeText({ phase: "L1", order: 5 })).toBe("L1, order 5");
    expect(placeText({ phase: "system" })).toBe("supply");
  });

  it("say above or below only where nothing lay beyond the other limit", () => {
    expect(outsideText(row, assessment.summary)).toBe("above 253.0 V");
    const both = assessment.summary.map((s) => ({ ...s, min: 200 }));
    expect(outsideText(row, both)).toBe("outside 207.0 to 253.0 V");
    const low = assessment.summary.map((s) => ({ ...s, min: 200, max: 250 }));
    expect(outsideText(row, low)).toBe("below 207.0 V");
    expect(outsideText(row, [])).toBe("outside 207.0 to 253.0 V");
  });

  it("cut coverage downwards: 100 % means all", () => {
    expect(coverageText(1)).toBe("100 %");
    expect(coverageText(0.9999)).toBe("99.9 %");
    expect(coverageText(1007 / 1008)).toBe("99.9 %");
  });
});
