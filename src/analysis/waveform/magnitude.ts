import { IntervalBank } from "./interval-bank.js";
import type { BasicWindow, ChainSetup, Phenomenon, PhenomenonState, WindowChannel } from "./phenomenon.js";

/** R.m.s. voltage and current over the basic windows (IEC 61000-4-30, 5.2). */
export const magnitude: Phenomenon = {
  id: "magnitude",
  clause: "IEC 61000-4-30, 5.2",
  start: (setup) => new MagnitudeState(setup),
};

class MagnitudeState implements PhenomenonState {
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;

  constructor(setup: ChainSetup) {
    this.bank = new IntervalBank(
      setup.channels.map(({ quantity, phase }) => ({
        quantity,
        phase,
        unit: quantity === "voltage" ? "V" : "A",
        rule: "rms",
      })),
      setup.options.levels,
    );
    this.values = new Float64Array(setup.channels.length);
  }

  window(window: BasicWindow): void {
    for (let c = 0; c < this.values.length; c++) this.values[c] = (window.channels[c] as WindowChannel).rms;
    this.bank.add(window, this.values);
  }

  gap(): void {
    this.bank.gap();
  }

  finish() {
    return { series: this.bank.finish() };
  }
}
