import { describe, expect, it } from "vitest";
import { declaredVoltage } from "../../src/checks/declared-voltage.js";
import type { Setup } from "../../src/recording/setup.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

const PHASES = ["L1", "L2", "L3"] as const;
const BETWEEN = ["L12", "L23", "L31"] as const;

/** Three voltages that wander by `spread` (share, peak) about a level; their median is just the level. */
function at(level: number, phases: readonly (typeof PHASES | typeof BETWEEN)[number][] = PHASES, spread = 0.01) {
  const values = Array.from({ length: 101 }, (_, i) => level * (1 + (spread * (i - 50)) / 50));
  return recordingOf(phases.map((p) => logged("voltage", p, values)));
}
const declared = (value: number, connection: "star" | "delta" = "star"): Partial<Setup> => ({
  declaredVoltage: { value, origin: "given" },
  connection: { value: connection, origin: "given" },
});
const assumed: Partial<Setup> = { declaredVoltage: { value: 230, origin: "inferred" } };

describe("declared voltage", () => {
  it.each([
    [400, declared(230), "phase-to-phase-logged", "--connection delta"],
    [400, declared(230), "phase-to-phase-logged", "--declared 398.37"],
    [231, declared(400), "phase-to-neutral-logged", "--declared 230.94"],
    [243, declared(400), "phase-to-neutral-logged", "--declared 230.94"],
    [0.2312, declared(230), "factor-1/1000", "state the unit"],
    [231_200, declared(230), "factor-1000", "state the unit"],
    [2310, declared(230), "factor-10", "voltageRatio"],
    [23.2, declared(230), "factor-1/10", "voltageRatio"],
    [23_200, declared(230), "factor-100", "voltageRatio"],
    [2.32, declared(230), "factor-1/100", "voltageRatio"],
    [462, declared(230), "factor-2", "voltageRatio"],
    [57.9, declared(20_000), "secondary-voltage", "20000/57.735"],
  ])("blocks the voltage at a median of %s V and names the mistake", (level, setup, explanation, remedy) => {
    const finding = only(run(declaredVoltage, at(level), setup));
    expect(finding).toMatchObject({ id: "declared-voltage", severity: "blocks", quantities: ["voltage"], phases: [] });
    expect(finding.evidence).toMatchObject({
      median: level,
      explanation,
      ratio: level / (setup.declaredVoltage?.value as number),
    });
    expect(String(finding.sentence)).toContain(remedy);
  });

  it.each([
    [231, declared(400, "delta"), "phase-to-neutral-logged", "--connection star"],
    [401, declared(231, "delta"), "phase-to-phase-logged", "--declared 400.1"],
    [101, declared(20_000, "delta"), "secondary-voltage", "20000/100"],
    [10_050, declared(20_000, "delta"), "factor-1/2", "voltageRatio"],
  ])("blocks it between phases at %s V too", (level, setup, explanation, remedy) => {
    const finding = only(run(declaredVoltage, at(level, BETWEEN), setup));
    expect(finding).toMatchObject({ severity: "blocks", evidence: { explanation } });
    expect(String(finding.sentence)).toContain(remedy);
  });

  it("blocks at another nominal voltage outside 85 to 115 %, and far from every explanation", () => {
    const other = only(run(declaredVoltage, at(277), declared(230)));
    expect(other).toMatchObject({ severity: "blocks", evidence: { explanation: "other-nominal", nominal: 277 } });
    expect(only(run(declaredVoltage, at(70), declared(230)))).toMatchObject({
      severity: "blocks",
      evidence: { explanation: "none", median: 70 },
    });
  });

  it("only notes a median outside 85 to 115 % that a very bad supply may have", () => {
    const finding = only(run(declaredVoltage, at(188), declared(230)));
    expect(finding).toMatchObject({ id: "declared-voltage", severity: "note", evidence: { median: 188 } });
    // 277 V again, but wandering by ±8 %: no clear level, so no other nominal voltage.
    expect(only(run(declaredVoltage, at(277, PHASES, 0.08), declared(230))).severity).toBe("note");
  });

  it("holds its peace from 85 to 115 %", () => {
    for (const level of [195.6, 222, 232, 264.4]) expect(run(declaredVoltage, at(level), declared(230))).toEqual([]);
    expect(only(run(declaredVoltage, at(195.4), declared(230))).severity).toBe("note");
    expect(only(run(declaredVoltage, at(264.6), declared(230))).severity).toBe("note");
  });

  it("notes a level at another nominal voltage where the declared one was not given", () => {
    const finding = only(run(declaredVoltage, at(239), assumed));
    expect(finding).toMatchObject({
      id: "other-nominal-voltage",
      severity: "note",
      evidence: { median: 239, nominal: 240 },
    });
    expect(run(declaredVoltage, at(239), declared(230))).toEqual([]);
    expect(run(declaredVoltage, at(236.5), assumed)).toHaveLength(1);
    for (const level of [236.3, 234.5, 231]) expect(run(declaredVoltage, at(level), assumed)).toEqual([]);
    expect(run(declaredVoltage, at(239, PHASES, 0.08), assumed)).toEqual([]);
  });

  it("leaves a dead phase out of the level", () => {
    const live = at(231);
    const dead = recordingOf([
      ...live.series.slice(0, 1),
      ...["L2", "L3"].map((p) => logged("voltage", p as "L2", Array(101).fill(0.4))),
    ]);
    expect(run(declaredVoltage, dead, declared(230))).toEqual([]);
  });

  it("finds none in a sound week, nor without voltages", () => {
    expect(run(declaredVoltage, soundWeek())).toEqual([]);
    expect(run(declaredVoltage, recordingOf([logged("frequency", "system", [50, 50.01])]))).toEqual([]);
  });
});
