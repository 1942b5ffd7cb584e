import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase } from "../../recording/quantity.js";
import type { WaveformChannel } from "../../recording/waveform.js";
import type { ChainSetup } from "./phenomenon.js";

/** Some channels of the recording that events are looked for in together. */
export interface ChannelGroup {
  /** Indices into the arrays of the chain. */
  readonly indices: readonly number[];
  readonly channels: readonly WaveformChannel[];
}

/** The voltages of the connection; where they were not recorded, those of the other kind. The neutral is no supply. */
export function supplyVoltages({ channels, connection }: ChainSetup): ChannelGroup {
  const kinds: readonly (readonly Phase[])[] =
    connection === "delta" ? [PHASE_TO_PHASE, PHASE_TO_NEUTRAL] : [PHASE_TO_NEUTRAL, PHASE_TO_PHASE];
  const groups = kinds.map((phases) => groupOf(channels, "voltage", phases));
  return groups.find((g) => g.indices.length > 0) ?? { indices: [], channels: [] };
}

export function phaseCurrents({ channels }: ChainSetup): ChannelGroup {
  return groupOf(channels, "current", PHASE_TO_NEUTRAL);
}

function groupOf(
  channels: readonly WaveformChannel[],
  quantity: WaveformChannel["quantity"],
  phases: readonly Phase[],
): ChannelGroup {
  const indices = [...channels.keys()].filter((i) => {
    const channel = channels[i] as WaveformChannel;
    return channel.quantity === quantity && phases.includes(channel.phase);
  });
  return { indices, channels: indices.map((i) => channels[i] as WaveformChannel) };
}
