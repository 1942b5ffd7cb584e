import type { CutOff, VoltageEvent } from "../../recording/measurements.js";
import { SECOND } from "../../recording/time.js";
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
import { Steadiness } from "./rapid-voltage-change-steadiness.js";
import { type ChannelGroup, supplyVoltages } from "./voltage-events-channels.js";
import { FORESIGHT, RecentHalfCycles } from "./voltage-events-half-cycles.js";
import { EventLog } from "./voltage-events-log.js";
import { EventRecorder } from "./voltage-events-recorder.js";

export interface RapidVoltageChangeSettings {
  /**
   * In % of the declared voltage; 3 where not given. IEC 61000-4-30 leaves it to the user, typically 1 … 6 %; 3 % is the
   * steady change that the Norwegian regulation on quality of supply counts from (both from memory).
   */
  readonly threshold?: number;
  /** In % of the threshold; 50 where not given, as IEC 61000-4-30 recommends (from memory). */
  readonly hysteresis?: number;
}

/**
 * Rapid voltage changes of the supply voltages by Urms(1/2) (IEC 61000-4-30 Ed 3, 5.11; from memory). A voltage is
 * steady while all values of the last second (100 at 50 Hz, 120 at 60 Hz) lie within the threshold of their mean. An
 * event begins when one of the voltages is no longer steady and ends when all are again, within the threshold less
 * hysteresis; the last value before its steady second is its end. ΔUmax is the largest difference of a value from the
 * mean before the event, ΔUss the difference of the means before and after.
 *
 * What crosses the threshold of a dip or swell is none of these: events that touch a flagged span are left out, so that
 * `voltageEvents` must stand before this one among the phenomena. An event that the samples break off in has no ΔUss.
 */
export function rapidVoltageChange(settings: RapidVoltageChangeSettings = {}): Phenomenon {
  return {
    id: "rapid-voltage-change",
    clause: "IEC 61000-4-30 Ed 3, 5.11",
    start: (setup) => new RapidVoltageChangeState(setup, settings),
  };
}

/** One voltage. */
class Voltage {
  readonly steadiness: Steadiness;
  isSteady = false;
  wasSteady = false;
  /** Mean just before the running event. */
  before = Number.NaN;
  maximum = 0;
  left = 0;

  constructor(
    readonly channel: WaveformChannel,
    readonly declared: number,
    count: number,
    private readonly band: { readonly wide: number; readonly narrow: number },
  ) {
    this.steadiness = new Steadiness(count);
  }

  add(value: number): void {
    this.wasSteady = this.isSteady;
    if (Number.isNaN(value)) {
      this.restart();
      return;
    }
    this.steadiness.add(value);
    const share = this.isSteady ? this.band.wide : this.band.narrow;
    this.isSteady = this.steadiness.spread <= (share * this.declared) / 100;
  }

  restart(): void {
    this.steadiness.restart();
    this.isSteady = false;
  }

  begin(mean: number): void {
    this.before = mean;
    this.maximum = 0;
    this.left = 0;
  }

  /** A voltage without a mean before the event, or with samples missing in it, has no part in it. */
  follow(value: number): void {
    if (Number.isNaN(value)) this.before = Number.NaN;
    if (Number.isNaN(this.before)) return;
    if (this.wasSteady && !this.isSteady) this.left++;
    const difference = Math.abs(value - this.before);
    if (difference > this.maximum) this.maximum = difference;
  }
}

interface Running {
  /** Number and position of the first half cycle. */
  readonly first: number;
  readonly from: number;
  readonly recorder: EventRecorder;
  /** Position of the start, once it is known. */
  start: number;
}

class RapidVoltageChangeState implements PhenomenonState {
  private readonly group: ChannelGroup;
  private readonly recent: RecentHalfCycles;
  private readonly voltages: readonly Voltage[];
  private readonly count: number;
  private readonly means: Float64Array;
  private readonly log = new EventLog();
  private running: Running | undefined;

  constructor(
    private readonly setup: ChainSetup,
    { threshold = USUAL_MEASUREMENT.rapidVoltageChange, hysteresis = 50 }: RapidVoltageChangeSettings,
  ) {
    this.group = supplyVoltages(setup);
    this.count = 2 * setup.nominalFrequency;
    this.recent = new RecentHalfCycles(this.group.indices, "oneCycle", this.count + 2 * FORESIGHT + 4);
    const band = { wide: threshold, narrow: threshold * (1 - hysteresis / 100) };
    this.voltages = this.group.channels.map((c) => new Voltage(c, declaredVoltageOf(setup, c), this.count, band));
    this.means = new Float64Array(this.voltages.length);
  }

