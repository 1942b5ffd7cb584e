import type { Instant } from "../../recording/time.js";
import { DATA_SOURCE_TYPE, TAG } from "./identifiers.js";
import type { PqdifCharacteristics } from "./model.js";
import { CHAR1, GUID, TIMESTAMP, typeNumber, UNS_INTEGER4 } from "./physical-types.js";
import type { WrittenElement } from "./write-body.js";
import type {
  WrittenChannelDefinition,
  WrittenContainer,
  WrittenDataSource,
  WrittenObservation,
  WrittenSeries,
  WrittenSettings,
} from "./write-description.js";

/** The elements of each record, in the order of the headers; those that the standard requires are always there. */

const REAL8 = typeNumber("REAL8");
const BOOLEAN4 = typeNumber("BOOLEAN4");
const INTEGER2 = typeNumber("INTEGER2");

export function containerElements(
  { creation, notes, fileName }: WrittenContainer,
  compressed: boolean,
): WrittenElement[] {
  return [
    { tag: TAG.VersionInfo, type: UNS_INTEGER4, vector: [1, 5, 1, 5] },
    { tag: TAG.FileName, type: CHAR1, vector: fileName },
    { tag: TAG.Creation, type: TIMESTAMP, scalar: creation },
    ...text(TAG.Notes, notes),
    ...(compressed ? [...count(TAG.CompressionStyleID, 2), ...count(TAG.CompressionAlgorithmID, 1)] : []),
  ];
}

export function dataSourceElements(source: WrittenDataSource): WrittenElement[] {
  return [
    { tag: TAG.DataSourceTypeID, type: GUID, scalar: source.type ?? DATA_SOURCE_TYPE.MEASURE },
    ...text(TAG.NameDS, source.name),
    ...text(TAG.SerialNumberDS, source.serialNumber),
    ...text(TAG.TimeZoneDS, source.timeZone),
    ...real(TAG.UTCtoLST, source.utcToStandardS),
    ...real(TAG.LSTtoLocal, source.standardToLocalS),
    { tag: TAG.Effective, type: TIMESTAMP, scalar: source.effective },
    { tag: TAG.ChannelDefns, collection: source.channels.map(channelDefinition) },
  ];
}

function channelDefinition(channel: WrittenChannelDefinition): WrittenElement {
  const series = channel.series.map((one) => ({
    tag: TAG.OneSeriesDefn,
    collection: [
      ...guid(TAG.ValueTypeID, one.valueType),
      ...count(TAG.QuantityUnitsID, one.units),
      ...guid(TAG.QuantityCharacteristicID, one.characteristic),
      ...count(TAG.StorageMethodID, one.storage),
      ...real(TAG.SeriesNominalQuantity, one.nominal),
      ...real(TAG.ProbPercentile, one.percentile),
      ...real(TAG.ProbInterval, one.probabilityIntervalS),
      ...real(TAG.QuantityResolutionID, one.resolution),
    ],
  }));
  return {
    tag: TAG.OneChannelDefn,
    collection: [
      ...text(TAG.ChannelName, channel.name),
      ...count(TAG.PhaseID, channel.phase),
      ...guid(TAG.QuantityTypeID, channel.quantityType),
      ...count(TAG.QuantityMeasuredID, channel.quantityMeasured),
      ...text(TAG.GroupName, channel.group),
      { tag: TAG.SeriesDefns, collection: series },
    ],
  };
}

export function settingsElements(settings: WrittenSettings): WrittenElement[] {
  const channels = settings.channels.map((one) => ({
    tag: TAG.OneChannelSetting,
    collection: [
      ...count(TAG.ChannelDefnIdx, one.definition),
      ...real(TAG.XDSystemSideRatio, one.systemSideRatio),
      ...real(TAG.XDMonitorSideRatio, one.monitorSideRatio),
      ...real(TAG.CalOffset, one.calibrationOffset),
      ...real(TAG.CalRatio, one.calibrationRatio),
      ...real(TAG.CalTimeSkew, one.timeSkewS),
      ...real(TAG.TriggerLow, one.triggerLow),
      ...real(TAG.TriggerHigh, one.triggerHigh),
    ],
  }));
  return [
    ...instant(TAG.Effective, settings.effective),
    ...instant(TAG.TimeInstalled, settings.effective),
    { tag: TAG.UseCalibration, type: BOOLEAN4, scalar: settings.useCalibration ? 1 : 0 },
    { tag: TAG.UseTransducer, type: BOOLEAN4, scalar: settings.useTransducer ? 1 : 0 },
    ...real(TAG.NominalFrequency, settings.nominalFrequency),
    ...count(TAG.SettingPhysicalConnection, settings.connection),
    { tag: TAG.ChannelSettingsArray, collection: channels },
  ];
}

