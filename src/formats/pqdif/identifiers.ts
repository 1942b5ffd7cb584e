/**
 * Identifiers of PQDIF (IEEE 1159.3) as canonical text in lower case, from the PQDIF working group's specification headers of
 * definition versions 1.5, 1.6 and 1.7; names are those of the headers. Where two public copies of them differ, the one that
 * the headers and real files share is taken, and the entry says so.
 */

import { CHARACTERISTIC } from "./characteristics.js";
import { DISTURBANCE } from "./disturbances.js";

/** The first 16 bytes of every record, and so of the file. */
export const SIGNATURE = "4a111440-e49f-11cf-9900-505144494600";

/** Record types. */
export const RECORD = {
  container: "89738606-f1c3-11cf-9d89-0080c72e70a3",
  dataSource: "89738619-f1c3-11cf-9d89-0080c72e70a3",
  monitorSettings: "b48d858c-f5f5-11cf-9d89-0080c72e70a3",
  observation: "8973861a-f1c3-11cf-9d89-0080c72e70a3",
  blank: "89738618-f1c3-11cf-9d89-0080c72e70a3",
} as const;

/** Tags of elements, without their prefix "tag"; those that are read or written here. */
export const TAG = {
  VersionInfo: "89738607-f1c3-11cf-9d89-0080c72e70a3",
  Creation: "89738609-f1c3-11cf-9d89-0080c72e70a3",
  CompressionStyleID: "8973861b-f1c3-11cf-9d89-0080c72e70a3",
  CompressionAlgorithmID: "8973861c-f1c3-11cf-9d89-0080c72e70a3",
  Notes: "89738617-f1c3-11cf-9d89-0080c72e70a3",
  FileName: "89738608-f1c3-11cf-9d89-0080c72e70a3",
  DataSourceTypeID: "b48d8581-f5f5-11cf-9d89-0080c72e70a3",
  NameDS: "b48d8587-f5f5-11cf-9d89-0080c72e70a3",
  SerialNumberDS: "b48d8585-f5f5-11cf-9d89-0080c72e70a3",
  TimeZoneDS: "b48d858a-f5f5-11cf-9d89-0080c72e70a3",
  UTCtoLST: "6acec12e-43b1-4336-af8f-1dd289e4e168",
  LSTtoLocal: "00b9ec4c-2912-4d9a-b3b5-b2efdb736e28",
  ChannelDefns: "b48d858d-f5f5-11cf-9d89-0080c72e70a3",
  OneChannelDefn: "b48d858e-f5f5-11cf-9d89-0080c72e70a3",
  ChannelName: "b48d8590-f5f5-11cf-9d89-0080c72e70a3",
  PhaseID: "b48d8591-f5f5-11cf-9d89-0080c72e70a3",
  QuantityTypeID: "b48d8592-f5f5-11cf-9d89-0080c72e70a3",
  QuantityMeasuredID: "c690e872-f755-11cf-9d89-0080c72e70a3",
  GroupName: "b48d8594-f5f5-11cf-9d89-0080c72e70a3",
  SeriesDefns: "b48d8598-f5f5-11cf-9d89-0080c72e70a3",
  OneSeriesDefn: "b48d859a-f5f5-11cf-9d89-0080c72e70a3",
  ValueTypeID: "b48d859c-f5f5-11cf-9d89-0080c72e70a3",
  QuantityUnitsID: "b48d859b-f5f5-11cf-9d89-0080c72e70a3",
  QuantityCharacteristicID: "3d786f9e-f76e-11cf-9d89-0080c72e70a3",
  QuantityResolutionID: "fb228ee0-fc8d-11d2-b49a-006008b37183",
  StorageMethodID: "b48d85a1-f5f5-11cf-9d89-0080c72e70a3",
  ProbInterval: "2747d441-2bd0-11d2-ae42-0060083a2628",
  ProbPercentile: "2747d440-2bd0-11d2-ae42-0060083a2628",
  SeriesNominalQuantity: "0fa118c8-cb4a-11d2-b30b-fe25cb9a1760",
  Effective: "62f28183-f9c4-11cf-9d89-0080c72e70a3",
  UseCalibration: "62f28180-f9c4-11cf-9d89-0080c72e70a3",
  UseTransducer: "62f28181-f9c4-11cf-9d89-0080c72e70a3",
  ChannelSettingsArray: "62f28182-f9c4-11cf-9d89-0080c72e70a3",
  NominalFrequency: "0fa118c3-cb4a-11d2-b30b-fe25cb9a1760",
  SettingPhysicalConnection: "9f256ee0-803b-11d3-b92f-0050da2b1f4d",
  OneChannelSetting: "3d786f9a-f76e-11cf-9d89-0080c72e70a3",
  ChannelDefnIdx: "b48d858f-f5f5-11cf-9d89-0080c72e70a3",
  TimeInstalled: "3d786f85-f76e-11cf-9d89-0080c72e70a3",
  XDSystemSideRatio: "62f2818a-f9c4-11cf-9d89-0080c72e70a3",
  XDMonitorSideRatio: "62f2818b-f9c4-11cf-9d89-0080c72e70a3",
  CalTimeSkew: "62f2818d-f9c4-11cf-9d89-0080c72e70a3",
  CalOffset: "62f2818e-f9c4-11cf-9d89-0080c72e70a3",
  CalRatio: "62f2818f-f9c4-11cf-9d89-0080c72e70a3",
  TriggerHigh: "62f28186-f9c4-11cf-9d89-0080c72e70a3",
  TriggerLow: "62f28185-f9c4-11cf-9d89-0080c72e70a3",
  ObservationName: "3d786f8a-f76e-11cf-9d89-0080c72e70a3",
  TimeCreate: "3d786f8b-f76e-11cf-9d89-0080c72e70a3",
  TimeStart: "3d786f8c-f76e-11cf-9d89-0080c72e70a3",
  TriggerMethodID: "3d786f8d-f76e-11cf-9d89-0080c72e70a3",
  TimeTriggered: "3d786f8e-f76e-11cf-9d89-0080c72e70a3",
  ChannelTriggerIdx: "3d786f8f-f76e-11cf-9d89-0080c72e70a3",
  DisturbanceCategoryID: "b48d8597-f5f5-11cf-9d89-0080c72e70a3",
  ChannelInstances: "3d786f91-f76e-11cf-9d89-0080c72e70a3",
  OneChannelInst: "3d786f92-f76e-11cf-9d89-0080c72e70a3",
  CharactDuration: "2747d444-2bd0-11d2-ae42-0060083a2628",
  CharactMagnitude: "2747d443-2bd0-11d2-ae42-0060083a2628",
  CharactFrequency: "2747d445-2bd0-11d2-ae42-0060083a2628",
  ChannelFrequency: "2747d442-2bd0-11d2-ae42-0060083a2628",
  ChannelGroupID: "f90de218-e67b-4cf1-a295-b021a2d46767",
  SeriesInstances: "3d786f93-f76e-11cf-9d89-0080c72e70a3",
  OneSeriesInstance: "3d786f94-f76e-11cf-9d89-0080c72e70a3",
  SeriesBaseQuantity: "3d786f95-f76e-11cf-9d89-0080c72e70a3",
  SeriesScale: "3d786f96-f76e-11cf-9d89-0080c72e70a3",
  SeriesOffset: "3d786f97-f76e-11cf-9d89-0080c72e70a3",
  SeriesShareChannelIdx: "8973861f-f1c3-11cf-9d89-0080c72e70a3",
  SeriesShareSeriesIdx: "89738620-f1c3-11cf-9d89-0080c72e70a3",
  SeriesValues: "3d786f99-f76e-11cf-9d89-0080c72e70a3",
} as const;

