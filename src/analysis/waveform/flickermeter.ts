import { Decimator } from "../../signal/decimator.js";
import { ImpulseInvariantFilter } from "../../signal/impulse-invariant-filter.js";
import { LevelHistogram } from "../../signal/level-histogram.js";
import { blockThree, type Lamp, perceptibilityScale, pstFromLevels, SMOOTHING_S } from "./flickermeter-design.js";

export interface FlickermeterOptions {
  readonly samplesPerSecond: number;
  readonly lamp: Lamp;
  readonly nominalFrequency: 50 | 60;
}

/** What the meter found between two calls of `closeInterval`. */
export interface FlickerInterval {
  /** NaN where no settled signal fell into the interval. */
  readonly pst: number;
  readonly pinstMax: number;
  /** Length of settled signal that was classified. */
  readonly seconds: number;
}

const LOWEST_SAMPLING_RATE = 2000;

/**
 * Settling after the start of a recording and after each gap. In one minute block 1 (time constant 27.3 s) has come to
 * 90 % of a step, and the 0.05 Hz high pass (3.2 s) has forgotten its start; as both are begun at the level of the first
 * cycles, what is left is below 0.1 % of Pst.
 */
export const SETTLING_S = 60;

/** τ·ln 9 = 60 s from 10 % to 90 % of a step, the one-minute adaptation of IEC 61000-4-15. The figure is from memory. */
const REFERENCE_TIME_CONSTANT_S = 27.3;

/** Signal over which the first level is taken: 10 cycles of 50 Hz, 12 of 60 Hz. */
const FIRST_LEVEL_S = 0.2;

/** A voltage under half or over twice the reference for this long is not what the reference was adapted to. */
const MISFIT_S = 10;

/** Least rate at which the chain runs behind the squaring. */
const CHAIN_RATE = 1000;

/** Squared voltage is wanted up to here: twice the mains frequency. What decimation folds below it is 80 dB down. */
const PASS_HZ = 120;

/**
 * Flickermeter of IEC 61000-4-15 Ed 2, blocks 1 to 5, for one voltage channel, as a state machine: its memory is constant
 * and blocks of any size give the same result.
 *
 * 1. Reference: half-cycle r.m.s. through a first-order low pass of 27.3 s. It divides behind the squaring, which is the
 *    same. The half-cycle mean square is a low pass of two half-cycle time constants, so that no zero crossing is needed.
 * 2. Squaring at the full rate, then decimation to 1 … 2 kHz.
 * 3. High pass, low pass and weighting as one filter, designed by impulse invariance: falling with the eighth power of
 *    frequency, it is the analogue one to a few millionths.
 * 4. Squaring and first-order low pass of 300 ms; the output, Pinst, is 1 at the peak for the 8.8 Hz row of Table 1.
 * 5. Classification in classes of at most 0.1 %, and Pst from percentiles.
 *
 * The first minute after the start and after a gap (a NaN sample, or `restart`) is not classified. Deliberately beyond the
 * standard, the meter also starts anew when the voltage stayed below half or above twice the reference for 10 s, as with an
 * interruption or when the supply is switched on: its output would be the ratio to a level that no longer exists.
 * Unit and scale of the voltage do not matter.
 */
export class Flickermeter {
  private readonly chainRate: number;
  private readonly squares: Float64Array;
  private readonly decimated: Float64Array;
  private readonly decimator: Decimator;
  private readonly filter: ImpulseInvariantFilter;
  private readonly levels = new LevelHistogram();

  private readonly scale: number;
  private readonly halfCycleStep: number;
  private readonly referenceStep: number;
  private readonly smoothingStep: number;

  /** Samples of the chain since the start, of which the first few give the first level. */
  private age = 0;
  private firstLevelSum = 0;
  private meanSquareOnce = 0;
  private meanSquare = 0;
  private reference = 0;
  private misfit = 0;
  private pinst = 0;
  private highest = Number.NaN;

