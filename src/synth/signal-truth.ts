import { channelsOf, type MadeChannel } from "./channels.js";
import { FrequencyCourse } from "./frequency-course.js";
import { declaredToNeutral } from "./phases.js";
import type { Scenario } from "./scenario.js";
import { eventsOf, type InjectedEvent, type Modulation, type SignalSpan, spansOf } from "./spans.js";
import { currentWaves, type Sine, sum, voltageWaves, type Wave } from "./waves.js";

/** EN 50160 counts harmonics to this order in the total distortion. */
const THD_HIGHEST_ORDER = 40;

/** One channel in a span, without what a modulation does. */
export interface ChannelTruth {
  /** Of the whole wave, in V or A. */
  readonly rms: number;
  readonly fundamental: Sine;
  /** By order from 2, and by frequency in Hz, in % of the fundamental; none where there is no fundamental. */
  readonly harmonics: ReadonlyMap<number, number>;
  readonly interharmonics: ReadonlyMap<number, number>;
  /** %, orders 2 to 40; NaN where there is no fundamental. */
  readonly thd: number;
  readonly modulation: Modulation | undefined;
}

export interface PowerTruth {
  /** W, var, VA; the fundamental's reactive power is positive where the current lags. */
  readonly p: number;
  readonly q1: number;
  readonly s: number;
}

export interface SpanTruth {
  readonly fromS: number;
  readonly toS: number;
  readonly channels: readonly ChannelTruth[];
  /** %; undefined without three voltages, NaN where there is no positive sequence. u0 is undefined for phase to phase. */
  readonly u2: number | undefined;
  readonly u0: number | undefined;
  /** Per phase that has a voltage to neutral and a current, in their order. */
  readonly powers: readonly PowerTruth[];
}

/**
 * What a scenario's signal is known to be, computed from its phasors and not from its samples: before noise and
 * quantisation, and over whole cycles.
 */
export class SignalTruth {
  readonly channels: readonly MadeChannel[];
  readonly spans: readonly SpanTruth[];
  readonly course: FrequencyCourse;
  readonly events: readonly InjectedEvent[];

  constructor(scenario: Scenario) {
    const voltages = voltageWaves(scenario);
    const currents = currentWaves(scenario) ?? [];
    this.channels = channelsOf(scenario, voltages, currents);
    this.course = new FrequencyCourse(scenario);
    this.events = eventsOf(scenario);
    const least = 1e-9 * declaredToNeutral(scenario);
    this.spans = spansOf(scenario, voltages).map((span) => {
      const channels = this.channels.map((made) =>
        channelTruth(made, span, [...voltages, ...currents], voltages.length, least),
      );
      return {
        fromS: span.fromS,
        toS: span.toS,
        channels,
        ...unbalance(channels, scenario),
        powers: scenario.connection === "delta" ? [] : powers(span, voltages, currents),
      };
    });
  }

  /** R.m.s. of a channel over a stretch of time, in V or A. */
  rms(channel: number, fromS: number, toS: number): number {
    return Math.sqrt(
      this.mean(fromS, toS, ({ channels }, from, to) => {
        const { rms, modulation } = channels[channel] as ChannelTruth;
        return rms * rms * meanSquare(modulation, from, to);
      }),
    );
  }

  /** Root of the mean square of a percentage over the spans in which it has a value. */
  percent(fromS: number, toS: number, of: (span: SpanTruth) => number | undefined): number {
    return Math.sqrt(this.mean(fromS, toS, (span) => (of(span) ?? Number.NaN) ** 2));
  }

  /** Arithmetic mean. */
  power(phase: number, fromS: number, toS: number, of: keyof PowerTruth): number {
    return this.mean(fromS, toS, ({ powers }) => (powers[phase] as PowerTruth)[of]);
  }

  /** Whether a dip, swell or interruption falls into a stretch of time. */
  flagged(from: number, to: number): boolean {
    return this.events.some(({ fromS, durationS }) => fromS < to && from < fromS + durationS);
  }

  private mean(fromS: number, toS: number, of: (span: SpanTruth, from: number, to: number) => number): number {
    let total = 0;
    let covered = 0;
    for (const span of this.spans) {
      const [from, to] = [Math.max(fromS, span.fromS), Math.min(toS, span.toS)];
      if (from >= to) continue;
      const value = of(span, from, to);
      if (Number.isNaN(value)) continue;
      total += value * (to - from);
      covered += to - from;
    }
    return covered === 0 ? Number.NaN : total / covered;
  }
}

