import { UsageError } from "../../errors.js";
import type { Phase } from "../../recording/quantity.js";
import type { ChannelSetup, GivenSetup } from "../../recording/setup.js";
import { say, strung, type Text } from "../../sentence.js";
import { channelText, entriesByChannel, type NamedChannel } from "../waveform/channel-entries.js";
import { CHARACTERISTIC as C } from "./characteristics.js";
import type { Field } from "./fields.js";
import { VALUE_TYPE } from "./identifiers.js";
import { CURRENT, PHASES, VOLTAGE } from "./meaning.js";
import { phaseName } from "./names.js";
import { AMPS, MEASURED, unitText, VOLTS } from "./units.js";

/** What a field of samples was taken for; without `meaning` it is not used. */
export interface SampledField {
  readonly field: Field;
  readonly meaning?: { readonly quantity: "voltage" | "current"; readonly phase: Phase };
  readonly inverted: boolean;
  /** The setup says what it is. */
  readonly stated: boolean;
  readonly reason: Text;
}

/**
 * What the fields of samples of some files hold: by what is measured and the phase number, and by the setup, whose entries
 * (channels, by name or position) override them.
 * @throws UsageError for an entry that names nothing or is not enough
 */
export function sampledFields(file: string, lists: readonly (readonly Field[])[], setup: GivenSetup): SampledField[] {
  const named = lists.map((fields) =>
    fields.filter(({ sampled }) => sampled).map((field) => ({ position: field.position, name: field.header, field })),
  );
  const entries = entriesByChannel<NamedChannel & { readonly field: Field }>(file, named, setup.channels ?? []);
  return named.flat().map((channel) => {
    const entry = entries.get(channel);
    const use = useOf(channel.field, entry);
    if (entry !== undefined && !entry.ignore && use.meaning === undefined) {
      throw new UsageError(
        `the setup has an entry under channels: for ${channelText(channel)} of ${channel.field.file}, but it still cannot be used: ${use.reason}; complete the entry (quantity, phase) or take it out`,
      );
    }
    return use;
  });
}

/** Characteristics that say that a series holds no points on the wave. */
function isOther({ series: { characteristic, valueType } }: Field): boolean {
  if (valueType !== VALUE_TYPE.VAL && valueType !== VALUE_TYPE.INST) return true;
  if (characteristic === C.INSTANTANEOUS || characteristic === C.NONE) return false;
  return Object.values(C).some((known) => known === characteristic);
}

function useOf(field: Field, entry: ChannelSetup | undefined): SampledField {
  const unused = (reason: Text): SampledField => ({ field, inverted: false, stated: false, reason });
  if (entry?.ignore) return unused(say`the setup leaves it out`);
  if (!field.present) return unused(say`it is defined, but no observation holds it`);
  const { units } = field.series;
  const { quantityMeasured, phase: number } = field.definition;
  const measured = quantityMeasured ?? (units === VOLTS ? VOLTAGE : units === AMPS ? CURRENT : undefined);
  const quantity = entry?.quantity ?? (measured === VOLTAGE ? "voltage" : measured === CURRENT ? "current" : undefined);
  if (quantity === undefined) {
    return unused(say`it holds samples of neither a voltage nor a current`);
  }
  if (entry?.quantity === undefined && isOther(field)) return unused(say`it holds no points on the wave`);
  const phase = entry?.phase ?? PHASES[number];
  if (phase === undefined)
    return unused(say`its phase (${phaseName(number) ?? number}) is no conductor that is judged`);
  if (quantity === "current" && phase.length === 3) return unused(say`a current between phases is not used`);
  const own = quantity === "voltage" ? "V" : "A";
  const wrong = units !== (quantity === "voltage" ? VOLTS : AMPS);
  const on = phaseName(number) ?? number;
  const samples =
    quantity === "voltage" ? say`samples of a voltage, phase ${on}` : say`samples of a current, phase ${on}`;
  return {
    field,
    meaning: { quantity, phase },
    inverted: entry?.inverted ?? false,
    stated: entry?.quantity !== undefined || entry?.phase !== undefined,
    reason: wrong
      ? strung(
          [
            samples,
            say`its unit says ${unitText(units)}, but what is measured is ${MEASURED[quantity]}, so it is taken as ${own}`,
          ],
          "; ",
        )
      : samples,
  };
}
