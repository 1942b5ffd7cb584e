import type { Assessment } from "../../rules/assessment.js";
import { capital } from "../../sentence.js";
import { quantityName } from "../wording.js";
import { CONFIRMED } from "../wording-page.js";
import {
  UNCERTAINTY_COLUMNS as C,
  COMBINED_NOTE,
  CONTRIBUTORS,
  expandedText,
  lastDigits,
  RULE_ASSUMED,
  ruleText,
  UNCERTAINTY_HEADING,
  UNCERTAINTY_NOT_STATED,
  UNCERTAINTY_ORIGINS,
  ZONES_NOTE,
} from "../wording-uncertainty.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** The decision rule and what is known of the uncertainty of each quantity, with where it was taken from. */
export function uncertaintySection(assessment: Assessment): Html {
  const { uncertainties, decision } = assessment;
  const lines = uncertainties
    .filter(({ from }) => from !== "resolution")
    .map((part) => [
      capital(quantityName(part.quantity)),
      CONTRIBUTORS[part.from],
      unbroken(expandedText(part)),
      html`${UNCERTAINTY_ORIGINS[part.origin]}${!part.confirmed && html`<br><b class="unconfirmed">${CONFIRMED.false}</b>`}`,
      part.reason,
    ]);
  return html`<section id="uncertainty"><h2>${UNCERTAINTY_HEADING}</h2>
<p>${ruleText(assessment)}${decision.origin === "assumed" && html` ${RULE_ASSUMED}`}</p>
${
  uncertainties.length === 0
    ? html`<p>${UNCERTAINTY_NOT_STATED}</p>`
    : html`${plainTable(Object.values(C), lines)}
<p class="note">${COMBINED_NOTE} ${lastDigits(uncertainties)} ${ZONES_NOTE}</p>`
}</section>
`;
}
