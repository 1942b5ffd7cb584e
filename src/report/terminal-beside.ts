import type { Assessment } from "../rules/assessment.js";
import { say, type Text } from "../sentence.js";
import { localClock } from "./local-time.js";
import { comparisonLines } from "./wording-comparison.js";
import { clockOfMarks, complaintLine } from "./wording-complaints.js";
import { mainPeriod, shiftText } from "./wording-shift.js";
import { slidingLines } from "./wording-sliding.js";

/** What stands beside the verdict, in a few lines: complaints, other limit sets, a shift that helps, hidden peaks. */
export function besideLines(assessment: Assessment): Text[] {
  const { recording, complaints, comparison, shift, sliding } = assessment;
  const clock = localClock(recording);
  const marks = clockOfMarks(assessment);
  const period = shift && mainPeriod(shift);
  // With nothing outside there is nothing that a shift could mend.
  const isOutside = period?.rows.some(({ outside }) => (outside[indexOfNone(shift)] ?? 0) > 0);
  const lines = [
    ...complaints.map((complaint) => complaintLine(assessment, complaint, marks)),
    ...comparison.flatMap(comparisonLines),
    ...(shift !== undefined && period !== undefined && isOutside === true
      ? [say`what a shift would change: ${shiftText(shift, period, clock)}`]
      : []),
    ...(sliding === undefined ? [] : slidingLines(sliding, clock)),
  ];
  return lines.length === 0 ? [] : [...lines, ""];
}

function indexOfNone(shift: Assessment["shift"]): number {
  return shift?.steps.findIndex(({ percent }) => percent === 0) ?? 0;
}
