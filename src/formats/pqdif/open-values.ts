import { say } from "../../sentence.js";
import { Damage } from "./body.js";
import { MAX_ENTRIES, type Tree, treeOf } from "./collection.js";
import type { PqdifChannel, PqdifDataSource, PqdifValues } from "./model.js";
import { observationOf, type StoredObservation } from "./observation.js";
import type { PagedFile } from "./paged-file.js";
import { bodyOf } from "./record-body.js";
import type { PqdifRecord } from "./records.js";
import { readableSeries } from "./series.js";
import { Warnings } from "./warnings.js";

/**
 * The channels that have a definition, without values, and where each stands among all channel instances.
 * @throws Damage for more series than any recorder writes
 */
export async function channelsOf(
  { channels }: StoredObservation,
  { body, warnings }: Tree,
): Promise<{ channels: PqdifChannel[]; places: number[] }> {
  const listed: PqdifChannel[] = [];
  const places: number[] = [];
  const listedSeries = channels.reduce((sum, { definition }) => sum + (definition?.is.series.length ?? 0), 0);
  if (listedSeries > MAX_ENTRIES) {
    throw new Damage(body.byteOf(0), say`an observation lists more than ${MAX_ENTRIES} series and is left out`);
  }
  for (const [place, { byte, definition, series, details }] of channels.entries()) {
    if (definition === undefined) continue;
    const list: PqdifChannel["series"][number][] = [];
    for (const index of definition.is.series.keys()) {
      const readable = await warnings.tried(() => readableSeries(body, channels, place, index));
      const stored = series[index];
      list.push({
        byte: stored?.byte ?? byte,
        count: readable?.count ?? 0,
        ...(stored?.base !== undefined && { base: stored.base }),
      });
    }
    places.push(place);
    listed.push({
      byte,
      definition: definition.is,
      definitionIndex: definition.index,
      characteristics: {},
      ...details,
      series: list,
    });
  }
  return { channels: listed, places };
}

/** Reads an observation once more, to give its values. */
export async function openValues(
  file: PagedFile,
  record: PqdifRecord,
  compressed: boolean | undefined,
  source: PqdifDataSource,
): Promise<PqdifValues> {
  // What is wrong with it was told when the file was opened.
  const told = new Warnings();
  const body = await bodyOf(file, record, compressed);
  const stored = await observationOf(treeOf(body, told), source);
  const places = [...stored.channels.keys()].filter((place) => stored.channels[place]?.definition !== undefined);
  return {
    async values(channel, series, from = 0, to = Number.POSITIVE_INFINITY) {
      const place = places[channel];
      if (place === undefined) throw new RangeError(`there is no channel ${channel}`);
      const readable = await told.tried(() => readableSeries(body, stored.channels, place, series));
      if (readable === undefined) return new Float64Array();
      const end = Math.min(to, readable.count);
      return readable.read(Math.min(from, end), end);
    },
  };
}
