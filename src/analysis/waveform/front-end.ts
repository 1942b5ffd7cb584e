import { instantOfSample, type WaveformBlock } from "../../recording/waveform.js";
import { CycleAxis } from "./cycle-axis.js";
import { CycleTracker, type TrackedCycle } from "./cycle-tracker.js";
import { HalfCycleMeter } from "./half-cycle-meter.js";
import { type ChainSetup, declaredVoltageOf, type PhenomenonState } from "./phenomenon.js";
import { type Span, WindowCutter } from "./window-cutter.js";
import { WindowMeter } from "./window-meter.js";

/** Samples are taken in by so much at a time, in s, however long the blocks of the source are. */
const PORTION_S = 0.1;

/**
 * From blocks of samples to cycles, half cycles and basic windows, handed to every state in the order that
 * `PhenomenonState` promises. Nothing it hands over depends on how the samples were cut into blocks.
 */
export class FrontEnd {
  private readonly axis = new CycleAxis();
  private readonly tracker: CycleTracker;
  private readonly cutter: WindowCutter;
  private readonly windows: WindowMeter;
  private readonly halves: HalfCycleMeter;
  private readonly margin: number;
  private readonly portion: number;
  /** Cycles whose half cycles have not been measured yet. */
  private readonly waiting: TrackedCycle[] = [];
  private secondHalf = false;
  private window: Span | undefined;
  private next: number | undefined;
  windowsMeasured = 0;

  constructor(
    private readonly setup: ChainSetup,
    private readonly states: readonly PhenomenonState[],
  ) {
    const { channels, samplesPerSecond, nominalFrequency, history, band } = setup;
    const voltages = channels.flatMap((c, channel) =>
      c.quantity === "voltage"
        ? [{ channel, declared: declaredVoltageOf(setup, c), skew: c.skewS * samplesPerSecond }]
        : [],
    );
    this.tracker = new CycleTracker(voltages, samplesPerSecond, nominalFrequency, (cycle) => this.takeCycle(cycle));
    this.cutter = new WindowCutter(this.axis, setup, band.cycles);
    this.windows = new WindowMeter(channels, samplesPerSecond, band, history);
    this.halves = new HalfCycleMeter(channels, samplesPerSecond, history);
    this.margin = this.windows.reach(nominalFrequency) + 1;
    this.portion = Math.ceil(PORTION_S * samplesPerSecond);
  }

  /** @throws RangeError if blocks overlap or go back */
  take(block: WaveformBlock): void {
    if (this.next === undefined) {
      this.begin(block.first);
    } else if (block.first !== this.next) {
      if (block.first < this.next) throw new RangeError(`block at sample ${block.first} before ${this.next}`);
      this.endStretch();
      for (const state of this.states) state.gap?.(block.first);
      this.begin(block.first);
    }
    for (const state of this.states) state.samples?.(block);
    const length = block.samples[0]?.length ?? 0;
    for (let from = 0; from < length; from += this.portion) {
      this.setup.history.append(block.samples, from, Math.min(length, from + this.portion));
      this.tracker.advance(this.setup.history);
      this.measure();
    }
    this.next = block.first + length;
  }

  finish(): void {
    if (this.next !== undefined) this.endStretch();
  }

  private begin(first: number): void {
    this.setup.history.restart(first);
    this.tracker.restart(first, this.margin);
    this.axis.restart();
    this.cutter.restart();
    this.waiting.length = 0;
    this.secondHalf = false;
    this.window = undefined;
  }

  private endStretch(): void {
    this.tracker.finish(this.setup.history);
    this.measure();
    this.measureWindowsUpTo(Number.POSITIVE_INFINITY);
  }

  private takeCycle(cycle: TrackedCycle): void {
    if (this.axis.last < 0) this.axis.add(cycle.from);
    this.axis.add(cycle.to);
    this.waiting.push(cycle);
    for (const state of this.states) state.cycle?.(cycle);
  }

  private measure(): void {
    let done = 0;
    for (; done < this.waiting.length; done++) {
      const { from, to, period } = this.waiting[done] as TrackedCycle;
      if (!this.secondHalf && !this.measureHalf(from, period)) break;
      this.secondHalf = !this.measureHalf((from + to) / 2, period);
      if (this.secondHalf) break;
    }
    this.waiting.splice(0, done);
  }

  private measureHalf(from: number, period: number): boolean {
    if (!this.halves.isReady(from, period)) return false;
    this.measureWindowsUpTo(from);
    const half = this.halves.measure(from, period);
    for (const state of this.states) state.halfCycle?.(half);
    return true;
  }

  private measureWindowsUpTo(position: number): void {
    for (;;) {
      this.window ??= this.cutter.next();
      if (this.window === undefined || this.window.to > position) return;
      const { from, to } = this.window;
      this.window = undefined;
      if (!this.windows.measure(from, to)) continue;
      const window = {
        from,
        to,
        start: instantOfSample(this.setup, from),
        end: instantOfSample(this.setup, to),
        cycles: this.setup.band.cycles,
        flagged: this.setup.flags.touches(from, to),
        channels: this.windows.channels,
      };
      this.windowsMeasured++;
      for (const state of this.states) state.window?.(window);
    }
  }
}
