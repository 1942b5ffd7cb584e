import { excludedSpans } from "../../src/recording/excluded-span.js";
import type { Finding } from "../../src/recording/finding.js";
import type { IntervalSeries, Measurements, VoltageEvent } from "../../src/recording/measurements.js";
import type { Recording } from "../../src/recording/recording.js";
import type { GivenSetup, Setup } from "../../src/recording/setup.js";
import type { SupplyDetail } from "../../src/recording/supply-detail.js";
import { MINUTE } from "../../src/recording/time.js";
import type { Assessment } from "../../src/rules/assessment.js";
import { judge } from "../../src/rules/judge.js";
import type { Requirement, RuleSet } from "../../src/rules/rule-set.js";

/** Two rules on the supply voltage as EN 50160 has them for low voltage. */
export const VOLTAGE_95: Requirement = {
  id: "voltage-95",
  title: "Supply voltage, 95 % of the week",
  clause: "4.2.2",
  quantity: "voltage",
  interval: "10min",
  phases: "supply",
  period: "week",
  criterion: { kind: "share-within", share: 0.95, min: 90, max: 110, of: "declared-voltage" },
  flagged: "include",
  binding: true,
  source: "test",
  confirmed: true,
};
export const VOLTAGE_100: Requirement = {
  ...VOLTAGE_95,
  id: "voltage-100",
  criterion: { kind: "share-within", share: 1, min: 85, max: 110, of: "declared-voltage" },
};

export function ruleSet(...requirements: Requirement[]): RuleSet {
  return {
    id: "test-set",
    title: "Test set",
    standard: "EN 50160",
    edition: "2010",
    level: "LV",
    network: "interconnected",
    nominalFrequency: 50,
    nominalVoltage: 230,
    notes: [],
    files: [{ id: "test-set", sha256: "0".repeat(64) }],
    requirements,
  };
}

export function setup(declaredVoltage = 230, connection: Setup["connection"]["value"] = "single"): Setup {
  const given = <T>(value: T) => ({ value, origin: "given" as const });
  return {
    connection: given(connection),
    declaredVoltage: given(declaredVoltage),
    nominalFrequency: given(50),
    zone: given("UTC"),
    intervalLabel: given("start"),
    ruleSet: given("test-set"),
  };
}

/** Judges series that span a recording from the first start to the last end. */
export function judgeSeries(
  series: readonly IntervalSeries[],
  rules: RuleSet,
  options: {
    setup?: Setup;
    given?: GivenSetup;
    findings?: readonly Finding[];
    events?: readonly VoltageEvent[];
    supply?: SupplyDetail;
  } = {},
): Assessment {
  const start = Math.min(...series.map((s) => s.starts[0] as number));
  const end = Math.max(...series.map((s) => (s.starts[s.starts.length - 1] as number) + s.interval));
  const measurements: Measurements = {
    start,
    end,
    series,
    events: options.events ?? [],
    eventsSought: options.events !== undefined,
    ...(options.supply !== undefined && { supply: options.supply }),
    unavailable: [],
    remarks: [],
  };
  const recording: Recording = {
    kind: "logged-series",
    waveforms: [],
    sources: [],
    start,
    end,
    series: [],
    ledger: {
      columns: [],
      timeBase: { zone: "UTC", zoneOrigin: "given", intervalLabel: "start", labelOrigin: "given", stampForm: "test" },
      remarks: [],
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      unplaced: 0,
      clockSteps: [],
      clockChanges: [],
    },
  };
  return judge({
    tool: { name: "mainswitness", version: "test" },
    ruleSet: rules,
    recording,
    measurements,
    findings: options.findings ?? [],
    setup: options.setup ?? setup(),
    given: options.given ?? {},
    exclusions: excludedSpans(options.given?.exclusions ?? [], recording),
  });
}

/** `n` ten-minute values of 230 V with the given ones at the given places. */
export function week(changes: Record<number, number> | ((i: number) => number), n = 1008): number[] {
  return Array.from({ length: n }, (_, i) => (typeof changes === "function" ? changes(i) : (changes[i] ?? 230)));
}

export const TEN_MINUTES = 10 * MINUTE;
