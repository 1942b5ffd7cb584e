import { SECOND } from "../recording/time.js";
import type { Row } from "../rules/assessment.js";
import { type Sentence, say, strung, type Text } from "../sentence.js";
import { formatAgainstLimits } from "./numbers.js";
import { lengthOf, paragraph, phaseName, shareText, withUnit } from "./wording.js";
import { countsText } from "./wording-spectrum.js";

/** Words of the chart of harmonics by order. */

export const HARMONIC_WORDS = {
  id: "harmonics-by-order",
  heading: say`Harmonic voltages by order`,
  order: say`harmonic order`,
} as const;

/** What the pointer shows of an order. */
export const ORDER_WORDS = { order: say`order`, phase: say`phase` } as const;

export function limitIn(unit: string): Sentence {
  return say`limit in ${unit}`;
}

export function harmonicsTitle(rows: readonly Row[]): Text {
  const failed = rows.filter(({ verdict }) => verdict === "does-not-conform");
  if (failed.length > 0) {
    const orders = listed(failed);
    const phases = strung([...new Set(failed.map(({ phase }) => phase))].sort().map(phaseName), ", ");
    return orders.length === 1
      ? say`Harmonic order ${strung(orders, ", ")} above the limit on ${phases}`
      : say`Harmonic orders ${strung(orders, ", ")} above the limit on ${phases}`;
  }
  const nearest = nearestToLimit(rows);
  if (nearest === undefined) return HARMONIC_WORDS.heading;
  const percent = (100 * (nearest.percentile.high as number)) / (nearest.limit.max as number);
  const share = withUnit(formatAgainstLimits(percent, { max: 100 }, 0), "%");
  const [order, phase] = [nearest.order as number, phaseName(nearest.phase)];
  // Undecided rows: of an unsound recording, or within the uncertainty under guarded acceptance.
  if (percent > 100)
    return say`Order ${order} on ${phase} reached ${share} of its limit, but no harmonic order could be judged to fail; the table says why`;
  return say`No harmonic order was judged above its limit; the nearest, order ${order} on ${phase}, reached ${share} of its limit`;
}

/** The orders of rows, each once, ascending. */
function listed(rows: readonly Row[]): string[] {
  return [...new Set(rows.map(({ order }) => order as number))].sort((a, b) => a - b).map(String);
}

function nearestToLimit(rows: readonly Row[]): Row | undefined {
  const ratio = (row: Row) => (row.percentile.high ?? 0) / (row.limit.max ?? Number.POSITIVE_INFINITY);
  return [...rows].sort((a, b) => ratio(b) - ratio(a))[0];
}

/** @param when "in the week from …" */
export function harmonicsNote(rows: readonly Row[], when: Text): Text {
  const [row] = rows;
  if (row === undefined) return "";
  const unconfirmed = listed(rows.filter(({ confirmed }) => !confirmed));
  const length = lengthOf(Math.round(row.intervalS * SECOND));
  return paragraph(
    say`${countsText(rows)} values per order and phase, ${length} each, ${when}.`,
    say`Shown is the value that ${shareText(row)} do not exceed; the verdict comes from counting. Short bars: the limit of each order (${row.clause}).`,
    unconfirmed.length === 1 && say`Limits unconfirmed for order ${strung(unconfirmed)}.`,
    unconfirmed.length > 1 && say`Limits unconfirmed for orders ${strung(unconfirmed, ", ")}.`,
  );
}
