import {
  BURSTS,
  COLUMNS,
  DISTORTED_CARRIER,
  FREQUENCY_AND_VOLTAGE,
  type LampAndMains,
  PHASE_JUMPS,
  type PublishedTable,
  SIDE_BANDS,
  TABLE_1,
  TABLE_2,
  TABLE_5,
} from "./flicker-tables.js";
import { Flickermeter, SETTLING_S } from "./flickermeter.js";

/**
 * Sample of the voltage at t seconds after the test period begins; before it the meter settles. The scale does not
 * matter. Steps are averaged over the sampling interval dt around t, as a recorder's anti-aliasing filter does: sampled
 * at a point, a step would be displaced by up to half an interval.
 */
export type Voltage = (t: number, dt: number) => number;

/** One published test: a voltage and what a flickermeter has to show for it. */
export interface FlickerTrial extends LampAndMains {
  readonly title: string;
  readonly what: string;
  readonly quantity: "pinst-max" | "pst";
  readonly expected: number;
  readonly tolerancePercent: number;
  readonly source: string;
  readonly confirmed: boolean;
  readonly voltage: Voltage;
}

const PST_PERIOD_S = 600;
/** Every modulation of Tables 1 and 2 repeats within it. */
const PINST_PERIOD_S = 10;
const BLOCK = 4096;

/**
 * Runs the meter over the settling time and the test period, 10 s for Pinst or 10 min for Pst, and returns the quantity
 * that the trial is about. Periodic modulation runs through the settling time too, with a change at the start of the
 * period, so that 10 min at n changes per minute hold 10·n changes of full size.
 */
export function runTrial(trial: FlickerTrial, samplesPerSecond: number): number {
  const { lamp, nominalFrequency, quantity, voltage } = trial;
  const meter = new Flickermeter({ samplesPerSecond, lamp, nominalFrequency });
  const block = new Float64Array(BLOCK);
  const feed = (first: number, end: number) => {
    for (let start = first; start < end; start += BLOCK) {
      const count = Math.min(BLOCK, end - start);
      for (let i = 0; i < count; i++) block[i] = voltage((start + i) / samplesPerSecond, 1 / samplesPerSecond);
      meter.push(block, 0, count);
    }
  };
  feed(-Math.ceil(SETTLING_S * samplesPerSecond), 0);
  meter.closeInterval();
  feed(0, Math.round((quantity === "pst" ? PST_PERIOD_S : PINST_PERIOD_S) * samplesPerSecond));
  const { pst, pinstMax } = meter.closeInterval();
  return quantity === "pst" ? pst : pinstMax;
}

/** Every test of the tables, for all four pairs of lamp and mains. */
export function flickerTrials(): FlickerTrial[] {
  return [
    ...tableTrials(TABLE_1, "pinst-max", (hertz) => `${rounded(hertz)} Hz sinusoidal`, sinusoidal),
    ...tableTrials(TABLE_2, "pinst-max", (hertz) => `${rounded(hertz)} Hz rectangular`, rectangular),
    ...tableTrials(
      TABLE_5,
      "pst",
      (changes) => `${changes} changes per minute`,
      (changes) => rectangular(changes / 120),
    ),
    ...bursts(),
    ...phaseJumps(),
    ...frequencyAndVoltage(),
    ...distortedCarrier(),
    ...sideBands(),
  ];
}

const rounded = (hertz: number) => Number(hertz.toFixed(2));

const sine = (cycles: number) => Math.sin(2 * Math.PI * (cycles - Math.floor(cycles)));

/** Deviation from the mean level at t, in units of half of ΔV/V, averaged over dt. */
type Modulation = (t: number, dt: number) => number;

const sinusoidal =
  (hertz: number): Modulation =>
  (t) =>
    sine(hertz * t);

/** Changes at t = 0 and every half period before and after. */
const rectangular =
  (hertz: number): Modulation =>
  (t, dt) => {
    const halfPeriods = 2 * hertz * t;
    const sinceChange = halfPeriods - Math.floor(halfPeriods);
    const level = Math.floor(halfPeriods) % 2 === 0 ? 1 : -1;
    return level * Math.min(1, Math.min(sinceChange, 1 - sinceChange) / (hertz * dt));
  };

/** A carrier of amplitude 1, both phases zero at t = 0. */
const modulated =
  (carrierHertz: number, depthPercent: number, modulation: Modulation): Voltage =>
  (t, dt) =>
    sine(carrierHertz * t) * (1 + (depthPercent / 200) * modulation(t, dt));

