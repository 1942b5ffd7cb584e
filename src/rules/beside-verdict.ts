import { type Span, unionOf } from "../recording/excluded-span.js";
import type { Finding } from "../recording/finding.js";
import type { Measurements } from "../recording/measurements.js";
import type { GivenSetup, Setup } from "../recording/setup.js";
import { marksOf, USUAL_VOLTAGE_STEPS } from "../recording/setup-marks.js";
import { TimeZone } from "../recording/time-zone.js";
import type { Assessment } from "./assessment.js";
import { answers, listComments } from "./complaints.js";
import { runningCounts } from "./count.js";
import { spreadByDay } from "./days.js";
import { shiftOf } from "./shift.js";
import { slidingOf } from "./sliding.js";
import type { Test } from "./tests.js";
import { judgedSpan } from "./weeks.js";

/** What the result holds on the supply voltage beside the verdict, and without any effect on it. */
export function besideVerdict(
  tests: readonly Test[],
  measurements: Measurements,
  findings: readonly Finding[],
  setup: Setup,
  given: GivenSetup,
  exclusions: readonly Span[],
): Pick<Assessment, "complaints" | "comments" | "days" | "shift" | "sliding"> {
  const { start, end } = measurements;
  const zoneId = setup.zone.value;
  const marks = marksOf(given, zoneId);
  const times = [start, end, ...marks.complaints.flatMap(({ at, to = at }) => [at, to])];
  const zone = TimeZone.open(zoneId, Math.min(...times), Math.max(...times));
  const excluded = unionOf(exclusions);
  const ofVoltage = tests
    .filter(({ requirement }) => requirement.quantity === "voltage")
    .map((test) => ({ ...test, counts: runningCounts(test, excluded) }));
  const phases = [...new Set(ofVoltage.map(({ phase }) => phase))];
  const isUnsound = findings.some(
    ({ severity, quantities, phases: named }) =>
      severity === "blocks" &&
      quantities.includes("voltage") &&
      (named.length === 0 || named.some((p) => phases.includes(p))),
  );
  const binding = ofVoltage.filter(({ requirement }) => requirement.binding);
  const { first, last } = judgedSpan(measurements);
  const shift = shiftOf(isUnsound ? [] : binding, first, last, setup.declaredVoltage.value, {
    percents: given.voltageSteps ?? USUAL_VOLTAGE_STEPS,
    origin: given.voltageSteps === undefined ? "assumed" : "given",
  });
  const sliding = slidingOf(measurements, phases);
  return {
    complaints: answers(marks.complaints, ofVoltage, measurements, zone),
    comments: listComments(marks),
    days: spreadByDay(ofVoltage, start, end, zone),
    ...(shift !== undefined && { shift }),
    ...(sliding !== undefined && { sliding }),
  };
}
