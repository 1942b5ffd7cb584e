import type { WaveformSource } from "../recording/waveform.js";

/**
 * The samples as text, piece by piece: the time in s after the first sample, then one column per channel, in V and A to
 * the sixth decimal.
 */
export async function* waveformCsv(source: WaveformSource): AsyncGenerator<string> {
  const { channels, samplesPerSecond } = source;
  const unit = { voltage: "V", current: "A" } as const;
  yield `${["Time [s]", ...channels.map(({ name, quantity }) => `${name} [${unit[quantity]}]`)].join(",")}\r\n`;
  for await (const { first, samples } of source.blocks()) {
    const rows = Array.from({ length: samples[0]?.length ?? 0 }, (_, i) => {
      const values = samples.map((channel) => written(channel[i] as number));
      return `${(first + i) / samplesPerSecond},${values.join(",")}\r\n`;
    });
    yield rows.join("");
  }
}

/** A millionth of a volt or ampere. */
function written(value: number): string {
  return String(Math.round(value * 1e6) / 1e6);
}
