import type { CutOff, EventKind, EventMeasure, PhaseOfEvent, VoltageEvent } from "../../recording/measurements.js";
import type { Unit } from "../../recording/quantity.js";
import { SECOND } from "../../recording/time.js";
import { instantOfSample, type WaveformChannel } from "../../recording/waveform.js";
import type { ChainSetup } from "./phenomenon.js";
import type { ChannelGroup } from "./voltage-events-channels.js";
import { FORESIGHT, type RecentHalfCycles } from "./voltage-events-half-cycles.js";
import { AFTER_S, type EventRecord, EventRecorder } from "./voltage-events-recorder.js";
import type { Thresholds } from "./voltage-events-thresholds.js";

export interface ExcursionRule {
  readonly kind: EventKind;
  readonly unit: Unit;
  /** Begins when any channel is beyond and ends when all are back, or begins when all are and ends when any is back. */
  readonly begins: "any" | "all";
}

/** What an event is measured with. */
export interface EventContext {
  readonly setup: ChainSetup;
  readonly group: ChannelGroup;
  readonly recent: RecentHalfCycles;
}

type MeasuredPhase = PhaseOfEvent & { readonly reference: number; readonly percent: number };

/** A change whose place is known `FORESIGHT` half cycles later. */
class Change {
  position = Number.NaN;

  constructor(
    readonly at: number,
    private readonly find: () => number,
  ) {}

  follow(n: number): void {
    if (n === this.at + FORESIGHT) this.settle();
  }

  settle(): void {
    if (Number.isNaN(this.position)) this.position = this.find();
  }
}

/** One channel during an event. */
class ChannelExcursion {
  beyond = false;
  crossings = 0;
  extreme = Number.NaN;
  peak = Number.NaN;
  start: Change | undefined;
  end: Change | undefined;

  constructor(
    private readonly recent: RecentHalfCycles,
    private readonly channel: number,
  ) {}

  take(n: number, thresholds: Thresholds): void {
    const { recent, channel } = this;
    const value = recent.value(channel, n);
    const peak = recent.peak(channel, n);
    // Written so that a first value counts and a NaN does not.
    if (!Number.isNaN(value) && !((value - this.extreme) * thresholds.direction <= 0)) this.extreme = value;
    if (!Number.isNaN(peak) && !(peak <= this.peak)) this.peak = peak;
    if (!this.beyond && thresholds.isBeyond(channel, value)) {
      this.beyond = true;
      this.crossings++;
      this.start ??= new Change(n, () => recent.startOfChange(channel, n));
    } else if (this.beyond && thresholds.isBack(channel, value)) {
      this.beyond = false;
      this.end = new Change(n, () => recent.endOfChange(channel, n));
    }
  }
}

/** One event from its first half cycle on; see `ExcursionDetector`. */
export class Excursion {
  interrupted = false;
  private readonly channels: readonly ChannelExcursion[];
  private readonly start: Change;
  private end: Change | undefined;
  private readonly cutOff: { start?: CutOff; end?: CutOff } = {};
  private readonly recorder: EventRecorder;

  /** @param deciding the channels whose crossing begins it @param cut the samples before half cycle n are not known */
  constructor(
    private readonly context: EventContext,
    private readonly rule: ExcursionRule,
    readonly thresholds: Thresholds,
    n: number,
    deciding: readonly number[],
    cut: CutOff | undefined,
  ) {
    const { setup, group, recent } = context;
    if (cut !== undefined) this.cutOff.start = cut;
    const pick = rule.begins === "any" ? Math.min : Math.max;
    this.start = new Change(n, () =>
      cut === undefined ? pick(...deciding.map((c) => recent.startOfChange(c, n))) : recent.start(n),
    );
    if (cut !== undefined) this.start.settle();
    this.channels = group.indices.map((_, c) => new ChannelExcursion(recent, c));
    this.recorder = new EventRecorder(setup, group, recent, thresholds.direction, n);
  }

  /** Channels that have been beyond, or all where all must be. */
  get involved(): number[] {
    const all = [...this.channels.keys()];
    return this.rule.begins === "all" ? all : all.filter((c) => (this.channels[c]?.crossings ?? 0) > 0);
  }

