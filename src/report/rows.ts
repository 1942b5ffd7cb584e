import type { Quantity } from "../recording/quantity.js";
import type { Assessment, Row, Verdict, Week } from "../rules/assessment.js";
import { stated, type Text } from "../sentence.js";

/** Choosing and ordering what the result already holds; nothing is judged here. */

const RANK: Readonly<Record<Verdict, number>> = {
  "does-not-conform": 4,
  undecided: 3,
  conforms: 2,
  "for-information": 1,
  "not-assessed": 0,
};

/** How far the worst value lies beyond the nearer limit, as a share of it; negative inside. */
function excess({ worst, limit }: Row): number {
  if (worst === null) return Number.NEGATIVE_INFINITY;
  const over = limit.max === undefined ? Number.NEGATIVE_INFINITY : (worst.value - limit.max) / Math.abs(limit.max);
  const under = limit.min === undefined ? Number.NEGATIVE_INFINITY : (limit.min - worst.value) / Math.abs(limit.min);
  return Math.max(over, under);
}

/**
 * Worse first: by verdict, then by the one without exclusions (so that a requirement shows what hangs on them), then by the share
 * outside, then by how far the worst value lies beyond its limit.
 */
export function byBadness(a: Row, b: Row): number {
  const without = ({ verdict, verdictWithoutExclusions = verdict }: Row) => RANK[verdictWithoutExclusions];
  return (
    RANK[b.verdict] - RANK[a.verdict] ||
    without(b) - without(a) ||
    b.outside / (b.n || 1) - a.outside / (a.n || 1) ||
    excess(b) - excess(a)
  );
}

export interface RequirementRows {
  readonly id: string;
  readonly title: Text;
  /** The row that stands for the requirement. */
  readonly worst: Row;
  /** Every phase and order, in the order of the result. */
  readonly rows: readonly Row[];
}

/** The rows of a week grouped by requirement, in the order of the rule set. */
export function byRequirement(assessment: Assessment, week: Week): RequirementRows[] {
  const groups = new Map<string, Row[]>();
  for (const row of week.requirements) {
    const group = groups.get(row.id);
    if (group === undefined) groups.set(row.id, [row]);
    else group.push(row);
  }
  const order = assessment.ruleSet.requirements.map(({ id }) => id);
  const place = (id: string) => (order.includes(id) ? order.indexOf(id) : order.length);
  return [...groups]
    .sort(([a], [b]) => place(a) - place(b))
    .map(([id, rows]) => ({
      id,
      title: requirementTitle(assessment, id),
      worst: [...rows].sort(byBadness)[0] as Row,
      rows,
    }));
}

export function requirementTitle(assessment: Assessment, id: string): Text {
  const found = assessment.ruleSet.requirements.find((requirement) => requirement.id === id);
  return found === undefined ? id : stated(found.title);
}

export function consecutiveWeeks(assessment: Assessment): Week[] {
  return assessment.weeks.filter(({ kind }) => kind === "consecutive");
}

/**
 * The week the first screen shows: the first that has the verdict of the whole, a consecutive one before the worst
 * sliding one. The undecided rest of a recording does not hide a week that was judged.
 */
export function decidingWeek(assessment: Assessment): Week | undefined {
  const { weeks, verdict } = assessment;
  return (
    consecutiveWeeks(assessment).find((week) => week.verdict === verdict) ??
    weeks.find((week) => week.verdict === verdict) ??
    weeks[0]
  );
}

/** The deciding week where it holds every requirement; in place of seven days at any start, or a year, the worst consecutive week. */
export function fullWeek(assessment: Assessment): Week | undefined {
  const week = decidingWeek(assessment);
  if (week === undefined || week.kind === "consecutive") return week;
  return [...consecutiveWeeks(assessment)].sort((a, b) => RANK[b.verdict] - RANK[a.verdict])[0] ?? week;
}

/** The first requirement of the week that has the verdict of the site, and its worst row. */
export function decidingRow(assessment: Assessment, week: Week): RequirementRows | undefined {
  return byRequirement(assessment, week).find(({ worst }) => worst.binding && worst.verdict === assessment.verdict);
}

export type Summary = Assessment["summary"][number];

/** Of each quantity, phase and order the entry of the shortest interval. */
export function finestSummary({ summary }: Assessment): Summary[] {
  const finest = new Map<string, Summary>();
  const key = ({ quantity, phase, order, hertz }: Summary) => `${quantity} ${phase} ${order ?? ""} ${hertz ?? ""}`;
  for (const entry of summary) {
    const known = finest.get(key(entry));
    if (known === undefined || entry.intervalS < known.intervalS) finest.set(key(entry), entry);
  }
  return [...finest.values()];
}

/** What a reader asks for first. */
const MAIN: ReadonlySet<Quantity> = new Set([
  "voltage",
  "current",
  "frequency",
  "thd-voltage",
  "thd-current",
  "negative-sequence-unbalance",
  "pst",
  "plt",
  "mains-signalling",
  "active-power",
  "reactive-power",
  "apparent-power",
  "power-factor",
]);

/** Entries without harmonic orders, by quantity: the main quantities at the shortest interval of each; then all the rest. */
export function summaryLists(assessment: Assessment): { readonly main: Summary[]; readonly rest: Summary[] } {
  const finest = new Set(finestSummary(assessment));
  const whole = assessment.summary.filter(({ order }) => order === undefined);
  const quantities = [...new Set(whole.map(({ quantity }) => quantity))];
  const sorted = quantities.flatMap((quantity) => whole.filter((entry) => entry.quantity === quantity));
  const isMain = (entry: Summary) => finest.has(entry) && MAIN.has(entry.quantity);
  return { main: sorted.filter(isMain), rest: sorted.filter((entry) => !isMain(entry)) };
}

/** Whether the week was too short, or too little of it valid, for any of these rows to be decided. */
export function isUndecided(rows: readonly Row[]): boolean {
  return rows.every(({ verdict }) => verdict === "undecided" || verdict === "not-assessed");
}

/** Whether values of the row's kind lay above, or below, the limits; as far as the extremes of the whole recording show it. */
export function limitSides(
  row: Row,
  summary: Assessment["summary"],
): { readonly above: boolean; readonly below: boolean } {
  const { min, max } = row.limit;
  const all = summary.find(
    (entry) =>
      entry.quantity === row.quantity &&
      entry.phase === row.phase &&
      entry.order === row.order &&
      entry.hertz === row.hertz &&
      entry.intervalS === row.intervalS,
  );
  return {
    above: max !== undefined && !(all !== undefined && all.max <= max),
    below: min !== undefined && !(all !== undefined && all.min >= min),
  };
}
