import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, type ParsedNode, parseDocument } from "yaml";
import type { z } from "zod";
import { UsageError } from "./errors.js";

/** YAML written by people, checked against a schema: every fault is one sentence with file, line and column. */

type Path = readonly PropertyKey[];

export interface CheckedYaml<T> {
  readonly value: T;
  /** A fault at the entry with this path, for what a schema cannot see. `on`: at the entry's value or at its name. */
  fault(path: Path, what: string, on?: "value" | "key"): UsageError;
}

/** A YAML text whose content has not been checked yet; `value` is plain data. */
export type ParsedYaml = CheckedYaml<unknown>;

/**
 * Reads one YAML document. `name` is the file name for messages.
 * @throws UsageError for broken YAML, a key given twice, or more than one document.
 */
export function parseYaml(text: string, name: string): ParsedYaml {
  const lineCounter = new LineCounter();
  const document = parseDocument(text, { lineCounter, prettyErrors: false, uniqueKeys: sameKey });
  const faultAt = (offset: number, what: string): UsageError => {
    const { line, col } = lineCounter.linePos(offset);
    return new UsageError(`${name}, line ${line}, column ${col}: ${what}.`);
  };
  const broken = document.errors[0] ?? document.warnings[0];
  if (broken?.code === "DUPLICATE_KEY") {
    const key = /^["']?([^\s:"']*)/.exec(text.slice(broken.pos[0]))?.[1];
    throw faultAt(broken.pos[0], `"${key}" is given twice; keep one of them`);
  }
  if (broken) throw faultAt(broken.pos[0], `this is not valid YAML (${broken.message}); correct it here`);
  let value: unknown;
  try {
    value = document.toJS();
  } catch (error) {
    throw faultAt(
      0,
      `the aliases (*) of this file cannot be carried out (${(error as Error).message}); write values out`,
    );
  }
  const resolve = (node: unknown) => (isAlias(node) ? node.resolve(document) : node);
  return {
    value,
    fault: (path, what, on = "value") => faultAt(offsetOf(document.contents, path, on, resolve), what),
  };
}

/**
 * The value as the schema gives it back.
 * @throws UsageError at the first fault in the file; an entry with an unknown name comes before all others, because
 *   it is the likely cause of the entry that is missing.
 */
export function checkAgainst<S extends z.ZodType>(
  schema: S,
  value: unknown,
  fault: CheckedYaml<unknown>["fault"],
): z.infer<S> {
  const result = schema.safeParse(value, { error: sentence });
  if (result.success) return result.data;
  const issues = result.error.issues;
  const issue = issues.find(({ code }) => code === "unrecognized_keys") ?? issues[0];
  if (issue === undefined) throw new Error("a schema refused a value without giving a reason");
  if (issue.code === "unrecognized_keys") throw fault([...issue.path, issue.keys[0] ?? ""], issue.message, "key");
  throw fault(issue.path, issue.message, issue.code === "invalid_key" ? "key" : "value");
}

/** Names are compared as text, so that 5 and "5" are one key. */
function sameKey(a: ParsedNode, b: ParsedNode): boolean {
  return a === b || (isScalar(a) && isScalar(b) && String(a.value) === String(b.value));
}

/** Where the entry stands; for one that is not there, the innermost entry around it. */
function offsetOf(root: unknown, path: Path, on: "value" | "key", resolve: (node: unknown) => unknown): number {
  let node = root;
  let offset = (node as Node | null)?.range?.[0] ?? 0;
  for (const [depth, step] of path.entries()) {
    const last = depth === path.length - 1;
    const inner = resolve(node);
    if (isMap(inner)) {
      const pair = inner.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
      if (pair === undefined) break;
      const value = pair.value as Node | null;
      offset = (last && on === "value" ? value?.range?.[0] : undefined) ?? (pair.key as Node).range?.[0] ?? offset;
      node = value;
    } else if (isSeq(inner)) {
      const item = inner.items[Number(step)] as Node | undefined;
      if (item === undefined) break;
      offset = item.range?.[0] ?? offset;
      node = item;
    } else {
      offset = (inner as Node | null)?.range?.[0] ?? offset;
      break;
    }
  }
  return offset;
}

type RawIssue = z.core.$ZodRawIssue;
type SizeIssue = Extract<RawIssue, { code: "too_small" | "too_big" }>;
type UnionIssue = Extract<RawIssue, { code: "invalid_union" }>;

/** What is wrong and how to mend it, without the final stop. A schema's own message goes before this one. */
function sentence(issue: RawIssue): string | undefined {
  const name = issue.path?.findLast((step) => typeof step === "string");
  const entry = name === undefined ? "this file" : `"${name}"`;
  if (issue.input === undefined && issue.code !== "custom") return `${entry} is missing; add it`;
  switch (issue.code) {
    case "unrecognized_keys":
      return `"${issue.keys[0]}" is not known here; the names known here are ${knownKeys(issue.inst).join(", ")}`;
    case "invalid_type":
      return `${entry} must be ${kindOf(issue.expected)}, not ${shown(issue.input)}`;
    case "invalid_value":
      return `${entry} must be ${issue.values.map(String).join(" or ")}, not ${shown(issue.input)}`;
    case "invalid_union":
      return unionSentence(issue, entry);
    case "too_small":
    case "too_big":
      return sizeSentence(issue, entry);
    case "invalid_key":
      return issue.issues[0]?.message;
    default:
      return undefined;
  }
}

function sizeSentence(issue: SizeIssue, entry: string): string {
  const [bound, limit] = issue.code === "too_small" ? ["least", issue.minimum] : ["most", issue.maximum];
  if (issue.origin === "array") return `${entry} must hold at ${bound} ${limit} items`;
  if (issue.origin === "string") return `${entry} must have at ${bound} ${limit} characters`;
  if (issue.inclusive) return `${entry} must be at ${bound} ${limit}, not ${shown(issue.input)}`;
  return `${entry} must be ${bound === "least" ? "above" : "below"} ${limit}, not ${shown(issue.input)}`;
}

function unionSentence(issue: UnionIssue, entry: string): string {
  const { discriminator, options } = issue as { discriminator?: string; options?: unknown[] };
  const branches = issue.errors.flatMap((branch) => branch.slice(0, 1));
  if (discriminator !== undefined) {
    const given = (issue.input as Record<string, unknown>)[discriminator];
    if (given === undefined) return `"${discriminator}" is missing; add it`;
    return `"${discriminator}" must be ${options?.join(" or ")}, not ${shown(given)}`;
  }
  const fitting = branches.find(({ code }) => code !== "invalid_type" && code !== "invalid_value");
  if (fitting) return fitting.message;
  const allowed = branches.flatMap((branch) => {
    if (branch.code === "invalid_type") return [kindOf(branch.expected)];
    return branch.code === "invalid_value" ? branch.values.map(String) : [];
  });
  return `${entry} must be ${allowed.join(" or ")}, not ${shown(issue.input)}`;
}

function knownKeys(schema: unknown): string[] {
  return Object.keys((schema as z.ZodObject)._zod.def.shape);
}

const KINDS: Record<string, string> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  object: "a group of named entries",
  record: "a group of named entries",
  array: "a list",
  tuple: "a list",
};

function kindOf(expected: string): string {
  return KINDS[expected] ?? expected;
}

/** A wrong file may be one long text. */
const LONGEST_QUOTE = 60;

function shown(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a group of named entries";
  if (typeof value !== "string") return String(value);
  return `the text "${value.length > LONGEST_QUOTE ? `${value.slice(0, LONGEST_QUOTE)}…` : value}"`;
}
