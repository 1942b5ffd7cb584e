import type { GivenSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import { CURRENT, POWER, VOLTAGE } from "./meaning.js";
import type { PqdifChannelDefinition, PqdifSettings } from "./model.js";
import { AMPS, VOLTS } from "./units.js";

/** True value = (stored − offset) × factor. */
export interface Correction {
  readonly factor: number;
  readonly offset: number;
  readonly skewS: number;
  /** What was applied, for the reader of the report. */
  readonly applied: readonly Text[];
}

const AS_STORED: Correction = { factor: 1, offset: 0, skewS: 0, applied: [] };
const ELECTRICAL: ReadonlySet<number> = new Set([VOLTS, AMPS, 8, 9, 10]);

/**
 * What the settings in force say to apply to a channel (IEEE 1159.3): the ratio of its transducer where the settings use
 * transducers, offset and ratio of its calibration where they use calibration; else they are for information. Ratios of the
 * setup go before that of the transducer. The order, offset before ratio, is not confirmed by any document seen.
 */
export function correctionOf(
  settings: PqdifSettings | undefined,
  definitionIndex: number,
  { quantityMeasured, name }: Pick<PqdifChannelDefinition, "quantityMeasured" | "name">,
  units: number,
  setup: GivenSetup,
): Correction {
  const own = settings?.channels.find(({ definition }) => definition === definitionIndex);
  const measured = quantityMeasured ?? (units === VOLTS ? VOLTAGE : units === AMPS ? CURRENT : POWER);
  if (!ELECTRICAL.has(units)) return AS_STORED;
  const applied: Text[] = [];
  let factor = givenRatio(measured, setup);
  if (factor !== 1) applied.push(say`"${name}": values times ${factor}, the transformer ratio of the setup`);
  const { systemSideRatio: system, monitorSideRatio: monitor } = own ?? {};
  if (settings?.useTransducer && system !== undefined && monitor !== undefined && system !== monitor && factor === 1) {
    if (usable(system) && usable(monitor)) {
      factor = system / monitor;
      applied.push(say`"${name}": values times ${system}/${monitor}, the transducer ratio that the file says to apply`);
    } else {
      applied.push(say`"${name}": the transducer ratio ${system}/${monitor} of the file cannot be applied`);
    }
  }
  if (!settings?.useCalibration) return { ...AS_STORED, factor, applied };
  const { calibrationOffset: offset = 0, calibrationRatio: ratio = 1, timeSkewS: skewS = 0 } = own ?? {};
  if (offset !== 0 || (ratio !== 1 && usable(ratio))) {
    applied.push(
      say`"${name}": calibrated as (value − ${offset}) × ${ratio}, as the file says to apply; that the offset goes first is not confirmed by any document seen`,
    );
  }
  return { factor: usable(ratio) ? factor * ratio : factor, offset, skewS, applied };
}

function usable(ratio: number): boolean {
  return ratio > 0 && Number.isFinite(ratio);
}

function givenRatio(measured: number, { voltageRatio, currentRatio }: GivenSetup): number {
  const [u, i] = [ratioOf(voltageRatio), ratioOf(currentRatio)];
  return measured === VOLTAGE ? u : measured === CURRENT ? i : u * i;
}

function ratioOf(given: number | string | undefined): number {
  const [primary, secondary] = String(given ?? 1)
    .split("/")
    .map(Number);
  return (primary ?? 1) / (secondary ?? 1);
}

/** Beyond this a magnitude is the mark of a missing value, not a measured one. Common practice, no source. */
const ABSURD = 1e30;

/** The values corrected; missing ones (no number, infinite, absurd) as NaN. */
export function corrected(values: Float64Array, { factor, offset }: Correction): Float64Array {
  return values.map((v) => (Math.abs(v) < ABSURD ? (v - offset) * factor : Number.NaN));
}
