import type { Finding } from "../recording/finding.js";
import { calibration } from "./calibration.js";
import type { Check, CheckInput } from "./check.js";
import { clippedMaximum } from "./clipped-maximum.js";
import { clockChange } from "./clock-change.js";
import { clockSteps } from "./clock-steps.js";
import { deadPhase } from "./dead-phase.js";
import { declaredVoltage } from "./declared-voltage.js";
import { duplicateRows } from "./duplicate-rows.js";
import { firstFlicker } from "./first-flicker.js";
import { frequencyConstant } from "./frequency-constant.js";
import { gaps } from "./gaps.js";
import { highestVoltage } from "./highest-voltage.js";
import { identicalPhases } from "./identical-phases.js";
import { impossibleValues } from "./impossible-values.js";
import { interruptedIntervals } from "./interrupted-intervals.js";
import { intervalLength } from "./interval-length.js";
import { leftOutVoltages } from "./left-out-voltages.js";
import { loggedEvents } from "./logged-events.js";
import { meanOutsideExtremes } from "./mean-outside-extremes.js";
import { nominalFrequency } from "./nominal-frequency.js";
import { openNeutral } from "./open-neutral.js";
import { pltFromPst } from "./plt-from-pst.js";
import { recordingLength } from "./recording-length.js";
import { repeatedValues } from "./repeated-values.js";
import { rowOrder } from "./row-order.js";
import { tenMinuteTick } from "./ten-minute-tick.js";
import { thdFromHarmonics } from "./thd-from-harmonics.js";
import { timeBase } from "./time-base.js";

/** All checks of the recording, in the order in which findings of equal weight are told. */
export const CHECKS: readonly Check[] = [
  openNeutral,
  highestVoltage,
  declaredVoltage,
  nominalFrequency,
  impossibleValues,
  leftOutVoltages,
  interruptedIntervals,
  deadPhase,
  identicalPhases,
  meanOutsideExtremes,
  repeatedValues,
  clippedMaximum,
  frequencyConstant,
  thdFromHarmonics,
  pltFromPst,
  firstFlicker,
  loggedEvents,
  recordingLength,
  calibration,
  intervalLength,
  gaps,
  duplicateRows,
  rowOrder,
  clockSteps,
  clockChange,
  timeBase,
  tenMinuteTick,
];

const WEIGHT: Readonly<Record<Finding["severity"], number>> = { blocks: 1, note: 2, none: 3 };

/** Runs every check. Dangers come first, then what blocks a verdict, then notes, then what has no effect. */
export function runChecks(input: CheckInput): Finding[] {
  const weight = (f: Finding) => (f.danger === undefined ? WEIGHT[f.severity] : 0);
  return CHECKS.flatMap((check) => check.run(input)).sort((a, b) => weight(a) - weight(b));
}
