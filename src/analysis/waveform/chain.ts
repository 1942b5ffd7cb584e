import { UsageError } from "../../errors.js";
import { HOUR, MINUTE } from "../../recording/time.js";
import { instantOfSample, LOWEST_RATE, type WaveformSource } from "../../recording/waveform.js";
import { distinct, say } from "../../sentence.js";
import { SampleHistory } from "../../signal/sample-history.js";
import { bandFor } from "./band.js";
import { FlaggedSpans } from "./flagged-spans.js";
import { FrontEnd } from "./front-end.js";
import { phenomena as allPhenomena } from "./index.js";
import {
  type ChainOptions,
  type ChainSetup,
  HISTORY_S,
  type Level,
  type Phenomenon,
  type PhenomenonResult,
} from "./phenomenon.js";

/** Samples kept beyond `HISTORY_S`: the longest window and the delay of the tracking. */
const DELAY_S = 0.6;

const TOO_SHORT = say`No unbroken stretch of the recording holds a basic window (10 cycles at 50 Hz, 12 at 60 Hz), so nothing was measured over windows.`;

/** What the measurement must know besides the samples. */
export interface MeasuringPoint {
  readonly nominalFrequency: 50 | 60;
  /** Udin in V: phase to neutral for star and single, phase to phase for delta. */
  readonly declaredVoltage: number;
  readonly connection: "star" | "delta" | "single";
}

/**
 * The measurement chain of IEC 61000-4-30 (class A methods): reads the source once, block by block, and hands it to the
 * phenomena. The result does not depend on the length of the blocks, and memory does not grow with the recording except
 * for the results.
 * @throws UsageError for a source without a voltage, or with fewer than 2000 samples per second
 */
export async function measureWaveform(
  source: WaveformSource,
  point: MeasuringPoint,
  options: ChainOptions = {},
  phenomena: readonly Phenomenon[] = allPhenomena(),
): Promise<Required<PhenomenonResult>> {
  const setup = chainSetup(source, point, options);
  const states = phenomena.map((p) => p.start(setup));
  const frontEnd = new FrontEnd(setup, states);
  for await (const block of source.blocks()) frontEnd.take(block);
  frontEnd.finish();
  const results: PhenomenonResult[] = states.map((s) => s.finish());
  if (frontEnd.windowsMeasured === 0) results.push({ remarks: [TOO_SHORT] });
  return {
    series: results.flatMap((r) => r.series ?? []),
    events: results.flatMap((r) => r.events ?? []),
    sliding: results.flatMap((r) => r.sliding ?? []),
    spans: results.flatMap((r) => r.spans ?? []),
    unavailable: results.flatMap((r) => r.unavailable ?? []),
    remarks: distinct(results.flatMap((r) => r.remarks ?? [])),
  };
}

function chainSetup(source: WaveformSource, point: MeasuringPoint, options: ChainOptions): ChainSetup {
  const { channels, samplesPerSecond, start, length } = source;
  if (!channels.some((c) => c.quantity === "voltage")) {
    throw new UsageError("The recording has no channel with a voltage, and without one no cycle can be found.");
  }
  if (samplesPerSecond < LOWEST_RATE) {
    throw new UsageError(
      `The recording has ${samplesPerSecond} samples per second; waveforms are measured from ${LOWEST_RATE} up.`,
    );
  }
  const kept = Math.ceil((HISTORY_S + DELAY_S) * samplesPerSecond);
  return {
    channels,
    samplesPerSecond,
    start,
    length,
    ...point,
    options: { ...options, levels: options.levels ?? levelsFor(source) },
    flags: new FlaggedSpans(),
    history: new SampleHistory(channels.length, kept),
    band: bandFor(samplesPerSecond, point.nominalFrequency, Math.max(0, ...(options.signallingFrequencies ?? []))),
  };
}

/**
 * Ten minutes and two hours; a recording of less than an hour also every 3 s, and one without a whole ten minutes of the
 * clock in detail.
 */
function levelsFor(source: WaveformSource): readonly Level[] {
  const tick = 10 * MINUTE;
  const end = instantOfSample(source, source.length);
  const first = Math.ceil(source.start / tick) * tick;
  if (first + tick > end) return ["window", "3s", "10min"];
  return end - source.start < HOUR ? ["3s", "10min", "2h"] : ["10min", "2h"];
}
