import { describe, expect, it } from "vitest";
import { runChecks } from "../../src/checks/index.js";
import { PHASE_TO_NEUTRAL } from "../../src/recording/quantity.js";
import { isoUtc } from "../../src/recording/time.js";
import { CLEAN, VILLAGE } from "../support/sample-logs.js";
import { inputOf, keepRows, soundWeek, startOf, valuesIn, withLedger } from "./support.js";

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];

describe("sound weeks", () => {
  it.each([0, 1, 2])("give no finding at all when written with %s decimals", (decimals) => {
    for (const seed of SEEDS) expect(runChecks(inputOf(soundWeek({ seed, decimals, site: CLEAN })))).toEqual([]);
  });

  it.each([0, 1])("on a weak line give no finding that blocks or warns of danger, with %s decimals", (decimals) => {
    for (const seed of SEEDS) {
      const findings = runChecks(inputOf(soundWeek({ seed, decimals, site: VILLAGE })));
      expect(findings.filter((f) => f.severity === "blocks" || f.danger !== undefined)).toEqual([]);
    }
  });
});

describe("all checks together", () => {
  it("tell dangers first, then what blocks, then notes, then what has no effect", () => {
    const week = keepRows(soundWeek(), (i) => i < 500);
    valuesIn(week, "voltage", "L1")[20] = 290;
    valuesIn(week, "voltage", "L2").set(valuesIn(week, "voltage", "L3"));
    const findings = runChecks(inputOf({ ...withLedger(week, { duplicates: 2 }), end: startOf(500) }));
    expect(findings.map((f) => `${f.id} ${f.severity}`)).toEqual([
      "open-neutral note",
      "highest-voltage note",
      "identical-phases blocks",
      "mean-outside-extremes blocks",
      "mean-outside-extremes note",
      "recording-length note",
      "duplicate-rows none",
    ]);
  });

  it("give every time of a sentence in its evidence, for other languages", () => {
    const week = soundWeek();
    for (const phase of PHASE_TO_NEUTRAL) valuesIn(week, "voltage", phase).fill(285, 200, 220);
    valuesIn(week, "voltage", "L2").fill(3, 300, 350);
    valuesIn(week, "frequency", "system").fill(50.003, 10, 40);
    const findings = runChecks(inputOf(withLedger(week, { outOfOrder: 3, conflicts: [startOf(4)] })));
    expect(findings.length).toBeGreaterThan(5);
    for (const { sentence, evidence } of findings) {
      const times = String(sentence).match(/\d{4}-\d\d-\d\dT[\d:]+Z/g) ?? [];
      for (const time of times) expect(Object.values(evidence).flat()).toContain(time);
      expect(times.every((t) => isoUtc(Date.parse(t) * 1000) === t)).toBe(true);
    }
  });
});
