import { SECOND } from "../../recording/time.js";
import type { Assessment } from "../../rules/assessment.js";
import { capital } from "../../sentence.js";
import { measured } from "../numbers.js";
import { type Summary, summaryLists } from "../rows.js";
import { placeText, quantityName, withUnit } from "../wording.js";
import { intervalText } from "../wording-interval.js";
import { HEADINGS, SUMMARY_COLUMNS, SUMMARY_NOTE, summaryFurther } from "../wording-page.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** Lowest, mean and highest value of each quantity and phase; secondary quantities and longer intervals unfold. */
export function summarySection(assessment: Assessment): Html | undefined {
  const { main, rest } = summaryLists(assessment);
  if (main.length + rest.length === 0) return undefined;
  return html`<section id="summary"><h2>${HEADINGS.summary}</h2>
<p class="note">${SUMMARY_NOTE}</p>
${main.length > 0 && table(main)}
${
  rest.length > 0 &&
  html`<details><summary>${summaryFurther(rest.length)}</summary>
${table(rest)}</details>`
}</section>
`;
}

function table(entries: readonly Summary[]): Html {
  return plainTable(
    Object.values(SUMMARY_COLUMNS),
    entries.map((entry, i) => {
      const { quantity, unit, intervalS, n, min, mean, max, p95 } = entry;
      const isFirst = entries[i - 1]?.quantity !== quantity;
      const values = [min, mean, max, p95].map((value) => unbroken(withUnit(measured(value, unit), unit)));
      return [
        isFirst && html`<b>${capital(quantityName(quantity))}</b>`,
        placeText({ ...entry, order: undefined }),
        ...values,
        unbroken(intervalText(Math.round(intervalS * SECOND))),
        n,
      ];
    }),
  );
}
