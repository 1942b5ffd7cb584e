import { findTable } from "../csv/layout.js";
import type { HeadRecord } from "../csv/records.js";
import type { ClassifiedHead, TextStamps } from "../csv/stamp-columns.js";
import { StampReader } from "../csv/stamp-reader.js";
import { textOf } from "../csv/text-source.js";
import { findTimes, MICROS, numberAt, type SampleTimes, timeColumns } from "./find-times.js";

/** How much of a text is enough to tell samples from interval values. */
const LOOK = 16 * 1024;
/** Steps below this are those of samples: the slowest that are told are 400 per second. */
const LONGEST_STEP = 2500;
/** Microseconds in which an alternating voltage or current must have changed its sign: two cycles of 50 Hz. */
const TWO_CYCLES = 40_000;

/**
 * Whether a text holds samples rather than values over intervals: by the step of its times, and by values of both
 * signs where it spans two cycles or where the times do not tell the step.
 */
export function looksSampled(head: Uint8Array): boolean {
  const text = textOf(head)?.subarray(0, LOOK);
  const table = text && findTable(text, false, findTimes);
  if (table === undefined) return false;
  const times = timesOf(table.head, table.found.rows, table.found.stamps);
  const steps = times.slice(1).map((t, i) => t - (times[i] as number));
  const step = steps.sort((a, b) => a - b)[steps.length >> 1] ?? 0;
  if (!(step < LONGEST_STEP)) return false;
  const span = step * steps.length;
  const unclear = step <= 0 || span >= TWO_CYCLES;
  return (
    !unclear || alternates(table.head, table.found.rows, [...timeColumns(table.found.stamps), ...table.found.others])
  );
}

/** Times in microseconds (of the day, where they are stamps); none where the table has none. */
function timesOf(head: ClassifiedHead, rows: readonly number[], times: SampleTimes): number[] {
  if (times.kind === "numbers") return rows.map((r) => numberAt(head, r, times.column) * MICROS[times.unit]);
  return times.kind === "stamps" ? rows.flatMap((r) => timeOfDay(head, r, times.stamps)) : [];
}

function timeOfDay({ bytes, records }: ClassifiedHead, row: number, stamps: TextStamps): number[] {
  const reader = new StampReader();
  const { cells } = records[row] as HeadRecord;
  const bounds = (column: number) => [cells[2 * column] ?? 0, cells[2 * column + 1] ?? 0] as const;
  const isRead =
    stamps.kind === "text"
      ? reader.readDateTime(bytes, ...bounds(stamps.dateTime))
      : reader.readTime(bytes, ...bounds(stamps.time));
  return isRead ? [reader.timeOfDay] : [];
}

/** Some column of values has both signs. */
function alternates(head: ClassifiedHead, rows: readonly number[], times: readonly number[]): boolean {
  const columns = Math.max(...rows.map((r) => (head.classes[r] ?? []).length));
  return Array.from({ length: columns }, (_, c) => c).some((c) => {
    if (times.includes(c)) return false;
    const values = rows.map((r) => numberAt(head, r, c));
    return values.some((v) => v > 0) && values.some((v) => v < 0);
  });
}
