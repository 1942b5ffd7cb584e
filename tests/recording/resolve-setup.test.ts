import { describe, expect, it } from "vitest";
import type { Phase } from "../../src/recording/quantity.js";
import type { Recording } from "../../src/recording/recording.js";
import { resolveSetup, type SupplyFacts } from "../../src/recording/resolve-setup.js";
import type { GivenSetup } from "../../src/recording/setup.js";

const LV: SupplyFacts = {
  id: "lv",
  title: "EN 50160, low voltage",
  level: "LV",
  network: "interconnected",
  nominalFrequency: 50,
  nominalVoltage: 230,
};
const MV: SupplyFacts = {
  id: "mv",
  title: "EN 50160, medium voltage",
  level: "MV",
  network: "interconnected",
  nominalFrequency: 50,
};

const RECORDING: Pick<Recording, "ledger" | "waveforms"> = {
  waveforms: [],
  ledger: {
    columns: [],
    timeBase: { zone: "UTC", zoneOrigin: "assumed", intervalLabel: "start", labelOrigin: "assumed", stampForm: "test" },
    remarks: [],
    duplicates: 0,
    conflicts: [],
    outOfOrder: 0,
    unplaced: 0,
    clockSteps: [],
    clockChanges: [],
  },
};

/** Resolves a setup for a log whose voltages lie at these levels, in V. */
function resolve(given: GivenSetup, ruleSetGiven: boolean, levels: Partial<Record<Phase, number>>, facts: SupplyFacts) {
  return resolveSetup(given, ruleSetGiven, RECORDING, new Map(Object.entries(levels) as [Phase, number][]), facts);
}

describe("the setup a verdict rests on", () => {
  it("infers 230 V for a low-voltage log that fits it, and says from what", () => {
    const setup = resolve({}, false, { L1: 236.4, L2: 231, L3: 229 }, LV);
    expect(setup.declaredVoltage).toMatchObject({ value: 230, origin: "inferred" });
    expect(String(setup.declaredVoltage.reason)).toContain("231.0 V");
    expect(setup.connection).toMatchObject({ value: "star", origin: "inferred" });
    expect(setup.ruleSet.origin).toBe("assumed");
    expect(setup.zone.origin).toBe("assumed");
    expect(String(setup.zone.reason)).toContain("--zone");
  });

  it("asks for the declared voltage where the log does not fit the nominal one", () => {
    expect(() => resolve({}, true, { L1: 11_600 }, LV)).toThrow(/11\.60 kV.*--declared/);
    expect(() => resolve({}, true, { L1: 120 }, LV)).toThrow(/--declared/);
  });

  it("never guesses the declared voltage of medium voltage", () => {
    expect(() => resolve({}, true, { L12: 20_400, L23: 20_400, L31: 20_400 }, MV)).toThrow(/20\.40 kV.*--declared/);
    const setup = resolve({ declaredVoltage: 20_000 }, true, { L1: 11_700, L12: 20_400, L23: 20_400, L31: 20_400 }, MV);
    expect(setup.connection).toMatchObject({ value: "delta", origin: "inferred" });
    expect(setup.declaredVoltage).toEqual({ value: 20_000, origin: "given" });
  });

  it("judges a three-wire low-voltage log between phases, at 400 or 230 V", () => {
    expect(resolve({}, true, { L12: 398, L23: 401, L31: 399 }, LV)).toMatchObject({
      connection: { value: "delta" },
      declaredVoltage: { value: 400, origin: "inferred" },
    });
    expect(resolve({}, true, { L12: 229, L23: 231, L31: 230 }, LV).declaredVoltage.value).toBe(230);
  });

  it("takes one voltage on L1 for a single-phase supply, and what is given before all else", () => {
    expect(resolve({}, true, { L1: 230 }, LV).connection).toMatchObject({ value: "single", origin: "assumed" });
    expect(resolve({}, true, { L1: 230, L12: 400 }, LV).connection.value).toBe("star");
    const given = resolve(
      { connection: "star", declaredVoltage: 240, site: "x", instrument: { class: "A", serialNumber: "7" } },
      true,
      { L1: 230 },
      LV,
    );
    expect(given).toMatchObject({
      connection: { value: "star", origin: "given" },
      declaredVoltage: { value: 240, origin: "given" },
    });
    expect(String(given.instrument?.value)).toBe("class A (IEC 61000-4-30), serial number 7");
  });
});

describe("a network that the limit set is not for", () => {
  const levels = { L1: 230, L2: 230, L3: 230 };
  it.each([
    [{ level: "MV" as const }, /network is MV, but EN 50160, low voltage holds for LV/],
    [{ interconnected: false }, /not interconnected, but EN 50160, low voltage holds for one that is;/],
  ])("is refused: %o", (network, message) => {
    expect(() => resolve({ network }, true, levels, LV)).toThrow(message);
  });

  it("is named in the setup where the two agree", () => {
    const network = { level: "LV" as const, interconnected: true, earthing: "TT" };
    expect(String(resolve({ network }, true, levels, LV).network?.value)).toBe("LV, interconnected, earthing TT");
  });
});
