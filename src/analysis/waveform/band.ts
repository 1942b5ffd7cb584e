/** Harmonics are measured up to this order (IEC 61000-4-30, class A). */
export const HIGHEST_ORDER = 50;

/**
 * Share of the sampling rate up to which lines are measured. Above it the recorder's own filter against aliasing has
 * begun to take away what is there. Common practice, no source; half is the limit that no recorder reaches.
 */
const USABLE_SHARE = 0.45;

/** Points per line that leave room between the wanted band and what folds into it. */
const POINTS_PER_LINE = 2.5;

/** What a basic window is resampled to, and which spectral lines are measured. */
export interface Band {
  /** Cycles per basic window: 10 at 50 Hz, 12 at 60 Hz; also the spacing of the harmonics in lines. */
  readonly cycles: number;
  /** Points per window, 2ⁿ. */
  readonly points: number;
  /** Lines 0 … lines − 1 are measured. */
  readonly lines: number;
  /** Upper edge of the recorder's usable band, in Hz. */
  readonly edge: number;
  /** Highest harmonic order whose group lies in the band, 50 at most; 0: none. */
  readonly highestOrder: number;
}

/**
 * @param highestSignal highest frequency asked for besides the harmonics, in Hz; 0: none
 */
export function bandFor(samplesPerSecond: number, nominalFrequency: 50 | 60, highestSignal: number): Band {
  const cycles = nominalFrequency / 5;
  const edge = USABLE_SHARE * samplesPerSecond;
  const wanted = Math.max(HIGHEST_ORDER * cycles + cycles / 2, Math.ceil(highestSignal / 4) + 2);
  const top = Math.min(wanted, Math.floor((edge / nominalFrequency) * cycles));
  return {
    cycles,
    points: 2 ** Math.ceil(Math.log2(POINTS_PER_LINE * top)),
    lines: top + 1,
    edge,
    highestOrder: Math.min(HIGHEST_ORDER, Math.floor((top - cycles / 2) / cycles)),
  };
}