function tableTrials(
  table: PublishedTable,
  quantity: FlickerTrial["quantity"],
  what: (rate: number) => string,
  modulation: (rate: number) => Modulation,
): FlickerTrial[] {
  const { rows, ...about } = table;
  return rows.flatMap(([rate, ...depths]) =>
    COLUMNS.flatMap((column, i) => {
      const depth = depths[i];
      if (depth === undefined) return [];
      return {
        ...about,
        ...column,
        what: `${what(rate)}, ΔV/V ${depth} %`,
        quantity,
        expected: 1,
        voltage: modulated(column.nominalFrequency, depth, modulation(rate)),
      };
    }),
  );
}

function bursts(): FlickerTrial[] {
  const { depths, ...about } = BURSTS;
  const rectangle = rectangular(28);
  const pattern: Modulation = (t, dt) => (t >= 0 && t % 60 < 12 ? rectangle(t, dt) : 0);
  return COLUMNS.map((column, i) => ({
    ...about,
    ...column,
    what: `28 Hz rectangular, 12 s of each minute, ΔV/V ${depths[i]} %`,
    quantity: "pst",
    expected: 1,
    voltage: modulated(column.nominalFrequency, depths[i] as number, pattern),
  }));
}

function phaseJumps(): FlickerTrial[] {
  const { rows, ...about } = PHASE_JUMPS;
  return rows.flatMap(([degrees, ...expected]) =>
    COLUMNS.flatMap((column, i) =>
      [degrees, -degrees].map((first) => ({
        ...about,
        ...column,
        what: `five phase jumps of ${degrees}°, the first ${first > 0 ? "forward" : "back"}`,
        quantity: "pst" as const,
        expected: expected[i] as number,
        voltage: jumping(column.nominalFrequency, first / 360),
      })),
    ),
  );
}

/** Phase forward by `turns` and back again in turn, at the first positive zero crossing from minute 1, 3, 5, 7, 9 on. */
function jumping(hertz: number, turns: number): Voltage {
  const minutes = [1, 3, 5, 7, 9];
  const back = (Math.ceil(turns) - turns) / hertz;
  const jumps = minutes.map((minute, i) => 60 * minute + (i % 2 === 0 ? 0 : back));
  return (t, dt) => {
    let displaced = 0;
    for (const [i, jump] of jumps.entries()) {
      const after = Math.min(1, Math.max(0, (t - jump) / dt + 0.5));
      displaced += i % 2 === 0 ? after : -after;
    }
    const still = displaced < 1 ? (1 - displaced) * sine(hertz * t) : 0;
    return displaced > 0 ? still + displaced * sine(hertz * t + turns) : still;
  };
}

function frequencyAndVoltage(): FlickerTrial[] {
  const { voltages, ...about } = FREQUENCY_AND_VOLTAGE;
  return COLUMNS.flatMap((column, i) =>
    [-0.25, 0.25].map((offset) => {
      const { lamp, nominalFrequency } = column;
      const other = voltages[i] as number;
      return {
        ...about,
        ...column,
        what: `every 4 s between ${nominalFrequency + offset} Hz, ${lamp} V and ${nominalFrequency - offset} Hz, ${other} V`,
        quantity: "pinst-max" as const,
        expected: 1,
        // Both parts of 4 s are whole numbers of cycles.
        voltage: (t: number) => {
          const part = t - 8 * Math.floor(t / 8);
          return part < 4
            ? lamp * sine((nominalFrequency + offset) * part)
            : other * sine((nominalFrequency - offset) * (part - 4));
        },
      };
    }),
  );
}

function distortedCarrier(): FlickerTrial[] {
  const { harmonics, ...about } = DISTORTED_CARRIER;
  const [rate, ...depths] = TABLE_1.rows.find(([hertz]) => hertz === 8.8) as PublishedTable["rows"][number];
  return COLUMNS.map((column, i) => ({
    ...about,
    ...column,
    what: `distorted carrier, ${rate} Hz sinusoidal, ΔV/V ${depths[i]} %`,
    quantity: "pinst-max",
    expected: 1,
    voltage: (t) => {
      const cycles = column.nominalFrequency * t;
      const carrier = harmonics.reduce((sum, [h, percent]) => sum - (percent / 100) * sine(h * cycles), sine(cycles));
      return carrier * (1 + ((depths[i] as number) / 200) * sine(rate * t));
    },
  }));
}

function sideBands(): FlickerTrial[] {
  const { orders, percent, ...about } = SIDE_BANDS;
  return orders.flatMap((order) =>
    COLUMNS.map((column) => {
      const { lamp, nominalFrequency } = column;
      const high = order * nominalFrequency;
      const level = percent[lamp] / 100;
      return {
        ...about,
        ...column,
        what: `${percent[lamp]} % each at ${high - 10} Hz and ${high} Hz`,
        quantity: "pinst-max" as const,
        expected: 1,
        voltage: (t: number) => sine(nominalFrequency * t) + level * (sine(high * t) + sine((high - 10) * t)),
      };
    }),
  );
}
