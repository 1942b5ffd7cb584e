import { LogError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import type { ColumnReading, Ledger } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { SECOND } from "../../recording/time.js";
import { instantOfSample, type WaveformSource } from "../../recording/waveform.js";
import { say, type Text } from "../../sentence.js";
import { shown } from "../csv/records.js";
import { entriesByChannel } from "../waveform/channel-entries.js";
import { leftOut, withoutDoubles } from "../waveform/doubles.js";
import { joinParts, type Part } from "../waveform/join.js";
import { SignChanges } from "../waveform/sign-changes.js";
import { timeColumns } from "./find-times.js";
import { ratesOf } from "./rates.js";
import { readSamples } from "./read-samples.js";
import { recogniseChannels, type SampleChannel } from "./recognise-channels.js";
import { openTable, type SampleTable } from "./sample-table.js";
import { type ScannedTable, scanTable } from "./scan.js";
import { type Clocks, clocksOf, startsOf } from "./time-base.js";

export interface Samples {
  readonly sources: readonly WaveformSource[];
  readonly ledger: Ledger;
}

/**
 * Opens tables of samples: every file is read once to see that each row can be read and where it lies in time, and again
 * whenever its samples are asked for. Files of one recording must have the same columns and not overlap; the time
 * between them, and jumps of the time by whole samples, are gaps. Values are the doubles nearest to what is written.
 * @throws LogError with file and line for what cannot be read; UsageError for a setup that does not fit
 */
export async function openSamples(files: readonly LogFile[], setup: GivenSetup, progress?: Progress): Promise<Samples> {
  const tables: SampleTable[] = [];
  for (const file of files) tables.push(await openTable(file, setup));
  const [first] = tables as [SampleTable];
  refuseOthers(tables);
  const named = first.columns.map(({ position, header }) => ({ position, name: header }));
  const entries = entriesByChannel(first.file.name, [named], setup.channels ?? []);
  const candidates = recogniseChannels(first.file.name, first.columns, first.levels, entries, setup);
  const clocks = clocksOf(tables, setup);

  const signs = new Map(candidates.flatMap((c) => (c.meaning && !c.stated ? [[c, new SignChanges()] as const] : [])));
  const scanned = candidates.filter(({ meaning }) => meaning !== undefined);
  const scans: ScannedTable[] = [];
  for (const [i, table] of tables.entries()) {
    const looked = scanned.map((c) => signs.get(c));
    const { samplesPerSecond } = setup;
    scans.push(await scanTable(table, scanned.map(readingOf), looked, clocks.clocks[i], samplesPerSecond, progress));
  }
  const alternating = candidates.map((channel) => withoutStill(channel, signs.get(channel)));
  const channels = withoutDoubles(first.file.name, alternating);
  const used = channels.filter(({ meaning }) => meaning !== undefined);
  if (used.length === 0) throw noChannel(first.file.name, channels);

  const { rates, remarks } = ratesOf(scans, setup.samplesPerSecond);
  const { starts, remarks: startRemarks } = startsOf(scans, clocks.absolute, setup);
  const parts = scans.map((scan, i) => partOf(scan, used, starts[i] as number, rates[i] as number));
  if (!clocks.absolute) refuseSameBeginning(parts);
  const joined = joinParts(parts);
  const doubtful = scans.flatMap((scan, i) => (clocks.clocks[i]?.doubtful ? [doubtRemark(scan)] : []));
  return {
    sources: joined.sources,
    ledger: {
      columns: columnsOf(first, channels),
      timeBase: clocks.timeBase,
      remarks: [
        ...startRemarks,
        ...scans.flatMap((scan) => scan.remarks),
        ...gapRemarks(scans),
        ...remarks,
        ...doubtful,
        ...joined.remarks,
      ],
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      unplaced: 0,
      clockSteps: [],
      clockChanges: clockChanges(clocks, joined.sources),
    },
  };
}

function readingOf({ channel: { position }, scale }: SampleChannel) {
  return { position, scale };
}

function refuseOthers(tables: readonly SampleTable[]): void {
  const key = ({ columns }: SampleTable) => JSON.stringify(columns.map(({ header, unit }) => [header, unit]));
  const [first] = tables as [SampleTable];
  const odd = tables.find((table) => key(table) !== key(first));
  if (odd === undefined) return;
  const what = `its columns are not those of ${first.file.name}; assess files with different channels apart`;
  throw new LogError(odd.file.name, `line ${odd.layout.dataLine}`, what);
}

function withoutStill(channel: SampleChannel, signs: SignChanges | undefined): SampleChannel {
  signs?.end();
  const reason = signs?.reason();
  return reason === undefined ? channel : leftOut(channel, reason);
}

function noChannel(file: string, channels: readonly SampleChannel[]): LogError {
  const why = channels.slice(0, 4).map(({ channel, reason }) => `${shown(channel.name)}: ${reason}`);
  if (channels.length > why.length) why.push("…");
  const what = `none of its columns is a sampled phase voltage or current (${why.join("; ")}); say what they are in the setup under channels:`;
  return new LogError(file, undefined, what);
}

function partOf(scan: ScannedTable, used: readonly SampleChannel[], start: number, samplesPerSecond: number): Part {
  const { file, layout } = scan.table;
  return {
    file: file.name,
    place: `line ${layout.dataLine}`,
    start,
    length: scan.length,
    samplesPerSecond,
    channels: used.map(({ channel, meaning }) => ({
      name: channel.name,
      quantity: meaning?.quantity ?? "voltage",
      phase: meaning?.phase ?? "L1",
      skewS: 0,
    })),
    blocks: () => readSamples(scan, used.map(readingOf)),
  };
}

/** Times that begin anew in every file do not tell which file comes first. */
function refuseSameBeginning(parts: readonly Part[]): void {
  const sorted = parts.toSorted((a, b) => a.start - b.start);
  for (const [i, part] of sorted.slice(1).entries()) {
    const before = sorted[i] as Part;
    if (part.start >= before.start + ((before.length - 0.5) / before.samplesPerSecond) * SECOND) continue;
    const what = `its times overlap those of ${before.file}, and neither carries a date: assess them apart`;
    throw new LogError(part.file, part.place, what);
  }
}

function gapRemarks(scans: readonly ScannedTable[]): Text[] {
  return scans.flatMap(({ table, runs, length, rows }) => {
    if (length === rows) return [];
    const [gaps, lost] = [runs.length - 1, length - rows];
    const { name } = table.file;
    if (lost === 1) return [say`${name}: 1 sample is missing in 1 gap, by the times of the rows.`];
    return [
      gaps === 1
        ? say`${name}: ${lost} samples are missing in 1 gap, by the times of the rows.`
        : say`${name}: ${lost} samples are missing in ${gaps} gaps, by the times of the rows.`,
    ];
  });
}

function doubtRemark({ table }: ScannedTable): Text {
  return say`${table.file.name}: its first time occurs twice (end of summer time); the first is taken. A fixed offset as zone decides it.`;
}

function columnsOf({ file, layout, columns }: SampleTable, channels: readonly SampleChannel[]): ColumnReading[] {
  const times = timeColumns(layout.stamps);
  return layout.texts.map(({ position, header }) => {
    const place = { file: file.name, position, header };
    if (times.includes(position - 1)) return { ...place, use: "time", reason: say`the time of each row` };
    if (layout.otherTimes.includes(position - 1)) return { ...place, reason: say`a time beside the one that is used` };
    const channel = channels[columns.findIndex((column) => column.position === position)];
    if (channel?.meaning === undefined) return { ...place, reason: channel?.reason ?? say`not recognised` };
    const { meaning, writtenUnit, reason } = channel;
    return { ...place, meaning: { ...meaning, statistic: "samples", writtenUnit }, reason };
  });
}

function clockChanges({ zone }: Clocks, sources: readonly WaveformSource[]): Ledger["clockChanges"] {
  const start = Math.min(...sources.map((s) => s.start));
  const end = Math.max(...sources.map((s) => instantOfSample(s, s.length)));
  return (zone?.changes ?? [])
    .filter(({ at }) => at > start && at < end)
    .map(({ at, before, after }) => ({ at, by: after - before, seenInLog: true }));
}
