import { createHash } from "node:crypto";
import { z } from "zod";
import { type CheckedYaml, checkAgainst, parseYaml } from "../checked-yaml.js";
import { idSchema, requirementSchema } from "./rule-set.js";

/**
 * One limit-set file. It either stands on its own (all of `requirements`) or inherits other sets and states only what
 * differs, so that each value stands in one place.
 */

const heading = {
  /** Same as the file name without its ending. */
  id: idSchema,
  title: z.string().min(1),
};

const facts = {
  standard: z.string().min(1),
  edition: z.string().min(1),
  level: z.enum(["LV", "MV", "HV"]),
  network: z.enum(["interconnected", "not-interconnected"]),
  nominalFrequency: z.union([z.literal(50), z.literal(60)]),
};

const volts = z.number().positive();
const notes = z.array(z.string().min(1));

const baseSchema = z.strictObject({
  ...heading,
  ...facts,
  nominalVoltage: volts.optional(),
  notes: notes.optional(),
  requirements: z.array(requirementSchema).min(1),
});

const overlaySchema = z.strictObject({
  ...heading,
  /** One set, or several: the changes of each are carried out in this order, those of a common ancestor once. */
  inherits: z.union([idSchema, z.array(idSchema).min(1)]),
  ...z.object(facts).partial().shape,
  /** null: the inherited nominal voltage does not hold here. */
  nominalVoltage: volts.nullable().optional(),
  /** Added to the inherited ones. */
  notes: notes.optional(),
  /** Marks everything inherited as not confirmed for this set: the note is added to each requirement. */
  unconfirmed: z.strictObject({ note: z.string().min(1), source: z.string().min(1).optional() }).optional(),
  remove: z.array(idSchema).optional(),
  /** Requirement id → the entries that differ, as a JSON merge patch (RFC 7396): null takes an entry away. */
  change: z.record(idSchema, z.record(z.string(), z.unknown())).optional(),
  add: z.array(requirementSchema).optional(),
});

export type BaseContent = z.infer<typeof baseSchema>;
export type OverlayContent = z.infer<typeof overlaySchema>;

export interface RuleFile {
  readonly name: string;
  readonly id: string;
  /** SHA-256 of the text with its line endings made LF, in hexadecimal. */
  readonly sha256: string;
  readonly inherits: readonly string[];
  readonly content: BaseContent | OverlayContent;
  readonly fault: CheckedYaml<unknown>["fault"];
}

/**
 * Reads a limit-set file as such; what it inherits is not looked at.
 * @throws UsageError for any fault of form, with file, line and column.
 */
export function parseRuleFile(text: string, name: string): RuleFile {
  const unix = text.replace(/\r\n?/g, "\n");
  const { value, fault } = parseYaml(unix, name);
  const keys = typeof value === "object" && value !== null ? Object.keys(value) : [];
  const orphan = keys.find((key) => ["change", "add", "remove", "unconfirmed"].includes(key));
  if (!keys.includes("inherits") && orphan !== undefined) {
    throw fault([orphan], `"${orphan}" needs a set that it changes; add "inherits: ID" with the id of that set`, "key");
  }
  const content = checkAgainst(keys.includes("inherits") ? overlaySchema : baseSchema, value, fault);
  const fileId = name.replace(/^.*[\\/]/, "").replace(/\.ya?ml$/, "");
  if (content.id !== fileId) {
    throw fault(["id"], `the id "${content.id}" differs from the file name; write "${fileId}" or rename the file`);
  }
  const inherits = "inherits" in content ? [content.inherits].flat() : [];
  return { name, id: content.id, sha256: createHash("sha256").update(unix).digest("hex"), inherits, content, fault };
}
