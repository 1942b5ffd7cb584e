import { pltFromPst } from "../analysis/flicker.js";
import { type FlickerTrial, flickerTrials, runTrial } from "../analysis/waveform/flicker-trials.js";
import { MINUTE } from "../recording/time.js";
import type { ProofRow, ProofTable } from "./proof-table.js";

const SAMPLES_PER_SECOND = 6400;
/** Of the trials for a quick run, one in so many: no multiple of the four pairs of lamp and mains, so that all occur. */
const QUICK_STEP = 5;

/** The published tests of the flickermeter, one table for each of the standard's. */
export function flickerTables(): ProofTable[] {
  const trials = flickerTrials();
  return [...new Set(trials.map(({ title }) => title))].map((title) => {
    const own = trials.filter((trial) => trial.title === title);
    const { source, confirmed, quantity } = own[0] as FlickerTrial;
    return {
      id: `flicker-${title.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-")}`,
      title: `Flickermeter, ${quantity === "pst" ? "Pst" : "highest Pinst"}: ${title}`,
      source: `${source}; signals of ${SAMPLES_PER_SECOND} samples per second`,
      confirmed,
      *rows(quick) {
        for (const [i, trial] of own.entries()) {
          if (!quick || i % QUICK_STEP === 0) yield flickerRow(trial);
        }
      },
    };
  });
}

function flickerRow(trial: FlickerTrial): ProofRow {
  const { lamp, nominalFrequency, what, expected, tolerancePercent } = trial;
  return {
    what: `${lamp} V ${nominalFrequency} Hz: ${what}`,
    unit: "1",
    expected,
    computed: runTrial(trial, SAMPLES_PER_SECOND),
    tolerance: (tolerancePercent / 100) * expected,
  };
}

/** Pst of the twelve intervals of two hours, and Plt to four digits. */
const PLT: readonly (readonly [what: string, pst: readonly number[], plt: number])[] = [
  ["twelve Pst of 1", Array(12).fill(1), 1],
  ["one Pst of 2, eleven of 0", [2, ...Array(11).fill(0)], 0.8736],
  ["six Pst of 1, six of 0.5", [...Array(6).fill(1), ...Array(6).fill(0.5)], 0.8255],
];

export const PLT_TABLE: ProofTable = {
  id: "plt",
  title: "Plt from twelve Pst",
  source:
    "(ΣPst³/12)^⅓, printed in public appendices on flicker; numbers computed from it outside this program to four digits",
  confirmed: true,
  *rows() {
    for (const [what, pst, expected] of PLT) {
      const starts = Float64Array.from(pst, (_, i) => 10 * MINUTE * i);
      const axis = { interval: 10 * MINUTE, starts, flagged: new Uint8Array(12) };
      const { values } = pltFromPst({
        quantity: "pst",
        phase: "L1",
        unit: "1",
        origin: "computed",
        axis,
        values: Float64Array.from(pst),
      });
      yield { what, unit: "1", expected, computed: values[0] as number, tolerance: 0.00005 };
    }
  },
};
