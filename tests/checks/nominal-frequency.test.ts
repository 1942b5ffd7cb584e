import { describe, expect, it } from "vitest";
import { nominalFrequency } from "../../src/checks/nominal-frequency.js";
import { logged } from "../support/series.js";
import { only, recordingOf, run, soundWeek } from "./support.js";

const at = (hz: number) => recordingOf([logged("frequency", "system", [hz - 0.01, hz, hz + 0.01])]);

describe("nominal frequency", () => {
  it("blocks the frequency of a 60 Hz supply taken for one of 50 Hz, and the reverse", () => {
    expect(only(run(nominalFrequency, at(60.01)))).toMatchObject({
      id: "nominal-frequency",
      severity: "blocks",
      quantities: ["frequency"],
      evidence: { median: 60.01, nominal: 50, other: 60 },
    });
    const sixty = { nominalFrequency: { value: 60, origin: "given" } } as const;
    expect(only(run(nominalFrequency, at(49.9), sixty)).evidence).toMatchObject({ nominal: 60, other: 50 });
  });

  it("leaves a frequency alone that is only bad", () => {
    expect(run(nominalFrequency, at(57.9))).toEqual([]);
    expect(run(nominalFrequency, at(46))).toEqual([]);
  });

  it("finds none in a sound week, nor without a frequency", () => {
    expect(run(nominalFrequency, soundWeek())).toEqual([]);
    expect(run(nominalFrequency, recordingOf([logged("voltage", "L1", [230])]))).toEqual([]);
  });
});
