import type { Finding } from "../recording/finding.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase, type Quantity } from "../recording/quantity.js";
import { isoUtc } from "../recording/time.js";
import { Numeral, say } from "../sentence.js";
import type { Check, CheckInput } from "./check.js";
import { type Likeness, likeness } from "./common/likeness.js";
import { alignedValues, loggedSeries, resolutionOf } from "./common/series.js";
import { LICENSED, list, nameOf, percent } from "./common/wording.js";

/** Fewer rows show nothing. */
const FEWEST_ROWS = 100;
/** Share of rows equal to the last digit from which the two are one input. */
const EQUAL_SHARE = 0.99;
/** Share of rows in long equal stretches from which no verdict is left: EN 50160 allows 5 % of the values to lie outside. */
const STRETCH_SHARE = 0.05;
/** Correlation and mean relative difference that are noted. */
const LIKE_CORRELATION = 0.999;
const LIKE_DIFFERENCE = 0.001;
/** Each of these is compared by itself: one column exported twice shows in one quantity, one lead on two inputs in all. */
const COMPARED: readonly Quantity[] = ["voltage", "thd-voltage", "pst"];

interface Pair extends Likeness {
  readonly phases: readonly [Phase, Phase];
}

/**
 * Two phases with the same values. Three phases carry different loads, so they do not agree to the last written digit
 * while they move by more than that digit: more than 99 % equal rows, or long stretches of equal and changing rows over
 * more than 5 % of the recording, block what was measured on them, as one of the two was not measured and nobody can
 * say which. Values that never leave one written digit (a steady supply, a coarse log) are no evidence. Phases that
 * are only very alike are noted. In a single-phase supply bridged inputs do no harm: noted only.
 */
export const identicalPhases: Check = {
  id: "identical-phases",
  title: "Two phases with the same values: over 99 % of the rows equal to the last digit, or all but equal",
  source: "common practice, no source (correlation above 0.999 and difference below 0.1 %; equality to the last digit)",
  run(input) {
    return COMPARED.flatMap((quantity) =>
      [PHASE_TO_NEUTRAL, PHASE_TO_PHASE].flatMap((group) => findings(quantity, pairsOf(quantity, group, input), input)),
    );
  },
};

function pairsOf(quantity: Quantity, group: readonly Phase[], { recording }: CheckInput): Pair[] {
  const pairs: Pair[] = [];
  for (const [i, a] of group.entries()) {
    for (const b of group.slice(i + 1)) {
      const [left, right] = [loggedSeries(recording, quantity, a), loggedSeries(recording, quantity, b)];
      const values = left && right && alignedValues(right, left.axis);
      if (left === undefined || values === undefined) continue;
      const found = likeness(left.values, values, left.axis.starts);
      // Both hardly move: equal digits are no wonder.
      if (found.rows < FEWEST_ROWS || found.deviation < resolutionOf(left)) continue;
      pairs.push({ phases: [a, b], ...found });
    }
  }
  return pairs;
}

function findings(quantity: Quantity, pairs: readonly Pair[], { setup }: CheckInput): Finding[] {
  const same = pairs.filter((p) => p.equal > EQUAL_SHARE * p.rows || p.stretchRows > 0);
  const alike = pairs.filter(
    (p) =>
      quantity === "voltage" && !same.includes(p) && p.correlation > LIKE_CORRELATION && p.difference < LIKE_DIFFERENCE,
  );
  const one = setup.connection.value === "single";
  return [
    ...(same.length > 0 ? [sameFinding(quantity, same, one)] : []),
    ...(alike.length > 0 ? [alikeFinding(quantity, alike)] : []),
  ];
}

/** All that is measured through the leads of the voltages. */
const OF_A_VOLTAGE_LEAD: readonly Quantity[] = [
  "voltage",
  "harmonic-voltage",
  "thd-voltage",
  "pst",
  "plt",
  "negative-sequence-unbalance",
  "zero-sequence-unbalance",
];

function sameFinding(quantity: Quantity, pairs: readonly Pair[], single: boolean): Finding {
  const phases = phasesOf(pairs);
  const worst = pairs.reduce((a, b) => (b.equal > a.equal ? b : a));
  const share = worst.equal / worst.rows;
  const blocks = !single && pairs.some((p) => p.equal > EQUAL_SHARE * p.rows || p.stretchRows > STRETCH_SHARE * p.rows);
  const where =
    worst.stretchRows === 0 || share > EQUAL_SHARE
      ? ""
      : say`, ${worst.stretchRows} of them in long stretches, the first from ${isoUtc(worst.stretchFrom)}`;
  const advice = blocks
    ? say`these phases are not judged, so check the leads and the export`
    : say`check the leads and the export`;
  return {
    id: "identical-phases",
    severity: blocks ? "blocks" : "note",
    sentence: say`The ${nameOf(quantity, ...phases)} agree to the last digit in ${worst.equal} of ${worst.rows} rows (${percent(share)}) although they change${where}; one lead was on two inputs, one column was exported twice, or the inputs were bridged on purpose in a single-phase supply; ${advice}, and ${LICENSED}.`,
    evidence: {
      quantity,
      pairs: pairs.map((p) => p.phases.join("=")),
      equal: worst.equal,
      rows: worst.rows,
      share,
      stretchRows: worst.stretchRows,
      ...(worst.stretchRows > 0 && { stretchFrom: isoUtc(worst.stretchFrom) }),
    },
    quantities: quantity === "voltage" ? OF_A_VOLTAGE_LEAD : [quantity],
    phases: quantity === "voltage" ? [...phases, "system"] : phases,
  };
}

function alikeFinding(quantity: Quantity, pairs: readonly Pair[]): Finding {
  const phases = phasesOf(pairs);
  const most = pairs.reduce((a, b) => (b.correlation > a.correlation ? b : a));
  return {
    id: "alike-phases",
    severity: "note",
    sentence: say`The ${nameOf(quantity, ...phases)} are all but equal: correlation ${new Numeral(most.correlation.toFixed(5))}, mean difference ${percent(most.difference)} between ${list(most.phases)}; a well balanced medium-voltage supply or bridged inputs look like that, and so does one lead on two inputs; make sure that each input has its own phase.`,
    evidence: {
      quantity,
      pairs: pairs.map((p) => p.phases.join("=")),
      correlation: most.correlation,
      difference: most.difference,
    },
    quantities: [quantity],
    phases,
  };
}

function phasesOf(pairs: readonly Pair[]): Phase[] {
  return [...new Set(pairs.flatMap((p) => p.phases))];
}
