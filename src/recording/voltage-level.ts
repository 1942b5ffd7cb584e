import type { Phase } from "./quantity.js";
import type { Recording } from "./recording.js";
import type { WaveformSource } from "./waveform.js";

/** How much of a waveform shows the level of its voltages, in s. */
const LOOK_S = 10;

/**
 * About how high each voltage lies, in V r.m.s.: the median of a logged series, or the r.m.s. value of the first ten
 * seconds of samples. For telling which declared voltage and connection a recording fits, not for any result.
 */
export async function voltageLevels(recording: Recording): Promise<ReadonlyMap<Phase, number>> {
  const levels = new Map<Phase, number>();
  for (const source of recording.waveforms) {
    for (const [phase, level] of await sampledLevels(source)) if (!levels.has(phase)) levels.set(phase, level);
  }
  for (const { quantity, phase, values } of recording.series) {
    if (quantity !== "voltage") continue;
    const sorted = values.filter((v) => !Number.isNaN(v)).sort();
    if (sorted.length > 0) levels.set(phase, sorted[sorted.length >> 1] as number);
  }
  return levels;
}

async function sampledLevels({ channels, samplesPerSecond, blocks }: WaveformSource): Promise<Map<Phase, number>> {
  const sums = channels.map(() => ({ squares: 0, n: 0 }));
  for await (const { first, samples } of blocks()) {
    samples.forEach((channel, c) => {
      const sum = sums[c] as (typeof sums)[number];
      for (const v of channel) {
        if (Number.isNaN(v)) continue;
        sum.squares += v * v;
        sum.n++;
      }
    });
    if (first + (samples[0]?.length ?? 0) >= LOOK_S * samplesPerSecond) break;
  }
  const found = channels.map(({ quantity, phase }, c) => ({ quantity, phase, ...(sums[c] as (typeof sums)[number]) }));
  return new Map(
    found
      .filter(({ quantity, n }) => quantity === "voltage" && n > 0)
      .map(({ phase, squares, n }) => [phase, Math.sqrt(squares / n)]),
  );
}
