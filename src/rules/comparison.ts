import { z } from "zod";
import type { Assessment, Row, Week } from "./assessment.js";
import { type Compared, reasonsOf } from "./comparison-reasons.js";
import { pairRequirements, type RequirementPair } from "./pair-requirements.js";
import { count, place, reason, ruleSetIdentity, time, verdictSchema } from "./result-parts.js";
import { isWorse } from "./rows.js";
import type { RuleSet } from "./rule-set.js";
import { periodsThatCount } from "./weeks.js";

/** One requirement of a set on one phase (and order) in the period that is worst for it. */
const side = z.strictObject({
  id: z.string(),
  verdict: verdictSchema,
  /** Start of that period. */
  week: time,
  limit: z.strictObject({ min: z.number().optional(), max: z.number().optional() }),
  share: z.number(),
  intervalS: z.number(),
  period: z.enum(["day", "week", "year"]),
  binding: z.boolean(),
  confirmed: z.boolean(),
  n: count,
  outside: count,
  allowed: count,
});

/** What further limit sets say of the same recording, each beside the first, which alone decides. */
export const comparisonSchema = z.array(
  z.strictObject({
    ruleSet: z.strictObject(ruleSetIdentity),
    /** In V; what percentages of the declared voltage are of in this set. */
    declaredVoltage: z.number(),
    verdict: verdictSchema,
    /** Requirements of this set that could not be assessed. */
    notAssessed: z.array(z.strictObject({ requirement: z.string(), reason })),
    rows: z.array(
      z.strictObject({
        ...place,
        /** Of the first set's requirement, or of the other's where the first has none. */
        title: z.string(),
        /** Absent where the set has no such requirement, or could not assess it. */
        first: side.optional(),
        other: side.optional(),
        /** Why the verdicts differ; empty where they do not. */
        why: z.array(reason),
      }),
    ),
  }),
);

export type Comparison = z.infer<typeof comparisonSchema>[number];

/** The first set's result with what the others say. All are results of the same measurements. */
export function withComparison(first: Judged, others: readonly Judged[]): Assessment {
  return { ...first.assessment, comparison: others.map((other) => compared(first, other)) };
}

/** A limit set and its result. */
export interface Judged {
  readonly ruleSet: RuleSet;
  readonly declaredVoltage: number;
  readonly assessment: Assessment;
}

function compared(first: Judged, other: Judged): Comparison {
  const { assessment } = other;
  const { requirements: _, ...ruleSet } = assessment.ruleSet;
  const pairs = pairRequirements(first.ruleSet.requirements, other.ruleSet.requirements);
  return {
    ruleSet,
    declaredVoltage: other.declaredVoltage,
    verdict: assessment.verdict,
    notAssessed: assessment.notAssessed,
    rows: pairs.flatMap((pair) => rowsOf(pair, first, other)),
  };
}

function rowsOf(pair: RequirementPair, first: Judged, other: Judged): Comparison["rows"] {
  const [mine, theirs] = [worstRows(first.assessment, pair.first?.id), worstRows(other.assessment, pair.other?.id)];
  return [...new Map([...mine, ...theirs])].map(([place, { row }]) => {
    const [a, b] = [mine.get(place), theirs.get(place)];
    const { quantity, phase, order, hertz, unit } = row;
    const both: Compared = { pair, first, other, a: a?.row, b: b?.row };
    return {
      quantity,
      phase,
      ...(order !== undefined && { order }),
      ...(hertz !== undefined && { hertz }),
      unit,
      title: (pair.first ?? pair.other)?.title ?? "",
      ...(a !== undefined && { first: sideOf(a) }),
      ...(b !== undefined && { other: sideOf(b) }),
      why: a?.row.verdict === b?.row.verdict ? [] : reasonsOf(both),
    };
  });
}

interface PlacedRow {
  readonly row: Row;
  readonly week: Week;
}

/**
 * Of a requirement the worst row for each phase and order, among the periods that the verdict rests on; of a rest after
 * whole weeks only what fails.
 */
function worstRows({ weeks }: Assessment, id: string | undefined): Map<string, PlacedRow> {
  const worst = new Map<string, PlacedRow>();
  const periods = periodsThatCount(weeks);
  const isRest = ({ complete }: Week) => !complete && periods.some((week) => week.complete && week.kind !== "year");
  for (const week of periods) {
    for (const row of week.requirements) {
      if (row.id !== id || (isRest(week) && row.verdict !== "does-not-conform")) continue;
      const place = `${row.phase} ${row.order ?? ""} ${row.hertz ?? ""}`;
      const known = worst.get(place);
      if (known === undefined || isWorse(row, known.row)) worst.set(place, { row, week });
    }
  }
  return worst;
}

function sideOf({ row, week }: PlacedRow): z.infer<typeof side> {
  const { id, verdict, limit, share, intervalS, period, binding, confirmed, n, outside, allowed } = row;
  return { id, verdict, week: week.start, limit, share, intervalS, period, binding, confirmed, n, outside, allowed };
}
