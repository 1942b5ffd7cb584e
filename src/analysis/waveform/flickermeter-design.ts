import {
  butterworthLowPass,
  cascade,
  firstOrderHighPass,
  magnitudeAt,
  real,
  type TransferFunction,
} from "../../signal/transfer-function.js";

/** The reference lamps of IEC 61000-4-15 by their rated voltage. */
export type Lamp = 230 | 120;

/** Time constant of block 4, IEC 61000-4-15 Ed 2. */
export const SMOOTHING_S = 0.3;

interface LampConstants {
  readonly k: number;
  /** λ and ω1 … ω4 divided by 2π. */
  readonly lambda: number;
  readonly f1: number;
  readonly f2: number;
  readonly f3: number;
  readonly f4: number;
  /** ΔV/V in %, peak to peak, of the 8.8 Hz sinusoidal modulation whose Pinst peaks at 1 (Tables 1a and 1b). */
  readonly unitModulation: number;
}

/**
 * Constants of the weighting filter, IEC 61000-4-15 Ed 2, as tabulated by a public flickermeter verification script of
 * national metrology institutes.
 */
const LAMPS: Readonly<Record<Lamp, LampConstants>> = {
  230: { k: 1.74802, lambda: 4.05981, f1: 9.15494, f2: 2.27979, f3: 1.22535, f4: 21.9, unitModulation: 0.25 },
  120: { k: 1.6357, lambda: 4.167375, f1: 9.077169, f2: 2.939902, f3: 1.394468, f4: 17.31512, unitModulation: 0.321 },
};

/** F(s) = k·ω1·s / (s² + 2λs + ω1²) · (1 + s/ω2) / ((1 + s/ω3)(1 + s/ω4)): lamp, eye and brain. */
export function weightingFilter(lamp: Lamp): TransferFunction {
  const { k, lambda, f1, f2, f3, f4 } = LAMPS[lamp];
  const turn = 2 * Math.PI;
  const im = turn * Math.sqrt(f1 ** 2 - lambda ** 2);
  return {
    gain: (k * turn * f1 * (turn * f3) * (turn * f4)) / (turn * f2),
    zeros: [real(0), real(-turn * f2)],
    poles: [{ re: -turn * lambda, im }, { re: -turn * lambda, im: -im }, real(-turn * f3), real(-turn * f4)],
  };
}

/** Block 3: high pass 0.05 Hz, Butterworth low pass of order 6 at 35 Hz (50 Hz mains) or 42 Hz (60 Hz), weighting. */
export function blockThree(lamp: Lamp, nominalFrequency: 50 | 60): TransferFunction {
  const corner = nominalFrequency === 50 ? 35 : 42;
  return cascade(firstOrderHighPass(0.05), butterworthLowPass(6, corner), weightingFilter(lamp));
}

/**
 * Factor from the smoothed square of block 3's output to Pinst. The squared voltage over its mean carries a relative
 * modulation ΔV/V in closed form 1 + d·sin ωt with d = ΔV/V peak to peak; block 3 makes it d·|H|·sin, its square has the
 * mean (d·|H|)²/2 and a ripple at twice the frequency that block 4 passes in part; the peak of that is to be 1.
 */
export function perceptibilityScale(lamp: Lamp, blockThreeFilter: TransferFunction): number {
  const hertz = 8.8;
  const amplitude = (LAMPS[lamp].unitModulation / 100) * magnitudeAt(blockThreeFilter, hertz);
  const ripple = 1 / Math.hypot(1, 2 * Math.PI * 2 * hertz * SMOOTHING_S);
  return 1 / ((amplitude ** 2 / 2) * (1 + ripple));
}

/**
 * Pst from the levels of Pinst that are exceeded for a share of the time, with the smoothed percentiles of
 * IEC 61000-4-15: √(0.0314 P0.1 + 0.0525 P1s + 0.0657 P3s + 0.28 P10s + 0.08 P50s).
 * @param level Pinst exceeded for so many per cent of the time
 */
export function pstFromLevels(level: (percent: number) => number): number {
  const mean = (...percents: number[]) => percents.reduce((sum, p) => sum + level(p), 0) / percents.length;
  return Math.sqrt(
    0.0314 * level(0.1) +
      0.0525 * mean(0.7, 1, 1.5) +
      0.0657 * mean(2.2, 3, 4) +
      0.28 * mean(6, 8, 10, 13, 17) +
      0.08 * mean(30, 50, 80),
  );
}
