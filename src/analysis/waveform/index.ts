import { flicker } from "./flicker.js";
import { frequency } from "./frequency.js";
import { magnitude } from "./magnitude.js";
import type { Phenomenon } from "./phenomenon.js";

/** All phenomena that are measured from waveforms. */
export const PHENOMENA: readonly Phenomenon[] = [frequency, magnitude, flicker];
