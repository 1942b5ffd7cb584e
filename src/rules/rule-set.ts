import { z } from "zod";
import { QUANTITIES } from "../recording/quantity.js";

/**
 * The schema of a limit set in rules/*.yaml: a standard, edition and voltage level, each value once.
 * A set may inherit another and change single values (an edition, a country, a contract): see load-rule-set.ts.
 */

const quantities = Object.keys(QUANTITIES) as [keyof typeof QUANTITIES, ...(keyof typeof QUANTITIES)[]];

/** What a limit's number means: % of the declared voltage, % of the nominal frequency, or the quantity's own unit. */
const base = z.enum(["declared-voltage", "nominal-frequency", "own-unit"]);

const limitOfOrder = z.strictObject({
  max: z.number().positive(),
  source: z.string().optional(),
  confirmed: z.boolean().optional(),
  note: z.string().optional(),
});

export const criterionSchema = z.discriminatedUnion("kind", [
  /** At least `share` (0…1) of the intervals lie within min…max, limits included. */
  z.strictObject({
    kind: z.literal("share-within"),
    share: z.number().min(0).max(1),
    min: z.number().optional(),
    max: z.number().optional(),
    of: base,
  }),
  /** The same with one upper limit for each harmonic order, in % of the fundamental. */
  z.strictObject({
    kind: z.literal("share-within-by-order"),
    share: z.number().min(0).max(1),
    orders: z.record(z.string().regex(/^\d+$/), limitOfOrder),
  }),
  /** Mains signalling: level under a curve of frequency (Hz) and level (% of declared), log–log between the points. */
  z.strictObject({
    kind: z.literal("share-below-curve"),
    share: z.number().min(0).max(1),
    points: z.array(z.tuple([z.number().positive(), z.number().positive()])).min(2),
  }),
  /** Events are counted in the cells of a table; no limit. Rows in % of declared (from ≥ to), columns in s (from < to]). */
  z.strictObject({
    kind: z.literal("event-table"),
    event: z.enum(["dip", "swell"]),
    rows: z.array(z.strictObject({ id: z.string(), from: z.number().nullable(), to: z.number().nullable() })).min(1),
    columns: z.array(z.strictObject({ id: z.string(), from: z.number(), to: z.number() })).min(1),
  }),
  /** Values the standard gives as an indication, in % of declared; nothing is judged. */
  z.strictObject({
    kind: z.literal("indication"),
    event: z.enum(["rapid-voltage-change"]),
    general: z.number(),
    occasional: z.number().optional(),
  }),
]);

export const requirementSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  /** Short heading: "Supply voltage, 95 % of the week". */
  title: z.string(),
  clause: z.string(),
  quantity: z.enum(quantities),
  /** Interval the standard judges: "10min", "2h", "10s", "3s". */
  interval: z.enum(["3s", "10s", "1min", "10min", "2h"]),
  /** supply: the voltages of the connection, each phase by itself; system: one value for the supply. */
  phases: z.enum(["supply", "system"]),
  period: z.enum(["day", "week", "year"]),
  criterion: criterionSchema,
  /** Whether intervals flagged by a dip, swell or interruption decide (include) or are left out (exclude). */
  flagged: z.enum(["include", "exclude"]),
  /** false: reported for information, never part of the verdict. */
  binding: z.boolean(),
  note: z.string().optional(),
  source: z.string(),
  /** true: the number was read in a public document; false: from memory or conflicting, and every output says so. */
  confirmed: z.boolean(),
});

export type Criterion = z.infer<typeof criterionSchema>;
export type Requirement = z.infer<typeof requirementSchema>;

/** A limit set with all inheritance carried out. */
export interface RuleSet {
  readonly id: string;
  readonly title: string;
  readonly standard: string;
  readonly edition: string;
  readonly level: "LV" | "MV" | "HV";
  readonly network: "interconnected" | "not-interconnected";
  readonly nominalFrequency: 50 | 60;
  /** The standard's own nominal voltage, phase to neutral, in V, where it names one (LV: 230). */
  readonly nominalVoltage?: number;
  /** Plain words about the whole set: scope, what is unconfirmed. */
  readonly notes: readonly string[];
  /** Ids and SHA-256 of every file the set was made from: itself first, then what it inherits. */
  readonly files: readonly { readonly id: string; readonly sha256: string }[];
  readonly requirements: readonly Requirement[];
}
