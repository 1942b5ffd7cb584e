import { UsageError } from "../../errors.js";
import type { Phase } from "../../recording/quantity.js";
import { say, strung, type Text } from "../../sentence.js";
import { channelText, type NamedChannel } from "./channel-entries.js";

/** What a channel is taken for; without `meaning` it is left out and `reason` says why. */
export interface ChannelUse {
  readonly channel: NamedChannel;
  readonly meaning?: { readonly quantity: "voltage" | "current"; readonly phase: Phase };
  /** The setup says what it is, so that the samples need not show it. */
  readonly stated: boolean;
  readonly reason: Text;
}

/** Channels that a message names. */
const SHOWN = 3;

/**
 * Leaves out channels that are taken for the same quantity on the same phase: which of several feeders or busbars is
 * meant cannot be guessed. One that the setup names goes before the others.
 * @throws UsageError where the setup names two
 */
export function withoutDoubles<Use extends ChannelUse>(file: string, uses: readonly Use[]): Use[] {
  const places = new Map<string, { readonly place: Text; readonly all: Use[] }>();
  for (const use of uses) {
    if (use.meaning === undefined) continue;
    const { quantity, phase } = use.meaning;
    const place = quantity === "voltage" ? say`voltage ${phase}` : say`current ${phase}`;
    const known = places.get(String(place));
    if (known === undefined) places.set(String(place), { place, all: [use] });
    else known.all.push(use);
  }
  const left = new Map<Use, Text>();
  for (const { place, all } of places.values()) {
    if (all.length < 2) continue;
    const [one, other] = all.filter(({ stated }) => stated);
    if (one !== undefined && other !== undefined) {
      throw new UsageError(
        `the setup takes both ${channelText(one.channel)} and ${channelText(other.channel)} of ${file} for ${place}; keep one of them`,
      );
    }
    for (const use of all) {
      if (use === one) continue;
      const rivals = all.slice(0, SHOWN + 1).filter((u) => u !== use);
      const names = rivals.slice(0, SHOWN).map((u) => channelText(u.channel));
      const listed = strung(names, ", ");
      const shown = all.length > SHOWN + 1 ? say`${listed} and others` : listed;
      left.set(
        use,
        one === undefined
          ? say`it is ${place} like ${shown}; say in the setup, under channels:, which of them is to be used`
          : say`the setup uses ${channelText(one.channel)} as ${place}`,
      );
    }
  }
  return uses.map((use) => {
    const reason = left.get(use);
    return reason === undefined ? use : leftOut(use, reason);
  });
}

/** The same channel, not used. */
export function leftOut<Use extends ChannelUse>(use: Use, reason: Text): Use {
  const { meaning: _, ...rest } = use;
  return { ...rest, stated: false, reason } as Use;
}
