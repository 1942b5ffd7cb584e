import { HOUR, type Instant, MINUTE, SECOND } from "../../src/recording/time.js";
import { abs, add, type Complex, conj, divide, multiply, polar, sequenceUnbalance, subtract } from "./phasors.js";
import { random, wandering } from "./random.js";

/**
 * A model of one measuring point in an invented low-voltage network, ten minutes at a time: three sources behind an
 * impedance, loads and photovoltaic feed-in on each phase. Everything is derived from phasors, so that phase-to-phase
 * voltages, unbalance, currents and powers agree with each other as they do on a real line.
 */
export interface Site {
  readonly seed: number;
  readonly start: Instant;
  /** Number of ten-minute intervals. */
  readonly count: number;
  /** Hours from UTC to the sun's and the residents' clock. */
  readonly clockHours: number;
  /** Voltage of the source in V. */
  readonly source: number;
  /** Ω, of one phase conductor and of the neutral. */
  readonly impedance: Complex;
  readonly neutralImpedance: Complex;
  /** Rated photovoltaic power on each phase in W, and the share of a clear sky on each day. */
  readonly photovoltaic: readonly [number, number, number];
  readonly sky: readonly number[];
  /** Mean evening load on each phase in W. */
  readonly load: readonly [number, number, number];
  /** Scale of all harmonics; 1 is a village in the evening. */
  readonly distortion: number;
  /** Scale of flicker. */
  readonly flicker: number;
  readonly dips: readonly Dip[];
}

export interface Dip {
  /** Interval it falls into. */
  readonly at: number;
  /** Residual voltage of each phase in V; undefined where it does not reach. */
  readonly residual: readonly [number | undefined, number | undefined, number | undefined];
  readonly pst: number;
}

/** One value per interval. Arrays by phase hold L1, L2, L3 (L12, L23, L31); harmonics by phase and order. */
export interface SiteSeries {
  readonly starts: Float64Array;
  readonly voltage: readonly Float64Array[];
  readonly voltageMin: readonly Float64Array[];
  readonly voltageMax: readonly Float64Array[];
  readonly phaseToPhase: readonly Float64Array[];
  readonly current: readonly Float64Array[];
  readonly activePower: Float64Array;
  readonly reactivePower: Float64Array;
  readonly unbalance: Float64Array;
  /** Index 0 and 1 are empty. */
  readonly harmonics: readonly (readonly Float64Array[])[];
  readonly pst: readonly Float64Array[];
  /** Sliding over the last twelve Pst; NaN in the first eleven intervals. */
  readonly plt: readonly Float64Array[];
  readonly frequency: Float64Array;
  /** Sixty values per interval. */
  readonly frequency10s: Float64Array;
  readonly flagged: Uint8Array;
}

const PHASES = [0, 1, 2] as const;
const ANGLE = [0, -120, 120] as const;
export const HIGHEST_ORDER = 40;
const INTERVAL = 10 * MINUTE;

/** % of the fundamental: through the day, added in the evening, added by inverters at full sun. */
const SPECTRUM: Readonly<Record<number, readonly [number, number, number]>> = {
  2: [0.12, 0.03, 0.03],
  3: [0.9, 0.75, 0.05],
  4: [0.07, 0.02, 0.02],
  5: [1.9, 2.3, -0.3],
  7: [1.2, 1.25, -0.15],
  9: [0.35, 0.4, 0],
  11: [0.65, 0.2, 0.45],
  13: [0.5, 0.15, 0.4],
  15: [0.24, 0.38, 0],
  17: [0.35, 0.1, 0.3],
  19: [0.3, 0.08, 0.25],
  21: [0.22, 0.34, 0],
  23: [0.25, 0.06, 0.2],
  25: [0.22, 0.05, 0.18],
};

