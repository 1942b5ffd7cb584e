import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE } from "../../recording/quantity.js";
import { say } from "../../sentence.js";
import { type BankColumn, IntervalBank } from "./interval-bank.js";
import { line, magnitudeOf, type Phasor, symmetricalComponents } from "./phasor.js";
import {
  type BasicWindow,
  type ChainSetup,
  channelOf,
  declaredVoltageOf,
  type Phenomenon,
  type PhenomenonResult,
  type PhenomenonState,
  type WindowChannel,
} from "./phenomenon.js";

/** Below this share of Udin there is no positive sequence to relate the others to. */
const DEAD = 0.05;

/**
 * Unbalance by symmetrical components of the fundamentals over the basic windows (IEC 61000-4-30, 5.7): u2 from three
 * voltages phase to neutral or phase to phase, u0 from phase to neutral alone. While the supply is interrupted there are
 * no values. Where the phases turn the other way round than their names say, u2 would be the inverse of the truth; it is
 * withheld and the reason given.
 */
export const unbalance: Phenomenon = {
  id: "unbalance",
  clause: "IEC 61000-4-30, 5.7",
  start: (setup) => {
    for (const phases of [PHASE_TO_NEUTRAL, PHASE_TO_PHASE]) {
      const channels = phases.map((p) => channelOf(setup, "voltage", p));
      if (!channels.includes(-1)) return new UnbalanceState(setup, channels, phases === PHASE_TO_NEUTRAL);
    }
    const reason = say`Unbalance needs three voltages, phase to neutral or phase to phase.`;
    return { finish: () => ({ unavailable: [{ quantity: "negative-sequence-unbalance", reason }] }) };
  },
};

class UnbalanceState implements PhenomenonState {
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;
  private readonly least: number;
  private windows = 0;
  private reversed = 0;

  constructor(
    setup: ChainSetup,
    private readonly channels: readonly number[],
    private readonly withZero: boolean,
  ) {
    const columns: BankColumn[] = [
      { quantity: "negative-sequence-unbalance", phase: "system", unit: "%", rule: "rms" },
      ...(withZero
        ? [
            {
              quantity: "zero-sequence-unbalance",
              phase: "system",
              unit: "%",
              rule: "rms",
            } as const satisfies BankColumn,
          ]
        : []),
    ];
    this.bank = new IntervalBank(columns, setup.options.levels);
    this.values = new Float64Array(columns.length);
    this.least = DEAD * declaredVoltageOf(setup, { phase: withZero ? "L1" : "L12" });
  }

  window(window: BasicWindow): void {
    const [a, b, c] = this.channels.map((i) => line((window.channels[i] as WindowChannel).spectrum, window.cycles)) as [
      Phasor,
      Phasor,
      Phasor,
    ];
    const { zero, positive, negative } = symmetricalComponents(a, b, c);
    const u1 = magnitudeOf(positive);
    const u2 = magnitudeOf(negative);
    const alive = Math.max(u1, u2) > this.least;
    if (alive) {
      this.windows++;
      if (u2 > u1) this.reversed++;
    }
    this.values[0] = alive ? (100 * u2) / u1 : Number.NaN;
    if (this.withZero) this.values[1] = alive ? (100 * magnitudeOf(zero)) / u1 : Number.NaN;
    this.bank.add(window, this.values);
  }

  gap(): void {
    this.bank.gap();
  }

  finish(): PhenomenonResult {
    const series = this.bank.finish();
    if (this.reversed * 2 <= this.windows) return { series };
    const reason = say`The phases follow each other in the order L1, L3, L2: two voltages are exchanged, or one is inverted. Exchange them in the setup.`;
    const quantities = new Set(series.map((s) => s.quantity));
    return { unavailable: [...quantities].map((quantity) => ({ quantity, reason })), remarks: [reason] };
  }
}
