import { LogError } from "../../errors.js";
import { keyText } from "../../recording/quantity.js";
import { say, type Text } from "../../sentence.js";
import type { LogReader } from "./log-reader.js";
import type { Recognised } from "./recognise.js";

/**
 * Of fields that hold one quantity in two units the one in the quantity's own unit is used, of frequencies on several
 * phases the first. Any other two that stand side by side in the same rows are refused: which is meant cannot be guessed.
 * @throws LogError naming both
 */
export function onePerPlace(file: string, recognised: readonly Recognised[], read: LogReader): Recognised[] {
  const rowsOf = ({ field }: Recognised) => new Set((read.pieces.get(field) ?? []).map(({ rows }) => rows));
  const kept: Recognised[] = [];
  const place = ({ meaning }: Recognised) => meaning && `${keyText(meaning)}, ${meaning.statistic}`;
  const result = new Map<Recognised, Recognised>();
  const leave = (one: Recognised, reason: Text) => result.set(one, { field: one.field, factor: 1, reason });
  const preferred = recognised.toSorted((a, b) => Number(isSecond(a)) - Number(isSecond(b)));
  for (const one of preferred) {
    if (one.meaning === undefined) continue;
    const own = rowsOf(one);
    const other = kept.find(
      (k) => place(k) === place(one) && (k.unit !== one.unit || [...rowsOf(k)].some((rows) => own.has(rows))),
    );
    if (other === undefined) kept.push(one);
    else if (other.unit !== one.unit)
      leave(one, say`"${other.field.header}" holds the same in ${other.unit ?? ""}, which is used`);
    else if (one.meaning.quantity === "frequency") {
      leave(one, say`"${other.field.header}" holds the frequency as well, and is used`);
    } else {
      throw new LogError(
        file,
        undefined,
        `"${other.field.header}" (position ${other.field.position}) and "${one.field.header}" (position ${one.field.position}) both hold ${place(one)}; leave one out in the setup, as in columns: [{ column: ${one.field.position}, ignore: true }], or say there what it holds (quantity, phase, order, statistic)`,
      );
    }
  }
  return recognised.map((one) => result.get(one) ?? one);
}

/** Harmonic voltages in V, currents in %: beside the other unit they are the second choice. */
function isSecond({ meaning, unit }: Recognised): boolean {
  const own = meaning?.quantity === "harmonic-current" ? "A" : "%";
  return /harmonic/.test(meaning?.quantity ?? "") && unit !== own;
}
