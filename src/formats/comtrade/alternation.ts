import type { Progress } from "../../recording/log-file.js";
import type { Text } from "../../sentence.js";
import { SignChanges } from "../waveform/sign-changes.js";
import type { Run } from "./row-index.js";
import { type ReadChannel, type RowStore, readRows } from "./rows.js";

/** Rows to look at, taken at one rate. */
export interface SampledRuns {
  readonly store: RowStore;
  readonly runs: readonly Run[];
  readonly samplesPerSecond: number;
}

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
): Promise<Map<number, Text | undefined>> {
  let open = positions.map((position) => ({ position, history: new SignChanges() }));
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
