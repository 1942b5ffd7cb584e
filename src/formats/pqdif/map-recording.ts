import { LogError, UsageError } from "../../errors.js";
import type { LoggedEvent } from "../../recording/logged-event.js";
import type { Ledger, LoggedSeries, ObservationReading } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { HOUR } from "../../recording/time.js";
import type { WaveformSource } from "../../recording/waveform.js";
import { say, type Text } from "../../sentence.js";
import { byKey, joinColumns } from "../csv/join.js";
import { timeAxes } from "../csv/time-axis.js";
import type { Part } from "../waveform/join.js";
import { SAMPLE_TIMES } from "../waveform/sample-times.js";
import { type Clock, clockOf, instantOf, type Label, labelsOf, placeRows } from "./clock.js";
import { eventsOf, uniqueEvents } from "./events.js";
import { type Field, type Fields, fieldsOf } from "./fields.js";
import { sourcesOf } from "./join-waveforms.js";
import { LogReader } from "./log-reader.js";
import type { PqdifFile } from "./model.js";
import { onePerPlace } from "./one-per-place.js";
import { columnReadings, type FieldUses, observationReading } from "./readings.js";
import { draftsOf, isWanted, recognise } from "./recognise.js";
import { type SampledField, sampledFields } from "./sampled-fields.js";
import { type RawTable, tablesOf } from "./tables.js";
import { WaveformReader } from "./waveforms.js";

/** What PQDIF files hold, in the terms of a recording. */
export interface Mapped {
  readonly series: readonly LoggedSeries[];
  readonly waveforms: readonly WaveformSource[];
  readonly events: readonly LoggedEvent[];
  readonly ledger: Ledger;
}

/** Told how many of the observations are read. */
type Step = (done: number, of: number) => void;

interface ReadFile extends FieldUses {
  readonly file: PqdifFile;
  readonly tables: readonly RawTable[];
  readonly observations: readonly ObservationReading[];
  readonly events: readonly LoggedEvent[];
  readonly remarks: readonly Text[];
}

/**
 * Files of one recording: value logs become logged series, points on the wave waveforms, lists of magnitude and duration
 * and classified triggers events. What a channel is is told by its identifiers, never by its name or place; observations are
 * joined by what they hold and by time. Everything that is not used is listed with the reason.
 * @throws LogError for what cannot be read; UsageError where the setup does not fit
 */
export async function mapRecording(
  files: readonly PqdifFile[],
  setup: GivenSetup,
  step: Step = () => undefined,
): Promise<Mapped> {
  const fields = files.map((file) => fieldsOf(file));
  refuseUnmatched(files, fields, setup);
  const all = files.flatMap(({ observations }) => observations);
  const stored = all.flatMap(({ start, triggered }) => [start, triggered ?? start]);
  const [from, to] = [Math.min(...stored), Math.max(...stored)];
  const clock = clockOf([...new Set(all.map(({ source }) => source))], setup, from, to);
  const sampled = sampledFields(
    files[0]?.file ?? "",
    fields.map((f) => f.all),
    setup,
  );
  const read: ReadFile[] = [];
  let done = 0;
  for (const [i, file] of files.entries()) {
    read.push(await readFile(file, fields[i] as Fields, sampled, setup, clock, () => step(++done, all.length)));
  }
  const tables = read.flatMap((r) => r.tables);
  const labels = labelsOf(tables, setup);
  const unplaced = placeRows(tables, clock);
  const groups = timeAxes(tables.map((table, i) => ({ table, label: labels[i]?.label ?? "start" })));
  const joined = groups.map(joinColumns);
  const series = joined.flatMap((j) => j.series).sort(byKey);
  const parts: Part[] = read.flatMap(({ file, waves }) => waves.parts((at) => instantOf(clock, at, file.file)));
  const { sources, remarks } = sourcesOf(parts);
  const outOfOrder = tables.reduce((sum, { store: { times } }) => sum + stepsBack(times), 0);
  const ledger: Ledger = {
    columns: read.flatMap(columnReadings),
    observations: read.flatMap((r) => r.observations),
    timeBase: {
      zone: clock.id,
      zoneOrigin: clock.origin,
      ...(clock.reason !== undefined && { zoneReason: clock.reason }),
      ...labelBase(labels),
      stampForm: say`times of IEEE 1159.3 (days and seconds), of the start of each observation`,
    },
    remarks: [
      ...clock.remarks,
      ...read.flatMap((r) => r.remarks),
      ...groups.flatMap((g) => g.remarks),
      ...joined.flatMap((j) => j.remarks),
      ...read.flatMap(({ waves }) => [...waves.remarks.values()]),
      ...remarks,
    ],
    duplicates: joined.reduce((sum, j) => sum + j.duplicates, 0),
    conflicts: [...new Set(joined.flatMap((j) => j.conflicts))].sort((a, b) => a - b),
    outOfOrder,
    unplaced,
    clockSteps: groups.flatMap((g) => g.clockSteps).sort((a, b) => a.at - b.at),
    clockChanges: clock.zone.changes
      .filter(({ at }) => series.some(({ axis: { starts } }) => (starts[0] ?? at) < at && (starts.at(-1) ?? at) >= at))
      .map(({ at, before, after }) => ({
        at,
        by: after - before,
        seenInLog: groups.some(({ axis: { starts, interval } }) => {
          const near = Math.max(HOUR, interval);
          return starts.some((t) => t >= at - near && t < at) && starts.some((t) => t >= at && t < at + near);
        }),
      })),
  };
  return { series, waveforms: sources, events: uniqueEvents(read.flatMap((r) => r.events)), ledger };
}

