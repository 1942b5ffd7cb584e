import type { IntervalSeries } from "../../recording/measurements.js";
import type { WaveformChannel } from "../../recording/waveform.js";
import { type BankColumn, IntervalBank } from "./interval-bank.js";
import {
  type BasicWindow,
  type ChainSetup,
  declaredVoltageOf,
  type Phenomenon,
  type PhenomenonResult,
  type PhenomenonState,
  type WindowChannel,
} from "./phenomenon.js";

/**
 * R.m.s. voltage and current over the basic windows (IEC 61000-4-30, 5.2), crest factor (peak over r.m.s.), and under-
 * and overdeviation (Annex D): values above Udin, or below it, are replaced by Udin before they are aggregated, and the
 * deviation from Udin is taken of the result.
 */
export const magnitude: Phenomenon = {
  id: "magnitude",
  clause: "IEC 61000-4-30, 5.2 and Annex D",
  start: (setup) => new MagnitudeState(setup),
};

class MagnitudeState implements PhenomenonState {
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;
  private readonly declared: readonly number[];

  constructor(private readonly setup: ChainSetup) {
    const columns = setup.channels.flatMap(columnsOf);
    this.bank = new IntervalBank(columns, setup.options.levels);
    this.values = new Float64Array(columns.length);
    this.declared = setup.channels.map((c) => declaredVoltageOf(setup, c));
  }

  window(window: BasicWindow): void {
    const { values } = this;
    let next = 0;
    for (let c = 0; c < this.setup.channels.length; c++) {
      const { rms, peak } = window.channels[c] as WindowChannel;
      values[next++] = rms;
      values[next++] = peak / rms;
      if (this.setup.channels[c]?.quantity !== "voltage") continue;
      const declared = this.declared[c] as number;
      values[next++] = Math.min(rms, declared);
      values[next++] = Math.max(rms, declared);
    }
    this.bank.add(window, values);
  }

  gap(): void {
    this.bank.gap();
  }

  finish(): PhenomenonResult {
    return {
      series: this.bank.finish().map((s) => {
        const declared = declaredVoltageOf(this.setup, s);
        if (s.quantity === "underdeviation") return deviation(s, (u) => (100 * (declared - u)) / declared, true);
        if (s.quantity === "overdeviation") return deviation(s, (u) => (100 * (u - declared)) / declared, false);
        return s;
      }),
    };
  }
}

/** Deviations are aggregated as voltages and turned into % at the end. */
function columnsOf({ quantity, phase }: WaveformChannel): BankColumn[] {
  const own: BankColumn[] = [
    { quantity, phase, unit: quantity === "voltage" ? "V" : "A", rule: "rms" },
    { quantity: `crest-factor-${quantity}`, phase, unit: "1", rule: "rms" },
  ];
  if (quantity === "current") return own;
  return [
    ...own,
    { quantity: "underdeviation", phase, unit: "%", rule: "rms" },
    { quantity: "overdeviation", phase, unit: "%", rule: "rms" },
  ];
}

function deviation(series: IntervalSeries, of: (u: number) => number, falling: boolean): IntervalSeries {
  const { min, max, ...rest } = series;
  const low = falling ? max : min;
  const high = falling ? min : max;
  return {
    ...rest,
    values: series.values.map(of),
    ...(low !== undefined && { min: low.map(of) }),
    ...(high !== undefined && { max: high.map(of) }),
  };
}
