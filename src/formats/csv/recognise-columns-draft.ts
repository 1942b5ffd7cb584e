import { UsageError } from "../../errors.js";
import { type LoggedQuantity, type Phase, QUANTITIES } from "../../recording/quantity.js";
import type { ColumnSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import { readFlag } from "./number-text.js";
import type { ColumnText } from "./recognise-columns.js";
import { both, type Evidence, type Said } from "./recognise-columns-evidence.js";
import type { LogHeaders } from "./recognise-columns-log.js";
import {
  decidePlace,
  decideStatistic,
  HAS_ORDER,
  PHASES,
  STATISTICS,
  type Statistic,
} from "./recognise-columns-place.js";
import { decideQuantity, QUANTITY_SENSES } from "./recognise-columns-quantity.js";
import { columnName, givenUnit } from "./recognise-columns-setup.js";
import type { WrittenUnit } from "./recognise-columns-units.js";

/** What is known of a column before its neighbours' phases and its samples are looked at. */
export type Draft =
  | { readonly kind: "unused"; readonly column: ColumnText; readonly reason: Text }
  | { readonly kind: "flag"; readonly column: ColumnText; readonly reason: Text }
  | SeriesDraft;

export interface SeriesDraft {
  readonly kind: "series";
  readonly column: ColumnText;
  readonly evidence: Evidence;
  readonly quantity: LoggedQuantity;
  /** Undefined: no phase named where one is needed. */
  readonly phase: Phase | undefined;
  readonly order: number | undefined;
  readonly statistic: Statistic;
  readonly unit: Said<WrittenUnit> | undefined;
  /** What decided quantity and place. */
  readonly why: readonly Text[];
  readonly whyStatistic: Text;
}

const BY_SETUP = say`given in the setup`;

/** @throws UsageError if the setup has an entry for the column that does not fit. */
export function draftColumn(
  file: string,
  column: ColumnText,
  index: number,
  log: LogHeaders,
  entry: ColumnSetup | undefined,
): Draft {
  if (entry?.ignore) return { kind: "unused", column, reason: say`left out by the setup` };
  const evidence = { ...(log.evidence[index] as Evidence) };
  if (entry?.unit !== undefined) {
    evidence.unit = { value: givenUnit(file, column, entry.unit), said: say`"${entry.unit}" in the setup` };
  }
  const draft = draftSeries(column, evidence, log, entry);
  if (entry) checkEntry(file, column, entry, draft);
  return draft;
}

function draftSeries(column: ColumnText, evidence: Evidence, log: LogHeaders, entry: ColumnSetup | undefined): Draft {
  const unused = (reason: Text): Draft => ({ kind: "unused", column, reason });
  const why: Text[] = [];
  if (entry?.quantity === undefined) {
    if (evidence.leftOut !== undefined) return unused(evidence.leftOut);
    const stranger = strangerAmong(evidence, log);
    if (stranger !== undefined) {
      return unused(say`the word "${stranger}" is not known, so it is not certain what the column holds`);
    }
    for (const name of evidence.strangers) why.push(say`"${name}" is taken for a mere name`);
  }
  const declared = evidence.senses.get("declared");
  if (declared !== undefined && !relateToDeclared(evidence, declared) && entry?.quantity === undefined) {
    return unused(say`${declared}: a nominal or declared value is not a measured one`);
  }
  if (evidence.unit?.value.kind === "unusable") return unused(evidence.unit.value.reason);
  const quantity =
    entry?.quantity === undefined ? decideQuantity(evidence, log) : { value: entry.quantity, why: BY_SETUP };
  if ("missing" in quantity) return unused(quantity.missing);
  if (quantity.value === "flag") return flagColumn(column, quantity.why, entry?.quantity === "flag");
  why.unshift(say`${QUANTITIES[quantity.value].name}: ${quantity.why}`);
  const place = decidePlace(quantity.value, evidence, log, { phase: entry?.phase, order: entry?.order });
  if ("missing" in place) return unused(place.missing);
  const statistic =
    entry?.statistic === undefined ? decideStatistic(evidence) : { value: entry.statistic, why: BY_SETUP };
  if ("missing" in statistic) return unused(statistic.missing);
  why.push(...place.why);
  if (entry?.phase !== undefined) why.push(say`${entry.phase}: ${BY_SETUP}`);
  if (entry?.order !== undefined) why.push(say`order ${entry.order}: ${BY_SETUP}`);
  const { phase, order } = place;
  return {
    kind: "series",
    column,
    evidence,
    quantity: quantity.value,
    phase,
    order,
    statistic: statistic.value,
    unit: evidence.unit,
    why,
    whyStatistic: say`${STATISTICS[statistic.value]}: ${statistic.why}`,
  };
}

/** An unknown word that is no mere name, as a name would stand in all columns alike. */
function strangerAmong(evidence: Evidence, log: LogHeaders): string | undefined {
  const about = [...evidence.senses.keys()].filter((sense) => QUANTITY_SENSES.has(sense));
  return evidence.strangers.find((stranger) => !log.carriedByAll(stranger, about));
}

/** "% nominal", "p.u. of declared": joins the word and the unit where they stand apart. */
function relateToDeclared(evidence: Evidence, said: Text): boolean {
  const unit = evidence.unit?.value;
  if (unit?.kind === "of-declared") return true;
  const percent = unit?.kind === "unit" && unit.unit === "%";
  if (evidence.unit === undefined || (!percent && unit?.kind !== "per-unit")) return false;
  const value: WrittenUnit = {
    kind: "of-declared",
    factor: percent ? { num: 1n, den: 100n } : { num: 1n, den: 1n },
    text: percent ? "% of declared" : "p.u. of declared",
  };
  evidence.unit = { value, said: both([evidence.unit.said, said]) };
  return true;
}

/** Codes other than 0 and 1 may say anything; only the setup can tell that all but 0 mean flagged. */
function flagColumn(column: ColumnText, why: Text, given: boolean): Draft {
  const odd = column.samples.find((text) => readFlag(text) === undefined || (!given && Number(text) > 1));
  if (odd === undefined) return { kind: "flag", column, reason: say`marks flagged intervals: ${why}` };
  return { kind: "unused", column, reason: say`it is named a flag, but "${odd}" says neither yes nor no (1 or 0)` };
}

function checkEntry(file: string, column: ColumnText, entry: ColumnSetup, draft: Draft): void {
  if (draft.kind !== "series") return;
  const fail = (what: string): never => {
    throw new UsageError(`the setup has an entry under columns: for ${columnName(column)} of ${file}, but ${what}`);
  };
  const { quantity } = draft;
  if (entry.phase !== undefined && !PHASES[quantity].includes(entry.phase)) {
    fail(`${quantity} is not used on phase ${entry.phase}; use one of ${PHASES[quantity].join(", ")}`);
  }
  if (entry.order !== undefined && !HAS_ORDER.has(quantity)) fail(`${quantity} has no order; take the order out`);
  if (entry.order === 0 && quantity !== "interharmonic-voltage") fail(`${quantity} has orders from 1`);
}