async function readFile(
  file: PqdifFile,
  fields: Fields,
  sampledFields: readonly SampledField[],
  setup: GivenSetup,
  clock: Clock,
  step: () => void,
): Promise<ReadFile> {
  const logged = fields.all.filter(({ sampled }) => !sampled);
  const drafts = draftsOf(file.file, logged, setup);
  const wanted = new Set(drafts.filter(isWanted).map(({ field }) => field));
  const sampled = new Map(
    sampledFields
      .filter(({ field }) => field.file === file.file && fields.all.includes(field))
      .map((use) => [use.field, use]),
  );
  const logs = new LogReader(fields, (field) => wanted.has(field), setup);
  const waves = new WaveformReader(file.file, fields, sampled, setup);
  const toInstant = (at: number) => instantOf(clock, at, file.file);
  const events: LoggedEvent[] = [];
  const observations: ObservationReading[] = [];
  for (const observation of file.observations) {
    step();
    try {
      const values = await observation.open();
      const rows = await logs.take(observation, values);
      const samples = await waves.take(observation, values);
      const own = await eventsOf(file.file, observation, values, setup, toInstant);
      events.push(...own);
      observations.push(observationReading(file.file, observation, { rows, samples, events: own.length }, toInstant));
    } catch (error) {
      if (!(error instanceof LogError)) throw error;
      observations.push({
        ...observationReading(file.file, observation, { rows: 0, samples: 0, events: 0 }, toInstant),
        use: say`it cannot be read: ${error.message}`,
      });
    }
  }
  const recognised = onePerPlace(file.file, recognise(drafts, logs, setup), logs);
  const { tables, leftOut, remarks } = tablesOf(file.file, recognised, logs);
  return {
    file,
    recognised,
    sampled,
    waves,
    leftOut,
    tables,
    observations,
    events,
    remarks: [
      ...file.warnings.map(({ byte, what, times }) =>
        times === 1
          ? say`${file.file}, byte ${byte}: ${what}`
          : say`${file.file}, byte ${byte} and ${times - 1} times more: ${what}`,
      ),
      ...logs.remarks.values(),
      ...remarks,
    ],
  };
}

/** Of several files each needs only some of what the setup names, but none may be missing from all. */
function refuseUnmatched(files: readonly PqdifFile[], fields: readonly Fields[], setup: GivenSetup): void {
  for (const { column } of setup.columns ?? []) {
    const isNamed = ({ position, header, channel, sampled }: Field) =>
      !sampled && (typeof column === "number" ? position === column : [header, channel].includes(column.trim()));
    if (fields.some(({ all }) => all.some(isNamed))) continue;
    const names = files.length === 1 ? files[0]?.file : "none of the files";
    throw new UsageError(
      typeof column === "number"
        ? `the setup names column ${column} under columns:, but ${names} has ${files.length === 1 ? "no " : "a "}series of logged values at that position; run "inspect" to see the positions`
        : `the setup names the column "${column}" under columns:, which ${files.length === 1 ? `${names} does not have` : "none of the files has"}; write it exactly as inspect shows it, or give its position`,
    );
  }
}

/** The label for the report; of several the least certain counts. */
function labelBase(labels: readonly Label[]) {
  const rank = { assumed: 0, inferred: 1, given: 2 } as const;
  const [least] = labels.toSorted((a, b) => rank[a.origin] - rank[b.origin]);
  if (least === undefined) {
    return { intervalLabel: "start" as const, labelOrigin: "inferred" as const, labelReason: SAMPLE_TIMES };
  }
  return {
    intervalLabel: least.label,
    labelOrigin: least.origin,
    ...(least.reason !== undefined && { labelReason: least.reason }),
  };
}

/** Rows that stand after a later one. */
function stepsBack(times: Float64Array): number {
  let [count, latest] = [0, Number.NEGATIVE_INFINITY];
  for (const t of times) {
    if (t < latest) count++;
    else if (!Number.isNaN(t)) latest = t;
  }
  return count;
}
