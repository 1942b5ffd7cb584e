import { type IntervalSeries, isValid, type Unavailable } from "../../recording/measurements.js";
import type { Phase } from "../../recording/quantity.js";
import { type Instant, isoUtc, MINUTE, SECOND } from "../../recording/time.js";
import { USUAL_MEASUREMENT } from "../../recording/usual-measurement.js";
import { instantOfSample, sampleOfInstant, type WaveformBlock } from "../../recording/waveform.js";
import { Numeral, say, type Text } from "../../sentence.js";
import { pltFromPst } from "../flicker.js";
import { Flickermeter, SETTLING_S } from "./flickermeter.js";
import type { ChainSetup, Phenomenon, PhenomenonResult, PhenomenonState } from "./phenomenon.js";

const PST_INTERVAL = 10 * MINUTE;
const PST_PER_PLT = 12;
/** The meter counts time in steps of about 1 ms. */
const ROUNDING = 1e-5;

/**
 * Pst per ten minutes and Plt per two hours of the UTC clock, for every voltage but that of the neutral
 * (IEC 61000-4-15 Ed 2; see `Flickermeter`). Time in which the meter settles lowers the coverage, so that the interval in
 * which a recording starts or goes on after a gap is as a rule not valid. Plt counts valid Pst only.
 */
export const flicker: Phenomenon = {
  id: "flicker",
  clause: "IEC 61000-4-15 Ed 2",
  start: (setup) => new FlickerState(setup),
};

interface Meter {
  readonly channel: number;
  readonly phase: Phase;
  readonly flickermeter: Flickermeter;
  readonly starts: Instant[];
  readonly pst: number[];
  readonly coverage: number[];
}

class FlickerState implements PhenomenonState {
  private readonly meters: readonly Meter[];
  private readonly lamp: 230 | 120;
  /** One past the last sample so far. */
  private position = 0;
  private intervalStart: Instant;
  /** First sample of the next interval. */
  private intervalEnd: number;

  constructor(private readonly setup: ChainSetup) {
    const { channels, samplesPerSecond, nominalFrequency, options } = setup;
    const lamp = options.lamp ?? USUAL_MEASUREMENT.lamp;
    this.lamp = lamp;
    this.meters = channels.flatMap(({ quantity, phase }, channel) =>
      quantity === "current" || phase === "N"
        ? []
        : {
            channel,
            phase,
            flickermeter: new Flickermeter({ samplesPerSecond, lamp, nominalFrequency }),
            starts: [],
            pst: [],
            coverage: [],
          },
    );
    this.intervalStart = Math.floor(setup.start / PST_INTERVAL) * PST_INTERVAL;
    this.intervalEnd = this.firstSampleFrom(this.intervalStart + PST_INTERVAL);
  }

  samples({ first, samples }: WaveformBlock): void {
    if (first !== this.position) this.skipTo(first);
    const end = first + (samples[0]?.length ?? 0);
    while (this.position < end) {
      const to = Math.min(end, this.intervalEnd);
      for (const { channel, flickermeter } of this.meters) {
        flickermeter.push(samples[channel] as Float64Array, this.position - first, to - first);
      }
      this.position = to;
      if (to === this.intervalEnd) this.closeInterval();
    }
  }

  finish(): PhenomenonResult {
    this.closeInterval();
    const series: IntervalSeries[] = [];
    const unavailable: Unavailable[] = [];
    const { nominalFrequency } = this.setup;
    const remarks: Text[] = [
      say`Pst and Plt are for the ${this.lamp} V lamp at ${nominalFrequency} Hz. The first ${SETTLING_S} s after the start and after each gap are left out, because the flickermeter settles.`,
    ];
    for (const meter of this.meters) {
      const pst = this.pstOf(meter);
      if (!pst.starts.some((_, i) => isValid(pst, i))) {
        unavailable.push({
          quantity: "pst",
          phase: meter.phase,
          reason: say`No ten minutes of the clock were recorded without a gap after the first ${SETTLING_S} s, in which the flickermeter settles.`,
        });
      }
      if (pst.starts.length > 0) series.push(pst, pltOfValid(pst));
      const highest = highestSlidingPlt(pst);
      if (highest !== undefined) remarks.push(highest);
    }
    return { series, unavailable, remarks: this.meters.length > 0 ? remarks : [] };
  }

