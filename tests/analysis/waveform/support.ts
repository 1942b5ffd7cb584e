import { type MeasuringPoint, measureWaveform } from "../../../src/analysis/waveform/chain.js";
import type {
  BasicWindow,
  ChainOptions,
  ChainSetup,
  Cycle,
  HalfCycle,
  Phenomenon,
  PhenomenonResult,
} from "../../../src/analysis/waveform/phenomenon.js";
import type { IntervalSeries } from "../../../src/recording/measurements.js";
import type { SeriesKey } from "../../../src/recording/quantity.js";
import type { WaveformSource } from "../../../src/recording/waveform.js";

export const POINT: MeasuringPoint = { nominalFrequency: 50, declaredVoltage: 230, connection: "star" };

/** What the front end hands over, copied. */
export interface Seen {
  setup?: ChainSetup;
  readonly cycles: Cycle[];
  readonly halves: HalfCycle[];
  readonly windows: BasicWindow[];
  readonly gaps: number[];
  /** Kinds of call in their order. */
  readonly order: ("half" | "window" | "gap")[];
}

/** Runs the front end alone; `watch` sees each half cycle as it comes. */
export async function seen(
  source: WaveformSource,
  point: MeasuringPoint = POINT,
  watch: (half: HalfCycle, setup: ChainSetup) => void = () => {},
): Promise<Seen> {
  const all: Seen = { cycles: [], halves: [], windows: [], gaps: [], order: [] };
  const probe: Phenomenon = {
    id: "probe",
    clause: "",
    start: (setup) => {
      all.setup = setup;
      return {
        cycle: (cycle) => all.cycles.push({ ...cycle }),
        halfCycle: (half) => {
          watch(half, setup);
          all.order.push("half");
          all.halves.push(structuredClone(half));
        },
        window: (window) => {
          all.order.push("window");
          all.windows.push(structuredClone(window));
        },
        gap: (next) => {
          all.order.push("gap");
          all.gaps.push(next);
        },
        finish: () => ({}),
      };
    },
  };
  await measureWaveform(source, point, {}, [probe]);
  return all;
}

export async function measured(
  source: WaveformSource,
  options: ChainOptions,
  phenomena: readonly Phenomenon[],
  point: MeasuringPoint = POINT,
): Promise<Required<PhenomenonResult>> {
  return measureWaveform(source, point, options, phenomena);
}

/** The one series of a key and interval in µs. */
export function one(series: readonly IntervalSeries[], key: Partial<SeriesKey>, interval?: number): IntervalSeries {
  const wanted = Object.entries(key);
  const found = series.filter(
    (s) => wanted.every(([k, v]) => s[k as keyof SeriesKey] === v) && (interval ?? s.interval) === s.interval,
  );
  if (found.length !== 1) throw new Error(`${found.length} series of ${JSON.stringify(key)} at ${interval}`);
  return found[0] as IntervalSeries;
}

/** Largest distance of the values of a series from a number. */
export function farthest(values: ArrayLike<number>, from: number): number {
  return Math.max(...Array.from(values, (v) => Math.abs(v - from)));
}
