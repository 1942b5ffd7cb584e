import { DAY, type Duration, HOUR, type Instant, MINUTE, SECOND } from "../../recording/time.js";

/** Interval lengths that loggers use. Common practice, no source. */
const USUAL: readonly Duration[] = [
  ...[0.1, 0.2, 0.5, 1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30].map((s) => s * SECOND),
  ...[1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30].map((min) => min * MINUTE),
  ...[1, 2, 3, 4, 6, 8, 12, 24].map((h) => h * HOUR),
];
const SHORTEST: Duration = 1000;

/** Stamps this close to their tick, as a share of the interval, are taken to mean it. */
export const JITTER = 0.01;

/** How far the mean distance may be from a usual interval, as a share of it. */
const DRIFT = 0.005;
/** Share of starts that must lie close to a tick that none of them need hit. */
const MOST = 0.8;

/**
 * The interval of a log: a usual length around which most distances between successive starts scatter by no more than
 * twice the jitter and which they keep on average; else the most frequent distance, if it makes up half of all, or a
 * quarter while nearly all others are whole multiples of it. Undefined where there is no such distance.
 * @param starts strictly increasing.
 */
export function intervalOf(starts: Float64Array): Duration | undefined {
  const n = starts.length - 1;
  if (n < 1) return undefined;
  const distances = Float64Array.from({ length: n }, (_, i) => (starts[i + 1] as number) - (starts[i] as number));
  const sorted = distances.slice().sort();
  const median = sorted[n >> 1] as number;
  const usual = USUAL.find((u) => Math.abs(median - u) <= 2 * JITTER * u);
  if (usual !== undefined && keeps(distances, usual)) return usual;

  const [distance, count] = mostFrequent(sorted);
  if (distance < SHORTEST || distance > DAY) return undefined;
  const multiples = distances.filter((d) => d % distance === 0).length;
  return count >= n / 2 || (count >= Math.max(3, n / 4) && multiples >= 0.9 * n) ? distance : undefined;
}

function keeps(distances: Float64Array, interval: Duration): boolean {
  let [near, excess] = [0, 0];
  for (const d of distances) {
    if (Math.abs(d - interval) > 2 * JITTER * interval) continue;
    near++;
    excess += d - interval;
  }
  // Jitter cancels from one stamp to the next; what remains grows with a clock, or a polling loop, that is off.
  return near >= distances.length / 2 && Math.abs(excess) <= interval * (2 * JITTER + DRIFT * near);
}

/** The most frequent value of a sorted array, the smallest of equally frequent ones, and how often it occurs. */
function mostFrequent(sorted: Float64Array): [value: number, count: number] {
  let [value, count] = [Number.NaN, 0];
  for (let i = 0; i < sorted.length; ) {
    let end = i + 1;
    while (end < sorted.length && sorted[end] === sorted[i]) end++;
    if (end - i > count) [value, count] = [sorted[i] as number, end - i];
    i = end;
  }
  return [value, count];
}

/**
 * Where the ticks of a log lie within the interval (microseconds after a multiple of it, counted from 1970 in UTC): where
 * most starts lie exactly; else on the multiples, or around the starts' own median, if most starts lie within the jitter
 * of it. Undefined where the starts keep no tick.
 */
export function tickPhase(starts: Float64Array, interval: Duration): Duration | undefined {
  const phases = Float64Array.from(starts, (t) => t - Math.floor(t / interval) * interval).sort();
  const [frequent, count] = mostFrequent(phases);
  if (count >= phases.length / 2) return frequent;
  const close = (tick: Duration) => phases.filter((p) => Math.abs(fromTick(p, tick, interval)) <= JITTER * interval);
  for (const tick of [0, phases[phases.length >> 1] as number]) {
    if (close(tick).length >= MOST * phases.length) return tick;
  }
  return undefined;
}

/** How far a start lies from its nearest tick. */
export function fromTick(start: Instant, phase: Duration, interval: Duration): Duration {
  const d = start - phase;
  return d - Math.round(d / interval) * interval;
}
