import { describe, expect, it } from "vitest";
import { loggedEvents } from "../../src/checks/logged-events.js";
import type { LoggedEvent } from "../../src/recording/logged-event.js";
import type { VoltageEvent } from "../../src/recording/measurements.js";
import { HOUR, isoUtc } from "../../src/recording/time.js";
import { say } from "../../src/sentence.js";
import { START } from "../support/series.js";
import { inputOf, only, soundWeek } from "./support.js";

const listed = (parts: Partial<LoggedEvent> = {}): LoggedEvent => ({
  file: "log.pqd",
  place: "byte 1",
  kind: "dip",
  category: "short duration momentary dip",
  phases: ["L1"],
  start: START + HOUR,
  durationS: 0.1,
  magnitude: { value: 70, unit: "%" },
  ...parts,
});
const found = (parts: Partial<VoltageEvent> = {}): VoltageEvent => ({
  kind: "dip",
  origin: "computed",
  phases: ["L1"],
  unit: "V",
  start: START + HOUR,
  durationS: 0.1,
  extreme: 161,
  reference: 230,
  percent: 70,
  ...parts,
});

function findings(events: readonly LoggedEvent[] | undefined, measured: readonly VoltageEvent[] = []) {
  const input = inputOf({ ...soundWeek(), ...(events !== undefined && { events }) });
  const measurements = {
    ...input.measurements,
    events: measured,
    ...(events !== undefined && { eventsTriggered: true as const }),
  };
  return loggedEvents.run({ ...input, measurements });
}

describe("logged-events", () => {
  it("has nothing to say of a log without events", () => {
    expect(findings(undefined)).toEqual([]);
  });

  it("says that listed events are what the recorder's thresholds caught", () => {
    const finding = only(findings([listed()], [found()]));
    expect(finding).toMatchObject({ id: "events-triggered", severity: "note", evidence: { listed: 1 } });
    expect(String(finding.sentence)).toContain(
      "The log holds 1 event that the recorder listed: only what the recorder's own thresholds caught",
    );
  });

  it.each([
    ["duration beyond a cycle", { durationS: 0.15 }, 0.05, 0],
    ["voltage beyond 1 %", { percent: 65 }, 0, 5],
  ])("tells a %s", (_, parts, durationS, percent) => {
    const differ = findings([listed()], [found(parts)]).find((f) => f.id === "logged-events-differ");
    expect(differ?.evidence.durationS).toBeCloseTo(durationS, 9);
    expect(differ?.evidence).toMatchObject({ differing: 1, compared: 1, percent, first: isoUtc(START + HOUR) });
  });

  it.each([
    ["a cycle of duration", { durationS: 0.12 }],
    ["1 % of voltage", { percent: 69 }],
    ["a dip that the samples do not show whole", { durationS: 0.5, complete: false }],
  ])("lets %s be", (_, parts) => {
    expect(findings([listed()], [found(parts)]).map((f) => f.id)).toEqual(["events-triggered"]);
  });

  it("compares volts with the declared voltage of the phase", () => {
    const volts = listed({ magnitude: { value: 161, unit: "V" } });
    expect(findings([volts], [found()]).map((f) => f.id)).toEqual(["events-triggered"]);
    const other = listed({ magnitude: { value: 138, unit: "V" } });
    expect(findings([other], [found()])[1]?.evidence.percent).toBeCloseTo(10, 9);
  });

  it("counts the listed events that nothing shows and that are not sure", () => {
    const doubtful = listed({ start: START + 5 * HOUR, doubt: say`its magnitude ${30318} is not sure` });
    const shown = found({ origin: "logged", start: START + 2 * HOUR });
    const unsure = findings([listed(), listed({ start: START + 2 * HOUR }), doubtful], [found(), shown]).find(
      (f) => f.id === "logged-events-unsure",
    );
    expect(unsure?.evidence).toEqual({ left: 1, listed: 3, first: isoUtc(START + 5 * HOUR) });
    expect(String(unsure?.sentence)).toContain("Left out of 3 events that the recorder listed: 1");
    expect(String(unsure?.sentence)).toContain("its magnitude 30318 is not sure");
  });
});
