import type { EventTrace, VoltageEvent, WaveformPiece } from "../../recording/measurements.js";
import { say, type Text } from "../../sentence.js";
import type { PhenomenonResult } from "./phenomenon.js";
import type { EventRecord } from "./voltage-events-recorder.js";

/** Memory for the samples and for the traces of all events together. */
const WAVEFORM_BYTES = 16e6;
const TRACE_BYTES = 8e6;

/**
 * The events found so far. Each one stays; its trace and its waveform stay while there is room, and where there is not,
 * those of the most severe events do.
 */
export class EventLog {
  private readonly events: VoltageEvent[] = [];
  private readonly traces = new Shortlist<EventTrace>(TRACE_BYTES);
  private readonly waveforms = new Shortlist<readonly WaveformPiece[]>(WAVEFORM_BYTES);

  /** @param severity how far the event went beyond what is usual; comparable among the events of one log */
  add(event: VoltageEvent, severity: number, { trace, waveform }: EventRecord): void {
    const place = { event: this.events.length, severity };
    this.events.push(event);
    const { times, channels } = trace;
    this.traces.add({ ...place, item: trace, bytes: times.length * (8 + 4 * channels.length) });
    if (waveform.length === 0) return;
    const samples = (piece: WaveformPiece) => piece.channels.reduce((sum, c) => sum + c.samples.length, 0);
    const bytes = 4 * waveform.reduce((sum, piece) => sum + samples(piece), 0);
    this.waveforms.add({ ...place, item: waveform, bytes });
  }

  /** @param name what the events are called in a sentence: "dips, swells and interruptions" */
  finish(name: Text): PhenomenonResult {
    const traces = this.traces.items();
    const waveforms = this.waveforms.items();
    const events = this.events.map((event, i) => {
      const trace = traces.get(i);
      const waveform = waveforms.get(i);
      return { ...event, ...(trace !== undefined && { trace }), ...(waveform !== undefined && { waveform }) };
    });
    const { length } = events;
    const remarks: Text[] = [];
    if (this.traces.kept !== undefined) {
      remarks.push(
        say`The half-cycle values around them were kept for the ${this.traces.kept} most severe of ${length} ${name}.`,
      );
    }
    if (this.waveforms.kept !== undefined) {
      remarks.push(
        say`The waveform around them was kept for the ${this.waveforms.kept} most severe of ${length} ${name}.`,
      );
    }
    return { events: events.sort((a, b) => a.start - b.start), remarks };
  }
}

interface Entry<T> {
  readonly event: number;
  readonly severity: number;
  readonly item: T;
  readonly bytes: number;
}

/** Keeps the items of the most severe events, as many as fit; of equally severe ones the earlier. */
class Shortlist<T> {
  private entries: Entry<T>[] = [];
  private bytes = 0;
  private shortened = false;

  constructor(private readonly budget: number) {}

  add(entry: Entry<T>): void {
    this.entries.push(entry);
    this.bytes += entry.bytes;
    // Twice the budget: sorting then costs little per event.
    if (this.bytes > 2 * this.budget) this.shorten();
  }

  items(): Map<number, T> {
    if (this.bytes > this.budget) this.shorten();
    return new Map(this.entries.map(({ event, item }) => [event, item]));
  }

  /** How many items were kept, where not all were. */
  get kept(): number | undefined {
    return this.shortened ? this.entries.length : undefined;
  }

  private shorten(): void {
    this.entries.sort((a, b) => b.severity - a.severity || a.event - b.event);
    this.shortened = true;
    this.bytes = 0;
    let kept = 0;
    for (const { bytes } of this.entries) {
      if (this.bytes + bytes > this.budget) break;
      this.bytes += bytes;
      kept++;
    }
    this.entries.length = kept;
  }
}
