import type { CutOff } from "../../recording/measurements.js";
import { USUAL_MEASUREMENT } from "../../recording/usual-measurement.js";
import { say } from "../../sentence.js";
import {
  type BasicWindow,
  type ChainSetup,
  declaredVoltageOf,
  type HalfCycle,
  type Phenomenon,
  type PhenomenonResult,
  type PhenomenonState,
} from "./phenomenon.js";
import { supplyVoltages } from "./voltage-events-channels.js";
import { ExcursionDetector } from "./voltage-events-detector.js";
import type { EventContext, ExcursionRule } from "./voltage-events-excursion.js";
import { FORESIGHT, RecentHalfCycles } from "./voltage-events-half-cycles.js";
import { EventLog } from "./voltage-events-log.js";
import { halvesBefore } from "./voltage-events-recorder.js";
import { slide, Thresholds } from "./voltage-events-thresholds.js";

/** Thresholds in % of the reference voltage. */
export interface VoltageEventSettings {
  /** Dip below it; 90 where not given (EN 50160, quoted second-hand in a meter technical note on EN 50160:2010). */
  readonly dip?: number;
  /** Swell above it; 110 where not given (same source). */
  readonly swell?: number;
  /** Interruption below it on all phases; 5 where not given (EN 50160:2010, from memory; 1 in older editions). */
  readonly interruption?: number;
  /** 2 where not given: "typically 2 %" in the same technical note. */
  readonly hysteresis?: number;
  /**
   * Reference of dips and swells: the declared voltage (where not given), or a sliding one that follows the voltage with
   * a time constant of 1 min. Interruptions always refer to the declared voltage (IEC 61000-4-30, from memory).
   */
  readonly reference?: "declared" | "sliding";
}

const DIP: ExcursionRule = { kind: "dip", unit: "V", begins: "any" };
const SWELL: ExcursionRule = { kind: "swell", unit: "V", begins: "any" };
const INTERRUPTION: ExcursionRule = { kind: "interruption", unit: "V", begins: "all" };

/**
 * Dips, swells and interruptions of the supply voltages by Urms(1/2) (IEC 61000-4-30, 5.4 and 5.5). A dip begins when a
 * voltage falls below its threshold and ends when all are at it plus hysteresis or above; a swell likewise upwards; an
 * interruption begins when all voltages are below its threshold and ends when one is at it plus hysteresis or above. An
 * interruption has a dip around it, which is marked `interrupted`.
 *
 * Start and end are the places of the changes themselves, found within the cycle that first showed them (the standard
 * stamps that cycle; its uncertainty of half a cycle at either end holds both). No duration is below half a nominal
 * cycle. Events that the samples begin or end in, or that missing samples break, are marked as not complete.
 *
 * What the events cover is marked in the flags, whole cycles at a time. A sliding reference begins with the declared
 * voltage and follows basic windows that are not flagged.
 */
export function voltageEvents(settings: VoltageEventSettings = {}): Phenomenon {
  return {
    id: "voltage-events",
    clause: "IEC 61000-4-30, 5.4 and 5.5",
    start: (setup) => new VoltageEventsState(setup, settings),
  };
}

class VoltageEventsState implements PhenomenonState {
  private readonly context: EventContext;
  private references: readonly number[];
  private readonly dips: ExcursionDetector;
  private readonly swells: ExcursionDetector;
  private readonly interruptions: ExcursionDetector;
  private readonly log = new EventLog();
  private dipThresholds: Thresholds;
  private swellThresholds: Thresholds;

  constructor(
    private readonly setup: ChainSetup,
    private readonly settings: VoltageEventSettings,
  ) {
    const group = supplyVoltages(setup);
    const size = halvesBefore(setup.nominalFrequency) + 2 * FORESIGHT + 4;
    this.context = { setup, group, recent: new RecentHalfCycles(group.indices, "oneCycle", size) };
    this.references = group.channels.map((c) => declaredVoltageOf(setup, c));
    const { interruption, hysteresis } = { ...USUAL_MEASUREMENT, ...settings };
    const interruptionThresholds = new Thresholds(this.references, -1, interruption, hysteresis);
    this.dipThresholds = this.thresholds("dip");
    this.swellThresholds = this.thresholds("swell");
    this.dips = new ExcursionDetector(this.context, DIP, () => this.dipThresholds, this.log);
    this.swells = new ExcursionDetector(this.context, SWELL, () => this.swellThresholds, this.log);
    this.interruptions = new ExcursionDetector(this.context, INTERRUPTION, () => interruptionThresholds, this.log);
  }

  halfCycle(half: HalfCycle): void {
    if (this.context.group.indices.length === 0) return;
    const n = this.context.recent.add(half);
    for (const detector of this.detectors) detector.halfCycle(n);
    if (this.detectors.some((d) => d.running !== undefined)) this.setup.flags.mark(half.from, half.from + half.period);
    if (this.interruptions.running !== undefined && this.dips.running !== undefined) {
      this.dips.running.interrupted = true;
    }
  }

  window(window: BasicWindow): void {
    if (this.settings.reference !== "sliding" || window.flagged) return;
    const { indices } = this.context.group;
    this.references = this.references.map((r, c) => slide(r, window.channels[indices[c] as number]?.rms ?? Number.NaN));
    this.dipThresholds = this.thresholds("dip");
    this.swellThresholds = this.thresholds("swell");
  }

  gap(): void {
    this.breakOff("gap");
    this.context.recent.breakOff();
  }

  finish(): PhenomenonResult {
    this.breakOff("recording");
    return this.log.finish(say`dips, swells and interruptions`);
  }

  private get detectors(): readonly ExcursionDetector[] {
    return [this.dips, this.swells, this.interruptions];
  }

  private breakOff(cause: CutOff): void {
    for (const detector of this.detectors) detector.breakOff(this.context.recent.next - 1, cause);
  }

  private thresholds(kind: "dip" | "swell"): Thresholds {
    const { dip, swell, hysteresis } = { ...USUAL_MEASUREMENT, ...this.settings };
    return kind === "dip"
      ? new Thresholds(this.references, -1, dip, hysteresis)
      : new Thresholds(this.references, 1, swell, hysteresis);
  }
}