  /** First sample at or after an instant, to the microsecond. */
  private firstSampleFrom(t: Instant): number {
    const sample = Math.round(sampleOfInstant(this.setup, t));
    return instantOfSample(this.setup, sample) < t ? sample + 1 : sample;
  }

  private skipTo(sample: number): void {
    for (const { flickermeter } of this.meters) flickermeter.restart();
    while (this.intervalEnd <= sample) this.closeInterval();
    this.position = sample;
  }

  private closeInterval(): void {
    for (const { flickermeter, starts, pst, coverage } of this.meters) {
      const interval = flickermeter.closeInterval();
      if (interval.seconds === 0) continue;
      starts.push(this.intervalStart);
      pst.push(interval.pst);
      const share = (interval.seconds * SECOND) / PST_INTERVAL;
      coverage.push(share > 1 - ROUNDING ? 1 : share);
    }
    this.intervalStart += PST_INTERVAL;
    this.intervalEnd = this.firstSampleFrom(this.intervalStart + PST_INTERVAL);
  }

  private pstOf({ phase, starts, pst, coverage }: Meter): IntervalSeries {
    const { setup } = this;
    return {
      quantity: "pst",
      phase,
      unit: "1",
      interval: PST_INTERVAL,
      origin: "computed",
      starts: Float64Array.from(starts),
      values: Float64Array.from(pst),
      flagged: Uint8Array.from(starts, (t) =>
        setup.flags.touches(sampleOfInstant(setup, t), sampleOfInstant(setup, t + PST_INTERVAL)) ? 1 : 0,
      ),
      coverage: Float64Array.from(coverage),
    };
  }
}

function pltOfValid(pst: IntervalSeries): IntervalSeries {
  const { phase, unit, interval, starts, flagged, values } = pst;
  return pltFromPst({
    quantity: "pst",
    phase,
    unit,
    origin: "computed",
    axis: { interval, starts, flagged },
    values: values.map((value, i) => (isValid(pst, i) ? value : Number.NaN)),
  });
}

/**
 * Plt over any twelve valid Pst in a row, begun at every ten-minute tick: (ΣPst³ / 12)^⅓. For information, the standards
 * judge the blocks of two hours.
 */
export function slidingPlt(pst: IntervalSeries): IntervalSeries {
  const { starts, values, flagged } = pst;
  const begins = [...starts.keys()].filter((i) => {
    const last = i + PST_PER_PLT - 1;
    if ((starts[last] ?? Number.NaN) - (starts[i] as number) !== (PST_PER_PLT - 1) * PST_INTERVAL) return false;
    for (let k = i; k <= last; k++) if (!isValid(pst, k)) return false;
    return true;
  });
  const meanCube = (twelve: Float64Array) => twelve.reduce((sum, value) => sum + value ** 3, 0) / PST_PER_PLT;
  return {
    quantity: "plt",
    phase: pst.phase,
    unit: "1",
    interval: PST_PER_PLT * PST_INTERVAL,
    origin: "computed",
    starts: Float64Array.from(begins, (i) => starts[i] as number),
    values: Float64Array.from(begins, (i) => Math.cbrt(meanCube(values.subarray(i, i + PST_PER_PLT)))),
    flagged: Uint8Array.from(begins, (i) => Math.max(...flagged.subarray(i, i + PST_PER_PLT))),
    coverage: new Float64Array(begins.length).fill(1),
  };
}

function highestSlidingPlt(pst: IntervalSeries): Text | undefined {
  const { values, starts, phase } = slidingPlt(pst);
  if (values.length === 0) return undefined;
  const at = values.indexOf(values.reduce((a, b) => Math.max(a, b)));
  return say`The highest Plt over any twelve Pst in a row is ${new Numeral((values[at] as number).toFixed(3))} on ${phase}, from ${isoUtc(starts[at] as number)}. It is for information; the two-hour blocks of the clock are judged.`;
}
