import { z } from "zod";
import {
  decisionRuleSchema,
  EXCLUSION_REASONS,
  instrumentSchema,
  reportIdentitySchema,
} from "../recording/setup-evidence.js";
import { count, quantity, text, time } from "./result-parts.js";

/** The parts of results.json that say how sure a verdict is, and on whose word it rests. */

/** As stated by the user, nothing added; what is absent was not stated. */
export const reportStatedSchema = reportIdentitySchema;
export const instrumentStatedSchema = instrumentSchema;

export const decisionSchema = z.strictObject({
  rule: decisionRuleSchema,
  /** assumed: the usual one, because none was given. */
  origin: z.enum(["given", "assumed"]),
});

/**
 * What adds to the uncertainty of a quantity. The contributions to one quantity combine as the root of the sum of their
 * squares, each taken at the value it is asked for.
 */
export const uncertaintySchema = z.strictObject({
  quantity,
  from: z.enum(["instrument", "sensor", "resolution"]),
  /** Expanded uncertainty, ±, with the coverage factor `k`. */
  expanded: z.number().positive(),
  /** "%" of `of`, or the quantity's own unit. */
  unit: z.string(),
  of: z.enum(["reading", "declared", "absolute"]),
  /** Never less than this, in the quantity's own unit. */
  least: z.number().positive().optional(),
  k: z.literal(2),
  origin: z.enum(["given", "inferred"]),
  /** false: the figure behind it is from memory. */
  confirmed: z.boolean(),
  reason: text,
});

/** Where a decided row lies between its limits and their guard bands; ILAC-G8:09/2019 calls them pass, conditional pass, conditional fail, fail. */
export const zoneSchema = z.enum(["conforms-clearly", "conforms-within", "fails-within", "fails-clearly"]);

/** From one rank to another of the values in rising order; an end that is absent lies beyond the lowest or highest value. */
const rankInterval = z.strictObject({
  from: z.number().optional(),
  to: z.number().optional(),
  /** 1-based ranks of the ends; 0 and n + 1 stand for the absent ones. */
  ranks: z.tuple([count, count]),
  /** Probability that the interval covers the value, were the intervals independent. */
  coverage: z.number(),
});

/** What the counted values would say about a longer time, were they independent of one another, which they are not. */
export const samplingSchema = z.strictObject({
  confidence: z.number(),
  /** Order-statistics intervals of the values at the required share: see `percentile`. */
  low: rankInterval.optional(),
  high: rankInterval.optional(),
  /** Exact binomial interval (Clopper and Pearson) of the share outside, 0…1. */
  shareOutside: z.strictObject({ from: z.number(), to: z.number() }),
});

export const exclusionStatedSchema = z.strictObject({
  from: time,
  to: time,
  reason: z.enum(EXCLUSION_REASONS),
  assertedBy: z.string(),
  reference: z.string().optional(),
  comment: z.string().optional(),
  /** Intervals it takes out, as `recording.intervals` counts them. */
  intervals: count,
  /** The verdict would be another if this exclusion alone were not made. */
  turnsVerdict: z.boolean(),
});

export type Zone = z.infer<typeof zoneSchema>;
export type Uncertainty = z.infer<typeof uncertaintySchema>;
export type Sampling = z.infer<typeof samplingSchema>;
export type Exclusion = z.infer<typeof exclusionStatedSchema>;
