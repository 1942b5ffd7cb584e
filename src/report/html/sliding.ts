import type { Assessment } from "../../rules/assessment.js";
import { instantOf, type LocalClock, localTime } from "../local-time.js";
import {
  durationOf,
  longestText,
  PASSING_COLUMNS as P,
  SLIDING_COLUMNS as S,
  slidingTexts,
  startText,
  stepOf,
  volts,
  SLIDING_WORDS as W,
} from "../wording-sliding.js";
import { type Html, html, unbroken } from "./html.js";
import { plainTable } from "./table.js";

/** The mean over any ten minutes, or how high it can have been; nothing where no voltage was judged. */
export function slidingSection({ sliding }: Assessment, clock: LocalClock): Html | undefined {
  if (sliding === undefined) return undefined;
  const { phases } = sliding;
  const passings = phases.flatMap(({ phase, limit, passed }) => passed.map((passing) => ({ phase, limit, passing })));
  return html`<section id="sliding"><h2>${W.heading}</h2>
<ul>${slidingTexts(sliding, clock).map((text) => html`<li>${unbroken(text)}</li>\n`)}</ul>
${
  phases.length > 0 &&
  plainTable(
    Object.values(S),
    phases.map((of) => [
      of.phase,
      unbroken(stepOf(of)),
      unbroken(volts(of.lowest.value, of.limit)),
      unbroken(volts(of.highest.value, of.limit)),
      localTime(clock, instantOf(of.highest.at)),
      of.passed.length,
      unbroken(longestText(of)),
      of.unseen,
    ]),
  )
}
${
  passings.length > 0 &&
  html`<details><summary>${W.passings} (${passings.length})</summary>
${plainTable(
  Object.values(P),
  passings.map(({ phase, limit, passing }) => [
    phase,
    startText(passing, clock),
    unbroken(durationOf(passing)),
    unbroken(volts(passing.peak, limit)),
    passing.inFixed ? W.yes : W.no,
  ]),
)}</details>`
}
<p class="note">${W.note}</p></section>
`;
}
