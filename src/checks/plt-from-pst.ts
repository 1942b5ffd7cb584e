import type { Finding } from "../recording/finding.js";
import type { LoggedSeries } from "../recording/recording.js";
import { HOUR, type Instant, isoUtc, MINUTE } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { loggedSeries, resolutionOf } from "./common/series.js";
import { figure, nameOf, percent } from "./common/wording.js";

const PST = 10 * MINUTE;
const PLT = 2 * HOUR;
const NUMBER = PLT / PST;

/**
 * Where the two hours of a logged Plt begin, seen from the start of its row. Logs differ: two-hour rows, or ten-minute
 * rows with a sliding Plt, or with the Plt of a block in one or all rows of that block or the next. All are tried and
 * the one that fits best is taken, so that no log is accused for its habit.
 */
function windows(interval: number): ((row: Instant) => Instant)[] {
  const ending = (k: number) => (row: Instant) => row + PST - PLT + k * PST;
  if (interval === PLT) return [(row) => row, (row) => row - PLT];
  const sliding = [0, -1, ...Array.from({ length: NUMBER - 1 }, (_, k) => k + 1)].map(ending);
  const blocks = Array.from({ length: NUMBER }, (_, k) => k * PST).flatMap((anchor) => {
    const begin = (row: Instant) => Math.floor((row - anchor) / PLT) * PLT + anchor;
    return [begin, (row: Instant) => begin(row) - PLT];
  });
  return [...sliding, ...blocks];
}

interface Comparison {
  compared: number;
  disagree: number;
  largest: number;
  at: Instant;
  logged: number;
  expected: number;
}

/**
 * Logged Plt against the cube mean of the twelve logged Pst of its two hours: Plt³ = ΣPst³ / 12. They may differ by the
 * last written digit of each, as the error of a cube mean is at most that of its terms. Two hours without all twelve
 * Pst are not compared. Noted, not blocking: judging computes Plt from Pst where Pst was logged.
 */
export const pltFromPst: Check = {
  id: "plt-from-pst",
  title: "Logged Plt against the cube mean of its twelve Pst",
  source: "IEC 61000-4-15: Plt = (ΣPst³ / 12)^⅓ over two hours",
  run({ recording }) {
    return recording.series.flatMap((plt): Finding[] => {
      if (plt.quantity !== "plt" || (plt.axis.interval !== PST && plt.axis.interval !== PLT)) return [];
      const pst = loggedSeries(recording, "pst", plt.phase);
      if (pst === undefined || pst.axis.interval !== PST) return [];
      const habits = windows(plt.axis.interval).map((window) => compare(plt, pst, window));
      const first = habits.find((h) => h.compared > 0);
      if (first === undefined) return [];
      const comparable = habits.filter((h) => 2 * h.compared >= first.compared);
      const best = comparable.reduce((a, b) => (agreement(b) > agreement(a) ? b : a));
      // Where none fits, chance agreements choose no habit.
      const habit = agreement(best) < 0.5 ? first : best;
      return habit.disagree === 0 ? [] : [finding(plt, habit)];
    });
  },
};

/** The agreeing share; of habits that agree alike the first is taken. */
function agreement({ compared, disagree }: Comparison): number {
  return (compared - disagree) / compared;
}

function compare(plt: LoggedSeries, pst: LoggedSeries, window: (row: Instant) => Instant): Comparison {
  const tolerance = (resolutionOf(plt) + resolutionOf(pst)) * (1 + 1e-6);
  const { starts } = pst.axis;
  const found: Comparison = { compared: 0, disagree: 0, largest: 0, at: Number.NaN, logged: 0, expected: 0 };
  let first = 0;
  for (let i = 0; i < plt.values.length; i++) {
    const logged = plt.values[i] as number;
    if (Number.isNaN(logged)) continue;
    const begin = window(plt.axis.starts[i] as number);
    while (first < starts.length && (starts[first] as number) < begin) first++;
    const last = starts[first + NUMBER - 1];
    if (starts[first] !== begin || last !== begin + PLT - PST) continue;
    let cubes = 0;
    for (let k = first; k < first + NUMBER; k++) cubes += (pst.values[k] as number) ** 3;
    if (Number.isNaN(cubes)) continue;
    found.compared++;
    const expected = Math.cbrt(cubes / NUMBER);
    const off = Math.abs(logged - expected);
    if (off <= tolerance) continue;
    found.disagree++;
    if (off > found.largest) Object.assign(found, { largest: off, at: begin, logged, expected });
  }
  return found;
}

function finding({ phase }: LoggedSeries, { compared, disagree, at, logged, expected }: Comparison): Finding {
  return {
    id: "plt-from-pst",
    severity: "note",
    sentence: say`The logged ${nameOf("plt", phase)} disagrees with the cube mean of its twelve Pst in ${disagree} of ${compared} cases (${percent(disagree / compared)}), most in the two hours from ${isoUtc(at)} with ${figure(logged)} logged and ${figure(expected)} from Pst; a recorder that was restarted, or that averages otherwise than IEC 61000-4-15, does that; where Pst is logged the verdict rests on Pst, so leave the logged Plt out of comparisons.`,
    evidence: { phase, compared, disagree, share: disagree / compared, at: isoUtc(at), logged, expected },
    quantities: ["plt"],
    phases: [phase],
  };
}
