import { describe, expect, it } from "vitest";
import { coverageText } from "../../src/report/html/requirements.js";
import { decidingWeek } from "../../src/report/rows.js";
import { allowedText, foundText, limitText, outsideText, placeText, worstText } from "../../src/report/wording.js";
import { statement } from "../../src/report/wording-statement.js";
import type { Assessment, Row } from "../../src/rules/assessment.js";
import { english, sampleReport } from "./support.js";

const { assessment } = await sampleReport();
const rowOf = (a: Assessment, id: string, phase: string): Row =>
  a.weeks[0]?.requirements.find((row) => row.id === id && row.phase === phase) as Row;

describe("the statement", () => {
  it("says in one sentence what failed, where, when, by how many, and how many may", () => {
    const row = rowOf(assessment, "supply-voltage", "L2");
    expect(row.outside).toBeGreaterThan(50);
    expect(english(statement(assessment).sentence)).toBe(
      `The supply voltage did not conform to EN 50160:2010, low voltage, in the week from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00 (Europe/Vienna): on phase L2, ${row.outside} of 1008 ten-minute values lay above 253.0 V; 50 may.`,
    );
  });

  it("says what else was not met and what was not assessed", () => {
    const { further } = statement(assessment);
    expect(english(further)).toContain("3 of the 6 requirements judged were not met.");
    expect(english(further)).toContain(
      `${assessment.notAssessed.length} requirements were not assessed; see below why.`,
    );
  });

  it("names what was judged and what was not where anything binding but the frequency is missing", async () => {
    const good = await sampleReport({ middayRise: 10, orders: 4 });
    expect(good.assessment.verdict).toBe("conforms");
    expect(english(statement(good.assessment).sentence)).toBe(
      "In what could be judged (supply voltage, flicker severity, voltage unbalance, harmonic voltages, total harmonic distortion) the supply conformed to EN 50160:2010, low voltage, in the week from Mon 2 Mar 2026 00:00 to Mon 9 Mar 2026 00:00 (Europe/Vienna); not judged: power frequency, part of the harmonic voltages, mains signalling.",
    );
    const { series } = good.measurements;
    const noVoltage = { ...good.measurements, series: series.filter(({ quantity }) => quantity !== "voltage") };
    const { assessment: blind } = await sampleReport({ measurements: noVoltage });
    expect(english(statement(blind).sentence)).toMatch(
      /^In what could be judged \(flicker severity, .*; not judged: power frequency, supply voltage, /,
    );
  });

  it("is short where only the frequency is missing", async () => {
    const { assessment: a } = await sampleReport({ middayRise: 10 });
    const [week] = a.weeks;
    if (week === undefined) throw new RangeError("a week expected");
    const requirements = week.requirements.map((row) => ({ ...row, verdict: "conforms" as const }));
    const all = new Set([...requirements.map(({ id }) => id), "frequency"]);
    const ruleSet = { ...a.ruleSet, requirements: a.ruleSet.requirements.filter(({ id }) => all.has(id)) };
    const only = {
      ...a,
      verdict: "conforms" as const,
      ruleSet,
      weeks: [{ ...week, verdict: "conforms" as const, requirements }],
      notAssessed: [{ requirement: "frequency", reason: { id: "x", sentence: "None.", values: {} } }],
    };
    expect(english(statement(only).sentence)).toMatch(
      /^The supply voltage conformed to .* \(Europe\/Vienna\); not judged: power frequency\.$/,
    );
  });

  it("speaks of limits kept where the set is not a standard's own", async () => {
    const { assessment: a } = await sampleReport({ rules: "netherlands-lv" });
    expect(english(statement(a).sentence)).toMatch(
      /^The supply voltage did not keep the limits of “Netherlands, low voltage \(.*\)” in the week/,
    );
  });

  it("counts as not robust only verdicts that missing intervals could change", async () => {
    const unsound = {
      id: "x",
      severity: "blocks" as const,
      sentence: "The transformer ratio is wrong.",
      evidence: {},
      quantities: ["voltage" as const],
      phases: [],
    };
    const { assessment: blocked } = await sampleReport({ findings: [unsound] });
    const said = statement(blocked).further.join(" ");
    expect(said).not.toContain("robust");
    expect(said).toContain("1 of the 6 requirements judged was not met and 2 could not be decided.");

    const [week] = assessment.weeks;
    if (week === undefined) throw new RangeError("a week expected");
    const requirements = week.requirements.map((row) => (row.id === "flicker" ? { ...row, robust: false } : row));
    expect(english(statement({ ...assessment, weeks: [{ ...week, requirements }] }).further)).toContain(
      "Missing intervals could change the verdict on one requirement (“robust: no”).",
    );
  });

  it("speaks of one requirement in the singular", () => {
    const [week] = assessment.weeks;
    if (week === undefined) throw new RangeError("a week expected");
    const of = (confirmed: boolean, verdict: "conforms" | "does-not-conform" | "undecided") => ({
      ...assessment,
      verdict,
      weeks: [{ ...week, verdict, requirements: [{ ...rowOf(assessment, "flicker", "L1"), confirmed, verdict }] }],
    });
    expect(english(statement(of(true, "conforms")).further)).toContain("The one requirement judged was met.");
    expect(english(statement(of(false, "does-not-conform")).further)).toEqual(
      expect.arrayContaining([
        "The one requirement judged was not met.",
        "The one requirement judged rests, at least in part, on limits that no public document at hand confirms.",
      ]),
    );
    expect(english(statement(of(true, "undecided")).further)).toContain(
      "The one requirement with values could not be decided.",
    );
  });

  it("gives the reason of the supply voltage first where nothing could be judged", () => {
    const reason = (sentence: string) => ({ id: "not-logged", sentence, values: {} });
    const [week] = assessment.weeks;
    if (week === undefined) throw new RangeError("a week expected");
    const empty = {
      ...assessment,
      verdict: "not-assessed" as const,
      weeks: [{ ...week, verdict: "not-assessed" as const, requirements: [] }],
      notAssessed: [
        { requirement: "frequency", reason: reason("The log holds no values of the power frequency.") },
        { requirement: "supply-voltage", reason: reason("The log holds no values of the supply voltage.") },
      ],
    };
    expect(english(statement(empty).sentence)).toMatch(
      /could not be judged by EN 50160:2010, low voltage: The log holds no values of the supply voltage\.$/,
    );
  });

  it("says undecided with the reason", async () => {
    const half = await sampleReport({ middayRise: 10, orders: 4, gap: [500, 1008] });
    expect(half.assessment.verdict).toBe("undecided");
    expect(english(statement(half.assessment).sentence)).toMatch(/is undecided: .*missing/);
  });

  it("counts the weeks where there are several", async () => {
    const { assessment: weeks } = await sampleReport({ days: 21 });
    expect(english(statement(weeks).further.join(" "))).toContain("Of 3 consecutive weeks 3 did not conform; see");
    const verdicts = ["conforms", "undecided", "undecided"] as const;
    const mixed = weeks.weeks.slice(0, 3).map((week, i) => ({ ...week, verdict: verdicts[i] ?? "undecided" }));
    expect(english(statement({ ...weeks, weeks: mixed }).further.join(" "))).toContain(
      "Of 3 consecutive weeks 1 conformed and 2 could not be decided; see",
    );
    expect(decidingWeek(weeks)).toBe(weeks.weeks[0]);
  });

  it("speaks of the week that has the verdict, not of an undecided rest nor of a better week before it", async () => {
    const { assessment: rest } = await sampleReport({ days: 7.25, middayRise: 10, orders: 4 });
    expect(rest.weeks.map(({ verdict }) => verdict)).toEqual(["conforms", "undecided"]);
    expect(rest.verdict).toBe("conforms");
    expect(english(statement(rest).sentence)).toMatch(/the supply conformed .* to Mon 9 Mar 2026 00:00/);
    expect(english(statement(rest).further[0])).toBe("All 6 requirements judged were met.");

    const { assessment: two } = await sampleReport({ days: 14 });
    const [first, second] = two.weeks;
    if (first === undefined || second === undefined) throw new RangeError("two weeks expected");
    const better = { ...two, weeks: [{ ...first, verdict: "conforms" as const }, second] };
    expect(english(statement(better).sentence)).toContain("in the week from Mon 9 Mar 2026 00:00");
  });
});

describe("cells", () => {
  const row = rowOf(assessment, "supply-voltage", "L2");

  it("name limit, counts and the worst value with its unit", () => {
    expect(english(limitText(row))).toBe("207.0 to 253.0 V");
    expect(english(allowedText(row))).toBe("50 (5 %)");
    expect(english(foundText({ ...row, outside: 50, n: 1008 }))).toBe("50 of 1008 (4.96 %)");
    expect(english(worstText({ ...row, worst: { value: 253.04, at: row.worst?.at ?? "" } }))).toBe("253.04 V");
    expect(english(placeText({ phase: "L1", order: 5 }))).toBe("L1, order 5");
    expect(english(placeText({ phase: "system" }))).toBe("supply");
  });

  it("say above or below only where nothing lay beyond the other limit", () => {
    expect(english(outsideText(row, assessment.summary))).toBe("above 253.0 V");
    const both = assessment.summary.map((s) => ({ ...s, min: 200 }));
    expect(english(outsideText(row, both))).toBe("outside 207.0 to 253.0 V");
    const low = assessment.summary.map((s) => ({ ...s, min: 200, max: 250 }));
    expect(english(outsideText(row, low))).toBe("below 207.0 V");
    expect(english(outsideText(row, []))).toBe("outside 207.0 to 253.0 V");
  });

  it("cut coverage downwards: 100 % means all", () => {
    expect(english(coverageText(1))).toBe("100 %");
    expect(english(coverageText(0.9999))).toBe("99.9 %");
    expect(english(coverageText(1007 / 1008))).toBe("99.9 %");
  });
});
