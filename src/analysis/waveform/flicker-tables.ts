import type { Lamp } from "./flickermeter-design.js";

/** Published test values for a flickermeter. ΔV/V is peak to peak, in %. */

export interface LampAndMains {
  readonly lamp: Lamp;
  readonly nominalFrequency: 50 | 60;
}

/** The columns of the tables below. */
export const COLUMNS = [
  { lamp: 230, nominalFrequency: 50 },
  { lamp: 230, nominalFrequency: 60 },
  { lamp: 120, nominalFrequency: 50 },
  { lamp: 120, nominalFrequency: 60 },
] as const satisfies readonly LampAndMains[];

/** A value for each of `COLUMNS`; undefined where the standard tests nothing. */
type PerColumn = readonly [number | undefined, number | undefined, number | undefined, number | undefined];

/** The rate of modulation, then ΔV/V for each column. */
type Row = readonly [number, ...PerColumn];

export interface PublishedTable {
  readonly title: string;
  readonly source: string;
  /** Read in a public document that quotes the standard; the standard itself was not read. */
  readonly confirmed: boolean;
  readonly tolerancePercent: number;
  readonly rows: readonly Row[];
}

const SCRIPT =
  "tabulated by a public flickermeter verification script of national metrology institutes (open metrology algorithm toolbox, v1.3.0)";

/** Sinusoidal modulation, rate in Hz: the highest Pinst is 1. */
export const TABLE_1: PublishedTable = {
  title: "Table 1, sinusoidal modulation",
  source: `IEC 61000-4-15 Ed 2 (2010), Tables 1a and 1b, ${SCRIPT}`,
  confirmed: true,
  tolerancePercent: 8,
  // biome-ignore format: a table
  rows: [
  [0.5, 2.325, 2.325, 2.453, 2.453],
  [1, 1.397, 1.397, 1.465, 1.465],
  [1.5, 1.067, 1.067, 1.126, 1.126],
  [2, 0.879, 0.879, 0.942, 0.942],
  [2.5, 0.747, 0.747, 0.815, 0.815],
  [3, 0.645, 0.645, 0.717, 0.717],
  [3.5, 0.564, 0.564, 0.637, 0.637],
  [4, 0.497, 0.497, 0.57, 0.57],
  [4.5, 0.442, 0.442, 0.514, 0.514],
  [5, 0.396, 0.396, 0.466, 0.466],
  [5.5, 0.357, 0.357, 0.426, 0.426],
  [6, 0.325, 0.325, 0.393, 0.393],
  [6.5, 0.3, 0.3, 0.366, 0.366],
  [7, 0.28, 0.28, 0.346, 0.346],
  [7.5, 0.265, 0.265, 0.332, 0.332],
  [8, 0.256, 0.256, 0.323, 0.323],
  [8.8, 0.25, 0.25, 0.321, 0.321],
  [9.5, 0.254, 0.254, 0.329, 0.329],
  [10, 0.261, 0.261, 0.341, 0.341],
  [10.5, 0.271, 0.271, 0.355, 0.355],
  [11, 0.283, 0.283, 0.373, 0.373],
  [11.5, 0.298, 0.298, 0.394, 0.394],
  [12, 0.314, 0.314, 0.417, 0.417],
  [13, 0.351, 0.351, 0.469, 0.469],
  [14, 0.393, 0.393, 0.528, 0.528],
  [15, 0.438, 0.438, 0.592, 0.592],
  [16, 0.486, 0.486, 0.66, 0.66],
  [17, 0.537, 0.537, 0.734, 0.734],
  [18, 0.59, 0.59, 0.811, 0.811],
  [19, 0.646, 0.645, 0.892, 0.892],
  [20, 0.704, 0.703, 0.978, 0.977],
  [21, 0.764, 0.764, 1.068, 1.067],
  [22, 0.828, 0.826, 1.162, 1.16],
  [23, 0.894, 0.892, 1.261, 1.257],
  [24, 0.964, 0.959, 1.365, 1.359],
  [25, 1.037, 1.029, 1.476, 1.464],
  [100 / 3, 2.128, 1.758, 3.111, 2.57],
  [40, undefined, 2.963, undefined, 4.393],
  ],
};

