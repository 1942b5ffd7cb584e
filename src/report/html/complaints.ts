import type { Assessment } from "../../rules/assessment.js";
import { say } from "../../sentence.js";
import { commentName, complaintName } from "../charts/marks.js";
import {
  againstLimitText,
  aroundTexts,
  COMMENT_COLUMNS,
  COMPLAINT_COLUMNS,
  clockOfMarks,
  complaintText,
  coveringText,
  markTime,
  validText,
  COMPLAINT_WORDS as W,
} from "../wording-complaints.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** Each complaint with what was recorded then, and the comments; nothing where none was stated. */
export function complaintsSection(assessment: Assessment): Html | undefined {
  const { complaints, comments } = assessment;
  if (complaints.length + comments.length === 0) return undefined;
  const clock = clockOfMarks(assessment);
  const isUncovered = complaints.some(({ alike }) => alike !== undefined);
  return html`<section id="complaints"><h2>${complaints.length > 0 ? W.heading : W.comments}</h2>
${complaints.map((complaint, i) => complaintPart(assessment, complaint, complaintName(i)))}
${
  comments.length > 0 &&
  html`${complaints.length > 0 && html`<h3>${W.comments}</h3>`}
${plainTable(
  Object.values(COMMENT_COLUMNS),
  comments.map((comment, i) => [commentName(i), markTime(clock, comment), comment.phase ?? "", comment.text]),
)}`
}
<p class="note">${W.note} ${isUncovered && W.alikeNote}</p></section>
`;
}

function complaintPart(assessment: Assessment, complaint: Assessment["complaints"][number], name: string): Html {
  const clock = clockOfMarks(assessment);
  const rows = complaint.phases
    .filter(({ intervals, around }) => around !== undefined || intervals.some(({ valid }) => valid > 0))
    .map((phase) => [
      phase.phase,
      validText(phase),
      unbroken(coveringText(assessment, phase)),
      unbroken(againstLimitText(assessment, phase)),
      ...aroundTexts(phase).map(unbroken),
    ]);
  return html`<h3>${name}, ${say`${markTime(clock, complaint)}: ${complaint.what}`}</h3>
<p>${unbroken(complaintText(assessment, complaint, clock))}</p>
${rows.length > 0 && plainTable(Object.values(COMPLAINT_COLUMNS), rows)}`;
}
