import type { ColumnReading, ObservationReading } from "../../recording/recording.js";
import { say, type Text } from "../../sentence.js";
import { categoryOf, triggerText } from "./event-kinds.js";
import { isListOfEvents } from "./events.js";
import type { Field } from "./fields.js";
import type { PqdifObservation } from "./model.js";
import type { Recognised } from "./recognise.js";
import type { SampledField } from "./sampled-fields.js";
import type { WaveformReader } from "./waveforms.js";

/** What the fields of a file turned out to be. */
export interface FieldUses {
  readonly recognised: readonly Recognised[];
  readonly sampled: ReadonlyMap<Field, SampledField>;
  readonly waves: WaveformReader;
  /** Recognised, and left out after all for their values. */
  readonly leftOut: ReadonlyMap<Recognised, Text>;
}

/** An observation for the list: what it holds and what of it is used. */
export function observationReading(
  file: string,
  observation: PqdifObservation,
  { rows, samples, events }: { rows: number; samples: number; events: number },
  toInstant: (stored: number) => number,
): ObservationReading {
  const { name, start, triggered, triggerMethod, disturbance, channels } = observation;
  const longest = Math.max(0, ...channels.flatMap((channel) => channel.series.map(({ count }) => count)));
  const category = categoryOf(disturbance)?.name;
  const use =
    rows > 0 && samples > 0
      ? say`logged values and waveforms`
      : rows > 0
        ? say`logged values`
        : samples > 0
          ? say`waveforms`
          : events > 0
            ? say`an event or a list of events`
            : say`nothing: none of its channels is used, see there`;
  return {
    file,
    name: name.trim(),
    start: toInstant(start),
    ...(triggered !== undefined && { triggered: toInstant(triggered) }),
    trigger: triggerText(triggerMethod),
    ...(category !== undefined && { category }),
    channels: channels.length,
    rows: longest,
    use,
  };
}

/** Every field of a file: what it was taken for, or why it is not used. */
export function columnReadings({ recognised, leftOut, sampled, waves }: FieldUses): ColumnReading[] {
  const logged = recognised.map((one): ColumnReading => {
    const { field, meaning, flag, reason } = one;
    const place = { file: field.file, position: field.position, header: field.header };
    const why = leftOut.get(one);
    if (why !== undefined) return { ...place, reason: why };
    if (meaning === undefined && isListOfEvents(field)) {
      return { ...place, use: "events", reason: say`magnitude or duration of events` };
    }
    return {
      ...place,
      ...(meaning !== undefined && { meaning }),
      ...(flag === true && { use: "flag" as const }),
      reason,
    };
  });
  const channels = [...sampled.values()].map(({ field, meaning, reason }): ColumnReading => {
    const place = { file: field.file, position: field.position, header: field.header, sampled: true as const };
    if (meaning === undefined || !waves.used.has(field)) {
      const problem = waves.problems.get(field) ?? say`it is empty in all observations`;
      return { ...place, reason: meaning === undefined ? reason : problem };
    }
    return {
      ...place,
      meaning: { ...meaning, statistic: "samples", writtenUnit: meaning.quantity === "voltage" ? "V" : "A" },
      reason,
    };
  });
  return [...logged, ...channels].sort((a, b) => a.position - b.position);
}
