import type { Finding } from "../recording/finding.js";
import { say, type Text } from "../sentence.js";
import type { Check } from "./check.js";
import { judgedPhases, type Level, voltageLevels } from "./common/voltage.js";
import { explain, otherNominal } from "./common/voltage-ratios.js";
import { figure, percent } from "./common/wording.js";

/** A median inside this band is plausible: EN 50160 lets single values reach +10/−15 %, half the week never lies there. */
const PLAUSIBLE = [0.85, 1.15] as const;
/** Outside this band no supply is in service. */
const IN_SERVICE = [0.5, 1.5] as const;
/** Width of the middle 90 % of the values, in shares of their median, up to which the level is a clear one. */
const SMALL_SPREAD = 0.06;
/** Phases below this share of the highest median are dead, and no witnesses to the level. */
const DEAD = 0.05;

/**
 * The middle of the measured voltages against the declared voltage. Blocks the verdict on voltage only where the
 * declared value cannot be right: the median lies outside half to one and a half of it (no supply in service does for
 * half of the time), or outside 85…115 % and at a ratio that a usual mistake gives. A median outside that band without
 * such a ratio may be a bad supply, which must be able to fail; it is noted. A median at another usual nominal voltage
 * is noted where the declared one was not given.
 */
export const declaredVoltage: Check = {
  id: "declared-voltage",
  title: "Declared voltage: whether the median of the measured voltages fits it",
  source:
    "IEC 60038 nominal voltages; ratio 1/√3 within 10 %, √3 within 3 %, 2, 1/2 and nominal voltages within 2 and 1.5 %: common practice, no source",
  run(input) {
    const { setup } = input;
    const phases = judgedPhases(setup);
    const judged = voltageLevels(input).filter((l) => phases.includes(l.phase));
    const highest = Math.max(...judged.map((l) => l.median));
    const alive = judged.filter((l) => l.median >= DEAD * highest);
    if (alive.length === 0 || highest <= 0) return [];
    const median = middle(alive);
    const declared = setup.declaredVoltage.value;
    const ratio = median / declared;
    const spread = Math.max(...alive.map((l) => (l.p95 - l.p05) / l.median));
    const clear = spread <= SMALL_SPREAD;
    const facts = { declared, median, ratio, spread };
    const seen = say`The median of the measured voltages is ${figure(median)} V, ${percent(ratio)} of the declared ${figure(declared)} V`;
    const delta = setup.connection.value === "delta";
    const other = clear ? otherNominal(median, declared, delta) : undefined;

    if (ratio < PLAUSIBLE[0] || ratio > PLAUSIBLE[1]) {
      const outOfService = ratio < IN_SERVICE[0] || ratio > IN_SERVICE[1];
      const reason = explain(median, setup, outOfService);
      if (reason !== undefined) return [blocking(seen, { ...facts, explanation: reason.id }, reason.sentence)];
      if (other !== undefined) {
        const sentence = say`that is the nominal voltage ${figure(other)} V, so give it with --declared if it is the one of this supply`;
        return [blocking(seen, { ...facts, explanation: "other-nominal", nominal: other }, sentence)];
      }
      const unknown = say`give --declared, --connection or, for voltage transformers, voltageRatio in the setup`;
      if (outOfService)
        return [blocking(seen, { ...facts, explanation: "none" }, say`no supply in service is there; ${unknown}`)];
      return [
        note(
          "declared-voltage",
          say`${seen}; half of all values lie beyond what a supply should ever reach, so either the supply is very bad or the declared voltage is not that of this point; check it, and ${unknown}.`,
          facts,
        ),
      ];
    }
    if (other === undefined || setup.declaredVoltage.origin === "given") return [];
    return [
      note(
        "other-nominal-voltage",
        say`${seen}, which is nearer to the nominal voltage ${figure(other)} V; the transformer's tap may be set high or low, but if ${figure(other)} V is the declared voltage of this supply its limits are others, so give it with --declared.`,
        { ...facts, nominal: other },
      ),
    ];
  },
};

function middle(levels: readonly Level[]): number {
  const medians = levels.map((l) => l.median).sort((a, b) => a - b);
  return medians[(medians.length - 1) >> 1] as number;
}

function blocking(seen: Text, evidence: Finding["evidence"], reason: Text): Finding {
  return {
    id: "declared-voltage",
    severity: "blocks",
    sentence: say`${seen}; ${reason}; until then the voltage is not judged.`,
    evidence,
    quantities: ["voltage"],
    phases: [],
  };
}

function note(id: string, sentence: Text, evidence: Finding["evidence"]): Finding {
  return { id, severity: "note", sentence, evidence, quantities: ["voltage"], phases: [] };
}