export function simulate(site: Site): SiteSeries {
  const { count } = site;
  const empty = () => new Float64Array(count);
  const perPhase = () => PHASES.map(empty);
  const series = {
    starts: Float64Array.from({ length: count }, (_, i) => site.start + i * INTERVAL),
    voltage: perPhase(),
    voltageMin: perPhase(),
    voltageMax: perPhase(),
    phaseToPhase: perPhase(),
    current: perPhase(),
    activePower: empty(),
    reactivePower: empty(),
    unbalance: empty(),
    harmonics: PHASES.map(() => Array.from({ length: HIGHEST_ORDER + 1 }, empty)),
    pst: perPhase(),
    plt: perPhase(),
    flagged: new Uint8Array(count),
    ...frequency(site),
  };
  const sourceNoise = wandering(random(site.seed, "source"), 0.97);
  const cloud = wandering(random(site.seed, "cloud"), 0.6);
  const spread = random(site.seed, "spread");
  const loadNoise = PHASES.map((p) => wandering(random(site.seed, `load ${p}`), 0.7));
  for (let i = 0; i < count; i++) {
    const hour = localHour(site, i);
    const sunlight = sunshine(hour) * passing(site.sky[Math.floor(hour / 24)] ?? 1, cloud());
    const source = site.source * (1 + 0.004 * sourceNoise() - 0.006 * evening(hour) + 0.003 * night(hour));
    const powers = PHASES.map((p) => {
      const load = site.load[p] * Math.max(0.08, daily(hour) + 0.12 * (loadNoise[p] as () => number)());
      return { re: load - site.photovoltaic[p] * sunlight, im: 0.28 * load };
    });
    const emf = PHASES.map((p) => polar(source * (p === 2 ? 0.998 : 1), ANGLE[p]));
    const currents = PHASES.map((p) => conj(divide(powers[p] as Complex, emf[p] as Complex)));
    const neutralDrop = multiply(site.neutralImpedance, currents.reduce(add));
    const voltages = PHASES.map((p) =>
      subtract(subtract(emf[p] as Complex, multiply(site.impedance, currents[p] as Complex)), neutralDrop),
    );
    for (const p of PHASES) {
      const u = voltages[p] as Complex;
      const restless = 0.5 + daily(hour) + sunlight;
      set(series.voltage[p], i, abs(u));
      set(series.voltageMin[p], i, abs(u) - restless * (0.5 + 1.4 * spread.uniform()));
      set(series.voltageMax[p], i, abs(u) + restless * (0.3 + 0.9 * spread.uniform()));
      set(series.phaseToPhase[p], i, abs(subtract(u, voltages[(p + 1) % 3] as Complex)));
      set(series.current[p], i, abs(currents[p] as Complex));
    }
    const total = powers.reduce(add);
    series.activePower[i] = total.re;
    series.reactivePower[i] = total.im;
    series.unbalance[i] = sequenceUnbalance(voltages);
  }
  addHarmonics(site, series.harmonics);
  addFlicker(site, series.pst);
  for (const dip of site.dips) addDip(dip, series);
  for (const p of PHASES) series.plt[p]?.set(slidingPlt(series.pst[p] as Float64Array));
  return series;
}

/** Root sum of the given orders' squares in %: the THD over just the harmonics that a log holds. */
export function distortion(orders: readonly Float64Array[]): Float64Array {
  const length = orders[0]?.length ?? 0;
  return Float64Array.from({ length }, (_, i) => Math.sqrt(orders.reduce((sum, h) => sum + (h[i] as number) ** 2, 0)));
}

