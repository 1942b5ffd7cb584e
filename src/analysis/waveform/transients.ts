import type { VoltageEvent } from "../../recording/measurements.js";
import { USUAL_MEASUREMENT } from "../../recording/usual-measurement.js";
import { instantOfSample, type WaveformChannel } from "../../recording/waveform.js";
import { say } from "../../sentence.js";
import {
  type ChainSetup,
  declaredVoltageOf,
  type HalfCycle,
  type Phenomenon,
  type PhenomenonResult,
  type PhenomenonState,
} from "./phenomenon.js";
import { type ChannelGroup, supplyVoltages } from "./voltage-events-channels.js";

export interface TransientSettings {
  /**
   * Deviation in % of the crest of the declared voltage (√2 times it); 20 where not given. No source: the standards set
   * no threshold; the voltage of a sound supply does not change by so much from one cycle to the next.
   */
  readonly threshold?: number;
}

/**
 * In cycles: deviations so close to one another belong together, and what they span must not be longer. A step of amplitude
 * or phase deviates for a whole cycle, most at two places half a cycle apart, which must be taken together and left out.
 */
const JOINED = 0.6;
const LONGEST = 0.4;

/** Each sample is compared with those of so many cycles before. */
const CYCLES_BACK = 3;

/** So many are listed; the rest is counted. */
const LISTED = 10_000;

/**
 * Transient voltages, as an indicator only: a recorder of some kilohertz sees the slow ones and a part of the height of the
 * others. Each sample is compared with those one, two and three cycles before (linear between samples), and the smallest
 * difference counts, so that a transient does not show again in the cycles after it; one that repeats itself within three
 * cycles counts once. What lies beyond the threshold on
 * any voltage, less than 0.6 of a cycle apart, is one transient: its first such sample, the time to the last, the largest
 * deviation in V. What goes on for more than 0.4 of a cycle is a change of amplitude or phase and is left out.
 */
export function transients(settings: TransientSettings = {}): Phenomenon {
  return {
    id: "transients",
    clause: "IEC 61000-4-30, informative annex (no method is laid down)",
    start: (setup) => new TransientState(setup, settings.threshold ?? USUAL_MEASUREMENT.transient),
  };
}

/** Samples beyond the threshold on one voltage: first, last, and largest deviation; none while `size` is 0. */
interface Burst {
  first: number;
  last: number;
  size: number;
}

class TransientState implements PhenomenonState {
  private readonly group: ChannelGroup;
  private readonly crests: readonly number[];
  private readonly bursts: readonly Burst[];
  private readonly events: VoltageEvent[] = [];
  private unlisted = 0;
  /** The sample to look at next. */
  private next = 0;
  private period = 0;

  constructor(
    private readonly setup: ChainSetup,
    private readonly threshold: number,
  ) {
    this.group = supplyVoltages(setup);
    this.crests = this.group.channels.map((c) => Math.SQRT2 * declaredVoltageOf(setup, c));
    this.bursts = this.crests.map(() => ({ first: 0, last: 0, size: 0 }));
  }

  halfCycle({ from, period }: HalfCycle): void {
    const first = this.next;
    const end = Math.ceil(from + period / 2);
    this.next = end;
    this.period = period;
    if (first - Math.ceil(CYCLES_BACK * period) < this.setup.history.base) return;
    const found = this.bursts.map((_, c) => this.look(c, first, end, period));
    const begin = Math.min(...found.map((b) => (b.size > 0 ? b.first : Number.POSITIVE_INFINITY)));
    if (Math.min(begin, end) - this.last > JOINED * period) this.close();
    for (const [c, burst] of found.entries()) {
      const running = this.bursts[c] as Burst;
      if (burst.size === 0) continue;
      if (running.size === 0) running.first = burst.first;
      running.last = burst.last;
      running.size = Math.max(running.size, burst.size);
    }
  }

  gap(): void {
    this.close();
  }

  finish(): PhenomenonResult {
    this.close();
    const more = say`${this.unlisted} more transients are not listed; the first ${LISTED} are.`;
    return { events: this.events, remarks: this.unlisted > 0 ? [more] : [] };
  }

  private get last(): number {
    return Math.max(...this.bursts.map((b) => (b.size > 0 ? b.last : Number.NEGATIVE_INFINITY)));
  }

  /** Samples first … end − 1 of one voltage. */
  private look(channel: number, first: number, end: number, period: number): Burst {
    const { history } = this.setup;
    const x = history.channels[this.group.indices[channel] as number] as Float64Array;
    const limit = ((this.crests[channel] as number) * this.threshold) / 100;
    const burst = { first: 0, last: 0, size: 0 };
    for (let n = first; n < end; n++) {
      const i = n - history.base;
      let size = difference(x, i, period);
      for (let k = 2; k <= CYCLES_BACK && size > limit; k++) size = Math.min(size, difference(x, i, k * period));
      if (!(size > limit)) continue;
      if (burst.size === 0) burst.first = n;
      burst.last = n;
      if (size > burst.size) burst.size = size;
    }
    return burst;
  }

  private close(): void {
    const taking = [...this.bursts.keys()].filter((c) => (this.bursts[c] as Burst).size > 0);
    if (taking.length === 0) return;
    const perPhase = taking.map((c) => {
      const { first, last, size } = this.bursts[c] as Burst;
      const crest = this.crests[c] as number;
      return {
        phase: (this.group.channels[c] as WaveformChannel).phase,
        ...this.timesOf(first, last),
        extreme: size,
        reference: crest,
        percent: (100 * size) / crest,
        crossings: 1,
      };
    });
    const first = Math.min(...taking.map((c) => (this.bursts[c] as Burst).first));
    const { last } = this;
    for (const burst of this.bursts) burst.size = 0;
    if (last - first > LONGEST * this.period) return;
    if (this.events.length === LISTED) {
      this.unlisted++;
      return;
    }
    const worst = perPhase.reduce((a, b) => (b.percent > a.percent ? b : a));
    this.events.push({
      kind: "transient",
      origin: "computed",
      phases: perPhase.map((p) => p.phase),
      unit: "V",
      ...this.timesOf(first, last),
      extreme: worst.extreme,
      reference: worst.reference,
      percent: worst.percent,
      perPhase,
    });
  }

  private timesOf(first: number, last: number): { start: number; durationS: number } {
    const { samplesPerSecond } = this.setup;
    return { start: instantOfSample(this.setup, first), durationS: (last - first + 1) / samplesPerSecond };
  }
}

/** Between the value at an index and the one `distance` before it, linear between samples. */
function difference(x: Float64Array, i: number, distance: number): number {
  const back = Math.ceil(distance);
  const before = x[i - back] as number;
  return Math.abs((x[i] as number) - before - (back - distance) * ((x[i - back + 1] as number) - before));
}
