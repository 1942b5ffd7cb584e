import { say } from "../../sentence.js";
import { Collection, type Tree } from "./collection.js";
import { KNOWN, TAG } from "./identifiers.js";
import type { PqdifChannelDefinition, PqdifDataSource, PqdifSeriesDefinition } from "./model.js";

/** Stands for a storage method that cannot be read, so that its series are not. */
export const UNREADABLE_STORAGE = -1;

/** A data source record: who measured, and what the channels of the following observations are. @throws Damage */
export async function dataSourceOf(tree: Tree): Promise<PqdifDataSource> {
  const root = await Collection.at(tree, 0);
  const channels: PqdifChannelDefinition[] = [];
  for (const channel of await root.children(TAG.ChannelDefns, TAG.OneChannelDefn)) {
    // One that cannot be read keeps its index, since observations count them.
    channels.push(channel === undefined ? NO_CHANNEL : await channelOf(channel));
  }
  if (channels.length === 0) tree.warnings.add(root.byte, say`a data source defines no channel that can be read`);
  return {
    byte: root.byte,
    name: (await root.text(TAG.NameDS)) ?? "",
    channels,
    ...defined("serialNumber", await root.text(TAG.SerialNumberDS)),
    ...defined("timeZone", await root.text(TAG.TimeZoneDS)),
    ...defined("utcToStandardS", await root.number(TAG.UTCtoLST)),
    ...defined("standardToLocalS", await root.number(TAG.LSTtoLocal)),
  };
}

const NO_CHANNEL: PqdifChannelDefinition = { name: "", phase: 0, quantityType: "", series: [] };

async function channelOf(channel: Collection): Promise<PqdifChannelDefinition> {
  const series: PqdifSeriesDefinition[] = [];
  for (const one of await channel.children(TAG.SeriesDefns, TAG.OneSeriesDefn)) {
    series.push(one === undefined ? NO_SERIES : await seriesOf(one));
  }
  return {
    name: (await channel.text(TAG.ChannelName)) ?? "",
    phase: (await channel.number(TAG.PhaseID)) ?? 0,
    quantityType: (await channel.guid(TAG.QuantityTypeID, KNOWN.quantityTypes)) ?? "",
    series,
    ...defined("quantityMeasured", await channel.number(TAG.QuantityMeasuredID)),
    ...defined("group", await channel.text(TAG.GroupName)),
  };
}

const NO_SERIES: PqdifSeriesDefinition = { valueType: "", units: 0, storage: UNREADABLE_STORAGE };

async function seriesOf(series: Collection): Promise<PqdifSeriesDefinition> {
  return {
    valueType: (await series.guid(TAG.ValueTypeID, KNOWN.valueTypes)) ?? "",
    units: (await series.number(TAG.QuantityUnitsID)) ?? 0,
    storage: (await series.number(TAG.StorageMethodID)) ?? (series.has(TAG.StorageMethodID) ? UNREADABLE_STORAGE : 1),
    ...defined("characteristic", await series.guid(TAG.QuantityCharacteristicID, KNOWN.characteristics)),
    ...defined("nominal", await series.number(TAG.SeriesNominalQuantity)),
    ...defined("percentile", await series.number(TAG.ProbPercentile)),
    ...defined("probabilityIntervalS", await series.number(TAG.ProbInterval)),
    ...defined("resolution", await series.number(TAG.QuantityResolutionID)),
  };
}

/** { [name]: value }, or nothing to spread where the value is undefined. */
export function defined<K extends string, V>(name: K, value: V | undefined): { [P in K]?: V } {
  return (value === undefined ? {} : { [name]: value }) as { [P in K]?: V };
}
