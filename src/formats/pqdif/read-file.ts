import { LogError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";
import { say } from "../../sentence.js";
import { Damage } from "./body.js";
import { type Tree, treeOf } from "./collection.js";
import { containerOf } from "./container.js";
import { dataSourceOf } from "./data-source.js";
import { RECORD } from "./identifiers.js";
import type { PqdifContainer, PqdifDataSource, PqdifFile, PqdifObservation, PqdifSettings } from "./model.js";
import { observationOf } from "./observation.js";
import { channelsOf, openValues } from "./open-values.js";
import { PagedFile } from "./paged-file.js";
import { bodyOf } from "./record-body.js";
import { isPqdif, type PqdifRecord, recordsOf } from "./records.js";
import { settingsInForce, settingsOf } from "./settings.js";
import { Warnings } from "./warnings.js";

/**
 * Opens a PQDIF file (IEEE 1159.3): container, data sources, monitor settings and the heads of all observations, without
 * their values. Of uncompressed records only the trees are read; compressed ones are inflated one at a time. An observation
 * belongs to the data source before it, and to the settings in force (`settingsInForce`). What cannot be read is left out
 * with a warning.
 * @throws LogError if it is no PQDIF file, is compressed in another way than by zlib records, or holds no observation that
 * can be read
 */
export async function openPqdif(log: LogFile, progress?: Progress): Promise<PqdifFile> {
  const file = new PagedFile(log);
  if (!isPqdif(await log.read(0, 16))) {
    throw new LogError(
      file.name,
      "byte 0",
      "it does not begin with the signature of PQDIF (IEEE 1159.3): name another file",
    );
  }
  const warnings = new Warnings();
  const observations: PqdifObservation[] = [];
  let container: PqdifContainer | undefined;
  let source: PqdifDataSource | undefined;
  let settings: PqdifSettings[] = [];
  let series = 0;
  for await (const record of recordsOf(file, warnings)) {
    progress?.("reading records", record.byte / file.size);
    const compressed = container && container.compression === "record";
    const tree = () => bodyOf(file, record, compressed).then((body) => treeOf(body, warnings));
    await warnings.tried(async () => {
      if (record.type === RECORD.container) container ??= await containerOf(await tree(), file.name);
      else if (record.type === RECORD.dataSource) {
        // What follows belongs to the new one, even if that cannot be read.
        source = undefined;
        settings = [];
        source = await dataSourceOf(await tree());
      } else if (record.type === RECORD.monitorSettings) settings.push(await settingsOf(await tree()));
      else if (record.type === RECORD.observation) {
        if (source === undefined) {
          throw new Damage(
            record.byte,
            say`an observation stands before any data source that can be read, and is left out`,
          );
        }
        const observation = await observe(file, record, compressed, await tree(), source, settings);
        series += observation.channels.reduce((sum, channel) => sum + channel.series.length, 0);
        if (series > MAX_SERIES) throw tooMany(file.name, record.byte);
        observations.push(observation);
      }
    });
  }
  if (container === undefined) warnings.add(0, say`the file has no container record that can be read`);
  if (observations.length === 0) throw nothingIn(file.name, warnings);
  return {
    file: file.name,
    container: container ?? { version: [], compression: "none" },
    observations,
    warnings: warnings.all(),
  };
}

/** Heads of so many series take some 500 MB of memory; a file of 500 MB as recorders write it has a hundredth of them. */
const MAX_SERIES = 5_000_000;

function tooMany(name: string, byte: number): LogError {
  return new LogError(
    name,
    `byte ${byte}`,
    `it lists more than ${MAX_SERIES} series: export a shorter time from the recorder`,
  );
}

function nothingIn(name: string, warnings: Warnings): LogError {
  const [first] = warnings.all();
  const why = first === undefined ? "" : ` (${first.what})`;
  return new LogError(
    name,
    `byte ${first?.byte ?? 0}`,
    `no observation can be read in it${why}: export it from the recorder again`,
  );
}

async function observe(
  file: PagedFile,
  record: PqdifRecord,
  compressed: boolean | undefined,
  tree: Tree,
  source: PqdifDataSource,
  settings: readonly PqdifSettings[],
): Promise<PqdifObservation> {
  const stored = await observationOf(tree, source);
  const { channels, places } = await channelsOf(stored, tree);
  const inForce = settingsInForce(settings, stored.start);
  return {
    ...stored.head,
    source,
    ...(inForce !== undefined && { settings: inForce }),
    triggerChannels: stored.triggerChannels.map((index) => places.indexOf(index)).filter((index) => index >= 0),
    channels,
    open: () => openValues(file, record, compressed, source),
  };
}
