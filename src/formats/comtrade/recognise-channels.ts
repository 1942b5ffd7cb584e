import { UsageError } from "../../errors.js";
import type { Phase } from "../../recording/quantity.js";
import type { ChannelSetup } from "../../recording/setup.js";
import { Sentence, say, strung, type Text } from "../../sentence.js";
import { channelText } from "../waveform/channel-entries.js";
import type { ChannelUse as NamedUse } from "../waveform/doubles.js";
import type { AnalogChannel } from "./channel-lines.js";
import { type Designation, readName, readPhaseField } from "./channel-names.js";
import { ConductorNames } from "./conductors.js";
import { type ChannelUnit, readUnit } from "./units.js";

export interface ChannelUse extends NamedUse {
  readonly channel: AnalogChannel;
  /** Volts or amperes per written unit, negative where the channel is inverted. */
  readonly scale: number;
}

/**
 * What the analog channels of one configuration hold, by unit, phase field and name, and by the setup, whose entries
 * override the rest part by part. What contradicts itself or does not say enough is left out with the reason.
 * @param entries the entries of the setup by channel
 * @throws UsageError where an entry of the setup is not enough to use its channel
 */
export function recogniseChannels(
  file: string,
  channels: readonly AnalogChannel[],
  entries: ReadonlyMap<AnalogChannel, ChannelSetup>,
): ChannelUse[] {
  const readings = channels.map((channel) => readChannel(channel));
  const names = new ConductorNames(
    readings.flatMap(({ unit, field, name }) =>
      unit instanceof Sentence ? [] : [...designation(unit, field, true), ...designation(unit, name, false)],
    ),
  );
  return readings.map((reading) => {
    const use = useOf(reading, names, entries.get(reading.channel));
    const entry = entries.get(reading.channel);
    if (entry !== undefined && !entry.ignore && use.meaning === undefined) {
      throw new UsageError(
        `the setup has an entry under channels: for ${channelText(reading.channel)} of ${file}, but it still cannot be used: ${use.reason}; complete the entry (quantity, phase) or take it out`,
      );
    }
    return use;
  });
}

interface Reading {
  readonly channel: AnalogChannel;
  readonly unit: ChannelUnit | Sentence;
  readonly field: Designation;
  readonly name: Designation;
}

function readChannel(channel: AnalogChannel): Reading {
  return {
    channel,
    unit: readUnit(channel.unit),
    field: readPhaseField(channel.phase),
    name: readName(channel.name, channel.unit),
  };
}

function designation(unit: ChannelUnit, said: Designation, own: boolean) {
  return said.kind === "conductors" ? [{ said, quantity: unit.quantity, own }] : [];
}

function useOf(reading: Reading, names: ConductorNames, entry: ChannelSetup | undefined): ChannelUse {
  const { channel, unit } = reading;
  const unused = (reason: Text): ChannelUse => ({ channel, scale: 1, stated: false, reason });
  if (entry?.ignore) return unused(say`the setup leaves it out`);
  const quantity = entry?.quantity ?? (unit instanceof Sentence ? undefined : unit.quantity);
  if (quantity === undefined) return unused(unit instanceof Sentence ? unit : "");
  const stated = entry?.quantity !== undefined || entry?.phase !== undefined;
  if (unit instanceof Sentence ? channel.unit !== "" : unit.quantity !== quantity) {
    return unused(
      unit instanceof Sentence
        ? unit
        : quantity === "current"
          ? say`its unit "${channel.unit}" is not one of current`
          : say`its unit "${channel.unit}" is not one of voltage`,
    );
  }
  const place =
    entry?.phase === undefined ? phaseOf(reading, quantity, names) : { phase: entry.phase, why: say`the setup` };
  if (place instanceof Sentence) return unused(place);
  if (quantity === "current" && place.phase.length === 3) return unused(say`a current between phases is not used`);
  const inverted = (entry?.inverted ?? false) !== (place.reversed ?? false);
  const parts = [
    say`phase by ${place.why}`,
    unit instanceof Sentence
      ? say`no unit stated, taken as ${quantity === "voltage" ? "V" : "A"}`
      : say`unit "${channel.unit}"`,
    ...(place.reversed ? [say`written the other way round, so its sign is turned`] : []),
    ...(entry?.inverted ? [say`inverted by the setup`] : []),
  ];
  const reason = strung(parts, ", ");
  const scale = unit instanceof Sentence ? 1 : unit.scale;
  return { channel, meaning: { quantity, phase: place.phase }, scale: inverted ? -scale : scale, stated, reason };
}

interface Place {
  readonly phase: Phase;
  readonly reversed?: boolean;
  readonly why: Text;
}

/** The phase by field and name; where both speak they must agree. */
function phaseOf({ channel, field, name }: Reading, quantity: string, names: ConductorNames): Place | Sentence {
  if (name.kind === "left-out") return name.reason;
  if (name.kind === "conductors" && name.quantity !== undefined && name.quantity !== quantity) {
    return name.quantity === "current"
      ? say`its name speaks of a current, its unit "${channel.unit}" of a voltage`
      : say`its name speaks of a voltage, its unit "${channel.unit}" of a current`;
  }
  const byField = field.kind === "conductors" ? names.phase(field, quantity, true) : undefined;
  const byName = name.kind === "conductors" ? names.phase(name, quantity, false) : undefined;
  const [inField, inName] = [say`the phase field "${channel.phase}"`, say`the name "${channel.name}"`];
  if (byField === undefined && byName === undefined) {
    return name.kind === "ambiguous"
      ? say`its name speaks of more than one phase`
      : say`neither its name nor its phase field says a phase`;
  }
  if (byField === undefined || byField instanceof Sentence) {
    if (byName === undefined || byName instanceof Sentence) return (byName ?? byField) as Sentence;
    return { ...byName, why: inName };
  }
  if (byName === undefined || byName instanceof Sentence || same(byField, byName)) return { ...byField, why: inField };
  const isPair = byName.phase.length === 3 && byField.phase.length === 2;
  const from = byName.reversed ? byName.phase[2] : byName.phase[1];
  if (isPair && from === byField.phase[1]) return { ...byName, why: inName };
  return say`${inField} and ${inName} contradict each other`;
}

function same(one: { phase: Phase; reversed: boolean }, other: { phase: Phase; reversed: boolean }): boolean {
  return one.phase === other.phase && one.reversed === other.reversed;
}