/** Rectangular modulation, rate in Hz, in phase with the carrier at the start: the highest Pinst is 1. */
export const TABLE_2: PublishedTable = {
  title: "Table 2, rectangular modulation",
  source: `IEC 61000-4-15 Ed 2 (2010), Tables 2a and 2b, ${SCRIPT}`,
  confirmed: true,
  tolerancePercent: 8,
  // biome-ignore format: a table
  rows: [
  [0.5, 0.509, 0.51, 0.597, 0.598],
  [1, 0.467, 0.468, 0.547, 0.548],
  [1.5, 0.429, 0.429, 0.503, 0.503],
  [2, 0.398, 0.399, 0.468, 0.469],
  [2.5, 0.37, 0.371, 0.438, 0.439],
  [3, 0.352, 0.351, 0.42, 0.419],
  [3.5, 0.342, 0.342, 0.408, 0.408],
  [4, 0.332, 0.331, 0.394, 0.394],
  [4.5, 0.312, 0.313, 0.372, 0.373],
  [5, 0.291, 0.291, 0.348, 0.348],
  [5.5, 0.268, 0.269, 0.323, 0.324],
  [6, 0.248, 0.249, 0.302, 0.302],
  [6.5, 0.231, 0.231, 0.283, 0.283],
  [7, 0.216, 0.217, 0.269, 0.269],
  [7.5, 0.207, 0.206, 0.259, 0.258],
  [8, 0.199, 0.2, 0.253, 0.253],
  [8.8, 0.196, 0.196, 0.252, 0.252],
  [9.5, 0.199, 0.199, 0.258, 0.258],
  [10, 0.203, 0.203, 0.265, 0.266],
  [10.5, 0.212, 0.212, 0.278, 0.278],
  [11, 0.222, 0.222, 0.293, 0.292],
  [11.5, 0.233, 0.233, 0.308, 0.308],
  [12, 0.245, 0.244, 0.325, 0.324],
  [13, 0.272, 0.275, 0.363, 0.367],
  [14, 0.308, 0.306, 0.413, 0.411],
  [15, 0.341, 0.338, 0.46, 0.457],
  [16, 0.376, 0.376, 0.511, 0.509],
  [17, 0.411, 0.42, 0.562, 0.575],
  [18, 0.446, 0.457, 0.611, 0.626],
  [19, 0.497, 0.498, 0.683, 0.688],
  [20, 0.553, 0.537, 0.768, 0.746],
  [21, 0.585, 0.584, 0.811, 0.815],
  [21.5, 0.592, 0.6, 0.82, 0.837],
  [22, 0.612, 0.611, 0.852, 0.851],
  [23, 0.68, 0.678, 0.957, 0.946],
  [24, 0.743, 0.753, 1.052, 1.067],
  [25, 0.764, 0.778, 1.087, 1.088],
  [25.5, 0.806, 0.768, 1.148, 1.072],
  [28, 0.915, 0.962, 1.303, 1.383],
  [30.5, 0.847, 1.105, 1.144, 1.602],
  [100 / 3, 1.671, 1.258, 2.443, 1.823],
  [37, undefined, 0.975, undefined, 1.304],
  [40, undefined, 2.327, undefined, 3.451],
  ],
};

/** Rectangular modulation, rate in changes per minute, begun in the first 5 s of the 10 min: Pst is 1. */
export const TABLE_5: PublishedTable = {
  title: "Table 5, rectangular modulation",
  source: `IEC 61000-4-15 Ed 2 (2010), Table 5, ${SCRIPT}`,
  confirmed: true,
  tolerancePercent: 5,
  // biome-ignore format: a table
  rows: [
  [1, 2.715, 2.719, 3.178, 3.181],
  [2, 2.191, 2.194, 2.561, 2.564],
  [7, 1.45, 1.45, 1.694, 1.694],
  [39, 0.894, 0.895, 1.045, 1.04],
  [110, 0.722, 0.723, 0.844, 0.844],
  [1620, 0.407, 0.409, 0.545, 0.548],
  [4000, 2.343, undefined, 3.426, undefined],
  [4800, undefined, 3.263, undefined, 4.837],
  ],
};

/** ΔV/V of 28 Hz rectangular modulation, on for 12 s and off for 48 s of each minute: Pst is 1. */
export const BURSTS = {
  title: "Bursts of 28 Hz",
  source:
    "Pattern: IEC 61000-4-15:2010/ISH1:2017, 6.8 and Table 11, public copy. Depths: from memory, an independent simulation agrees within 0.3 %",
  confirmed: false,
  tolerancePercent: 5,
  depths: [1.418, 1.48, 2.017, 2.126],
} as const;

/** Pst of five phase jumps of alternating sign at 1, 3, 5, 7 and 9 min, each at a positive zero crossing. */
export const PHASE_JUMPS = {
  title: "Phase jumps",
  source: "IEC 61000-4-15 Ed 2, from memory; the mean over both signs of the first jump agrees with a simulation",
  confirmed: false,
  tolerancePercent: 5,
  rows: [
    [30, 0.913, 0.76, 0.706, 0.587],
    [45, 1.06, 0.882, 0.819, 0.681],
  ],
} as const satisfies { rows: readonly Row[] } & Record<string, unknown>;

/** The voltage that alternates every 4 s with the lamp's own, 0.25 Hz above and below nominal: the highest Pinst is 1. */
export const FREQUENCY_AND_VOLTAGE = {
  title: "Frequency and voltage changes",
  source: "IEC 61000-4-15 Ed 2, from memory; a simulation gives 0.97 to 1.03",
  confirmed: false,
  tolerancePercent: 8,
  voltages: [228.812, 228.805, 119.262, 119.266],
} as const;

/**
 * Carrier with several zero crossings per half cycle, modulated with the 8.8 Hz row of Table 1: the highest Pinst is 1.
 * Harmonics by order in % of the fundamental, each at 180°.
 */
export const DISTORTED_CARRIER = {
  title: "Multiple zero crossings",
  source: "IEC 61000-4-15 Ed 2, from memory; a simulation gives 1.000",
  confirmed: false,
  tolerancePercent: 8,
  // biome-ignore format: a table
  harmonics: [[3, 5], [5, 6], [7, 5], [9, 1.5], [11, 3.5], [13, 3], [17, 2], [19, 1.76], [23, 1.41], [25, 1.27], [29, 1.06], [31, 0.97]],
} as const;

/** Two components, in % of the fundamental, at a harmonic and 10 Hz below it: the highest Pinst is 1. */
export const SIDE_BANDS = {
  title: "Harmonics with side bands",
  source: "IEC 61000-4-15 Ed 2, from memory; agrees with √(ΔV/V / 2) at 10 Hz of Table 1",
  confirmed: false,
  tolerancePercent: 8,
  orders: [3, 9, 13],
  percent: { 230: 3.611, 120: 4.126 },
} as const;
