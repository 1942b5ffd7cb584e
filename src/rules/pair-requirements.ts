import type { Requirement } from "./rule-set.js";

/** Requirements of two limit sets that ask for the same thing; one alone has no counterpart. */
export interface RequirementPair {
  readonly first?: Requirement;
  readonly other?: Requirement;
}

/**
 * Pairs the counted requirements of two sets within each quantity and kind of criterion: by the same id first, since a set
 * that inherits another keeps the ids; of the rest those for all values with each other and those for most of them, over
 * the same period before another one; then what is left, in the order of the sets.
 */
export function pairRequirements(first: readonly Requirement[], other: readonly Requirement[]): RequirementPair[] {
  const left = first.filter(isCounted);
  const right = other.filter(isCounted);
  const pairs: Required<RequirementPair>[] = [];
  for (const alike of RULES) {
    for (const a of left.filter((r) => !pairs.some((p) => p.first === r))) {
      const b = right.find((r) => !pairs.some((p) => p.other === r) && isSameThing(a, r) && alike(a, r));
      if (b !== undefined) pairs.push({ first: a, other: b });
    }
  }
  const found = (r: Requirement) => pairs.find((p) => p.first === r || p.other === r);
  return [
    ...left.map((a): RequirementPair => found(a) ?? { first: a }),
    ...right.filter((b) => found(b) === undefined).map((b): RequirementPair => ({ other: b })),
  ];
}

type Alike = (a: Requirement, b: Requirement) => boolean;

const sameRole: Alike = (a, b) => (shareOf(a) === 1) === (shareOf(b) === 1);

/** From the surest sign to the weakest. */
const RULES: readonly Alike[] = [
  (a, b) => a.id === b.id,
  (a, b) => sameRole(a, b) && a.period === b.period,
  sameRole,
  () => true,
];

/** Events are listed, not counted against a limit. */
function isCounted({ criterion }: Requirement): boolean {
  return criterion.kind !== "event-table" && criterion.kind !== "indication";
}

function isSameThing(a: Requirement, b: Requirement): boolean {
  return a.quantity === b.quantity && a.criterion.kind === b.criterion.kind && a.phases === b.phases;
}

function shareOf({ criterion }: Requirement): number | undefined {
  return "share" in criterion ? criterion.share : undefined;
}
