import { CHARACTERISTIC as C } from "../../../src/formats/pqdif/characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import type {
  PqdifChannel,
  PqdifChannelDefinition,
  PqdifCharacteristics,
  PqdifDataSource,
  PqdifFile,
  PqdifObservation,
  PqdifSeriesDefinition,
  PqdifSettings,
  PqdifWarning,
} from "../../../src/formats/pqdif/model.js";
import type { Instant } from "../../../src/recording/time.js";

/** PQDIF files in memory, as the logical layer hands them over: what the mapping is tested with. */

export interface MadeSeries extends Partial<PqdifSeriesDefinition> {
  readonly valueType: string;
  readonly values: ArrayLike<number>;
  readonly base?: number;
}

export interface MadeChannel {
  readonly name?: string;
  readonly phase?: number;
  readonly quantityType?: string;
  readonly measured?: number | undefined;
  readonly order?: number;
  readonly hertz?: number;
  readonly characteristics?: PqdifCharacteristics;
  readonly series: readonly MadeSeries[];
}

export interface MadeObservation {
  readonly start: Instant;
  readonly name?: string;
  readonly triggered?: Instant;
  readonly method?: number;
  readonly triggerChannels?: readonly number[];
  readonly disturbance?: string;
  readonly characteristics?: PqdifCharacteristics;
  readonly settings?: Partial<PqdifSettings>;
  readonly channels: readonly MadeChannel[];
}

export interface MadeOptions {
  readonly name?: string;
  readonly source?: Partial<PqdifDataSource>;
  /** Channels that are defined and in no observation. */
  readonly unused?: readonly MadeChannel[];
  readonly warnings?: readonly PqdifWarning[];
}

function definitionOf(channel: MadeChannel): PqdifChannelDefinition {
  const { name = "channel", phase = 1, quantityType = QUANTITY_TYPE.VALUELOG, series } = channel;
  const measured = "measured" in channel ? channel.measured : 1;
  return {
    name,
    phase,
    quantityType,
    ...(measured !== undefined && { quantityMeasured: measured }),
    series: series.map(({ values: _, base: _base, ...own }) => ({ units: 6, storage: 1, ...own })),
  };
}

/** A file of these observations, all of one data source. */
export function madeFile(observations: readonly MadeObservation[], options: MadeOptions = {}): PqdifFile {
  const definitions: PqdifChannelDefinition[] = [];
  const indexOf = (channel: MadeChannel) => {
    const own = definitionOf(channel);
    const known = definitions.findIndex((d) => JSON.stringify(d) === JSON.stringify(own));
    return known >= 0 ? known : definitions.push(own) - 1;
  };
  for (const channel of [...observations.flatMap((o) => o.channels), ...(options.unused ?? [])]) indexOf(channel);
  const source: PqdifDataSource = { byte: 100, name: "recorder", channels: definitions, ...options.source };
  return {
    file: options.name ?? "log.pqd",
    container: { version: [1, 5, 1, 5], compression: "none" },
    warnings: options.warnings ?? [],
    observations: observations.map((o, n) => observationOf(o, n, source, (channel) => indexOf(channel))),
  };
}

function observationOf(
  made: MadeObservation,
  n: number,
  source: PqdifDataSource,
  indexOf: (channel: MadeChannel) => number,
): PqdifObservation {
  const { start, name = `observation ${n + 1}`, channels, triggered, method = 2, disturbance, settings } = made;
  return {
    byte: 1000 * (n + 1),
    name,
    source,
    start,
    triggerMethod: method,
    triggerChannels: made.triggerChannels ?? [],
    characteristics: made.characteristics ?? {},
    ...(triggered !== undefined && { triggered }),
    ...(disturbance !== undefined && { disturbance }),
    ...(settings !== undefined && {
      settings: { byte: 500, useTransducer: false, useCalibration: false, channels: [], ...settings },
    }),
    channels: channels.map((channel): PqdifChannel => {
      const definitionIndex = indexOf(channel);
      return {
        byte: 1000 * (n + 1) + 10,
        definition: source.channels[definitionIndex] as PqdifChannelDefinition,
        definitionIndex,
        ...(channel.order !== undefined && { group: channel.order }),
        ...(channel.hertz !== undefined && { frequency: channel.hertz }),
        characteristics: channel.characteristics ?? {},
        series: channel.series.map(({ values, base }) => ({
          byte: 1,
          count: values.length,
          ...(base !== undefined && { base }),
        })),
      };
    }),
    open: async () => ({
      values: async (c, s, from, to) =>
        Float64Array.from((channels[c] as MadeChannel).series[s]?.values ?? []).slice(from, to),
    }),
  };
}

/** A series of times in seconds after the start of the observation: one each interval, the first at 0. */
export function times(rows: number, intervalS = 600, firstS = 0): MadeSeries {
  const values = Array.from({ length: rows }, (_, i) => firstS + i * intervalS);
  return { valueType: VALUE_TYPE.TIME, units: 2, characteristic: C.NONE, values };
}

type Parts = Partial<Omit<MadeChannel, "series">> & {
  readonly units?: number;
  readonly characteristic?: string;
  readonly times?: MadeSeries;
  readonly min?: ArrayLike<number>;
  readonly max?: ArrayLike<number>;
};

/** A log of means (AVG) with its times, and extremes where they are given. */
export function logOf(values: ArrayLike<number>, parts: Parts = {}): MadeChannel {
  const { units = 6, characteristic = C.RMS, times: own = times(values.length), min, max, ...channel } = parts;
  const series = (valueType: string, of: ArrayLike<number>): MadeSeries => ({
    valueType,
    units,
    characteristic,
    values: of,
  });
  return {
    ...channel,
    series: [
      own,
      ...(min === undefined ? [] : [series(VALUE_TYPE.MIN, min)]),
      ...(max === undefined ? [] : [series(VALUE_TYPE.MAX, max)]),
      series(VALUE_TYPE.AVG, values),
    ],
  };
}

/** Points on the wave with their times. */
export function samplesOf(values: ArrayLike<number>, rate: number, parts: Parts = {}): MadeChannel {
  const { units = 6, characteristic = C.INSTANTANEOUS, times: own, ...channel } = parts;
  const seconds = Float64Array.from({ length: values.length }, (_, i) => i / rate);
  return {
    quantityType: QUANTITY_TYPE.WAVEFORM,
    ...channel,
    series: [
      own ?? { valueType: VALUE_TYPE.TIME, units: 2, characteristic: C.NONE, values: seconds },
      { valueType: VALUE_TYPE.VAL, units, characteristic, values },
    ],
  };
}