/** What kind of table a channel is. */
export const QUANTITY_TYPE = {
  WAVEFORM: "67f6af80-f753-11cf-9d89-0080c72e70a3",
  VALUELOG: "67f6af82-f753-11cf-9d89-0080c72e70a3",
  PHASOR: "67f6af81-f753-11cf-9d89-0080c72e70a3",
  RESPONSE: "67f6af85-f753-11cf-9d89-0080c72e70a3",
  FLASH: "67f6af83-f753-11cf-9d89-0080c72e70a3",
  HISTOGRAM: "67f6af87-f753-11cf-9d89-0080c72e70a3",
  HISTOGRAM3D: "67f6af88-f753-11cf-9d89-0080c72e70a3",
  CPF: "67f6af89-f753-11cf-9d89-0080c72e70a3",
  XY: "67f6af8a-f753-11cf-9d89-0080c72e70a3",
  MAGDUR: "67f6af8b-f753-11cf-9d89-0080c72e70a3",
  XYZ: "67f6af8c-f753-11cf-9d89-0080c72e70a3",
  MAGDURTIME: "67f6af8d-f753-11cf-9d89-0080c72e70a3",
  MAGDURCOUNT: "67f6af8e-f753-11cf-9d89-0080c72e70a3",
} as const;

/** What a series of a channel holds. INST, P1 to P99 and FREQUENCY are of versions before 1.5. PHASEANGLE: one reader has 3d786f9b. */
export const VALUE_TYPE = {
  VAL: "67f6af97-f753-11cf-9d89-0080c72e70a3",
  TIME: "c690e862-f755-11cf-9d89-0080c72e70a3",
  MIN: "67f6af98-f753-11cf-9d89-0080c72e70a3",
  MAX: "67f6af99-f753-11cf-9d89-0080c72e70a3",
  AVG: "67f6af9a-f753-11cf-9d89-0080c72e70a3",
  INST: "67f6af9b-f753-11cf-9d89-0080c72e70a3",
  PHASEANGLE: "3d786f9d-f76e-11cf-9d89-0080c72e70a3",
  PHASEANGLE_MIN: "dc762340-3c56-11d2-ae44-0060083a2628",
  PHASEANGLE_MAX: "dc762341-3c56-11d2-ae44-0060083a2628",
  PHASEANGLE_AVG: "dc762342-3c56-11d2-ae44-0060083a2628",
  AREA: "c7825ce0-8ace-11d3-b92f-0050da2b1f4d",
  LATITUDE: "c690e864-f755-11cf-9d89-0080c72e70a3",
  DURATION: "c690e863-f755-11cf-9d89-0080c72e70a3",
  LONGITUDE: "c690e865-f755-11cf-9d89-0080c72e70a3",
  POLARITY: "c690e866-f755-11cf-9d89-0080c72e70a3",
  ELLIPSE: "c690e867-f755-11cf-9d89-0080c72e70a3",
  BINID: "c690e869-f755-11cf-9d89-0080c72e70a3",
  BINHIGH: "c690e86a-f755-11cf-9d89-0080c72e70a3",
  BINLOW: "c690e86b-f755-11cf-9d89-0080c72e70a3",
  XBINHIGH: "c690e86c-f755-11cf-9d89-0080c72e70a3",
  XBINLOW: "c690e86d-f755-11cf-9d89-0080c72e70a3",
  YBINHIGH: "c690e86e-f755-11cf-9d89-0080c72e70a3",
  YBINLOW: "c690e86f-f755-11cf-9d89-0080c72e70a3",
  COUNT: "c690e870-f755-11cf-9d89-0080c72e70a3",
  TRANSITION: "5369c260-c347-11d2-923f-00104b2b84b1",
  PROB: "6763cc71-17d6-11d4-9f1c-002078e0b723",
  INTERVAL: "72e82a40-336c-11d5-a4b3-444553540000",
  STATUS: "b82b5c82-55c7-11d5-a4b3-444553540000",
  P1: "67f6af9c-f753-11cf-9d89-0080c72e70a3",
  P5: "67f6af9d-f753-11cf-9d89-0080c72e70a3",
  P10: "67f6af9e-f753-11cf-9d89-0080c72e70a3",
  P90: "67f6af9f-f753-11cf-9d89-0080c72e70a3",
  P95: "c690e860-f755-11cf-9d89-0080c72e70a3",
  P99: "c690e861-f755-11cf-9d89-0080c72e70a3",
  FREQUENCY: "c690e868-f755-11cf-9d89-0080c72e70a3",
  RMS: "abaaaa34-6e08-49ae-b522-188cdf6a594c",
} as const;

