import type { EventTrace, WaveformPiece } from "../../recording/measurements.js";
import { instantOfSample, type WaveformChannel } from "../../recording/waveform.js";
import type { ChainSetup } from "./phenomenon.js";
import type { ChannelGroup } from "./voltage-events-channels.js";
import type { RecentHalfCycles } from "./voltage-events-half-cycles.js";
import { LongTrace } from "./voltage-events-trace.js";

/** What is kept before and after the start of an event, and before and after its end, in s. */
export const BEFORE_S = 0.1;
export const AFTER_S = 0.2;
/** At either end of a long event the trace keeps so much in full, in s … */
const FULL_S = 1;
/** … also when the frequency is this times the nominal one, the highest that IEC 61000-4-30 knows. */
const FASTEST = 1.15;

/** What an event is shown by. */
export interface EventRecord {
  readonly trace: EventTrace;
  readonly waveform: readonly WaveformPiece[];
}

/** Half cycles before an event that a recorder looks back at. */
export function halvesBefore(nominalFrequency: number): number {
  return Math.ceil(2 * FASTEST * nominalFrequency * BEFORE_S);
}

/** Records the half cycles and the samples of one event while it goes on. */
export class EventRecorder {
  private readonly trace: LongTrace;
  private readonly pieces: WaveformPiece[] = [];
  /** One past the last sample that was taken; undefined: none. */
  private taken: number | undefined;

  /** @param first number of the half cycle that the event begins with */
  constructor(
    private readonly setup: ChainSetup,
    private readonly group: ChannelGroup,
    private readonly recent: RecentHalfCycles,
    direction: 1 | -1,
    first: number,
  ) {
    const { nominalFrequency } = setup;
    this.trace = new LongTrace(Math.ceil(2 * FASTEST * nominalFrequency * (FULL_S + AFTER_S)), direction);
    for (let n = recent.earliestFrom(first - halvesBefore(nominalFrequency)); n < first; n++) this.follow(n);
  }

  follow(n: number): void {
    const row = new Float64Array(1 + this.group.indices.length);
    row[0] = this.recent.middle(n);
    for (let c = 1; c < row.length; c++) row[c] = this.recent.value(c - 1, n);
    this.trace.add(row);
  }

  /** Takes the samples around the start once those after it have come. `now`: samples up to here are at hand. */
  takeStart(start: number, now: number): void {
    const { samplesPerSecond } = this.setup;
    if (this.taken !== undefined || !(now >= start + AFTER_S * samplesPerSecond)) return;
    this.take(start - BEFORE_S * samplesPerSecond, start + AFTER_S * samplesPerSecond);
  }

  /** Takes the samples around the end; those that a gap or the end of the recording cut off are left out. */
  takeEnd(start: number, end: number): void {
    const { samplesPerSecond } = this.setup;
    const from = (this.taken === undefined ? start : end) - BEFORE_S * samplesPerSecond;
    this.take(Math.max(from, this.taken ?? 0), end + AFTER_S * samplesPerSecond);
  }

  /** @param start position of the start of the event, from which the times are counted */
  record(start: number): EventRecord {
    const rows = this.trace.rows();
    return {
      trace: {
        times: Float64Array.from(rows, (r) => ((r[0] as number) - start) / this.setup.samplesPerSecond),
        channels: this.group.channels.map(({ phase }, c) => ({
          phase,
          values: Float32Array.from(rows, (r) => r[c + 1] as number),
        })),
      },
      waveform: this.pieces,
    };
  }

  private take(from: number, to: number): void {
    const { history, channels, samplesPerSecond } = this.setup;
    const first = Math.max(Math.ceil(from), history.base);
    const end = Math.min(Math.floor(to) + 1, history.end);
    this.taken = Math.max(end, this.taken ?? 0);
    if (end <= first) return;
    this.pieces.push({
      start: instantOfSample(this.setup, first),
      samplesPerSecond,
      channels: channels.map(({ quantity, phase }: WaveformChannel, c) => ({
        quantity,
        phase,
        samples: Float32Array.from(
          (history.channels[c] as Float64Array).subarray(first - history.base, end - history.base),
        ),
      })),
    });
  }
}
