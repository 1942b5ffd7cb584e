import { ratio, times, toNumber } from "../decimal.js";
import type { IntervalSeries, Measurements } from "../recording/measurements.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase, QUANTITIES, supplyPhases } from "../recording/quantity.js";
import type { Setup } from "../recording/setup.js";
import { type Duration, HOUR, MINUTE, SECOND } from "../recording/time.js";
import { say, strung, type Text } from "../sentence.js";
import type { Reason } from "./assessment.js";
import type { Criterion, Requirement, RuleSet } from "./rule-set.js";

/** One requirement on one phase (and order), with its limits in the unit of the series it is counted on. */
export interface Test {
  readonly requirement: Requirement;
  readonly phase: Phase;
  readonly order?: number;
  /** Carrier frequency of mains signalling. */
  readonly hertz?: number;
  readonly share: number;
  readonly limit: { readonly min?: number; readonly max?: number };
  readonly confirmed: boolean;
  readonly series: IntervalSeries;
}

export interface NotAssessed {
  readonly requirement: string;
  readonly reason: Reason;
}

const INTERVALS: Record<Requirement["interval"], Duration> = {
  "half-cycle": SECOND / 100,
  "3s": 3 * SECOND,
  "10s": 10 * SECOND,
  "1min": MINUTE,
  "10min": 10 * MINUTE,
  "2h": 2 * HOUR,
};

export function requirementInterval(requirement: Requirement): Duration {
  return INTERVALS[requirement.interval];
}

/** The quantities and intervals that a rule set counts; events need none. */
export function wantedIntervals({
  requirements,
}: RuleSet): { quantity: Requirement["quantity"]; interval: Duration }[] {
  return requirements
    .filter((r) => r.interval !== "half-cycle")
    .map((r) => ({ quantity: r.quantity, interval: requirementInterval(r) }));
}

/**
 * Spreads the rule set over phases and orders and finds the series for each; what has none is not assessed, with the
 * reason. Quantities without a voltage level (all but the supply voltage) are taken from the phases that were logged
 * when those of the connection were not.
 */
export function planTests(
  ruleSet: RuleSet,
  measurements: Measurements,
  setup: Setup,
): { tests: Test[]; notAssessed: NotAssessed[] } {
  const tests: Test[] = [];
  const notAssessed: NotAssessed[] = [];
  for (const requirement of ruleSet.requirements) {
    const { criterion } = requirement;
    if (criterion.kind === "event-table" || criterion.kind === "indication") {
      if (!measurements.eventsSought)
        notAssessed.push({ requirement: requirement.id, reason: noEvents(criterion, measurements) });
      continue;
    }
    if (criterion.kind === "share-below-curve") {
      const carriers = signallingTests(requirement, criterion, measurements, setup);
      tests.push(...carriers);
      if (carriers.length === 0) {
        notAssessed.push({ requirement: requirement.id, reason: noCarrier(measurements) ?? notLogged(requirement) });
      }
      continue;
    }
    const phases = phasesOf(requirement, measurements, setup);
    const missing: Text[] = [];
    let why: Text | undefined;
    for (const part of partsOf(criterion, setup)) {
      for (const phase of phases) {
        const series = findSeries(measurements, requirement, phase, part.order);
        if (series) {
          tests.push({
            requirement,
            phase,
            ...(part.order !== undefined && { order: part.order }),
            share: criterion.share,
            limit: part.limit,
            confirmed: part.confirmed ?? requirement.confirmed,
            series,
          });
        } else {
          missing.push(placeOf(part.order, phase));
          why ??= measurements.unavailable.find(
            (u) =>
              u.quantity === requirement.quantity &&
              (u.phase === undefined || u.phase === phase) &&
              (u.order === undefined || u.order === part.order),
          )?.reason;
        }
      }
    }
    if (missing.length > 0)
      notAssessed.push({ requirement: requirement.id, reason: missingReason(requirement, missing, tests, why) });
  }
  return { tests, notAssessed };
}

interface Part {
  readonly order?: number;
  readonly limit: { readonly min?: number; readonly max?: number };
  readonly confirmed?: boolean;
}

function partsOf(criterion: Criterion & { kind: "share-within" | "share-within-by-order" }, setup: Setup): Part[] {
  if (criterion.kind === "share-within") {
    const { min, max, of } = criterion;
    const scale = (percent: number) => {
      if (of === "own-unit") return percent;
      const base = of === "declared-voltage" ? setup.declaredVoltage.value : setup.nominalFrequency.value;
      return toNumber(times(times(ratio(percent), ratio(base)), ratio("0.01")));
    };
    return [
      { limit: { ...(min !== undefined && { min: scale(min) }), ...(max !== undefined && { max: scale(max) }) } },
    ];
  }
  return Object.entries(criterion.orders)
    .map(([order, { max, confirmed }]) => ({
      order: Number(order),
      limit: { max },
      ...(confirmed !== undefined && { confirmed }),
    }))
    .sort((a, b) => a.order - b.order);
}

