import type { Verdict } from "../../rules/assessment.js";
import { verdictWord } from "../wording.js";
import { type Content, type Html, html } from "./html.js";

export function head(titles: readonly string[]): Html {
  return html`<thead><tr>${titles.map((title) => html`<th scope="col">${title}</th>`)}</tr></thead>`;
}

/** A cell that carries its column's title, for narrow screens where each row becomes a card. */
export function cell(title: string, content: Content): Html {
  return html`<td data-title="${title}">${content}</td>`;
}

/** A table of texts; it scrolls in a box of its own where the page is too narrow. */
export function plainTable(titles: readonly string[], rows: readonly (readonly Content[])[]): Html {
  return html`<div class="wide"><table${titles.length < 3 && html` class="few"`}>${head(titles)}<tbody>
${rows.map((row) => html`<tr>${row.map((content) => html`<td>${content}</td>`)}</tr>\n`)}</tbody></table></div>`;
}

/** The verdict in words; frame and filling differ as well, for black and white. */
export function badge(verdict: Verdict): Html {
  return html`<span class="verdict ${verdict}">${verdictWord(verdict)}</span>`;
}