function channelTruth(
  { plus, minus }: MadeChannel,
  span: SignalSpan,
  waves: readonly Wave[],
  voltages: number,
  least: number,
): ChannelTruth {
  const factor = (c: number) => (c < voltages ? span.voltageFactors[c] : span.currentFactors[c - voltages]) as number;
  const scaled = (c: number, { rms, angle }: Sine, turn: number) => ({ rms: factor(c) * rms, angle: angle + turn });
  const added = (of: (wave: Wave) => readonly Sine[]): Sine =>
    sum([
      ...plus.flatMap((c) => of(waves[c] as Wave).map((sine) => scaled(c, sine, 0))),
      ...minus.flatMap((c) => of(waves[c] as Wave).map((sine) => scaled(c, sine, Math.PI))),
    ]);
  const conductors = [...plus, ...minus].map((c) => waves[c] as Wave);
  const orders = ascending(conductors.flatMap((wave) => [...wave.orders.keys()]));
  const hertz = ascending(conductors.flatMap((wave) => wave.interharmonics.map((i) => i.hertz)));
  const byOrder = orders.map((order) => {
    const sine = added((wave) => (wave.orders.has(order) ? [wave.orders.get(order) as Sine] : []));
    return [order, sine] as const;
  });
  const byHertz = hertz.map((f) => [f, added((wave) => wave.interharmonics.filter((i) => i.hertz === f))] as const);
  const fundamental = byOrder[0]?.[1] as Sine;
  const share = fundamental.rms > least ? 100 / fundamental.rms : Number.NaN;
  const harmonics = byOrder.slice(1).map(([order, { rms }]) => [order, share * rms] as const);
  const counted = harmonics.filter(([order]) => order <= THD_HIGHEST_ORDER).map(([, percent]) => percent);
  return {
    rms: Math.hypot(...byOrder.map(([, { rms }]) => rms), ...byHertz.map(([, { rms }]) => rms)),
    fundamental,
    harmonics: new Map(harmonics),
    interharmonics: new Map(byHertz.map(([f, { rms }]) => [f, share * rms])),
    thd: Number.isNaN(share) ? share : Math.hypot(...counted),
    modulation: (plus[0] as number) < voltages ? span.modulations[plus[0] as number] : undefined,
  };
}

function ascending(list: readonly number[]): number[] {
  return [...new Set(list)].sort((a, b) => a - b);
}

/** Symmetrical components of the fundamentals (Fortescue 1918). */
function unbalance(channels: readonly ChannelTruth[], scenario: Scenario): Pick<SpanTruth, "u2" | "u0"> {
  if (scenario.connection === "single") return { u2: undefined, u0: undefined };
  const third = (2 * Math.PI) / 3;
  const sequence = (turn: number) =>
    sum(channels.slice(0, 3).map(({ fundamental: { rms, angle } }, k) => ({ rms, angle: angle + k * turn }))).rms / 3;
  const positive = sequence(third);
  const percent = positive > 1e-9 * scenario.declaredVoltage ? 100 / positive : Number.NaN;
  return {
    u2: percent * sequence(-third),
    u0: scenario.connection === "delta" ? undefined : percent * sequence(0),
  };
}

function powers(span: SignalSpan, voltages: readonly Wave[], currents: readonly Wave[]): PowerTruth[] {
  return currents.map((current, k) => {
    const voltage = voltages[k] as Wave;
    const factor = (span.voltageFactors[k] as number) * (span.currentFactors[k] as number);
    let p = 0;
    for (const [order, u] of voltage.orders) {
      const i = current.orders.get(order);
      if (i !== undefined) p += u.rms * i.rms * Math.cos(u.angle - i.angle);
    }
    const [u, i] = [voltage.orders.get(1) as Sine, current.orders.get(1) as Sine];
    return {
      p: factor * p,
      q1: factor * u.rms * i.rms * Math.sin(u.angle - i.angle),
      s: factor * u.rms * voltage.ratio * i.rms * current.ratio,
    };
  });
}

/** Mean of (1 + m(t))² over a stretch of time, in closed form; the parts of a cycle of the carrier at its ends are not counted. */
export function meanSquare(modulation: Modulation | undefined, fromS: number, toS: number): number {
  if (modulation === undefined) return 1;
  const { shape, hertz, percent, fromS: begin } = modulation;
  const depth = percent / 200;
  const [a, b] = [hertz * (fromS - begin), hertz * (toS - begin)];
  if (shape === "rectangular") return 1 + depth * depth + (2 * depth * (triangle(b) - triangle(a))) / (b - a);
  const omega = 2 * Math.PI;
  const linear = (Math.cos(omega * a) - Math.cos(omega * b)) / omega / (b - a);
  const square = 0.5 - (Math.sin(2 * omega * b) - Math.sin(2 * omega * a)) / (4 * omega) / (b - a);
  return 1 + 2 * depth * linear + depth * depth * square;
}

/** Integral of a square wave (+1 in the first half of a period) over periods. */
function triangle(periods: number): number {
  const part = periods - Math.floor(periods);
  return Math.min(part, 1 - part);
}