/** Where the data come from. */
export const DATA_SOURCE_TYPE = {
  MEASURE: "e6b51730-f747-11cf-9d89-0080c72e70a3",
  MANUAL: "e6b51731-f747-11cf-9d89-0080c72e70a3",
  SIMULATE: "e6b51732-f747-11cf-9d89-0080c72e70a3",
  BENCHMARK: "e6b51733-f747-11cf-9d89-0080c72e70a3",
  DEBUG: "e6b51734-f747-11cf-9d89-0080c72e70a3",
} as const;

/** The identifiers that have a name, to tell them from leftover memory. */
export const KNOWN = {
  quantityTypes: new Set<string>(Object.values(QUANTITY_TYPE)),
  valueTypes: new Set<string>(Object.values(VALUE_TYPE)),
  characteristics: new Set<string>(Object.values(CHARACTERISTIC)),
  disturbances: new Set<string>(Object.values(DISTURBANCE)),
} as const;

const TAGS = new Map<string, { readonly name: string; readonly guid: string }>(
  Object.entries(TAG).map(([name, guid]) => [guid, { name: `tag${name}`, guid }]),
);

/** The one text of a tag that is read here, so that millions of entries do not keep their own; empty for others. */
export function knownTag(guid: string): string {
  return TAGS.get(guid)?.guid ?? "";
}

/** A tag as the headers name it. */
export function tagName(guid: string): string {
  return TAGS.get(guid)?.name ?? guid;
}
