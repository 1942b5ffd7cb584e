import type { Assessment } from "../../rules/assessment.js";
import {
  SAMPLING_COLUMNS as C,
  SAMPLING_HEADING,
  SAMPLING_NOTE,
  SAMPLING_SUMMARY,
  samplingRows,
} from "../wording-sampling.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** Sampling intervals of the row that stands for each requirement of the deciding week; for information. */
export function samplingSection(assessment: Assessment): Html | undefined {
  const lines = samplingRows(assessment).map(([title = "", place = "", ...intervals]) => [
    title,
    place,
    ...intervals.map(unbroken),
  ]);
  if (lines.length === 0) return undefined;
  return html`<section id="sampling"><h2>${SAMPLING_HEADING}</h2>
<details><summary>${SAMPLING_SUMMARY}</summary>
<p class="note">${SAMPLING_NOTE}</p>
${plainTable(Object.values(C), lines)}</details></section>
`;
}
