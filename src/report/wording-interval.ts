import { type Duration, intervalName } from "../recording/time.js";
import { say, type Text } from "../sentence.js";
import { lengthOf } from "./wording.js";

/** "10 min"; of intervals counted in cycles both: "10/12 cycles (0.2 s)". */
export function intervalText(interval: Duration): Text {
  const name = intervalName(interval);
  if (name === "half-cycle") return say`half a cycle (${lengthOf(interval)})`;
  return name === "10/12-cycle" ? say`10/12 cycles (${lengthOf(interval)})` : lengthOf(interval);
}
