import { SECOND } from "../../recording/time.js";
import type { Assessment } from "../../rules/assessment.js";
import { capital } from "../../sentence.js";
import { measured } from "../numbers.js";
import { summaryLists } from "../rows.js";
import { placeText, quantityName, withUnit } from "../wording.js";
import { intervalText } from "../wording-interval.js";
import { HEADINGS, SUMMARY_COLUMNS as S, SUMMARY_NOTE } from "../wording-page.js";
import { type Block, heading, note, table } from "./blocks.js";

/** Lowest, mean and highest value of each main quantity and phase. */
export function summary(assessment: Assessment): Block[] {
  const { main } = summaryLists(assessment);
  if (main.length === 0) return [];
  return [
    heading(1, HEADINGS.summary),
    note(SUMMARY_NOTE),
    table(
      [
        [S.quantity, 2.4],
        [S.place, 1],
        [S.min, 1.2],
        [S.mean, 1.2],
        [S.max, 1.2],
        [S.p95, 1.2],
        [S.interval, 1],
        [S.n, 0, "right"],
      ],
      main.map((entry, i) => {
        const { quantity, unit, intervalS, n, min, mean, max, p95 } = entry;
        const values = [min, mean, max, p95].map((value) => withUnit(measured(value, unit), unit));
        return [
          main[i - 1]?.quantity === quantity ? "" : capital(quantityName(quantity)),
          placeText({ ...entry, order: undefined }),
          ...values,
          intervalText(Math.round(intervalS * SECOND)),
          String(n),
        ];
      }),
    ),
  ];
}
