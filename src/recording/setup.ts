import { z } from "zod";
import type { Text } from "../sentence.js";
import { LOGGED_QUANTITIES, type LoggedQuantity } from "./quantity.js";
import {
  decisionRuleSchema,
  exclusionSchema,
  instrumentSchema,
  networkSchema,
  reportIdentitySchema,
} from "./setup-evidence.js";
import { commentSchema, complaintSchema, photovoltaicSchema, voltageStepsSchema } from "./setup-marks.js";

/**
 * The measurement setup: what the person who set up the recorder knows and the log may not say.
 * The schema of the setup file (YAML); an unknown key is an error, so that a typo never drops a fact.
 */

const quantities = Object.keys(LOGGED_QUANTITIES) as [LoggedQuantity, ...LoggedQuantity[]];

/** What one column of a log holds, where the header does not say it or says it wrongly. */
export const columnSetupSchema = z.strictObject({
  /** Header text exactly as in the log, or the 1-based position. */
  column: z.union([z.string(), z.int().positive()]),
  /** True: leave the column out. Then nothing else may be given. */
  ignore: z.literal(true).optional(),
  quantity: z.enum([...quantities, "flag"]).optional(),
  phase: z.enum(["L1", "L2", "L3", "N", "L12", "L23", "L31", "system"]).optional(),
  order: z.int().min(0).max(50).optional(),
  statistic: z.enum(["mean", "min", "max"]).optional(),
  /** V, kV, mV, A, kA, mA, Hz, mHz, %, p.u., "% of declared", W, kW, MW, var, kvar, Mvar, VA, kVA, MVA, 1. */
  unit: z.string().optional(),
});

/** What one channel of a waveform log holds, where its name and phase do not say it or say it wrongly. */
export const channelSetupSchema = z.strictObject({
  /** Name exactly as in the log, or the 1-based position: among the analog channels, or of the column in a table. */
  channel: z.union([z.string(), z.int().positive()]),
  /** True: leave the channel out. Then nothing else may be given. */
  ignore: z.literal(true).optional(),
  quantity: z.enum(["voltage", "current"]).optional(),
  phase: z.enum(["L1", "L2", "L3", "N", "L12", "L23", "L31"]).optional(),
  /** True: the channel was connected the wrong way round. */
  inverted: z.boolean().optional(),
});

/** A transformer ratio: a number, or primary/secondary as in "20000/100". */
const transformerRatio = z.union([
  z.number().positive(),
  z
    .string()
    .regex(/^\d*[1-9]\d*(\.\d+)?\/\d*[1-9]\d*(\.\d+)?$/, "a ratio is a number, or primary/secondary such as 20000/100"),
]);

const percent = z.number().positive().max(1000);

/**
 * How waveforms are measured, where it shall differ from the usual. Two measurements can be compared only where these
 * agree, so the report prints all of them.
 */
export const measurementSchema = z.strictObject({
  /** Reference lamp of the flickermeter (IEC 61000-4-15), by its rated voltage: 230 or 120. */
  lamp: z.union([z.literal(230), z.literal(120)]).optional(),
  /** IEC 61000-4-7: harmonic subgroups (usual) or groups; and the first-order smoothing of 1.5 s. */
  harmonics: z.enum(["subgroups", "groups"]).optional(),
  smoothedHarmonics: z.boolean().optional(),
  /** Carrier frequencies of mains signalling, in Hz; without them no signalling voltage is measured. */
  signallingFrequencies: z.array(z.number().positive()).optional(),
  /** Thresholds in % of the reference: 90, 110, 5 and 2 where not given. */
  dip: percent.optional(),
  swell: percent.optional(),
  interruption: percent.optional(),
  hysteresis: percent.optional(),
  /** Reference of dips and swells: the declared voltage (usual), or one that follows the voltage with 1 min. */
  reference: z.enum(["declared", "sliding"]).optional(),
  /** Rapid voltage changes, in % of the declared voltage: 3 where not given. */
  rapidVoltageChange: percent.optional(),
  /** Transients, deviation in % of the crest of the declared voltage: 20 where not given. */
  transient: percent.optional(),
  /** Half-cycle r.m.s. current in A beyond which an inrush is listed; without it none is looked for. */
  inrushA: z.number().positive().optional(),
});

