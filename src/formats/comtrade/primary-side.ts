import type { GivenSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import type { ChannelUse } from "./recognise-channels.js";

/** Ratios of real transformers lie between these: 1 and 765 kV to 63.5 V. Outside, the two sides may have different units. */
const [SMALLEST_RATIO, LARGEST_RATIO] = [1, 12_100];

export interface PrimarySide {
  /** Primary value over the value that the file states. */
  readonly factor: number;
  /** For the reason of the channel; undefined where there is nothing to say. */
  readonly note?: Text;
  /** What a reader of the report must know; the same for all channels that it concerns. */
  readonly remark?: Text;
}

/**
 * Brings a channel to the primary side. A ratio of the setup goes before that of the file; without a ratio or a side
 * the value is taken as it stands, and the remark says so.
 */
export function primarySide({ channel, meaning }: ChannelUse, setup: GivenSetup): PrimarySide {
  const key = meaning?.quantity === "current" ? "currentRatio" : "voltageRatio";
  const given = setup[key];
  if (given !== undefined) {
    return { factor: ratioOf(given), note: say`× ${given} by the setup` };
  }
  const { side, primary, secondary } = channel;
  if (side === "primary") return { factor: 1 };
  const ratio = primary / secondary;
  const isRatio = primary > 0 && secondary > 0 && Number.isFinite(ratio) && ratio > 0;
  const missing = say`${key} in the setup states another ratio`;
  const values = meaning?.quantity === "current" ? say`currents` : say`voltages`;
  if (side === undefined) {
    if (isRatio && ratio === 1) return { factor: 1 };
    return {
      factor: 1,
      remark: say`The file does not say whether its ${values} are primary or secondary values; they are taken as they stand (${missing}).`,
    };
  }
  if (!isRatio) {
    return {
      factor: 1,
      remark: say`The ${values} are secondary values without a usable ratio; they are taken as they stand (${missing}).`,
    };
  }
  const note = ratio === 1 ? {} : { note: say`secondary value × ${primary}/${secondary}` };
  if (ratio >= SMALLEST_RATIO && ratio <= LARGEST_RATIO) return { factor: ratio, ...note };
  return {
    factor: ratio,
    ...note,
    remark: say`The ratio ${primary}/${secondary} of the ${values} is unusual; its two sides may have different units (${missing}).`,
  };
}

function ratioOf(given: number | string): number {
  if (typeof given === "number") return given;
  const [primary, secondary] = given.split("/").map(Number);
  return (primary ?? 1) / (secondary ?? 1);
}
