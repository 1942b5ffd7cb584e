import { roundestIn } from "./round-number.js";

/** Between which two lengths the period of samples lies, in microseconds. */
export interface Bounds {
  readonly shortest: number;
  readonly longest: number;
}

/** Times may lie beside the even spacing by this share of a period even where they are written more finely. */
const JITTER = 0.01;
/** What a double of a time may be off by, as a share of it. */
const ROUNDING = 2 ** -51;
/** Share of a period within which a time is exactly where it should be. */
const EXACT = 1e-6;

/** How far a time may lie from an even spacing, apart from the rounding of its written digits. */
export function slack(time: number, period: number): number {
  return JITTER * period + Math.abs(time) * ROUNDING;
}

/**
 * A first estimate of the period: one value, where a round period or a round rate fits every written digit, else what the
 * rounding of the digits leaves open. It rests on the longest run of rows without a gap.
 * @param times in microseconds
 * @param places the place of the last digit of each time
 * @returns undefined where the times do not rise
 */
export function periodBounds(times: Float64Array, places: Float64Array): Bounds | undefined {
  const steps = times.slice(1).map((t, i) => t - (times[i] as number));
  const rising = steps.filter((s) => s > 0).sort();
  const usual = rising[rising.length >> 1];
  if (usual === undefined) return undefined;
  const even = longestRun(steps, (step) => step >= 0.75 * usual && step <= 1.25 * usual);
  if (even.to - even.from >= steps.length / 2) {
    const { shortest, longest } = boundsOf(times, places, even, usual);
    const rate = roundestIn(1e6 / longest, 1e6 / shortest).value;
    const candidates = [roundestIn(shortest, longest).value, 1e6 / rate];
    const exact = candidates.find((period) => isExact(times.subarray(even.from, even.to + 1), period));
    if (exact !== undefined) return { shortest: exact, longest: exact };
  }
  const run = longestRun(steps, (step, i) => step >= 0 && step <= 1.25 * usual + (places[i + 1] as number));
  return times[run.to] === times[run.from] ? undefined : boundsOf(times, places, run, usual);
}

/** Indexes of a first and a last row. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The most rows between which all steps are fit. */
function longestRun(steps: Float64Array, isFit: (step: number, i: number) => boolean): Stretch {
  let longest: Stretch = { from: 0, to: 0 };
  for (let from = 0, i = 0; i < steps.length; i++) {
    if (!isFit(steps[i] as number, i)) from = i + 1;
    else if (i + 1 - from > longest.to - longest.from) longest = { from, to: i + 1 };
  }
  return longest;
}

function boundsOf(times: Float64Array, places: Float64Array, { from, to }: Stretch, usual: number): Bounds {
  const elapsed = (times[to] as number) - (times[from] as number);
  const off = Math.max(places[from] as number, places[to] as number) + slack(times[to] as number, usual);
  return { shortest: Math.max(elapsed - off, elapsed * 1e-3) / (to - from), longest: (elapsed + off) / (to - from) };
}

/** Whether all times are those of an even spacing, to the last digit. */
function isExact(times: Float64Array, period: number): boolean {
  const first = times[0] as number;
  const off = EXACT * period + Math.abs(times[times.length - 1] as number) * ROUNDING;
  return times.every((t, i) => Math.abs(t - first - i * period) <= off);
}

/** What both allow; undefined where they exclude each other. */
export function bothBounds(a: Bounds, b: Bounds): Bounds | undefined {
  const [shortest, longest] = [Math.max(a.shortest, b.shortest), Math.min(a.longest, b.longest)];
  return shortest <= longest ? { shortest, longest } : undefined;
}
