import { describe, expect, it } from "vitest";
import { leftOutVoltages } from "../../src/checks/left-out-voltages.js";
import { isBetweenPhases, only, run, soundWeek, without } from "./support.js";

const delta = (origin: "given" | "inferred") => ({ connection: { value: "delta" as const, origin } });

describe("voltages that the connection leaves out", () => {
  it("names voltages to neutral that a delta connection does not judge", () => {
    const finding = only(run(leftOutVoltages, soundWeek(), delta("given")));
    expect(finding).toMatchObject({
      id: "left-out-voltages",
      severity: "note",
      evidence: { phases: ["L1", "L2", "L3"] },
    });
    expect(String(finding.sentence)).toContain("as the setup says");
  });

  it("is silent for a star connection, and where only voltages between phases were logged", () => {
    expect(run(leftOutVoltages, soundWeek())).toEqual([]);
    const between = without(soundWeek(), (s) => s.quantity === "voltage" && !isBetweenPhases(s));
    expect(run(leftOutVoltages, between, delta("inferred"))).toEqual([]);
  });
});
