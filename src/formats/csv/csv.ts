import { LogError, UsageError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import type { Ledger, Recording } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { HOUR } from "../../recording/time.js";
import { say, sortedOnce, strung, type Text } from "../../sentence.js";
import type { LogFormat } from "../log-format.js";
import { UnclearDecimalMark } from "./decimal-mark.js";
import { byKey, joinColumns } from "./join.js";
import { type PlacedTable, placeStamps } from "./place-stamps.js";
import { type PositionsNamed, readTable, type Table } from "./read-table.js";
import { textOf } from "./text-source.js";
import { type AxisGroup, timeAxes } from "./time-axis.js";

/** Tables as text: one row per interval, one column per value, however delimited; also compressed with gzip. */
export const csvFormat: LogFormat = {
  id: "csv",
  title: "delimited text (CSV)",
  source: "common practice, no source",
  extensions: [".csv", ".txt", ".tsv", ".gz"],
  recognises: (head) => textOf(head) !== undefined,
  open,
};

/**
 * Reads the files of one recording, joins them and accounts for every row.
 * Time, columns and counts as in Recording; the series stand in a fixed order, whatever the order of files.
 * @throws LogError with file and line for what cannot be read; UsageError for a setup that does not fit the logs.
 */
async function open(files: readonly LogFile[], setup: GivenSetup, progress?: Progress): Promise<Recording> {
  const tables = await readTables(files, setup, progress);
  refuseUnmatched(tables, setup);
  const placed = placeStamps(tables, setup);
  const outOfOrder = tables.reduce((sum, table) => sum + stepsBack(table), 0);
  const groups = timeAxes(placed);
  const joined = groups.map(joinColumns);
  const series = joined.flatMap((j) => j.series).sort(byKey);
  if (series.length === 0) {
    throw new LogError(
      (tables[0] as Table).file,
      undefined,
      "none of the columns that were understood holds a mean value: export the means as well, or say in the setup which column holds them (columns: statistic: mean)",
    );
  }
  const start = Math.min(...groups.map(({ axis }) => axis.starts[0] as number));
  const end = Math.max(...groups.map(({ axis }) => (axis.starts.at(-1) as number) + axis.interval));
  const ledger: Ledger = {
    columns: tables.flatMap((table) => table.readings),
    timeBase: timeBase(placed),
    remarks: inOrder([
      ...tables.flatMap((table) => table.remarks),
      ...placed.flatMap((p) => p.remarks),
      ...labelRemarks(placed),
      ...groups.flatMap((g) => g.remarks),
      ...joined.flatMap((j) => j.remarks),
    ]),
    duplicates: joined.reduce((sum, j) => sum + j.duplicates, 0),
    conflicts: [...new Set(joined.flatMap((j) => j.conflicts))].sort((a, b) => a - b),
    outOfOrder,
    unplaced: placed.reduce((sum, p) => sum + p.unplaced, 0),
    clockSteps: groups.flatMap((g) => g.clockSteps).sort((a, b) => a.at - b.at),
    clockChanges: clockChanges(placed, groups, start, end),
  };
  const sources = files.map(({ name, size }) => ({ name, bytes: size, sha256: "", format: csvFormat.id }));
  return { kind: "logged-series", sources, start, end, series, waveforms: [], ledger };
}

/** Reads all files; one whose numbers read either way takes the decimal mark that all others have. */
async function readTables(
  files: readonly LogFile[],
  setup: GivenSetup,
  progress: Progress | undefined,
): Promise<readonly Table[]> {
  const tables = new Map<LogFile, Table>();
  const unclear: UnclearDecimalMark[] = [];
  const named: PositionsNamed | undefined = files.length > 1 ? new Map() : undefined;
  for (const file of files) {
    try {
      tables.set(file, await readTable(file, setup, named, progress));
    } catch (error) {
      if (!(error instanceof UnclearDecimalMark)) throw error;
      unclear.push(error);
    }
  }
  const marks = new Set([...tables.values()].flatMap(({ layout }) => layout.decimal ?? []));
  const [decimalMark] = marks;
  if (unclear.length > 0 && (decimalMark === undefined || marks.size > 1)) throw unclear[0];
  for (const file of files) {
    if (tables.has(file) || decimalMark === undefined) continue;
    const table = await readTable(file, { ...setup, decimalMark }, named, progress);
    const remark = say`${file.name}: its decimal mark was taken from the other files`;
    tables.set(file, { ...table, remarks: [...table.remarks, remark] });
  }
  return files.map((file) => tables.get(file) as Table);
}

/** Of several files each needs only some of the columns that the setup names, but none may be missing from all. */
function refuseUnmatched(tables: readonly Table[], setup: GivenSetup): void {
  for (const { column } of setup.columns ?? []) {
    if (typeof column === "number") continue;
    if (!tables.some(({ layout }) => layout.texts.some(({ header }) => header.trim() === column.trim()))) {
      const what = "which none of the logs has; write it exactly as in the log, or give its position";
      throw new UsageError(`the setup names the column "${column}" under columns:, ${what}`);
    }
  }
}

/** Rows that stand after a later one. */
function stepsBack({ store }: Table): number {
  let [count, latest] = [0, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < store.rows; i++) {
    const t = store.times[i] as number;
    if (t < latest) count++;
    else if (!Number.isNaN(t)) latest = t;
  }
  return count;
}

/** One time base for the report; of several files the least certain origin counts. */
function timeBase(placed: readonly PlacedTable[]): Ledger["timeBase"] {
  const zoneOrigins = ["assumed", "given", "stamps"];
  const labelOrigins = ["assumed", "inferred", "given"];
  const byZone = placed.toSorted((a, b) => zoneOrigins.indexOf(a.zoneOrigin) - zoneOrigins.indexOf(b.zoneOrigin));
  const byLabel = placed.toSorted((a, b) => labelOrigins.indexOf(a.labelOrigin) - labelOrigins.indexOf(b.labelOrigin));
  const [zoned, labelled] = [byZone[0] as PlacedTable, byLabel[0] as PlacedTable];
  return {
    zone: zoned.zone,
    zoneOrigin: zoned.zoneOrigin,
    intervalLabel: labelled.label,
    labelOrigin: labelled.labelOrigin,
    stampForm: strung(sortedOnce(placed.map((p) => p.stampForm)), "; "),
  };
}

/** By their English words, whatever the order of files. */
function inOrder(texts: readonly Text[]): Text[] {
  return texts.toSorted((a, b) => (String(a) < String(b) ? -1 : 1));
}

function labelRemarks(placed: readonly PlacedTable[]): Text[] {
  if (new Set(placed.map((p) => p.label)).size < 2) return [];
  return placed.map(({ table, label }) =>
    label === "start"
      ? say`${table.file}: its stamps mark the start of the interval`
      : say`${table.file}: its stamps mark the end of the interval`,
  );
}

/**
 * Changes of the clock that the stamps were read in; stamps that state their offset have none.
 * A change counts as seen in the log if intervals stand on both of its sides, so that the stamps had to jump.
 */
function clockChanges(
  placed: readonly PlacedTable[],
  groups: readonly AxisGroup[],
  start: number,
  end: number,
): Ledger["clockChanges"] {
  const changes = new Map(placed.flatMap(({ clock }) => clock.changes.map((c) => [c.at, c] as const)));
  return [...changes.values()]
    .filter(({ at }) => at > start && at < end)
    .sort((a, b) => a.at - b.at)
    .map(({ at, before, after }) => ({
      at,
      by: after - before,
      seenInLog: groups.some(({ axis: { starts, interval } }) => {
        const near = Math.max(HOUR, interval);
        return starts.some((t) => t >= at - near && t < at) && starts.some((t) => t >= at && t < at + near);
      }),
    }));
}
