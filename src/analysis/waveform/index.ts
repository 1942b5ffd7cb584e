import { flicker } from "./flicker.js";
import { frequency } from "./frequency.js";
import { harmonics } from "./harmonics.js";
import { magnitude } from "./magnitude.js";
import { mainsSignalling } from "./mains-signalling.js";
import type { Phenomenon } from "./phenomenon.js";
import { power } from "./power.js";
import { unbalance } from "./unbalance.js";

/**
 * All phenomena that are measured from waveforms.
 */
export const PHENOMENA: readonly Phenomenon[] = [
  frequency,
  magnitude,
  harmonics,
  unbalance,
  mainsSignalling,
  flicker,
  power,
];
