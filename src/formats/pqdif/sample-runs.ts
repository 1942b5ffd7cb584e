/** Samples that follow one another at a constant rate. */
export interface SampleRun {
  /** Place of its first sample among the times. */
  readonly first: number;
  readonly length: number;
  /** Of the first sample, as the times count. */
  readonly startS: number;
  readonly samplesPerSecond: number;
}

/** How far times may scatter around a constant rate, in samples: they are rounded, and a lost sample shifts them by one. */
const SCATTER = 0.9;
/** How far the first time of a block may lie from where the block before it ends. */
const OFF = 0.7;
/** A step within a run may differ by this share from the one before: rounded times. */
const UNEVEN = 0.2;
/** A rate this near to a whole number is that number. */
const WHOLE = 1e-6;
/** Rates of neighbouring runs that differ by less are one rate. */
const SAME = 1e-3;

/** Collects the runs of constant rate in a series of sample times that is handed over in blocks. */
export class SampleRuns {
  private readonly found: SampleRun[] = [];
  private count = 0;

  take(seconds: Float64Array): void {
    for (const run of runsIn(seconds)) this.add({ ...run, first: run.first + this.count });
    this.count += seconds.length;
  }

  /** Single samples between runs are left out. */
  runs(): SampleRun[] {
    return this.found
      .filter(({ length }) => length > 1)
      .map((run) => {
        const whole = Math.round(run.samplesPerSecond);
        const isWhole = Math.abs(run.samplesPerSecond - whole) <= WHOLE * whole;
        return isWhole ? { ...run, samplesPerSecond: whole } : run;
      });
  }

  /** Lengthens the last run where this one continues it. */
  private add(run: SampleRun): void {
    const last = this.found.at(-1);
    if (last !== undefined && continues(last, run)) {
      const endS = run.startS + (run.length - 1) / run.samplesPerSecond;
      const length = last.length + run.length;
      this.found[this.found.length - 1] = { ...last, length, samplesPerSecond: (length - 1) / (endS - last.startS) };
    } else this.found.push(run);
  }
}

function continues(last: SampleRun, run: SampleRun): boolean {
  if (run.first !== last.first + last.length || last.length < 2) return false;
  if (run.length > 1 && Math.abs(run.samplesPerSecond / last.samplesPerSecond - 1) > SAME) return false;
  return Math.abs((run.startS - last.startS) * last.samplesPerSecond - last.length) <= OFF;
}

/**
 * All of a block where its times scatter by less than a sample around a constant rate, else divided where a step differs by a
 * fifth from the one before.
 */
function runsIn(seconds: Float64Array): SampleRun[] {
  const n = seconds.length;
  if (n === 0) return [];
  const whole = run(seconds, 0, n);
  let [low, high] = [0, 0];
  for (let i = 1; i < n; i++) {
    const off = ((seconds[i] as number) - whole.startS) * whole.samplesPerSecond - i;
    [low, high] = [Math.min(low, off), Math.max(high, off)];
  }
  if (high - low <= SCATTER) return [whole];
  const runs: SampleRun[] = [];
  for (let first = 0; first < n; ) {
    const step = (seconds[first + 1] ?? Number.NaN) - (seconds[first] as number);
    let end = first + 1;
    while (end < n && Math.abs((seconds[end] as number) - (seconds[end - 1] as number) - step) <= UNEVEN * step) end++;
    runs.push(run(seconds, first, end));
    first = end;
  }
  return runs;
}

/** The rate of a single sample is not known: infinite, which no run is continued by. */
function run(seconds: Float64Array, first: number, end: number): SampleRun {
  const startS = seconds[first] as number;
  const length = end - first;
  const samplesPerSecond =
    length === 1 ? Number.POSITIVE_INFINITY : (length - 1) / ((seconds[end - 1] as number) - startS);
  return { first, length, startS, samplesPerSecond };
}