function phasesOf(requirement: Requirement, { series }: Measurements, setup: Setup): readonly Phase[] {
  if (requirement.phases === "system") return ["system"];
  const supply = supplyPhases(setup.connection.value);
  if (requirement.quantity === "voltage") return supply;
  const logged = (phases: readonly Phase[]) =>
    series.some((s) => s.quantity === requirement.quantity && phases.includes(s.phase));
  if (logged(supply)) return supply;
  const other = setup.connection.value === "delta" ? PHASE_TO_NEUTRAL : PHASE_TO_PHASE;
  return logged(other) ? other : supply;
}

function findSeries({ series }: Measurements, requirement: Requirement, phase: Phase, order?: number) {
  const interval = requirementInterval(requirement);
  return series.find(
    (s) =>
      s.quantity === requirement.quantity &&
      s.phase === phase &&
      s.order === order &&
      s.interval === interval &&
      s.starts.length > 0,
  );
}

/** One test for each carrier and phase; a carrier whose frequency is not known has no limit and no test. */
function signallingTests(
  requirement: Requirement,
  { share, points }: Criterion & { kind: "share-below-curve" },
  { series }: Measurements,
  setup: Setup,
): Test[] {
  const phases = supplyPhases(setup.connection.value);
  const interval = requirementInterval(requirement);
  return series.flatMap((s) => {
    if (s.quantity !== "mains-signalling" || s.interval !== interval || !phases.includes(s.phase)) return [];
    const max = s.hertz === undefined ? undefined : levelAt(points, s.hertz);
    if (s.hertz === undefined || max === undefined) return [];
    const { phase, hertz } = s;
    return [{ requirement, phase, hertz, share, limit: { max }, confirmed: requirement.confirmed, series: s }];
  });
}

/** The level of a curve at a frequency, on straight lines between its points on log–log axes; none beyond its ends. */
export function levelAt(points: readonly (readonly [number, number])[], hertz: number): number | undefined {
  for (let i = 1; i < points.length; i++) {
    const [f0, u0] = points[i - 1] as readonly [number, number];
    const [f1, u1] = points[i] as readonly [number, number];
    if (hertz < f0 || hertz > f1) continue;
    if (u0 === u1) return u0;
    return u0 * (u1 / u0) ** (Math.log(hertz / f0) / Math.log(f1 / f0));
  }
  return undefined;
}

function noCarrier({ series }: Measurements): Reason | undefined {
  if (!series.some((s) => s.quantity === "mains-signalling")) return undefined;
  const sentence = say`The log holds mains signalling voltages, but not every 3 s or not at a frequency that is known and on the curve.`;
  return { id: "no-carrier", sentence, values: {} };
}

function notLogged(requirement: Requirement): Reason {
  const { name } = QUANTITIES[requirement.quantity];
  return {
    id: "not-logged",
    sentence: say`The log holds no values of the ${name}.`,
    values: { quantity: requirement.quantity },
  };
}

function noEvents(
  criterion: Criterion & { kind: "event-table" | "indication" },
  { eventsTriggered }: Measurements,
): Reason {
  const what =
    criterion.kind === "indication" ? say`rapid voltage changes` : criterion.event === "dip" ? say`dips` : say`swells`;
  if (eventsTriggered) {
    return {
      id: "events-triggered",
      sentence: say`The log holds only those ${what} that the recorder was triggered by, at its own thresholds; there may be others, so they are listed but not counted against the standard.`,
      values: { event: String(what) },
    };
  }
  return {
    id: "no-events",
    sentence: say`The log holds interval values only; ${what} need recorded events or waveforms.`,
    values: { event: String(what) },
  };
}

function placeOf(order: number | undefined, phase: Phase): Text {
  const where = phase === "system" ? [] : [phase];
  return order === undefined ? where.join() : strung([say`order ${order}`, ...where], " ");
}

function missingReason(
  requirement: Requirement,
  missing: readonly Text[],
  tests: readonly Test[],
  why: Text | undefined,
): Reason {
  if (tests.some((t) => t.requirement === requirement)) {
    return {
      id: "partly-logged",
      sentence: strung([say`Not in the log: ${strung(missing, ", ")}.`, ...(why === undefined ? [] : [why])], " "),
      values: { missing: String(strung(missing, ", ")) },
    };
  }
  if (why === undefined) return notLogged(requirement);
  return { id: "not-derivable", sentence: why, values: { quantity: requirement.quantity } };
}
