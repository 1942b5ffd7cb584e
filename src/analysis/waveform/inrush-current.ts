import { USUAL_MEASUREMENT } from "../../recording/usual-measurement.js";
import { say } from "../../sentence.js";
import type { ChainSetup, HalfCycle, Phenomenon, PhenomenonResult, PhenomenonState } from "./phenomenon.js";
import { phaseCurrents } from "./voltage-events-channels.js";
import { ExcursionDetector } from "./voltage-events-detector.js";
import { RecentHalfCycles } from "./voltage-events-half-cycles.js";
import { EventLog } from "./voltage-events-log.js";
import { halvesBefore } from "./voltage-events-recorder.js";
import { Thresholds } from "./voltage-events-thresholds.js";

export interface InrushCurrentSettings {
  /** Half-cycle r.m.s. current in A that an inrush exceeds; nothing is looked for where it is not given. */
  readonly thresholdA?: number;
  /** In % of the threshold; 2 where not given, as for voltages. */
  readonly hysteresis?: number;
}

/**
 * Inrush currents by the r.m.s. value of each half cycle (IEC 61000-4-30, informative annex; from memory): begins with the
 * half cycle in which the current of a phase is above the threshold, ends with that in which all are at the threshold
 * less hysteresis or below. The highest half-cycle value, the highest sample, the duration in half cycles.
 */
export function inrushCurrent(settings: InrushCurrentSettings = {}): Phenomenon {
  return {
    id: "inrush-current",
    clause: "IEC 61000-4-30, informative annex",
    start: (setup) => {
      const { thresholdA, hysteresis = USUAL_MEASUREMENT.hysteresis } = settings;
      return thresholdA === undefined ? { finish: () => ({}) } : new InrushCurrentState(setup, thresholdA, hysteresis);
    },
  };
}

class InrushCurrentState implements PhenomenonState {
  private readonly recent: RecentHalfCycles;
  private readonly detector: ExcursionDetector;
  private readonly log = new EventLog();

  constructor(setup: ChainSetup, thresholdA: number, hysteresis: number) {
    const group = phaseCurrents(setup);
    this.recent = new RecentHalfCycles(group.indices, "halfCycle", halvesBefore(setup.nominalFrequency) + 4);
    const reference = group.indices.map(() => thresholdA);
    const thresholds = new Thresholds(reference, 1, 100, hysteresis);
    this.detector = new ExcursionDetector(
      { setup, group, recent: this.recent },
      { kind: "inrush-current", unit: "A", begins: "any" },
      () => thresholds,
      this.log,
    );
  }

  halfCycle(half: HalfCycle): void {
    this.detector.halfCycle(this.recent.add(half));
  }

  gap(): void {
    this.detector.breakOff(this.recent.next - 1, "gap");
    this.recent.breakOff();
  }

  finish(): PhenomenonResult {
    this.detector.breakOff(this.recent.next - 1, "recording");
    return this.log.finish(say`inrush currents`);
  }
}
