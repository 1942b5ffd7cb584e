import { checkAgainst } from "../checked-yaml.js";
import type { UsageError } from "../errors.js";
import { stated, strung } from "../sentence.js";
import type { BaseContent, OverlayContent, RuleFile } from "./parse-rule-file.js";
import { type Requirement, type RuleSet, requirementSchema } from "./rule-set.js";

/** A limit set on its way through the files it is made from. */
export interface Draft {
  readonly facts: Omit<RuleSet, "id" | "title" | "notes" | "files" | "requirements">;
  readonly notes: readonly string[];
  readonly requirements: ReadonlyMap<string, Requirement>;
  /** Ids taken away, and the set that did it. */
  readonly removed: ReadonlyMap<string, string>;
}

/** @throws UsageError for a requirement id given twice. */
export function draftOf(content: BaseContent, file: RuleFile): Draft {
  const { id: _id, title: _title, notes, requirements, nominalVoltage, ...facts } = content;
  const found = new Map<string, Requirement>();
  addTo(found, requirements, "requirements", file);
  return {
    facts: { ...facts, ...(nominalVoltage !== undefined && { nominalVoltage }) },
    notes: notes ?? [],
    requirements: found,
    removed: new Map(),
  };
}

/**
 * Carries out the changes of one file: marks what is there as unconfirmed, removes, changes, adds, in this order.
 * Taking away what an earlier file already took away is no fault, because both may belong to one set.
 * @throws UsageError for an id that is not there, an id given twice, a changed limit without its source, and for a
 *   requirement that is no longer sound after its change.
 */
export function carryOut(draft: Draft, content: OverlayContent, file: RuleFile): Draft {
  const requirements = new Map(draft.requirements);
  const removed = new Map(draft.removed);
  if (content.unconfirmed !== undefined) {
    for (const [id, requirement] of requirements) requirements.set(id, unconfirm(requirement, content.unconfirmed));
  }
  for (const [i, id] of (content.remove ?? []).entries()) {
    if (!requirements.delete(id) && !removed.has(id)) throw file.fault(["remove", i], unknownId(id, requirements));
    removed.set(id, file.id);
  }
  for (const [id, patch] of Object.entries(content.change ?? {})) {
    const before = requirements.get(id);
    if (before === undefined) {
      const by = removed.get(id);
      const what =
        by === undefined ? unknownId(id, requirements) : `"${id}" was removed by ${by}; leave this change out`;
      throw file.fault(["change", id], what, "key");
    }
    requirements.set(id, changed(before, patch, file));
  }
  addTo(requirements, content.add ?? [], "add", file);
  return {
    facts: mergedFacts(draft.facts, content),
    notes: [...draft.notes, ...(content.notes ?? [])],
    requirements,
    removed,
  };
}

function mergedFacts(before: Draft["facts"], content: OverlayContent): Draft["facts"] {
  const { standard, edition, level, network, nominalFrequency } = content;
  const { nominalVoltage: inherited, ...others } = before;
  const nominalVoltage = content.nominalVoltage === undefined ? inherited : content.nominalVoltage;
  return {
    ...others,
    ...(standard !== undefined && { standard }),
    ...(edition !== undefined && { edition }),
    ...(level !== undefined && { level }),
    ...(network !== undefined && { network }),
    ...(nominalFrequency !== undefined && { nominalFrequency }),
    ...(nominalVoltage !== undefined && nominalVoltage !== null && { nominalVoltage }),
  };
}

function addTo(target: Map<string, Requirement>, added: readonly Requirement[], list: string, file: RuleFile): void {
  for (const [i, requirement] of added.entries()) {
    if (target.has(requirement.id)) {
      const what = `there is a requirement "${requirement.id}" already; give this one another id`;
      throw file.fault([list, i, "id"], `${what}, or change the other`);
    }
    target.set(requirement.id, requirement);
  }
}

function changed(before: Requirement, patch: Record<string, unknown>, file: RuleFile): Requirement {
  const path = ["change", before.id];
  if (Object.hasOwn(patch, "id")) {
    throw file.fault([...path, "id"], "an id cannot be changed; remove the requirement and add another", "key");
  }
  const limit = limitWithoutSource(patch);
  if (limit !== undefined) {
    const what = 'this limit is changed, but not where it comes from; add "source" and "confirmed" beside it';
    throw file.fault([...path, ...limit], what, "key");
  }
  const after = mergePatch(before, patch, (inner) =>
    file.fault(
      [...path, ...inner],
      `there is no "${inner.at(-1)}" here that could be taken away; correct the name`,
      "key",
    ),
  );
  return checkAgainst(requirementSchema, after, (inner, what, on) => file.fault([...path, ...inner], what, on));
}

/** The path of a number that is changed while the requirement goes on naming the source of the old one. */
function limitWithoutSource(patch: Record<string, unknown>): string[] | undefined {
  const { criterion } = patch;
  if (isSourced(patch) || !isGroup(criterion)) return undefined;
  const limit = Object.keys(criterion).find((key) => key !== "orders");
  if (limit !== undefined) return ["criterion", limit];
  const { orders } = criterion;
  if (!isGroup(orders)) return ["criterion"];
  const bare = Object.entries(orders).find(
    ([, order]) => !isGroup(order) || (Object.hasOwn(order, "max") && !isSourced(order)),
  );
  return bare && ["criterion", "orders", bare[0]];
}

function isSourced(entry: Record<string, unknown>): boolean {
  return entry.source !== undefined && entry.confirmed !== undefined;
}

function unconfirm(requirement: Requirement, mark: NonNullable<OverlayContent["unconfirmed"]>): Requirement {
  const source = mark.source ?? requirement.source;
  const note = strung([requirement.note, mark.note].filter((part) => part !== undefined).map(stated), " ");
  const { criterion } = requirement;
  if (criterion.kind !== "share-within-by-order") return { ...requirement, source, note, confirmed: false };
  const orders = Object.entries(criterion.orders).map(([order, { source, confirmed, ...limit }]) => {
    const kept = mark.source === undefined && source !== undefined ? { source } : {};
    return [order, { ...limit, ...kept, ...(confirmed !== undefined && { confirmed: false }) }];
  });
  return {
    ...requirement,
    criterion: { ...criterion, orders: Object.fromEntries(orders) },
    source,
    note,
    confirmed: false,
  };
}

/**
 * RFC 7396: groups are merged, null takes away, everything else (lists too) replaces. Unlike there, null for an entry
 * that is not there is a fault: it is a misspelt name.
 */
function mergePatch(target: unknown, patch: unknown, absent: (path: string[]) => UsageError): unknown {
  if (!isGroup(patch)) return patch;
  const result = new Map(isGroup(target) ? Object.entries(target) : []);
  for (const [key, value] of Object.entries(patch)) {
    if (value !== null) {
      const inner = (path: string[]) => absent([key, ...path]);
      result.set(key, mergePatch(result.get(key), value, inner));
    } else if (!result.delete(key)) throw absent([key]);
  }
  return Object.fromEntries(result);
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function unknownId(id: string, known: ReadonlyMap<string, Requirement>): string {
  return `there is no requirement "${id}" in what is inherited; there are ${[...known.keys()].join(", ")}`;
}
