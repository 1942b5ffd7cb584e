import { UsageError } from "../../errors.js";
import type { ChannelSetup } from "../../recording/setup.js";
import { type Sentence, say } from "../../sentence.js";

/** A channel as the setup and messages name it. */
export interface NamedChannel {
  /** 1-based. */
  readonly position: number;
  readonly name: string;
}

/** How a message names a channel. */
export function channelText({ position, name }: NamedChannel): Sentence {
  return say`channel ${position} ("${name}")`;
}

/**
 * The entry of the setup for each channel that it names, for several lists of channels (one per kind of record).
 * @throws UsageError if an entry names no channel of any list or several of one, if two entries name the same, or if an
 * entry both leaves a channel out and describes it.
 */
export function entriesByChannel<Channel extends NamedChannel>(
  file: string,
  lists: readonly (readonly Channel[])[],
  entries: readonly ChannelSetup[],
): ReadonlyMap<Channel, ChannelSetup> {
  const found = new Map<Channel, ChannelSetup>();
  for (const entry of entries) {
    const channels = lists.flatMap((list) => channelOf(file, list, entry) ?? []);
    const { channel: named, ignore, ...parts } = entry;
    const [first] = channels;
    if (first === undefined) {
      throw new UsageError(
        `the setup names the channel ${JSON.stringify(named)} under channels:, but ${file} has no such channel of samples; write its name exactly as in the log, or give its position`,
      );
    }
    if (ignore && Object.values(parts).some((part) => part !== undefined)) {
      throw new UsageError(
        `the setup leaves ${channelText(first)} of ${file} out with ignore: true and also says what it holds; keep one of the two`,
      );
    }
    for (const channel of channels) {
      if (found.has(channel)) {
        throw new UsageError(
          `the setup has two entries under channels: for ${channelText(channel)} of ${file}; merge them`,
        );
      }
      found.set(channel, entry);
    }
  }
  return found;
}

function channelOf<Channel extends NamedChannel>(
  file: string,
  list: readonly Channel[],
  { channel: named }: ChannelSetup,
): Channel | undefined {
  if (typeof named === "number") return list.find(({ position }) => position === named);
  const [channel, ...others] = list.filter(({ name }) => name.trim() === named.trim());
  if (channel !== undefined && others.length > 0) {
    const positions = [channel, ...others].map(({ position }) => position).join(", ");
    throw new UsageError(
      `the setup names the channel "${named}" under channels:, but ${file} has that name at positions ${positions}; give the position instead`,
    );
  }
  return channel;
}
