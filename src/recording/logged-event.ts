import type { Text } from "../sentence.js";
import type { EventKind, VoltageEvent } from "./measurements.js";
import type { Phase } from "./quantity.js";
import { type Instant, SECOND } from "./time.js";

/** An event that the recorder itself found and wrote down, as far as the log tells; nothing of it is guessed. */
export interface LoggedEvent {
  readonly file: string;
  /** Where it stands: the observation and its byte. */
  readonly place: string;
  /** The recorder's own classification, in the words of the standard. */
  readonly category?: Text;
  /** Undefined where the classification is none of a dip, swell, interruption or transient. */
  readonly kind?: EventKind;
  /** Empty where the log does not say. */
  readonly phases: readonly Phase[];
  readonly start: Instant;
  readonly durationS?: number;
  /** Residual or highest voltage; in V, or in % of the declared voltage. Undefined where the log does not make both sure. */
  readonly magnitude?: { readonly value: number; readonly unit: "V" | "%" };
  /** Why kind, magnitude or duration cannot be relied on. */
  readonly doubt?: Text;
}

/** Clocks of trigger and samples, and the half cycles that an event is measured by, may differ by this much. */
const NEAR = SECOND / 10;

/** Kinds of which one recorder may say the one and another the other. */
const FAMILY: Partial<Record<EventKind, string>> = { dip: "fall", interruption: "fall" };

/** Whether a logged event and one found in samples can be the same: they meet in time, on a phase, and in kind. */
export function canBeSame(logged: LoggedEvent, found: VoltageEvent): boolean {
  const end = (start: Instant, durationS: number) => start + durationS * SECOND;
  const meet =
    logged.start <= end(found.start, found.durationS) + NEAR &&
    end(logged.start, logged.durationS ?? 0) >= found.start - NEAR;
  const onPhase = logged.phases.length === 0 || logged.phases.some((phase) => found.phases.includes(phase));
  const family = (kind: EventKind) => FAMILY[kind] ?? kind;
  return meet && onPhase && (logged.kind === undefined || family(logged.kind) === family(found.kind));
}

/** Each logged event with what was found in the samples at its time, if anything. */
export function pairs(
  logged: readonly LoggedEvent[],
  found: readonly VoltageEvent[],
): { readonly logged: LoggedEvent; readonly found?: VoltageEvent }[] {
  const computed = found.filter(({ origin }) => origin === "computed");
  return logged.map((event) => {
    const same = computed.filter((one) => canBeSame(event, one));
    const best = same.find(({ kind }) => kind === event.kind) ?? same[0];
    return best === undefined ? { logged: event } : { logged: event, found: best };
  });
}
