import { LogError } from "../../errors.js";
import type { LogFile } from "../../recording/log-file.js";
import type { GivenSetup } from "../../recording/setup.js";
import type { DatesSeen } from "../csv/date-order.js";
import { type FoundTable, findTable, type Layout, layoutOf } from "../csv/layout.js";
import type { ColumnText } from "../csv/recognise-columns.js";
import type { HeadRecord } from "../csv/records.js";
import { headerTexts } from "../csv/row-loop.js";
import type { TextStamps } from "../csv/stamp-columns.js";
import { NO_OFFSET, StampReader } from "../csv/stamp-reader.js";
import { openText, readHead } from "../csv/text-source.js";
import { findTimesWithout, numberAt, type SampleTimes, timeColumns } from "./find-times.js";

/** How much of a text is enough to find out how its samples are written. */
const LOOK = 64 * 1024;

/** How the samples of one file are written. */
export interface SampleTable {
  readonly file: LogFile;
  readonly layout: Layout<SampleTimes>;
  /** The columns that hold no times that are used. */
  readonly columns: readonly ColumnText[];
  /** Root mean square of the numbers of each of `columns` in the first part of the file; NaN where there are none. */
  readonly levels: readonly number[];
  readonly headers: ReadonlySet<string>;
  /** Where times are stamps. */
  readonly stamps: StampFacts | undefined;
}

/** What the first part of a file shows of its stamps. */
export interface StampFacts {
  readonly dates: DatesSeen;
  readonly hasOffset: boolean;
  /** Microseconds of the place of their last digit. */
  readonly place: number;
}

/**
 * Finds out how the samples of a file are written, by its first part. A column of times that the setup ignores is none.
 * @throws LogError if there is no table of samples, or if its decimal mark cannot be told
 */
export async function openTable(file: LogFile, setup: GivenSetup): Promise<SampleTable> {
  const source = await openText(file);
  try {
    const { bytes, length, complete } = await readHead(source);
    return describe(file, bytes.subarray(0, Math.min(length, LOOK)), complete && length <= LOOK, setup);
  } finally {
    await source.blocks.return(undefined);
  }
}

function describe(file: LogFile, head: Uint8Array, complete: boolean, setup: GivenSetup): SampleTable {
  const ignored = new Set<number>();
  for (;;) {
    const table = findTable(head, complete, findTimesWithout(ignored));
    if (table === undefined) {
      throw new LogError(file.name, undefined, "it holds no table of samples (rows of numbers, a column per channel)");
    }
    const times = table.found.stamps;
    const used = timeColumns(times);
    const layout = layoutOf(file.name, table, used, times.kind === "stamps" ? used : [], setup.decimalMark);
    const left = used.filter((c) => isIgnored(layout.texts[c] as ColumnText, setup));
    if (left.length === 0) return tableOf(file, table, layout, used, head);
    for (const column of left) ignored.add(column);
  }
}

function isIgnored({ position, header }: ColumnText, { channels = [] }: GivenSetup): boolean {
  return channels.some(({ channel, ignore }) => ignore && (channel === position || channel === header));
}

function tableOf(
  file: LogFile,
  table: FoundTable<SampleTimes>,
  layout: Layout<SampleTimes>,
  used: readonly number[],
  bytes: Uint8Array,
): SampleTable {
  const times = layout.stamps;
  const columns = layout.texts.filter(({ position }) => !used.includes(position - 1));
  return {
    file,
    layout,
    columns,
    levels: columns.map(({ position }) => level(table, position - 1)),
    headers: headerTexts(bytes, layout),
    stamps: times.kind === "stamps" ? stampFacts(file.name, table, times.stamps, layout) : undefined,
  };
}

function level({ head, found }: FoundTable<SampleTimes>, column: number): number {
  const values = found.rows.map((r) => numberAt(head, r, column)).filter((v) => !Number.isNaN(v));
  return Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
}

function stampFacts(
  file: string,
  { head, found }: FoundTable<SampleTimes>,
  stamps: TextStamps,
  { texts }: Layout<SampleTimes>,
): StampFacts {
  const [date, time] = stamps.kind === "text" ? [stamps.dateTime, stamps.dateTime] : [stamps.date, stamps.time];
  const reader = new StampReader();
  const dates = new Set<number>();
  let [form, hasOffset] = [-1, false];
  for (const r of found.rows) {
    const { cells } = head.records[r] as HeadRecord;
    if (!reader.readDateTime(head.bytes, cells[2 * date] ?? 0, cells[2 * date + 1] ?? 0)) continue;
    if (form < 0) form = reader.form;
    if (reader.form === form) dates.add(reader.packedDate);
    if (time !== date) reader.readTime(head.bytes, cells[2 * time] ?? 0, cells[2 * time + 1] ?? 0);
    hasOffset ||= reader.offset !== NO_OFFSET;
  }
  if (form < 0) throw new LogError(file, `line ${head.records[found.rows[0] ?? 0]?.line}`, "its dates cannot be read");
  return { dates: { file, form, dates }, hasOffset, place: placeOf((texts[time] as ColumnText).samples) };
}

/** 1 000 for milliseconds, 1 000 000 for whole seconds; no instant is finer than a microsecond. */
function placeOf(samples: readonly string[]): number {
  const decimals = samples.map((text) => /\d[:.]\d\d[:.]\d\d[.,:](\d+)/.exec(text)?.[1]?.length ?? 0);
  return 10 ** Math.max(0, 6 - Math.max(0, ...decimals));
}
