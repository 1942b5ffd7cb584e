import { LogError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import type { ColumnReading, TimeBase } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { isoUtc, SECOND } from "../../recording/time.js";
import type { WaveformSource } from "../../recording/waveform.js";
import { say, sortedOnce, strung, type Text } from "../../sentence.js";
import { entriesByChannel } from "../waveform/channel-entries.js";
import { joinParts } from "../waveform/join.js";
import { SAMPLE_TIMES } from "../waveform/sample-times.js";
import { groupByChannels, readGroup } from "./channel-group.js";
import { together } from "./file-remark.js";
import { recordsOf } from "./file-set.js";
import { type ComtradeRecord, openRecord, openZone } from "./record.js";

/** What a set of COMTRADE files holds, before it is measured. */
export interface ComtradeWaveforms {
  /** In time order; empty where no channel is a phase voltage or current: `columns` says why. */
  readonly sources: readonly WaveformSource[];
  /** Every analog channel: what it was taken for, or why it is left out. Files with the same channels are listed once. */
  readonly columns: readonly ColumnReading[];
  readonly timeBase: TimeBase;
  readonly remarks: readonly Text[];
}

const BLOCK_BYTES = 512 * 1024;

/**
 * Opens COMTRADE records (IEEE C37.111-1991, -1999, -2013 = IEC 60255-24; pairs of .cfg and .dat, or .cff) as sampled
 * voltages and currents in V and A at the primary side. Records with the same channels are joined in time order; lost
 * rows and the time between files are gaps. Samples are read when a source is read, in blocks, so the files must stay
 * open.
 *
 * Time: the stamp of the first sample, with its time code (2013), else in the zone of the setup, else in UTC
 * (`timeBase` says which). A sample lasts one period of the rate it was taken at. Skew is stated per channel, not applied.
 * @param blockBytes about how much is read at a time; no result depends on it
 * @throws LogError for what cannot be read, with file and line or byte; UsageError where the setup does not fit
 */
export async function openComtrade(
  files: readonly LogFile[],
  setup: GivenSetup,
  progress?: Progress,
  blockBytes = BLOCK_BYTES,
): Promise<ComtradeWaveforms> {
  const records: ComtradeRecord[] = [];
  for (const record of await recordsOf(files)) records.push(await openRecord(record, setup, blockBytes, progress));
  const groups = groupByChannels(records);
  const entries = entriesByChannel(
    records[0]?.store.configuration.file ?? "",
    groups.map(([first]) => first.store.configuration.analog),
    setup.channels ?? [],
  );
  const zone = openZone(records, setup);
  const sources: { source: WaveformSource; file: string }[] = [];
  const columns: ColumnReading[] = [];
  const remarks = records.flatMap((record) => record.remarks);
  const ofJoined: Text[] = [];
  for (const group of groups) {
    const read = await readGroup(group, entries, setup, zone, blockBytes, progress);
    columns.push(...read.columns);
    remarks.push(...read.remarks);
    if (read.parts.length === 0) continue;
    const joined = joinParts(read.parts);
    sources.push(...joined.sources.map((source) => ({ source, file: group[0].store.configuration.file })));
    ofJoined.push(...joined.remarks);
  }
  sources.sort((a, b) => a.source.start - b.source.start);
  refuseRivals(sources);
  return {
    sources: sources.map(({ source }) => source),
    columns,
    timeBase: timeBaseOf(records, zone.id, setup),
    remarks: [...together(remarks), ...ofJoined],
  };
}

/** Files with different channels may run side by side, but not with two values of one quantity at one time. */
function refuseRivals(sources: readonly { source: WaveformSource; file: string }[]): void {
  const place = (c: WaveformSource["channels"][number]) => `${c.quantity} ${c.phase}`;
  for (const [i, one] of sources.entries()) {
    const places = new Set(one.source.channels.map(place));
    const end = one.source.start + (one.source.length / one.source.samplesPerSecond) * SECOND;
    for (const other of sources.slice(i + 1)) {
      if (other.source.start >= end - SECOND / one.source.samplesPerSecond || other.file === one.file) continue;
      const shared = other.source.channels.map(place).find((p) => places.has(p));
      if (shared === undefined) continue;
      throw new LogError(
        other.file,
        undefined,
        `it holds ${shared} from ${isoUtc(other.source.start)} on, as does ${one.file} at that time; leave one of the two out, or the channel (setup: channels, ignore)`,
      );
    }
  }
}

/** One time base for the report; of several files the least certain origin counts. */
function timeBaseOf(records: readonly ComtradeRecord[], zone: string, setup: GivenSetup): TimeBase {
  const stamps = records.map(({ store }) => store.configuration);
  const carried = stamps.every(({ timeCode }) => timeCode !== undefined);
  const forms = stamps.map(
    ({ firstSample: { order, decimals } }) => say`${order.split("").join("/")} h:m:s with ${decimals} decimals`,
  );
  return {
    // A given zone is the one to show times in, also where the files carry their own offset from UTC.
    zone: carried && setup.zone === undefined ? "UTC" : zone,
    zoneOrigin: setup.zone !== undefined ? "given" : carried ? "stamps" : "assumed",
    intervalLabel: "start",
    labelOrigin: "inferred",
    labelReason: SAMPLE_TIMES,
    stampForm: say`${strung(sortedOnce(forms), "; ")}, of the first sample of each file`,
  };
}
