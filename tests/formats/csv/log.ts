import { openLogs } from "../../../src/formats/index.js";
import type { LogFile } from "../../../src/recording/log-file.js";
import { keyText, type SeriesKey } from "../../../src/recording/quantity.js";
import type { LoggedSeries, Recording } from "../../../src/recording/recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { isoUtc } from "../../../src/recording/time.js";

/** A log in memory. `mostPerRead` bounds what one read gives, to try block boundaries. */
export function logFile(
  content: string | Uint8Array,
  name = "log.csv",
  mostPerRead = Number.POSITIVE_INFINITY,
): LogFile {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return {
    name,
    size: bytes.length,
    read: async (offset, length) => bytes.slice(offset, offset + Math.min(length, mostPerRead)),
  };
}

export function read(content: string | Uint8Array, setup: GivenSetup = {}): Promise<Recording> {
  return openLogs([logFile(content)], setup);
}

/** The error that reading ends in, as its one sentence. */
export async function failure(content: string | Uint8Array, setup: GivenSetup = {}): Promise<string> {
  return failureOf(read(content, setup));
}

export async function failureOf(reading: Promise<Recording>): Promise<string> {
  const outcome = await reading.then(
    () => "no error",
    (error: Error) => `${error.name}: ${error.message}`,
  );
  return outcome;
}

export function seriesOf(recording: Recording, key: Partial<SeriesKey> = {}): LoggedSeries {
  const wanted = { quantity: "voltage", phase: "L1", ...key } as SeriesKey;
  const found = recording.series.filter((s) => keyText(s) === keyText(wanted));
  if (found.length !== 1) throw new Error(`${found.length} series ${keyText(wanted)} in the recording`);
  return found[0] as LoggedSeries;
}

export function values(recording: Recording, key: Partial<SeriesKey> = {}): number[] {
  return [...seriesOf(recording, key).values];
}

export function starts(recording: Recording, key: Partial<SeriesKey> = {}): string[] {
  return [...seriesOf(recording, key).axis.starts].map(isoUtc);
}

/** What must not depend on the order of rows and files. */
export function content(recording: Recording): unknown {
  return {
    start: recording.start,
    end: recording.end,
    series: recording.series.map((s) => ({
      key: keyText(s),
      unit: s.unit,
      interval: s.axis.interval,
      starts: [...s.axis.starts],
      flagged: [...s.axis.flagged],
      values: [...s.values],
      min: s.min && [...s.min],
      max: s.max && [...s.max],
      resolution: s.resolution,
    })),
  };
}

/** Rows of 10 minutes from a UTC time: `line` makes each from its local clock and its number. */
export function tenMinutes(
  fromUtc: string,
  rows: number,
  line: (clock: { date: Date; dmy: string; ymd: string; hm: string }, i: number) => string,
  offsetMinutes: (utc: Date) => number = () => 0,
): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return Array.from({ length: rows }, (_, i) => {
    const utc = new Date(Date.parse(`${fromUtc}Z`) + i * 600_000);
    const date = new Date(utc.getTime() + offsetMinutes(utc) * 60_000);
    const [y, m, d] = [date.getUTCFullYear(), two(date.getUTCMonth() + 1), two(date.getUTCDate())];
    const hm = `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
    return `${line({ date, dmy: `${d}.${m}.${y}`, ymd: `${y}-${m}-${d}`, hm }, i)}\n`;
  }).join("");
}

/** Whole numbers below n, always the same for one seed (mulberry32). */
export function randomNumbers(seed: number): (n: number) => number {
  let state = seed;
  return (n) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * n);
  };
}

export function shuffled<T>(items: readonly T[], seed: number): T[] {
  const random = randomNumbers(seed);
  const result = [...items];
  for (let i = result.length - 1; i > 0; i--) {
    const j = random(i + 1);
    [result[i], result[j]] = [result[j] as T, result[i] as T];
  }
  return result;
}
