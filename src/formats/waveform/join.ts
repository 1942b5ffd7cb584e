import { LogError } from "../../errors.js";
import { type Instant, isoUtc, SECOND } from "../../recording/time.js";
import type { WaveformBlock, WaveformChannel, WaveformSource } from "../../recording/waveform.js";
import { say, type Text } from "../../sentence.js";

/** Samples of one file at one rate. */
export interface Part {
  readonly file: string;
  /** Where the file says when it begins. */
  readonly place: string;
  readonly start: Instant;
  readonly length: number;
  readonly samplesPerSecond: number;
  readonly channels: readonly WaveformChannel[];
  /** Reads from the beginning; `first` counts from the part's first sample. */
  blocks(): AsyncIterable<WaveformBlock>;
}

interface PlacedPart extends Part {
  /** Place of the first sample in the joined source. */
  readonly at: number;
}

/** Rates that differ by less are one rate, read off a clock that drifts. Common practice, no source. */
export const DRIFT = 0.001;
/** Seconds of doubt about a stamp that are not worth a remark: a tenth of a sample, or the rounding of a microsecond. */
const FITTING = 0.1;

/**
 * Joins parts with the same channels into sources: parts whose rates differ by less than 0.1 % and that follow each
 * other in time become one source, with gaps between them, at the mean rate (samples by time). A part begins at the
 * sample nearest to its stamp; where that lies up to 0.1 % before the end of the parts before it, the clocks do not
 * fit, and it follows directly.
 * @param parts at least one, of the same channels
 * @throws LogError where parts overlap
 */
export function joinParts(parts: readonly Part[]): { sources: WaveformSource[]; remarks: Text[] } {
  const remarks: Text[] = [];
  const sources = seriesOf(parts.toSorted((a, b) => a.start - b.start)).map((series) => {
    const rate = meanRate(series);
    return sourceOf(place(series, rate, remarks), rate);
  });
  return { sources, remarks };
}

/** Parts in time order, divided where the rate really changes. */
function seriesOf(parts: readonly Part[]): Part[][] {
  const series: Part[][] = [];
  let [lowest, highest] = [0, 0];
  for (const part of parts) {
    const current = series.at(-1);
    const last = current?.at(-1);
    if (last !== undefined) refuseOverlap(last, part);
    [lowest, highest] = [Math.min(lowest, part.samplesPerSecond), Math.max(highest, part.samplesPerSecond)];
    if (current !== undefined && highest < lowest * (1 + DRIFT)) current.push(part);
    else {
      series.push([part]);
      [lowest, highest] = [part.samplesPerSecond, part.samplesPerSecond];
    }
  }
  return series;
}

function meanRate(series: readonly Part[]): number {
  const [first] = series;
  if (series.every(({ samplesPerSecond }) => samplesPerSecond === first?.samplesPerSecond)) {
    return first?.samplesPerSecond ?? 0;
  }
  const samples = series.reduce((sum, { length }) => sum + length, 0);
  return samples / series.reduce((sum, part) => sum + secondsOf(part), 0);
}

function secondsOf({ length, samplesPerSecond }: Part): number {
  return length / samplesPerSecond;
}

function refuseOverlap(last: Part, part: Part): void {
  const overlap = last.start + secondsOf(last) * SECOND - part.start;
  const allowed = Math.max(DRIFT * secondsOf(last), 1 / last.samplesPerSecond) * SECOND + 1;
  if (overlap <= allowed) return;
  throw new LogError(
    part.file,
    part.place,
    `it begins at ${isoUtc(part.start)}, ${Number((overlap / SECOND).toPrecision(3))} s before ${last.file} ends; files of one recording must not overlap`,
  );
}

function place(series: readonly Part[], rate: number, remarks: Text[]): PlacedPart[] {
  const start = series[0]?.start ?? 0;
  const placed: PlacedPart[] = [];
  let [cursor, expected, largest, misfits] = [0, start, 0, 0];
  for (const part of series) {
    const byStamp = ((part.start - start) / SECOND) * rate;
    const follows = part.start < expected + (0.5 / rate) * SECOND;
    const at = follows ? cursor : Math.max(cursor, Math.round(byStamp));
    const misfit = Math.abs(byStamp - at) / rate;
    if (misfit > Math.max(FITTING / rate, 2e-6)) misfits++;
    largest = Math.max(largest, misfit);
    placed.push({ ...part, at });
    cursor = at + part.length;
    expected = part.start + secondsOf(part) * SECOND;
  }
  if (misfits > 0) {
    remarks.push(
      say`The clock does not fit the sampling rate of ${rate} per second: ${misfits} of ${series.length} joined files begin up to ${Number((largest * 1000).toPrecision(3))} ms beside the sample that they are put on.`,
    );
  }
  if (series.some(({ samplesPerSecond }) => samplesPerSecond !== rate)) {
    remarks.push(
      say`The sampling rates of joined files differ by less than 0.1 % (a drifting clock); their mean, ${rate} per second, is used.`,
    );
  }
  return placed;
}

function sourceOf(parts: readonly PlacedPart[], samplesPerSecond: number): WaveformSource {
  const [first, last] = [parts[0] as PlacedPart, parts.at(-1) as PlacedPart];
  return {
    channels: first.channels,
    samplesPerSecond,
    start: first.start,
    length: last.at + last.length,
    stretches: parts.map(({ at, length }) => ({ first: at, length })),
    blocks: () => blocksOf(parts),
  };
}

async function* blocksOf(parts: readonly PlacedPart[]): AsyncGenerator<WaveformBlock> {
  for (const { at, blocks } of parts) {
    for await (const { first, samples } of blocks()) yield { first: at + first, samples };
  }
}
