import type { Instant } from "../../recording/time.js";
import { Collection, type Tree } from "./collection.js";
import { defined } from "./data-source.js";
import { TAG } from "./identifiers.js";
import type { PqdifSettings } from "./model.js";

/** A record of monitor settings. @throws Damage */
export async function settingsOf(tree: Tree): Promise<PqdifSettings> {
  const root = await Collection.at(tree, 0);
  const channels: PqdifSettings["channels"][number][] = [];
  for (const one of await root.children(TAG.ChannelSettingsArray, TAG.OneChannelSetting)) {
    const definition = await one?.number(TAG.ChannelDefnIdx);
    if (one === undefined || definition === undefined) continue;
    channels.push({
      definition,
      ...defined("systemSideRatio", await one.number(TAG.XDSystemSideRatio)),
      ...defined("monitorSideRatio", await one.number(TAG.XDMonitorSideRatio)),
      ...defined("calibrationOffset", await one.number(TAG.CalOffset)),
      ...defined("calibrationRatio", await one.number(TAG.CalRatio)),
      ...defined("timeSkewS", await one.number(TAG.CalTimeSkew)),
      ...defined("triggerLow", await one.number(TAG.TriggerLow)),
      ...defined("triggerHigh", await one.number(TAG.TriggerHigh)),
    });
  }
  return {
    byte: root.byte,
    useTransducer: ((await root.number(TAG.UseTransducer)) ?? 0) !== 0,
    useCalibration: ((await root.number(TAG.UseCalibration)) ?? 0) !== 0,
    channels,
    ...defined("effective", await root.instant(TAG.Effective)),
    ...defined("nominalFrequency", await root.number(TAG.NominalFrequency)),
    ...defined("connection", await root.number(TAG.SettingPhysicalConnection)),
  };
}

/**
 * The settings in force at a time: the latest in the file that are effective by then. Some files carry the time of the export
 * as that from which they are effective; where none are yet, the latest in the file are taken.
 * @param preceding the settings between data source and observation, in file order
 */
export function settingsInForce(preceding: readonly PqdifSettings[], at: Instant): PqdifSettings | undefined {
  return preceding.findLast(({ effective }) => effective === undefined || effective <= at) ?? preceding.at(-1);
}
