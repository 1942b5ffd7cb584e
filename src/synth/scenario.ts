import { z } from "zod";

/**
 * What a made log holds. Times are seconds after the first sample; angles are degrees; voltages and currents are r.m.s.
 * `phases` names the phases to neutral that an entry is about, all where it is left out; where the log is of voltages phase
 * to phase (delta) these are differences of the phases named here, so that every scenario is one that a network can do.
 */

const phase = z.enum(["L1", "L2", "L3"]);
const phases = z.array(phase).min(1).optional();
const percent = z.number().min(0).max(1000);
const atS = z.number().min(0);
const durationS = z.number().positive();

/** A sine of a whole multiple of the frequency; `degrees` is its angle where the fundamental of its phase crosses zero upwards. */
const harmonic = z.strictObject({
  order: z.int().min(2).max(400),
  /** Of the fundamental of the phase. */
  percent,
  degrees: z.number().default(0),
  phases,
});

/** From `atS` on: the fundamental and all that is related to it, in % of what the phase began with. */
const step = z.strictObject({ atS, toPercent: percent, phases });

const phasor = z.strictObject({ volts: z.number().positive(), degrees: z.number() });

export const scenarioSchema = z.strictObject({
  title: z.string().min(1),
  /** Local time of `zone`, or with an offset: 2027-03-04T11:55:00, 2027-03-04T10:55:00.5Z. */
  start: z.string(),
  /** IANA zone or fixed offset of the recorder's clock. */
  zone: z.string(),
  durationS: durationS.max(366 * 86400),
  /** Of the log of the waveforms; without it there is none. */
  samplesPerSecond: z.number().min(100).max(10_000_000).optional(),
  /** Logs of interval values beside the log of the waveforms, or instead of it. */
  intervalLogs: z.array(z.enum(["1min", "10min"])).default([]),
  nominalFrequency: z.union([z.literal(50), z.literal(60)]),
  /** V, of the voltages in the log: phase to neutral for star and single, phase to phase for delta. */
  declaredVoltage: z.number().positive(),
  /** star: L1, L2, L3 to neutral; delta: L12, L23, L31; single: L1 to neutral. */
  connection: z.enum(["star", "delta", "single"]),
  /** Hz; or a course of straight lines through points, constant before the first and after the last. */
  frequency: z.union([z.number().positive(), z.array(z.strictObject({ atS, hertz: z.number().positive() })).min(1)]),
  /** Fundamentals: `volts` for all phases with an `unbalance`, or each phase by itself. */
  voltage: z.strictObject({
    /** As `declaredVoltage` phase to neutral or phase to phase; the positive sequence where there is an unbalance. */
    volts: z.number().positive().optional(),
    /** Angle of L1 at the first sample. */
    degrees: z.number().default(0),
    unbalance: z
      .strictObject({
        negativePercent: percent.max(99).default(0),
        negativeDegrees: z.number().default(0),
        zeroPercent: percent.default(0),
        zeroDegrees: z.number().default(0),
      })
      .optional(),
    /** V and degrees at the first sample. */
    phases: z.partialRecord(phase, phasor).optional(),
    harmonics: z.array(harmonic).default([]),
    /** Sines of a constant frequency, in % of the fundamental of the phase. */
    interharmonics: z
      .array(z.strictObject({ hertz: z.number().positive(), percent, degrees: z.number().default(0), phases }))
      .default([]),
    steps: z.array(step).default([]),
  }),
  /** Of the whole wave of a phase; `percent` is ΔV/V, peak to peak. It rests while a dip, swell or interruption lasts. */
  modulation: z
    .array(
      z.strictObject({
        shape: z.enum(["sinusoidal", "rectangular"]),
        hertz: z.number().positive(),
        percent: z.number().min(0).max(200),
        fromS: atS.default(0),
        toS: z.number().positive().optional(),
        phases,
      }),
    )
    .default([]),
  /** Residual r.m.s. voltage of the whole wave in % of the declared voltage (of its √3rd part for delta). */
  dips: z.array(z.strictObject({ atS, durationS, residualPercent: z.number().min(0).lt(90), phases })).default([]),
  swells: z.array(z.strictObject({ atS, durationS, percent: z.number().gt(110).max(1000), phases })).default([]),
  /** In all phases. */
  interruptions: z
    .array(z.strictObject({ atS, durationS, residualPercent: z.number().min(0).lt(5).default(0) }))
    .default([]),
  /** Not touched by what happens to the voltage. */
  currents: z
    .strictObject({
      amperes: z.number().positive().optional(),
      /** By how much the fundamental lags the voltage of its phase as that begins. */
      lagDegrees: z.number().default(0),
      phases: z
        .partialRecord(phase, z.strictObject({ amperes: z.number().positive(), lagDegrees: z.number() }))
        .optional(),
      harmonics: z.array(harmonic).default([]),
      steps: z.array(step).default([]),
      /** True: the sum of the phases as a channel N. */
      neutral: z.boolean().default(false),
    })
    .optional(),
  /** Normally distributed; the same seed gives the same noise. */
  noise: z
    .strictObject({
      seed: z.int().min(0),
      /** Of the samples, r.m.s. in % of the declared voltage and of the currents as they begin. */
      voltagePercent: percent.default(0),
      currentPercent: percent.default(0),
      /** Of the values in interval logs, in % of each value. */
      intervalPercent: percent.default(0),
    })
    .optional(),
  /** Step between two values of the waveform. */
  quantisation: z
    .strictObject({ volts: z.number().positive().optional(), amperes: z.number().positive().optional() })
    .optional(),
  /** By how much the clock of the recorder is fast. */
  clockOffsetS: z.number().default(0),
});

/** A scenario with everything that may be left out filled in. */
export type Scenario = z.output<typeof scenarioSchema>;
/** A scenario as written. */
export type GivenScenario = z.input<typeof scenarioSchema>;
export type ScenarioPhase = z.infer<typeof phase>;
