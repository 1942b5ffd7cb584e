import { type Phase, QUANTITIES, type Quantity } from "../../recording/quantity.js";
import { type Duration, type Instant, SECOND } from "../../recording/time.js";
import type { WaveformChannel } from "../../recording/waveform.js";
import { CHARACTERISTIC as C } from "./characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "./identifiers.js";
import { CURRENT, PHASES, POWER, VOLTAGE } from "./meaning.js";
import type { PqdifSeriesDefinition } from "./model.js";
import type {
  WrittenChannel,
  WrittenChannelDefinition,
  WrittenObservation,
  WrittenSeries,
} from "./write-description.js";

/** A logged quantity to be written: values with their extremes, as many as the log has rows. */
export interface WrittenQuantity {
  readonly quantity: Quantity;
  readonly phase: Phase;
  readonly order?: number;
  readonly mean: ArrayLike<number>;
  readonly min?: ArrayLike<number>;
  readonly max?: ArrayLike<number>;
  /** Smallest step of the values; with it they are stored as whole numbers of it where they fit, else as they are. */
  readonly step?: number;
  /** Smallest step of the values as the definition states it; default: `step`. */
  readonly resolution?: number;
}

const [VALUES, SCALED, INCREMENT] = [1, 2, 4] as const;
const CHARACTERISTICS: Partial<Record<Quantity, string>> = {
  voltage: C.RMS,
  current: C.RMS,
  frequency: C.FREQUENCY,
  "thd-voltage": C.TOTAL_THD,
  "thd-current": C.TOTAL_THD,
  "harmonic-voltage": C.SPECTRA_HGROUP,
  "harmonic-current": C.SPECTRA_HGROUP,
  "interharmonic-voltage": C.SPECTRA_IGROUP,
  "negative-sequence-unbalance": C.S2S1,
  "zero-sequence-unbalance": C.S0S1,
  pst: C.FLKR_PST,
  plt: C.FLKR_PLT,
  "active-power": C.P,
  "reactive-power": C.Q,
  "apparent-power": C.S,
  "power-factor": C.PF,
};
const UNITS: Readonly<Record<string, number>> = { V: 6, A: 7, VA: 8, W: 9, var: 10, Hz: 15, "%": 19, "1": 0 };
const TOTAL = 13;

/** The definitions of a file while its observations are described; equal ones are one. */
export class Definitions {
  readonly all: WrittenChannelDefinition[] = [];

  indexOf(definition: WrittenChannelDefinition): number {
    const text = JSON.stringify(definition);
    const known = this.all.findIndex((d) => JSON.stringify(d) === text);
    return known >= 0 ? known : this.all.push(definition) - 1;
  }
}

/**
 * A log of intervals as an observation of value logs: seconds after the first start by increments, shared by all channels;
 * the first row at the start of the observation, which says that stamps mark the start of their intervals.
 * @param flagged 1 where an interval is flagged (IEC 61000-4-30)
 * @throws RangeError for a quantity that PQDIF has no characteristic for
 */
export function logObservation(
  definitions: Definitions,
  name: string,
  start: Instant,
  interval: Duration,
  quantities: readonly WrittenQuantity[],
  flagged?: Uint8Array,
): WrittenObservation {
  const rows = quantities[0]?.mean.length ?? 0;
  const channels: WrittenChannel[] = [];
  const times = (): WrittenSeries =>
    channels.length === 0
      ? { type: "REAL8", steps: [[rows, interval / SECOND]] }
      : { share: { channel: 0, series: 0 } };
  for (const quantity of quantities) {
    const { order } = quantity;
    const parts = (["min", "max", "mean"] as const).flatMap((s) => (quantity[s] === undefined ? [] : [s]));
    const stored = parts.map((s) => storedAs(quantity[s] as ArrayLike<number>, quantity.step));
    channels.push({
      definition: definitions.indexOf(definitionOf(quantity, parts, stored)),
      ...(order !== undefined && { group: order }),
      series: [times(), ...stored.map(({ series }) => series)],
    });
  }
  if (flagged !== undefined) {
    channels.push({
      definition: definitions.indexOf(FLAGS),
      series: [times(), { type: "UNS_INTEGER1", values: flagged }],
    });
  }
  return { name, start, triggerMethod: 4, channels };
}

const VALUE_TYPES = { min: VALUE_TYPE.MIN, max: VALUE_TYPE.MAX, mean: VALUE_TYPE.AVG };
const TIMES: PqdifSeriesDefinition = {
  valueType: VALUE_TYPE.TIME,
  units: 2,
  characteristic: C.NONE,
  storage: VALUES | INCREMENT,
};
const FLAGS: WrittenChannelDefinition = {
  name: "flag",
  phase: 0,
  quantityType: QUANTITY_TYPE.VALUELOG,
  quantityMeasured: 17,
  series: [TIMES, { valueType: VALUE_TYPE.VAL, units: 0, characteristic: C.FLAGGING_IEC_61000_4_30, storage: VALUES }],
};

