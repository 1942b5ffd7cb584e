import { hannPhasor } from "../../signal/hann-phasor.js";
import type { SampleHistory } from "../../signal/sample-history.js";
import type { Cycle } from "./phenomenon.js";
import { SlotSums } from "./slot-sums.js";

/** Half-width in cycles of the window through which the phase is seen. */
const HALF_WIDTH = 3;
/** The period in use is the median of so many cycles: a jump of the phase, smeared over six, does not touch it. */
const MEDIAN_OF = 15;
/** Below this share of Udin a voltage counts as gone. Common practice, no source; class A is specified from 10 % up. */
const GONE = 0.1;
/** Between two voltages the phase is compared while both are above this share of Udin. */
const SOUND = 0.5;
const COMPARE_EVERY = 10;
const COMPARISON_MEMORY = 0.8;
/** IEC 61000-4-30: 42.5 … 57.5 Hz, 51 … 69 Hz. */
const RANGE = 0.15;
/** A correction beyond this is a jump of the phase, not a cycle of the supply. */
const JUMP_RAD = 0.3;
/** In cycles: within this of the place looked at, the crossing is exact enough. */
const CLOSE = 2e-4;

/** A voltage that cycles can be tracked on. */
export interface TrackedVoltage {
  readonly channel: number;
  /** Udin in V. */
  readonly declared: number;
  /** How much later than the row the channel was sampled, in samples. */
  readonly skew: number;
}

/** A cycle with the period in use: the median of the last ones, in samples. */
export interface TrackedCycle extends Cycle {
  readonly period: number;
}

/**
 * Finds the cycles of the fundamental (IEC 61000-4-30, basic for all its intervals). At the place where the next upward
 * zero crossing is expected the phase of the fundamental is taken through a Hann window of six periods, which is blind to
 * harmonics and to an offset, and the crossing is put where that phase is zero. The first voltage that is alive is the
 * reference; while it is gone another takes its place, with the difference of phase seen before; while all are gone the
 * last period is continued. The first and last three cycles of an unbroken stretch continue those beside them.
 */
export class CycleTracker {
  private readonly slots: SlotSums;
  private readonly shortest: number;
  private readonly longest: number;
  private readonly nominal: number;
  private first = 0;
  private margin = 0;
  private started = false;
  /** Voltage in use; −1 while all are gone. */
  private current = -1;
  private reference = 0;
  private at = 0;
  private sinceComparison = 0;
  private period: number;
  private readonly recent: number[] = [];
  private readonly phasors: Float64Array[];
  private readonly differences: Float64Array[];
  private halfWidth = HALF_WIDTH;

  /** @param nominal samples per cycle at the nominal frequency */
  constructor(
    private readonly voltages: readonly TrackedVoltage[],
    samplesPerSecond: number,
    nominalFrequency: number,
    private readonly emit: (cycle: TrackedCycle) => void,
  ) {
    this.nominal = samplesPerSecond / nominalFrequency;
    this.shortest = this.nominal / (1 + RANGE);
    this.longest = this.nominal / (1 - RANGE);
    this.period = this.nominal;
    this.slots = new SlotSums(
      voltages.map((v) => v.channel),
      this.nominal,
      40,
    );
    this.phasors = voltages.map(() => new Float64Array(2));
    this.differences = voltages.map(() => new Float64Array(2));
  }

  /** Begins an unbroken stretch of samples; the first cycle starts `margin` samples into it or later. */
  restart(first: number, margin: number): void {
    this.first = first;
    this.margin = margin;
    this.started = false;
    this.current = -1;
    this.period = this.nominal;
    this.recent.length = 0;
    this.halfWidth = HALF_WIDTH;
    this.sinceComparison = 0;
    for (const d of this.differences) d.fill(0);
    this.slots.restart(first);
  }

