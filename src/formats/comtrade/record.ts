import { LogError } from "../../errors.js";
import type { Progress } from "../../recording/log-file.js";
import type { GivenSetup } from "../../recording/setup.js";
import { type Instant, SECOND } from "../../recording/time.js";
import { TimeZone } from "../../recording/time-zone.js";
import { say } from "../../sentence.js";
import { type Configuration, readConfiguration } from "./configuration.js";
import { findLayout, type Layout } from "./data-layout.js";
import type { FileRemark } from "./file-remark.js";
import type { RecordFiles } from "./file-set.js";
import { cutRuns, type Run } from "./row-index.js";
import type { RowStore } from "./rows.js";
import { type DataFacts, scanAscii, scanBinary } from "./scan.js";
import { rateBreaks, stretchesOf } from "./time-axis.js";

/** One record: configuration, place of its rows, and its stretches of constant rate. */
export interface ComtradeRecord {
  readonly store: RowStore;
  readonly stretches: readonly RecordStretch[];
  readonly remarks: readonly FileRemark[];
}

export interface RecordStretch {
  /** Positions count from the beginning of the stretch. */
  readonly runs: readonly Run[];
  readonly length: number;
  readonly samplesPerSecond: number;
  /** Seconds after the first sample of the record. */
  readonly startS: number;
}

/** Reads the configuration and indexes the data. @throws LogError with line or byte */
export async function openRecord(
  files: RecordFiles,
  setup: GivenSetup,
  blockBytes: number,
  progress: Progress | undefined,
): Promise<ComtradeRecord> {
  const configuration = readConfiguration(files.configuration, setup.dateOrder);
  const { data } = files;
  const { layout, remarks } = await findLayout(configuration, data);
  const store = { configuration, data, layout };
  const facts = await scan(store, layout, blockBytes, progress);
  const { index } = facts;
  const axis = stretchesOf(configuration, data, index.length, facts.steps);
  const rowSize = layout.kind === "ASCII" ? undefined : layout.rowSize;
  const stretches = axis.stretches.map(({ from, to, samplesPerSecond, startS }) => {
    const runs = cutRuns(index.runs, from, to, rowSize);
    const last = runs.at(-1);
    return { runs, length: last === undefined ? 0 : last.position + last.rows, samplesPerSecond, startS };
  });
  return {
    store,
    stretches: stretches.filter(({ length }) => length > 0),
    remarks: [
      ...files.remarks,
      ...configuration.remarks,
      ...remarks,
      ...facts.remarks,
      ...axis.remarks,
      ...countRemarks(configuration, index.length),
    ],
  };
}

function scan(
  { configuration, data }: RowStore,
  layout: Layout,
  blockBytes: number,
  progress: Progress | undefined,
): Promise<DataFacts> {
  if (layout.kind !== "ASCII") {
    return scanBinary(data, layout, configuration.rates.length === 0, blockBytes, progress);
  }
  const analog = configuration.analog.length;
  const columns = { analog, all: analog + configuration.statusCount };
  return scanAscii(data, columns, rateBreaks(configuration), blockBytes, progress);
}

function countRemarks({ file, promisedSamples, statusCount, analog }: Configuration, length: number): FileRemark[] {
  const remarks: FileRemark[] = [];
  if (promisedSamples > 0 && promisedSamples !== length) {
    remarks.push({
      file,
      text: say`${promisedSamples} samples are promised, the data hold ${length}; all that are there are used.`,
    });
  }
  if (statusCount > 0) remarks.push({ file, text: say`its ${statusCount} status channels are not used.` });
  for (const { name, a, b } of analog) {
    if (a === 0) remarks.push({ file, text: say`the channel "${name}" has the factor 0, so all its values are ${b}.` });
  }
  return remarks;
}

/**
 * Instant of the first sample: its stamp less the offset of the time code, or read in `zone`.
 * @throws LogError where the zone's clock never showed the stamp (the hour skipped in spring)
 */
export function firstInstant(configuration: Configuration, zone: TimeZone): { at: Instant; remarks: FileRemark[] } {
  const { firstSample, timeCode, file } = configuration;
  if (timeCode !== undefined) return { at: firstSample.local - timeCode, remarks: [] };
  const [earlier, later] = [zone.earlierInstant(firstSample.local), zone.laterInstant(firstSample.local)];
  if (Number.isNaN(earlier)) {
    throw new LogError(
      file,
      `line ${configuration.stampLine}`,
      `the time of the first sample falls into the hour that ${zone.id} skips in spring; state the zone that the recorder was set to (--zone)`,
    );
  }
  const remarks =
    earlier === later
      ? []
      : [
          {
            file,
            text: say`the time of the first sample occurs twice in ${zone.id} (end of summer time); the first is taken. A fixed offset as zone decides it.`,
          },
        ];
  return { at: earlier, remarks };
}

/** Instant at which a stretch begins. */
export function stretchStart(first: Instant, { startS }: RecordStretch): Instant {
  return first + Math.round(startS * SECOND);
}

/** The zone for stamps without an offset of their own. @throws UsageError for an unknown zone */
export function openZone(records: readonly ComtradeRecord[], setup: GivenSetup): TimeZone {
  const times = records.map(({ store }) => store.configuration.firstSample.local);
  return TimeZone.open(
    setup.zone ?? "UTC",
    times.reduce((a, b) => Math.min(a, b)),
    times.reduce((a, b) => Math.max(a, b)),
  );
}
