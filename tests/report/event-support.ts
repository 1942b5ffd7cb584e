import { measure } from "../../src/analysis/index.js";
import type { EventTrace, VoltageEvent, WaveformPiece } from "../../src/recording/measurements.js";
import type { Phase } from "../../src/recording/quantity.js";
import type { Recording } from "../../src/recording/recording.js";
import { type Instant, SECOND } from "../../src/recording/time.js";
import { random } from "../support/random.js";
import { current, type Signal, sampled, scaled, sines, voltage } from "../support/waveform.js";
import { type Report, START, sampleReport } from "./support.js";

const PHASES = ["L1", "L2", "L3"] as const;

export interface MadeEvent {
  readonly kind?: VoltageEvent["kind"];
  readonly atS: number;
  readonly durationS: number;
  /** Voltage left, or reached, in % of 230 V. */
  readonly percent: number;
  readonly phases?: readonly Phase[];
  readonly more?: Partial<VoltageEvent>;
}

/** A dip, or what is said, of the sizes given; complete, with its phases alike. */
export function madeEvent({ kind = "dip", atS, durationS, percent, phases = ["L1"], more }: MadeEvent): VoltageEvent {
  const start = START + Math.round(atS * SECOND);
  const measure = { start, durationS, extreme: 2.3 * percent, reference: 230, percent };
  const perPhase = phases.map((phase) => ({ phase, crossings: 1, ...measure }));
  return { kind, origin: "computed", phases, unit: "V", ...measure, perPhase, complete: true, ...more };
}

/** What a recorder keeps of a rectangular dip or swell on L1: the r.m.s. values of half cycles, and samples. */
export function madeRecord(event: VoltageEvent, samplesPerSecond = 3200): Pick<VoltageEvent, "trace" | "waveform"> {
  const { durationS, extreme, start } = event;
  const levelAt = (t: number) => (t >= 0 && t < durationS ? extreme : 230);
  const times = Float64Array.from({ length: Math.round((0.3 + durationS) * 100) }, (_, i) => i / 100 - 0.1);
  const trace: EventTrace = {
    times,
    channels: PHASES.map((phase, k) => ({
      phase,
      values: Float32Array.from(times, (t) => (k === 0 ? levelAt(t) : 230)),
    })),
  };
  const piece = (from: number, to: number): WaveformPiece => ({
    start: start + Math.round(from * SECOND),
    samplesPerSecond,
    channels: PHASES.map((phase, k) => ({
      quantity: "voltage",
      phase,
      samples: Float32Array.from({ length: Math.round((to - from) * samplesPerSecond) }, (_, i) => {
        const t = from + i / samplesPerSecond;
        return Math.SQRT2 * (k === 0 ? levelAt(t) : 230) * Math.sin(2 * Math.PI * (50 * t - k / 3));
      }),
    })),
  });
  const waveform =
    durationS < 0.3
      ? [piece(-0.1, 0.2), piece(0.2, durationS + 0.2)]
      : [piece(-0.1, 0.2), piece(durationS - 0.1, durationS + 0.2)];
  return { trace, waveform };
}

/** Dips, and one swell in ten, of a week with a loose connection, each with its record. */
export function manyEvents(count: number): VoltageEvent[] {
  const noise = random(5, "loose connection");
  return Array.from({ length: count }, (_, i) => {
    const kind = i % 10 === 0 ? "swell" : "dip";
    const percent = kind === "swell" ? 111 + 30 * noise.uniform() : 90 * noise.uniform();
    const event = madeEvent({
      kind,
      atS: (i * 7 * 86_400) / count,
      durationS: 0.01 * 10 ** (3.7 * noise.uniform()),
      percent,
      phases: i % 3 === 0 ? ["L1", "L2", "L3"] : ["L2"],
    });
    return { ...event, ...madeRecord(event) };
  });
}

/** Dip of L1 and L3 to 41 % for 120 ms, dip of all to 72 % for 60 ms, swell of L2 to 115 % for 200 ms, in 12.4 s of samples. */
export async function shortReport(): Promise<Report> {
  const event = (signal: Signal, phase: Phase): Signal => {
    const deep = phase === "L2" ? signal : scaled(signal, 2, 2.12, 0.41);
    const all = scaled(deep, 4, 4.06, 0.72);
    return phase === "L2" ? scaled(all, 8, 8.2, 1.15) : all;
  };
  const channels = PHASES.flatMap((phase, k) => {
    const turn = -120 * k;
    const volts = sines([230, 50, turn], [230 * 0.03, 250, 5 * turn], [230 * 0.02, 180, turn]);
    const amperes = sines([10, 50, turn - 20], [1.2, 250, 5 * turn]);
    return [[voltage(phase), event(volts, phase)] as const, [current(phase), amperes] as const];
  });
  const start: Instant = START + 250_000;
  const source = sampled(channels, { samplesPerSecond: 6400, seconds: 12.4, start });
  const point = { nominalFrequency: 50, declaredVoltage: 230, connection: "star" } as const;
  const recording = { start, end: start + 12.4 * SECOND, series: [], waveforms: [source] } as unknown as Recording;
  return sampleReport({ kind: "waveforms", measurements: await measure(recording, point) });
}