  /** Emits the cycles that the samples so far allow. */
  advance(samples: SampleHistory): void {
    this.slots.update(samples);
    if (!this.started) {
      if (this.cyclesAtHand() < cyclesToBegin(HALF_WIDTH)) return;
      this.begin(HALF_WIDTH);
    }
    while (this.at + this.period * (this.halfWidth + 1.6) + this.slots.width <= this.slots.end) this.step();
  }

  /** No more samples follow in this stretch: emits the remaining cycles. A stretch of less than five cycles has none. */
  finish(samples: SampleHistory): void {
    this.advance(samples);
    if (!this.started) {
      let halfWidth = HALF_WIDTH - 1;
      while (halfWidth > 0 && this.cyclesAtHand() < cyclesToBegin(halfWidth)) halfWidth--;
      if (halfWidth === 0) return;
      this.begin(halfWidth);
    }
    while (this.at + this.period <= samples.end) this.put(this.at + this.period, this.current >= 0);
  }

  private cyclesAtHand(): number {
    return (this.slots.end - this.first - this.margin) / this.longest;
  }

  /** Period and phase at the start of a stretch; the cycles before that place are put where this period leads back to. */
  private begin(halfWidth: number): void {
    this.started = true;
    this.halfWidth = halfWidth;
    const earliest = this.first + this.margin;
    const place = earliest + (halfWidth + 0.5) * this.longest;
    this.lookAtAll(place);
    const alive = this.voltages.findIndex((_, v) => this.isAlive(v));
    this.reference = Math.max(0, alive);
    this.current = alive;
    this.at = earliest;
    if (alive < 0) return;
    let crossing = this.crossingNear(place, alive);
    for (let tries = 0; tries < 20; tries++) {
      this.takePhasor(crossing + this.period, alive);
      const length = this.withinRange(this.crossingNear(crossing + this.period, alive) - crossing);
      const settled = Math.abs(length - this.period) < 1e-9 * length;
      this.period = length;
      this.takePhasor(crossing, alive);
      crossing = this.crossingNear(crossing, alive);
      if (settled) break;
    }
    this.compare(crossing);
    this.recent.push(this.period);
    const cyclesBefore = Math.floor((crossing - earliest) / this.period);
    this.at = crossing - cyclesBefore * this.period;
    for (let i = 0; i < cyclesBefore; i++) this.put(this.at + this.period, true);
  }

  private step(): void {
    const expected = this.at + this.period;
    this.takePhasor(expected, this.reference);
    const voltage = this.choose(expected);
    if (voltage < 0) {
      this.current = -1;
      this.put(expected, false);
      return;
    }
    const changed = voltage !== this.current;
    // After an interruption of all voltages the frequency is found anew.
    if (this.current < 0) this.recent.length = 0;
    this.current = voltage;
    const crossing = this.crossingNear(expected, voltage);
    const tracked = !changed && Math.abs(crossing - expected) * 2 * Math.PI < JUMP_RAD * this.period;
    const length = crossing - this.at;
    this.put(crossing, tracked);
    // While few lengths are known the period in use may be wrong, and a correction is no jump; each jump puts them in doubt.
    if (!changed && (tracked || this.recent.length < MEDIAN_OF / 3)) this.useLength(length);
    else this.recent.shift();
    if (++this.sinceComparison === COMPARE_EVERY) this.compare(crossing);
  }

  private put(to: number, tracked: boolean): void {
    this.emit({ from: this.at, to, tracked, period: this.period });
    this.at = to;
  }

  private useLength(length: number): void {
    if (this.recent.length === MEDIAN_OF) this.recent.shift();
    this.recent.push(this.withinRange(length));
    const sorted = [...this.recent].sort((a, b) => a - b);
    this.period = sorted[sorted.length >> 1] as number;
  }

  private withinRange(period: number): number {
    return Math.min(this.longest, Math.max(this.shortest, period));
  }

  private lookAtAll(position: number): void {
    for (let v = 0; v < this.voltages.length; v++) this.takePhasor(position, v);
  }

