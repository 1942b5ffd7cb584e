import type { IntervalSeries, Unavailable } from "../../recording/measurements.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase, QUANTITIES, type Quantity } from "../../recording/quantity.js";
import { HOUR } from "../../recording/time.js";
import { say } from "../../sentence.js";
import { type BankColumn, IntervalBank } from "./interval-bank.js";
import {
  type BasicWindow,
  type ChainSetup,
  channelOf,
  type Phenomenon,
  type PhenomenonResult,
  type PhenomenonState,
} from "./phenomenon.js";
import { combine, type Oscillation, type PowerTerms, phasePower, systemPower } from "./power-terms.js";

/**
 * Power by IEEE 1459-2010 over the basic windows, aggregated as arithmetic means: P, Q1, S, P1, S1, N, DI, DV and SH of
 * each phase that has a voltage to neutral and a current, and of three phases together; see `phasePower` and
 * `systemPower`. Positive is power towards the load if the currents are so counted. PF = P/S and PF1 = P1/S1 are quotients
 * of the aggregated values. Energy per interval is the time covered times the mean of the windows' P where it is
 * positive (import) and negative (export); of three phases it is that of their sum.
 * P and Q1 count what lies in the band of the harmonics, S all that was recorded.
 */
export const power: Phenomenon = {
  id: "power",
  clause: "IEEE 1459-2010, 3.1.2 and 3.2.2",
  start: (setup) => new PowerState(setup),
};

/** Means over windows; the last two become energies. */
const MEANS = [
  "active-power",
  "reactive-power",
  "apparent-power",
  "fundamental-active-power",
  "fundamental-apparent-power",
  "nonactive-power",
  "current-distortion-power",
  "voltage-distortion-power",
  "harmonic-apparent-power",
  "energy-import",
  "energy-export",
] as const satisfies readonly Quantity[];

type Terms = (window: BasicWindow) => PowerTerms;

class PowerState implements PhenomenonState {
  private readonly parts: readonly { readonly phase: Phase; readonly terms: Terms }[];
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;

  constructor(private readonly setup: ChainSetup) {
    const system = systemTerms(setup);
    this.parts = [...phaseTerms(setup), ...(system === undefined ? [] : [{ phase: "system" as const, terms: system }])];
    const columns = this.parts.flatMap(({ phase }) =>
      MEANS.map((quantity): BankColumn => ({ quantity, phase, unit: QUANTITIES[quantity].unit, rule: "mean" })),
    );
    this.bank = new IntervalBank(columns, setup.options.levels);
    this.values = new Float64Array(columns.length);
  }

  window(window: BasicWindow): void {
    if (this.parts.length === 0) return;
    let next = 0;
    for (const { terms } of this.parts) {
      const { p, q1, s, p1, s1, di, dv, sh } = terms(window);
      const n = Math.sqrt(Math.max(0, s * s - p * p));
      const row = [p, q1, s, p1, s1, n, di, dv, sh, Math.max(p, 0), Math.max(-p, 0)];
      // One missing sample makes all of them unknown, so that quotients are of equal intervals.
      const known = row.every((v) => !Number.isNaN(v));
      for (const value of row) this.values[next++] = known ? value : Number.NaN;
    }
    this.bank.add(window, this.values);
  }

  gap(): void {
    this.bank.gap();
  }

  finish(): PhenomenonResult {
    const series = this.bank.finish();
    return {
      series: [
        ...series.map((s) => (s.quantity === "energy-import" || s.quantity === "energy-export" ? asEnergy(s) : s)),
        ...quotients(series, "power-factor", "active-power", "apparent-power"),
        ...quotients(series, "displacement-factor", "fundamental-active-power", "fundamental-apparent-power"),
      ],
      unavailable: this.missing(),
      remarks: this.parts.length === 0 ? [] : [say`Reactive power is that of the fundamental (Q1 of IEEE 1459).`],
    };
  }

  private missing(): Unavailable[] {
    const hasCurrent = this.setup.channels.some((c) => c.quantity === "current");
    if (!hasCurrent || this.parts.length > 0) return [];
    const reason = say`Power needs the voltage to neutral and the current of a phase, or three phase-to-phase voltages and the currents.`;
    return [{ quantity: "active-power", reason }];
  }
}

function phaseTerms(setup: ChainSetup): { readonly phase: Phase; readonly terms: Terms }[] {
  return PHASE_TO_NEUTRAL.flatMap((phase) => {
    const u = channelOf(setup, "voltage", phase);
    const i = channelOf(setup, "current", phase);
    return u < 0 || i < 0 ? [] : [{ phase, terms: (w: BasicWindow) => phasePower(at(w, u), at(w, i), w.cycles) }];
  });
}

function systemTerms(setup: ChainSetup): Terms | undefined {
  const toNeutral = PHASE_TO_NEUTRAL.map((p) => channelOf(setup, "voltage", p));
  const between = PHASE_TO_PHASE.map((p) => channelOf(setup, "voltage", p));
  const currents = PHASE_TO_NEUTRAL.map((p) => channelOf(setup, "current", p));
  const missing = currents.filter((c) => c < 0).length;
  if (!toNeutral.includes(-1) && missing === 0) {
    const neutral = channelOf(setup, "current", "N");
    return (w) => {
      const i = three(currents.map((c) => at(w, c)));
      const back = neutral < 0 ? combine(i.map((part) => [1, part] as const)) : at(w, neutral);
      return systemPower(three(toNeutral.map((c) => at(w, c))), i, back, w.cycles);
    };
  }
  if (between.includes(-1) || !toNeutral.includes(-1) || missing > 1) return undefined;
  return (w) => {
    const [u12, u23, u31] = three(between.map((c) => at(w, c)));
    const star = (a: Oscillation, b: Oscillation) =>
      combine([
        [1 / 3, a],
        [-1 / 3, b],
      ]);
    const known = currents.flatMap((c) => (c < 0 ? [] : [[-1, at(w, c)] as const]));
    const i = currents.map((c) => (c < 0 ? combine(known) : at(w, c)));
    return systemPower([star(u12, u31), star(u23, u12), star(u31, u23)], three(i), undefined, w.cycles);
  };
}

function at(window: BasicWindow, channel: number): Oscillation {
  return window.channels[channel] as Oscillation;
}

function three<T>(of: readonly T[]): readonly [T, T, T] {
  return of as unknown as readonly [T, T, T];
}

/** From a mean power to the energy of the time that was measured, in Wh. */
function asEnergy(series: IntervalSeries): IntervalSeries {
  const { min: _min, max: _max, ...rest } = series;
  const hours = series.interval / HOUR;
  return { ...rest, values: series.values.map((p, i) => p * hours * (series.coverage[i] as number)) };
}

/** Quotients of series that have equal intervals; 0 over 0, no load at all, has no value and no coverage. */
function quotients(
  all: readonly IntervalSeries[],
  quantity: Quantity,
  over: Quantity,
  under: Quantity,
): IntervalSeries[] {
  return all
    .filter((s) => s.quantity === over)
    .map((dividend) => {
      const divisor = all.find(
        (s) => s.quantity === under && s.phase === dividend.phase && s.interval === dividend.interval,
      ) as IntervalSeries;
      const { min: _min, max: _max, ...rest } = dividend;
      const values = dividend.values.map((v, i) => v / (divisor.values[i] as number));
      return {
        ...rest,
        quantity,
        unit: "1" as const,
        values,
        coverage: dividend.coverage.map((c, i) => (Number.isNaN(values[i]) ? 0 : c)),
      };
    });
}
