/** The binomial distribution, through the regularized incomplete beta function (DLMF 8.17), for n up to some millions. */

/** Lanczos coefficients for g = 7, nine terms (P. Godfrey, 2001, as widely reprinted); relative error about 1e-15. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** ln Γ(x) for x ≥ ½. */
function logGamma(x: number): number {
  const sum = LANCZOS.reduce((total, c, i) => (i === 0 ? c : total + c / (x - 1 + i)), 0);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const MOST_STEPS = 10_000;

/** The continued fraction of DLMF 8.17.22, by the modified method of Lentz; converges fast for x < (a + 1)/(a + b + 2). */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  const kept = (v: number) => (Math.abs(v) < tiny ? tiny : v);
  let c = 1;
  let d = 1 / kept(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / kept(1 + even * d);
    c = kept(1 + even / c);
    fraction *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / kept(1 + odd * d);
    c = kept(1 + odd / c);
    fraction *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return fraction;
}

/** I_x(a, b) for a, b ≥ 1 and x in 0…1. */
function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const scale = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  if (x < (a + 1) / (a + b + 2)) return (Math.exp(scale) * betaFraction(a, b, x)) / a;
  return 1 - (Math.exp(scale) * betaFraction(b, a, 1 - x)) / b;
}

/** Probability of at most k successes in n independent trials of probability p (DLMF 8.17.5). */
export function atMost(k: number, n: number, p: number): number {
  if (k < 0) return 0;
  return k >= n ? 1 : 1 - incompleteBeta(k + 1, n - k, p);
}

const HALVINGS = 60;

/** Where a rising function of 0…1 reaches `level`. */
function whereReached(rising: (p: number) => number, level: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (rising(middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The exact interval of a share, k found among n (Clopper and Pearson, Biometrika 26, 1934): the shares under which neither
 * so many nor so few would be found with a probability below (1 − confidence)/2.
 */
export function exactInterval(k: number, n: number, confidence: number): { from: number; to: number } {
  const tail = (1 - confidence) / 2;
  return {
    from: k === 0 ? 0 : whereReached((p) => incompleteBeta(k, n - k + 1, p), tail),
    to: k === n ? 1 : whereReached((p) => incompleteBeta(k + 1, n - k, p), 1 - tail),
  };
}

/**
 * Ranks (1-based) of the order statistics between which the p-quantile of any distribution lies with at least this confidence:
 * the highest lower rank and the lowest upper one that leave out at most (1 − confidence)/2 each. 0 and n + 1 where
 * no value is low or high enough.
 */
export function quantileRanks(n: number, p: number, confidence: number): { ranks: [number, number]; coverage: number } {
  const tail = (1 - confidence) / 2;
  const lower = lastRank(n, (rank) => atMost(rank - 1, n, p) <= tail);
  const upper = lastRank(n, (rank) => atMost(rank - 1, n, p) < 1 - tail) + 1;
  return { ranks: [lower, upper], coverage: atMost(upper - 1, n, p) - atMost(lower - 1, n, p) };
}

/** The last rank of 0…n that meets a condition which all before it meet; 0 always does. */
function lastRank(n: number, condition: (rank: number) => boolean): number {
  let [low, high] = [0, n + 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (condition(middle)) low = middle;
    else high = middle;
  }
  return low;
}