  /** Takes in a half cycle during the event. */
  take(n: number): void {
    for (const channel of this.channels) channel.take(n, this.thresholds);
  }

  /** Takes in a half cycle during the event or after it, for what is recorded and placed. */
  follow(n: number): void {
    this.recorder.follow(n);
    for (const change of this.changes()) change.follow(n);
    if (this.end === undefined) this.recorder.takeStart(this.start.position, this.context.recent.start(n));
  }

  /** Ends with half cycle n. @param deciding the channels whose return ends it */
  endAt(n: number, deciding: readonly number[]): void {
    const { recent } = this.context;
    const pick = this.rule.begins === "any" ? Math.max : Math.min;
    this.end = new Change(n, () => pick(...deciding.map((c) => recent.endOfChange(c, n))));
  }

  /** Breaks off after half cycle n. */
  cutAfter(n: number, cause: CutOff): void {
    this.cutOff.end = cause;
    this.end = new Change(n, () => this.context.recent.end(n));
    this.end.settle();
  }

  /** Whether all that is kept of it has come. */
  isRecorded(n: number): boolean {
    const { recent, setup } = this.context;
    return recent.start(n) >= (this.end?.position ?? Number.NaN) + AFTER_S * setup.samplesPerSecond;
  }

  /** The event as it stands, with what is kept of it. */
  finish(): { event: VoltageEvent; severity: number; record: EventRecord } {
    const { rule, cutOff } = this;
    const { direction } = this.thresholds;
    for (const change of this.changes()) change.settle();
    const start = this.start.position;
    const end = this.end?.position ?? start;
    this.recorder.takeEnd(start, end);
    const perPhase = this.involved.map((c) => this.phaseAt(c, start, end));
    const worst = perPhase.reduce((a, b) => ((b.percent - a.percent) * direction > 0 ? b : a));
    const event: VoltageEvent = {
      kind: rule.kind,
      origin: "computed",
      phases: perPhase.map((p) => p.phase),
      unit: rule.unit,
      ...this.timesOf(start, end),
      extreme: worst.extreme,
      reference: worst.reference,
      percent: worst.percent,
      ...(direction === 1 && { peak: Math.max(...perPhase.map((p) => p.peak ?? 0)) }),
      perPhase,
      ...(this.interrupted && { interrupted: true }),
      complete: Object.keys(cutOff).length === 0,
      ...(Object.keys(cutOff).length > 0 && { cutOff }),
    };
    return { event, severity: Math.abs(worst.percent - 100), record: this.recorder.record(start) };
  }

  private changes(): Change[] {
    const ofChannels = this.channels.flatMap(({ start, end }) => [start, end]);
    return [this.start, this.end, ...ofChannels].filter((c) => c !== undefined);
  }

  private phaseAt(c: number, from: number, to: number): MeasuredPhase {
    const { phase } = this.context.group.channels[c] as WaveformChannel;
    const { beyond, start, end, crossings, extreme, peak } = this.channels[c] as ChannelExcursion;
    const reference = this.thresholds.reference[c] as number;
    const own = this.rule.begins === "any";
    const cutAtStart = this.cutOff.start !== undefined && start?.at === this.start.at;
    const startsWith = !own || start === undefined || cutAtStart ? from : start.position;
    const endsWith = !own || beyond || end === undefined ? to : end.position;
    return {
      phase,
      crossings,
      ...this.timesOf(startsWith, endsWith),
      extreme,
      reference,
      percent: (100 * extreme) / reference,
      ...(this.thresholds.direction === 1 && { peak }),
    };
  }

  /** No event is shorter than the half cycle that r.m.s. values are refreshed in. */
  private timesOf(from: number, to: number): Pick<EventMeasure, "start" | "durationS"> {
    const { setup } = this.context;
    const start = instantOfSample(setup, from);
    const shortest = 0.5 / setup.nominalFrequency;
    return { start, durationS: Math.max(shortest, (instantOfSample(setup, to) - start) / SECOND) };
  }
}
