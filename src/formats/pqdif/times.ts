import { type Instant, SECOND } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { VALUE_TYPE } from "./identifiers.js";
import type { PqdifChannel, PqdifObservation, PqdifValues } from "./model.js";
import { CYCLES, SECONDS, TIMESTAMP, unitText } from "./units.js";

/** The times of a channel, as stored: `origin` + `seconds[i]`. */
export interface Times {
  readonly origin: Instant;
  readonly seconds: Float64Array;
}

/**
 * The times of a channel of an observation by the unit of its time series: absolute, or seconds or cycles after the start
 * of the observation (IEEE 1159.3). The characteristic of a time series means nothing.
 * @param from, to which of them; all where not given
 * @param nominalFrequency in Hz, for times in cycles; undefined where neither the settings nor the setup state it
 * @returns why there are none, as a sentence
 * @throws LogError where they cannot be read
 */
export async function timesOf(
  observation: PqdifObservation,
  channel: number,
  values: PqdifValues,
  nominalFrequency: number | undefined,
  from?: number,
  to?: number,
): Promise<Times | (Text & object)> {
  const { definition, series } = observation.channels[channel] as PqdifObservation["channels"][number];
  const index = definition.series.findIndex(({ valueType }) => valueType === VALUE_TYPE.TIME);
  if (index < 0) return say`it has no series of times`;
  if ((series[index]?.count ?? 0) === 0) return say`its series of times is empty`;
  const units = definition.series[index]?.units ?? 0;
  const stored = await values.values(channel, index, from, to);
  switch (units) {
    case SECONDS:
      return { origin: observation.start, seconds: stored };
    case TIMESTAMP: {
      const origin = observation.start;
      return { origin, seconds: stored.map((t) => (t - origin) / SECOND) };
    }
    case CYCLES:
      if (nominalFrequency === undefined) {
        return say`its times are in cycles, and the file states no nominal frequency; give nominalFrequency in the setup`;
      }
      return { origin: observation.start, seconds: stored.map((cycles) => cycles / nominalFrequency) };
    default:
      return say`its times have the unit ${unitText(units)}, which is no time`;
  }
}

/** How many times a channel has. */
export function timesIn({ definition, series }: PqdifChannel): number {
  return series[definition.series.findIndex(({ valueType }) => valueType === VALUE_TYPE.TIME)]?.count ?? 0;
}

export function stampsOf({ origin, seconds }: Times): Float64Array {
  return seconds.map((s) => origin + Math.round(s * SECOND));
}