  halfCycle(half: HalfCycle): void {
    const n = this.recent.add(half);
    for (const [c, voltage] of this.voltages.entries()) {
      this.means[c] = voltage.steadiness.mean;
      voltage.add(this.recent.value(c, n));
    }
    if (this.running === undefined) this.begin(n);
    else this.goOn(this.running, n);
  }

  gap(): void {
    this.breakOff("gap");
    for (const voltage of this.voltages) voltage.restart();
    this.recent.breakOff();
  }

  finish(): PhenomenonResult {
    this.breakOff("recording");
    return this.log.finish(say`rapid voltage changes`);
  }

  private begin(n: number): void {
    const left = this.voltages.some((v) => v.wasSteady && !v.isSteady && v.steadiness.isFull);
    if (!left) return;
    for (const [c, voltage] of this.voltages.entries()) {
      voltage.begin(voltage.wasSteady ? (this.means[c] as number) : Number.NaN);
      voltage.follow(this.recent.value(c, n));
    }
    const recorder = new EventRecorder(this.setup, this.group, this.recent, -1, n);
    recorder.follow(n);
    this.running = { first: n, from: this.recent.start(n), recorder, start: Number.NaN };
  }

  private goOn(running: Running, n: number): void {
    const { recent } = this;
    if (this.taking().some((c) => Number.isNaN(recent.value(c, n)))) {
      this.close(running, n - 1, "gap");
      return;
    }
    for (const [c, voltage] of this.voltages.entries()) voltage.follow(recent.value(c, n));
    running.recorder.follow(n);
    if (n === running.first + FORESIGHT) running.start = this.startOf(running);
    running.recorder.takeStart(running.start, recent.start(n));
    if (this.voltages.every((v) => v.isSteady || Number.isNaN(v.before))) this.close(running, n);
  }

  private startOf({ first }: Running): number {
    return Math.min(...this.taking().map((c) => this.recent.startOfChange(c, first)));
  }

  /** Voltages that are no longer steady, or were not for a time, in the running event. */
  private taking(): number[] {
    return [...this.voltages.keys()].filter((c) => (this.voltages[c] as Voltage).left > 0);
  }

  private breakOff(cause: CutOff): void {
    if (this.running !== undefined) this.close(this.running, this.recent.next - 1, cause);
  }

  /** @param n the half cycle with which all are steady, or the last one before it was cut off */
  private close(running: Running, n: number, cut?: CutOff): void {
    this.running = undefined;
    const { recent, setup } = this;
    const start = Number.isNaN(running.start) ? this.startOf(running) : running.start;
    const last = this.taking().filter((c) => !this.voltages[c]?.wasSteady);
    const steadyFrom = n - this.count + 1;
    const end = cut ? recent.end(n) : Math.max(start, ...last.map((c) => recent.endOfChange(c, steadyFrom)));
    if (setup.flags.touches(Math.min(start, running.from), recent.end(n))) return;
    const span = {
      start: instantOfSample(setup, start),
      durationS: (instantOfSample(setup, end) - instantOfSample(setup, start)) / SECOND,
    };
    const perPhase = this.taking().map((c) => {
      const { channel, declared, before, maximum, left, steadiness } = this.voltages[c] as Voltage;
      return {
        phase: channel.phase,
        ...span,
        extreme: maximum,
        reference: declared,
        percent: (100 * maximum) / declared,
        ...(cut === undefined && { steadyChange: Math.abs(steadiness.mean - before) }),
        crossings: left,
      };
    });
    const worst = perPhase.reduce((a, b) => (b.percent > a.percent ? b : a));
    const event: VoltageEvent = {
      kind: "rapid-voltage-change",
      origin: "computed",
      phases: perPhase.map((p) => p.phase),
      unit: "V",
      ...span,
      extreme: worst.extreme,
      reference: worst.reference,
      percent: worst.percent,
      ...(cut === undefined && { steadyChange: Math.max(...perPhase.map((p) => p.steadyChange ?? 0)) }),
      perPhase,
      complete: cut === undefined,
      ...(cut !== undefined && { cutOff: { end: cut } }),
    };
    this.log.add(event, worst.percent, running.recorder.record(start));
  }
}
