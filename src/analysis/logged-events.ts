import { type LoggedEvent, pairs } from "../recording/logged-event.js";
import type { EventKind, VoltageEvent } from "../recording/measurements.js";
import { PHASE_TO_PHASE, type Phase } from "../recording/quantity.js";
import type { MeasurementSettings } from "../recording/setup.js";
import { SECOND } from "../recording/time.js";
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
  const sound = pairs(logged, found).flatMap(({ logged: event, found: same }) =>
    same === undefined ? (asEvent(event, point, settings) ?? []) : [],
  );
  return sound.sort((a, b) => a.start - b.start).reduce<VoltageEvent[]>(together, []);
}

/** Events of one kind on different phases that overlap are one (IEC 61000-4-30: from the first to begin to the last to end). */
function together(before: VoltageEvent[], next: VoltageEvent): VoltageEvent[] {
  const end = ({ start, durationS }: VoltageEvent) => start + durationS * SECOND;
  const at = before.findIndex(
    (one) => one.kind === next.kind && end(one) >= next.start && !one.phases.some((p) => next.phases.includes(p)),
  );
  const same = before[at];
  if (same === undefined) return [...before, next];
  const isWorse = (next.percent ?? 0) > (same.percent ?? 0) === (next.kind === "swell");
  const joined = {
    ...(isWorse ? next : same),
    phases: [...same.phases, ...next.phases],
    start: same.start,
    durationS: (Math.max(end(same), end(next)) - same.start) / SECOND,
  };
  return before.with(at, joined);
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
  if (kind !== "dip" && kind !== "swell" && kind !== "interruption") return undefined;
  // A classification that its own voltage contradicts is not sure; a dip may reach down to nothing.
  if (byVoltage === undefined || (kind === "swell") !== (byVoltage === "swell")) return undefined;
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
