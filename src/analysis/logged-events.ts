import { type LoggedEvent, pairs } from "../recording/logged-event.js";
import type { EventKind, VoltageEvent } from "../recording/measurements.js";
import { PHASE_TO_PHASE, type Phase } from "../recording/quantity.js";
import type { MeasurementSettings } from "../recording/setup.js";
import { USUAL_MEASUREMENT } from "../recording/usual-measurement.js";
import type { MeasuringPoint } from "./waveform/chain.js";

/**
 * The recorder's own events that were not found in samples as well and whose time, duration, phases and voltage are
 * sure. Volts and percent are of the declared voltage. An event without a classification is one by the thresholds that
 * samples are measured by (IEC 61000-4-30: below dip, above swell, below interruption).
 */
export function soundEvents(
  logged: readonly LoggedEvent[],
  found: readonly VoltageEvent[],
  point: MeasuringPoint,
  settings: MeasurementSettings = {},
): VoltageEvent[] {
  return pairs(logged, found).flatMap(({ logged: event, found: same }) =>
    same === undefined ? (asEvent(event, point, settings) ?? []) : [],
  );
}

function asEvent(event: LoggedEvent, point: MeasuringPoint, settings: MeasurementSettings): VoltageEvent | undefined {
  const { start, durationS, magnitude, phases } = event;
  if (event.doubt !== undefined || durationS === undefined || magnitude === undefined) return undefined;
  const reference = declaredOn(phases, point);
  if (reference === undefined) return undefined;
  const percent = magnitude.unit === "%" ? magnitude.value : (magnitude.value / reference) * 100;
  const extreme = magnitude.unit === "V" ? magnitude.value : (magnitude.value / 100) * reference;
  const byVoltage = kindOf(percent, settings);
  const kind = event.kind ?? byVoltage;
  // A classification that its own voltage contradicts is not sure; a dip may reach down to nothing.
  if (kind === undefined || (kind === "swell") !== (byVoltage === "swell") || byVoltage === undefined) return undefined;
  return { kind, origin: "logged", phases, unit: "V", start, durationS, extreme, reference, percent };
}

function kindOf(percent: number, settings: MeasurementSettings): EventKind | undefined {
  const { dip, swell, interruption } = USUAL_MEASUREMENT;
  if (percent < (settings.interruption ?? interruption)) return "interruption";
  if (percent < (settings.dip ?? dip)) return "dip";
  return percent > (settings.swell ?? swell) ? "swell" : undefined;
}

/** The declared voltage on the phases of an event; undefined where the log does not name them or mixes both kinds. */
function declaredOn(phases: readonly Phase[], { connection, declaredVoltage }: MeasuringPoint): number | undefined {
  const between = phases.filter((phase) => (PHASE_TO_PHASE as readonly Phase[]).includes(phase)).length;
  if (phases.length === 0 || phases.includes("N") || (between > 0 && between < phases.length)) return undefined;
  const ratio = (between > 0 ? Math.sqrt(3) : 1) / (connection === "delta" ? Math.sqrt(3) : 1);
  return declaredVoltage * ratio;
}
