import { fontFiles, packagedText, readBundledRule } from "../../src/cli/files.js";
import { excludedSpans } from "../../src/recording/excluded-span.js";
import type { Finding } from "../../src/recording/finding.js";
import type { IntervalSeries, Measurements, VoltageEvent } from "../../src/recording/measurements.js";
import { type Phase, QUANTITIES, type Quantity } from "../../src/recording/quantity.js";
import type { Recording } from "../../src/recording/recording.js";
import type { GivenSetup, Setup } from "../../src/recording/setup.js";
import type { SupplyDetail } from "../../src/recording/supply-detail.js";
import { HOUR, type Instant, MINUTE } from "../../src/recording/time.js";
import { ENGLISH, translated } from "../../src/report/languages/language.js";
import type { RenderContext } from "../../src/report/renderer.js";
import type { Assessment } from "../../src/rules/assessment.js";
import { type Judged, withComparison } from "../../src/rules/comparison.js";
import { judge } from "../../src/rules/judge.js";
import { loadRuleSet } from "../../src/rules/load-rule-set.js";
import { say } from "../../src/sentence.js";
import { random } from "../support/random.js";

/** What is made of texts, in English. */
export const english = <T>(value: T) => translated(value, ENGLISH);

/** English, with next to nothing in place of Vega. */
export const CONTEXT: RenderContext = {
  language: ENGLISH,
  vega: async () => "var vega;",
  packaged: packagedText,
  fontFiles: fontFiles(),
};

/** Monday 2026-03-02 00:00 in Vienna. */
export const START: Instant = Date.UTC(2026, 2, 1, 23) * 1000;
const PHASES = ["L1", "L2", "L3"] as const;

export interface Report {
  readonly assessment: Assessment;
  readonly measurements: Measurements;
}

export interface SampleOptions {
  readonly days?: number;
  readonly kind?: Recording["kind"];
  /** In place of those of the feeder. */
  readonly measurements?: Measurements;
  readonly rules?: string;
  readonly site?: string;
  readonly findings?: readonly Finding[];
  readonly given?: GivenSetup;
  /** Header text of the one column that was not used. */
  readonly unknownHeader?: string;
  readonly zone?: string;
  readonly orders?: number;
  /** Volts added to L2 at midday, V. */
  readonly middayRise?: number;
  /** Indices of intervals left out of every series. */
  readonly gap?: readonly [number, number];
  /** What a recorder that looks for events has found; without it, none was looked for. */
  readonly events?: readonly VoltageEvent[];
  /** Indices of ten-minute intervals that carry a flag. */
  readonly flagged?: readonly [number, number];
  /** The voltages by the shortest intervals at hand. */
  readonly supply?: SupplyDetail;
  /** Further limit sets to compare with. */
  readonly compared?: readonly string[];
}

/** A village feeder with a photovoltaic rise at midday and a fifth harmonic in the evening, judged by the real judge. */
export async function sampleReport(options: SampleOptions = {}): Promise<Report> {
  const { rules = "en50160-2010-lv", zone = "Europe/Vienna", findings = [], given = {}, supply } = options;
  const own = options.measurements ?? sampleMeasurements(options);
  const measurements: Measurements = supply === undefined ? own : { ...own, supply };
  const recording: Recording = {
    kind: options.kind ?? "logged-series",
    waveforms: [],
    sources: [{ name: "feeder.csv", bytes: 812_345, sha256: "ab".repeat(32), format: "csv" }],
    start: measurements.start,
    end: measurements.end,
    series: [],
    ledger: {
      columns: [
        {
          file: "feeder.csv",
          position: 2,
          header: "U L1 [V]",
          meaning: { quantity: "voltage", phase: "L1", statistic: "mean", writtenUnit: "V" },
          reason: say`${QUANTITIES.voltage.name}: ${say`the symbol ${"U"}`}`,
        },
        {
          file: "feeder.csv",
          position: 9,
          header: options.unknownHeader ?? "Battery",
          reason: say`it does not say which quantity it holds`,
        },
      ],
      timeBase: {
        zone,
        zoneOrigin: "given",
        intervalLabel: "start",
        labelOrigin: "given",
        stampForm: "y-m-d hh:mm",
      },
      remarks: ["2 lines before the header were skipped."],
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      unplaced: 0,
      clockSteps: [],
      clockChanges: [],
    },
  };
  const setup: Setup = {
    site: { value: options.site ?? "Mill Lane 4, Aldersfield", origin: "given" },
    measuringPoint: { value: "main distribution board", origin: "given" },
    connection: { value: "star", origin: "inferred", reason: "three phase-to-neutral voltages near 230 V" },
    declaredVoltage: { value: 230, origin: "given" },
    nominalFrequency: { value: 50, origin: "assumed", reason: "the rule set says 50 Hz" },
    zone: { value: zone, origin: "given" },
    intervalLabel: { value: "start", origin: "assumed" },
    ruleSet: { value: rules, origin: "given" },
  };
  const exclusions = excludedSpans(given.exclusions ?? [], recording);
  const tool = { name: "mainswitness", version: "0.0.0" };
  const judged = async (id: string): Promise<Judged> => {
    const ruleSet = await loadRuleSet(id, readBundledRule);
    const input = { tool, ruleSet, recording, measurements, findings, setup, given, exclusions };
    return { ruleSet, declaredVoltage: 230, assessment: judge(input) };
  };
  return {
    measurements,
    assessment: withComparison(await judged(rules), await Promise.all((options.compared ?? []).map(judged))),
  };
}

