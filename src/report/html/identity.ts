import type { Assessment } from "../../rules/assessment.js";
import { say, strung, type Text } from "../../sentence.js";
import { IDENTITY as I, IDENTITY_HEADING } from "../wording-identity.js";
import { type Content, type Html, html } from "./html.js";
import { plainTable } from "./table.js";

/** What was stated of the report itself, and what ISO/IEC 17025:2017, 7.8.2, asks for and was not. */
export function identitySection({ report }: Assessment): Html {
  const { laboratory } = report;
  const entries: readonly (readonly [Text, Content])[] = [
    [I.number, report.number],
    [
      I.laboratory,
      laboratory &&
        html`${laboratory.name}${laboratory.address !== undefined && html`<br><small>${laboratory.address}</small>`}`,
    ],
    [I.customer, report.customer],
    [I.requestedBy, report.requestedBy],
    [I.performedBy, report.performedBy],
    [I.issued, report.issued],
    [I.samplingPlan, report.samplingPlan],
    [I.deviations, report.deviations],
    [I.authorisedBy, report.authorisedBy],
  ];
  const stated = entries.filter(([, value]) => value !== undefined);
  const missing = entries.filter(([, value]) => value === undefined).map(([name]) => name);
  return html`<section id="about"><h2>${IDENTITY_HEADING}</h2>
${stated.length > 0 && plainTable(["", ""], stated)}
${missing.length > 0 && html`<p class="note">${say`Not stated in the setup: ${strung(missing, "; ")}.`}</p>`}</section>
`;
}
