import type { CutOff } from "../../recording/measurements.js";
import { type EventContext, Excursion, type ExcursionRule } from "./voltage-events-excursion.js";
import type { EventLog } from "./voltage-events-log.js";
import type { Thresholds } from "./voltage-events-thresholds.js";

/**
 * Finds the events of one kind over a group of channels, half cycle by half cycle. A channel without a value does not
 * count; an event that one of its channels loses its values in is cut off there.
 */
export class ExcursionDetector {
  /** The event that goes on. */
  running: Excursion | undefined;
  /** Events that are over and wait for what comes after them to be recorded. */
  private closing: Excursion[] = [];
  private readonly all: readonly number[];

  /** @param thresholds those of the moment; an event keeps the ones it began with */
  constructor(
    private readonly context: EventContext,
    private readonly rule: ExcursionRule,
    private readonly thresholds: () => Thresholds,
    private readonly log: EventLog,
  ) {
    this.all = [...context.group.indices.keys()];
  }

  halfCycle(n: number): void {
    for (const event of this.closing) event.follow(n);
    if (this.closing[0]?.isRecorded(n)) this.write(this.closing.shift() as Excursion);
    if (this.running === undefined) this.begin(n);
    else this.goOn(this.running, n);
  }

  /** The signal ends after half cycle n. */
  breakOff(n: number, cause: CutOff): void {
    this.running?.cutAfter(n, cause);
    for (const event of [...this.closing, this.running]) if (event !== undefined) this.write(event);
    this.closing = [];
    this.running = undefined;
  }

  /** @param cut what the event is cut off by at its start although the values before are known */
  private begin(n: number, cut?: CutOff): void {
    const thresholds = this.thresholds();
    const { begins } = this.rule;
    const { recent } = this.context;
    const beyond = this.all.filter((c) => thresholds.isBeyond(c, recent.value(c, n)));
    if (begins === "any" ? beyond.length === 0 : beyond.length < this.all.length) return;
    const unknownBefore = beyond.some((c) => Number.isNaN(recent.value(c, n - 1)));
    const cutOff = unknownBefore ? (n === 0 ? "recording" : "gap") : cut;
    const last = beyond.filter((c) => !thresholds.isBeyond(c, recent.value(c, n - 1)));
    this.running = new Excursion(this.context, this.rule, thresholds, n, begins === "any" ? beyond : last, cutOff);
    this.running.take(n);
    this.running.follow(n);
  }

  private goOn(event: Excursion, n: number): void {
    const { recent } = this.context;
    if (event.involved.some((c) => Number.isNaN(recent.value(c, n)))) {
      event.cutAfter(n - 1, "gap");
      event.follow(n);
      this.closing.push(event);
      this.running = undefined;
      this.begin(n, "gap");
      return;
    }
    event.take(n);
    event.follow(n);
    const isBack = (c: number, at: number) => event.thresholds.isBack(c, recent.value(c, at));
    const known = this.all.filter((c) => !Number.isNaN(recent.value(c, n)));
    const back = known.filter((c) => isBack(c, n));
    const { begins } = this.rule;
    if (begins === "any" ? back.length < known.length : back.length === 0) return;
    event.endAt(n, begins === "any" ? back.filter((c) => !isBack(c, n - 1)) : back);
    this.closing.push(event);
    this.running = undefined;
  }

  private write(event: Excursion): void {
    const { event: found, severity, record } = event.finish();
    this.log.add(found, severity, record);
  }
}
