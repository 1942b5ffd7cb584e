import type { Progress } from "../../recording/log-file.js";
import type { Run } from "./row-index.js";
import { type ReadChannel, type RowStore, readRows } from "./rows.js";

/** Rows to look at, taken at one rate. */
export interface SampledRuns {
  readonly store: RowStore;
  readonly runs: readonly Run[];
  readonly samplesPerSecond: number;
}

/** A supply voltage or current of 20 Hz or more changes its sign this often per second. */
const FEWEST_CHANGES = 40;
/** Seconds over which changes are counted. */
const WINDOW = 0.25;

/**
 * Why channels are no alternating voltages or currents, by their samples: no values, a constant, never of one sign (an
 * r.m.s. value or direct voltage), or too slow. Undefined for a channel that alternates somewhere. Reads on only as long as
 * some channel has not shown it, so that one that never does costs a whole pass.
 * @param positions 1-based places of the channels
 */
export async function notAlternating(
  sampled: readonly SampledRuns[],
  positions: readonly number[],
  blockBytes: number,
  progress: Progress | undefined,
): Promise<Map<number, string | undefined>> {
  let open = positions.map((position) => ({ position, history: new History() }));
  const all = [...open];
  const rows = sampled.reduce((sum, { runs }) => sum + runs.reduce((s, run) => s + run.rows, 0), 0);
  let done = 0;
  for (const { store, runs, samplesPerSecond } of sampled) {
    for (const run of runs) {
      if (open.length === 0) break;
      const channels = open.map(({ position }): ReadChannel => {
        const channel = store.configuration.analog[position - 1];
        return { ...NO_CHANNEL, ...channel, position };
      });
      const current = open;
      for await (const { samples } of readRows(store, run, channels, blockBytes)) {
        for (const [k, values] of samples.entries()) current[k]?.history.add(values, samplesPerSecond);
        done += samples[0]?.length ?? 0;
        progress?.("looking for alternating channels", done / rows);
        if (current.every(({ history }) => history.alternates)) break;
      }
      open = current.filter(({ history }) => !history.alternates);
    }
  }
  for (const { history } of open) history.end();
  return new Map(all.map(({ position, history }) => [position, history.reason()]));
}

const NO_CHANNEL = { a: 1, b: 0, min: Number.NaN, max: Number.NaN };

/** Counts changes of sign over windows of time, through gaps and from file to file. */
class History {
  alternates = false;
  #min = Number.POSITIVE_INFINITY;
  #max = Number.NEGATIVE_INFINITY;
  #sign = 0;
  #changes = 0;
  #seconds = 0;
  #most = 0;
  #windows = 0;

  add(values: Float64Array, samplesPerSecond: number): void {
    const period = 1 / samplesPerSecond;
    for (let i = 0; i < values.length && !this.alternates; i++) {
      const value = values[i] as number;
      if (value < this.#min) this.#min = value;
      if (value > this.#max) this.#max = value;
      const sign = Math.sign(value);
      if (sign * this.#sign < 0) this.#changes++;
      if (sign === 1 || sign === -1) this.#sign = sign;
      this.#seconds += period;
      if (this.#seconds >= WINDOW) this.end();
    }
  }

  /** Closes the window. A short one at the end counts only where there is no other. */
  end(): void {
    if (this.#seconds >= WINDOW / 5 || this.#windows === 0) {
      const rate = this.#changes / this.#seconds;
      this.#most = Math.max(this.#most, rate);
      this.alternates ||= this.#changes >= 2 && rate >= FEWEST_CHANGES;
    }
    this.#windows++;
    this.#changes = 0;
    this.#seconds = 0;
  }

  reason(): string | undefined {
    if (this.alternates) return undefined;
    if (this.#max < this.#min) return "it holds no values";
    if (this.#min === 0 && this.#max === 0) return "it is zero throughout";
    if (this.#min === this.#max) return "it holds the same value throughout";
    if (this.#min >= 0 || this.#max <= 0)
      return "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)";
    return `it changes sign ${Math.round(this.#most)} times a second at most, too slowly for a supply voltage or current`;
  }
}
