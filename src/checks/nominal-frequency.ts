import { say } from "../sentence.js";
import { nearestRank, sortedFinite } from "../signal/order-statistics.js";
import type { Check } from "./check.js";
import { figure } from "./common/wording.js";

/** How near the median must lie to the other nominal frequency, Hz. No grid is in service 8 Hz off its nominal. */
const NEAR = 2;

/** A median frequency at the other nominal frequency, 60 for 50 Hz or 50 for 60 Hz: blocks, as every limit refers to it. */
export const nominalFrequency: Check = {
  id: "nominal-frequency",
  title: "Median frequency at the other nominal frequency (50 or 60 Hz)",
  source: "EN 50160:2010, 4.2.1: nominal frequency 50 Hz; the margin of 2 Hz is common practice, no source",
  run({ measurements, setup }) {
    const series = measurements.series.find((s) => s.quantity === "frequency");
    const sorted = sortedFinite(series?.values ?? []);
    if (sorted.length === 0) return [];
    const median = nearestRank(sorted, 0.5);
    const nominal = setup.nominalFrequency.value;
    const other = nominal === 50 ? 60 : 50;
    if (Math.abs(median - other) > NEAR) return [];
    return [
      {
        id: "nominal-frequency",
        severity: "blocks",
        sentence: say`The median of the power frequency is ${figure(median)} Hz but the nominal frequency is taken as ${nominal} Hz; the supply seems to be one of ${other} Hz; until that is settled the frequency is not judged, so give nominalFrequency in the setup and a limit set for ${other} Hz.`,
        evidence: { median, nominal, other },
        quantities: ["frequency"],
        phases: [],
      },
    ];
  },
};
