import type { Assessment, Row } from "../../rules/assessment.js";
import type { LocalClock } from "../local-time.js";
import { consecutiveWeeks } from "../rows.js";
import { dayCell, daysNote, dayText, spreadText, DAY_WORDS as W } from "../wording-days.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** More days than these unfold. */
const MOST_DAYS = 10;

/** The judged voltage day by day; nothing of a recording of one day. */
export function daysSection(assessment: Assessment, clock: LocalClock): Html | undefined {
  const { days } = assessment;
  const judged = judgedRows(assessment);
  const [first] = judged;
  if (first === undefined || days.length < 2) return undefined;
  const table = plainTable(
    [W.day, ...judged.map(({ phase }) => phase)],
    days.map((day) => [
      dayText(day, clock),
      ...judged.map((row) => {
        const found = day.rows.find(({ requirement, phase }) => requirement === row.id && phase === row.phase);
        return html`${dayCell(found, row).map((text, i) => html`${i > 0 && html`<br>`}${unbroken(text)}`)}`;
      }),
    ]),
  );
  return html`<section id="days"><h2>${W.heading}</h2>
<ul>${judged.map((row) => {
    const text = spreadText(days, row, clock);
    return text === undefined ? "" : html`<li>${unbroken(text)}</li>\n`;
  })}</ul>
${days.length > MOST_DAYS ? html`<details><summary>${W.heading}</summary>${table}</details>` : table}
<p class="note">${daysNote(days, first, clock)}</p></section>
`;
}

/** The first voltage requirement of the days, one row for each phase. */
function judgedRows(assessment: Assessment): Row[] {
  const id = assessment.days[0]?.rows[0]?.requirement;
  const rows = consecutiveWeeks(assessment)[0]?.requirements ?? [];
  return rows.filter((row) => row.id === id);
}
