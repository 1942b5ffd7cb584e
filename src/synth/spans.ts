import { declaredToNeutral, phasesOf } from "./phases.js";
import type { Scenario, ScenarioPhase } from "./scenario.js";
import type { Wave } from "./waves.js";

export type Modulation = Scenario["modulation"][number];

/** A stretch of time in which nothing changes but what a modulation does. One entry per phase in the lists. */
export interface SignalSpan {
  readonly fromS: number;
  readonly toS: number;
  /** The voltage as it began times this. */
  readonly voltageFactors: readonly number[];
  readonly currentFactors: readonly number[];
  readonly modulations: readonly (Modulation | undefined)[];
}

/** A dip, swell or interruption as the scenario states it. */
export interface InjectedEvent {
  readonly kind: "dip" | "swell" | "interruption";
  readonly fromS: number;
  readonly durationS: number;
  /** R.m.s. of the whole wave in % of the declared voltage. */
  readonly percent: number;
  readonly phases: readonly ScenarioPhase[];
}

/** End of what lasts for a time, to the nanosecond: 30 s + 0.1 s is 30.1 s as written, so that entries can follow one another. */
export function endOf(fromS: number, durationS: number): number {
  return Math.round((fromS + durationS) * 1e9) / 1e9;
}

/** In the order of time. */
export function eventsOf(scenario: Scenario): InjectedEvent[] {
  const { dips, swells, interruptions } = scenario;
  const event = (
    kind: InjectedEvent["kind"],
    percent: number,
    { atS, durationS, phases }: { atS: number; durationS: number; phases?: readonly ScenarioPhase[] | undefined },
  ) => ({ kind, fromS: atS, durationS, percent, phases: phasesOf(scenario, phases) });
  return [
    ...dips.map((d) => event("dip", d.residualPercent, d)),
    ...swells.map((s) => event("swell", s.percent, s)),
    ...interruptions.map((i) => event("interruption", i.residualPercent, i)),
  ].sort((a, b) => a.fromS - b.fromS);
}

/** The spans of a scenario, without gaps from 0 to its end. @param voltages of the phases, for the size of events */
export function spansOf(scenario: Scenario, voltages: readonly Wave[]): SignalSpan[] {
  const { durationS, modulation, voltage, currents } = scenario;
  const events = eventsOf(scenario);
  const currentSteps = currents?.steps ?? [];
  const edges = new Set([
    0,
    ...voltage.steps.map(({ atS }) => atS),
    ...currentSteps.map(({ atS }) => atS),
    ...events.flatMap(({ fromS, durationS: length }) => [fromS, endOf(fromS, length)]),
    ...modulation.flatMap(({ fromS, toS }) => [fromS, toS ?? durationS]),
  ]);
  const starts = [...edges].filter((t) => t < durationS).sort((a, b) => a - b);
  return starts.map((fromS, i) => {
    const lasting = voltages.map(({ phase }) =>
      events.find((e) => e.fromS <= fromS && fromS < endOf(e.fromS, e.durationS) && e.phases.includes(phase)),
    );
    return {
      fromS,
      toS: starts[i + 1] ?? durationS,
      voltageFactors: voltages.map(({ phase, orders, ratio }, k) => {
        const event = lasting[k];
        if (event === undefined) return stepFactor(voltage.steps, phase, fromS);
        const whole = (orders.get(1)?.rms as number) * ratio;
        return ((event.percent / 100) * declaredToNeutral(scenario)) / whole;
      }),
      currentFactors: voltages.map(({ phase }) => stepFactor(currentSteps, phase, fromS)),
      modulations: voltages.map(({ phase }, k) =>
        lasting[k] !== undefined
          ? undefined
          : modulation.find(
              (m) =>
                m.fromS <= fromS &&
                fromS < (m.toS ?? durationS) &&
                (m.phases === undefined || m.phases.includes(phase)),
            ),
      ),
    };
  });
}

/** What the last step before a time, or at it, has set. */
function stepFactor(steps: Scenario["voltage"]["steps"], phase: ScenarioPhase, t: number): number {
  let last: (typeof steps)[number] | undefined;
  for (const step of steps) {
    if (step.atS > t || step.phases?.includes(phase) === false) continue;
    if (last === undefined || step.atS >= last.atS) last = step;
  }
  return last === undefined ? 1 : last.toPercent / 100;
}

/** What a modulation adds to the factor 1 at a time. */
export function modulationAt({ shape, hertz, percent, fromS }: Modulation, t: number): number {
  const cycles = hertz * (t - fromS);
  const part = cycles - Math.floor(cycles);
  const level = shape === "sinusoidal" ? Math.sin(2 * Math.PI * part) : part < 0.5 ? 1 : -1;
  return (percent / 200) * level;
}
