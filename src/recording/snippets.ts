import type { Recording } from "./recording.js";
import { type Duration, type Instant, SECOND } from "./time.js";
import { instantOfSample, type WaveformSource } from "./waveform.js";

/**
 * Share of a recording that samples must cover to stand for all of it. Below, they are snippets around what a recorder
 * was triggered by: they show events, but no statistics and not that there were no others. Common practice, no source.
 */
const WHOLE = 0.5;

/** How long samples were taken, gaps left out. */
export function sampledTime(waveforms: readonly WaveformSource[]): Duration {
  return waveforms.reduce((sum, source) => {
    const { length, samplesPerSecond, stretches = [{ first: 0, length }] } = source;
    return sum + (stretches.reduce((n, stretch) => n + stretch.length, 0) / samplesPerSecond) * SECOND;
  }, 0);
}

/** Whether the samples are snippets only; false where there are none. */
export function areSnippets({ waveforms, series }: Pick<Recording, "waveforms" | "series">): boolean {
  if (waveforms.length === 0) return false;
  const { start, end } = spanOfAll(series, waveforms);
  return sampledTime(waveforms) < WHOLE * (end - start);
}

/**
 * Start of the first interval or sample and end of the last; beside logged series snippets do not count, as
 * what is judged lies in the series alone.
 * @param series, waveforms not both empty
 */
export function spanOf(
  series: Recording["series"],
  waveforms: readonly WaveformSource[],
): { readonly start: Instant; readonly end: Instant } {
  const logged = series.filter(({ axis }) => axis.starts.length > 0);
  return logged.length > 0 && areSnippets({ series: logged, waveforms })
    ? spanOfAll(logged, [])
    : spanOfAll(logged, waveforms);
}

function spanOfAll(series: Recording["series"], waveforms: readonly WaveformSource[]) {
  const logged = series.filter(({ axis }) => axis.starts.length > 0);
  return {
    start: Math.min(...logged.map(({ axis }) => axis.starts[0] as number), ...waveforms.map((w) => w.start)),
    end: Math.max(
      ...logged.map(({ axis }) => (axis.starts.at(-1) as number) + axis.interval),
      ...waveforms.map((w) => instantOfSample(w, w.length)),
    ),
  };
}