function addHarmonics(site: Site, harmonics: readonly (readonly Float64Array[])[]): void {
  for (const p of PHASES) {
    for (let order = 2; order <= HIGHEST_ORDER; order++) {
      const wander = wandering(random(site.seed, `harmonic ${p} ${order}`), 0.85);
      const [base, inEvening, inSun] =
        SPECTRUM[order] ?? (order % 2 === 0 ? [0.04, 0.01, 0.01] : [3.2 / order, 0, 0.02]);
      const phaseFactor = 1 + 0.07 * (p - 1);
      const target = harmonics[p]?.[order] as Float64Array;
      for (let i = 0; i < site.count; i++) {
        const hour = localHour(site, i);
        const level = base + inEvening * evening(hour) + inSun * sunshine(hour);
        target[i] = Math.max(0.01, site.distortion * phaseFactor * level * (1 + 0.07 * wander()));
      }
    }
  }
}

function addFlicker(site: Site, pst: readonly Float64Array[]): void {
  for (const p of PHASES) {
    const wander = wandering(random(site.seed, `flicker ${p}`), 0.5);
    for (let i = 0; i < site.count; i++) {
      const level = 0.22 + 0.25 * daily(localHour(site, i)) + 0.05 * wander();
      set(pst[p], i, Math.max(0.08, site.flicker * level * (1 + 0.1 * p)));
    }
  }
}

function addDip(dip: Dip, series: Pick<SiteSeries, "voltageMin" | "pst" | "flagged">): void {
  series.flagged[dip.at] = 1;
  for (const p of PHASES) {
    const residual = dip.residual[p];
    if (residual === undefined) continue;
    set(series.voltageMin[p], dip.at, residual);
    set(series.pst[p], dip.at, dip.pst);
  }
}

/** Plt = (ΣPst³ / 12)^⅓ over each interval and the eleven before it (IEC 61000-4-15). */
function slidingPlt(pst: Float64Array): Float64Array {
  return pst.map((_, i) => {
    if (i < 11) return Number.NaN;
    return Math.cbrt(pst.subarray(i - 11, i + 1).reduce((sum, v) => sum + v ** 3, 0) / 12);
  });
}

/** Ten-second values about 50 Hz with the spread of a large grid, in whole millihertz, and their ten-minute means. */
function frequency(site: Site): Pick<SiteSeries, "frequency" | "frequency10s"> {
  const wander = wandering(random(site.seed, "frequency"), 0.985);
  const perInterval = INTERVAL / (10 * SECOND);
  const frequency10s = Float64Array.from({ length: site.count * perInterval }, () => 50 + 0.02 * wander());
  const means = Float64Array.from({ length: site.count }, (_, i) => {
    const block = frequency10s.subarray(i * perInterval, (i + 1) * perInterval);
    return block.reduce((sum, f) => sum + f, 0) / perInterval;
  });
  return { frequency: means, frequency10s };
}

/** Hours since the midnight before the recording, on the residents' clock. */
function localHour(site: Site, i: number): number {
  const since = site.start + i * INTERVAL + site.clockHours * HOUR;
  const midnight = Math.floor((site.start + site.clockHours * HOUR) / (24 * HOUR)) * 24 * HOUR;
  return (since - midnight) / HOUR;
}

/** A hump of height 1 about an hour of the day, falling to 0 at `width` hours from it. */
function hump(hour: number, centre: number, width: number): number {
  const distance = Math.abs(((((hour - centre) % 24) + 36) % 24) - 12);
  return distance >= width ? 0 : (1 - (distance / width) ** 2) ** 2;
}

const evening = (hour: number) => hump(hour, 20.5, 4.5);
const night = (hour: number) => hump(hour, 3, 4);
const sunshine = (hour: number) => hump(hour, 12.6, 6.4);
const daily = (hour: number) => 0.25 + 0.35 * hump(hour, 7.5, 2.5) + 0.3 * hump(hour, 12, 2) + evening(hour);

/** What clouds let through: a clear sky stays steady, a dull one wanders. */
function passing(sky: number, wander: number): number {
  return Math.min(1, Math.max(0.05, sky + 0.35 * (1 - sky) * wander + 0.02 * wander));
}

function set(target: Float64Array | undefined, i: number, value: number): void {
  (target as Float64Array)[i] = value;
}
