import type { RuleSet } from "./rule-set.js";

/** What one limit set has otherwise than another. */
export interface Difference {
  /** A requirement's id, or "set" for the facts of the whole set. */
  readonly of: string;
  readonly kind: "added" | "removed" | "changed";
  /** The single entries of a change: name, value before and after (undefined: not there). */
  readonly entries: readonly { readonly entry: string; readonly from?: unknown; readonly to?: unknown }[];
}

/** The differences from `before` to `after`, in the order of `after`; id, title, notes and files are not compared. */
export function differences(before: RuleSet, after: RuleSet): Difference[] {
  const found: Difference[] = [];
  const compare = (of: string, old: object, now: object) => {
    const entries = changedEntries(leaves(old), leaves(now));
    if (entries.length > 0) found.push({ of, kind: "changed", entries });
  };
  compare("set", facts(before), facts(after));
  const old = new Map(before.requirements.map((requirement) => [requirement.id, requirement]));
  for (const requirement of after.requirements) {
    const counterpart = old.get(requirement.id);
    if (counterpart === undefined) found.push({ of: requirement.id, kind: "added", entries: [] });
    else compare(requirement.id, counterpart, requirement);
    old.delete(requirement.id);
  }
  for (const id of old.keys()) found.push({ of: id, kind: "removed", entries: [] });
  return found;
}

function facts({ standard, edition, level, network, nominalFrequency, nominalVoltage }: RuleSet): object {
  return { standard, edition, level, network, nominalFrequency, nominalVoltage };
}

/** Entry names joined by spaces ("criterion orders 15 max") and their values; lists are single values. */
function leaves(value: object, name = ""): Map<string, unknown> {
  const found = new Map<string, unknown>();
  for (const [key, inner] of Object.entries(value)) {
    const path = name === "" ? key : `${name} ${key}`;
    if (typeof inner === "object" && inner !== null && !Array.isArray(inner)) {
      for (const leaf of leaves(inner, path)) found.set(...leaf);
    } else if (inner !== undefined) found.set(path, inner);
  }
  return found;
}

function changedEntries(old: Map<string, unknown>, now: Map<string, unknown>): Difference["entries"] {
  return [...new Set([...old.keys(), ...now.keys()])]
    .filter((entry) => JSON.stringify(old.get(entry)) !== JSON.stringify(now.get(entry)))
    .map((entry) => ({ entry, from: old.get(entry), to: now.get(entry) }));
}