  /** @throws RangeError below 2000 samples per second */
  constructor({ samplesPerSecond, lamp, nominalFrequency }: FlickermeterOptions) {
    if (!(samplesPerSecond >= LOWEST_SAMPLING_RATE)) {
      throw new RangeError(`Flicker needs at least ${LOWEST_SAMPLING_RATE} samples per second`);
    }
    const factor = Math.floor(samplesPerSecond / CHAIN_RATE);
    this.chainRate = samplesPerSecond / factor;
    this.decimator = new Decimator(samplesPerSecond, factor, PASS_HZ);
    this.squares = new Float64Array(this.decimator.maxPush);
    this.decimated = new Float64Array(this.decimator.maxOutput);

    const analogue = blockThree(lamp, nominalFrequency);
    this.filter = new ImpulseInvariantFilter(analogue, this.chainRate);
    this.scale = perceptibilityScale(lamp, analogue);
    this.halfCycleStep = this.stepOf(1 / (2 * nominalFrequency));
    this.referenceStep = this.stepOf(REFERENCE_TIME_CONSTANT_S);
    this.smoothingStep = this.stepOf(SMOOTHING_S);
  }

  /** Highest Pinst of the settled signal since the interval began; NaN before there is any. */
  get maxPinst(): number {
    return this.highest;
  }

  /** Takes samples `from` … `to` − 1. A NaN among them is a gap. */
  push(samples: Float64Array, from: number, to: number): void {
    const { squares, decimated, decimator } = this;
    for (let start = from; start < to; start += squares.length) {
      const count = Math.min(squares.length, to - start);
      for (let i = 0; i < count; i++) {
        const sample = samples[start + i] as number;
        squares[i] = sample * sample;
      }
      const outputs = decimator.push(squares, count, decimated);
      for (let i = 0; i < outputs; i++) this.next(decimated[i] as number);
    }
  }

  /** The signal is broken off here: settling begins anew. What was classified in this interval stays. */
  restart(): void {
    this.age = 0;
  }

  /** Result of the interval that ends here, and start of the next one. */
  closeInterval(): FlickerInterval {
    const result = {
      pst: pstFromLevels((percent) => this.levels.exceededBy(percent / 100)),
      pinstMax: this.highest,
      seconds: this.levels.count / this.chainRate,
    };
    this.levels.clear();
    this.highest = Number.NaN;
    return result;
  }

  /** Share of the way that a first-order low pass goes in one sample of the chain. */
  private stepOf(timeConstantS: number): number {
    return -Math.expm1(-1 / (timeConstantS * this.chainRate));
  }

  /** One squared and decimated sample; NaN while a missing one is within the reach of the decimation filter. */
  private next(square: number): void {
    if (Number.isNaN(square)) {
      this.restart();
      return;
    }
    this.age++;
    if (this.age <= FIRST_LEVEL_S * this.chainRate) {
      this.takeFirstLevel(square);
      return;
    }
    this.adaptReference(square);
    const weighted = this.filter.next(square / (this.reference * this.reference));
    this.pinst += this.smoothingStep * (this.scale * weighted * weighted - this.pinst);
    if (this.age > SETTLING_S * this.chainRate) {
      this.levels.add(this.pinst);
      if (!(this.pinst <= this.highest)) this.highest = this.pinst;
    }
  }

  /** Begins all states as if the level of the first cycles had been there for ever; waits while there is no voltage. */
  private takeFirstLevel(square: number): void {
    this.firstLevelSum = this.age === 1 ? square : this.firstLevelSum + square;
    if (this.firstLevelSum <= 0) {
      this.restart();
      return;
    }
    this.meanSquareOnce = this.firstLevelSum / this.age;
    this.meanSquare = this.meanSquareOnce;
    this.reference = Math.sqrt(this.meanSquare);
    this.misfit = 0;
    this.filter.settleOn(1);
    this.pinst = 0;
  }

  private adaptReference(square: number): void {
    this.meanSquareOnce += this.halfCycleStep * (square - this.meanSquareOnce);
    this.meanSquare += this.halfCycleStep * (this.meanSquareOnce - this.meanSquare);
    const halfCycleRms = Math.sqrt(Math.max(0, this.meanSquare));
    this.reference += this.referenceStep * (halfCycleRms - this.reference);
    const fits = halfCycleRms >= this.reference / 2 && halfCycleRms <= this.reference * 2;
    this.misfit = fits ? 0 : this.misfit + 1;
    if (this.misfit > MISFIT_S * this.chainRate) this.restart();
  }
}