function sampleMeasurements({
  days = 7,
  orders = 25,
  middayRise = 24,
  gap,
  flagged,
  events,
}: SampleOptions): Measurements {
  const series: IntervalSeries[] = [];
  const add = (
    quantity: Quantity,
    phase: Phase,
    value: (hour: number, noise: () => number) => number,
    { interval = 10 * MINUTE, order, spread }: { interval?: number; order?: number; spread?: number } = {},
  ) => {
    const noise = random(11, `${quantity} ${phase} ${order ?? ""}`);
    const all = Array.from({ length: (days * 24 * HOUR) / interval }, (_, i) => i);
    const kept = gap === undefined ? all : all.filter((i) => i < gap[0] || i >= gap[1]);
    const starts = Float64Array.from(kept, (i) => START + i * interval);
    const digits = QUANTITIES[quantity].unit === "V" ? 1 : 3;
    const round = (v: number) => Number(v.toFixed(digits));
    const values = starts.map((t) => round(value(((t - START) / HOUR) % 24, () => noise.normal())));
    series.push({
      quantity,
      phase,
      ...(order !== undefined && { order }),
      unit: QUANTITIES[quantity].unit,
      interval,
      origin: "logged",
      starts,
      values,
      ...(spread !== undefined && {
        min: values.map((v) => round(v - spread * noise.uniform())),
        max: values.map((v) => round(v + spread * noise.uniform())),
      }),
      flagged: Uint8Array.from(kept, (i) => (flagged !== undefined && i >= flagged[0] && i < flagged[1] ? 1 : 0)),
      coverage: new Float64Array(starts.length).fill(1),
    });
  };
  const midday = (hour: number) => Math.exp(-(((hour - 13) / 2.2) ** 2));
  const evening = (hour: number) => Math.exp(-(((hour - 20) / 2) ** 2));
  PHASES.forEach((phase, k) => {
    const rise = [12, middayRise, 14][k] as number;
    add("voltage", phase, (h, noise) => 232 + rise * midday(h) - 5 * evening(h) + 1.5 * noise(), { spread: 3 });
    add("thd-voltage", phase, (h, noise) => 2.2 + 1.6 * evening(h) + 0.2 * Math.abs(noise()));
    add("plt", phase, (h, noise) => 0.35 + 0.3 * evening(h) + 0.08 * Math.abs(noise()), { interval: 2 * HOUR });
    for (let order = 2; order <= orders; order++) {
      const size = order === 5 ? 3.4 : order % 2 === 0 ? 0.1 : 3 / order;
      const peak = order === 5 ? 3.1 - 0.4 * k : 0;
      const level = (h: number, noise: () => number) => size * (1 + 0.06 * noise()) + peak * evening(h);
      add("harmonic-voltage", phase, level, { order });
    }
  });
  add("negative-sequence-unbalance", "system", (h, noise) => 0.6 + 0.4 * midday(h) + 0.05 * Math.abs(noise()));
  add("frequency", "system", (_, noise) => 50 + 0.012 * noise());
  const unavailable = [{ quantity: "mains-signalling" as const, reason: "The log holds no signalling voltages." }];
  return {
    start: START,
    end: START + days * 24 * HOUR,
    series,
    events: events ?? [],
    eventsSought: events !== undefined,
    unavailable,
    remarks: [],
  };
}
