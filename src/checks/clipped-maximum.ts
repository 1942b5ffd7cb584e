import type { Finding } from "../recording/finding.js";
import type { Quantity } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { nameOf, percent, withUnit } from "./common/wording.js";

/** Distinct values below the highest that together must occur less often than it, which so stands in five rows at least. */
const BELOW = 4;
/** A value held by more than half of the rows is the ordinary one (a current of zero), no end of a range. */
const MOST = 0.5;
const WATCHED: readonly Quantity[] = ["voltage", "current"];

/**
 * A highest value that piles up: more rows share it than hold the next four lower values together, five at least.
 * Towards its highest value an honest distribution thins out, however coarse its last digit, so the comparison with its
 * own neighbours keeps a log of whole volts from being accused. Looks at the logged maxima, else at the means.
 * Noted, not blocking: where it is so, the true values are higher, not unknown altogether.
 */
export const clippedMaximum: Check = {
  id: "clipped-maximum",
  title: "Highest value in more rows than the next four lower values together, five at least",
  source: "common practice, no source",
  run({ recording }) {
    return recording.series.flatMap((series) => (WATCHED.includes(series.quantity) ? clipped(series) : []));
  },
};

function clipped(series: LoggedSeries): Finding[] {
  const { quantity, phase, axis } = series;
  const values = series.max ?? series.values;
  // The highest distinct values, falling, with how many rows hold each and the first of them.
  const top: { value: number; rows: number; first: number }[] = [];
  let lowest = Number.NEGATIVE_INFINITY;
  let of = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (Number.isNaN(value)) continue;
    of++;
    if (value < lowest) continue;
    const place = top.findIndex((t) => t.value <= value);
    if (top[place]?.value === value) (top[place] as { rows: number }).rows++;
    else top.splice(place < 0 ? top.length : place, 0, { value, rows: 1, first: i });
    if (top.length > BELOW + 1) top.pop();
    if (top.length === BELOW + 1) lowest = (top[BELOW] as { value: number }).value;
  }
  const highest = top[0];
  if (highest === undefined || top.length <= BELOW || highest.rows > MOST * of) return [];
  const below = top.slice(1).reduce((sum, t) => sum + t.rows, 0);
  if (highest.rows <= below) return [];
  const at = isoUtc(axis.starts[highest.first] as number);
  const cause =
    quantity === "current"
      ? say`the range of the current sensor ended there, unless an inverter or a load limits its current at just that value; true values may be higher, so repeat with a larger range`
      : say`the measuring range ended there, unless a regulator holds the voltage at just that value; true values may be higher, so check the range of the input`;
  return [
    {
      id: "clipped-maximum",
      severity: "note",
      sentence: say`The highest value of ${nameOf(quantity, phase)}, ${withUnit(quantity, highest.value)}, stands in ${highest.rows} of ${of} rows (${percent(highest.rows / of)}), first at ${at}, the next ${BELOW} lower values together in ${below}; ${cause}.`,
      evidence: {
        quantity,
        phase,
        value: highest.value,
        rows: highest.rows,
        of,
        share: highest.rows / of,
        first: at,
        lowerValues: BELOW,
        below,
      },
      quantities: [quantity],
      phases: [phase],
    },
  ];
}
