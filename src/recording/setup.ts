import { z } from "zod";
import { LOGGED_QUANTITIES, type LoggedQuantity } from "./quantity.js";

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
  /** Name exactly as in the log, or the 1-based position among the analog channels. */
  channel: z.union([z.string(), z.int().positive()]),
  /** True: leave the channel out. Then nothing else may be given. */
  ignore: z.literal(true).optional(),
  quantity: z.enum(["voltage", "current"]).optional(),
  phase: z.enum(["L1", "L2", "L3", "N", "L12", "L23", "L31"]).optional(),
  /** True: the channel was connected the wrong way round. */
  inverted: z.boolean().optional(),
});

/** A transformer ratio: a number, or primary/secondary as in "20000/100". */
const transformerRatio = z.union([z.number().positive(), z.string().regex(/^\d+(\.\d+)?\/\d+(\.\d+)?$/)]);

export const setupSchema = z.strictObject({
  site: z.string().optional(),
  measuringPoint: z.string().optional(),
  instrument: z
    .strictObject({
      type: z.string().optional(),
      class: z.enum(["A", "S", "other"]).optional(),
      serialNumber: z.string().optional(),
      calibrationDate: z.string().optional(),
    })
    .optional(),
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
  columns: z.array(columnSetupSchema).optional(),
  channels: z.array(channelSetupSchema).optional(),
});

/** The setup as given in a file and options. */
export type GivenSetup = z.infer<typeof setupSchema>;
export type ColumnSetup = z.infer<typeof columnSetupSchema>;
export type ChannelSetup = z.infer<typeof channelSetupSchema>;

/** A value with its origin: given by the user, inferred from the data (with the reason), or assumed (with a warning). */
export interface Stated<T> {
  readonly value: T;
  readonly origin: "given" | "inferred" | "assumed";
  readonly reason?: string;
}

/** The setup a verdict rests on: every fact that decides it, with its origin. */
export interface Setup {
  readonly site?: Stated<string>;
  readonly measuringPoint?: Stated<string>;
  readonly instrument?: Stated<string>;
  readonly connection: Stated<"star" | "delta" | "single">;
  readonly declaredVoltage: Stated<number>;
  readonly nominalFrequency: Stated<50 | 60>;
  readonly zone: Stated<string>;
  readonly intervalLabel: Stated<"start" | "end">;
  readonly ruleSet: Stated<string>;
  readonly voltageRatio?: Stated<string>;
  readonly currentRatio?: Stated<string>;
}
