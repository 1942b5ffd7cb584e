import { z } from "zod";
import { QUANTITIES } from "../recording/quantity.js";
import { Sentence } from "../sentence.js";

/**
 * The schema of a limit set in rules/*.yaml: a standard, edition and voltage level, each value once.
 * A set may inherit another and change single values (an edition, a country, a contract): see load-rule-set.ts.
 */

const quantities = Object.keys(QUANTITIES) as [keyof typeof QUANTITIES, ...(keyof typeof QUANTITIES)[]];

/** What a limit's number means: % of the declared voltage, % of the nominal frequency, or the quantity's own unit. */
const base = z.enum(["declared-voltage", "nominal-frequency", "own-unit"]);

/** Lower-case words joined by hyphens, for limit sets (also the file name) and requirements. */
export const idSchema = z.string().regex(/^[a-z0-9-]+$/, "an id holds lower-case letters, digits and hyphens only");

/** At least this share of the intervals must lie within; six decimals at most keep every count exact. */
const share = z
  .number()
  .min(0)
  .max(1)
  .refine((value) => Number.isInteger(Number((value * 1e6).toPrecision(12))), "a share has at most six decimals");

const limitOfOrder = z.strictObject({
  max: z.number().positive(),
  source: z.string().optional(),
  confirmed: z.boolean().optional(),
  note: z.string().optional(),
});

export const criterionSchema = z.discriminatedUnion("kind", [
  /** At least `share` (0…1) of the intervals lie within min…max, limits included. */
  z
    .strictObject({
      kind: z.literal("share-within"),
      share,
      min: z.number().optional(),
      max: z.number().optional(),
      of: base,
    })
    .superRefine(({ min, max }, context) => {
      if (min === undefined && max === undefined) {
        context.addIssue({ code: "custom", message: "this criterion has no limit; give min, max or both" });
      } else if (min !== undefined && max !== undefined && min > max) {
        const message = `min (${min}) is above max (${max}); exchange or correct them`;
        context.addIssue({ code: "custom", path: ["min"], message });
      }
    }),
  /** The same with one upper limit for each harmonic order, in % of the fundamental. */
  z.strictObject({
    kind: z.literal("share-within-by-order"),
    share,
    orders: z
      .record(
        z.string().regex(/^([2-9]|[1-4]\d|50)$/, "this is no harmonic order; write a whole number from 2 to 50"),
        limitOfOrder,
      )
      .refine((orders) => Object.keys(orders).length > 0, "this criterion has no limit; give at least one order"),
  }),
  /** Mains signalling: level under a curve of frequency (Hz) and level (% of declared), log–log between the points. */
  z.strictObject({
    kind: z.literal("share-below-curve"),
    share,
    points: z
      .array(z.tuple([z.number().positive(), z.number().positive()]))
      .min(2)
      .refine(
        (points) => points.every(([hz], i) => i === 0 || hz > (points[i - 1]?.[0] ?? 0)),
        "the frequencies of the curve do not rise; list its points from the lowest frequency to the highest",
      ),
  }),
  /**
   * Events are counted in the cells of a table; no limit. Rows in % of declared: from > u ≥ to, null for no bound.
   * Columns in s: from < t ≤ to; the lower end of the first column belongs to it.
   */
  z.strictObject({
    kind: z.literal("event-table"),
    event: z.enum(["dip", "swell"]),
    rows: z
      .array(
        z
          .strictObject({ id: z.string(), from: z.number().nullable(), to: z.number().nullable() })
          .refine(
            ({ from, to }) => from === null || to === null || from > to,
            "a row runs from its upper bound down to its lower one; exchange from and to",
          ),
      )
      .min(1),
    columns: z
      .array(
        z
          .strictObject({ id: z.string(), from: z.number(), to: z.number() })
          .refine(
            ({ from, to }) => from < to,
            "a column runs from its shortest duration to its longest; exchange from and to",
          ),
      )
      .min(1),
  }),
  /** Values the standard gives as an indication, in % of declared; nothing is judged. */
  z.strictObject({
    kind: z.literal("indication"),
    event: z.enum(["rapid-voltage-change"]),
    general: z.number(),
    occasional: z.number().optional(),
  }),
]);

/** What a criterion can judge; a limit meant for another quantity would be compared with the wrong numbers. */
function quantitiesOf(criterion: Criterion): readonly string[] | undefined {
  switch (criterion.kind) {
    case "share-within":
      if (criterion.of === "own-unit") return undefined;
      return criterion.of === "declared-voltage" ? ["voltage"] : ["frequency"];
    case "share-within-by-order":
      return ["harmonic-voltage", "interharmonic-voltage"];
    case "share-below-curve":
      return ["mains-signalling"];
    case "event-table":
    case "indication":
      return ["voltage"];
  }
}

export const requirementSchema = z
  .strictObject({
    id: idSchema,
    /** Short heading, without numbers: "Supply voltage, most of the week". */
    title: z.string(),
    clause: z.string(),
    quantity: z.enum(quantities),
    /** Interval the standard judges: "10min", "2h", "10s", "3s"; half-cycle for events. */
    interval: z.enum(["half-cycle", "3s", "10s", "1min", "10min", "2h"]),
    /** supply: the voltages of the connection, each phase by itself; system: one value for the supply. */
    phases: z.enum(["supply", "system"]),
    period: z.enum(["day", "week", "year"]),
    criterion: criterionSchema,
    /** Whether intervals flagged by a dip, swell or interruption decide (include) or are left out (exclude). */
    flagged: z.enum(["include", "exclude"]),
    /** false: reported for information, never part of the verdict. */
    binding: z.boolean(),
    /** Two notes make a sentence once a set that inherits adds its own. */
    note: z.union([z.string(), z.instanceof(Sentence)]).optional(),
    source: z.string(),
    /** true: the number was read in a public document; false: from memory or conflicting, and every output says so. */
    confirmed: z.boolean(),
  })
  .superRefine(({ criterion, quantity }, context) => {
    const known = quantitiesOf(criterion);
    if (known === undefined || known.includes(quantity)) return;
    const message = `this criterion judges ${known.join(" or ")}, not ${quantity}; correct the quantity or the criterion`;
    context.addIssue({ code: "custom", path: ["quantity"], message });
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
