import { QUANTITY_TYPE, VALUE_TYPE } from "./identifiers.js";
import type {
  PqdifChannel,
  PqdifChannelDefinition,
  PqdifFile,
  PqdifObservation,
  PqdifSeriesDefinition,
} from "./model.js";

/** A series of a channel as it occurs in the observations of a file: what a column is in a table. */
export interface Field {
  readonly file: string;
  /** 1-based, over all fields of the file in the order of their definitions. */
  readonly position: number;
  /** Unlike those of other fields, unless the file gives two channels one name. */
  readonly header: string;
  /** Name of the channel. */
  readonly channel: string;
  readonly definition: PqdifChannelDefinition;
  readonly series: PqdifSeriesDefinition;
  readonly seriesIndex: number;
  readonly group?: number;
  readonly frequency?: number;
  /** Points on the wave. */
  readonly sampled: boolean;
  /** False: defined, but in no observation. */
  readonly present: boolean;
  /** In force where it occurs first. */
  readonly nominalFrequency?: number;
}

export interface Fields {
  readonly all: readonly Field[];
  /** The field of a series of a channel of an observation; undefined for times. */
  of(channel: PqdifChannel, series: number): Field | undefined;
}

interface Draft {
  readonly definition: PqdifChannelDefinition;
  readonly definitionIndex: number;
  readonly group?: number;
  readonly frequency?: number;
  readonly nominalFrequency?: number;
  readonly present: boolean;
}

const WORDS: Readonly<Record<string, string>> = {
  [VALUE_TYPE.AVG]: "mean",
  [VALUE_TYPE.MIN]: "minimum",
  [VALUE_TYPE.MAX]: "maximum",
  [VALUE_TYPE.VAL]: "value",
};

/** All fields of a file. Equal definitions, as of a data source that is repeated, are one. */
export function fieldsOf(file: PqdifFile): Fields {
  const keys = new Map<PqdifChannelDefinition, string>();
  const drafts = new Map<string, Draft>();
  const keyOf = (definition: PqdifChannelDefinition, index: number, channel?: PqdifChannel) => {
    const own = keys.get(definition) ?? `${index} ${JSON.stringify(definition)}`;
    keys.set(definition, own);
    return `${own} ${channel?.group} ${channel?.frequency}`;
  };
  for (const observation of file.observations) {
    for (const channel of observation.channels) {
      const key = keyOf(channel.definition, channel.definitionIndex, channel);
      if (!drafts.has(key)) drafts.set(key, draftOf(channel, observation));
    }
  }
  const used = new Set(
    [...drafts.values()].map(({ definition, definitionIndex }) => keyOf(definition, definitionIndex)),
  );
  for (const source of new Set(file.observations.map((o) => o.source))) {
    source.channels.forEach((definition, definitionIndex) => {
      const key = keyOf(definition, definitionIndex);
      if (!used.has(key)) drafts.set(key, { definition, definitionIndex, present: false });
    });
  }
  const order = ({ group, frequency }: Draft) => group ?? frequency ?? 0;
  const sorted = [...drafts].sort(([, a], [, b]) => a.definitionIndex - b.definitionIndex || order(a) - order(b));
  const all: Field[] = [];
  const byKey = new Map(
    sorted.map(([key, draft]) => {
      const own = draft.definition.series.map((_, s) => field(file.file, draft, s, all));
      return [key, own] as const;
    }),
  );
  return {
    all,
    of: (channel, series) => byKey.get(keyOf(channel.definition, channel.definitionIndex, channel))?.[series],
  };
}

function draftOf(
  { definition, definitionIndex, group, frequency }: PqdifChannel,
  { settings }: PqdifObservation,
): Draft {
  const nominalFrequency = settings?.nominalFrequency;
  return {
    definition,
    definitionIndex,
    ...(group !== undefined && { group }),
    ...(frequency !== undefined && { frequency }),
    ...(nominalFrequency !== undefined && { nominalFrequency }),
    present: true,
  };
}

/** Adds the field of a series to the list; times are no fields. */
function field(file: string, draft: Draft, seriesIndex: number, all: Field[]): Field | undefined {
  const { definition, definitionIndex, ...rest } = draft;
  const series = definition.series[seriesIndex] as PqdifSeriesDefinition;
  if (series.valueType === VALUE_TYPE.TIME) return undefined;
  const sampled = definition.quantityType === QUANTITY_TYPE.WAVEFORM;
  const channel = definition.name.trim() === "" ? `channel ${definitionIndex + 1}` : definition.name.trim();
  const which =
    draft.group !== undefined
      ? `, order ${draft.group}`
      : draft.frequency === undefined
        ? ""
        : `, ${draft.frequency} Hz`;
  const alone = definition.series.filter((s) => s.valueType === series.valueType).length === 1;
  const word = WORDS[series.valueType] ?? "series";
  const statistic = sampled && alone ? "" : `, ${word}${alone ? "" : ` ${seriesIndex + 1}`}`;
  const made: Field = {
    ...rest,
    file,
    position: all.length + 1,
    header: `${channel}${which}${statistic}`,
    channel,
    definition,
    series,
    seriesIndex,
    sampled,
  };
  all.push(made);
  return made;
}
