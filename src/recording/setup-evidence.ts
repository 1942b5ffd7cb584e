import { z } from "zod";
import { QUANTITIES, type Quantity } from "./quantity.js";
import { statedTimeSchema } from "./stated-time.js";

/**
 * The parts of the measurement setup that a report needs to hold as evidence: who reports, with what it was measured and
 * how exactly, what network it was, and which spans of time are said not to count. All are statements of the user.
 */

const words = z.string().regex(/\S/, "this text is empty; write it or leave the entry out");
const date = z.iso.date("a date is a day of the calendar, written as 2026-03-02");

/** What ISO/IEC 17025:2017, 7.8.2 and 7.8.6, asks a report to say of itself; the report marks what is missing. */
export const reportIdentitySchema = z.strictObject({
  /** Identifies the report; printed on every page. */
  number: words.optional(),
  customer: words.optional(),
  requestedBy: words.optional(),
  laboratory: z.strictObject({ name: words, address: words.optional() }).optional(),
  performedBy: words.optional(),
  authorisedBy: words.optional(),
  issued: date.optional(),
  samplingPlan: words.optional(),
  /** Additions to, deviations from and exclusions from the method. */
  deviations: words.optional(),
});

const sensorSchema = z
  .strictObject({
    /** "voltage transformer, feeder cell 3", "clamp L1" */
    what: words,
    measures: z.enum(["voltage", "current"]).optional(),
    ratio: words.optional(),
    /** Accuracy class, which is its largest error in % of the reading: 0.1, 0.2, 0.5, 1, 3. */
    class: z.number().positive().max(10).optional(),
    serialNumber: words.optional(),
    certificate: words.optional(),
  })
  .refine(
    (sensor) => sensor.class === undefined || sensor.measures !== undefined,
    "the class of this sensor is of use only if it is known what it measures; add measures: voltage or current",
  );

/** Expanded uncertainty of one quantity as stated, for instance in a calibration certificate. */
const statedUncertaintySchema = z
  .strictObject({
    quantity: z.enum(Object.keys(QUANTITIES) as [Quantity, ...Quantity[]]),
    expanded: z.number().positive(),
    /** % of the reading, % of the declared voltage, or absolute in the quantity's own unit (V, Hz, % …). */
    of: z.enum(["reading", "declared", "absolute"]),
    /** Coverage factor of `expanded`; 2 where not given. */
    k: z.number().min(1).max(4).optional(),
    /** Where it is stated: "certificate 4711". */
    source: words.optional(),
  })
  .refine(
    ({ quantity, of }) => of !== "declared" || quantity === "voltage",
    "only the uncertainty of the voltage is stated in % of the declared voltage; use reading or absolute",
  );

export const instrumentSchema = z.strictObject({
  type: words.optional(),
  /** Of IEC 61000-4-30. */
  class: z.enum(["A", "S", "other"]).optional(),
  serialNumber: words.optional(),
  firmware: words.optional(),
  calibrationDate: date.optional(),
  calibrationDue: date.optional(),
  certificate: words.optional(),
  /** How its clock was set, and what a check against a reference showed. */
  synchronisation: words.optional(),
  sensors: z.array(sensorSchema).optional(),
  uncertainty: z
    .array(statedUncertaintySchema)
    .refine(
      (list) => new Set(list.map(({ quantity }) => quantity)).size === list.length,
      "a quantity is listed twice; state one uncertainty for each",
    )
    .optional(),
});

export const networkSchema = z.strictObject({
  level: z.enum(["LV", "MV", "HV"]).optional(),
  /** Whether the network is synchronously connected to an interconnected system. */
  interconnected: z.boolean().optional(),
  /** "TN-C-S", "TT", "resonant earthing", … */
  earthing: words.optional(),
});

/**
 * The conditions under which EN 50160 does not apply: the list of its scope, as a public catalogue entry of the 2022
 * edition gives it. That it is clause 1.1, and that older editions list the same, is from memory.
 */
export const EXCLUSION_REASONS = [
  "temporary-supply",
  "non-compliant-installation",
  "exceptional-weather",
  "third-party-interference",
  "acts-of-authorities",
  "industrial-action",
  "force-majeure",
  "power-shortage",
] as const;

export const exclusionSchema = z.strictObject({
  from: statedTimeSchema,
  to: statedTimeSchema,
  reason: z.enum(EXCLUSION_REASONS),
  assertedBy: words,
  /** The evidence for it: a fault report, a weather service's record. */
  reference: words.optional(),
  comment: words.optional(),
});

/** simple: a value is compared with the limit itself; guarded: with the limit moved by the uncertainty. */
export const decisionRuleSchema = z.enum(["simple", "guarded"]);

export type Instrument = z.infer<typeof instrumentSchema>;
export type GivenExclusion = z.infer<typeof exclusionSchema>;
export type DecisionRule = z.infer<typeof decisionRuleSchema>;
