import { SECOND } from "../recording/time.js";
import type { Assessment, Row } from "../rules/assessment.js";
import { phaseName } from "./charts/style.js";
import { measured } from "./numbers.js";
import type { Summary } from "./rows.js";
import { lengthText, limitNumber, recordedLength, shareText, withUnit } from "./wording.js";
import { intervalText } from "./wording-charts.js";

/** English titles and notes of what was measured by harmonic order without being judged. */

export const SPECTRUM_WORDS = {
  "harmonic-voltage": {
    id: "harmonics-measured",
    heading: "Harmonic voltages by order, as measured",
    name: "harmonic voltage",
    order: "harmonic order",
  },
  "interharmonic-voltage": {
    id: "interharmonics-measured",
    heading: "Interharmonic voltages by order, as measured",
    name: "interharmonic voltage",
    order: "harmonic order below the interharmonic group",
  },
  "harmonic-current": {
    id: "harmonic-currents-measured",
    heading: "Harmonic currents by order, as measured",
    name: "harmonic current",
    order: "harmonic order (the fundamental is left out)",
  },
} as const;

type SpectrumQuantity = keyof typeof SPECTRUM_WORDS;

/** The order that came nearest to its limit, or without limits the highest one. */
export function spectrumTitle(quantity: SpectrumQuantity, levels: readonly Summary[], limits: readonly Row[]): string {
  const limitOf = new Map(limits.map((row) => [row.order, row.limit.max as number]));
  const limited = levels.filter(({ order }) => limitOf.has(order));
  const share = (s: Summary) => s.mean / (limitOf.get(s.order) ?? 1);
  const pool = limited.length > 0 ? limited : levels;
  const top = pool.reduce((a, b) => (share(b) > share(a) ? b : a));
  const { name } = SPECTRUM_WORDS[quantity];
  const value = withUnit(measured(top.mean, top.unit), top.unit);
  const where = top.phase === "system" ? "" : ` on ${phaseName(top.phase)}`;
  const limit = limitOf.get(top.order);
  if (limit !== undefined) {
    const of = withUnit(limitNumber(limit, top.unit), top.unit);
    return `The mean ${name} nearest to its limit was that of order ${top.order}${where}: ${value}, with a limit of ${of}; no verdict on a week is meant`;
  }
  const order = quantity === "interharmonic-voltage" ? between(top.order as number) : `of order ${top.order}`;
  return `The highest mean ${name} was that ${order}${where}: ${value}`;
}

function between(order: number): string {
  return order === 0 ? "below the fundamental" : `between orders ${order} and ${order + 1}`;
}

export function spectrumNote(assessment: Assessment, levels: readonly Summary[], limits: readonly Row[]): string {
  const [first] = levels;
  const [row] = limits;
  if (first === undefined) return "";
  const counts = [...new Set(levels.map(({ n }) => n))].sort((a, b) => a - b);
  const n = counts.length === 1 ? `${counts[0]}` : `${counts[0]} to ${counts[counts.length - 1]}`;
  return [
    `Values per order and phase: ${n}, ${intervalText(Math.round(first.intervalS * SECOND))}, from the ${lengthText(recordedLength(assessment))} recorded.`,
    "Symbol: mean; thin line: up to the highest value, also during events.",
    row === undefined
      ? "No limit is judged."
      : `Short bars: the limits (${row.clause}), which hold for ${shareText(row)} and values of ${intervalText(Math.round(row.intervalS * SECOND))}; they are drawn for orientation, and nothing is counted by them here.`,
  ].join(" ");
}