  private takePhasor(position: number, voltage: number): void {
    const { skew } = this.voltages[voltage] as TrackedVoltage;
    const { slots, period } = this;
    const centre = slots.indexOf(position - skew);
    const half = (this.halfWidth * period) / slots.width;
    const signal = slots.history.channels[voltage] as Float64Array;
    hannPhasor(this.phasors[voltage] as Float64Array, signal, centre, half, (2 * Math.PI * slots.width) / period);
  }

  /** R.m.s. of the fundamental as last seen, as a share of Udin. */
  private amplitude(voltage: number): number {
    const { declared } = this.voltages[voltage] as TrackedVoltage;
    return magnitude(this.phasors[voltage] as Float64Array) / Math.SQRT2 / declared;
  }

  private isAlive(voltage: number): boolean {
    return this.amplitude(voltage) >= GONE;
  }

  /**
   * The reference while it is alive, else the voltage in use, else the highest whose phase against the reference is known.
   * After a time without any, the first that is alive becomes the reference. −1: none.
   */
  private choose(position: number): number {
    if (this.isAlive(this.reference)) return this.reference;
    this.lookAtAll(position);
    if (this.current >= 0 && this.isAlive(this.current)) return this.current;
    let best = -1;
    for (let v = 0; v < this.voltages.length; v++) {
      if (!this.isAlive(v) || magnitude(this.differences[v] as Float64Array) === 0) continue;
      if (best < 0 || this.amplitude(v) > this.amplitude(best)) best = v;
    }
    if (best >= 0 || this.current >= 0) return best;
    const alive = this.voltages.findIndex((_, v) => this.isAlive(v));
    if (alive < 0) return -1;
    this.reference = alive;
    for (const d of this.differences) d.fill(0);
    return alive;
  }

  /** The upward zero crossing of the reference's fundamental nearest to a position at which a voltage's phasor was taken. */
  private crossingNear(position: number, voltage: number): number {
    const ahead = voltage === this.reference ? 0 : angle(this.differences[voltage] as Float64Array);
    let at = position;
    for (let tries = 0; tries < 4; tries++) {
      if (tries > 0) this.takePhasor(at, voltage);
      // A phasor of −j is a sine at its upward crossing.
      const turns = (angle(this.phasors[voltage] as Float64Array) + Math.PI / 2 - ahead) / (2 * Math.PI);
      const off = turns - Math.round(turns);
      at -= off * this.period;
      if (Math.abs(off) < CLOSE) break;
    }
    return at;
  }

  /** Remembers by how much each sound voltage is ahead of the reference. */
  private compare(position: number): void {
    this.sinceComparison = 0;
    this.lookAtAll(position);
    if (!(this.amplitude(this.reference) >= SOUND)) return;
    const [refRe, refIm] = this.phasors[this.reference] as unknown as [number, number];
    for (let v = 0; v < this.voltages.length; v++) {
      if (v === this.reference || !(this.amplitude(v) >= SOUND)) continue;
      const [re, im] = this.phasors[v] as unknown as [number, number];
      const difference = this.differences[v] as Float64Array;
      const memory = magnitude(difference) === 0 ? 0 : COMPARISON_MEMORY;
      const share = (1 - memory) / Math.hypot(re, im) / Math.hypot(refRe, refIm);
      difference[0] = memory * (difference[0] as number) + share * (re * refRe + im * refIm);
      difference[1] = memory * (difference[1] as number) + share * (im * refRe - re * refIm);
    }
  }
}

/** Cycles of signal that finding the first period takes. */
function cyclesToBegin(halfWidth: number): number {
  return 2 * halfWidth + 2.5;
}

function magnitude(phasor: Float64Array): number {
  return Math.hypot(phasor[0] as number, phasor[1] as number);
}

function angle(phasor: Float64Array): number {
  return Math.atan2(phasor[1] as number, phasor[0] as number);
}
