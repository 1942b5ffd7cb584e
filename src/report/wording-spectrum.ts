import { SECOND } from "../recording/time.js";
import type { Assessment, Row } from "../rules/assessment.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { measured } from "./numbers.js";
import type { Summary } from "./rows.js";
import { lengthText, limitValue, paragraph, phaseName, recordedLength, shareText, withUnit } from "./wording.js";
import { intervalText } from "./wording-interval.js";

/** Titles and notes of what was measured by harmonic order without being judged. */

export const SPECTRUM_WORDS = {
  "harmonic-voltage": {
    id: "harmonics-measured",
    heading: say`Harmonic voltages by order, as measured`,
    order: say`harmonic order`,
  },
  "interharmonic-voltage": {
    id: "interharmonics-measured",
    heading: say`Interharmonic voltages by order, as measured`,
    order: say`harmonic order below the interharmonic group`,
  },
  "harmonic-current": {
    id: "harmonic-currents-measured",
    heading: say`Harmonic currents by order, as measured`,
    order: say`harmonic order (the fundamental is left out)`,
  },
} as const;

type SpectrumQuantity = keyof typeof SPECTRUM_WORDS;

/** The order that came nearest to its limit, or without limits the highest one. */
export function spectrumTitle(
  quantity: SpectrumQuantity,
  levels: readonly Summary[],
  limits: readonly Row[],
): Sentence {
  const limitOf = new Map(limits.map((row) => [row.order, row.limit.max as number]));
  const limited = levels.filter(({ order }) => limitOf.has(order));
  const share = (s: Summary) => s.mean / (limitOf.get(s.order) ?? 1);
  const pool = limited.length > 0 ? limited : levels;
  const top = pool.reduce((a, b) => (share(b) > share(a) ? b : a));
  const limit = limitOf.get(top.order);
  return limit === undefined ? highestOf(quantity, top) : nearestOf(top, limit);
}

function nearestOf(top: Summary, limit: number): Sentence {
  const order = top.order as number;
  const value = withUnit(measured(top.mean, top.unit), top.unit);
  const of = limitValue(limit, top.unit);
  return say`The mean harmonic voltage nearest to its limit was that of order ${order} on ${phaseName(top.phase)}: ${value}, with a limit of ${of}; no verdict on a week is meant`;
}

function highestOf(quantity: SpectrumQuantity, top: Summary): Sentence {
  const order = top.order as number;
  const value = withUnit(measured(top.mean, top.unit), top.unit);
  const phase = phaseName(top.phase);
  switch (quantity) {
    case "harmonic-voltage":
      return say`The highest mean harmonic voltage was that of order ${order} on ${phase}: ${value}`;
    case "harmonic-current":
      return say`The highest mean harmonic current was that of order ${order} on ${phase}: ${value}`;
    case "interharmonic-voltage":
      return order === 0
        ? say`The highest mean interharmonic voltage was that below the fundamental on ${phase}: ${value}`
        : say`The highest mean interharmonic voltage was that between orders ${order} and ${order + 1} on ${phase}: ${value}`;
  }
}

export function spectrumNote(assessment: Assessment, levels: readonly Summary[], limits: readonly Row[]): Text {
  const [first] = levels;
  const [row] = limits;
  if (first === undefined) return "";
  const recorded = lengthText(recordedLength(assessment));
  return paragraph(
    say`Values per order and phase: ${countsText(levels)}, ${intervalText(Math.round(first.intervalS * SECOND))}, from the ${recorded} recorded.`,
    say`Symbol: mean; thin line: up to the highest value, also during events.`,
    row === undefined
      ? say`No limit is judged.`
      : say`Short bars: the limits (${row.clause}), which hold for ${shareText(row)} and values of ${intervalText(Math.round(row.intervalS * SECOND))}; they are drawn for orientation, and nothing is counted by them here.`,
  );
}

/** "1008", or "1000 to 1008" where not all have the same number of values. */
export function countsText(counted: readonly { readonly n: number }[]): Text {
  const counts = [...new Set(counted.map(({ n }) => n))].sort((a, b) => a - b);
  const [fewest = 0] = counts;
  return counts.length < 2 ? String(fewest) : say`${fewest} to ${counts[counts.length - 1] ?? 0}`;
}