export function observationElements(observation: WrittenObservation): WrittenElement[] {
  const { triggerChannels = [] } = observation;
  const channels = observation.channels.map((channel) => ({
    tag: TAG.OneChannelInst,
    collection: [
      ...count(TAG.ChannelDefnIdx, channel.definition),
      ...(channel.group === undefined ? [] : [{ tag: TAG.ChannelGroupID, type: INTEGER2, scalar: channel.group }]),
      ...real(TAG.ChannelFrequency, channel.frequency),
      ...characteristics(channel.characteristics),
      { tag: TAG.SeriesInstances, collection: channel.series.map(seriesInstance) },
    ],
  }));
  return [
    ...text(TAG.ObservationName, observation.name),
    ...instant(TAG.TimeCreate, observation.created ?? observation.start),
    ...instant(TAG.TimeStart, observation.start),
    ...count(TAG.TriggerMethodID, observation.triggerMethod ?? 0),
    ...instant(TAG.TimeTriggered, observation.triggered),
    ...(triggerChannels.length === 0
      ? []
      : [{ tag: TAG.ChannelTriggerIdx, type: UNS_INTEGER4, vector: triggerChannels }]),
    ...guid(TAG.DisturbanceCategoryID, observation.disturbance),
    ...characteristics(observation.characteristics),
    { tag: TAG.ChannelInstances, collection: channels },
  ];
}

function seriesInstance(series: WrittenSeries): WrittenElement {
  return {
    tag: TAG.OneSeriesInstance,
    collection: [
      ...real(TAG.SeriesBaseQuantity, series.base),
      ...real(TAG.SeriesScale, series.scale),
      ...real(TAG.SeriesOffset, series.offset),
      ...values(series),
    ],
  };
}

function values(series: WrittenSeries): WrittenElement[] {
  if ("share" in series) {
    const { channel, series: index } = series.share;
    return [...count(TAG.SeriesShareChannelIdx, channel), ...count(TAG.SeriesShareSeriesIdx, index)];
  }
  const type = typeNumber(series.type);
  if ("steps" in series) {
    return [{ tag: TAG.SeriesValues, type, vector: [series.steps.length, ...series.steps.flat()] }];
  }
  return [{ tag: TAG.SeriesValues, type, vector: stored(series) }];
}

type ValuedSeries = Extract<WrittenSeries, { values: ArrayLike<number> }>;

/** What stands in the vector: whole numbers are rounded. @throws RangeError where the type cannot hold one */
function stored({ type, values, scale = 1, offset = 0 }: ValuedSeries): ArrayLike<number> {
  const range = WHOLE[type];
  if (range === undefined && scale === 1 && offset === 0) return values;
  const numbers = new Float64Array(values.length);
  for (let i = 0; i < numbers.length; i++) {
    const number = ((values[i] as number) - offset) / scale;
    const item = range === undefined ? number : Math.round(number);
    if (range !== undefined && !(item >= range[0] && item <= range[1])) {
      throw new RangeError(`${number} cannot be written as ${type}`);
    }
    numbers[i] = item;
  }
  return numbers;
}

const WHOLE: Readonly<Record<string, readonly [number, number]>> = {
  INTEGER1: [-0x80, 0x7f],
  INTEGER2: [-0x8000, 0x7fff],
  INTEGER4: [-0x80000000, 0x7fffffff],
  UNS_INTEGER1: [0, 0xff],
  UNS_INTEGER2: [0, 0xffff],
  UNS_INTEGER4: [0, 0xffffffff],
};

function characteristics({ magnitude, durationS, frequency }: PqdifCharacteristics = {}): WrittenElement[] {
  return [
    ...real(TAG.CharactMagnitude, magnitude),
    ...real(TAG.CharactDuration, durationS),
    ...real(TAG.CharactFrequency, frequency),
  ];
}

function text(tag: string, value: string | undefined): WrittenElement[] {
  return value === undefined ? [] : [{ tag, type: CHAR1, vector: value }];
}

function scalar(tag: string, type: number, value: number | string | undefined): WrittenElement[] {
  return value === undefined ? [] : [{ tag, type, scalar: value }];
}

const count = (tag: string, value: number | undefined) => scalar(tag, UNS_INTEGER4, value);
const real = (tag: string, value: number | undefined) => scalar(tag, REAL8, value);
const guid = (tag: string, value: string | undefined) => scalar(tag, GUID, value);
const instant = (tag: string, value: Instant | undefined) => scalar(tag, TIMESTAMP, value);
