import type { IntervalSeries } from "../../recording/measurements.js";
import { type Duration, type Instant, SECOND } from "../../recording/time.js";
import { instantOfSample, sampleOfInstant } from "../../recording/waveform.js";
import type { ChainSetup, Cycle, Phenomenon, PhenomenonResult, PhenomenonState } from "./phenomenon.js";

const INTERVAL: Duration = 10 * SECOND;

/**
 * Power frequency: per ten seconds of the UTC clock the number of whole cycles of the reference voltage over their
 * duration, without overlap (IEC 61000-4-30, 5.1). Cycles that were not tracked are left out and lower the coverage,
 * which is the share of the ten seconds that tracked cycles reach into.
 */
export const frequency: Phenomenon = {
  id: "frequency",
  clause: "IEC 61000-4-30, 5.1",
  start: (setup) => new FrequencyState(setup),
};

class FrequencyState implements PhenomenonState {
  private readonly starts: Instant[] = [];
  private readonly values: number[] = [];
  private readonly coverage: number[] = [];
  /** Bounds of the running interval: instant, and sample positions. */
  private start = 0;
  private from = 0;
  private to = Number.NEGATIVE_INFINITY;
  private cycles = 0;
  private duration = 0;
  private covered = 0;

  constructor(private readonly setup: ChainSetup) {}

  cycle({ from, to, tracked }: Cycle): void {
    if (from >= this.to) this.begin(from);
    const whole = to <= this.to;
    if (tracked) {
      this.covered += Math.min(to, this.to) - from;
      if (whole) {
        this.cycles++;
        this.duration += to - from;
      }
    }
    if (whole) return;
    this.begin(this.to);
    if (tracked) this.covered += to - this.from;
  }

  finish(): PhenomenonResult {
    this.close();
    const { setup, values } = this;
    const starts = Float64Array.from(this.starts);
    const ends = starts.map((t) => sampleOfInstant(setup, t + INTERVAL));
    const series: IntervalSeries = {
      quantity: "frequency",
      phase: "system",
      unit: "Hz",
      interval: INTERVAL,
      origin: "computed",
      starts,
      values: Float64Array.from(values),
      flagged: Uint8Array.from(starts, (t, i) =>
        setup.flags.touches(sampleOfInstant(setup, t), ends[i] as number) ? 1 : 0,
      ),
      coverage: Float64Array.from(this.coverage),
    };
    return { series: values.length > 0 ? [series] : [] };
  }

  /** Begins the interval that a position lies in. */
  private begin(position: number): void {
    this.close();
    // To the microsecond, so that a boundary found from the clock falls into the interval it begins.
    this.start = Math.floor(instantOfSample(this.setup, position) / INTERVAL) * INTERVAL;
    this.from = sampleOfInstant(this.setup, this.start);
    this.to = sampleOfInstant(this.setup, this.start + INTERVAL);
    this.cycles = 0;
    this.duration = 0;
    this.covered = 0;
  }

  private close(): void {
    if (this.cycles === 0) return;
    this.starts.push(this.start);
    this.values.push((this.cycles / this.duration) * this.setup.samplesPerSecond);
    const share = this.covered / (this.to - this.from);
    this.coverage.push(share > 1 - 1e-9 ? 1 : share);
    this.cycles = 0;
  }
}
