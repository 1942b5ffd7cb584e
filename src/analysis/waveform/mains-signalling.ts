import type { WaveformChannel } from "../../recording/waveform.js";
import { say } from "../../sentence.js";
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

/** A carrier nearer than this to a spectral line, in lines, is taken from that line alone: 2 % of it are lost at most. */
const ON_LINE = 0.1;

/**
 * Mains signalling voltages at the frequencies asked for, in % of Udin (IEC 61000-4-30, 5.10, from memory): the nearest
 * spectral line, or the root of the squares of the four nearest where the carrier falls between lines; of these, the
 * outer two are left out where they are the line of a harmonic. Aggregated over 150/180 cycles, the 3 s of EN 50160.
 */
export const mainsSignalling: Phenomenon = {
  id: "mains-signalling",
  clause: "IEC 61000-4-30, 5.10",
  start: (setup) => {
    const carriers = setup.options.signallingFrequencies ?? [];
    return carriers.length === 0 ? { finish: () => ({}) } : new SignallingState(setup, carriers);
  },
};

class SignallingState implements PhenomenonState {
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;
  private readonly voltages: readonly { readonly channel: number; readonly declared: number }[];
  private readonly carriers: readonly number[];

  constructor(
    private readonly setup: ChainSetup,
    private readonly asked: readonly number[],
  ) {
    this.carriers = asked.filter((hertz) => hertz < setup.band.edge);
    this.voltages = setup.channels.flatMap((c, channel) =>
      c.quantity === "voltage" ? [{ channel, declared: declaredVoltageOf(setup, c) }] : [],
    );
    const columns = this.voltages.flatMap(({ channel }): BankColumn[] =>
      this.carriers.map((hertz) => ({
        quantity: "mains-signalling",
        phase: (setup.channels[channel] as WaveformChannel).phase,
        hertz,
        unit: "%",
        rule: "rms",
      })),
    );
    this.bank = new IntervalBank(columns, setup.options.levels?.includes("window") ? ["window", "3s"] : ["3s"]);
    this.values = new Float64Array(columns.length);
  }

  window(window: BasicWindow): void {
    const linesPerHertz = (window.to - window.from) / this.setup.samplesPerSecond;
    let next = 0;
    for (const { channel, declared } of this.voltages) {
      const { squares } = window.channels[channel] as WindowChannel;
      for (const hertz of this.carriers) {
        const square = carrierSquare(squares, hertz * linesPerHertz, window.cycles);
        this.values[next++] = (100 * Math.sqrt(square)) / declared;
      }
    }
    this.bank.add(window, this.values);
  }

  gap(): void {
    this.bank.gap();
  }

  finish(): PhenomenonResult {
    const lost = this.asked.filter((hertz) => !this.carriers.includes(hertz));
    const edge = Math.floor(this.setup.band.edge);
    return {
      series: this.bank.finish(),
      remarks: lost.map(
        (hertz) =>
          say`Mains signalling at ${hertz} Hz cannot be measured: with ${this.setup.samplesPerSecond} samples per second the recording shows nothing sound above ${edge} Hz.`,
      ),
    };
  }
}

/** @param place of the carrier on the axis of lines */
function carrierSquare(squares: Float64Array, place: number, spacing: number): number {
  const nearest = Math.round(place);
  if (Math.abs(place - nearest) <= ON_LINE) return squares[nearest] ?? Number.NaN;
  const below = Math.floor(place);
  let sum = 0;
  for (let k = below - 1; k <= below + 2; k++) {
    const isOuter = k < below || k > below + 1;
    if (!(isOuter && k % spacing === 0)) sum += squares[k] ?? Number.NaN;
  }
  return sum;
}
