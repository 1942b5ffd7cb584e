import { describe, expect, it } from "vitest";
import { parseSetup } from "../../src/cli/read-setup.js";
import { SETUP_HINTS } from "../../src/cli/setup-hints.js";
import { setupSchema } from "../../src/recording/setup.js";

const fault = (text: string) => {
  try {
    parseSetup(text, "setup.yaml");
  } catch (error) {
    return (error as Error).message;
  }
  return "no fault";
};

describe("the parts of a setup that make a report evidence", () => {
  it.each(Object.entries(SETUP_HINTS))("offers a hint for %s that is valid once uncovered", (key, hint) => {
    expect(Object.keys(setupSchema.shape)).toContain(key);
    expect(Object.keys(parseSetup(hint, "setup.yaml"))).toEqual([key]);
  });

  it.each([
    ["an unknown key", "report: { numbr: 1 }", /line 1, column 11: "numbr" is not known here; .*number, customer/],
    [
      "a day that is not in the calendar",
      "report: { issued: 2026-02-30 }",
      /line 1, column 19: a date is a day of the cal/,
    ],
    [
      "a calibration date in another form",
      "instrument: { calibrationDate: 3.2.2026 }",
      /a date is a day of the calendar/,
    ],
    ["an empty text", 'report: { customer: " " }', /this text is empty/],
    ["an exclusion without a time of day", exclusion("2026-03-02", "2026-03-03T10:00"), /a time is a date with a time/],
    ["an exclusion on 30 February", exclusion("2026-02-30T10:00", "2026-03-03T10:00"), /a time is a date with a time/],
    [
      "a reason outside the list",
      exclusion("2026-03-02T10:00", "2026-03-02T12:00", "storm"),
      /temporary-supply or .*"storm"/,
    ],
    [
      "a sensor class that belongs to nothing",
      "instrument: { sensors: [{ what: VT, class: 0.5 }] }",
      /add measures: voltage/,
    ],
    ["two uncertainties of a quantity", `instrument: { uncertainty: [${U}, ${U}] }`, /a quantity is listed twice/],
    [
      "an uncertainty of Plt in % of declared",
      `instrument: { uncertainty: [{ quantity: plt, expanded: 1, of: declared }] }`,
      /only the uncertainty of the voltage/,
    ],
    ["an unknown decision rule", "decisionRule: lenient", /"decisionRule" must be simple or guarded/],
  ])("refuses %s", (_, text, message) => {
    expect(fault(text)).toMatch(message);
  });
});

const U = "{ quantity: voltage, expanded: 0.1, of: declared }";

function exclusion(from: string, to: string, reason = "force-majeure"): string {
  return `exclusions: [{ from: ${from}, to: ${to}, reason: ${reason}, assertedBy: operator }]`;
}
