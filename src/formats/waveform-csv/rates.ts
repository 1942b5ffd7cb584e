import { LogError } from "../../errors.js";
import { say, type Text } from "../../sentence.js";
import { type Bounds, bothBounds } from "./period-bounds.js";
import { rateWithin } from "./round-number.js";
import type { ScannedTable } from "./scan.js";

/** A rate known less well than this is asked for: harmonics would be measured beside their frequencies. */
const TOO_UNSURE = 1e-3;
/** A rate known less well than this is remarked on: 50 Hz are then off by more than 1 mHz. */
const UNSURE = 2e-5;
/** Waveforms with fewer samples per second are not measured. */
const LOWEST_MEASURED = 2000;

/**
 * Samples per second of each file: one rate that the times of all of them allow, if there is one.
 * @param stated by the setup
 * @throws LogError where the times tell it too badly
 */
export function ratesOf(
  scans: readonly ScannedTable[],
  stated: number | undefined,
): { rates: readonly number[]; remarks: readonly Text[] } {
  const joint = scans
    .map((s) => s.bounds)
    .reduce<Bounds | undefined>((a, b) => a && bothBounds(a, b), scans[0]?.bounds);
  const remarks: Text[] = [];
  const rates = scans.map((scan) => {
    const bounds = joint ?? scan.bounds;
    const rate = stated ?? rateWithin(bounds.shortest, bounds.longest);
    remarks.push(...unsure(scan, bounds, rate), ...coarse(scan, rate));
    if (rate < LOWEST_MEASURED) {
      remarks.push(
        say`${scan.table.file.name}: ${Number(rate.toPrecision(6))} samples per second are too few; waveforms are measured from ${LOWEST_MEASURED} on.`,
      );
    }
    return rate;
  });
  return { rates, remarks };
}

function unsure({ table }: ScannedTable, { shortest, longest }: Bounds, rate: number): Text[] {
  const doubt = (longest - shortest) / shortest;
  if (doubt <= UNSURE) return [];
  const between = say`between ${Number((1e6 / longest).toPrecision(6))} and ${Number((1e6 / shortest).toPrecision(6))} per second`;
  if (doubt > TOO_UNSURE) {
    const what = `its times are too few or too coarse to tell the sampling rate (${between}): state samplesPerSecond in the setup`;
    throw new LogError(table.file.name, `line ${table.layout.dataLine}`, what);
  }
  return [
    say`${table.file.name}: by its times the sampling rate lies ${between}; ${rate} is used (setup: samplesPerSecond states it).`,
  ];
}

function coarse({ table, coarsest }: ScannedTable, rate: number): Text[] {
  const samples = (coarsest * rate) / 1e6;
  if (samples <= 0.5) return [];
  const step = say`${Number((coarsest / 1e6).toPrecision(6))} s`;
  const { name } = table.file;
  return [
    samples < 1
      ? say`${name}: its times are written in steps of ${step}, so that a loss of a sample would not show and all times may be off by ${step}.`
      : say`${name}: its times are written in steps of ${step}, so that a loss of up to ${Math.ceil(samples)} samples would not show and all times may be off by ${step}.`,
  ];
}
