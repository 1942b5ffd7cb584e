import type { Assessment } from "../../rules/assessment.js";
import { byRequirement, fullWeek } from "../rows.js";
import { placeText } from "../wording.js";
import {
  SAMPLING_COLUMNS as C,
  SAMPLING_HEADING,
  SAMPLING_NOTE,
  SAMPLING_SUMMARY,
  shareInterval,
  valueInterval,
} from "../wording-sampling.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** Sampling intervals of the row that stands for each requirement of the deciding week; for information. */
export function samplingSection(assessment: Assessment): Html | undefined {
  const week = fullWeek(assessment);
  if (week === undefined) return undefined;
  const lines = byRequirement(assessment, week).flatMap(({ title, worst }) => {
    const { sampling } = worst;
    if (sampling === undefined) return [];
    const ends = [sampling.low, sampling.high].map((end) => unbroken(valueInterval(end, worst)));
    return [[title, placeText(worst), ...ends, unbroken(shareInterval(sampling))]];
  });
  if (lines.length === 0) return undefined;
  return html`<section id="sampling"><h2>${SAMPLING_HEADING}</h2>
<details><summary>${SAMPLING_SUMMARY}</summary>
<p class="note">${SAMPLING_NOTE}</p>
${plainTable(Object.values(C), lines)}</details></section>
`;
}
