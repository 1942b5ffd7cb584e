import type { Unavailable } from "../recording/measurements.js";
import { PHASE_TO_PHASE, type Phase, type Quantity } from "../recording/quantity.js";
import type { LoggedSeries, TimeAxis } from "../recording/recording.js";
import { say, type Text } from "../sentence.js";
import type { SourceSeries } from "./aggregation.js";
import { fundamentalFromRms, inPercentOf, THD_HIGHEST_ORDER, thdFromHarmonics } from "./harmonics.js";
import { unbalanceSeries } from "./unbalance.js";

/** Logged series with what follows from them interval by interval; what cannot be derived is said, never estimated. */
export interface Derived {
  readonly series: readonly SourceSeries[];
  readonly unavailable: readonly Unavailable[];
  readonly remarks: readonly Text[];
}

/**
 * Adds to the logged series: harmonic voltages in % where logged in V; THD from harmonics 2…40; u2 from three
 * phase-to-phase voltages. Derived per logged interval, before any
 * aggregation.
 */
export function derive(logged: readonly LoggedSeries[]): Derived {
  const series: SourceSeries[] = [];
  const unavailable: Unavailable[] = [];
  const remarks: Text[] = [];
  const sources = logged.map((s): SourceSeries => ({ ...s, origin: "logged" }));

  for (const [phase, harmonics] of groupByPhase(sources, "harmonic-voltage")) {
    series.push(...harmonicsInPercent(phase, harmonics, sources, unavailable, remarks));
  }
  series.push(...sources.filter((s) => s.quantity !== "harmonic-voltage"));

  for (const [phase, harmonics] of groupByPhase(series, "harmonic-voltage")) {
    const isLogged = series.some((s) => s.quantity === "thd-voltage" && s.phase === phase);
    for (const orders of byAxis(harmonics).values()) {
      const counted = orders.filter((s) => s.order !== undefined && s.order >= 2 && s.order <= THD_HIGHEST_ORDER);
      if (counted.length === THD_HIGHEST_ORDER - 1) {
        series.push(thdFromHarmonics(counted));
        remarks.push(
          isLogged
            ? say`THD on ${phase} is computed here from the logged harmonics 2 to ${THD_HIGHEST_ORDER}, where it was not logged.`
            : say`THD on ${phase} is computed here from the logged harmonics 2 to ${THD_HIGHEST_ORDER}.`,
        );
      } else if (!isLogged) {
        unavailable.push({
          quantity: "thd-voltage",
          phase,
          reason: say`THD was not logged on ${phase}, and it needs all harmonics from 2 to ${THD_HIGHEST_ORDER}; the log holds ${counted.length} of these ${THD_HIGHEST_ORDER - 1}.`,
        });
      }
    }
  }

  const isLogged = series.some((s) => s.quantity === "negative-sequence-unbalance");
  const lines = PHASE_TO_PHASE.map((p) => series.filter((s) => s.quantity === "voltage" && s.phase === p));
  const triples = lines[0]?.map((a) => [a, ...lines.slice(1).map((l) => l.find((b) => b.axis === a.axis))]) ?? [];
  const complete = triples.filter((t): t is [SourceSeries, SourceSeries, SourceSeries] => !t.includes(undefined));
  for (const [u12, u23, u31] of complete) series.push(unbalanceSeries(u12, u23, u31));
  if (complete.length > 0) {
    remarks.push(
      isLogged
        ? say`u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula), where it was not logged.`
        : say`u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula).`,
    );
  } else if (!isLogged) {
    unavailable.push({
      quantity: "negative-sequence-unbalance",
      reason: say`Unbalance was not logged, and it cannot be computed without all three phase-to-phase voltages.`,
    });
  }
  return { series, unavailable, remarks };
}

function harmonicsInPercent(
  phase: Phase,
  harmonics: readonly SourceSeries[],
  all: readonly SourceSeries[],
  unavailable: Unavailable[],
  remarks: Text[],
): SourceSeries[] {
  const inPercent = harmonics.filter((s) => s.unit === "%");
  for (const [axis, volts] of byAxis(harmonics.filter((s) => s.unit === "V"))) {
    const first = volts.find((s) => s.order === 1);
    const rms = all.find((s) => s.quantity === "voltage" && s.phase === phase && s.axis === axis);
    const others = volts.filter((s) => s !== first);
    const fundamental =
      first?.values ??
      (rms &&
        fundamentalFromRms(
          rms.values,
          others.map((s) => s.values),
        ));
    if (fundamental === undefined) {
      unavailable.push({
        quantity: "harmonic-voltage",
        phase,
        reason: say`The harmonics on ${phase} are in volts, and neither the fundamental (order 1) nor the voltage was logged beside them, so their share of the fundamental is not known.`,
      });
      continue;
    }
    remarks.push(
      first
        ? say`Harmonics on ${phase} are logged in volts; here in % of the logged fundamental.`
        : say`Harmonics on ${phase} are logged in volts; here in % of the fundamental that remains of the r.m.s. voltage without its harmonics.`,
    );
    inPercent.push(...others.map((s) => inPercentOf(fundamental, s)));
  }
  return inPercent;
}

function groupByPhase(series: readonly SourceSeries[], quantity: Quantity): Map<Phase, SourceSeries[]> {
  const of = series.filter((s) => s.quantity === quantity);
  return new Map([...new Set(of.map((s) => s.phase))].map((p) => [p, of.filter((s) => s.phase === p)]));
}

function byAxis(series: readonly SourceSeries[]): Map<TimeAxis, SourceSeries[]> {
  return new Map([...new Set(series.map((s) => s.axis))].map((a) => [a, series.filter((s) => s.axis === a)]));
}
