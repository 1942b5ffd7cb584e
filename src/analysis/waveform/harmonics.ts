import type { Unavailable } from "../../recording/measurements.js";
import type { WaveformChannel } from "../../recording/waveform.js";
import { say } from "../../sentence.js";
import { THD_HIGHEST_ORDER } from "../harmonics.js";
import { HIGHEST_ORDER } from "./band.js";
import { groupSquare, interharmonicSquare, subgroupSquare } from "./harmonic-groups.js";
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

/** Below this share of Udin there is no fundamental to relate harmonics to: the threshold of an interruption. */
const DEAD = 0.05;

/** IEC 61000-4-7: a low pass of 1.5 s, here for a new value every 0.2 s. */
const SMOOTHING = Math.exp(-0.2 / 1.5);

/**
 * Harmonics and interharmonics of voltages and currents, and total harmonic distortion (IEC 61000-4-30, 5.8 and 5.9, by
 * the subgroups of IEC 61000-4-7; by its groups if so asked). Voltages in % of the fundamental of the same window,
 * currents in A. THD counts orders 2 … 40 (EN 50160). Orders beyond the recorder's band are absent. While a voltage is
 * interrupted it has no values.
 */
export const harmonics: Phenomenon = {
  id: "harmonics",
  clause: "IEC 61000-4-30, 5.8 and 5.9; IEC 61000-4-7",
  start: (setup) => new HarmonicsState(setup),
};

class HarmonicsState implements PhenomenonState {
  private readonly bank: IntervalBank;
  private readonly values: Float64Array;
  private readonly channels: readonly ChannelHarmonics[];

  constructor(private readonly setup: ChainSetup) {
    const columns = setup.channels.map((channel) => columnsOf(channel, setup.band.highestOrder));
    this.bank = new IntervalBank(columns.flat(), setup.options.levels);
    this.values = new Float64Array(columns.flat().length);
    let next = 0;
    this.channels = columns.map((own, c) => {
      const values = this.values.subarray(next, next + own.length);
      next += own.length;
      return new ChannelHarmonics(setup, setup.channels[c] as WaveformChannel, values);
    });
  }

  window(window: BasicWindow): void {
    for (let c = 0; c < this.channels.length; c++) {
      (this.channels[c] as ChannelHarmonics).take((window.channels[c] as WindowChannel).squares);
    }
    this.bank.add(window, this.values);
  }

  gap(): void {
    for (const channel of this.channels) channel.restart();
    this.bank.gap();
  }

  finish(): PhenomenonResult {
    return { series: this.bank.finish(), ...bandLimits(this.setup) };
  }
}

/** For one channel the columns are: THD, harmonics in rising order (of a voltage from 2), interharmonics from above 0. */
function columnsOf({ quantity, phase }: WaveformChannel, highest: number): BankColumn[] {
  const orders = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const unit = quantity === "voltage" ? "%" : "A";
  return [
    { quantity: `thd-${quantity}`, phase, unit: "%", rule: "rms" },
    ...orders(lowestOrder(quantity), highest).map(
      (order): BankColumn => ({ quantity: `harmonic-${quantity}`, phase, order, unit, rule: "rms" }),
    ),
    ...orders(0, highest - 1).map(
      (order): BankColumn => ({ quantity: `interharmonic-${quantity}`, phase, order, unit, rule: "rms" }),
    ),
  ];
}

/** The fundamental of a voltage is what its harmonics are related to; of a current it is a value like any other. */
function lowestOrder(quantity: WaveformChannel["quantity"]): number {
  return quantity === "voltage" ? 2 : 1;
}

class ChannelHarmonics {
  private readonly highest: number;
  private readonly spacing: number;
  private readonly lowest: number;
  private readonly isVoltage: boolean;
  /** Fundamental in V below which the voltage counts as interrupted; a current has values whatever its size. */
  private readonly least: number;
  private readonly square: typeof subgroupSquare;
  /** R.m.s. in V or A: index n for harmonic n, then interharmonics from above order 0. */
  private readonly sizes: Float64Array;
  private readonly smoothed: boolean;
  private first = true;

  constructor(
    setup: ChainSetup,
    channel: WaveformChannel,
    private readonly values: Float64Array,
  ) {
    this.highest = setup.band.highestOrder;
    this.spacing = setup.band.cycles;
    this.lowest = lowestOrder(channel.quantity);
    this.isVoltage = channel.quantity === "voltage";
    this.least = this.isVoltage ? DEAD * declaredVoltageOf(setup, channel) : 0;
    this.square = setup.options.harmonics === "groups" ? groupSquare : subgroupSquare;
    this.smoothed = setup.options.smoothed ?? false;
    this.sizes = new Float64Array(2 * this.highest + 1);
  }

  restart(): void {
    this.first = true;
  }

  take(squares: Float64Array): void {
    const { highest, lowest, sizes, spacing, values } = this;
    for (let n = 1; n <= highest; n++) this.put(n, Math.sqrt(this.square(squares, n, spacing)));
    for (let n = 0; n < highest; n++) this.put(highest + 1 + n, Math.sqrt(interharmonicSquare(squares, n, spacing)));
    this.first = false;

    const fundamental = sizes[1] as number;
    const percent = fundamental > this.least ? 100 / fundamental : Number.NaN;
    let distortion = 0;
    for (let n = 2; n <= THD_HIGHEST_ORDER; n++) distortion += n <= highest ? (sizes[n] as number) ** 2 : Number.NaN;
    values[0] = percent * Math.sqrt(distortion);
    const factor = this.isVoltage ? percent : 1;
    for (let i = lowest; i < sizes.length; i++) values[1 + i - lowest] = factor * (sizes[i] as number);
  }

  private put(i: number, size: number): void {
    const before = this.sizes[i] as number;
    const smooth = this.smoothed && !this.first && !Number.isNaN(before);
    this.sizes[i] = smooth ? size + SMOOTHING * (before - size) : size;
  }
}

function bandLimits({
  band,
  channels,
  samplesPerSecond,
}: ChainSetup): Pick<PhenomenonResult, "remarks" | "unavailable"> {
  if (band.highestOrder === HIGHEST_ORDER) return {};
  const remark = say`Harmonics are measured to order ${band.highestOrder} only: with ${samplesPerSecond} samples per second the recording shows nothing sound above ${Math.floor(band.edge)} Hz. Higher orders are absent, not zero.`;
  if (band.highestOrder >= THD_HIGHEST_ORDER) return { remarks: [remark] };
  const unavailable = channels.map(
    ({ quantity, phase }): Unavailable => ({
      quantity: `thd-${quantity}`,
      phase,
      reason: say`THD needs all harmonics from 2 to ${THD_HIGHEST_ORDER}; with ${samplesPerSecond} samples per second they are measured to order ${band.highestOrder}.`,
    }),
  );
  return { remarks: [remark], unavailable };
}
