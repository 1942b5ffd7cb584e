import type { Progress } from "../../recording/log-file.js";
import type { ColumnReading } from "../../recording/recording.js";
import type { ChannelSetup, GivenSetup } from "../../recording/setup.js";
import type { TimeZone } from "../../recording/time-zone.js";
import { say, strung, type Text } from "../../sentence.js";
import { leftOut, withoutDoubles } from "../waveform/doubles.js";
import type { Part } from "../waveform/join.js";
import { notAlternating } from "./alternation.js";
import type { AnalogChannel } from "./channel-lines.js";
import type { FileRemark } from "./file-remark.js";
import { primarySide } from "./primary-side.js";
import { type ChannelUse, recogniseChannels } from "./recognise-channels.js";
import { type ComtradeRecord, firstInstant, type RecordStretch, stretchStart } from "./record.js";
import { readRuns } from "./rows.js";

/** Records with the same channels; at least one. */
export type ChannelGroup = readonly [ComtradeRecord, ...ComtradeRecord[]];

/** Nominal frequencies outside are taken for garbled. Common practice, no source: 16.7 Hz railways to 400 Hz ships. */
const [LOWEST_NOMINAL, HIGHEST_NOMINAL] = [10, 400];

/** Records by their list of channels (names, phase fields, units, skews), in the order of their first record. */
export function groupByChannels(records: readonly ComtradeRecord[]): ChannelGroup[] {
  const groups = new Map<string, [ComtradeRecord, ...ComtradeRecord[]]>();
  for (const record of records) {
    const { analog } = record.store.configuration;
    const key = JSON.stringify(analog.map(({ name, phase, unit, skew }) => [name, phase, unit, skew]));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [record]);
    else group.push(record);
  }
  return [...groups.values()];
}

/**
 * What the channels of one group are taken for, and its stretches as parts with the channels that are used. Left out
 * are channels that their name, unit or samples show to be no phase voltage or current, and stretches sampled at less
 * than twice the nominal frequency.
 */
export async function readGroup(
  group: ChannelGroup,
  entries: ReadonlyMap<AnalogChannel, ChannelSetup>,
  setup: GivenSetup,
  zone: TimeZone,
  blockBytes: number,
  progress: Progress | undefined,
): Promise<{ parts: Part[]; columns: ColumnReading[]; remarks: FileRemark[] }> {
  const { file, analog } = group[0].store.configuration;
  const { fast, slow } = byRate(group, setup);
  const recognised = recogniseChannels(file, analog, entries);
  const waving = await withoutStill(recognised, fast, slow, blockBytes, progress);
  const uses = withoutDoubles(file, waving);
  const used = uses.filter(({ meaning }) => meaning !== undefined);
  const parts: Part[] = [];
  const remarks: FileRemark[] = fast.length === 0 ? [] : slow.map(slowRemark);
  for (const record of group) {
    const first = firstInstant(record.store.configuration, zone);
    const reading = used.map((use) => readingOf(use, record, setup));
    const read = reading.map((r) => r.read);
    const { file: name, stampLine } = record.store.configuration;
    remarks.push(...first.remarks, ...reading.flatMap((r) => r.remarks));
    for (const { stretch } of fast.filter((f) => f.record === record)) {
      if (used.length === 0) continue;
      parts.push({
        file: name,
        place: `line ${stampLine}`,
        start: stretchStart(first.at, stretch),
        length: stretch.length,
        samplesPerSecond: stretch.samplesPerSecond,
        channels: reading.map(({ channel }) => channel),
        blocks: () => readRuns(record.store, stretch.runs, read, blockBytes),
      });
    }
  }
  const columns = uses.map((use) => columnOf(file, use, primarySide(use, setup).note));
  return { parts, columns, remarks };
}

interface Stretch {
  readonly record: ComtradeRecord;
  readonly stretch: RecordStretch;
  readonly nominal: number;
}

function byRate(group: ChannelGroup, setup: GivenSetup): { fast: Stretch[]; slow: Stretch[] } {
  const all = group.flatMap((record) => {
    const stated = record.store.configuration.nominalFrequency ?? 50;
    const sound = stated >= LOWEST_NOMINAL && stated <= HIGHEST_NOMINAL ? stated : 50;
    const nominal = setup.nominalFrequency ?? sound;
    return record.stretches.map((stretch) => ({ record, stretch, nominal }));
  });
  const isFast = ({ stretch, nominal }: Stretch) => stretch.samplesPerSecond >= 2 * nominal;
  return { fast: all.filter(isFast), slow: all.filter((s) => !isFast(s)) };
}

function slowRemark({ record, stretch, nominal }: Stretch): FileRemark {
  return {
    file: record.store.configuration.file,
    text: say`${stretch.length} samples at ${stretch.samplesPerSecond} per second are left out, too few for a waveform of ${nominal} Hz.`,
  };
}

async function withoutStill(
  uses: readonly ChannelUse[],
  fast: readonly Stretch[],
  slow: readonly Stretch[],
  blockBytes: number,
  progress: Progress | undefined,
): Promise<ChannelUse[]> {
  const [first] = slow;
  if (fast.length === 0 && first !== undefined) {
    const reason = say`sampled ${first.stretch.samplesPerSecond} times a second, so it is no waveform of ${first.nominal} Hz`;
    return uses.map((use) => (use.meaning === undefined ? use : leftOut(use, reason)));
  }
  const sampled = fast.map(({ record, stretch }) => ({ store: record.store, ...stretch }));
  const open = uses.filter(({ meaning, stated }) => meaning !== undefined && !stated);
  const candidates = new Set(open);
  const positions = open.map(({ channel }) => channel.position);
  const still = await notAlternating(sampled, positions, blockBytes, progress);
  return uses.map((use) => {
    const reason = candidates.has(use) ? still.get(use.channel.position) : undefined;
    return reason === undefined ? use : leftOut(use, reason);
  });
}

function readingOf(use: ChannelUse, { store }: ComtradeRecord, setup: GivenSetup) {
  const { file, analog } = store.configuration;
  const own = analog[use.channel.position - 1] ?? use.channel;
  const { factor, note, remark } = primarySide({ ...use, channel: own }, setup);
  const usual = primarySide(use, setup);
  const { quantity, phase } = use.meaning ?? { quantity: "voltage", phase: "L1" };
  const differs = say`"${own.name}" is brought to the primary side by ${note ?? say`× ${factor}`}, unlike in the first file.`;
  return {
    channel: { name: own.name, quantity, phase, skewS: own.skew * 1e-6 },
    read: {
      position: own.position,
      a: own.a * use.scale * factor,
      b: own.b * use.scale * factor,
      min: own.min,
      max: own.max,
    },
    remarks: [...(remark === undefined ? [] : [remark]), ...(factor === usual.factor ? [] : [differs])].map((text) => ({
      file,
      text,
    })),
  };
}

function columnOf(file: string, { channel, meaning, reason }: ChannelUse, note: Text | undefined): ColumnReading {
  const header = [channel.name, channel.phase].filter((text) => text !== "").join(", ");
  const place = { file, position: channel.position, header };
  if (meaning === undefined) return { ...place, reason };
  return {
    ...place,
    meaning: { ...meaning, statistic: "samples", writtenUnit: channel.unit },
    reason: note === undefined ? reason : strung([reason, note], ", "),
  };
}
