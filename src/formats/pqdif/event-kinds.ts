import type { EventKind } from "../../recording/measurements.js";
import { say, type Text } from "../../sentence.js";
import { DISTURBANCE as D, disturbanceName } from "./disturbances.js";

export interface Category {
  readonly name: Text;
  /** What the category is here; what IEEE 1159 calls a sag is a dip in EN 50160. Undefined where it says no kind. */
  readonly kind?: EventKind;
}

/** The category of an observation; undefined without one, or where it is "none". An unknown one keeps its identifier. */
export function categoryOf(disturbance: string | undefined): Category | undefined {
  if (disturbance === undefined || disturbance === D.NONE) return undefined;
  const name = disturbanceName(disturbance) ?? disturbance;
  const kind = kindOf(Object.entries(D).find(([, id]) => id === disturbance)?.[0] ?? "");
  return kind === undefined ? { name } : { name, kind };
}

function kindOf(category: string): EventKind | undefined {
  if (category.startsWith("TRANSIENT")) return "transient";
  if (category.endsWith("_SAG")) return "dip";
  if (category.endsWith("_SWELL")) return "swell";
  return category.endsWith("_INTERRUPT") ? "interruption" : undefined;
}

const TRIGGERS: Readonly<Record<number, Text>> = {
  0: say`no trigger`,
  1: say`triggered by a channel`,
  2: say`by the clock`,
  3: say`triggered from outside`,
  4: say`by the clock, for statistics`,
};

/** What made the recorder write an observation (tagTriggerMethodID). */
export function triggerText(method: number | undefined): Text {
  if (method === undefined) return say`trigger not said`;
  return TRIGGERS[method] ?? say`trigger method ${method}`;
}
