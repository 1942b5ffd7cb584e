/// <reference lib="dom" />
import type * as Vega from "vega";
import type { Chart, rowsOf, valuesOf } from "../../charts/chart.js";
import type { formatAgainstLimits } from "../../numbers.js";
import type { ChartWords } from "../../wording-page.js";
import type { curveReader, timeReader } from "./readers.js";
import type { addSpan } from "./span.js";
import type { makeTip } from "./tip.js";

/** What a figure of the page hands to its live view. */
export interface LiveChart extends Pick<Chart, "kind" | "data" | "extent" | "offset" | "unit" | "limit"> {
  readonly spec: Vega.Spec;
  readonly decimals: number;
}

/**
 * What the functions of this folder work with. The page carries their text and runs it in the reader's browser, so each
 * uses nothing but its arguments and the browser.
 */
export interface Tools {
  readonly vega: typeof Vega;
  readonly words: ChartWords;
  readonly rowsOf: typeof rowsOf;
  readonly valuesOf: typeof valuesOf;
  readonly formatAgainstLimits: typeof formatAgainstLimits;
  readonly timeReader: typeof timeReader;
  readonly curveReader: typeof curveReader;
  readonly addSpan: typeof addSpan;
  readonly makeTip: typeof makeTip;
}
