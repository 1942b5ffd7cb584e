import type { Row, Verdict } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";
import { verdictWord } from "../wording.js";
import { otherVerdict } from "../wording-exclusions.js";
import { SIDEWAYS_NOTE } from "../wording-page.js";
import { conditionText } from "../wording-uncertainty.js";
import { type Content, type Html, html } from "./html.js";

export function head(titles: readonly Text[]): Html {
  return html`<thead><tr>${titles.map((title) => html`<th scope="col">${title}</th>`)}</tr></thead>`;
}

/** A cell that carries its column's title, for narrow screens where each row becomes a card. */
export function cell(title: Text, content: Content): Html {
  return html`<td data-title="${title}">${content}</td>`;
}

/** A table of texts; on a narrow screen each row of a table of more than two columns becomes a card. */
export function plainTable(titles: readonly Text[], rows: readonly (readonly Content[])[]): Html {
  const line = (row: readonly Content[]) => html`<tr>${row.map((content, i) => cell(titles[i] ?? "", content))}</tr>\n`;
  return html`<div class="plain"><table class="${titles.length < 3 ? "few" : "cards"}">${head(titles)}<tbody>
${rows.map(line)}</tbody></table></div>`;
}

/** Shown where what follows, or comes before, is wider than a narrow screen. */
export const SIDEWAYS: Html = html`<p class="note sideways">${SIDEWAYS_NOTE}</p>`;

/** The verdict in words; frame and filling differ as well, for black and white. */
export function badge(verdict: Verdict): Html {
  return html`<span class="verdict ${verdict}">${verdictWord(verdict)}</span>`;
}

/** The verdict, and below it that the uncertainty or the exclusions could turn it. */
export function verdictCell(judged: Pick<Row, "verdict" | "verdictWithoutExclusions" | "zone" | "clear">): Html {
  const notes = [conditionText(judged), otherVerdict(judged)].filter((text) => text !== undefined);
  return html`${badge(judged.verdict)}${notes.map((text) => html`<br><small>${text}</small>`)}`;
}
