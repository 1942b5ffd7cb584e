import { z } from "zod";
import { QUANTITIES } from "../recording/quantity.js";
import type { Text } from "../sentence.js";

/** What several parts of the schema of results.json are made from. */

export const quantity = z.enum(Object.keys(QUANTITIES) as [keyof typeof QUANTITIES, ...(keyof typeof QUANTITIES)[]]);
export const phase = z.enum(["L1", "L2", "L3", "N", "L12", "L23", "L31", "system"]);
export const time = z.iso.datetime();
export const count = z.int().nonnegative();
/** In results.json an English string; before it is written it keeps its template and values for other languages. */
export const text = z.string() as unknown as z.ZodType<Text>;

/** What a value is of. */
export const place = {
  quantity,
  phase,
  order: z.int().optional(),
  /** Carrier frequency of mains signalling. */
  hertz: z.number().optional(),
  unit: z.string(),
};

/** A limit set, and the files that it was made from. */
export const ruleSetIdentity = {
  id: z.string(),
  title: z.string(),
  standard: z.string(),
  edition: z.string(),
  sha256: z.string(),
  inherits: z.array(z.strictObject({ id: z.string(), sha256: z.string() })),
  notes: z.array(z.string()),
};

export const verdictSchema = z.enum(["conforms", "does-not-conform", "undecided", "not-assessed", "for-information"]);

/** Why a verdict is what it is; `values` hold the numbers of the sentence. */
export const reason = z.strictObject({
  id: z.string(),
  sentence: text,
  values: z.record(z.string(), z.union([z.number(), z.string()])),
});
