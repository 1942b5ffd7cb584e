import { UsageError } from "../errors.js";
import { DATA_SOURCE_TYPE } from "../formats/pqdif/identifiers.js";
import { pqdifPieces } from "../formats/pqdif/write.js";
import type { WrittenObservation, WrittenRecord } from "../formats/pqdif/write-description.js";
import {
  Definitions,
  logObservation,
  type WrittenQuantity,
  waveformObservation,
} from "../formats/pqdif/write-recording.js";
import type { Instant } from "../recording/time.js";
import { instantOfSample } from "../recording/waveform.js";
import { type INTERVALS, intervalLog } from "../synth/interval-log.js";
import type { CheckedScenario } from "../synth/parse-scenario.js";
import type { SynthesisedSource } from "../synth/synthesise.js";

/** Samples of an observation, about: it is in memory while it is written. */
const OBSERVATION = 2 ** 18;

/**
 * How many samples an observation of a made waveform holds: as long as is fit for the memory, and a whole number of
 * microseconds, so that each begins where the one before ends.
 */
export function pqdifBlock({ samplesPerSecond = 1 }: CheckedScenario): number {
  if (!Number.isInteger(samplesPerSecond)) return OBSERVATION;
  const unit = samplesPerSecond / commonDivisor(samplesPerSecond, 1e6);
  return Math.max(1, Math.floor(OBSERVATION / unit)) * unit;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/**
 * The waveforms as PQDIF (IEEE 1159.3): an observation for each block. Values are single-precision numbers, or whole numbers
 * of the scenario's step. Times are UTC, and the file says so.
 */
export function pqdifWaveforms(scenario: CheckedScenario, source: SynthesisedSource, fileName: string) {
  const { volts: voltage, amperes: current } = scenario.quantisation ?? {};
  async function* observations(definitions: Definitions) {
    for await (const { first, samples } of source.blocks()) {
      const { channels, samplesPerSecond } = source;
      const start = instantOfSample(source, first);
      const steps = { voltage, current };
      yield waveformObservation(definitions, "waveforms", start, samplesPerSecond, channels, samples, steps);
    }
  }
  return written(scenario, fileName, source.start, observations);
}

/** A log of interval values as PQDIF, with the same values as the log as text. */
export function pqdifIntervals(scenario: CheckedScenario, log: keyof typeof INTERVALS, fileName: string) {
  const { interval, starts, columns, value, flagged } = intervalLog(scenario, log);
  const [start = 0] = starts;
  async function* observations(definitions: Definitions) {
    const quantities = columns.map(
      ({ quantity, phase, order, decimals }, c): WrittenQuantity => ({
        quantity,
        phase,
        ...(order !== undefined && { order }),
        resolution: 10 ** -decimals,
        mean: Float64Array.from(starts, (_, row) => value(row, c)),
      }),
    );
    const flags = Uint8Array.from(starts, (_, row) => Number(flagged(row)));
    yield logObservation(definitions, "interval values", start, interval, quantities, flags);
  }
  return written(scenario, fileName, start, observations);
}

/** The pieces of a file; the first observation shows what the channels are. */
function written(
  { title }: CheckedScenario,
  fileName: string,
  start: Instant,
  observations: (definitions: Definitions) => AsyncIterable<WrittenObservation>,
): AsyncIterable<Uint8Array> {
  async function* records(): AsyncGenerator<WrittenRecord> {
    const definitions = new Definitions();
    let first = true;
    for await (const observation of observations(definitions)) {
      const { all: channels } = definitions;
      const type = DATA_SOURCE_TYPE.SIMULATE;
      if (first) yield { dataSource: { name: title, type, timeZone: "UTC", effective: start, channels } };
      first = false;
      yield { observation };
    }
  }
  return refusing(pqdifPieces({ fileName, creation: start, notes: title }, records()), fileName);
}

/** What the file cannot hold is a fault of the scenario. */
async function* refusing(pieces: AsyncIterable<Uint8Array>, fileName: string): AsyncGenerator<Uint8Array> {
  try {
    yield* pieces;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new UsageError(
      `${fileName}: ${error.message}; make the scenario shorter, its steps larger, or take another --format.`,
    );
  }
}
