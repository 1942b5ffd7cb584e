import { describe, expect, it } from "vitest";
import { parseSetup } from "../../src/cli/read-setup.js";
import { resolveSetup } from "../../src/recording/resolve-setup.js";
import { marksOf } from "../../src/recording/setup-marks.js";
import { ruleSet } from "../rules/support.js";

const fault = (text: string) => {
  try {
    return String(Object.keys(parseSetup(text, "setup.yaml")));
  } catch (error) {
    return (error as Error).message;
  }
};

describe("complaints, comments, tap steps and the photovoltaic plant of a setup", () => {
  it.each([
    ["complaints: [{ at: 2026-03-02, what: dark }]", /line 1, column 20: a time is a date with a time of day/],
    ['complaints: [{ at: 2026-03-02T10:00, what: "" }]', /this text is empty/],
    ["complaints: [{ at: 2026-03-02T10:00 }]", /what/],
    ["comments: [{ at: 2026-03-02T10:00, phase: L4, text: x }]", /L1 or L2.*"L4"/],
    ["voltageSteps: [2.5, 2.5]", /a step is listed twice/],
    ["voltageSteps: [0]", /a step of 0 changes nothing/],
    ["voltageSteps: [30]", /20/],
    ["photovoltaic: { temperatureCoefficient: -0.4 }", /ratedPower/],
    ["photovoltaic: { ratedPower: 5000, noct: 4 }", /20/],
    ["photovoltaic: { ratedPower: 5000, noct: 45 }", /^photovoltaic$/],
  ])("%s", (text, expected) => {
    expect(fault(text)).toMatch(expected);
  });

  it("become instants in the log's zone, and refuse an hour that the clock skipped, naming the entry", () => {
    const given = { comments: [{ at: "2026-03-29T02:30", text: "x" }] };
    expect(() => marksOf(given, "Europe/Vienna")).toThrow(
      /setup, comments, item 1, at 2026-03-29T02:30 falls into the hour/,
    );
    expect(marksOf(given, "UTC").comments[0]?.at).toBe(Date.UTC(2026, 2, 29, 2, 30) * 1000);
    expect(marksOf({}, "UTC")).toEqual({ complaints: [], comments: [] });
  });

  it("prints the plant with the setup, as given", () => {
    const ledger = {
      columns: [],
      timeBase: { zone: "UTC", zoneOrigin: "given", intervalLabel: "start", labelOrigin: "given", stampForm: "" },
    } as unknown as Parameters<typeof resolveSetup>[2]["ledger"];
    const of = (photovoltaic: { ratedPower: number; temperatureCoefficient?: number; noct?: number }) =>
      resolveSetup({ photovoltaic, declaredVoltage: 230 }, true, { ledger, waveforms: [] }, new Map(), ruleSet())
        .photovoltaic;
    const whole = of({ ratedPower: 8400, temperatureCoefficient: -0.38, noct: 45 });
    expect(whole?.origin).toBe("given");
    expect(String(whole?.value)).toBe(
      "rated power 8400 W, temperature coefficient -0.38 %/K, nominal operating cell temperature 45 °C",
    );
    expect(String(of({ ratedPower: 8400 })?.value)).toBe("rated power 8400 W");
  });
});
