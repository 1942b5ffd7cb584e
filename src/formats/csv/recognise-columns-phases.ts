import type { GivenSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import type { Draft, SeriesDraft } from "./recognise-columns-draft.js";

/**
 * Decides what only the whole log can tell about phases: a column that names none is L1 in a single-phase log, and of
 * several frequencies that of the first phase stands (IEC 61000-4-30: frequency is measured on one reference channel).
 */
export function placeUnnamedPhases(drafts: readonly Draft[], setup: GivenSetup): readonly Draft[] {
  const series = drafts.filter((draft) => draft.kind === "series");
  const phasesNamed = series.some(({ phase }) => phase !== undefined && phase !== "system" && phase !== "N");
  return drafts.map((draft) => {
    if (draft.kind !== "series") return draft;
    if (draft.quantity === "frequency") return oneFrequency(draft, series);
    return draft.phase === undefined ? unnamed(draft, series, phasesNamed, setup) : draft;
  });
}

function unnamed(draft: SeriesDraft, series: readonly SeriesDraft[], phasesNamed: boolean, setup: GivenSetup): Draft {
  const unused = (reason: Text): Draft => ({ kind: "unused", column: draft.column, reason });
  if (setup.connection === "single") return onL1(draft, say`the setup says single-phase`);
  if (phasesNamed) return unused(say`it does not say which phase`);
  const sameQuantity = series.filter(({ quantity }) => quantity === draft.quantity);
  const alike = sameQuantity.filter(({ statistic, order }) => statistic === draft.statistic && order === draft.order);
  const [other] = alike.filter((one) => one !== draft);
  if (other) {
    return unused(say`it does not say which phase, nor does column ${other.column.position}, which says the same`);
  }
  const meanOverPhases =
    (draft.quantity === "voltage" || draft.quantity === "current") &&
    draft.evidence.senses.has("mean") &&
    !sameQuantity.some(({ statistic }) => statistic !== "mean");
  if (meanOverPhases) {
    return unused(
      say`it does not say which phase and may be a mean over the phases; say so in the setup (connection: single)`,
    );
  }
  return onL1(draft, say`no column of the log names a phase, and no other column holds the same`);
}

function onL1(draft: SeriesDraft, reason: Text): Draft {
  const phase = "L1";
  return { ...draft, phase, why: [...draft.why, say`${phase}: ${reason}`] };
}

function oneFrequency(draft: SeriesDraft, series: readonly SeriesDraft[]): Draft {
  const first = series
    .filter(({ quantity, statistic }) => quantity === "frequency" && statistic === draft.statistic)
    .filter(({ evidence }) => phaseSaid(evidence) !== undefined)
    .sort((a, b) => (phaseSaid(a.evidence) ?? "").localeCompare(phaseSaid(b.evidence) ?? "", "en"))[0];
  const own = phaseSaid(draft.evidence);
  const used = first && phaseSaid(first.evidence);
  if (!first || own === undefined || used === undefined || own === used) return draft;
  const reason = say`frequency is one for all phases; that of ${used} in column ${first.column.position} is used`;
  return { kind: "unused", column: draft.column, reason };
}

function phaseSaid({ phases, numbers }: SeriesDraft["evidence"]): string | undefined {
  return phases[0]?.value ?? (numbers[0] === undefined ? undefined : `L${numbers[0].digits}`);
}
