import type { Instant } from "../../recording/time.js";
import { say } from "../../sentence.js";
import { Damage } from "./body.js";
import { Collection, type Tree } from "./collection.js";
import { defined } from "./data-source.js";
import { KNOWN, TAG } from "./identifiers.js";
import type { PqdifCharacteristics, PqdifDataSource, PqdifObservation } from "./model.js";
import type { StoredChannel, StoredSeries } from "./series.js";
import { itemsOf } from "./vector.js";

/** An observation as it stands in its record: all its channel instances, also those that no definition belongs to. */
export interface StoredObservation {
  readonly head: Omit<PqdifObservation, "source" | "settings" | "channels" | "open" | "triggerChannels">;
  readonly start: Instant;
  readonly channels: readonly StoredChannel[];
  /** Indices into the stored channels. */
  readonly triggerChannels: readonly number[];
}

/** An observation record without values. @throws Damage if it has no start, or is no tree */
export async function observationOf(tree: Tree, source: PqdifDataSource): Promise<StoredObservation> {
  const root = await Collection.at(tree, 0);
  const start = await root.instant(TAG.TimeStart);
  if (start === undefined)
    throw new Damage(root.byte, say`an observation has no start that can be read and is left out`);
  const channels: StoredChannel[] = [];
  for (const channel of await root.children(TAG.ChannelInstances, TAG.OneChannelInst)) {
    // One that cannot be read keeps its index, since shared series count them.
    channels.push(await channelOf(channel, tree, source));
  }
  const name = (await root.text(TAG.ObservationName)) ?? "";
  return {
    head: {
      byte: root.byte,
      name,
      start,
      characteristics: await characteristicsOf(root),
      ...defined("triggered", await root.instant(TAG.TimeTriggered)),
      ...defined("triggerMethod", await root.number(TAG.TriggerMethodID)),
      ...defined("disturbance", await root.guid(TAG.DisturbanceCategoryID, KNOWN.disturbances)),
    },
    start,
    channels,
    triggerChannels: await indicesOf(root, tree),
  };
}

async function indicesOf(root: Collection, { body, warnings }: Tree): Promise<number[]> {
  const vector = await root.vector(TAG.ChannelTriggerIdx);
  if (vector === undefined) return [];
  return [...((await warnings.tried(() => itemsOf(body, vector, 0, vector.count))) ?? [])];
}

const NO_CHARACTERISTICS: PqdifCharacteristics = {};

async function characteristicsOf(collection: Collection): Promise<PqdifCharacteristics> {
  const found = {
    ...defined("magnitude", await collection.number(TAG.CharactMagnitude)),
    ...defined("durationS", await collection.number(TAG.CharactDuration)),
    ...defined("frequency", await collection.number(TAG.CharactFrequency)),
  };
  return Object.keys(found).length === 0 ? NO_CHARACTERISTICS : found;
}

async function channelOf(channel: Collection | undefined, tree: Tree, source: PqdifDataSource): Promise<StoredChannel> {
  if (channel === undefined) return { byte: tree.body.byteOf(0), definition: undefined, series: [] };
  const definitionIndex = await channel.number(TAG.ChannelDefnIdx);
  const definition = source.channels[definitionIndex ?? -1];
  if (definition === undefined) {
    tree.warnings.add(
      channel.byte,
      say`a channel belongs to definition ${definitionIndex ?? say`unknown`} of ${source.channels.length}, which there is not, and is left out`,
    );
  }
  const series: StoredSeries[] = [];
  for (const one of await channel.children(TAG.SeriesInstances, TAG.OneSeriesInstance)) {
    series.push(await seriesOf(one, tree));
  }
  if (definition !== undefined && series.length > definition.series.length) {
    tree.warnings.add(
      channel.byte,
      say`a channel has ${series.length} series where ${definition.series.length} are defined; the others are left out`,
    );
  }
  return {
    byte: channel.byte,
    definition: definition && { index: definitionIndex as number, is: definition },
    series,
    details: {
      characteristics: await characteristicsOf(channel),
      ...defined("group", await channel.number(TAG.ChannelGroupID)),
      ...defined("frequency", await channel.number(TAG.ChannelFrequency)),
    },
  };
}

async function seriesOf(series: Collection | undefined, { body }: Tree): Promise<StoredSeries> {
  if (series === undefined) return { byte: body.byteOf(0) };
  const channel = await series.number(TAG.SeriesShareChannelIdx);
  const index = await series.number(TAG.SeriesShareSeriesIdx);
  const shared = channel !== undefined && index !== undefined;
  const scale = await series.number(TAG.SeriesScale);
  const offset = await series.number(TAG.SeriesOffset);
  const unreadable =
    (scale === undefined && series.has(TAG.SeriesScale)) || (offset === undefined && series.has(TAG.SeriesOffset));
  return {
    byte: series.byte,
    ...(!unreadable && shared && { share: { channel, series: index } }),
    ...(!unreadable && !shared && defined("vector", await series.vector(TAG.SeriesValues))),
    ...defined("scale", scale),
    ...defined("offset", offset),
    ...defined("base", await series.number(TAG.SeriesBaseQuantity)),
  };
}
