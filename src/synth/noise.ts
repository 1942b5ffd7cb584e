/**
 * Normally distributed numbers about 0 with standard deviation 1, each computed from its place alone, so that noise does
 * not depend on how a signal is cut into blocks. Mixing steps: public-domain murmur3 finaliser (A. Appleby), then Box and
 * Muller (1958). None lies beyond ±`LARGEST_NOISE`.
 * @param seed of the scenario @param stream one for each channel @param i number of the sample
 */
export function noiseAt(seed: number, stream: number, i: number): number {
  const key = mixed((seed ^ Math.imul(stream + 1, 0x9e3779b9)) + Math.floor(i / 2 ** 32));
  const first = mixed(key ^ mixed(i >>> 0));
  const second = mixed(first + 0x9e3779b9);
  const size = Math.sqrt(-2 * Math.log((first + 1) / 2 ** 32));
  return size * Math.cos((2 * Math.PI * second) / 2 ** 32);
}

/** √(2 ln 2³²) */
export const LARGEST_NOISE = 6.67;

function mixed(value: number): number {
  let h = value | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