export type MeasurementSettings = z.infer<typeof measurementSchema>;

export const setupSchema = z.strictObject({
  site: z.string().optional(),
  measuringPoint: z.string().optional(),
  report: reportIdentitySchema.optional(),
  instrument: instrumentSchema.optional(),
  network: networkSchema.optional(),
  exclusions: z.array(exclusionSchema).optional(),
  decisionRule: decisionRuleSchema.optional(),
  /** star: three phases and neutral, judged phase to neutral; delta: judged phase to phase; single: L1 to neutral. */
  connection: z.enum(["star", "delta", "single"]).optional(),
  /** Un or Uc in V, of the voltages that are judged: phase to neutral for star and single, phase to phase for delta. */
  declaredVoltage: z.number().positive().optional(),
  nominalFrequency: z.union([z.literal(50), z.literal(60)]).optional(),
  /** IANA zone ("Europe/Vienna"), "UTC", or a fixed offset ("+01:00") of stamps that carry none. */
  zone: z.string().optional(),
  /** Whether a stamp marks the start or the end of its interval. */
  intervalLabel: z.enum(["start", "end"]).optional(),
  dateOrder: z.enum(["dmy", "mdy", "ymd"]).optional(),
  /** For a log whose numbers do not show which of their marks is the decimal one ("231.412"). */
  decimalMark: z.enum([".", ","]).optional(),
  /** Applied to all voltages (currents, powers): the log holds secondary values. */
  voltageRatio: transformerRatio.optional(),
  currentRatio: transformerRatio.optional(),
  /** For a table of samples whose times are missing or too coarse to tell it. */
  samplesPerSecond: z.number().positive().optional(),
  /** When the first sample of a table without dates was taken: ISO 8601, in `zone` unless it ends in Z or an offset. */
  start: z
    .string()
    .regex(/^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:\d\d(\.\d{1,6})?)?(Z|[+-]\d\d:?\d\d)?$/)
    .optional(),
  columns: z.array(columnSetupSchema).optional(),
  channels: z.array(channelSetupSchema).optional(),
  measurement: measurementSchema.optional(),
  complaints: z.array(complaintSchema).optional(),
  comments: z.array(commentSchema).optional(),
  /** For the question what a tap step would change: % of the declared voltage, ±2.5 and ±5 where not given. */
  voltageSteps: voltageStepsSchema.optional(),
  photovoltaic: photovoltaicSchema.optional(),
});

/** The setup as given in a file and options. */
export type GivenSetup = z.infer<typeof setupSchema>;
export type ColumnSetup = z.infer<typeof columnSetupSchema>;
export type ChannelSetup = z.infer<typeof channelSetupSchema>;

/** A value with its origin: given by the user, inferred from the data (with the reason), or assumed (with a warning). */
export interface Stated<T> {
  readonly value: T;
  readonly origin: "given" | "inferred" | "assumed";
  readonly reason?: Text;
}

/** The setup a verdict rests on: every fact that decides it, with its origin. */
export interface Setup {
  readonly site?: Stated<string>;
  readonly measuringPoint?: Stated<string>;
  readonly instrument?: Stated<Text>;
  readonly network?: Stated<Text>;
  readonly connection: Stated<"star" | "delta" | "single">;
  readonly declaredVoltage: Stated<number>;
  readonly nominalFrequency: Stated<50 | 60>;
  readonly zone: Stated<string>;
  readonly intervalLabel: Stated<"start" | "end">;
  readonly ruleSet: Stated<string>;
  readonly voltageRatio?: Stated<Text>;
  readonly currentRatio?: Stated<Text>;
  readonly photovoltaic?: Stated<Text>;
  /** Thresholds and methods, where waveforms are measured. */
  readonly measurement?: Stated<Text>;
}