function definitionOf(
  { quantity, phase, step, resolution = step }: WrittenQuantity,
  parts: readonly (keyof typeof VALUE_TYPES)[],
  stored: readonly { readonly scaled: boolean }[],
): WrittenChannelDefinition {
  const characteristic = CHARACTERISTICS[quantity];
  if (characteristic === undefined) throw new RangeError(`PQDIF has no characteristic for ${quantity}`);
  const { symbol, unit } = QUANTITIES[quantity];
  const isPower = unit === "W" || unit === "var" || unit === "VA" || quantity === "power-factor";
  const isCurrent = quantity.endsWith("current");
  return {
    name: phase === "system" ? String(symbol) : `${symbol} ${phase}`,
    phase: phaseNumber(phase),
    quantityType: QUANTITY_TYPE.VALUELOG,
    quantityMeasured: isPower ? POWER : isCurrent ? CURRENT : VOLTAGE,
    series: [
      TIMES,
      ...parts.map((part, i) => ({
        valueType: VALUE_TYPES[part],
        units: UNITS[unit] ?? 0,
        characteristic,
        storage: stored[i]?.scaled ? VALUES | SCALED : VALUES,
        ...(resolution !== undefined && { resolution }),
      })),
    ],
  };
}

function phaseNumber(phase: Phase): number {
  const found = Object.entries(PHASES).find(([, own]) => own === phase);
  return found === undefined ? TOTAL : Number(found[0]);
}

const LARGEST = { INTEGER2: 0x7fff, INTEGER4: 0x7fffffff } as const;

function storedAs(values: ArrayLike<number>, step: number | undefined): { series: WrittenSeries; scaled: boolean } {
  const largest = Array.from(values).reduce((a, v) => Math.max(a, Math.abs(v)), 0) / (step ?? 0);
  const type = (["INTEGER2", "INTEGER4"] as const).find((t) => largest <= LARGEST[t]);
  // NaN compares as false: values of which some are missing are stored as they are.
  if (step === undefined || type === undefined) return { series: { type: "REAL8", values }, scaled: false };
  return { series: { type, values, scale: step, offset: 0 }, scaled: true };
}

/**
 * Samples as an observation: seconds after the start by increments, shared by all channels.
 * @param steps V or A per count: then stored as whole numbers of 16 bits, or of 32 where they need them
 */
export function waveformObservation(
  definitions: Definitions,
  name: string,
  start: Instant,
  samplesPerSecond: number,
  channels: readonly Pick<WaveformChannel, "name" | "quantity" | "phase">[],
  samples: readonly ArrayLike<number>[],
  steps: { readonly voltage?: number | undefined; readonly current?: number | undefined } = {},
): WrittenObservation {
  return {
    name,
    start,
    triggerMethod: 0,
    channels: channels.map((channel, c): WrittenChannel => {
      const step = steps[channel.quantity];
      const values = samples[c] as ArrayLike<number>;
      return {
        definition: definitions.indexOf(waveformDefinition(channel, step !== undefined)),
        series: [
          c === 0
            ? { type: "REAL8", steps: [[values.length, 1 / samplesPerSecond]] }
            : { share: { channel: 0, series: 0 } },
          step === undefined
            ? { type: "REAL4", values }
            : { type: wholeType(values, step), values, scale: step, offset: 0 },
        ],
      };
    }),
  };
}

function wholeType(values: ArrayLike<number>, step: number): keyof typeof LARGEST {
  for (let i = 0; i < values.length; i++) {
    if (Math.abs(values[i] as number) > LARGEST.INTEGER2 * step) return "INTEGER4";
  }
  return "INTEGER2";
}

function waveformDefinition(
  { name, quantity, phase }: Pick<WaveformChannel, "name" | "quantity" | "phase">,
  scaled: boolean,
): WrittenChannelDefinition {
  const voltage = quantity === "voltage";
  return {
    name,
    phase: phaseNumber(phase),
    quantityType: QUANTITY_TYPE.WAVEFORM,
    quantityMeasured: voltage ? VOLTAGE : CURRENT,
    series: [
      TIMES,
      {
        valueType: VALUE_TYPE.VAL,
        units: voltage ? (UNITS.V as number) : (UNITS.A as number),
        characteristic: C.INSTANTANEOUS,
        storage: scaled ? VALUES | SCALED : VALUES,
      },
    ],
  };
}
