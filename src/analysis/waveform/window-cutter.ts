import { MINUTE } from "../../recording/time.js";
import { instantOfSample, sampleOfInstant, type WaveformSource } from "../../recording/waveform.js";
import type { CycleAxis } from "./cycle-axis.js";

const TICK = 10 * MINUTE;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Cuts the cycles into basic windows without gap. At each ten-minute tick of the UTC clock a new window begins at the
 * tick itself, while the one that is running is finished (IEC 61000-4-30, overlap 1).
 */
export class WindowCutter {
  /** Start of the next window on the cycle axis. */
  private cycle = 0;

  constructor(
    private readonly axis: CycleAxis,
    private readonly source: Pick<WaveformSource, "start" | "samplesPerSecond">,
    private readonly cycles: number,
  ) {}

  restart(): void {
    this.cycle = 0;
  }

  /** The next window, once all its cycles are known. */
  next(): Span | undefined {
    const end = this.cycle + this.cycles;
    if (this.axis.last < end) return undefined;
    const from = this.axis.position(this.cycle);
    const to = this.axis.position(end);
    const tick = sampleOfInstant(this.source, tickAfter(instantOfSample(this.source, from)));
    this.cycle = tick < to ? this.axis.cycleAt(tick) : end;
    return { from, to };
  }
}

function tickAfter(instant: number): number {
  return (Math.floor(instant / TICK) + 1) * TICK;
}
