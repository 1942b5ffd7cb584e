/**
 * A small seeded random generator for test data: the same seed and name give the same numbers on every machine.
 * Only integer arithmetic and exact divisions are used, so no platform's mathematics library can change a digit.
 */
export interface Random {
  /** Uniform in 0 … 1, 1 excluded. */
  uniform(): number;
  /** Bell-shaped about 0 with standard deviation 1: twelve uniform numbers added, hence never beyond ±6. */
  normal(): number;
  /** A whole number from 0 to n − 1. */
  below(n: number): number;
}

/**
 * An independent stream for each name, so that one more column in a log leaves the others as they were.
 * Mixing steps: public-domain mulberry32 (T. Ettinger, 2017) on an FNV-1a hash of the name.
 */
export function random(seed: number, name: string): Random {
  let state = (seed ^ 0x811c9dc5) >>> 0;
  for (let i = 0; i < name.length; i++) state = Math.imul(state ^ name.charCodeAt(i), 0x01000193) >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    normal: () => {
      let sum = -6;
      for (let i = 0; i < 12; i++) sum += uniform();
      return sum;
    },
    below: (n) => Math.floor(uniform() * n),
  };
}

/** A slowly wandering value about 0 with standard deviation 1: each step keeps the share `memory` (0 … 1) of the last. */
export function wandering(source: Random, memory: number): () => number {
  const fresh = Math.sqrt(1 - memory * memory);
  let value = source.normal();
  return () => {
    const now = value;
    value = memory * value + fresh * source.normal();
    return now;
  };
}
